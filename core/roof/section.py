"""The room cut across, from eave wall to eave wall: rafters, what is overhead, and the ridge.

`u` runs across from the left eave wall's framing face, heights are up from the subfloor, mm. Hips,
dormers and wings stand along the room and are left out: this is the section that is stated, cut
halfway along.
"""

from functools import lru_cache

import msgspec

from core.model import Room, Side, Slope
from core.roof.line import RoofLine, roof_line
from core.roof.plane import Roof
from core.roof.profile import lines
from core.roof.stated import rafters_of, ridge, roof_of


class Rise(msgspec.Struct, frozen=True):
    """A stretch of one slope at one pitch: `number` 0 rises from the eave, 1 from its first break.

    It goes from `foot` (u, height) to `head`, rising toward the ridge.
    """

    side: Side
    number: int
    foot: tuple[float, float]
    head: tuple[float, float]


class RoomSection(msgspec.Struct, frozen=True):
    """The section: undersides of `rafters`, what is `over` the room, the `ridge`, the `rises`.

    `ridge` is None for a shed, and where the slopes do not meet inside the room.
    """

    width: float
    rafters: RoofLine
    over: RoofLine
    ridge: tuple[float, float] | None
    rises: tuple[Rise, ...]

    @property
    def highest(self) -> float:
        """The greatest height of the rafters' underside, mm."""
        return max(height for _, height in self.rafters.points())

    def rise(self, side: Side, number: int) -> Rise | None:
        """One stretch of a slope; None where the room has no such stretch."""
        found = (r for r in self.rises if (r.side, r.number) == (side, number))
        return next(found, None)


@lru_cache(maxsize=8)
def section_of(room: Room) -> RoomSection:
    """The section across a room; ValueError for a room without any slope.

    Kept for a while: one frame of a pull asks for the same section many times over.
    """
    plain = msgspec.structs.replace(room, start_hip=None, end_hip=None, dormers=(), wings=())
    rafters, over = (_across(plain, roof) for roof in (rafters_of(plain), roof_of(plain)))
    at = ridge(plain)
    inside = at if at is not None and 0.0 <= at[0] <= plain.width.mm else None
    return RoomSection(plain.width.mm, rafters, over, inside, _rises(plain, inside, rafters))


def _across(room: Room, roof: Roof) -> RoofLine:
    half = room.length.mm / 2
    return roof_line(roof, (0.0, half), (room.width.mm, half))


def _rises(room: Room, at: tuple[float, float] | None, rafters: RoofLine) -> tuple[Rise, ...]:
    """The stretches that show in the room, from its left to its right."""
    width = room.width.mm
    end = at[0] if at else _parted(room, rafters)
    left = _of_slope(room.left, end) if room.left else ()
    right = _of_slope(room.right, width - end) if room.right else ()
    turned = (
        (n, (width - foot[0], foot[1]), (width - head[0], head[1])) for n, foot, head in right
    )
    return (
        *(Rise(Side.LEFT, *found) for found in left),
        *(Rise(Side.RIGHT, *found) for found in reversed(tuple(turned))),
    )


def _parted(room: Room, rafters: RoofLine) -> float:
    """How far across the left slope reaches where no ridge parts it from the right one."""
    if room.right is None:
        return room.width.mm
    if room.left is None:
        return 0.0
    return room.width.mm if rafters.segments[0].along > 0 else 0.0


_Found = tuple[int, tuple[float, float], tuple[float, float]]


def _of_slope(slope: Slope, reach: float) -> tuple[_Found, ...]:
    """Number, foot and head of each stretch within `reach` of the eave, as if it rose from left."""
    found: list[_Found] = []
    every = lines(slope)
    for number, line in enumerate(every):
        start = max(0.0, line.start)
        end = min(reach, every[number + 1].start) if number + 1 < len(every) else reach
        if end > start:
            foot, head = ((d, line.height + line.rise * d) for d in (start, end))
            found.append((number, foot, head))
    return tuple(found)
