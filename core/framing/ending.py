"""How a plate is ended by a cut, and how far along a plate its ends are."""

import math
from itertools import pairwise

import msgspec

from core.framing.bending import courses, underside
from core.framing.member import XY, Facet, Member
from core.model import Side


class Line(msgspec.Struct, frozen=True):
    """A cut seen on one face of the wall: square to `way`, through the point `at`, mm."""

    at: XY
    way: XY

    def beyond(self, point: XY) -> float:
        """How far a point lies beyond the cut along `way`, mm."""
        return (point[0] - self.at[0]) * self.way[0] + (point[1] - self.at[1]) * self.way[1]


def ended(plate: Member, cut: tuple[Line, Line], side: Side, facet: Facet) -> Member:
    """The plate ended on one side by a cut, as seen on face A and on the far face.

    What the plate is too short for goes on straight. Lengths are those along it.
    """
    near, far = (
        tuple(_ended(course, line, side) for course in courses(outline))
        for outline, line in zip((plate.near, plate.far), cut, strict=True)
    )
    lengths = [sum(math.dist(a, b) for a, b in pairwise(course)) for course in (*near, *far)]
    piece = msgspec.structs.replace(
        plate,
        near=(*near[0], *reversed(near[1])),
        far=(*far[0], *reversed(far[1])),
        edges=(lengths[0], lengths[1], lengths[2], lengths[3]),
        long_point=max(lengths),
        short_point=min(lengths),
        first_cut=(facet,) if side is Side.LEFT else plate.first_cut,
        last_cut=(facet,) if side is Side.RIGHT else plate.last_cut,
    )
    start, end = reach(piece)
    return msgspec.structs.replace(piece, overall=end - start)


def along(course: tuple[XY, ...], point: XY, x: float) -> float:
    """How far along a plate a point is that lies square off its underside at x, mm.

    It counts from a place that all layers of straight plates share, their axis' foot.
    """
    shift, before = 0.0, None
    for start, end in pairwise(course):
        axis = direction(start, end)
        if before is not None:
            shift += _dot(start, before) - _dot(start, axis)
        before = axis
        if x <= end[0]:
            break
    return shift + _dot(point, before or (1.0, 0.0))


def reach(plate: Member) -> XY:
    """The first and the last tip of a plate along it, mm."""
    first, last = _ends(plate)
    return min(first), max(last)


def whole(plate: Member) -> XY:
    """The stretch along it in which a plate has its whole section, between both cuts, mm."""
    first, last = _ends(plate)
    return max(first), min(last)


def direction(start: XY, end: XY) -> XY:
    """The way from one point to another, of length one."""
    run = math.dist(start, end)
    return (end[0] - start[0]) / run, (end[1] - start[1]) / run


def _ended(course: tuple[XY, ...], line: Line, side: Side) -> tuple[XY, ...]:
    """A course that begins, or ends, at a line."""
    if side is Side.LEFT:
        return _begun(course, line)
    back = Line(line.at, (-line.way[0], -line.way[1]))
    return _begun(course[::-1], back)[::-1]


def _begun(course: tuple[XY, ...], line: Line) -> tuple[XY, ...]:
    pairs = list(pairwise(course))
    a, b = next((pair for pair in pairs if line.beyond(pair[1]) > 0.0), pairs[-1])
    share = line.beyond(a) / (line.beyond(a) - line.beyond(b))
    start = (a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1]))
    kept = tuple(point for point in course[1:] if line.beyond(point) > 0.0)
    return (start, *(kept or (start,)))


def _ends(plate: Member) -> tuple[list[float], list[float]]:
    """How far along a plate the four corners of either end are."""
    under = underside(plate)
    faces = [courses(outline) for outline in (plate.near, plate.far)]
    both = [
        [along(under, course[end], under[end][0]) for face in faces for course in face]
        for end in (0, -1)
    ]
    return both[0], both[1]


def _dot(a: XY, b: XY) -> float:
    return a[0] * b[0] + a[1] * b[1]
