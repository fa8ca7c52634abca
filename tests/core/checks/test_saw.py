"""Cuts past the stops of the person's saw are told once each, with another way to make them."""

from __future__ import annotations

import msgspec
import pytest

from core.checks import Severity
from core.job import WallResult, work_out
from core.lengths import System, Tape
from core.model import Habits, PlateLie, Project, Saw, SiteRecord, Wall
from core.wording import Wording
from walls import US, at_degrees, in_12

WORDS = Wording("us", Tape.usual(System.INCH))
STEEP = US.room(264, (12, in_12(16)), (12, in_12(16)))
"""16 in 12 is 53.13 degrees, which leaves 36.87 to 90."""


def found(wall: Wall, saw: Saw | None = None) -> WallResult:
    habits = Habits(saw=saw)
    return work_out(Project("t", System.INCH, STEEP, (wall,), habits), SiteRecord()).walls[0]


def said(wall: Wall, saw: Saw | None = None) -> list[str]:
    cautions = found(wall, saw).cautions
    assert {c.severity for c in cautions} <= {Severity.WARNING}
    return [WORDS.say(c.message) for c in cautions]


RAKE = US.wall((12, 9), (72, 9))
KNEE = US.wall((48, 0), (48, 288), plate=(1.5, 7.25))


def test_a_steep_rake_wall() -> None:
    assert said(RAKE) == [
        "In wall B, bevel 53.1° is past your saw: clamp a straight block square to the fence, clamp"
        " the piece on its narrow edge along it, and set miter 36.9°, if the blade cuts that deep."
    ]
    assert found(RAKE).cautions[0].key == "B/end/left"


def test_a_saw_that_tilts_further_needs_no_way_round() -> None:
    assert said(RAKE, Saw(at_degrees(55), at_degrees(50))) == []


@pytest.mark.parametrize(
    ("lie", "sentences"),
    [
        (
            None,
            [
                "In wall B, miter 53.1° is past your saw: clamp a straight block square to the"
                " fence, clamp the piece flat along it, and set miter 36.9°."
            ],
        ),
        (
            PlateLie.RIPPED,
            [
                "In wall B, miter 53.1° is past your saw: clamp a straight block square to the"
                " fence, clamp the piece flat along it, and set miter 36.9°.",
                "In wall B, ripping edges at 53.1° is past your saw: run the plate on edge along a"
                " high fence with the blade at 36.9°.",
            ],
        ),
        # Square through the wall: nothing to set.
        (PlateLie.LEVEL, []),
    ],
)
def test_a_steep_knee_wall(lie: PlateLie | None, sentences: list[str]) -> None:
    # Ripping from a 2x8: 3 1/2 / 0.6 + 1 1/2 x 1.3333 = 7.833 would be too much; a 2x10 is not.
    wall = msgspec.structs.replace(KNEE, top_plate=msgspec.structs.replace(KNEE.top_plate, lie=lie))
    wide = US.timber((1.5, 9.25))
    wall = msgspec.structs.replace(
        wall, top_plate=msgspec.structs.replace(wall.top_plate, timber=wide)
    )
    assert said(wall) == sentences
