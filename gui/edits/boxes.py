"""Moving, setting and adding boxes; refused off the stud or where timber is in the way."""

from typing import Any

import msgspec

from core.framing import Frame, Member, PlacedBox, Role, spoken
from core.framing.layout import CLEAR
from core.job import WallResult
from core.lengths import Length
from core.model import Box, BoxHeight, Project, Side, Wall
from core.wording import Mm, message
from gui.edits import usual
from gui.edits.refusal import Refusal
from gui.edits.sense import check_wall
from gui.edits.stating import next_id, stated, worked

_CARRIES = frozenset({Role.STUD, Role.KING, Role.TRIMMER})


def move_box(
    project: Project, letter: str, box_id: str, stud: str, side: Side, height: Length | float
) -> Project:
    """The box on the side of the stud with this key, at a stated height (mm)."""
    to = stated(project, height)
    return set_box(project, letter, box_id, stud=stud, side=side, height=to)


def set_box(project: Project, letter: str, box_id: str, **changes: Any) -> Project:
    """The box with some of its fields changed; refused if that takes it off a sound place.

    One that had no sound place before may be changed freely: it stays marked until it has one.
    """
    before = project.wall(letter).box(box_id)
    after = msgspec.structs.replace(before, **changes)
    changed = _with_box(project, letter, after)
    refusal = _refusal(worked(changed, letter), after)
    if refusal is not None and _refusal(worked(project, letter), before) is None:
        raise refusal
    return check_wall(changed, letter)


def add_box(project: Project, letter: str, stud: str | None = None) -> Project:
    """A new box of usual size on this stud, else on the one nearest the middle that has room."""
    wall = project.wall(letter)
    frame = worked(project, letter).frame
    for key in _studs(wall, frame, stud) if frame else ():
        for side in (Side.RIGHT, Side.LEFT):
            box = usual.box(project.system, next_id(wall, "box"), key, side)
            try:
                return put_box(project, letter, box)
            except Refusal:
                continue
    raise Refusal(message("edit.no-stud", letter=letter))


def put_box(project: Project, letter: str, box: Box) -> Project:
    """The wall with this box besides; refused where it has no sound place."""
    wall = project.wall(letter)
    changed = project.with_wall(msgspec.structs.replace(wall, boxes=(*wall.boxes, box)))
    refusal = _refusal(worked(changed, letter), box)
    if refusal is not None:
        raise refusal
    return check_wall(changed, letter)


def _with_box(project: Project, letter: str, box: Box) -> Project:
    wall = project.wall(letter)
    boxes = tuple(box if b.id == box.id else b for b in wall.boxes)
    return project.with_wall(msgspec.structs.replace(wall, boxes=boxes))


def _studs(wall: Wall, frame: Frame, first: str | None) -> list[str]:
    """The keys of members that can carry a box: the first one named, then outward."""
    able = [m for m in frame.members if m.role in _CARRIES]
    start = frame.member(first) if first else None
    middle = start.left if start else wall.run / 2
    return [m.key for m in sorted(able, key=lambda m: abs(m.left - middle))]


def _refusal(result: WallResult, box: Box) -> Refusal | None:
    """Why the box has no sound place, with the heights that would do; None if it has one."""
    placed = next((p for p in result.boxes if p.box.id == box.id), None)
    if result.frame is None or placed is None:
        return None
    stud = result.frame.member(box.stud)
    if stud is None or stud.role not in _CARRIES:
        return Refusal(message("edit.box-no-stud", box=spoken(box.id), letter=result.wall.letter))
    if placed.stud is None:
        return _off_stud(result.wall.letter, placed, stud)
    if placed.blocked_by is not None:
        return Refusal(message("edit.box-blocked", box=spoken(box.id), letter=result.wall.letter))
    opening = _opening_behind(result.frame, placed)
    if opening is not None:
        return Refusal(message("edit.box-in-opening", box=spoken(box.id), opening=spoken(opening)))
    return None


def _opening_behind(frame: Frame, placed: PlacedBox) -> str | None:
    """The id of the rough opening that a box would stand in."""
    for opening in (p for p in frame.openings if p.fit.fits):
        left, right = max(placed.left, opening.left), min(placed.right, opening.right)
        beside = right <= left + CLEAR
        over = placed.bottom >= opening.highest(left, right) - CLEAR
        if not beside and not over and placed.top > opening.opening.sill.mm + CLEAR:
            return opening.opening.id
    return None


def _off_stud(letter: str, placed: PlacedBox, stud: Member) -> Refusal:
    box = placed.box
    above = {BoxHeight.BOTTOM: 0.0, BoxHeight.CENTRE: box.tall.mm / 2, BoxHeight.TOP: box.tall.mm}
    foot, reach = stud.span(box.side)
    low, high = foot + above[box.to], reach - box.tall.mm + above[box.to]
    if high < low:
        return Refusal(message("edit.box-short-stud", box=spoken(box.id), letter=letter))
    nearest = min(max(box.height.mm, low), high)
    return Refusal(
        message(
            "edit.box-height",
            box=spoken(box.id),
            letter=letter,
            height=Mm(box.height.mm),
            nearest=Mm(nearest),
        )
    )
