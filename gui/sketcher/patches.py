"""Few rectangles around many: what is to be painted anew, piece by piece."""

from collections.abc import Iterable

Dots = tuple[int, int, int, int]
"""left, top, and the first dot past the right and past the bottom."""

SPARE = 6000
"""Two rectangles are taken as one where that adds no more than so many dots."""


def patches(places: Iterable[Dots], wide: int, high: int) -> list[Dots]:
    """Rectangles that hold all of these places, as far as they are in a picture of so many dots."""
    found: list[Dots] = []
    for left, top, right, bottom in sorted(set(places)):
        one = max(left, 0), max(top, 0), min(right, wide), min(bottom, high)
        if one[0] < one[2] and one[1] < one[3]:
            _take_in(found, one)
    return found


def meet(one: Dots, other: Dots) -> bool:
    """Whether two rectangles share a dot."""
    return one[0] < other[2] and one[2] > other[0] and one[1] < other[3] and one[3] > other[1]


def around(places: list[Dots]) -> Dots:
    """The smallest rectangle around others; ValueError if there are none."""
    lefts, tops, rights, bottoms = zip(*places, strict=True)
    return min(lefts), min(tops), max(rights), max(bottoms)


def _take_in(found: list[Dots], one: Dots) -> None:
    """Put a rectangle among others, as one with all of them that it wastes little with."""
    n = 0
    while n < len(found):
        both = _both(one, found[n])
        if _area(both) <= _area(one) + _area(found[n]) + SPARE:
            one = both
            del found[n]
            n = 0
        else:
            n += 1
    found.append(one)


def _both(one: Dots, other: Dots) -> Dots:
    """The rectangle around two; written out, since hundreds of pairs are tried on each frame."""
    a, b, c, d = one
    left, top, right, bottom = other
    return (
        a if a < left else left,
        b if b < top else top,
        c if c > right else right,
        d if d > bottom else bottom,
    )


def _area(one: Dots) -> int:
    return (one[2] - one[0]) * (one[3] - one[1])
