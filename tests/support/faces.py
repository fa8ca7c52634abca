"""What is over a face of a wall under any roof, found by feeling along it.

The roof's height (`shell`) is felt at many places of the face, each time at a few points close by,
which gives the plane there; where two places lie under different planes, halving finds the place
between. Plates are laid under those planes as plain geometry has it (`solids`). Nothing is taken
from the rooms under test.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from itertools import pairwise
from typing import NamedTuple

from solids import Stand, Surface

STEP = 38.0
"""How far apart the face is felt at first, mm."""

_FEEL = 0.01
_FINE = 1e-4

Felt = tuple[float, Surface]
"""A place along the face and the plane over it."""


class Over(NamedTuple):
    """The planes over a face from left to right, the places between them, and which are steps."""

    planes: tuple[Surface, ...]
    breaks: tuple[float, ...]
    steps: tuple[bool, ...]

    def at(self, x: float) -> Surface:
        """The plane over a place of the face; the left one at a break."""
        return self.planes[sum(1 for b in self.breaks if b < x)]

    def under(self, left: float, right: float) -> set[Surface]:
        """The planes over more than a hair of a stretch."""
        ends = [-math.inf, *self.breaks, math.inf]
        pairs = zip(self.planes, pairwise(ends), strict=True)
        return {p for p, (a, b) in pairs if a < right - 1e-4 and b > left + 1e-4}

    def stepped(self, left: float, right: float) -> bool:
        """Whether a step lies in a stretch or at its very ends."""
        pairs = zip(self.breaks, self.steps, strict=True)
        return any(left - 0.01 <= b <= right + 0.01 for b, step in pairs if step)


Heights = Callable[[float, float], float]
"""The height over a plan point."""


def over(heights: Heights, where: Stand, d: float, width: float) -> Over:
    """What is over the face at `d` of a wall `width` thick; felt just inside the timber."""
    inside = 1.0 if d < width / 2 else -1.0

    def feel(x: float) -> Surface | None:
        return _plane(heights, where, x, d, inside)

    count = max(8, math.ceil(where.run / STEP))
    places = [(n + 0.5) * where.run / count for n in range(count)]
    places = [2 * _FEEL, *places, where.run - 2 * _FEEL]
    felt = [(x, plane) for x in places if (plane := feel(x)) is not None]
    found = felt[:1]
    for place in felt[1:]:
        found += _between(feel, found[-1], place)
    planes, breaks, steps = [found[0][1]], [], []
    for (a, one), (b, other) in pairwise(found):
        if not _same(one, other):
            at, step = _break(one, other, where, d, (a + b) / 2)
            planes.append(other)
            breaks.append(at)
            steps.append(step)
    return Over(tuple(planes), tuple(breaks), tuple(steps))


def under_plates(roof: Over, where: Stand, d: float, thickness: float) -> Over | None:
    """The undersides of plates laid flat under every plane over a face.

    They meet where the moved planes meet, and end plumb at steps. None where a plate is so short
    that its neighbours leave nothing of it.
    """
    moved = tuple(p._replace(offset=p.offset - thickness) for p in roof.planes)
    breaks = []
    for n, (at, step) in enumerate(zip(roof.breaks, roof.steps, strict=True)):
        one, other = moved[n], moved[n + 1]
        breaks.append(at if step else _meet(one, other, where, d, at))
    ends = [0.0, *breaks, where.run]
    if any(b - a < 1e-3 for a, b in pairwise(ends)):
        return None
    return Over(moved, tuple(breaks), roof.steps)


def height(surface: Surface, where: Stand, x: float, d: float) -> float:
    """The height of a plane over a place of the wall."""
    return surface.height(*where.plan(x, d))


def _plane(heights: Heights, where: Stand, x: float, d: float, inside: float) -> Surface | None:
    """The plane over a place; None where a break runs between the points felt."""

    def z(along: float, away: float) -> float:
        return heights(*where.plan(x + along * _FEEL, d + inside * away * _FEEL))

    middle, left, right, near, far = z(0, 2), z(-1, 2), z(1, 2), z(0, 1), z(0, 3)
    if max(abs(left + right - 2 * middle), abs(near + far - 2 * middle)) > 1e-8:
        return None
    along, away = (right - left) / (2 * _FEEL), inside * (far - near) / (2 * _FEEL)
    gradient = [along * a + away * b for a, b in zip(where.along, where.away, strict=True)]
    size = math.sqrt(1.0 + gradient[0] ** 2 + gradient[1] ** 2)
    normal = (-gradient[0] / size, -gradient[1] / size, 1.0 / size)
    u, v = where.plan(x, d + inside * 2 * _FEEL)
    return Surface(normal, normal[0] * u + normal[1] * v + normal[2] * middle)


def _same(a: Surface, b: Surface) -> bool:
    turned = max(abs(m - n) for m, n in zip(a.normal, b.normal, strict=True))
    return turned < 1e-6 and abs(a.offset - b.offset) < 0.02


def _between(feel: Callable[[float], Surface | None], left: Felt, right: Felt) -> list[Felt]:
    """What is felt from a place to the next one, with every plane that lies between them."""
    if _same(left[1], right[1]) or right[0] - left[0] < _FINE:
        return [right]
    middle = (left[0] + right[0]) / 2
    for aside in (0.0, 0.1, -0.1, 0.21, -0.21, 0.3, -0.3):
        x = middle + aside * (right[0] - left[0])
        plane = feel(x)
        if plane is not None:
            here = (x, plane)
            return [*_between(feel, left, here), *_between(feel, here, right)]
    return [right]


def _break(
    one: Surface, other: Surface, where: Stand, d: float, about: float
) -> tuple[float, bool]:
    """Where one plane gives way to another, and whether the roof steps there."""
    apart = height(one, where, about, d) - height(other, where, about, d)
    if abs(apart) > 1.0:
        return about, True
    return _meet(one, other, where, d, about), False


def _meet(one: Surface, other: Surface, where: Stand, d: float, about: float) -> float:
    gaps = [height(one, where, x, d) - height(other, where, x, d) for x in (about, about + 1000.0)]
    closing = (gaps[1] - gaps[0]) / 1000.0
    return about if abs(closing) < 1e-9 else about - gaps[0] / closing
