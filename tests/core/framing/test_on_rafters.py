"""Walls that stand on rafters: blocks, fits and purlins between their studs; millimetres.

The rafter's top rises 45 degrees from the wall's left end, y = x, and the roof over it is level at
2000. Studs stand at 0, 381, 781, 1181 and 1581 along 2000, 38 thick; the one at 381 is 2000 - 381 =
1619 long at its left edge.
"""

from __future__ import annotations

from typing import Any

import msgspec
import pytest

from core.framing import Frame, Surroundings, frame_on_rafters, rafter_marks
from core.model import (
    Blocking,
    Fixture,
    FixtureKind,
    Letters,
    LineEdge,
    MeasuredStud,
    Passing,
    StandsOn,
    Wall,
)
from core.roof import PurlinThrough, RoofLine, Segment
from walls import UK, member

FOOT = RoofLine((Segment(0.0, 2000.0, 0.0, 1.0, 0.0),))
ROOF = RoofLine((Segment(0.0, 2000.0, 2000.0, 0.0, 0.0),))


def cheek(**changes: Any) -> Wall:
    wall = UK.wall((1000, 3000), (3000, 3000), plates=0)
    return msgspec.structs.replace(wall, stands_on=StandsOn.RAFTERS, **changes)


def framed(wall: Wall, *purlins: PurlinThrough) -> Frame:
    around = Surroundings(purlins=purlins)
    return frame_on_rafters(wall, (ROOF, ROOF), (FOOT, FOOT), around)


def blocks(frame: Frame) -> dict[str, float]:
    """The heights of the middles of all blocks, by the upright to their left."""
    found = (m for m in frame.members if "/blocking/" in m.key)
    return {m.key.split("/", 3)[3]: (m.bottom + m.top) / 2 for m in found}


def test_rows_lie_at_their_height_where_the_rafter_leaves_room() -> None:
    # At 1000 the bays up to the stud at 781 take a block; the one from 819 to 1181 does not.
    made = framed(cheek(blocking=Blocking((UK.length(1000),))))
    assert blocks(made) == pytest.approx({"end/left": 1000, "layout/1": 1000})
    assert made.nailed.empty_rows == ()


def test_a_row_that_no_bay_takes_is_told_with_the_highest() -> None:
    made = framed(cheek(blocking=Blocking((UK.length(1990),))))
    assert made.nailed.empty_rows == (0,)
    assert made.nailed.highest_row == pytest.approx(2000 - 19)


def test_how_far_apart_rows_may_be_counts_from_the_rafter() -> None:
    # The bay at the left stands on 381 at its highest and is 1619 clear: a block at 381 + 900
    # leaves 700. From 419 to 781 it is 1219 clear: at 781 + 900 = 1681. The next, 819 clear, has
    # none.
    made = framed(cheek(blocking=Blocking(at_most=UK.length(900))))
    assert blocks(made) == pytest.approx({"end/left": 1281, "layout/1": 1681})


def test_a_fixture_is_backed() -> None:
    length = UK.length
    shelf = Fixture(
        "fixture-1", FixtureKind.SHELF, length(100), length(200), length(1500), UK.timber((38, 89))
    )
    made = framed(cheek(fixtures=(shelf,)))
    back = member(made, "fixture-1/end/left")
    assert (back.left, back.right, back.bottom) == pytest.approx((38, 381, 1500 - 44.5))


def test_studs_are_fitted_and_measured_as_in_any_wall() -> None:
    measured = (MeasuredStud("B/layout/2", UK.length(1210), False),)
    made = framed(cheek(fit=UK.length(3), measured_studs=measured))
    assert member(made, "layout/1").long_point == pytest.approx(1616)
    assert member(made, "layout/2").long_point == pytest.approx(1210)
    (tried,) = made.measured
    assert (tried.worked, tried.length) == pytest.approx((1216, 1210))


def test_a_purlin_ends_a_stud_and_the_piece_over_it_is_not_marked_on_the_rafter() -> None:
    purlin = PurlinThrough("purlin-1", (370, 420), (370, 420), 1200, 1300, 5, Passing.STOPPED)
    wall = cheek()
    made = framed(wall, purlin)
    low, high = member(made, "layout/1"), member(made, "layout/1/over/purlin-1")
    # From 381 and 419 up to 1195; from 1305 to 2000.
    assert low.edges[:2] == pytest.approx((814, 776))
    assert (low.long_point, low.short_point) == pytest.approx((814, 776))
    assert high.long_point == pytest.approx(695)
    marked = [m.member for m in rafter_marks(wall, made, FOOT, LineEdge.NEAR, Letters())]
    assert low.key in marked
    assert high.key not in marked
