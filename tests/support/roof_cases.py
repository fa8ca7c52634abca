"""Generated walls of bare studs under roofs of many parts, from anywhere in any direction."""

from __future__ import annotations

import math

import msgspec
from hypothesis import strategies as st

from core.lengths import System
from core.model import PlateLie, Room, Side, TopPlate, Wall
from roof_strategies import with_roof_parts
from strategies import rooms
from wall_cases import ANGLES
from walls import UK


@st.composite
def many_parted(draw: st.DrawFn) -> Room:
    """A room with hips, dormers, wings, changes of pitch, a ceiling; no purlins, no chimney."""
    plain = draw(rooms(System.METRIC))
    room = draw(with_roof_parts(plain, System.METRIC))
    return msgspec.structs.replace(room, purlins=(), kept_clear=())


@st.composite
def bare_wall(draw: st.DrawFn, room: Room) -> Wall:
    """A wall that begins in the room, perhaps in a dormer's or a wing's stretch of it."""
    dormers = [(d.start.mm, d.width.mm) for d in room.dormers]
    wings = [(w.start.mm, w.width.mm) for w in room.wings]
    low, wide = draw(st.sampled_from([(0.0, room.length.mm), *dormers, *wings]))
    start = (
        float(draw(st.integers(0, int(room.width.mm)))),
        float(draw(st.integers(int(low), int(low + wide)))),
    )
    angle, run = math.radians(draw(ANGLES)), draw(st.integers(400, 6000))
    # Right angles stay exact, as a person states them.
    way = (round(math.cos(angle), 12) + 0.0, round(math.sin(angle), 12) + 0.0)
    return UK.wall(
        start,
        (start[0] + run * way[0], start[1] + run * way[1]),
        plate=draw(st.sampled_from([(38.0, 89.0), (38.0, 140.0), (50.0, 150.0)])),
        plates=draw(st.sampled_from([1, 1, 2])),
        spacing=draw(st.sampled_from([300.0, 400.0, 450.0, 600.0])),
        start=draw(st.sampled_from(Side)),
    )


@st.composite
def under_roofs(draw: st.DrawFn) -> tuple[Room, Wall]:
    """A room and a wall in it."""
    room = draw(many_parted())
    return room, draw(bare_wall(room))


def lying(wall: Wall, lie: PlateLie | None, count: int | None = None) -> Wall:
    """The wall with its top plates made another way, or so many of them."""
    plate = wall.top_plate
    return msgspec.structs.replace(
        wall, top_plate=TopPlate(plate.timber, plate.count if count is None else count, lie)
    )
