"""Dimension strings of a wall: its openings, its length, and the heights of its ends."""

from collections.abc import Sequence

from core.drawing.course import BAND, FOOT, LEAD, OFF
from core.drawing.dimension import ROOM
from core.drawing.elements import XY, Align, Dimension, Drawing, Element, Text
from core.drawing.pen import Pen
from core.drawing.typeface import text_width
from core.drawing.view import View
from core.framing import Frame, PlacedOpening
from core.roof import RoofLine
from core.wording import Wording

FIRST = 5.4
"""From the marks' figures to the first string, mm on paper."""

STRING = 7.4
"""Between two strings, mm on paper: figures stay clear of the extension lines over them."""

BESIDE = 1.5
"""Between a dimension line and a figure beside it or a neighbour's end, mm on paper."""


def strings(
    run: float, line: RoofLine, frame: Frame, below: float, view: View, wording: Wording
) -> Drawing:
    """The openings' strings and the overall string below the marks, and the two end heights.

    `below` is how far (mm on paper) the marks reach below the floor. An opening whose figure has
    no room beside the others' stands in a string of its own.
    """
    rows = _rows(frame.openings, view, wording)
    stretches = [[(*_span(placed), placed.key) for placed in row] for row in rows]
    drawing: list[Element] = []
    y, step = -view.model(below + 0.5), view.model(FIRST)
    for row in (*stretches, [(0.0, run, "")]):
        for left, right, key in row:
            text = wording.length(right - left)
            drawing.append(Dimension((left, y), (right, y), -step, text, view.size, key=key))
        y, step = y - step, view.model(STRING)
    drawing += _end_heights(run, line, view, wording)
    return tuple(drawing)


def figures_reach(widths: list[float]) -> float:
    """How far the sole tape with figures of these widths reaches below the floor, mm on paper."""
    return OFF + BAND + LEAD + FOOT + max(widths, default=0.0)


def _rows(
    openings: Sequence[PlacedOpening], view: View, wording: Wording
) -> list[list[PlacedOpening]]:
    """The openings by strings: each in the first one where its figure has room."""
    rows: list[list[PlacedOpening]] = []
    ends: list[float] = []
    for placed in sorted(openings, key=_span):
        left, right = _span(placed)
        figure = _room(wording.length(right - left), view)
        reach = right + (figure if figure > right - left else 0.0) + view.model(BESIDE)
        for n, end in enumerate(ends):
            if end <= left:
                rows[n].append(placed)
                ends[n] = reach
                break
        else:
            rows.append([placed])
            ends.append(reach)
    return rows


def _span(placed: PlacedOpening) -> tuple[float, float]:
    """The left and the right edge of an opening."""
    left = placed.opening.left.mm
    return left, left + placed.opening.width.mm


def _room(text: str, view: View) -> float:
    """The model length that a dimension line needs for a figure over it."""
    return view.model(text_width(text, view.size, narrow=True) + 2 * ROOM)


def _end_heights(run: float, line: RoofLine, view: View, wording: Wording) -> list[Element]:
    """The heights of the roof line over the wall's ends, at either side of the wall."""
    on_left = _end_height((0.0, line.height(0.0)), view.model(6.0), view, wording)
    on_right = _end_height((run, line.height(run)), -view.model(9.0), view, wording)
    return [*on_left, *on_right]


def _end_height(top: XY, aside: float, view: View, wording: Wording) -> list[Element]:
    """The height of a point over the floor; a low one has its figure outward of its line."""
    x, y = top
    text, foot = wording.length(y), (x, 0.0)
    if _room(text, view) <= y:
        return [Dimension(foot, top, aside, text, view.size)]
    outward = -1.0 if aside > 0 else 1.0
    at = (x - aside + outward * view.model(BESIDE), y / 2)
    align = Align.END if aside > 0 else Align.START
    figure = Text(text, at, view.size, Pen.DIMENSION, align=align, narrow=True, middle=True)
    return [Dimension(foot, top, aside, "", view.size), figure]
