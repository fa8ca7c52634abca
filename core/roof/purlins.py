"""Where purlins pass through a wall."""

import msgspec

from core.model import Passing, Room, Wall

LEVEL = 1e-9
"""A wall whose direction has less than this across the room runs along its purlins."""

Stretch = tuple[float, float]
"""Two places along a wall, mm, the left one first."""


class PurlinThrough(msgspec.Struct, frozen=True):
    """A purlin that passes through a wall, in the wall's coordinates, mm.

    `near` and `far` are the stretches that it takes up on face A and on the far face; timber keeps
    `gap` away from them.
    """

    id: str
    near: Stretch
    far: Stretch
    bottom: float
    top: float
    gap: float

    @property
    def left(self) -> float:
        """The left end of what it takes up on either face, with its gap."""
        return min(self.near[0], self.far[0]) - self.gap

    @property
    def right(self) -> float:
        """The right end of what it takes up on either face, with its gap."""
        return max(self.near[1], self.far[1]) + self.gap


def crossings(room: Room, wall: Wall) -> tuple[PurlinThrough, ...]:
    """The purlins that pass through a wall, from left to right; none along the room."""
    found = []
    (u0, v0), (u1, v1) = wall.chalk
    across, aside = (u1 - u0) / wall.run, -(v1 - v0) / wall.run * wall.stud.width.mm
    for purlin in room.purlins:
        if purlin.passing is not Passing.THROUGH or abs(across) < LEVEL:
            continue
        faces = (purlin.left.mm, purlin.left.mm + purlin.timber.thickness.mm)
        near, far = (sorted((u - u0 - d) / across for u in faces) for d in (0.0, aside))
        bottom, gap = purlin.underside.mm, purlin.gap.mm
        top = bottom + purlin.timber.width.mm
        new = PurlinThrough(purlin.id, (near[0], near[1]), (far[0], far[1]), bottom, top, gap)
        if new.left < wall.run and new.right > 0.0:
            found.append(new)
    return tuple(sorted(found, key=lambda c: c.left))


def inside_purlin(room: Room, wall: Wall) -> str | None:
    """The id of a purlin that a wall along the room stands in, and would have to pass under."""
    (u0, v0), (u1, v1) = wall.chalk
    if abs(u1 - u0) / wall.run >= LEVEL:
        return None
    ends = sorted((u0, u0 - (v1 - v0) / wall.run * wall.stud.width.mm))
    for purlin in room.purlins:
        left, right = purlin.left.mm, purlin.left.mm + purlin.timber.thickness.mm
        if purlin.passing is Passing.THROUGH and left < ends[1] and right > ends[0]:
            return purlin.id
    return None
