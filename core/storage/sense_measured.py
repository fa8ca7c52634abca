"""The sense of what was measured at a wall: one function for each rule, each giving its faults."""

from collections.abc import Iterator

from core.lengths import write
from core.model import Station, Wall
from core.storage import limits
from core.storage.faults import Fault
from core.storage.ranges import above_zero, few_enough, within
from core.storage.sentences import Why, fault


def measured_faults(wall: Wall, place: str) -> Iterator[Fault]:
    """Every fault in the sense of a wall's measured points and studs, level line and fit."""
    for name in ("roof_points", "floor_points", "measured_studs"):
        yield from few_enough(getattr(wall, name), limits.OF_A_WALL, f"{place}.{name}")
    yield from stations(wall.roof_points, f"{place}.roof_points")
    yield from stations(wall.floor_points, f"{place}.floor_points")
    yield from measured_studs(wall, f"{place}.measured_studs")
    if wall.level_line is not None:
        yield from within(wall.level_line, -limits.ROOM_MM, limits.ROOM_MM, f"{place}.level_line")
    if wall.fit is not None:
        yield from within(wall.fit, -limits.FIT_MM, limits.FIT_MM, f"{place}.fit")


def stations(points: tuple[Station, ...], place: str) -> Iterator[Fault]:
    """Points lie no absurd distance away, and no two of a line stand at the same place."""
    taken: set[float] = set()
    for index, point in enumerate(points):
        at = f"{place}[{index}]"
        yield from within(point.at, -limits.WALL_MM, limits.WALL_MM, f"{at}.at")
        yield from within(point.height, -limits.ROOM_MM, limits.ROOM_MM, f"{at}.height")
        if any(abs(point.at.mm - other) < limits.APART_MM for other in taken):
            yield fault(f"{at}.at", Why.SAME_STATION, found=write(point.at))
        taken.add(point.at.mm)


def measured_studs(wall: Wall, place: str) -> Iterator[Fault]:
    """A measured stud is one of the wall, measured once, with a length to cut."""
    taken: set[str] = set()
    for index, stud in enumerate(wall.measured_studs):
        at = f"{place}[{index}]"
        if not stud.key.startswith(f"{wall.letter}/"):
            yield fault(f"{at}.key", Why.NOT_OF_WALL, text=stud.key, limit=wall.letter)
        if stud.key in taken:
            yield fault(f"{at}.key", Why.SAME_STUD, text=stud.key)
        taken.add(stud.key)
        yield from above_zero(stud.length, limits.ROOM_MM, f"{at}.length")
