"""From the room as stated to the planes of its roof."""

import math
from itertools import pairwise

from core.model import Passing, Purlin, Room, Wall
from core.roof.parts import dormer_parts, main_parts, wing_parts
from core.roof.plane import Part, Plane, Roof
from core.roof.profile import Line, lines
from core.roof.purlins import as_passed, purlin_outline


def roof_of(room: Room) -> Roof:
    """The roof over a room, its dormers and wings, and the ceilings under it.

    A room without any slope has no roof; ValueError.
    """
    parts = list(rafters_of(room).parts)
    for dormer in room.dormers:
        parts += dormer_parts(room, dormer)
    for wing in room.wings:
        parts += wing_parts(room, wing)
    return Roof(tuple(parts), _ceilings(room))


def roof_to(room: Room, roof: Roof, wall: Wall) -> Roof:
    """What `roof`, the roof of `room`, is to one wall, which may pass purlins in its own way."""
    passed = as_passed(room, wall)
    return roof if passed is room else roof_of(passed)


def rafters_of(room: Room) -> Roof:
    """The slopes and hips of the room itself: what a dormer's cheeks stand on.

    A room without any slope has none; ValueError.
    """
    parts = main_parts(room)
    if not parts:
        raise ValueError("a room needs at least one roof slope")
    return Roof(parts)


def ridge(room: Room) -> tuple[float, float] | None:
    """Where the two slopes meet, as (u across, z up) in mm; None for a shed or parallel slopes."""
    if room.left is None or room.right is None:
        return None
    width, rising, falling = room.width.mm, lines(room.left), lines(room.right)
    changes = {line.start for line in rising[1:]} | {width - line.start for line in falling[1:]}
    for low, high in pairwise([-math.inf, *sorted(changes), math.inf]):
        left = _before(rising, high)
        right = _before(falling, width - low)
        if left.rise + right.rise == 0:
            continue
        foot = right.height + right.rise * width
        across = (foot - left.height) / (left.rise + right.rise)
        if low - 1e-6 <= across <= high + 1e-6:
            return across, left.height + left.rise * across
    return None


def _before(slope: tuple[Line, ...], distance: float) -> Line:
    """The line that a slope follows just short of a distance in from the eave."""
    return next(line for line in reversed(slope) if line.start < distance)


def _ceilings(room: Room) -> tuple[Part, ...]:
    ceilings = []
    if room.flat_ceiling is not None:
        ceilings.append(Part((Plane(0.0, 0.0, room.flat_ceiling.mm),)))
    at = ridge(room)
    if room.ridge_beam is not None and at is not None:
        half = room.ridge_beam.width.mm / 2
        beam = room.ridge_beam.underside.mm
        ceilings.append(_strip(room, at[0] - half, at[0] + half, beam))
    ceilings += [_under(room, p) for p in room.purlins if p.passing is Passing.UNDER]
    return tuple(ceilings)


def _under(room: Room, purlin: Purlin) -> Part:
    """The underside of a purlin that walls pass under."""
    return Part((Plane(0.0, 0.0, purlin.underside.mm),), purlin_outline(room, purlin))


def _strip(room: Room, left: float, right: float, height: float) -> Part:
    """A level strip along the whole room."""
    ends = (-room.length.mm, 2 * room.length.mm)
    corners = ((left, ends[0]), (right, ends[0]), (right, ends[1]), (left, ends[1]))
    return Part((Plane(0.0, 0.0, height),), corners)
