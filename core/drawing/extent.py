"""How much paper a drawing takes up, texts and dimension strings included."""

import math
from collections.abc import Iterator

from core.drawing.dimension import dimension_parts
from core.drawing.elements import XY, Align, Drawing, Element, Fill, Stroke, Text
from core.drawing.placing import Rect, bounds
from core.drawing.typeface import cap_height, text_width


def extent(drawing: Drawing, scale: float) -> Rect:
    """The rectangle around a drawing at a scale, in model mm; ValueError if it is empty."""
    return bounds(point for element in drawing for point in _points(element, scale))


def text_corners(text: Text, scale: float) -> tuple[XY, XY, XY, XY]:
    """The corners of a text's capitals in model mm, from its start along its feet, then back."""
    width = text_width(text.text, text.size, text.bold, narrow=text.narrow) / scale
    height = cap_height(text.size) / scale
    start = {Align.START: 0.0, Align.MIDDLE: -width / 2, Align.END: -width}[text.align]
    foot = -height / 2 if text.middle else 0.0
    cos, sin = math.cos(text.angle), math.sin(text.angle)

    def turned(x: float, y: float) -> XY:
        return text.at[0] + x * cos - y * sin, text.at[1] + x * sin + y * cos

    return (
        turned(start, foot),
        turned(start + width, foot),
        turned(start + width, foot + height),
        turned(start, foot + height),
    )


def _points(element: Element, scale: float) -> Iterator[XY]:
    if isinstance(element, Stroke):
        yield from element.points
    elif isinstance(element, Fill):
        yield from element.outline
    elif isinstance(element, Text):
        yield from text_corners(element, scale)
    else:
        for part in dimension_parts(element, scale):
            yield from _points(part, scale)
