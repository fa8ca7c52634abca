"""The cautions that go with the work itself."""

import re

import msgspec
import pytest

from core.checks import Severity, answered_cautions, standing_cautions
from core.lengths import System, Tape
from core.model import FloorSeen, RoofBuilt
from core.wording import CATALOGUES, Wording, texts
from walls import US, in_12

ROOM = US.room(240, (30, in_12(9)), (30, in_12(9)))


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
    assert re.search(matter, " ".join(wording.say(c.message) for c in standing_cautions(ROOM)))


def test_they_always_stand_and_are_about_the_job() -> None:
    found = standing_cautions(ROOM)
    assert {(c.severity, c.key) for c in found} == {(Severity.STANDING, "")}
    assert len({c.message for c in found}) == len(found)


def names(roof: RoofBuilt | None, floor: FloorSeen | None) -> tuple[list[str], list[str]]:
    """The ids of the cautions of the job, and of those that go on every sheet, without a prefix."""
    room = msgspec.structs.replace(ROOM, roof_built=roof, floor_seen=floor)
    found = (standing_cautions(room), answered_cautions(room))
    job, sheet = ([c.message.id.removeprefix("standing.") for c in group] for group in found)
    return job, sheet


@pytest.mark.parametrize(
    ("roof", "floor", "first", "sheet"),
    [
        (None, None, ["structure", "floor"], []),
        (RoofBuilt.RAFTERS, FloorSeen.NOBODY, ["structure", "floor"], ["floor"]),
        (RoofBuilt.RAFTERS, FloorSeen.PAPERS, ["structure", "floor-papers"], []),
        (None, FloorSeen.LICENSED, ["structure", "floor-licensed"], []),
        (
            RoofBuilt.TRUSSES,
            FloorSeen.NOBODY,
            ["trusses", "under-trusses", "structure", "floor"],
            ["trusses", "under-trusses", "floor"],
        ),
    ],
)
def test_the_answers_decide_which_cautions_stand(
    roof: RoofBuilt | None, floor: FloorSeen | None, first: list[str], sheet: list[str]
) -> None:
    assert names(roof, floor) == ([*first, "lifting", "dust", "exits", "codes"], sheet)


@pytest.mark.parametrize("catalogue", CATALOGUES)
@pytest.mark.parametrize("floor", list(FloorSeen))
def test_whoever_looked_at_the_floor_the_program_judges_nothing(
    catalogue: str, floor: FloorSeen
) -> None:
    words = Wording(catalogue, Tape.usual(System.INCH))
    room = msgspec.structs.replace(ROOM, floor_seen=floor)
    said = [words.say(c.message) for c in standing_cautions(room) if "floor" in c.message.id]
    assert ["does not judge what any structure carries" in text for text in said] == [True]


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
