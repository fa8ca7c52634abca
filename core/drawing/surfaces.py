"""Surfaces out of plumb that a wall ends against, drawn in its elevation."""

from core.drawing.elements import Drawing, Element, Stroke
from core.drawing.pen import Pen
from core.drawing.placing import Rect
from core.drawing.view import View
from core.framing import Frame, reached
from core.model import Side
from core.roof import RoofLine

APART, LONG = 2.4, 1.6
"""How far apart the short strokes beside a surface are, and how far they reach, mm on paper."""


def surfaces(frame: Frame, line: RoofLine, view: View) -> Drawing:
    """Each surface from floor to roof, with short strokes on the side that is not room."""
    drawn: list[Element] = []
    for lean in frame.leans:
        out = -1.0 if lean.side is Side.LEFT else 1.0
        high = line.height(lean.foot)
        drawn.append(Stroke(((lean.foot, 0.0), (lean.at(high), high)), Pen.EXISTING))
        step, long = view.model(APART), view.model(LONG)
        for n in range(1, int(high / step)):
            y = n * step
            at = (lean.at(y), y)
            drawn.append(Stroke((at, (at[0] + out * long, y - long)), Pen.EXISTING))
    return tuple(drawn)


def surface_rects(frame: Frame, line: RoofLine, view: View) -> tuple[Rect, ...]:
    """The rectangles around the surfaces and their strokes, which nothing is written on."""
    found = []
    for lean in frame.leans:
        high = line.height(lean.foot)
        low, top = sorted((lean.foot, lean.at(high)))
        long = view.model(LONG)
        outer = (low - long, top) if lean.side is Side.LEFT else (low, top + long)
        found.append((outer[0], 0.0, outer[1], high))
    return tuple(found)


def over_surfaces(line: RoofLine, frame: Frame) -> RoofLine:
    """The roof line as it is drawn: on to surfaces that lean out."""
    outward = tuple(lean for lean in frame.leans if lean.offset > 0.0)
    return reached(line, outward) if outward else line
