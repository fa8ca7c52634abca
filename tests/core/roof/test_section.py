"""The room cut across: its line overhead, its ridge, and the stretches of its slopes; inches."""

from __future__ import annotations

import msgspec
import pytest

from core.model import PitchBreak, Room, Side
from core.roof import section_of
from walls import US, in_12

INCH = 25.4


def inches(points: tuple[tuple[float, float], ...]) -> list[tuple[float, float]]:
    return [(round(x / INCH, 6), round(y / INCH, 6)) for x, y in points]


def broken(room: Room, left: tuple[float, float]) -> Room:
    """The room with one change of pitch in its left slope: (run, rise in 12)."""
    assert room.left is not None
    change = PitchBreak(US.length(left[0]), in_12(left[1]))
    slope = msgspec.structs.replace(room.left, breaks=(change,))
    return msgspec.structs.replace(room, left=slope)


GABLE = US.room(240, (30, in_12(9)), (30, in_12(9)), flat=90)
SALTBOX = US.room(240, (30, in_12(6)), (60, in_12(12)))
SHED = US.room(200, (60, in_12(3)))
GAMBREL = broken(US.room(240, (30, in_12(24)), (30, in_12(24))), (30, 6))


@pytest.mark.parametrize(
    ("room", "rafters"),
    [
        # 30 + 9/12 * 120 = 120 over the middle.
        (GABLE, [(0, 30), (120, 120), (240, 30)]),
        # 30 + u/2 = 60 + 240 - u at u = 180: 120 high.
        (SALTBOX, [(0, 30), (180, 120), (240, 60)]),
        (SHED, [(0, 60), (200, 110)]),
        # Left 24 in 12 to 90 at 30, then 90 + (u - 30)/2; right 30 + 2 (240 - u): they meet where
        # 75 + u/2 = 510 - 2u, at u = 174, 162 high.
        (GAMBREL, [(0, 30), (30, 90), (174, 162), (240, 30)]),
    ],
)
def test_the_line_of_the_rafters(room: Room, rafters: list[tuple[float, float]]) -> None:
    cut = section_of(room)
    assert inches(cut.rafters.points()) == rafters
    assert cut.highest == pytest.approx(max(y for _, y in rafters) * INCH)


def test_what_is_overhead_stops_at_the_flat_ceiling() -> None:
    # 30 + 3/4 u = 90 at u = 80.
    assert inches(section_of(GABLE).over.points()) == [(0, 30), (80, 90), (160, 90), (240, 30)]


@pytest.mark.parametrize(
    ("room", "ridge"), [(GABLE, (120, 120)), (SALTBOX, (180, 120)), (SHED, None)]
)
def test_the_ridge(room: Room, ridge: tuple[float, float] | None) -> None:
    found = section_of(room).ridge
    assert found == (None if ridge is None else pytest.approx([side * INCH for side in ridge]))


def test_slopes_that_do_not_meet_in_the_room_have_no_ridge_there() -> None:
    # The left slope is above the right one over the whole width: 200 + u/2 > 60 + (240 - u)/2.
    high = US.room(240, (200, in_12(6)), (60, in_12(6)))
    cut = section_of(high)
    assert cut.ridge is None
    assert [(r.side, r.number) for r in cut.rises] == [(Side.RIGHT, 0)]
    assert inches(cut.rafters.points()) == [(0, 180), (240, 60)]


def test_the_stretches_go_from_the_eave_to_the_ridge() -> None:
    cut = section_of(GAMBREL)
    found = [(r.side, r.number, *inches((r.foot, r.head))) for r in cut.rises]
    assert found == [
        (Side.LEFT, 0, (0, 30), (30, 90)),
        (Side.LEFT, 1, (30, 90), (174, 162)),
        (Side.RIGHT, 0, (240, 30), (174, 162)),
    ]
    assert cut.rise(Side.LEFT, 1) == cut.rises[1]
    assert cut.rise(Side.RIGHT, 1) is None


def test_a_break_beyond_the_ridge_does_not_show() -> None:
    late = broken(US.room(240, (30, in_12(9)), (30, in_12(9))), (130, 4))
    assert [(r.side, r.number) for r in section_of(late).rises] == [
        (Side.LEFT, 0),
        (Side.RIGHT, 0),
    ]
