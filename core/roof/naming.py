"""What a roof is at a place: the thing stated that lies over it there."""

import enum

import msgspec

from core.model import Room
from core.roof.parts import dormer_parts, main_parts, wing_parts
from core.roof.plane import Part, Plan, Plane, Roof


class Kind(enum.Enum):
    """The kinds of things that may lie over a wall."""

    ROOF = "roof"
    DORMER = "dormer"
    WING = "wing"
    CEILING = "ceiling"
    RIDGE_BEAM = "ridge-beam"
    PURLIN = "purlin"


class Named(msgspec.Struct, frozen=True):
    """What kind of thing lies over a place, and its id where there may be several."""

    kind: Kind
    id: str = ""


def over_place(room: Room, roof: Roof, point: Plan) -> Named:
    """What of `roof`, the roof of `room`, lies over a plan point: the roof itself or a part of it.

    A part is a ceiling, a beam, a purlin, a dormer or a wing.
    """
    plane = roof.plane(point)
    if plane is None:
        return Named(Kind.ROOF)
    if not _has(main_parts(room), plane, point):
        for dormer in room.dormers:
            if _has(dormer_parts(room, dormer), plane, point):
                return Named(Kind.DORMER, dormer.id)
        for wing in room.wings:
            if _has(wing_parts(room, wing), plane, point):
                return Named(Kind.WING, wing.id)
        return _level(room, plane)
    return Named(Kind.ROOF)


def _has(parts: tuple[Part, ...], plane: Plane, point: Plan) -> bool:
    return any(plane in part.planes and part.covers(point) for part in parts)


def _level(room: Room, plane: Plane) -> Named:
    """What a level plane that is taken last is, by its height."""
    if room.flat_ceiling is not None and plane.height == room.flat_ceiling.mm:
        return Named(Kind.CEILING)
    for purlin in room.purlins:
        if purlin.underside.mm == plane.height:
            return Named(Kind.PURLIN, purlin.id)
    beam = room.ridge_beam
    return Named(Kind.RIDGE_BEAM if beam is not None else Kind.ROOF)
