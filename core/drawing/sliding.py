"""Sliding a rectangle along a straight way past what is taken, to find where it is free.

All searches for room on a drawing are such slides: a text up a stud, a label away from one, a name
along a plate. What stands in the way is reckoned once for a slide, not for each place tried.
"""

import math
from collections.abc import Iterable

from core.drawing.placing import Rect

Stretch = tuple[float, float]
"""How far along a slide something begins and ends to be in the way, mm; at both it just touches."""

XY = tuple[float, float]


def in_the_way(rect: Rect, way: XY, taken: Iterable[Rect]) -> list[Stretch]:
    """The stretches of a slide of `rect` along `way`, of length one, on which it overlaps another.

    >>> in_the_way((0.0, 0.0, 2.0, 1.0), (1.0, 0.0), [(5.0, 0.0, 6.0, 9.0)])
    [(3.0, 6.0)]
    """
    left, bottom, right, top = rect
    across, up = way
    # Most slides are straight up or level: for them it is written out.
    if (across, up) == (0.0, 1.0):
        return [(b - top, d - bottom) for a, b, c, d in taken if left < c and right > a]
    if (across, up) == (1.0, 0.0):
        return [(a - right, c - left) for a, b, c, d in taken if bottom < d and top > b]
    if (across, up) == (-1.0, 0.0):
        return [(left - c, right - a) for a, b, c, d in taken if bottom < d and top > b]
    found = []
    for a, b, c, d in taken:
        (low, high), (lowest, highest) = (
            _met(left, right, a, c, across),
            _met(bottom, top, b, d, up),
        )
        if (start := max(low, lowest)) < (end := min(high, highest)):
            found.append((start, end))
    return found


def is_free(place: float, stretches: Iterable[Stretch]) -> bool:
    """Whether nothing is in the way at a place of a slide; touching is free."""
    for start, end in stretches:  # noqa: SIM110 - a generator costs thrice as much here
        if start < place < end:
            return False
    return True


def first_free(start: float, step: float, count: int, stretches: Iterable[Stretch]) -> int | None:
    """The number of the first free one of `count` places from `start` on, each a step farther.

    The step may lead back. What is in the way is passed in one go, not place by place.

    >>> first_free(0.0, 2.0, 5, [(3.0, 6.0), (-1.0, 1.0)]), first_free(0.0, -2.0, 2, [(-3.0, 1.0)])
    (1, None)
    """
    way, n = math.copysign(1.0, step), 0
    ahead = stretches if way > 0.0 else ((-end, -start) for start, end in stretches)
    for low, high in sorted(ahead):
        while n < count and low < way * (start + n * step) < high:
            n = max(n + 1, math.floor((high - way * start) / abs(step)))
    return n if n < count else None


def _met(low: float, high: float, other_low: float, other_high: float, way: float) -> Stretch:
    """Where along a slide one side of a rectangle overlaps another's; all along it, or nowhere."""
    if way == 0.0:
        meets = low < other_high and high > other_low
        return (-math.inf, math.inf) if meets else (math.inf, -math.inf)
    if way > 0.0:
        return (other_low - high) / way, (other_high - low) / way
    return (other_high - low) / way, (other_low - high) / way
