"""The rafters over a wall, marked where its top plate crosses them."""

from collections.abc import Iterator

from core.drawing.elements import XY, Drawing, Element, Stroke
from core.drawing.pen import Pen
from core.drawing.placing import Rect, bounds
from core.framing import Frame
from core.roof import RoofLine


def rafters(line: RoofLine, frame: Frame, run: float) -> Drawing:
    """The two edges of every rafter across the top plates, and a cross between them.

    They reach from the roof line to the underside of the plates on face A; a rafter that lies
    partly past the wall's end is drawn as far as the wall goes.
    """
    drawing: list[Element] = []
    for tops, feet in _sides(line, frame, run):
        pairs = ((tops[0], feet[0]), (tops[1], feet[1]), (tops[0], feet[1]), (feet[0], tops[1]))
        drawing += [Stroke(pair, Pen.RAFTER) for pair in pairs]
    return tuple(drawing)


def rafter_rects(line: RoofLine, frame: Frame, run: float) -> tuple[Rect, ...]:
    """The rectangles around the rafters across the top plates, which no label is to stand on."""
    return tuple(bounds((*tops, *feet)) for tops, feet in _sides(line, frame, run))


def _sides(
    line: RoofLine, frame: Frame, run: float
) -> Iterator[tuple[tuple[XY, XY], tuple[XY, XY]]]:
    """Upper and lower ends of both edges of every rafter across the top plates."""
    for crossing in frame.nailed.over_plate.crossings:
        left, right = max(0.0, crossing.left), min(run, crossing.right)
        if left < right:
            tops = (left, line.height(left)), (right, line.height(right))
            yield tops, ((left, frame.near.height(left)), (right, frame.near.height(right)))
