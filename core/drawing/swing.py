"""How a leaf hangs, drawn in its opening: two lines from the hinge side to the free corners."""

import math

from core.drawing.elements import XY, Drawing, Element, Stroke, Text
from core.drawing.extent import text_corners
from core.drawing.pen import Pen
from core.drawing.placing import Rect, bounds
from core.drawing.view import View
from core.framing import PlacedOpening
from core.model import Side, Swing

DASH, OFF = 2.0, 1.4
"""A dash and the gap after it, mm on paper."""

ROOM = 0.6
"""The room left around texts, mm on paper."""

Line = tuple[XY, XY]
"""A straight line between two points of the elevation, mm."""


def swing(placed: PlacedOpening, view: View, texts: Drawing = ()) -> Drawing:
    """The lines of a hinged leaf, broken where `texts` stand; nothing without hinges or an opening.

    They meet at the middle of the hinge side, and are dashed where the leaf opens to the far side
    of the wall (the sign that elevations of doors and windows use; common practice, no source).
    """
    opening, hung = placed.opening, placed.opening.hung
    if hung is None or not placed.fit.fits:
        return ()
    left, right = placed.left, placed.right
    hinge, free = (left, right) if hung.hinges is Side.LEFT else (right, left)
    at_hinge, at_free = placed.heads if hinge == left else placed.heads[::-1]
    tip = (hinge, (opening.sill.mm + at_hinge) / 2)
    drawing: list[Element] = []
    for corner in ((free, at_free), (free, opening.sill.mm)):
        parts = _dashes(corner, tip, view) if hung.swing is Swing.AWAY else [(corner, tip)]
        for rect in _written(texts, view):
            parts = [piece for part in parts for piece in _outside(part, rect)]
        drawing += [Stroke(part, Pen.SWING, placed.key) for part in parts]
    return tuple(drawing)


def _written(texts: Drawing, view: View) -> list[Rect]:
    """The rectangles that texts take up, with a little room around them."""
    room = view.model(ROOM)
    corners = [bounds(text_corners(t, view.scale)) for t in texts if isinstance(t, Text)]
    return [(a - room, b - room, c + room, d + room) for a, b, c, d in corners]


def _outside(line: Line, rect: Rect) -> list[Line]:
    """The one or two parts of a line that lie outside a rectangle; none if all of it is inside."""
    (x0, y0), (x1, y1) = line
    first, last = 0.0, 1.0
    spans = ((x0, x1 - x0, rect[0], rect[2]), (y0, y1 - y0, rect[1], rect[3]))
    for start, run, low, high in spans:
        if run == 0.0:
            if not low < start < high:
                return [line]
            continue
        shares = sorted(((low - start) / run, (high - start) / run))
        first, last = max(first, shares[0]), min(last, shares[1])
    if first >= last:
        return [line]

    def at(share: float) -> XY:
        return x0 + share * (x1 - x0), y0 + share * (y1 - y0)

    before = [((x0, y0), at(first))] if first > 0.0 else []
    return before + ([(at(last), (x1, y1))] if last < 1.0 else [])


def _dashes(start: XY, end: XY, view: View) -> list[Line]:
    """A line in dashes, the first beginning at its start."""
    length = math.dist(start, end)
    dash, step = view.model(DASH), view.model(DASH + OFF)

    def at(along: float) -> XY:
        share = min(along, length) / length
        return start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1])

    return [(at(n * step), at(n * step + dash)) for n in range(math.ceil(length / step))]
