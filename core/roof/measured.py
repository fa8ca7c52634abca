"""Lines as they were measured: the stated line moved so that it passes through the points.

Between two points the line is straight. It keeps a break of the stated line (a ridge, the edge of
a ceiling) that lies between them, unless a point was measured at the break: then that point is it.
Beyond the outermost points the line runs on beside the stated one, but for a point at an end of the
wall: there it runs straight on. The slope across the wall stays
the stated plane's.
"""

from itertools import pairwise

import msgspec

from core.model import Wall
from core.roof.line import TOUCH, RoofLine, Segment

Point = tuple[float, float]
"""A measured point: x along the wall and y above the datum, mm."""

Differences = tuple[tuple[float, float], ...]
"""Places along a wall, mm, and how much higher than stated the line is there, mm."""

AT_BREAK = 152.4
"""A point measured no farther than 6 in. from a stated break or an end is taken to be it, mm."""


def floor_heights(wall: Wall) -> tuple[Point, ...]:
    """The measured points of the floor from left to right, mm."""
    line = wall.level_line
    points = (
        (p.at.mm, p.height.mm if line is None else line.mm - p.height.mm) for p in wall.floor_points
    )
    return tuple(sorted(points))


def roof_heights(wall: Wall) -> tuple[Point, ...]:
    """The measured points of the roof from left to right, mm."""
    floor, line = floor_line(wall), wall.level_line
    points = (
        (p.at.mm, p.height.mm + (floor.height(p.at.mm) if line is None else line.mm))
        for p in wall.roof_points
    )
    return tuple(sorted(points))


def floor_line(wall: Wall) -> RoofLine:
    """The floor under a wall: level at the datum, or through its measured points."""
    level = RoofLine((Segment(0.0, wall.run, 0.0, 0.0, 0.0),))
    return corrected(level, differences(level, floor_heights(wall)))


def differences(line: RoofLine, points: tuple[Point, ...]) -> Differences:
    """How far each measured point lies above the stated line."""
    return tuple((x, y - line.height(x)) for x, y in points)


def corrected(line: RoofLine, found: Differences) -> RoofLine:
    """The line moved by the differences that were found; the line itself without any.

    >>> flat = RoofLine((Segment(0.0, 100.0, 20.0, 0.0, 0.0),))
    >>> corrected(flat, ((50.0, -2.0),)).points()
    ((0.0, 18.0), (100.0, 18.0))
    """
    if not found:
        return line
    segments: list[Segment] = []
    for left, right in pairwise(_places(line, [x for x, _ in found])):
        stated = _over(line, (left + right) / 2)
        start, end = (_height(line, stated, x, found) for x in (left, right))
        along = (end - start) / (right - left)
        _append(segments, Segment(left, right, start - along * left, along, stated.across))
    return RoofLine(_straight_to_ends(segments, {x for x, _ in found}))


def difference_at(found: Differences, x: float) -> float:
    """The difference at x, mm: straight between two points, the outermost one's beyond them."""
    for (x0, d0), (x1, d1) in pairwise(found):
        if x0 <= x <= x1:
            return d0 + (d1 - d0) * ((x - x0) / (x1 - x0))
    return found[0][1] if x < found[0][0] else found[-1][1]


def _straight_to_ends(segments: list[Segment], stations: set[float]) -> tuple[Segment, ...]:
    """The segments without a stub between the outermost point and an end of the wall."""
    kept = list(segments)
    if len(kept) > 1 and kept[-1].left in stations and _is_stub(kept[-1], kept[-2]):
        kept[-2:] = [msgspec.structs.replace(kept[-2], right=kept[-1].right)]
    if len(kept) > 1 and kept[0].right in stations and _is_stub(kept[0], kept[1]):
        kept[:2] = [msgspec.structs.replace(kept[1], left=kept[0].left)]
    return tuple(kept)


def _is_stub(end: Segment, beside: Segment) -> bool:
    left, right = (end, beside) if end.left < beside.left else (beside, end)
    return end.right - end.left <= AT_BREAK and not _stepped(left, right)


def _places(line: RoofLine, stations: list[float]) -> list[float]:
    """The ends of the line, the points between them, and the breaks that stay."""
    first, last = line.segments[0].left, line.segments[-1].right
    breaks = [a.right for a, b in pairwise(line.segments) if _stays(a, b, stations)]
    places = [first]
    for x in sorted((*stations, *breaks)):
        if places[-1] + TOUCH < x < last - TOUCH:
            places.append(x)
    return [*places, last]


def _stays(a: Segment, b: Segment, stations: list[float]) -> bool:
    return _stepped(a, b) or all(abs(x - a.right) > AT_BREAK for x in stations)


def _stepped(a: Segment, b: Segment) -> bool:
    return abs(a.at(a.right) - b.at(b.left)) > TOUCH


def _over(line: RoofLine, x: float) -> Segment:
    return next(s for s in line.segments if x <= s.right or s is line.segments[-1])


def _height(line: RoofLine, stated: Segment, x: float, found: Differences) -> float:
    """The height at x as seen from the stated plane of one side of it."""
    at_step = any(abs(a.right - x) <= TOUCH and _stepped(a, b) for a, b in pairwise(line.segments))
    measured = any(abs(at - x) <= TOUCH for at, _ in found)
    base = line.height(x) if measured and not at_step else stated.at(x)
    return base + difference_at(found, x)


def _append(segments: list[Segment], new: Segment) -> None:
    """Add a segment, or lengthen the last one where it runs straight on."""
    if segments and _runs_on(segments[-1], new):
        segments[-1] = msgspec.structs.replace(segments[-1], right=new.right)
    else:
        segments.append(new)


def _runs_on(a: Segment, b: Segment) -> bool:
    turned = abs(a.along - b.along) > 1e-9 or abs(a.across - b.across) > 1e-9
    return not turned and not _stepped(a, b)
