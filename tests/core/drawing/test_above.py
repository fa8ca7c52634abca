"""The space above the roof line, as it is hatched on screen."""

from __future__ import annotations

from core.drawing import Fill, Pen
from core.drawing.above import above
from core.roof import RoofLine, Segment

RISING = Segment(0.0, 100.0, 1000.0, 1.0, 0.0)
"""From 1000 at x = 0 to 1100 at x = 100."""
LEVEL = Segment(100.0, 300.0, 1100.0, 0.0, 0.0)


def test_it_reaches_from_the_roof_line_up() -> None:
    (fill,) = above(RoofLine((RISING, LEVEL)), 2000.0)
    assert isinstance(fill, Fill)
    assert fill.pen is Pen.ABOVE_ROOF
    corners = ((0.0, 1000.0), (100.0, 1100.0), (300.0, 1100.0), (300.0, 2000.0), (0.0, 2000.0))
    assert fill.outline == corners


def test_what_reaches_higher_than_the_window_is_left_out() -> None:
    (fill,) = above(RoofLine((RISING, LEVEL)), 1050.0)
    assert isinstance(fill, Fill)
    assert max(y for _, y in fill.outline) == 1050.0
    assert above(RoofLine((RISING, LEVEL)), 900.0) == ()
