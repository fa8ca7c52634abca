"""The cautions that go with the work itself."""

import re

import pytest

from core.checks import Severity, standing_cautions
from core.lengths import System, Tape
from core.wording import CATALOGUES, Wording, texts


@pytest.mark.parametrize("catalogue", CATALOGUES)
@pytest.mark.parametrize(
    "matter",
    [
        # Structure: nothing is cut before somebody qualified has agreed.
        r"[Nn]ever cut, notch or move a rafter, truss, tie or beam",
        r"engineer or the building department",
        # Floor loads are not judged.
        r"somebody qualified look at the floor",
        r"does not judge what any structure carries",
        # Lifting alone; eyes, ears and lungs; ways out; codes, wiring, exits, inspection.
        r"[Dd]o not lift a long wall alone",
        r"eye, ear and dust protection",
        r"hands clear of saw",
        r"the stair and one other way out clear",
        r"[Ll]ocal codes and licensed trades",
        r"wiring",
        r"get inspected before you cover",
    ],
)
def test_what_is_minded(catalogue: str, matter: str) -> None:
    wording = Wording(catalogue, Tape.usual(System.INCH))
    assert re.search(matter, " ".join(wording.say(c.message) for c in standing_cautions()))


def test_they_always_stand_and_are_about_the_job() -> None:
    found = standing_cautions()
    assert {(c.severity, c.key) for c in found} == {(Severity.STANDING, "")}
    assert len({c.message for c in found}) == len(found)


CLAIMS = re.compile(
    r"\b(safe|safely|sound|strong enough|will hold|can carry|complies|compliant|approved|certified"
    r"|guaranteed?|meets (the )?code|up to code|to code|structurally (ok|okay|fine))\b",
    re.IGNORECASE,
)


DENIAL = re.compile(r"never says that [^.:;]*")


@pytest.mark.parametrize("catalogue", CATALOGUES)
def test_no_text_claims_that_anything_is_safe(catalogue: str) -> None:
    said = {i: DENIAL.sub("", text) for i, text in texts(catalogue).items()}
    assert {i: text for i, text in said.items() if CLAIMS.search(text)} == {}
