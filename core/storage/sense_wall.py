"""The sense of a wall's values: one function for each rule, each giving its faults.

`place` is the place in the file of what a rule judges.
"""

import re
from collections.abc import Iterator
from typing import Final

from core.lengths import Length, write
from core.model import Box, ClearZone, Header, HeaderKind, Layout, Opening, Timber, TopPlate, Wall
from core.storage import limits
from core.storage.faults import Fault
from core.storage.ranges import (
    above_zero,
    at_most,
    count_within,
    few_enough,
    mm_text,
    within,
)
from core.storage.sense_leaf import leaf_faults
from core.storage.sense_measured import measured_faults
from core.storage.sense_nailed import nailed_faults
from core.storage.sense_rules import rule_faults
from core.storage.sentences import Why, fault

ID: Final = r"[a-z][a-z0-9-]*"
"""What the id of an opening, box or added stud matches as a whole."""

RESERVED_IDS: Final = frozenset(
    {"blocking", "double", "end", "layout", "meets", "over", "past", "rafters", "sole", "top"}
)
"""Words that a wall's own parts have in their keys: a piece of plate past a purlin, a double."""


def wall_faults(wall: Wall, place: str) -> Iterator[Fault]:
    """Every fault in the sense of a wall, but for its letter and its place in the room."""
    yield from wall_run(wall, place)
    yield from timber_thickness(wall.stud, f"{place}.stud")
    yield from timber_thickness(wall.sole_plate, f"{place}.sole_plate")
    yield from top_plate_count(wall.top_plate, f"{place}.top_plate")
    yield from timber_thickness(wall.top_plate.timber, f"{place}.top_plate.timber")
    yield from layout_spacing(wall.layout, f"{place}.layout")
    yield from lists_short(wall, place)
    yield from ids(wall, place)
    yield from openings(wall, place)
    for index, box in enumerate(wall.boxes):
        yield from box_size(box, f"{place}.boxes[{index}]")
    for index, zone in enumerate(wall.kept_clear):
        yield from zone_size(zone, f"{place}.kept_clear[{index}]")
    yield from layout_places(wall, place)
    yield from stud_lefts(wall, place)
    yield from measured_faults(wall, place)
    yield from nailed_faults(wall, place)
    yield from rule_faults(wall, place)


def openings(wall: Wall, place: str) -> Iterator[Fault]:
    """Every fault in the sense of a wall's openings."""
    for index, opening in enumerate(wall.openings):
        at = f"{place}.openings[{index}]"
        yield from opening_size(opening, at)
        yield from head_above_sill(opening, at)
        yield from header_size(opening.header, f"{at}.header")
        yield from leaf_faults(opening, at)


def wall_run(wall: Wall, place: str) -> Iterator[Fault]:
    """The ends of a wall are apart, up to a limit; the right end is the one to move."""
    run = mm_text(round(wall.run, 3))
    if wall.run < limits.SHORTEST_WALL_MM:
        limit = mm_text(limits.SHORTEST_WALL_MM)
        yield fault(f"{place}.right_end", Why.ENDS_TOO_NEAR, found=run, limit=limit)
    if wall.run > limits.WALL_MM:
        limit = mm_text(limits.WALL_MM)
        yield fault(f"{place}.right_end", Why.WALL_TOO_LONG, found=run, limit=limit)


def timber_thickness(timber: Timber, place: str) -> Iterator[Fault]:
    """Studs and plates are of a thickness that timber is sold in, and wide up to a limit."""
    yield from within(timber.thickness, *limits.STUD_MM, f"{place}.thickness")
    yield from above_zero(timber.width, limits.PART_MM, f"{place}.width")


def top_plate_count(plate: TopPlate, place: str) -> Iterator[Fault]:
    """There is one top plate, or two; a wall on rafters may do without."""
    yield from count_within(plate.count, 0, limits.TOP_PLATES, f"{place}.count")


def layout_spacing(layout: Layout, place: str) -> Iterator[Fault]:
    """There is room between studs, and hung board is no thicker than a part may be."""
    yield from within(layout.spacing, limits.SPACING_MM, limits.WALL_MM, f"{place}.spacing")
    yield from within(layout.hung_board, 0.0, limits.PART_MM, f"{place}.hung_board")


def lists_short(wall: Wall, place: str) -> Iterator[Fault]:
    """A wall has no absurd number of anything."""
    for name in ("openings", "boxes", "moved", "added", "fixtures", "kept_clear"):
        yield from few_enough(getattr(wall, name), limits.OF_A_WALL, f"{place}.{name}")


