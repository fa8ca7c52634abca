"""Small drawings set out in rows, as words are."""

from collections.abc import Sequence

import msgspec

from core.drawing.elements import XY, Dimension, Drawing, Element, Fill, Stroke, Text
from core.drawing.extent import extent


def moved(drawing: Drawing, by: XY) -> Drawing:
    """The drawing in another place."""
    return tuple(_moved(element, by) for element in drawing)


def flow(drawings: Sequence[Drawing], width: float, gap: float, scale: float = 1.0) -> Drawing:
    """The drawings beside each other, feet on one line, in as many rows as `width` (mm) asks for.

    A drawing that is wider has a row of its own. `gap` is left between drawings and between rows.
    """
    rows: list[list[Drawing]] = []
    used = 0.0
    for drawing in (d for d in drawings if d):
        left, _, right, _ = extent(drawing, scale)
        if not rows or used + gap + right - left > width:
            rows.append([])
            used = -gap
        rows[-1].append(drawing)
        used += gap + right - left
    made: list[Element] = []
    top = 0.0
    for row in rows:
        boxes = [extent(drawing, scale) for drawing in row]
        foot = top - max(box[3] - box[1] for box in boxes)
        x = 0.0
        for drawing, (left, low, right, _) in zip(row, boxes, strict=True):
            made += moved(drawing, (x - left, foot - low))
            x += right - left + gap
        top = foot - gap
    return tuple(made)


def _moved(element: Element, by: XY) -> Element:
    def at(point: XY) -> XY:
        return point[0] + by[0], point[1] + by[1]

    if isinstance(element, Stroke):
        return msgspec.structs.replace(element, points=tuple(map(at, element.points)))
    if isinstance(element, Fill):
        return msgspec.structs.replace(element, outline=tuple(map(at, element.outline)))
    if isinstance(element, Text):
        return msgspec.structs.replace(element, at=at(element.at))
    return _moved_dimension(element, at(element.start), at(element.end))


def _moved_dimension(dimension: Dimension, start: XY, end: XY) -> Dimension:
    return msgspec.structs.replace(dimension, start=start, end=end)
