"""Elements made fit for a line drawing: nothing twice, nothing without length, one line a text."""

import math
from collections.abc import Hashable, Iterable
from itertools import pairwise

import msgspec

from core.drawing import Dimension, Element, Fill, Stroke, Text
from core.drawing.elements import XY

SAME = 1e-6
"""Points nearer than this (mm) are one point."""


def tidy(elements: Iterable[Element]) -> tuple[Element, ...]:
    """The elements in their order, without empty ones and without repeats.

    Points that repeat the one before are dropped from strokes and fills; an outline of two points
    becomes an open line. Of elements that look alike and have the same pen, whatever their keys,
    the first stays.
    """
    kept: dict[Hashable, Element] = {}
    for element in elements:
        cleaned = _cleaned(element)
        if cleaned is not None:
            kept.setdefault(_look(cleaned), cleaned)
    return tuple(kept.values())


def _cleaned(element: Element) -> Element | None:
    """The element without idle points, or None where nothing of it is left to see."""
    match element:
        case Stroke():
            points = _apart(element.points, element.closed)
            closed = element.closed and len(points) > 2
            stroke = msgspec.structs.replace(element, points=points, closed=closed)
            return stroke if len(points) > 1 else None
        case Fill():
            outline = _apart(element.outline, True)
            fill = msgspec.structs.replace(element, outline=outline)
            return fill if len(outline) > 2 else None
        case Text():
            line = "".join(c if c.isprintable() else " " for c in element.text)
            return msgspec.structs.replace(element, text=line) if line.strip() else None
        case Dimension():
            return element if math.dist(element.start, element.end) > SAME else None


def _apart(points: tuple[XY, ...], closed: bool) -> tuple[XY, ...]:
    """The points without those that repeat the one before; a closed outline's last counts too."""
    kept = [*points[:1], *(b for a, b in pairwise(points) if math.dist(a, b) > SAME)]
    if closed and len(kept) > 1 and math.dist(kept[0], kept[-1]) <= SAME:
        kept.pop()
    return tuple(kept)


def _look(element: Element) -> Hashable:
    """What makes an element look as it does: two with the same answer cannot be told apart."""
    match element:
        case Stroke():
            return "stroke", element.pen, _course(_rounded(element.points), element.closed)
        case Fill():
            return "fill", element.pen, _course(_rounded(element.outline), True)
        case Text():
            at = _rounded((element.at,))
            return at, msgspec.structs.replace(element, at=(0.0, 0.0), key="")
        case Dimension():
            ends = _rounded((element.start, element.end))
            zero = (0.0, 0.0)
            return ends, msgspec.structs.replace(element, start=zero, end=zero, key="")


def _course(points: tuple[XY, ...], closed: bool) -> Hashable:
    """The same answer whichever way, and in an outline wherever, the points begin."""
    backward = points[::-1]
    if not closed:
        return False, min(points, backward)
    return True, min(way[i:] + way[:i] for way in (points, backward) for i in range(len(points)))


def _rounded(points: tuple[XY, ...]) -> tuple[XY, ...]:
    return tuple((round(x, 5) + 0.0, round(y, 5) + 0.0) for x, y in points)
