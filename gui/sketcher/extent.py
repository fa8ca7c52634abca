"""How far the ink of an element reaches on screen, px."""

import math
from collections.abc import Iterable
from functools import lru_cache

from core.drawing import Align, Dimension, Element, Text
from core.drawing.dimension import dimension_parts
from core.drawing.typeface import ascent, cap_height, descent, text_width
from gui.sketcher.camera import XY, Camera, Rect

Corners = tuple[XY, XY, XY, XY]

SLACK = 3.0
"""Room left around the geometry for half a heavy line and its softened edge, px."""


def extent(element: Element, camera: Camera, density: float) -> Rect:
    """The upright rectangle that holds an element's ink, px right and down.

    `density` is px for each mm on paper. A dimension without length is a point at its start.
    """
    if isinstance(element, Text):
        return _around(text_corners(element, camera, density))
    if isinstance(element, Dimension):
        parts = dimension_parts(element, camera.scale / density)
        if not parts:
            return _around((camera.to_screen(element.start),))
        return union(extent(part, camera, density) for part in parts)
    points = element.outline if hasattr(element, "outline") else element.points
    return _around([camera.to_screen(p) for p in points])


def union(rects: Iterable[Rect]) -> Rect:
    """The smallest rectangle around rectangles; ValueError if there are none."""
    lefts, lows, rights, highs = zip(*rects, strict=True)
    return Rect(min(lefts), min(lows), max(rights), max(highs))


def text_corners(text: Text, camera: Camera, density: float) -> Corners:
    """The four corners of a line of text with its ascenders and descenders, px."""
    size = float(pixels(text.size, density))
    return _corners(text, camera, density, ascent(size), descent(size), 0.0)


def marker_corners(text: Text, camera: Camera, density: float) -> Corners:
    """The four corners of a stroke of a marker over a line of text, px."""
    size = float(pixels(text.size, density))
    return _corners(text, camera, density, cap_height(size) + 2.0, 2.0, 1.5)


def _corners(
    text: Text, camera: Camera, density: float, up: float, down: float, aside: float
) -> Corners:
    """The corners `up` over and `down` under the feet of the letters, `aside` past their ends."""
    size = float(pixels(text.size, density))
    width = size * _width(text.text, text.bold, text.narrow)
    left = {Align.START: 0.0, Align.MIDDLE: -width / 2, Align.END: -width}[text.align] - aside
    right = left + width + 2 * aside
    base = cap_height(size) / 2 if text.middle else 0.0
    x, y = camera.to_screen(text.at)
    cos, sin = math.cos(text.angle), -math.sin(text.angle)
    low, high = base + down, base - up
    corners = ((left, low), (right, low), (right, high), (left, high))
    turned = [(x + a * cos - b * sin, y + a * sin + b * cos) for a, b in corners]
    return turned[0], turned[1], turned[2], turned[3]


def pixels(size: float, density: float) -> int:
    """The size of a text in whole px, since the screen's font has no sizes between."""
    return max(1, round(size * density))


@lru_cache(maxsize=4096)
def _width(text: str, bold: bool, narrow: bool) -> float:
    """The width of a text one px high."""
    return text_width(text, 1.0, bold, narrow=narrow)


def _around(points: Iterable[XY]) -> Rect:
    xs, ys = zip(*points, strict=True)
    return Rect(min(xs) - SLACK, min(ys) - SLACK, max(xs) + SLACK, max(ys) + SLACK)
