"""How a leaf hangs, drawn in its opening: two lines from the hinge side to the free corners."""

import math

from core.drawing.elements import XY, Drawing, Element, Stroke
from core.drawing.pen import Pen
from core.drawing.view import View
from core.framing import PlacedOpening
from core.model import Side, Swing

DASH, OFF = 2.0, 1.4
"""A dash and the gap after it, mm on paper."""


def swing(placed: PlacedOpening, view: View) -> Drawing:
    """The lines of a hinged leaf; nothing for one that is not hinged.

    They meet at the middle of the hinge side, and are dashed where the leaf opens to the far side
    of the wall (the sign that elevations of doors and windows use; common practice, no source).
    """
    opening, hung = placed.opening, placed.opening.hung
    if hung is None:
        return ()
    left, right = opening.left.mm, opening.left.mm + opening.width.mm
    hinge, free = (left, right) if hung.hinges is Side.LEFT else (right, left)
    tip = (hinge, (opening.sill.mm + opening.head.mm) / 2)
    drawing: list[Element] = []
    for corner in ((free, opening.head.mm), (free, opening.sill.mm)):
        parts = _dashes(corner, tip, view) if hung.swing is Swing.AWAY else [(corner, tip)]
        drawing += [Stroke(part, Pen.SWING, placed.key) for part in parts]
    return tuple(drawing)


def _dashes(start: XY, end: XY, view: View) -> list[tuple[XY, XY]]:
    """A line in dashes, the first beginning at its start."""
    length = math.dist(start, end)
    dash, step = view.model(DASH), view.model(DASH + OFF)

    def at(along: float) -> XY:
        share = min(along, length) / length
        return start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1])

    return [(at(n * step), at(n * step + dash)) for n in range(math.ceil(length / step))]
