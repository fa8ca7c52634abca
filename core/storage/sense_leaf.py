"""The sense of a leaf with its allowances, and of the spacer of a header."""

from collections.abc import Iterator
from typing import Final

from core.lengths import Length, write
from core.model import Opening
from core.storage import limits
from core.storage.faults import Fault
from core.storage.ranges import above_zero, within
from core.storage.sentences import Why, fault

SAME: Final = 0.01
"""A rough opening this near (mm) to the sum of leaf and allowance is that sum."""


def leaf_faults(opening: Opening, place: str) -> Iterator[Fault]:
    """Every fault in the sense of what an opening states of its leaf and of its header's spacer."""
    yield from leaf_size(opening, f"{place}.leaf")
    yield from leaf_adds_up(opening, place)
    if opening.header.spacer is not None:
        spacer = opening.header.spacer
        yield from within(spacer, 0.0, limits.PART_MM, f"{place}.header.spacer")


def leaf_size(opening: Opening, place: str) -> Iterator[Fault]:
    """A leaf is wide and high, and its frame adds nothing or something to it."""
    if opening.leaf is None:
        return
    yield from above_zero(opening.leaf.width, limits.WALL_MM, f"{place}.width")
    yield from above_zero(opening.leaf.height, limits.ROOM_MM, f"{place}.height")
    yield from within(opening.leaf.wider, 0.0, limits.PART_MM, f"{place}.wider")
    yield from within(opening.leaf.higher, 0.0, limits.PART_MM, f"{place}.higher")


def leaf_adds_up(opening: Opening, place: str) -> Iterator[Fault]:
    """With a leaf, the width is its sum, and the head is as far above the sill as its sum says."""
    leaf = opening.leaf
    if leaf is None:
        return
    width, head = leaf.rough_width, opening.sill.mm + leaf.rough_height
    sums = ((opening.width, width, "width"), (opening.head, head, "head"))
    for stated, wanted, name in sums:
        if abs(stated.mm - wanted) > SAME:
            limit = write(Length(wanted, stated.unit))
            yield fault(f"{place}.{name}", Why.NOT_THE_SUM, found=write(stated), limit=limit)
