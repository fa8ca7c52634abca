"""Where purlins and beams lie in plan, and where they pass through a wall."""

import math
from collections.abc import Callable, Iterator
from itertools import pairwise

import msgspec

from core.lengths import Length
from core.model import Passing, Purlin, Room, Wall
from core.roof.plane import Plan

LEVEL = 1e-9
"""A wall whose direction has less than this across a purlin runs along it."""

Stretch = tuple[float, float]
"""Two places along a wall, mm, the left one first."""


class PurlinThrough(msgspec.Struct, frozen=True):
    """A purlin that passes through a wall, in the wall's coordinates, mm.

    `near` and `far` are the stretches that it takes up on face A and on the far face; timber keeps
    `gap` away from them. One that ends within the wall takes up on either face what it takes up
    between them. `passing` is how the wall passes it.
    """

    id: str
    near: Stretch
    far: Stretch
    bottom: float
    top: float
    gap: float
    passing: Passing = Passing.THROUGH

    @property
    def left(self) -> float:
        """The left end of what it takes up on either face, with its gap."""
        return min(self.near[0], self.far[0]) - self.gap

    @property
    def right(self) -> float:
        """The right end of what it takes up on either face, with its gap."""
        return max(self.near[1], self.far[1]) + self.gap


def purlin_ends(room: Room, purlin: Purlin) -> tuple[Plan, Plan]:
    """The start and the end of a purlin's left face in plan, mm.

    What is not stated of its ends lies a room's length beyond the room; of one that is turned, at
    the start and the end of the room.
    """
    beyond = room.length.mm if purlin.end_left is None else 0.0
    start = -beyond if purlin.start is None else purlin.start.mm
    end = room.length.mm + beyond if purlin.end is None else purlin.end.mm
    last = purlin.left.mm if purlin.end_left is None else purlin.end_left.mm
    return (purlin.left.mm, start), (last, end)


def purlin_outline(room: Room, purlin: Purlin) -> tuple[Plan, ...]:
    """The corners of a purlin in plan, mm, from the start of its left face round its end."""
    first, last = purlin_ends(room, purlin)
    aside = _times(_right_of(first, last), purlin.timber.thickness.mm)
    return first, last, _plus(last, aside), _plus(first, aside)


def as_passed(room: Room, wall: Wall) -> Room:
    """The room with its purlins as they are to one wall, which may pass them in its own way.

    Of a purlin that a wall passes under, an end that lies within the wall counts as through it:
    a plate passes under its whole thickness or not at all.
    """
    if wall.run <= 0.0:
        return room
    own = (msgspec.structs.replace(purlin, passing=wall.passing(purlin)) for purlin in room.purlins)
    purlins = tuple(
        _carried_through(room, purlin, wall) if purlin.passing is Passing.UNDER else purlin
        for purlin in own
    )
    return room if purlins == room.purlins else msgspec.structs.replace(room, purlins=purlins)


def purlins_through(room: Room, wall: Wall) -> tuple[PurlinThrough, ...]:
    """The purlins that pass through a wall, from left to right; none that it runs along."""
    found = []
    for purlin, outline in _in_wall(room, wall):
        if _runs_along(outline):
            continue
        within = _in_timber(outline, wall)
        if not within:
            continue
        near, far = (_on_face(outline, d) or _extent(within) for d in (0.0, wall.stud.width.mm))
        bottom, gap = purlin.underside.mm, purlin.gap.mm
        top = bottom + purlin.timber.width.mm
        new = PurlinThrough(purlin.id, near, far, bottom, top, gap, purlin.passing)
        if new.left < wall.run and new.right > 0.0:
            found.append(new)
    return tuple(sorted(found, key=lambda c: c.left))


def purlins_met(room: Room, wall: Wall) -> tuple[str, ...]:
    """The ids of all purlins over, in or under a wall's place in plan, whatever their height."""
    return tuple(
        purlin.id
        for purlin in room.purlins
        if wall.run > 0.0 and _over(_local(purlin_outline(room, purlin), wall), wall)
    )


def inside_purlin(room: Room, wall: Wall) -> str | None:
    """The id of a purlin that a wall along it stands in, and would have to pass under."""
    for purlin, outline in _in_wall(room, wall):
        if _runs_along(outline) and _over(outline, wall):
            return purlin.id
    return None


def purlin_across(room: Room, purlin: Purlin, along: float) -> Stretch | None:
    """What a purlin takes up across the room, mm, at a place along it; None where it is not."""
    outline = purlin_outline(room, purlin)
    return None if _runs_along(outline) else _on_face(outline, along)


