"""The floor that a wall needs to be laid out flat, and what stands on it."""

from collections.abc import Iterable, Iterator
from itertools import pairwise

import msgspec

from core.framing import existing_footprints, stair_footprint
from core.model import KeptClear, Room, Wall
from core.roof import Plan
from core.site.surroundings import Surroundings
from core.site.swing import Laid, Place

TOUCHING = 100.0
"""Two walls share less floor than this (mm²) where they only touch."""

OUTSIDE = 1.0
"""A wall may lie this far (mm) out of the room, for numbers that were rounded."""


class Floor(msgspec.Struct, frozen=True):
    """The floor for laying a wall or panel out: `length` along its place, `depth` beside it; mm.

    `lacking` is how far it would reach out of the room, and `in_the_way` the letters of walls whose
    place is where it lies or swings: it has to go up before them. `taken` names what is there for
    good, by its id: chimneys and ducts, stair openings, walls that stand already.
    """

    length: float
    depth: float
    lacking: float
    in_the_way: tuple[str, ...]
    taken: tuple[str, ...] = ()

    @property
    def enough(self) -> bool:
        """Whether the room has the floor, with nothing on it that is there for good."""
        return self.lacking <= 0.0 and not self.taken

    @property
    def free(self) -> bool:
        """Whether the wall can lie there when the other walls already stand."""
        return self.enough and not self.in_the_way


def floor_for(around: Surroundings, places: tuple[Place, ...], laid: Laid) -> Floor:
    """The floor for a wall or panel with this top, laid down on one side.

    Whatever stands on the floor that it covers while it lies is in the way of its swing, too, and
    nothing else is: turning up, no point goes farther from the pivot edge than it lies.
    """
    top = _profile(places)
    lying = [around.plan(*_lying(around, p, laid)) for p in top]
    covered = list(_covered(around, top, laid))
    way = [w.letter for w in around.others if _shares(around, covered, footprint(w))]
    there = _there_for_good(around.room)
    taken = [name for name, corners in there if _shares(around, covered, corners)]
    return Floor(
        length=top[-1][0] - top[0][0],
        depth=max(y for _, y in top),
        lacking=_lacking(around, lying),
        in_the_way=tuple(way),
        taken=tuple(taken),
    )


def footprint(wall: Wall) -> tuple[Plan, ...]:
    """The corners of a standing wall in plan, mm."""
    (u0, v0), (u1, v1) = wall.chalk
    du, dv = (-(v1 - v0) / wall.run, (u1 - u0) / wall.run)
    deep = wall.stud.width.mm
    return (
        (u0, v0),
        (u1, v1),
        (u1 + deep * du, v1 + deep * dv),
        (u0 + deep * du, v0 + deep * dv),
    )


def _there_for_good(room: Room) -> Iterator[tuple[str, tuple[Plan, ...]]]:
    """What of the floor no wall can be laid on, by its id, with its corners in plan, mm."""
    for kept in room.kept_clear:
        yield kept.id, _foot(kept)
    grounds = (*map(stair_footprint, room.stair_openings), *existing_footprints(room))
    for ground in grounds:
        (u, v), (du, dv), (au, av) = ground.start, ground.along, ground.away
        places = ((0.0, 0.0), (ground.run, 0.0), (ground.run, ground.width), (0.0, ground.width))
        yield ground.letter, tuple((u + du * x + au * y, v + dv * x + av * y) for x, y in places)


def _foot(kept: KeptClear) -> tuple[Plan, ...]:
    """The corners of a chimney or duct where it stands on the floor, in plan, mm."""
    u0, v0 = kept.corner_at(0.0)
    u1, v1 = u0 + kept.wide.mm, v0 + kept.deep.mm
    return (u0, v0), (u1, v0), (u1, v1), (u0, v1)


def _profile(places: tuple[Place, ...]) -> list[Plan]:
    """The highest y at each x, from left to right."""
    highest: dict[float, float] = {}
    for place in places:
        highest[place.x] = max(place.y, highest.get(place.x, 0.0))
    return sorted(highest.items())


def _lying(around: Surroundings, top: Plan, laid: Laid) -> Plan:
    """Where a point of the top lies: (x, mm away from face A)."""
    x, y = top
    return (x, -y) if laid is Laid.FACE_A else (x, around.depth + y)


def _covered(around: Surroundings, top: list[Plan], laid: Laid) -> Iterable[tuple[Plan, ...]]:
    """The floor covered by the lying wall and its place, as four-cornered strips, (x, away)."""
    foot = around.depth if laid is Laid.FACE_A else 0.0
    for a, b in pairwise(top):
        if b[0] - a[0] > 1e-6:
            yield (a[0], foot), (b[0], foot), _lying(around, b, laid), _lying(around, a, laid)


def _lacking(around: Surroundings, lying: list[Plan]) -> float:
    width, length = around.room.width.mm, around.room.length.mm
    out = max(max(-u, u - width, -v, v - length) for u, v in lying)
    return out if out > OUTSIDE else 0.0


def _shares(around: Surroundings, covered: list[tuple[Plan, ...]], other: tuple[Plan, ...]) -> bool:
    """Whether something with these corners in plan stands on the floor that is covered."""
    shape = tuple(around.local(point) for point in other)
    return sum(_area(_clipped(shape, strip)) for strip in covered) > TOUCHING


def _clipped(shape: tuple[Plan, ...], window: tuple[Plan, ...]) -> tuple[Plan, ...]:
    """What of a convex shape lies in a convex window, cut along each of its edges in turn."""
    turn = 1.0 if _signed(window) >= 0 else -1.0
    for a, b in zip(window, (*window[1:], *window[:1]), strict=True):
        sides = [
            turn * ((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])) for p in shape
        ]
        shape = tuple(_kept(shape, sides))
    return shape


def _kept(shape: tuple[Plan, ...], sides: list[float]) -> Iterable[Plan]:
    for n, (p, side) in enumerate(zip(shape, sides, strict=True)):
        q, after = shape[(n + 1) % len(shape)], sides[(n + 1) % len(shape)]
        if side >= 0:
            yield p
        if (side > 0 > after) or (side < 0 < after):
            share = side / (side - after)
            yield (p[0] + share * (q[0] - p[0]), p[1] + share * (q[1] - p[1]))


def _area(shape: tuple[Plan, ...]) -> float:
    return abs(_signed(shape))


def _signed(shape: tuple[Plan, ...]) -> float:
    """The area within an outline, mm²; positive counter-clockwise."""
    turned = zip(shape, (*shape[1:], *shape[:1]), strict=True)
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in turned) / 2
