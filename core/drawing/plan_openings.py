"""An opening of a wall from above: the gap, its jambs, the leaf and its swing, or the glass."""

import math

from core.drawing.elements import XY, Drawing, Element, Fill, Stroke
from core.drawing.pen import Pen
from core.drawing.plan_ground import at
from core.framing import Footprint, keys
from core.model import Opening, Side, Swing

_ARC = 12
"""Straight pieces of the arc of a leaf."""


def opening(ground: Footprint, stated: Opening) -> Drawing:
    """An opening of the wall that stands at `ground`: a bare gap, or two lines over a sill."""
    left, right = stated.left.mm, stated.left.mm + stated.width.mm
    low, high = max(left, 0.0), min(right, ground.run)
    if high <= low:
        return ()
    key, deep = keys.opening(ground.letter, stated.id), ground.width
    gap = tuple(at(ground, x, y) for x, y in ((low, 0.0), (high, 0.0), (high, deep), (low, deep)))
    drawing: list[Element] = [Fill(gap, Pen.OPENING, key)]
    drawing += [_line(ground, (x, 0.0), (x, deep), Pen.STUD, key) for x in (low, high)]
    if stated.sill.mm > 0.0:
        shares = (0.0, 0.4, 0.6, 1.0)
        lines = [((low, deep * s), (high, deep * s)) for s in shares]
        drawing += [_line(ground, a, b, Pen.STUD, key) for a, b in lines]
    elif stated.hung is not None:
        drawing += _leaf(ground, stated, key)
    return tuple(drawing)


def _leaf(ground: Footprint, stated: Opening, key: str) -> Drawing:
    """The leaf standing open square to the wall, and the quarter that it sweeps."""
    hung = stated.hung
    if hung is None:
        return ()
    left, wide = stated.left.mm, stated.width.mm
    hinge, way = (left, 1.0) if hung.hinges is Side.LEFT else (left + wide, -1.0)
    foot, out = (ground.width, 1.0) if hung.swing is Swing.AWAY else (0.0, -1.0)
    arc = []
    for n in range(_ARC + 1):
        turn = n / _ARC * math.pi / 2
        x, y = hinge + way * wide * math.cos(turn), foot + out * wide * math.sin(turn)
        arc.append(at(ground, x, y))
    leaf = _line(ground, (hinge, foot), (hinge, foot + out * wide), Pen.STUD, key)
    return (Stroke(tuple(arc), Pen.SWING, key), leaf)


def _line(ground: Footprint, a: XY, b: XY, pen: Pen, key: str) -> Stroke:
    return Stroke((at(ground, *a), at(ground, *b)), pen, key)
