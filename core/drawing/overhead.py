"""The rafters over a wall, marked where its top plate crosses them."""

from core.drawing.elements import Drawing, Element, Stroke
from core.drawing.pen import Pen
from core.framing import Frame
from core.roof import RoofLine


def rafters(line: RoofLine, frame: Frame, run: float) -> Drawing:
    """The two edges of every rafter across the top plates, and a cross between them.

    They reach from the roof line to the underside of the plates on face A; a rafter that lies
    partly past the wall's end is drawn as far as the wall goes.
    """
    drawing: list[Element] = []
    for crossing in frame.nailed.over_plate.crossings:
        left, right = max(0.0, crossing.left), min(run, crossing.right)
        if left >= right:
            continue
        tops = [(x, line.height(x)) for x in (left, right)]
        feet = [(x, frame.near.height(x)) for x in (left, right)]
        pairs = ((tops[0], feet[0]), (tops[1], feet[1]), (tops[0], feet[1]), (feet[0], tops[1]))
        drawing += [Stroke(pair, Pen.RAFTER) for pair in pairs]
    return tuple(drawing)
