"""Rafters marked across the plate of a wall that crosses them."""

from __future__ import annotations

import msgspec
import pytest

from core.drawing import Pen, Show, View
from core.drawing.elements import Stroke
from core.drawing.elevation import elevation
from core.lengths import System, Tape
from core.model import Rafter, Room
from core.wording import Wording
from walls import US, in_12, result

ROOM = US.room(240, (24, in_12(9)), (24, in_12(9)), length=100)


def strokes(room: Room, ends: tuple[tuple[float, float], tuple[float, float]]) -> list[Stroke]:
    found = result(room, US.wall(*ends))
    wording = Wording("us", Tape.usual(System.INCH))
    # The tapes tell of rafters as well.
    view = View(1 / 24, shows=frozenset(Show) - {Show.TAPES})
    drawn = elevation(found, view, wording)
    return [e for e in drawn if isinstance(e, Stroke) and e.pen is Pen.RAFTER]


def rafters_at(*middles: float) -> Room:
    places = tuple(US.length(m) for m in middles)
    rafter = Rafter(US.timber((1.5, 9.25)), US.length(24), places)
    return msgspec.structs.replace(ROOM, rafter=rafter)


def test_two_edges_and_a_cross_from_the_roof_to_the_plates_underside() -> None:
    """A wall along the ridge at u = 48: roof 24 + 36 = 60, plate 1.5 * 1.25 = 1.875 under it.

    It runs from v = 10; the rafter at 40 lies over 29.25 to 30.75.
    """
    drawn = strokes(rafters_at(40), ((48, 10), (48, 90)))
    points = [tuple((US.of(x), US.of(y)) for x, y in stroke.points) for stroke in drawn]
    left, right, low, high = 29.25, 30.75, 58.125, 60
    assert [v for pair in points for point in pair for v in point] == pytest.approx(
        [
            *(left, high, left, low),
            *(right, high, right, low),
            *(left, high, right, low),
            *(left, low, right, high),
        ]
    )


def test_a_rafter_half_past_the_end_is_drawn_as_far_as_the_wall_goes() -> None:
    """The rafter at 10 lies over -0.75 to 0.75 of a wall that begins at v = 10."""
    drawn = strokes(rafters_at(10), ((48, 10), (48, 90)))
    xs = [US.of(x) for stroke in drawn for x, _ in stroke.points]
    assert (min(xs), max(xs)) == pytest.approx((0, 0.75))


def test_none_over_a_wall_along_the_rafters() -> None:
    assert strokes(rafters_at(40), ((10, 60), (110, 60))) == []
