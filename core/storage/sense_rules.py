"""The sense of a wall's layout origin, its rules of framing and its doubled studs."""

import re
from collections.abc import Iterator

from core.model import EndLean, Layout, Wall, WallRules
from core.storage import limits
from core.storage.faults import Fault
from core.storage.ranges import count_within, few_enough, within
from core.storage.sentences import Why, fault


def rule_faults(wall: Wall, place: str) -> Iterator[Fault]:
    """Every fault in the sense of what a wall states of its layout beside spacing and start."""
    yield from layout_origin(wall.layout, f"{place}.layout")
    if wall.rules is not None:
        yield from rule_lengths(wall.rules, f"{place}.rules")
    yield from end_leans(wall, place)
    yield from few_enough(wall.doubled, limits.OF_A_WALL, f"{place}.doubled")
    yield from doubled_studs(wall, f"{place}.doubled")


def end_leans(wall: Wall, place: str) -> Iterator[Fault]:
    """A surface at an end leans by no more than a little, and not across a quarter of the wall."""
    most = min(limits.LEAN_MM, wall.run / 4)
    for name in ("left_lean", "right_lean"):
        lean: EndLean | None = getattr(wall, name)
        if lean is not None:
            yield from within(lean.offset, -most, most, f"{place}.{name}.offset")


def layout_origin(layout: Layout, place: str) -> Iterator[Fault]:
    """The point that a layout stands in line with is no absurd one."""
    if layout.origin is not None:
        yield from within(layout.origin, -limits.WALL_MM, limits.WALL_MM, f"{place}.origin")


def rule_lengths(rules: WallRules, place: str) -> Iterator[Fault]:
    """Room beside a king is none or some, a board at least a spacing wide, a share a percent."""
    if rules.closer_than is not None:
        yield from within(rules.closer_than, 0.0, limits.PART_MM, f"{place}.closer_than")
    if rules.least_left is not None:
        yield from count_within(rules.least_left, 1, 100, f"{place}.least_left")
    if rules.board is not None:
        yield from within(rules.board, limits.SPACING_MM, limits.WALL_MM, f"{place}.board")


def doubled_studs(wall: Wall, place: str) -> Iterator[Fault]:
    """What is doubled is named by the key of a stud of this wall, each once."""
    form = rf"{wall.letter}/(layout/[1-9][0-9]*|end/(left|right)|[a-z][a-z0-9-]*)"
    seen: set[str] = set()
    for index, doubled in enumerate(wall.doubled):
        at = f"{place}[{index}].stud"
        if not re.fullmatch(form, doubled.stud):
            yield fault(at, Why.NO_STUD_KEY, text=doubled.stud, limit=wall.letter)
        elif doubled.stud in seen:
            yield fault(at, Why.DOUBLED_TWICE, text=doubled.stud)
        seen.add(doubled.stud)
