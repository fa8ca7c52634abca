"""The bays of a wall, worked by hand: between uprights, under sills, over headers; no doorway.

A wall of 120 under a level roof at 97.5, its plate's underside at 96, a sole plate of 1 1/2. Studs
at 15.25, 31.25, ... and the ends. Inches.
"""

from __future__ import annotations

import pytest

from core.framing.bays import Bay, bays
from core.kept import Kept
from core.model import HeaderKind, Opening, Room, Wall
from walls import US, frame_of, in_12

FLAT = US.room(264, left=(97.5, in_12(0)))
RAKE = US.room(264, left=(49.5, in_12(12)))
NONE = US.header(HeaderKind.NONE)
Row = tuple[str, float, float, float, float, float, float]


def found(*openings: Opening, room: Room = FLAT, narrowest: float = 1.0) -> list[Row]:
    wall: Wall = US.wall((0, 9), (80, 9), openings=openings)
    frame = frame_of(room, wall)
    over = (frame.near, frame.far)
    return [_row(bay) for bay in bays(frame.members, over, US.length(narrowest).mm, Kept())]


def _row(bay: Bay) -> Row:
    left, right, foot, low, high, datum = (
        round(US.of(n), 3) for n in (bay.left, bay.right, bay.foot, bay.low, bay.high, bay.datum)
    )
    return bay.cause, left, right, foot, low, high, datum


def test_between_studs() -> None:
    # Studs at 0, 15.25, 31.25, 47.25, 63.25 and 78.5: clear from a right edge to the next left one.
    assert found() == [
        ("end/left", 1.5, 15.25, 1.5, 96, 96, 0),
        ("layout/1", 16.75, 31.25, 1.5, 96, 96, 0),
        ("layout/2", 32.75, 47.25, 1.5, 96, 96, 0),
        ("layout/3", 48.75, 63.25, 1.5, 96, 96, 0),
        ("layout/4", 64.75, 78.5, 1.5, 96, 96, 0),
    ]


def test_under_a_slope_it_has_a_low_and_a_high_end() -> None:
    # 12 in 12: the underside at x is 49.5 + x - 1.5 x 1.41421 = 47.379 + x.
    assert found(room=RAKE)[0] == ("end/left", 1.5, 15.25, 1.5, 48.879, 62.629, 0)


def test_a_doorway_is_none_but_over_its_header_there_are_some() -> None:
    # Opening 30 to 50, head 70: trimmers at 28.5 and 50, kings at 27 and 51.5, header 70 to 71.5
    # from 28.5 to 51.5, cripples of marks 2 (31.25) and 3 (47.25). Bays on the header reach from
    # its top, and are told from it as the others are from the subfloor: 71.5 less 1.5.
    door = US.opening("door-1", 30, 20, 70)
    assert found(door) == [
        ("end/left", 1.5, 15.25, 1.5, 96, 96, 0),
        ("layout/1", 16.75, 27, 1.5, 96, 96, 0),
        ("door-1/king/left", 28.5, 31.25, 71.5, 96, 96, 70),
        ("door-1/above/2", 32.75, 47.25, 71.5, 96, 96, 70),
        ("door-1/above/3", 48.75, 51.5, 71.5, 96, 96, 70),
        ("door-1/king/right", 53, 63.25, 1.5, 96, 96, 0),
        ("layout/4", 64.75, 78.5, 1.5, 96, 96, 0),
    ]


def test_under_a_sill_it_reaches_to_the_sill() -> None:
    # Sill at 30, 1 1/2 thick: its underside at 28.5. Cripples stand under it at 31.25 and 47.25.
    window = US.opening("window-1", 30, 20, 70, sill=30)
    under = [row for row in found(window) if 29 < row[1] < 50 and row[3] == 1.5]
    assert under == [
        ("window-1/trimmer/left", 30, 31.25, 1.5, 28.5, 28.5, 0),
        ("window-1/below/2", 32.75, 47.25, 1.5, 28.5, 28.5, 0),
        ("window-1/below/3", 48.75, 50, 1.5, 28.5, 28.5, 0),
    ]


def test_a_doorway_without_a_header_is_none_either() -> None:
    door = US.opening("door-1", 30, 20, 70, header=NONE)
    assert not [row for row in found(door) if 29 < row[1] < 50]


def test_between_two_doorways_there_is_one() -> None:
    # The trimmers of two openings that stand side by side: 20 to 34 and 48 to 62. Kings at 35.5
    # and 45; mark 2 (31.25) is over the first, mark 3 (47.25) gives way.
    doors = (US.opening("door-1", 20, 14, 70), US.opening("door-2", 48, 14, 70))
    between = [row for row in found(*doors) if 34 <= row[1] < 48 and row[3] == 1.5]
    assert between == [("door-1/king/right", 37, 45, 1.5, 96, 96, 0)]


@pytest.mark.parametrize(("narrowest", "count"), [(2.75, 7), (2.8, 5)])
def test_narrower_than_asked_for_is_none(narrowest: float, count: int) -> None:
    # The two beside the cripples over the header are 2.75 wide.
    assert len(found(US.opening("door-1", 30, 20, 70), narrowest=narrowest)) == count


def test_touching_is_not_reaching_into_it() -> None:
    bay = Bay("end/left", 10.0, 20.0, 0.0, 50.0, 50.0, 0.0)
    reached = [bay.touches(*s) for s in ((0, 10), (0, 11), (12, 13), (19, 30), (20, 30))]
    assert reached == [False, True, True, True, False]
