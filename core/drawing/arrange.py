"""Drawings moved and set beside each other; how far a drawing reaches."""

from itertools import accumulate

import msgspec

from core.drawing.dimension import dimension_line
from core.drawing.elements import XY, Dimension, Drawing, Element, Fill, Stroke, Text


def bounds(drawing: Drawing) -> tuple[XY, XY] | None:
    """The lower left and the upper right corner of a drawing, model mm; None for an empty one.

    Texts count by the place they stand at, since their size belongs to the paper.
    """
    points = [point for element in drawing for point in _points(element)]
    if not points:
        return None
    xs, ys = zip(*points, strict=True)
    return (min(xs), min(ys)), (max(xs), max(ys))


def moved(drawing: Drawing, by: XY) -> Drawing:
    """The drawing with every place moved by (x, y), model mm."""
    return tuple(_moved(element, by) for element in drawing)


def side_by_side(drawings: tuple[Drawing, ...], gap: float) -> tuple[Drawing, ...]:
    """The drawings moved along x so that each begins `gap` (model mm) right of the one before it.

    The first stays where it is, and nothing moves up or down. Empty drawings take no room.
    """
    spans = [bounds(drawing) for drawing in drawings]
    widths = [0.0 if span is None else span[1][0] - span[0][0] + gap for span in spans]
    first = next((span[0][0] for span in spans if span is not None), 0.0)
    lefts = accumulate(widths, initial=first)
    return tuple(
        drawing if span is None else moved(drawing, (left - span[0][0], 0.0))
        for drawing, span, left in zip(drawings, spans, lefts, strict=False)
    )


def _points(element: Element) -> tuple[XY, ...]:
    match element:
        case Stroke(points=points) | Fill(outline=points):
            return points
        case Text(at=at):
            return (at,)
        case Dimension():
            return (element.start, element.end, *dimension_line(element))


def _moved(element: Element, by: XY) -> Element:
    match element:
        case Stroke():
            return msgspec.structs.replace(element, points=_shift(element.points, by))
        case Fill():
            return msgspec.structs.replace(element, outline=_shift(element.outline, by))
        case Text():
            return msgspec.structs.replace(element, at=_shift((element.at,), by)[0])
        case Dimension():
            start, end = _shift((element.start, element.end), by)
            return msgspec.structs.replace(element, start=start, end=end)


def _shift(points: tuple[XY, ...], by: XY) -> tuple[XY, ...]:
    return tuple((x + by[0], y + by[1]) for x, y in points)
