"""Rafters over a wall's top plate: where it crosses them, or the blocks where it runs between."""

import math

import msgspec

from core.framing import keys
from core.framing.layout import CLEAR
from core.framing.member import SQUARE, Member, Role
from core.model import RafterBacking, Room, Wall
from core.roof import RoofLine, Segment

NAIL = 19.0
"""The least of a rafter over a plate (mm) that the plate can be nailed to; no source."""

_ALONG = 0.087
"""The sine of five degrees: a wall turned less than that from the rafters runs along them."""


class Rafters(msgspec.Struct, frozen=True):
    """The rafters as a wall may read them: their middles along the room and their thickness, mm."""

    middles: tuple[float, ...] = ()
    thickness: float = 0.0


class Crossing(msgspec.Struct, frozen=True):
    """Where a rafter lies over face A of a plate that crosses it, mm; counted along the room."""

    number: int
    left: float
    right: float


class Between(msgspec.Struct, frozen=True):
    """A plate that runs along the rafters with none over it: the clear width between the two.

    `before` and `after` are the near faces of the rafters on either side, along the room; `inf`
    where there is none.
    """

    before: float
    after: float

    @property
    def clear(self) -> float:
        """The length of a block between them, mm."""
        return self.after - self.before


class OverPlate(msgspec.Struct, frozen=True):
    """What rafters there are over a wall's plate: crossings, or the gap that it runs in.

    Neither where a rafter lies along the plate, so that it can be nailed up all the way.
    """

    crossings: tuple[Crossing, ...] = ()
    between: Between | None = None


def rafter_places(room: Room) -> Rafters:
    """The rafters of a room: as measured, else flush with its ends and on centre between."""
    thickness = room.rafter.timber.thickness.mm
    if room.rafter.places:
        return Rafters(tuple(sorted(p.mm for p in room.rafter.places)), thickness)
    length, spacing = room.length.mm, room.rafter.spacing.mm
    last = length - thickness / 2
    middles = [thickness / 2]
    count = 1
    while count * spacing <= last - thickness - CLEAR:
        middles.append(count * spacing)
        count += 1
    return Rafters((*middles, last) if last > middles[-1] else (middles[0],), thickness)


def over_plate(wall: Wall, rafters: Rafters) -> OverPlate:
    """Which rafters a wall's plate crosses, or between which two it runs."""
    (_, v0), (_, v1) = wall.chalk
    turn = (v1 - v0) / wall.run if wall.run else 0.0
    half = rafters.thickness / 2
    faces = [(middle - half, middle + half) for middle in rafters.middles]
    if abs(turn) >= _ALONG:
        return OverPlate(tuple(_crossings(wall, turn, faces)))
    away = wall.stud.width.mm * math.copysign(1.0, wall.chalk[1][0] - wall.chalk[0][0])
    low, high = sorted((v0, v0 + away))
    if not faces or any(min(high, b) - max(low, a) >= NAIL for a, b in faces):
        return OverPlate()
    before = max((b for a, b in faces if a + b <= low + high), default=-math.inf)
    after = min((a for a, b in faces if a + b > low + high), default=math.inf)
    return OverPlate(between=Between(before, after))


def between_rafters(wall: Wall, near: RoofLine, between: Between | None) -> tuple[Member, ...]:
    """The blocks between the rafters over each top plate, flat on it, from left to right."""
    stated = wall.rafter_backing
    if stated is None or between is None or not math.isfinite(between.clear):
        return ()
    return tuple(
        _block(keys.between_rafters(wall.letter, index, number), stated, segment, at, between.clear)
        for index, segment in enumerate(near.segments)
        for number, at in enumerate(_places(segment, stated))
    )


def _crossings(wall: Wall, turn: float, faces: list[tuple[float, float]]) -> list[Crossing]:
    start, found = wall.chalk[0][1], []
    for number, (a, b) in enumerate(faces, start=1):
        left, right = sorted(((a - start) / turn, (b - start) / turn))
        if right > CLEAR and left < wall.run - CLEAR:
            found.append(Crossing(number, left, right))
    return sorted(found, key=lambda crossing: crossing.left)


def _places(segment: Segment, stated: RafterBacking) -> tuple[float, ...]:
    """Where blocks begin along a slope: one at either end, at most so far apart on centre."""
    room = (segment.right - segment.left) * math.hypot(1.0, segment.along) - stated.timber.width.mm
    if room < CLEAR:
        return ()
    parts = max(1, math.ceil(room / stated.at_most.mm - CLEAR))
    return tuple(n * room / parts for n in range(parts + 1))


def _block(key: str, stated: RafterBacking, segment: Segment, along: float, clear: float) -> Member:
    """A block seen on its end: it lies flat on the roof line, `along` up or down the slope."""
    run = math.hypot(1.0, segment.along)
    way, up = (1.0 / run, segment.along / run), (-segment.along / run, 1.0 / run)
    wide, thick = stated.timber.width.mm, stated.timber.thickness.mm
    foot = (segment.left + along * way[0], segment.at(segment.left) + along * way[1])
    far = (foot[0] + wide * way[0], foot[1] + wide * way[1])
    rise = (thick * up[0], thick * up[1])
    outline = (
        foot,
        far,
        (far[0] + rise[0], far[1] + rise[1]),
        (foot[0] + rise[0], foot[1] + rise[1]),
    )
    return Member(
        key=key,
        role=Role.BACKING,
        thickness=thick,
        width=wide,
        near=outline,
        far=outline,
        edges=(clear, clear, clear, clear),
        long_point=clear,
        short_point=clear,
        overall=clear,
        first_cut=SQUARE,
        last_cut=SQUARE,
    )
