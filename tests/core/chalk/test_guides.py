"""The edges of rooms with wings: the room always to their left."""

from __future__ import annotations

import msgspec
import pytest

from core.chalk import Kind, guides
from core.model import Side, Wing
from walls import US, in_12

INCH = 25.4
SLOPE = US.slope(48.0, in_12(12))
ROOM = US.room(240.0, (48.0, in_12(12)), (48.0, in_12(12)), length=400.0)


@pytest.mark.parametrize(("side", "middle"), [(Side.LEFT, -30.0), (Side.RIGHT, 270.0)])
def test_a_wing_is_left_of_its_edges(side: Side, middle: float) -> None:
    # 60 out from 100 to 220 along: its middle is 30 beyond the eave wall.
    start, width, reach = map(US.length, (100.0, 120.0, 60.0))
    wing = Wing("wing-1", side, start, width, reach, SLOPE, SLOPE)
    found = guides(msgspec.structs.replace(ROOM, wings=(wing,)), ())
    edges = [guide for guide in found if guide.kind is Kind.WING]
    inside = (middle * INCH, 160.0 * INCH)
    asides = sorted(round(guide.aside(inside) / INCH, 6) for guide in edges)
    # 60 from both of its eave walls, 30 from its gable.
    assert asides == [30, 60, 60]
    assert all(guide.reaches(inside, 0.0) for guide in edges)


def test_the_room_is_left_of_its_edges() -> None:
    middle = (120 * INCH, 200 * INCH)
    edges = [g for g in guides(ROOM, ()) if g.kind is not Kind.RIDGE]
    assert [round(g.aside(middle) / INCH) for g in edges] == [120, 120, 200, 200]
