"""The sense of what else is nailed into a wall: one function for each rule, giving its faults.

`place` is the place in the file of what a rule judges.
"""

from collections.abc import Iterator

from core.model import Blocking, Fixture, Rafter, RafterBacking, Wall
from core.storage import limits
from core.storage.faults import Fault
from core.storage.ranges import above_zero, few_enough, within


def nailed_faults(wall: Wall, place: str) -> Iterator[Fault]:
    """Every fault in the sense of a wall's blocking, backing and slip gap."""
    if wall.blocking is not None:
        yield from blocking_rows(wall.blocking, f"{place}.blocking")
    for index, fixture in enumerate(wall.fixtures):
        yield from fixture_size(fixture, f"{place}.fixtures[{index}]")
    if wall.rafter_backing is not None:
        yield from rafter_backing_size(wall.rafter_backing, f"{place}.rafter_backing")
    if wall.slip_gap is not None:
        yield from above_zero(wall.slip_gap, limits.PART_MM, f"{place}.slip_gap")


def blocking_rows(blocking: Blocking, place: str) -> Iterator[Fault]:
    """Rows stand above the floor, and blocks one over the other are a hand apart."""
    yield from few_enough(blocking.heights, limits.OF_A_WALL, f"{place}.heights")
    for index, height in enumerate(blocking.heights):
        yield from above_zero(height, limits.ROOM_MM, f"{place}.heights[{index}]")
    for name in ("at_most", "fire"):
        length = getattr(blocking, name)
        if length is not None:
            yield from within(length, limits.BLOCKS_MM, limits.ROOM_MM, f"{place}.{name}")


def fixture_size(fixture: Fixture, place: str) -> Iterator[Fault]:
    """A fixture hangs above the floor and is wide; its backing has a cross-section."""
    yield from within(fixture.left, -limits.WALL_MM, limits.WALL_MM, f"{place}.left")
    yield from above_zero(fixture.width, limits.WALL_MM, f"{place}.width")
    yield from above_zero(fixture.height, limits.ROOM_MM, f"{place}.height")
    for name in ("thickness", "width"):
        part = getattr(fixture.timber, name)
        yield from above_zero(part, limits.PART_MM, f"{place}.timber.{name}")


def rafter_backing_size(backing: RafterBacking, place: str) -> Iterator[Fault]:
    """Blocks between rafters have a cross-section, and are a hand apart or more."""
    for name in ("thickness", "width"):
        part = getattr(backing.timber, name)
        yield from above_zero(part, limits.PART_MM, f"{place}.timber.{name}")
    yield from within(backing.at_most, limits.BLOCKS_MM, limits.WALL_MM, f"{place}.at_most")


def rafter_places(rafter: Rafter, place: str) -> Iterator[Fault]:
    """Measured rafters stand along the room, give or take a part's width."""
    yield from few_enough(rafter.places, limits.RAFTERS, f"{place}.places")
    for index, middle in enumerate(rafter.places):
        at = f"{place}.places[{index}]"
        yield from within(middle, -limits.PART_MM, limits.ROOM_MM, at)
