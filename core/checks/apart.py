"""How far apart two solids with six sides are: a wall's timber and what leans past it."""

import math
from collections.abc import Iterator
from itertools import product

Point = tuple[float, float, float]

Solid = tuple[Point, ...]
"""Four corners of the underside round, then the four corners of the top over them, mm; convex."""

_SIDES = ((0, 1, 2, 3), (4, 5, 6, 7), (0, 1, 5, 4), (1, 2, 6, 5), (2, 3, 7, 6), (3, 0, 4, 7))
_EDGES = (*((n, (n + 1) % 4) for n in range(4)), *((n, n + 4) for n in range(4)))
_TOP_EDGES = tuple((n + 4, (n + 1) % 4 + 4) for n in range(4))
_NOTHING = 1e-12


def apart(a: Solid, b: Solid) -> float:
    """The least distance between two solids, mm; 0 where they touch or are in each other.

    >>> cube = tuple((x, y, z) for z in (0.0, 1.0) for x, y in ((0, 0), (1, 0), (1, 1), (0, 1)))
    >>> apart(cube, tuple((x + 4.0, y + 5.0, z) for x, y, z in cube))
    5.0
    """
    if not any(_parts(axis, a, b) for axis in _axes(a, b)):
        return 0.0
    found = [_between_edges(*e, *f) for e, f in product(_edges(a), _edges(b))]
    for solid, other in ((a, b), (b, a)):
        found += [d for side in _sides(solid) for p in other if (d := _over(p, side)) is not None]
    return min(found)


def _edges(solid: Solid) -> list[tuple[Point, Point]]:
    return [(solid[m], solid[n]) for m, n in (*_EDGES, *_TOP_EDGES)]


def _sides(solid: Solid) -> list[tuple[Point, ...]]:
    return [tuple(solid[n] for n in side) for side in _SIDES]


def _axes(a: Solid, b: Solid) -> Iterator[Point]:
    """The directions in which two convex solids that are apart may be parted by a plane."""
    for solid in (a, b):
        for p, q, r, _ in _sides(solid):
            yield _cross(_minus(q, p), _minus(r, p))
    for (p, q), (r, s) in product(_edges(a), _edges(b)):
        yield _cross(_minus(q, p), _minus(s, r))


def _parts(axis: Point, a: Solid, b: Solid) -> bool:
    """Whether the solids lie on either side of a gap in this direction."""
    if _dot(axis, axis) < _NOTHING:
        return False
    on_a, on_b = ([_dot(axis, point) for point in solid] for solid in (a, b))
    slack = _NOTHING * max(map(abs, (*on_a, *on_b)))
    return max(on_a) < min(on_b) - slack or max(on_b) < min(on_a) - slack


def _over(point: Point, side: tuple[Point, ...]) -> float | None:
    """How far a point is from a side that it lies squarely over; None where it does not."""
    p, q, r, _ = side
    normal = _cross(_minus(q, p), _minus(r, p))
    size = math.sqrt(_dot(normal, normal))
    if size < _NOTHING:
        return None
    turns = [
        _dot(_cross(_minus(end, start), _minus(point, start)), normal)
        for start, end in zip(side, (*side[1:], side[0]), strict=True)
    ]
    inside = all(turn >= 0.0 for turn in turns) or all(turn <= 0.0 for turn in turns)
    return abs(_dot(_minus(point, p), normal)) / size if inside else None


def _between_edges(p: Point, q: Point, r: Point, s: Point) -> float:
    """The least distance between the edges from p to q and from r to s."""
    u, v, w = _minus(q, p), _minus(s, r), _minus(p, r)
    a, b, c, d, e = _dot(u, u), _dot(u, v), _dot(v, v), _dot(u, w), _dot(v, w)
    across = a * c - b * b
    on_first = _within((b * e - c * d) / across) if across > _NOTHING * a * c else 0.0
    on_second = _within((b * on_first + e) / c) if c > _NOTHING else 0.0
    on_first = _within((b * on_second - d) / a) if a > _NOTHING else 0.0
    first = tuple(x + on_first * dx for x, dx in zip(p, u, strict=True))
    second = tuple(x + on_second * dx for x, dx in zip(r, v, strict=True))
    return math.dist(first, second)


def _within(share: float) -> float:
    return min(max(share, 0.0), 1.0)


def _minus(a: Point, b: Point) -> Point:
    return a[0] - b[0], a[1] - b[1], a[2] - b[2]


def _dot(a: Point, b: Point) -> float:
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def _cross(a: Point, b: Point) -> Point:
    return a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
