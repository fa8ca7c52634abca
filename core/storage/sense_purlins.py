"""The sense of purlins, and of how walls pass them.

`place` is the place in the file of what a rule judges.
"""

import math
from collections.abc import Iterator

from core.lengths import Length, write
from core.model import Purlin, Room, Wall
from core.roof import purlin_ends as ends_of
from core.storage import limits
from core.storage.faults import Fault
from core.storage.ranges import above_zero, few_enough, within
from core.storage.sentences import Why, fault


def purlin_faults(purlin: Purlin, room: Room, place: str) -> Iterator[Fault]:
    """Every fault in the sense of a purlin."""
    yield from purlin_size(purlin, room, place)
    yield from purlin_ends(purlin, room, place)


def purlin_size(purlin: Purlin, room: Room, place: str) -> Iterator[Fault]:
    """A purlin lies within the room's width and above the floor."""
    yield from within(purlin.left, 0.0, room.width.mm, f"{place}.left")
    for name in ("thickness", "width"):
        yield from above_zero(
            getattr(purlin.timber, name), limits.PART_MM, f"{place}.timber.{name}"
        )
    yield from above_zero(purlin.underside, limits.ROOM_MM, f"{place}.underside")
    yield from within(purlin.gap, 0.0, limits.PART_MM, f"{place}.gap")


def purlin_ends(purlin: Purlin, room: Room, place: str) -> Iterator[Fault]:
    """The ends of a purlin are no absurd places, and the end lies beyond the start.

    One that is turned may run straight across the room: its ends only have to lie apart.
    """
    reach = limits.ROOM_MM
    for name in ("start", "end", "end_left"):
        stated: Length | None = getattr(purlin, name)
        if stated is not None:
            yield from within(stated, -reach, reach, f"{place}.{name}")
    (u0, v0), (u1, v1) = ends_of(room, purlin)
    long = v1 - v0 if purlin.end_left is None else math.dist((u0, v0), (u1, v1))
    if long < limits.PURLIN_MM:
        end = "end" if purlin.end is not None else "start"
        values = {"found": write(Length.of_mm(max(long, 0.0))), "limit": "100 mm"}
        yield fault(f"{place}.{end}", Why.PURLIN_TOO_SHORT, **values)


def purlins_passed(wall: Wall, room: Room, place: str) -> Iterator[Fault]:
    """A wall tells of each purlin once how it passes it, and the purlin is there."""
    yield from few_enough(wall.passes, limits.OF_A_WALL, f"{place}.passes")
    there, seen = {purlin.id for purlin in room.purlins}, set()
    for index, passes in enumerate(wall.passes):
        at = f"{place}.passes[{index}].purlin"
        if passes.purlin not in there:
            known = ", ".join(sorted(there)) or "none"
            yield fault(at, Why.NO_PURLIN, text=passes.purlin, known=known)
        elif passes.purlin in seen:
            yield fault(at, Why.PASSED_TWICE, text=passes.purlin)
        seen.add(passes.purlin)
