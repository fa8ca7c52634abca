"""From the room as stated to the planes of its roof."""

from core.model import Room
from core.roof.plane import Part, Plane, Roof


def roof_of(room: Room) -> Roof:
    """The roof over a room: one part of one or two planes, and the ceilings under it.

    A room without any slope has no roof; ValueError.
    """
    planes = _slopes(room)
    if not planes:
        raise ValueError("a room needs at least one roof slope")
    return Roof(parts=(Part(planes),), ceilings=_ceilings(room))


def ridge(room: Room) -> tuple[float, float] | None:
    """Where the two slopes meet, as (u across, z up) in mm; None for a shed or parallel slopes."""
    if room.left is None or room.right is None:
        return None
    rise, fall = room.left.pitch.tangent, room.right.pitch.tangent
    if rise + fall == 0:
        return None
    right_foot = room.right.eave_height.mm + fall * room.width.mm
    across = (right_foot - room.left.eave_height.mm) / (rise + fall)
    return across, room.left.eave_height.mm + rise * across


def _slopes(room: Room) -> tuple[Plane, ...]:
    planes = []
    if room.left is not None:
        planes.append(Plane(room.left.pitch.tangent, 0.0, room.left.eave_height.mm))
    if room.right is not None:
        fall = room.right.pitch.tangent
        height = room.right.eave_height.mm + fall * room.width.mm
        planes.append(Plane(-fall, 0.0, height))
    return tuple(planes)


def _ceilings(room: Room) -> tuple[Part, ...]:
    ceilings = []
    if room.flat_ceiling is not None:
        ceilings.append(Part((Plane(0.0, 0.0, room.flat_ceiling.mm),)))
    at = ridge(room)
    if room.ridge_beam is not None and at is not None:
        half = room.ridge_beam.width.mm / 2
        ends = (-room.length.mm, 2 * room.length.mm)
        strip = (
            (at[0] - half, ends[0]),
            (at[0] + half, ends[0]),
            (at[0] + half, ends[1]),
            (at[0] - half, ends[1]),
        )
        ceilings.append(Part((Plane(0.0, 0.0, room.ridge_beam.underside.mm),), strip))
    return tuple(ceilings)
