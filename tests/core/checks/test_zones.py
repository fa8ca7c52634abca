"""What is told of a kept-clear zone: all that stands in it but plates, and nothing beside it."""

from __future__ import annotations

import msgspec
import pytest

from core.lengths import System, Tape
from core.model import ClearZone, Side
from core.wording import Wording
from walls import US, in_12, result

FLAT = US.room(264, left=(96, in_12(0)))
SAY = Wording("us", Tape.usual(System.INCH))
WALL = US.wall(
    (0, 9),
    (120, 9),
    openings=(US.opening("door-1", 60, 30, 80),),
    boxes=(US.box("box-1", "B/layout/2", Side.RIGHT, 14.0),),
)
"""Studs at 15 1/4, 31 1/4 and 47 1/4, then the door; the box from 32 3/4 to 34 3/4, 12 to 16 up."""


def told(left: float, bottom: float, width: float, height: float) -> list[str]:
    sizes = (US.length(x) for x in (left, bottom, width, height))
    wall = msgspec.structs.replace(WALL, kept_clear=(ClearZone("kept-clear-1", *sizes),))
    found = result(FLAT, wall).cautions
    return [SAY.say(c.message) for c in found if c.message.id.startswith("zone.")]


@pytest.mark.parametrize(
    ("zone", "things"),
    [
        pytest.param((34.75, 20, 12, 30), "", id="between two studs, from face to face"),
        pytest.param((34.75, 20, 12.5625, 30), "B4", id="a sixteenth into the next stud"),
        pytest.param((16, 20, 20, 30), "B2, B3", id="over two studs"),
        pytest.param((33, 10, 10, 3), "box 1", id="over a box"),
        pytest.param((33, 16, 10, 3), "", id="on a box"),
        pytest.param((62, 10, 20, 60), "", id="in the doorway"),
        pytest.param((62, 75, 5, 6), "B7", id="over the header alone"),
        pytest.param((18, 0, 10, 1.5), "", id="over the sole plate: it runs through"),
    ],
)
def test_what_stands_in_a_zone(zone: tuple[float, float, float, float], things: str) -> None:
    found = told(*zone)
    assert len(found) == bool(things)
    assert all(text.startswith(f"In wall B, {things} stand in the way") for text in found)


def test_the_sentence_says_where() -> None:
    assert told(16, 20, 20, 30) == [
        "In wall B, B2, B3 stand in the way of kept clear 1, "
        'from 16" to 36" and 20" to 50" up: move them, or the zone.'
    ]
