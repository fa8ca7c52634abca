"""The parts of a roof: the room's own slopes and hips, its dormers and its wings.

Every side of a part gives a choice of stretches, each with its planes over a rectangle of the plan.
One stretch of every side together makes a part; a dormer or a wing puts its own planes in the place
of the slope that it stands on, and ends where it meets the slope on the other side.
"""

import math
from collections.abc import Iterator
from itertools import product

import msgspec

from core.model import Dormer, DormerKind, Room, Side, Slope, Wing
from core.roof.plane import Part, Plan, Plane
from core.roof.profile import stretches

_FAR = 1e6
"""What stands for no end, mm: ten times the largest room."""


class Cover(msgspec.Struct, frozen=True):
    """Planes over a rectangle of the plan, from (`u0`, `v0`) to (`u1`, `v1`), mm."""

    planes: tuple[Plane, ...]
    u0: float = -math.inf
    u1: float = math.inf
    v0: float = -math.inf
    v1: float = math.inf


_Sides = dict[str, tuple[Cover, ...]]
"""The covers to choose from, by the side of the room: left, right, start, end."""


def main_parts(room: Room) -> tuple[Part, ...]:
    """The roof of the room itself, without dormers and wings; empty if it has no slope."""
    return tuple(_product(_room_sides(room)))


def dormer_parts(room: Room, dormer: Dormer) -> tuple[Part, ...]:
    """The roof of a dormer, from over its front wall inward to where it meets the other slope."""
    v0, v1 = dormer.start.mm, dormer.start.mm + dormer.width.mm
    rise, height, face = dormer.pitch.tangent, dormer.height.mm, dormer.face.mm
    if dormer.kind is DormerKind.GABLE:
        planes: tuple[Plane, ...] = (
            Plane(0.0, rise, height - rise * v0),
            Plane(0.0, -rise, height + rise * v1),
        )
    elif dormer.side is Side.LEFT:
        planes = (Plane(rise, 0.0, height - rise * face),)
    else:
        planes = (Plane(-rise, 0.0, height + rise * (room.width.mm - face)),)
    ground = msgspec.structs.replace(
        _ground(room, dormer.side, dormer.front.mm - face, (v0, v1)), planes=tuple(planes)
    )
    return tuple(_product(_put(room, dormer.side, (ground,))))


def wing_parts(room: Room, wing: Wing) -> tuple[Part, ...]:
    """The roof of a wing, from its gable inward to where it meets the other slope."""
    v0, v1 = wing.start.mm, wing.start.mm + wing.width.mm
    ground = _ground(room, wing.side, wing.reach.mm, (v0, v1))
    sides = _rising(wing.first, 1.0, v0), _rising(wing.last, -1.0, v1)
    covers = tuple(_both(ground, _both(first, last)) for first, last in product(*sides))
    return tuple(_product(_put(room, wing.side, covers)))


def stands_in_wing(room: Room, point: Plan, slack: float) -> bool:
    """Whether a plan point lies in one of the wings, give or take `slack` mm."""
    for wing in room.wings:
        u = -point[0] if wing.side is Side.LEFT else point[0] - room.width.mm
        along = wing.start.mm - slack <= point[1] <= wing.start.mm + wing.width.mm + slack
        if along and -slack <= u <= wing.reach.mm + slack:
            return True
    return False


def _room_sides(room: Room) -> _Sides:
    sides: _Sides = {}
    if room.left is not None:
        sides["left"] = _rising(room.left, 1.0, 0.0, across=True)
    if room.right is not None:
        sides["right"] = _rising(room.right, -1.0, room.width.mm, across=True)
    if sides and room.start_hip is not None:
        sides["start"] = _rising(room.start_hip, 1.0, 0.0)
    if sides and room.end_hip is not None:
        sides["end"] = _rising(room.end_hip, -1.0, room.length.mm)
    return sides


def _put(room: Room, side: Side, covers: tuple[Cover, ...]) -> _Sides:
    """The sides of the room with these covers in the place of one slope."""
    return {**_room_sides(room), side.value: covers}


def _rising(slope: Slope, way: float, foot: float, *, across: bool = False) -> tuple[Cover, ...]:
    """The covers of a slope that rises along v (or u, if `across`) from `foot`, up or down it."""
    covers = []
    for stretch in stretches(slope):
        ends = sorted((foot + way * stretch.start, foot + way * stretch.end))
        rises = [(line, way * line.rise) for line in stretch.lines]
        if across:
            planes = tuple(Plane(rise, 0.0, n.height - rise * foot) for n, rise in rises)
            covers.append(Cover(planes, u0=ends[0], u1=ends[1]))
        else:
            planes = tuple(Plane(0.0, rise, n.height - rise * foot) for n, rise in rises)
            covers.append(Cover(planes, v0=ends[0], v1=ends[1]))
    return tuple(covers)


def _ground(room: Room, side: Side, out: float, along: tuple[float, float]) -> Cover:
    """The ground from `out` mm beyond the eave wall of a side, inward without end."""
    v0, v1 = along
    if side is Side.LEFT:
        return Cover((), u0=-out, v0=v0, v1=v1)
    return Cover((), u1=room.width.mm + out, v0=v0, v1=v1)


def _product(sides: _Sides) -> Iterator[Part]:
    """A part for every way to take one cover of each side, where they cover ground together."""
    for covers in product(*sides.values()):
        whole = Cover(())
        for cover in covers:
            whole = _both(whole, cover)
        if whole.planes and whole.u0 < whole.u1 and whole.v0 < whole.v1:
            yield Part(whole.planes, _outline(whole))


def _both(a: Cover, b: Cover) -> Cover:
    """The planes of both over the ground that they share."""
    return Cover(
        (*a.planes, *b.planes),
        max(a.u0, b.u0),
        min(a.u1, b.u1),
        max(a.v0, b.v0),
        min(a.v1, b.v1),
    )


def _outline(cover: Cover) -> tuple[Plan, ...] | None:
    ends = (cover.u0, cover.u1, cover.v0, cover.v1)
    if all(math.isinf(end) for end in ends):
        return None
    u0, u1, v0, v1 = (min(max(end, -_FAR), _FAR) for end in ends)
    return ((u0, v0), (u1, v0), (u1, v1), (u0, v1))
