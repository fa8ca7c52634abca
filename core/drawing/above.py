"""The space above a wall's roof line, for a screen that hatches it: it is no part of the wall."""

from core.drawing.elements import Drawing, Fill
from core.drawing.pen import Pen
from core.roof import RoofLine


def above(line: RoofLine, high: float) -> Drawing:
    """The space from the roof line up to `high` (mm) over all of the wall; empty if that is lower.

    A part of the line that reaches higher is left out.
    """
    points = tuple((x, min(y, high)) for x, y in line.points())
    if all(y >= high for _, y in points):
        return ()
    (first, _), (last, _) = points[0], points[-1]
    return (Fill((*points, (last, high), (first, high)), Pen.ABOVE_ROOF),)