def ids(wall: Wall, place: str) -> Iterator[Fault]:
    """Ids are well formed and differ in all of a wall, since keys are made of them."""
    taken: set[str] = set()
    for name in ("openings", "boxes", "added", "fixtures", "kept_clear"):
        for index, item in enumerate(getattr(wall, name)):
            at = f"{place}.{name}[{index}].id"
            yield from well_formed_id(item.id, at)
            if item.id in taken:
                yield fault(at, Why.SAME_ID, text=item.id)
            taken.add(item.id)


def well_formed_id(text: str, place: str) -> Iterator[Fault]:
    """An id is of small letters, digits and dashes, and no word that is kept."""
    if text in RESERVED_IDS:
        yield fault(place, Why.RESERVED_ID, text=text)
    elif not re.fullmatch(ID, text):
        yield fault(place, Why.BAD_ID, text=text)


def opening_size(opening: Opening, place: str) -> Iterator[Fault]:
    """An opening is wide and high, up to a limit; whether it fits its wall is not asked."""
    yield from within_reach(opening.left, f"{place}.left")
    yield from above_zero(opening.width, limits.WALL_MM, f"{place}.width")
    yield from at_most(opening.head, limits.ROOM_MM, f"{place}.head")
    yield from within(opening.sill, 0.0, limits.ROOM_MM, f"{place}.sill")


def zone_size(zone: ClearZone, place: str) -> Iterator[Fault]:
    """A kept-clear zone is wide and high, up to a limit, and not under the floor."""
    yield from within_reach(zone.left, f"{place}.left")
    yield from within(zone.bottom, 0.0, limits.ROOM_MM, f"{place}.bottom")
    yield from above_zero(zone.width, limits.WALL_MM, f"{place}.width")
    yield from above_zero(zone.height, limits.ROOM_MM, f"{place}.height")


def head_above_sill(opening: Opening, place: str) -> Iterator[Fault]:
    """The head of an opening is above its sill."""
    if opening.head.mm <= opening.sill.mm:
        values = {"found": write(opening.head), "limit": write(opening.sill)}
        yield fault(f"{place}.head", Why.HEAD_NOT_ABOVE_SILL, **values)


def header_size(header: Header, place: str) -> Iterator[Fault]:
    """A header has a cross-section and one ply or a few; where there is none, neither matters."""
    yield from count_within(header.plies, 1, limits.PLIES, f"{place}.plies")
    if header.kind is not HeaderKind.NONE:
        yield from above_zero(header.timber.thickness, limits.PART_MM, f"{place}.timber.thickness")
        yield from above_zero(header.timber.width, limits.PART_MM, f"{place}.timber.width")


def box_size(box: Box, place: str) -> Iterator[Fault]:
    """A box is wide, deep and tall, up to a limit, and not under the floor."""
    yield from within(box.height, 0.0, limits.ROOM_MM, f"{place}.height")
    for name in ("width", "depth", "tall"):
        yield from above_zero(getattr(box, name), limits.PART_MM, f"{place}.{name}")


def layout_places(wall: Wall, place: str) -> Iterator[Fault]:
    """Places of the layout count from 1, and each is moved or left out once."""
    moved = tuple(stud.place for stud in wall.moved)
    yield from _counted_once(moved, f"{place}.moved[{{}}].place")
    yield from _counted_once(wall.left_out, f"{place}.left_out[{{}}]")


def _counted_once(numbers: tuple[int, ...], place: str) -> Iterator[Fault]:
    seen: set[int] = set()
    for index, number in enumerate(numbers):
        at = place.format(index)
        yield from count_within(number, 1, limits.PLACE, at)
        if number in seen:
            yield fault(at, Why.SAME_PLACE, found=number)
        seen.add(number)


def stud_lefts(wall: Wall, place: str) -> Iterator[Fault]:
    """Moved and added studs stand no farther off than the longest wall reaches."""
    for index, moved in enumerate(wall.moved):
        yield from within_reach(moved.left, f"{place}.moved[{index}].left")
    for index, added in enumerate(wall.added):
        yield from within_reach(added.left, f"{place}.added[{index}].left")


def within_reach(left: Length, place: str) -> Iterator[Fault]:
    """The place of something along a wall is no absurd one."""
    yield from within(left, -limits.WALL_MM, limits.WALL_MM, place)
