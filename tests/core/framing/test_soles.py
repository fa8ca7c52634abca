"""The sole plate, whole or in pieces."""

from __future__ import annotations

import msgspec

from core.framing import Frame, Role
from core.model import Opening, WallRules
from walls import US, Pair, frame_of, in_12, result

FLAT = US.room(264, left=(96, in_12(0)))
DOORS = (
    US.opening("door-1", 70, 20, 80),
    US.opening("window-1", 30, 20, 80, sill=30),
    US.opening("door-2", 100, 20, 80),
)


def frame_with(*openings: Opening, first: bool) -> Frame:
    wall = US.wall((0, 9), (160, 9), openings=openings)
    return frame_of(FLAT, msgspec.structs.replace(wall, rules=WallRules(cut_sole_first=first)))


def soles(frame: Frame) -> dict[str, Pair]:
    found = (m for m in frame.members if m.role is Role.SOLE_PLATE)
    return {m.key: (round(US.of(m.left), 6), round(US.of(m.right), 6)) for m in found}


def test_it_runs_through() -> None:
    assert soles(frame_with(*DOORS, first=False)) == {"B/sole": (0, 160)}


def test_its_pieces_lie_between_the_doorways() -> None:
    assert soles(frame_with(*DOORS, first=True)) == {
        "B/sole/1": (0, 70),
        "B/sole/2": (90, 100),
        "B/sole/3": (120, 160),
    }


def test_without_a_doorway_it_is_whole() -> None:
    assert soles(frame_with(DOORS[1], first=True)) == {"B/sole": (0, 160)}
    too_wide = US.opening("door-1", 20, 300, 80)
    assert soles(frame_with(too_wide, first=True)) == {"B/sole": (0, 160)}


def test_each_stud_is_marked_on_its_piece() -> None:
    wall = US.wall((0, 9), (160, 9), openings=DOORS)
    wall = msgspec.structs.replace(wall, rules=WallRules(cut_sole_first=True))
    marks = {m.member: m for m in result(FLAT, wall).marks if m.plate.startswith("B/sole")}
    # The near edge from the wall's left end, whichever piece it is on.
    for cause, plate, along in (
        ("layout/1", "B/sole/1", 15.25),
        ("door-1/trimmer/left", "B/sole/1", 68.5),
        ("door-1/trimmer/right", "B/sole/2", 90),
        ("door-2/trimmer/left", "B/sole/2", 98.5),
        ("layout/9", "B/sole/3", 143.25),
    ):
        mark = marks[f"B/{cause}"]
        assert (mark.plate, round(US.of(mark.along_sole), 6)) == (plate, along)
