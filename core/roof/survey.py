"""What was measured beside what is stated: differences, best-fit pitches, points to doubt."""

import statistics

import msgspec

from core.model import Wall
from core.roof.line import RoofLine, Segment
from core.roof.measured import (
    Differences,
    Point,
    difference_at,
    differences,
    floor_heights,
    floor_line,
    roof_heights,
)

ASTRAY = 50.8
"""A point 2 in. or more off the line of its neighbours looks mistyped, mm.

Timber does not bend so far between two readings, while a misread foot, inch or digit is off by
more; common practice, no source.
"""


class Reading(msgspec.Struct, frozen=True):
    """A measured point, mm: its place, its stated and its measured height above the datum.

    `expected` is the height that the points beside it lead to expect; None for one that agrees.
    """

    at: float
    stated: float
    measured: float
    expected: float | None

    @property
    def difference(self) -> float:
        """How much higher it is than stated, mm."""
        return self.measured - self.stated


class BestFit(msgspec.Struct, frozen=True):
    """The stated and the best-fit slope (rise over run, rising to the right) of one plane."""

    left: float
    right: float
    stated: float
    fitted: float


class Survey(msgspec.Struct, frozen=True):
    """The measured points of a wall's roof and floor from left to right, and what follows."""

    roof: tuple[Reading, ...]
    floor: tuple[Reading, ...]
    slopes: tuple[BestFit, ...]
    fall: float
    """How much lower the floor is at the wall's right end than at its left, mm."""

    @property
    def worst(self) -> Reading | None:
        """The point of the roof farthest from where it is stated."""
        return max(self.roof, key=lambda r: abs(r.difference), default=None)


def survey(wall: Wall, stated: RoofLine) -> Survey | None:
    """The points measured at a wall beside its stated roof line; None if there are none."""
    if not wall.roof_points and not wall.floor_points:
        return None
    roof, floor = roof_heights(wall), floor_line(wall)
    level = RoofLine((Segment(0.0, wall.run, 0.0, 0.0, 0.0),))
    return Survey(
        _readings(stated, roof),
        _readings(level, floor_heights(wall)),
        tuple(fit for s in stated.segments if (fit := best_fit(s, roof)) is not None),
        floor.height(0.0) - floor.height(wall.run),
    )


def best_fit(stated: Segment, points: tuple[Point, ...]) -> BestFit | None:
    """The slope of the least-squares line through the points under a segment; None below two."""
    under = [(x, y) for x, y in points if stated.left <= x <= stated.right]
    if len({x for x, _ in under}) < 2:
        return None
    slope = statistics.linear_regression([x for x, _ in under], [y for _, y in under]).slope
    return BestFit(under[0][0], under[-1][0], stated.along, slope)


def astray(found: Differences) -> Differences:
    """The differences that look mistyped, each with what the others lead to expect there, mm.

    The one farthest off the line of its neighbours goes first, and the rest is judged without it.
    A point alone is held against the stated line.
    """
    left, doubted = list(found), []
    while left:
        middle = statistics.median(d for _, d in left)
        off = {p: abs(p[1] - _expected(p, left)) for p in left}
        worst = max(left, key=lambda p: (round(off[p], 3), abs(p[1] - middle), abs(p[1])))
        if off[worst] < ASTRAY:
            break
        doubted.append((worst[0], _expected(worst, left)))
        left.remove(worst)
    return tuple(sorted(doubted))


def _expected(point: tuple[float, float], found: list[tuple[float, float]]) -> float:
    """The difference that the other points lead to expect at the place of one.

    At an end it may be the nearest one's, or go on straight from the two beside it: what agrees
    better with the point.
    """
    others = tuple(p for p in found if p != point)
    if not others:
        return 0.0
    x, d = point
    ways = [difference_at(others, x)]
    pair = others[:2] if x < others[0][0] else others[-2:] if x > others[-1][0] else ()
    if len(pair) == 2:
        (x0, d0), (x1, d1) = pair
        ways.append(d0 + (d1 - d0) * ((x - x0) / (x1 - x0)))
    return min(ways, key=lambda way: abs(d - way))


def _readings(stated: RoofLine, points: tuple[Point, ...]) -> tuple[Reading, ...]:
    doubted = dict(astray(differences(stated, points)))
    return tuple(
        Reading(x, stated.height(x), y, stated.height(x) + doubted[x] if x in doubted else None)
        for x, y in points
    )
