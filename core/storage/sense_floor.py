"""The sense of stair openings and existing walls: one function for each rule.

`place` is the place in the file of what a rule judges.
"""

import math
from collections.abc import Iterator

from core.lengths import Length, write
from core.model import ExistingWall, Room, StairOpening
from core.storage import limits
from core.storage.faults import Fault
from core.storage.ranges import above_zero, within
from core.storage.sentences import Why, fault


def floor_faults(room: Room, place: str) -> Iterator[Fault]:
    """Every fault in the sense of what the floor has."""
    for index, stair in enumerate(room.stair_openings):
        yield from stair_size(stair, f"{place}.stair_openings[{index}]")
    for index, wall in enumerate(room.existing_walls):
        yield from existing_size(wall, f"{place}.existing_walls[{index}]")


def stair_size(stair: StairOpening, place: str) -> Iterator[Fault]:
    """An opening in the floor is wide and deep, and in no absurd place."""
    for name in ("across", "along"):
        yield from within(getattr(stair, name), -limits.ROOM_MM, limits.ROOM_MM, f"{place}.{name}")
    for name in ("wide", "deep"):
        yield from above_zero(getattr(stair, name), limits.ROOM_MM, f"{place}.{name}")


def existing_size(wall: ExistingWall, place: str) -> Iterator[Fault]:
    """An existing wall is thick and long, and in no absurd place."""
    yield from above_zero(wall.thickness, limits.PART_MM, f"{place}.thickness")
    ends = (("left_end", wall.left_end), ("right_end", wall.right_end))
    for name, end in ends:
        for axis in ("across", "along"):
            at = f"{place}.{name}.{axis}"
            yield from within(getattr(end, axis), -limits.ROOM_MM, limits.ROOM_MM, at)
    (u0, v0), (u1, v1) = ((end.across.mm, end.along.mm) for _, end in ends)
    long = math.hypot(u1 - u0, v1 - v0)
    if long < limits.SHORTEST_EXISTING_MM:
        unit = wall.thickness.unit
        values = {
            "found": write(Length(round(long, 3), unit)),
            "limit": write(Length(limits.SHORTEST_EXISTING_MM, unit)),
        }
        yield fault(f"{place}.right_end", Why.EXISTING_TOO_SHORT, **values)
