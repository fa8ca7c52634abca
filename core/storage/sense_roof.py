"""The sense of what a roof is made of beside its slopes: one function for each rule.

`place` is the place in the file of what a rule judges.
"""

from collections.abc import Iterator

from core.lengths import Length, write
from core.model import Dormer, KeptClear, Room, Slope, Wing
from core.storage import limits
from core.storage.faults import Fault
from core.storage.ranges import above_zero, few_enough, within
from core.storage.sense_purlins import purlin_faults
from core.storage.sense_wall import well_formed_id
from core.storage.sentences import Why, fault

_LISTS = ("dormers", "wings", "purlins", "kept_clear", "stair_openings", "existing_walls")


def roof_parts_faults(room: Room, place: str) -> Iterator[Fault]:
    """Every fault in the sense of hips, dormers, wings, purlins and what is kept clear."""
    for name in ("left", "right", "start_hip", "end_hip"):
        slope: Slope | None = getattr(room, name)
        if slope is not None:
            yield from breaks_in_order(slope, f"{place}.{name}")
    for name in ("start_hip", "end_hip"):
        hip: Slope | None = getattr(room, name)
        if hip is not None:
            yield from _height(hip.eave_height, f"{place}.{name}.eave_height")
    yield from part_ids(room, place)
    for index, dormer in enumerate(room.dormers):
        yield from dormer_size(dormer, room, f"{place}.dormers[{index}]")
    for index, wing in enumerate(room.wings):
        yield from wing_size(wing, room, f"{place}.wings[{index}]")
    for index, purlin in enumerate(room.purlins):
        yield from purlin_faults(purlin, room, f"{place}.purlins[{index}]")
    for index, kept in enumerate(room.kept_clear):
        yield from kept_clear_size(kept, f"{place}.kept_clear[{index}]")


def breaks_in_order(slope: Slope, place: str) -> Iterator[Fault]:
    """Changes of pitch are told from the eave inward, each farther in than the one before."""
    yield from few_enough(slope.breaks, limits.OF_A_WALL, f"{place}.breaks")
    before = Length(0.0)
    for index, at in enumerate(slope.breaks):
        where = f"{place}.breaks[{index}].run"
        if at.run.mm <= before.mm:
            values = {"found": write(at.run), "limit": write(before) if before.mm else "0"}
            yield fault(where, Why.BREAKS_UNSORTED, **values)
        yield from within(at.run, 0.0, limits.ROOM_MM, where)
        before = at.run


def part_ids(room: Room, place: str) -> Iterator[Fault]:
    """Ids are well formed and differ in all of the roof."""
    taken: set[str] = set()
    for name in _LISTS:
        yield from few_enough(getattr(room, name), limits.OF_A_WALL, f"{place}.{name}")
        for index, item in enumerate(getattr(room, name)):
            at = f"{place}.{name}[{index}].id"
            yield from well_formed_id(item.id, at)
            if item.id in taken:
                yield fault(at, Why.SAME_PART_ID, text=item.id)
            taken.add(item.id)


def dormer_size(dormer: Dormer, room: Room, place: str) -> Iterator[Fault]:
    """A dormer stands on a slope, within the room, and in from the eave wall or at it."""
    if getattr(room, dormer.side.value) is None:
        yield fault(f"{place}.side", Why.NO_SLOPE_THERE, text=dormer.side.value)
    yield from _along(dormer.start, dormer.width, room, place)
    yield from within(dormer.face, 0.0, room.width.mm, f"{place}.face")
    yield from above_zero(dormer.front, limits.PART_MM, f"{place}.front")
    yield from _height(dormer.height, f"{place}.height")


def wing_size(wing: Wing, room: Room, place: str) -> Iterator[Fault]:
    """A wing stands within the length of the room and reaches out from it."""
    yield from _along(wing.start, wing.width, room, place)
    yield from above_zero(wing.reach, limits.ROOM_MM, f"{place}.reach")
    for name in ("first", "last"):
        slope: Slope = getattr(wing, name)
        yield from _height(slope.eave_height, f"{place}.{name}.eave_height")
        yield from breaks_in_order(slope, f"{place}.{name}")


def kept_clear_size(kept: KeptClear, place: str) -> Iterator[Fault]:
    """A chimney or duct is wide and deep; where it stands may be beside the room."""
    for name in ("across", "along"):
        yield from within(getattr(kept, name), -limits.ROOM_MM, limits.ROOM_MM, f"{place}.{name}")
    for name in ("wide", "deep"):
        yield from above_zero(getattr(kept, name), limits.ROOM_MM, f"{place}.{name}")
    yield from within(kept.gap, 0.0, limits.PART_MM, f"{place}.gap")
    yield from kept_clear_lean(kept, place)


def kept_clear_lean(kept: KeptClear, place: str) -> Iterator[Fault]:
    """One that leans does so over some height, and by no more than it is high."""
    for name in ("up_across", "up_along"):
        there: Length | None = getattr(kept, name)
        if there is not None and kept.up_to is None:
            yield fault(f"{place}.{name}", Why.LEANS_TO_NO_HEIGHT, found=write(there))
        elif there is not None and kept.up_to is not None:
            foot: Length = getattr(kept, name.removeprefix("up_"))
            most = kept.up_to.mm
            yield from within(there, foot.mm - most, foot.mm + most, f"{place}.{name}")
    if kept.up_to is not None:
        yield from within(kept.up_to, limits.LEANS_OVER_MM, limits.ROOM_MM, f"{place}.up_to")


def _height(height: Length, place: str) -> Iterator[Fault]:
    yield from within(height, 0.0, limits.ROOM_MM, place)


def _along(start: Length, width: Length, room: Room, place: str) -> Iterator[Fault]:
    """Something beside the eave wall is within the length of the room."""
    yield from within(start, 0.0, limits.ROOM_MM, f"{place}.start")
    yield from above_zero(width, limits.ROOM_MM, f"{place}.width")
    end = start.mm + width.mm
    if width.mm > 0 and end > room.length.mm + limits.OUTSIDE_MM:
        values = {"found": write(Length(end, width.unit)), "limit": write(room.length)}
        yield fault(f"{place}.width", Why.PAST_ROOM, **values)
