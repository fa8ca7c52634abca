"""The roof line of a wall: what is overhead along it, as straight segments in wall coordinates.

x runs along the wall from its left end, y up, d away from face A through the wall. Over each
segment one plane is overhead, y = height + along*x + across*d.
"""

import math
from collections.abc import Callable
from itertools import combinations, pairwise

import msgspec

from core.roof.plane import Plan, Plane, Roof
from core.roof.reach import reach

TOUCH = 1e-6
"""Heights nearer than this (mm) count as equal: the line is unbroken there."""


class Segment(msgspec.Struct, frozen=True, cache_hash=True):
    """One plane over the wall from x = `left` to x = `right`; `height` is its height at x = 0."""

    left: float
    right: float
    height: float
    along: float
    across: float

    def at(self, x: float) -> float:
        """The height at x on this face, mm."""
        return self.height + self.along * x

    def raised(self, by: float) -> "Segment":
        """The same slope `by` mm higher."""
        return msgspec.structs.replace(self, height=self.height + by)

    @property
    def secant(self) -> float:
        """One over the cosine of the plane's true slope: vertical over square thickness."""
        return math.sqrt(1.0 + self.along**2 + self.across**2)

    @property
    def angle(self) -> float:
        """The slope in the wall's own plane, radians, positive rising to the right."""
        return math.atan(self.along)


class RoofLine(msgspec.Struct, frozen=True, cache_hash=True):
    """Segments from left to right without gaps; neighbours may meet at a vertical step."""

    segments: tuple[Segment, ...]

    def height(self, x: float) -> float:
        """The height at x, mm; the lower side at a step. Beyond the ends the end planes go on."""
        return min(segment.at(x) for segment in self._around(x))

    def lowest(self, left: float, right: float) -> float:
        """The lowest height between two places, both included, mm; the end planes go on."""
        last = len(self.segments) - 1
        low = math.inf
        for index, segment in enumerate(self.segments):
            start = left if index == 0 else max(left, segment.left)
            end = right if index == last else min(right, segment.right)
            if start <= end + TOUCH:
                low = min(low, segment.at(start), segment.at(end))
        return low

    def points(self) -> tuple[tuple[float, float], ...]:
        """The corners of the line from left to right, mm; two at a step."""
        corners: list[tuple[float, float]] = []
        for segment in self.segments:
            start = (segment.left, segment.at(segment.left))
            if not corners or abs(corners[-1][1] - start[1]) > TOUCH:
                corners.append(start)
            corners.append((segment.right, segment.at(segment.right)))
        return tuple(corners)

    def between(self, left: float, right: float) -> tuple[Segment, ...]:
        """The segments cut to a stretch, as what is overhead of a stud stands to it.

        A stretch astride a step takes the lowest of its lines over its whole width: a stud there
        is cut to pass under, not notched.
        """
        over = tuple(s for s in self.segments if s.left < right - TOUCH and s.right > left + TOUCH)
        over = over or (self._around((left + right) / 2)[0],)
        if len(over) == 1:
            return (_cut(over[0], left, right),)
        if _stepped(over):
            return _lowest_of(over, left, right)
        ends = [left, *(s.left for s in over[1:]), right]
        return tuple(_cut(s, a, b) for s, (a, b) in zip(over, pairwise(ends), strict=True))

    def _around(self, x: float) -> list[Segment]:
        """The segment over x, or both where x is a break."""
        over = [s for s in self.segments if s.left - TOUCH <= x <= s.right + TOUCH]
        if over:
            return over
        return [self.segments[0] if x < self.segments[0].left else self.segments[-1]]


Joint = Callable[[Segment, Segment], bool]
"""Whether plates under two neighbouring segments are joined in one way or another."""


def never(_left: Segment, _right: Segment) -> bool:
    """No, whatever the neighbours."""
    return False


def roof_line(roof: Roof, start: Plan, end: Plan, toward: float = 0.0) -> RoofLine:
    """The roof line along the plan line from `start` to `end`.

    Exact: planes and outlines are straight, so the line can only break where two planes cross or
    an outline is crossed. Where the line itself runs under such a break, the plane on the side of
    the timber counts: `toward` is a small step to that side, mm, positive away from face A.
    ValueError where no roof is overhead or the line has no length.
    """
    length = math.dist(start, end)
    if length <= TOUCH:
        raise ValueError("a wall needs two ends apart from each other")
    direction = ((end[0] - start[0]) / length, (end[1] - start[1]) / length)
    away = (-direction[1], direction[0])
    roof = _over(roof, start, direction, length)
    segments: list[Segment] = []
    for left, right in pairwise(_breaks(roof, start, direction, length)):
        middle = _step(start, direction, (left + right) / 2)
        plane = roof.plane(_step(middle, away, toward))
        if plane is None:
            raise ValueError("there is no roof over part of this wall")
        height, along = plane.at(start), plane.toward(direction)
        append(segments, Segment(left, right, height, along, plane.toward(away)))
    return RoofLine(tuple(segments))


def underside(line: RoofLine, thickness: float, *, plumb: Joint = never) -> RoofLine:
    """The line of the underside of a plate `thickness` thick (mm) nailed up under `line`.

    Each plane comes down by its plate's vertical thickness, thickness times secant; where unlike
    slopes meet, the undersides therefore meet at another x than the roof line. Between neighbours
    that are `plumb` the plates butt plumb under its break, and unlike undersides leave a step.
    """
    return RoofLine(tuple(s for s in lowered(line, thickness, plumb=plumb) if s is not None))


