"""Figures over several plates that keep off each other: lifted along their own way where needed."""

from collections.abc import Callable
from itertools import pairwise

from core.drawing.elements import XY
from core.drawing.placing import Rect, bounds

Quad = tuple[XY, XY, XY, XY]
"""The corners of a rectangle at any angle, in their order around it."""

Shape = tuple[Rect, Quad]
"""A rectangle at any angle, and the upright one around it, which is asked first."""

MOST = 40
"""How often a figure is lifted a step farther before it stays where it would stand alone."""


def apart(one: Quad, other: Quad) -> bool:
    """Whether two rectangles at any angles do not overlap; touching is no overlap.

    Two convex shapes are apart if, seen along a side of either of them, they lie beside each other.
    """
    for a, b in (*pairwise((*one, one[0])), *pairwise((*other, other[0]))):
        across = (a[1] - b[1], b[0] - a[0])
        reach = [[p[0] * across[0] + p[1] * across[1] for p in shape] for shape in (one, other)]
        if max(reach[0]) <= min(reach[1]) + 1e-9 or max(reach[1]) <= min(reach[0]) + 1e-9:
            return True
    return False


def shape(quad: Quad) -> Shape:
    """A rectangle at any angle with the upright one around it."""
    return bounds(quad), quad


class Crowd:
    """What stands over each plate of a wall: tapes, figures, and the leaders to them."""

    def __init__(self) -> None:
        """Nothing over any plate."""
        self._solid: dict[str, list[Shape]] = {}
        self._leaders: dict[str, list[Shape]] = {}
        self._reach: dict[str, Rect] = {}

    def add(self, plate: str, shape: Shape) -> None:
        """Keep a tape or a figure over a plate clear of what stands over the others."""
        self._put(self._solid, plate, shape)

    def lift(
        self, plate: str, shapes: Callable[[float], tuple[Shape, Shape]], step: float
    ) -> float:
        """How far a figure has to be lifted to be read; `shapes` gives figure and leader by that.

        It keeps off everything over other plates, and its leader off figures and tapes there; where
        no such place is within reach, the figure alone does. It stands there from then on.
        """
        at_rest = shapes(0.0)
        if self._alone(plate, at_rest):
            return self._settle(plate, at_rest, 0.0)
        solid, leaders = _others(self._solid, plate), _others(self._leaders, plate)
        lifts = [n * step for n in range(MOST)]
        free = (
            lift
            for led in (True, False)
            for lift in lifts
            if _clear(shapes(lift)[0], (*solid, *leaders))
            and not (led and not _clear(shapes(lift)[1], solid))
        )
        found = next(free, 0.0)
        return self._settle(plate, shapes(found), found)

    def _settle(self, plate: str, shapes: tuple[Shape, Shape], lift: float) -> float:
        figure, leader = shapes
        self._put(self._solid, plate, figure)
        self._put(self._leaders, plate, leader)
        return lift

    def _put(self, kept: dict[str, list[Shape]], plate: str, shape: Shape) -> None:
        kept.setdefault(plate, []).append(shape)
        self._reach[plate] = _around(self._reach.get(plate, shape[0]), shape[0])

    def _alone(self, plate: str, shapes: tuple[Shape, Shape]) -> bool:
        """Whether a figure and its leader are out of reach of all over other plates: most are."""
        own = _around(shapes[0][0], shapes[1][0])
        return all(_beside(own, rect) for other, rect in self._reach.items() if other != plate)


def _others(kept: dict[str, list[Shape]], plate: str) -> tuple[Shape, ...]:
    return tuple(shape for other, shapes in kept.items() if other != plate for shape in shapes)


def _clear(shape: Shape, others: tuple[Shape, ...]) -> bool:
    own, quad = shape
    return all(_beside(own, rect) or apart(quad, other) for rect, other in others)


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
