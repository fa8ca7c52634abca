"""Stating rules of framing, where layout starts, and studs that are doubled."""

from typing import Any

import msgspec

from core.framing import keys, origin_in_line
from core.lengths import Length, System
from core.model import DoubledStud, Near, Project, Side, WallRules
from core.wording import message
from gui.edits.refusal import Refusal
from gui.edits.sense import check_wall
from gui.edits.stating import stated, worked
from gui.edits.usual import length


def set_rules(project: Project, letter: str, **changes: Any) -> Project:
    """The wall with some of its rules changed; usual ones alone are not written down.

    A layout stud that merges needs a room to be nearer than: 3 in. or 75 mm if none is stated.
    """
    wall = project.wall(letter)
    rules = msgspec.structs.replace(wall.goes_by, **changes)
    if merges(rules) and rules.closer_than is None:
        rules = msgspec.structs.replace(rules, closer_than=usual_room(project.system))
    kept = None if rules == WallRules() else rules
    return check_wall(project.with_wall(msgspec.structs.replace(wall, rules=kept)), letter)


def merges(rules: WallRules) -> bool:
    """Whether some layout stud merges with what it stands near."""
    return Near.MERGE in (rules.near_kings, rules.near_ends)


def usual_room(system: System) -> Length:
    """The room beside a king that a layout stud merges within. Common practice, no source."""
    return length(system, "3 in" if system is System.INCH else "75 mm")


def set_origin(project: Project, letter: str, origin: Length | None) -> Project:
    """The wall with its layout in line with a place along it; None lets it start at its end."""
    wall = project.wall(letter)
    layout = msgspec.structs.replace(wall.layout, origin=origin)
    return check_wall(project.with_wall(msgspec.structs.replace(wall, layout=layout)), letter)


def line_up(project: Project, letter: str, other: str) -> Project:
    """The wall with its layout in line with that of another, as its own stated point.

    Refused where there is no such wall, or none of its marks lies straight across.
    """
    letters = [wall.letter for wall in project.walls if wall.letter != letter]
    if other not in letters:
        named = ", ".join(letters) or "-"
        raise Refusal(message("edit.no-such-wall", other=other, letters=named))
    place = origin_in_line(project.wall(letter), project.wall(other))
    if place is None:
        raise Refusal(message("edit.not-parallel", letter=letter, other=other))
    return set_origin(project, letter, stated(project, place))


def set_doubled(project: Project, letter: str, stud: str, side: Side | None) -> Project:
    """The wall with a second stud on a side of the one with key `stud`; None takes it away.

    Refused where there is no room for it, naming the other side if there is room there.
    """
    wall = project.wall(letter)
    others = tuple(d for d in wall.doubled if d.stud != stud)
    mine = () if side is None else (DoubledStud(stud, side),)
    changed = project.with_wall(msgspec.structs.replace(wall, doubled=(*others, *mine)))
    if side is None or _stands(changed, letter, stud):
        return check_wall(changed, letter)
    turned = msgspec.structs.replace(wall, doubled=(*others, DoubledStud(stud, side.other)))
    name = worked(project, letter).label_of.get(stud, stud)
    other = _stands(project.with_wall(turned), letter, stud)
    said = "edit.double-other-side" if other else "edit.double-no-room"
    raise Refusal(message(said, stud=name, letter=letter))


def _stands(project: Project, letter: str, stud: str) -> bool:
    frame = worked(project, letter).frame
    return frame is not None and frame.member(keys.double(stud)) is not None