def lowered(
    line: RoofLine, thickness: float, *, plumb: Joint = never
) -> tuple[Segment | None, ...]:
    """The segments of `underside`, one for each of `line`; None where neighbours swallow one.

    At a vertical step the plates end plumb and the break stays where it is.
    """
    return dropped(line, lambda s: thickness * s.secant, plumb)


def dropped(
    line: RoofLine, drop: Callable[[Segment], float], plumb: Joint = never
) -> tuple[Segment | None, ...]:
    """The segments of `line` each brought down by its own `drop` (mm), meeting at their new breaks.

    Neighbours that are `plumb` keep their break. None where neighbours swallow one.
    """
    down = [msgspec.structs.replace(s, height=s.height - drop(s)) for s in line.segments]
    kept = list(range(len(down)))
    while True:
        for i, j in pairwise(kept):
            a, b = line.segments[i], line.segments[j]
            kept_break = a.right == b.left and plumb(a, b)
            x = a.right if kept_break else _break(a, b, down[i], down[j])
            down[i] = msgspec.structs.replace(down[i], right=x)
            down[j] = msgspec.structs.replace(down[j], left=x)
        gone = [i for i in kept if down[i].right - down[i].left <= TOUCH]
        if not gone or len(kept) == 1:
            return tuple(down[i] if i in kept else None for i in range(len(down)))
        kept.remove(min(gone, key=lambda i: down[i].right - down[i].left))
        down[kept[0]] = msgspec.structs.replace(down[kept[0]], left=line.segments[0].left)
        down[kept[-1]] = msgspec.structs.replace(down[kept[-1]], right=line.segments[-1].right)


def _over(roof: Roof, start: Plan, direction: Plan, length: float) -> Roof:
    """The parts and ceilings of a roof that a line in plan runs under."""
    parts, ceilings = (
        tuple(part for part in found if reach(part, start, direction, length))
        for found in (roof.parts, roof.ceilings)
    )
    return Roof(parts, ceilings)


def _breaks(roof: Roof, start: Plan, direction: Plan, length: float) -> list[float]:
    parts = (*roof.parts, *roof.ceilings)
    places = {0.0, length}
    reached: dict[Plane, tuple[float, float]] = {}
    for part in parts:
        stretch = reach(part, start, direction, length) or (0.0, length)
        for plane in part.planes:
            low, high = reached.get(plane, stretch)
            reached[plane] = (min(low, stretch[0]), max(high, stretch[1]))
    for (a, (a0, a1)), (b, (b0, b1)) in combinations(reached.items(), 2):
        crossings = _crossing(a, b, start, direction)
        places.update(x for x in crossings if max(a0, b0) <= x <= min(a1, b1))
    for part in parts:
        outline = part.outline or ()
        for corner, following in zip(outline, (*outline[1:], *outline[:1]), strict=True):
            places.update(_edge_crossing(corner, following, start, direction))
    inside = sorted(x for x in places if 0.0 <= x <= length)
    apart = [inside[0]]
    for x in inside[1:-1]:
        if x - apart[-1] > TOUCH and inside[-1] - x > TOUCH:
            apart.append(x)
    return [*apart, inside[-1]]


def _crossing(a: Plane, b: Plane, start: Plan, direction: Plan) -> tuple[float, ...]:
    closing = a.toward(direction) - b.toward(direction)
    return () if abs(closing) < 1e-12 else ((b.at(start) - a.at(start)) / closing,)


def _edge_crossing(a: Plan, b: Plan, start: Plan, direction: Plan) -> tuple[float, ...]:
    edge = (b[0] - a[0], b[1] - a[1])
    cross = direction[0] * edge[1] - direction[1] * edge[0]
    if abs(cross) < 1e-9:
        return ()
    return (((a[0] - start[0]) * edge[1] - (a[1] - start[1]) * edge[0]) / cross,)


def _step(start: Plan, direction: Plan, x: float) -> Plan:
    return (start[0] + x * direction[0], start[1] + x * direction[1])


def append(segments: list[Segment], new: Segment) -> None:
    """Add a segment, or lengthen the last one where the same plane goes on."""
    if segments and _same_plane(segments[-1], new):
        segments[-1] = msgspec.structs.replace(segments[-1], right=new.right)
    else:
        segments.append(new)


def _same_plane(a: Segment, b: Segment) -> bool:
    return (a.height, a.along, a.across) == (b.height, b.along, b.across)


def _break(a: Segment, b: Segment, a_down: Segment, b_down: Segment) -> float:
    """Where two neighbours meet once lowered; at a step or a parallel pair, their old break."""
    stepped = a.right == b.left and abs(a.at(a.right) - b.at(b.left)) > TOUCH
    closing = a.along - b.along
    if stepped or abs(closing) < 1e-12:
        return a.right
    return (b_down.height - a_down.height) / closing


def _cut(segment: Segment, left: float, right: float) -> Segment:
    return Segment(left, right, segment.height, segment.along, segment.across)


def _stepped(over: tuple[Segment, ...]) -> bool:
    return any(abs(a.at(a.right) - b.at(b.left)) > TOUCH for a, b in pairwise(over))


def _lowest_of(over: tuple[Segment, ...], left: float, right: float) -> tuple[Segment, ...]:
    """The lower envelope of the segments' lines between two places."""
    places = {left, right}
    for a, b in combinations(over, 2):
        if abs(a.along - b.along) > 1e-12:
            places.add((b.height - a.height) / (a.along - b.along))
    inside = sorted(x for x in places if left <= x <= right)
    lowest: list[Segment] = []
    for a_x, b_x in pairwise(inside):
        low = min(over, key=lambda s: s.at((a_x + b_x) / 2))
        append(lowest, _cut(low, a_x, b_x))
    return tuple(lowest)
