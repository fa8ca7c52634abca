"""Finding room for texts: rectangles already taken, and figures spread along a line."""

import math
from collections.abc import Iterable, Sequence

from core.kept import Kept

Rect = tuple[float, float, float, float]
"""left, bottom, right, top."""


class Taken:
    """Rectangles that are taken on a drawing; asking is quick because they are kept by columns."""

    def __init__(self, column: float) -> None:
        """Nothing taken yet; `column` is the width of the columns the rectangles are kept by."""
        self._column = column
        self._kept: dict[int, list[Rect]] = {}

    def add(self, rect: Rect) -> None:
        """Take a rectangle."""
        for column in self._columns(rect):
            self._kept.setdefault(column, []).append(rect)

    def free(self, rect: Rect) -> bool:
        """Whether a rectangle overlaps none that is taken; touching is no overlap."""
        return not self.near(rect)

    def near(self, rect: Rect) -> tuple[Rect, ...]:
        """What is taken of a rectangle: all that overlap it, each once."""
        left, bottom, right, top = rect
        columns = self._columns(rect)
        found = [
            other
            for column in columns
            if column in self._kept
            for other in self._kept[column]
            if left < other[2] and right > other[0] and bottom < other[3] and top > other[1]
        ]
        # What lies in several columns is met in each of them.
        return tuple(found) if len(columns) == 1 else tuple(dict.fromkeys(found))

    def _columns(self, rect: Rect) -> range:
        return range(int(rect[0] // self._column), int(rect[2] // self._column) + 1)


class Ground:
    """What stands on a drawing: timber that only leaders may cross, writing that nothing may.

    Searches for room on it are kept in `kept` by all that they may read: the sizes of what is to
    be placed, and what stands near. On the next frame of a drag most of that is the same.
    """

    def __init__(self, column: float, kept: Kept | None = None) -> None:
        """Bare ground; `column` is the width of the columns the rectangles are kept by."""
        self.kept = kept or Kept()
        self._all = Taken(column)
        self._writing = Taken(column)

    def add_timber(self, rect: Rect) -> None:
        """Take a rectangle that leaders may cross."""
        self._all.add(rect)

    def add_writing(self, rect: Rect) -> None:
        """Take a rectangle that nothing may cross."""
        self._all.add(rect)
        self._writing.add(rect)

    def free(self, rect: Rect) -> bool:
        """Whether a text finds room in a rectangle."""
        return self._all.free(rect)

    def passable(self, rect: Rect) -> bool:
        """Whether a leader, or a text that may stand on timber, finds its way in a rectangle."""
        return self._writing.free(rect)

    def near(self, rect: Rect) -> tuple[Rect, ...]:
        """What a text has to keep off in a rectangle: timber and writing."""
        return self._all.near(rect)

    def writing_near(self, rect: Rect) -> tuple[Rect, ...]:
        """What a leader has to keep off in a rectangle: writing."""
        return self._writing.near(rect)


def spread(
    wanted: Sequence[float], gap: float, low: float = -math.inf, high: float = math.inf
) -> list[float]:
    """Places as near as can be to the wanted ones, in their order, at least `gap` apart.

    Least squares: places that would crowd form a row centred on the mean of what they want
    (pool adjacent violators on wanted[i] - i*gap). All stay between `low` and `high`, or stand
    centred between them where they have no room there. `wanted` has to be sorted.

    >>> spread([0.0, 1.0, 10.0], 3.0)
    [-1.0, 2.0, 10.0]
    """
    rows: list[tuple[float, int]] = []
    for index, place in enumerate(wanted):
        mean, size = place - index * gap, 1
        while rows and rows[-1][0] > mean:
            before, count = rows.pop()
            mean = (before * count + mean * size) / (count + size)
            size += count
        rows.append((mean, size))
    last = high - (len(wanted) - 1) * gap
    if last < low:
        low = last = (low + last) / 2
    means = [min(max(mean, low), last) for mean, size in rows for _ in range(size)]
    return [mean + index * gap for index, mean in enumerate(means)]


def bounds(points: Iterable[tuple[float, float]]) -> Rect:
    """The smallest upright rectangle around points; ValueError if there are none."""
    xs, ys = zip(*points, strict=True)
    return min(xs), min(ys), max(xs), max(ys)
