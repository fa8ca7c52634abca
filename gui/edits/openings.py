"""Moving, setting and adding openings; refused where they do not fit, with what would."""

from collections.abc import Callable
from typing import Any

import msgspec

from core.checks import fit_message
from core.framing import Fit, PlacedOpening, fit, spoken
from core.lengths import Length
from core.model import Opening, OpeningKind, Project
from core.wording import Mm, message
from gui.edits import usual
from gui.edits.leaf import with_leaf
from gui.edits.refusal import Refusal
from gui.edits.sense import check_wall
from gui.edits.stating import next_id, stated, worked

_STEMS = {
    OpeningKind.DOOR: "door",
    OpeningKind.ACCESS_DOOR: "access-door",
    OpeningKind.WINDOW: "window",
    OpeningKind.PASS_THROUGH: "pass-through",
    OpeningKind.CASED: "cased-opening",
}

LEAFLESS = frozenset({OpeningKind.PASS_THROUGH, OpeningKind.CASED})
"""Kinds of opening that nothing hangs in."""


def stem_of(opening: Opening) -> str:
    """What openings of its kind are called before their number."""
    return stem_of_kind(opening.kind)


def stem_of_kind(kind: OpeningKind) -> str:
    """What openings of a kind are called before their number."""
    return _STEMS[kind]


def move_opening(project: Project, letter: str, opening_id: str, left: Length | float) -> Project:
    """The opening with its left edge at `left` (mm); refused with the ranges where it fits."""
    return set_opening(project, letter, opening_id, left=stated(project, left))


def set_opening(project: Project, letter: str, opening_id: str, **changes: Any) -> Project:
    """The opening with some of its fields changed; refused if that keeps it from fitting.

    One that fitted nowhere before may be changed freely: it stays marked until it fits.
    """
    before = project.wall(letter).opening(opening_id)
    after = msgspec.structs.replace(before, **changes)
    _check_heights(after, letter)
    after = with_leaf(project, letter, before, after)
    if after.kind in LEAFLESS:
        after = msgspec.structs.replace(after, hung=None)
    changed = _with_opening(project, letter, after)
    found = _fit(project, letter, after)
    if found is not None and not found.fits and _fits(project, letter, before):
        raise _refusal(project, letter, before, after, found)
    return check_wall(changed, letter)


def add_opening(
    project: Project,
    letter: str,
    kind: OpeningKind,
    left: Length | float | None = None,
    sill: Length | None = None,
) -> Project:
    """A new opening of usual size, as near to `left` (mm; the middle of the wall) as it fits.

    With another `sill` it is as tall as is usual, and so much higher or lower.
    """
    wall = project.wall(letter)
    if wall.stands_on is not None:
        raise Refusal(message("edit.opening-on-rafters", letter=letter))
    new = usual.opening(project.system, kind, next_id(wall, _STEMS[kind]), wall)
    if sill is not None and sill != new.sill:
        head = stated(project, sill.mm + new.head.mm - new.sill.mm)
        new = msgspec.structs.replace(new, sill=sill, head=head)
    wanted = (wall.run - new.width.mm) / 2 if left is None else stated(project, left).mm
    found = _fit(project, letter, new)
    place = found.nearest(project.habits.tape.round(wanted)) if found else None
    if place is None:
        raise Refusal(
            message("edit.no-place", letter=letter, width=Mm(new.width.mm), head=Mm(new.head.mm))
        )
    new = msgspec.structs.replace(new, left=stated(project, place))
    openings = (*wall.openings, new)
    return check_wall(project.with_wall(msgspec.structs.replace(wall, openings=openings)), letter)


def _with_opening(project: Project, letter: str, opening: Opening) -> Project:
    wall = project.wall(letter)
    openings = tuple(opening if o.id == opening.id else o for o in wall.openings)
    return project.with_wall(msgspec.structs.replace(wall, openings=openings))


def _fit(project: Project, letter: str, opening: Opening) -> Fit | None:
    """Where the opening fits beside all others that do; None under no roof."""
    frame = worked(project, letter).frame
    if frame is None:
        return None
    others = tuple(p.opening for p in frame.openings if p.fit.fits and p.opening.id != opening.id)
    return fit(project.wall(letter), opening, (frame.near, frame.far), others)


def _fits(project: Project, letter: str, opening: Opening) -> bool:
    found = _fit(project, letter, opening)
    return found is not None and found.fits


def _check_heights(opening: Opening, letter: str) -> None:
    if opening.width.mm <= 0:
        raise Refusal(message("edit.no-width", opening=spoken(opening.id), letter=letter))
    if not 0 <= opening.sill.mm < opening.head.mm:
        raise Refusal(
            message(
                "edit.sill-head",
                opening=spoken(opening.id),
                letter=letter,
                sill=Mm(opening.sill.mm),
                head=Mm(opening.head.mm),
            )
        )


def _refusal(project: Project, letter: str, before: Opening, after: Opening, found: Fit) -> Refusal:
    """Why the change does not fit: by the head or width that would, else by the places."""

    def fits(**changes: Any) -> bool:
        return _fits(project, letter, msgspec.structs.replace(after, **changes))

    tape = project.habits.tape
    lowest = after.sill.mm + tape.step_mm
    if after.left == before.left and after.head_lie != before.head_lie and fits(head=_mm(lowest)):
        most = _most(lowest, after.head.mm, tape.step_mm, lambda mm: fits(head=_mm(mm)))
        return _too_much("edit.too-high-raked", after, letter, after.head, most)
    if after.left == before.left and after.head != before.head and fits(head=before.head):
        most = _most(before.head.mm, after.head.mm, tape.step_mm, lambda mm: fits(head=_mm(mm)))
        return _too_much("edit.too-high", after, letter, after.head, most)
    if after.left == before.left and after.width != before.width and fits(width=before.width):
        most = _most(before.width.mm, after.width.mm, tape.step_mm, lambda mm: fits(width=_mm(mm)))
        return _too_much("edit.too-wide", after, letter, after.width, most)
    placed = PlacedOpening(f"{letter}/{after.id}", after, found)
    return Refusal(fit_message(placed, letter))


def _too_much(
    message_id: str, opening: Opening, letter: str, wanted: Length, most: float
) -> Refusal:
    return Refusal(
        message(
            message_id,
            opening=spoken(opening.id),
            letter=letter,
            wanted=Mm(wanted.mm),
            most=Mm(most),
        )
    )


def _most(good: float, bad: float, step: float, fits: Callable[[float], bool]) -> float:
    """The most in mm, in whole steps if there is one, that still fits between good and bad."""
    low, high = good, bad
    while high - low > step / 64:
        middle = (low + high) / 2
        low, high = (middle, high) if fits(middle) else (low, middle)
    whole = (high // step) * step
    return whole if whole >= good and fits(whole) else low


def _mm(mm: float) -> Length:
    return Length.of_mm(mm)
