"""Figures over several plates that keep off each other: lifted along their own way where needed."""

import math
from collections.abc import Callable

import msgspec

from core.drawing.elements import XY
from core.drawing.placing import Rect, bounds
from core.drawing.sliding import Stretch, first_free
from core.kept import Kept

Quad = tuple[XY, XY, XY, XY]
"""The corners of a rectangle at any angle, in their order around it."""


class Shape(msgspec.Struct, frozen=True, cache_hash=True):
    """A rectangle at any angle, and the upright one around it, which is asked first."""

    rect: Rect
    quad: Quad


MOST = 40
"""How often a figure is lifted a step farther before it stays where it would stand alone."""


def apart(one: Quad, other: Quad) -> bool:
    """Whether two rectangles at any angles do not overlap; touching is no overlap.

    Two convex shapes are apart if, seen along a side of either of them, they lie beside each other.
    Of a rectangle two sides are enough, for the others run along with them.
    """
    for (ax, ay), (bx, by), (cx, cy), _ in (one, other):
        for right, up in ((ay - by, bx - ax), (by - cy, cx - bx)):
            first = [x * right + y * up for x, y in one]
            second = [x * right + y * up for x, y in other]
            if max(first) <= min(second) + 1e-9 or max(second) <= min(first) + 1e-9:
                return True
    return False


Shapes = Callable[[float], tuple[Shape, Shape]]
"""A figure and its leader by how far they are lifted, mm."""


def shape(quad: Quad) -> Shape:
    """A rectangle at any angle with the upright one around it."""
    return Shape(bounds(quad), quad)


def meeting(one: Quad, way: XY, other: Quad) -> Stretch | None:
    """The stretch of a slide of a rectangle along `way` on which it overlaps another, if any.

    Seen along each side of either, the one passes the other between two places; they overlap where
    it does so along all sides at once.
    """
    start, end = -math.inf, math.inf
    for (ax, ay), (bx, by), (cx, cy), _ in (one, other):
        for right, up in ((ay - by, bx - ax), (by - cy, cx - bx)):
            size = math.hypot(right, up)
            first = [(x * right + y * up) / size for x, y in one]
            second = [(x * right + y * up) / size for x, y in other]
            pace = (way[0] * right + way[1] * up) / size
            low, high = min(second) - max(first), max(second) - min(first)
            if abs(pace) < 1e-9:
                if low >= -1e-9 or high <= 1e-9:
                    return None
                continue
            ends = sorted((low / pace, high / pace))
            start, end = max(start, ends[0]), min(end, ends[1])
    return (start, end) if start < end - 1e-9 else None


class Crowd:
    """What stands over each plate of a wall: tapes, figures, and the leaders to them.

    How far a figure is lifted is `kept` by all that stands in its lane.
    """

    def __init__(self, kept: Kept | None = None) -> None:
        """Nothing over any plate."""
        self._kept = kept or Kept()
        self._over: dict[str, list[Shape]] = {}
        self._reach: dict[str, Rect] = {}

    def add(self, plate: str, shape: Shape) -> None:
        """Keep a tape or a figure over a plate clear of what stands over the others."""
        self._over.setdefault(plate, []).append(shape)
        self._reach[plate] = _around(self._reach.get(plate, shape.rect), shape.rect)

    def lift(self, plate: str, shapes: Shapes, step: float) -> float:
        """How far a figure has to be lifted to be read; `shapes` gives figure and leader by that.

        It keeps off everything over other plates, unless no place within reach does. It stands
        there from then on.
        """
        at_rest = shapes(0.0)
        if self._alone(plate, at_rest):
            return self._settle(plate, at_rest, 0.0)
        # A lane is straight: what it may ever meet lies around its lowest and its highest place.
        lane = self._kept.of(_lane, shapes, step)
        near = [p for p, rect in self._reach.items() if p != plate and not _beside(lane, rect)]
        others = tuple(s for p in near for s in self._over[p] if not _beside(lane, s.rect))
        found = self._kept.of(_lift, shapes, step, others)
        return self._settle(plate, shapes(found), found)

    def _settle(self, plate: str, shapes: tuple[Shape, Shape], lift: float) -> float:
        for shape in shapes:
            self.add(plate, shape)
        return lift

    def _alone(self, plate: str, shapes: tuple[Shape, Shape]) -> bool:
        """Whether a figure and its leader are out of reach of all over other plates: most are."""
        own = _whole(shapes)
        return all(_beside(own, rect) for other, rect in self._reach.items() if other != plate)


def _lift(shapes: Shapes, step: float, others: tuple[Shape, ...]) -> float:
    """The least lift at which a figure is free of others; none where all within reach are taken.

    Its leader need not be asked: lifted farther it would cross all that it crosses here.
    """
    figure, higher = shapes(0.0)[0].quad, shapes(step)[0].quad
    way = ((higher[0][0] - figure[0][0]) / step, (higher[0][1] - figure[0][1]) / step)
    met = (meeting(figure, way, other.quad) for other in others)
    free = first_free(0.0, step, MOST, [stretch for stretch in met if stretch is not None])
    return 0.0 if free is None else free * step


def _lane(shapes: Shapes, step: float) -> Rect:
    """All that a figure and its leader may come to take up."""
    return _around(_whole(shapes(0.0)), _whole(shapes((MOST - 1) * step)))


def _whole(shapes: tuple[Shape, Shape]) -> Rect:
    """All that a figure and its leader take up."""
    return _around(shapes[0].rect, shapes[1].rect)


def _beside(one: Rect, other: Rect) -> bool:
    """Whether two upright rectangles do not overlap."""
    return other[0] >= one[2] or other[2] <= one[0] or other[1] >= one[3] or other[3] <= one[1]


def _around(one: Rect, other: Rect) -> Rect:
    return (
        min(one[0], other[0]),
        min(one[1], other[1]),
        max(one[2], other[2]),
        max(one[3], other[3]),
    )