def _in_wall(room: Room, wall: Wall) -> Iterator[tuple[Purlin, tuple[Plan, ...]]]:
    """Every purlin that walls do not pass under, with its corners as (along the wall, away)."""
    for purlin in room.purlins:
        if purlin.passing is not Passing.UNDER:
            yield purlin, _local(purlin_outline(room, purlin), wall)


def _local(corners: tuple[Plan, ...], wall: Wall) -> tuple[Plan, ...]:
    """Points of the plan as (along the wall, away from face A), mm."""
    (u0, v0), (u1, v1) = wall.chalk
    du, dv = (u1 - u0) / wall.run, (v1 - v0) / wall.run
    moved = ((u - u0, v - v0) for u, v in corners)
    return tuple((u * du + v * dv, v * du - u * dv) for u, v in moved)


def _carried_through(room: Room, purlin: Purlin, wall: Wall) -> Purlin:
    """The purlin, longer at an end that lies within the wall's timber."""
    if purlin.start is None and purlin.end is None:
        return purlin
    first, last, *_ = outline = purlin_outline(room, purlin)
    local, run = _local(outline, wall), math.dist(first, last)
    if _runs_along(local):
        return purlin
    depth, way = wall.stud.width.mm, ((last[0] - first[0]) / run, (last[1] - first[1]) / run)
    more = (depth + purlin.timber.thickness.mm) * run / abs(local[1][1] - local[0][1])
    ends = []
    for point, corners, sign in ((first, (0, 3), -1.0), (last, (1, 2), 1.0)):
        inside = any(1e-6 < local[n][1] < depth - 1e-6 for n in corners)
        ends.append(_plus(point, _times(way, sign * more)) if inside else point)
    (u0, v0), (u1, v1) = ends
    if (first, last) == (ends[0], ends[1]):
        return purlin
    return msgspec.structs.replace(
        purlin, left=Length(u0), start=Length(v0), end=Length(v1), end_left=Length(u1)
    )


def _over(outline: tuple[Plan, ...], wall: Wall) -> bool:
    """Whether a purlin with these corners lies over the wall's timber in plan."""
    within = _in_timber(outline, wall)
    return bool(within) and _extent(within)[0] < wall.run and _extent(within)[1] > 0.0


def _runs_along(outline: tuple[Plan, ...]) -> bool:
    """Whether a purlin runs along the wall, which is along the first coordinate."""
    (x0, d0), (x1, d1) = outline[:2]
    return abs(d1 - d0) / math.dist((x0, d0), (x1, d1)) < LEVEL


def _in_timber(outline: tuple[Plan, ...], wall: Wall) -> tuple[Plan, ...]:
    """The part of an outline between the planes of the wall's faces; nothing where they touch."""
    depth = wall.stud.width.mm
    over = _cut(outline, lambda point: point[1])
    within = _cut(over, lambda point: depth - point[1])
    flat = not within or max(d for _, d in within) - min(d for _, d in within) < 1e-6
    return () if flat else within


def _cut(outline: tuple[Plan, ...], inside: Callable[[Plan], float]) -> tuple[Plan, ...]:
    """The part of a convex outline where a straight measure is not below zero."""
    kept: list[Plan] = []
    for a, b in pairwise((*outline, *outline[:1])):
        at_a, at_b = inside(a), inside(b)
        if at_a >= 0.0:
            kept.append(a)
        if at_a * at_b < 0.0:
            share = at_a / (at_a - at_b)
            kept.append((a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])))
    return tuple(kept)


def _on_face(outline: tuple[Plan, ...], d: float) -> Stretch | None:
    """What both long faces of a purlin leave between them on a face of the wall.

    None where one of them, or both, end before it.
    """
    first, last, last_right, first_right = outline
    places = []
    for (x0, d0), (x1, d1) in ((first, last), (first_right, last_right)):
        if not min(d0, d1) - 1e-6 <= d <= max(d0, d1) + 1e-6:
            return None
        places.append(x0 + (x1 - x0) * (d - d0) / (d1 - d0))
    return min(places), max(places)


def _extent(outline: tuple[Plan, ...]) -> Stretch:
    return min(x for x, _ in outline), max(x for x, _ in outline)


def _right_of(first: Plan, last: Plan) -> Plan:
    """The direction to the right for one who looks along the left face; of length one."""
    run = math.dist(first, last)
    return (last[1] - first[1]) / run, -(last[0] - first[0]) / run


def _times(direction: Plan, size: float) -> Plan:
    return direction[0] * size, direction[1] * size


def _plus(a: Plan, b: Plan) -> Plan:
    return a[0] + b[0], a[1] + b[1]
