"""Adding and setting walls."""

import math
from typing import Any

import msgspec

from core.model import Layout, MeetingKind, Point, Project, Room, TopPlate, Wall, next_letter
from core.roof import stands_in_wing
from core.storage.limits import OUTSIDE_MM, SHORTEST_WALL_MM
from core.wording import Mm, message
from gui.edits import usual
from gui.edits.refusal import Refusal
from gui.edits.sense import check_sense
from gui.edits.stating import stated

_APART = 600.0
"""How far (mm) a new wall keeps from those across the room."""


Ends = tuple[Point, Point]
"""The left and the right end of a wall."""


def add_wall(
    project: Project,
    name: str,
    like: str | None = None,
    spent: frozenset[str] = frozenset(),
    ends: Ends | None = None,
) -> Project:
    """A new wall between its ends, or across the room, like the wall `like` in timber and layout.

    It gets none of the `spent` letters: those of walls that are gone but stand on printed sheets.
    """
    pattern = project.wall(like) if like is not None else None
    wall = _new(project, name, pattern, ends or _across(project))
    check_ends(project.room, wall)
    full = project
    while wall.letter in spent:
        full = _with(full, wall)
        wall = msgspec.structs.replace(wall, letter=next_letter(full))
    return check_sense(_with(project, wall))


def set_wall(project: Project, letter: str, **changes: Any) -> Project:
    """The wall with some of its fields changed; ends stay within the room and apart."""
    wall = msgspec.structs.replace(project.wall(letter), **changes)
    check_ends(project.room, wall)
    return check_sense(project.with_wall(wall))


def check_ends(room: Room, wall: Wall) -> None:
    """Refuse a wall that ends outside the room, or whose ends are too near to each other."""
    for end in (wall.left_end, wall.right_end):
        check_end(room, wall.letter, end)
    if wall.run < SHORTEST_WALL_MM:
        run, least = Mm(wall.run), Mm(SHORTEST_WALL_MM)
        raise Refusal(message("edit.short-wall", letter=wall.letter, run=run, least=least))


def check_end(room: Room, letter: str, end: Point) -> None:
    """Refuse an end of a wall outside the room and its wings, naming the nearest place inside."""
    if stands_in_wing(room, (end.across.mm, end.along.mm), OUTSIDE_MM):
        return
    bounds = (
        (end.across.mm, room.width.mm, "edit.end-across"),
        (end.along.mm, room.length.mm, "edit.end-along"),
    )
    for at, limit, message_id in bounds:
        nearest = min(max(at, 0.0), limit)
        if abs(at - nearest) > OUTSIDE_MM:
            raise Refusal(message(message_id, letter=letter, at=Mm(at), nearest=Mm(nearest)))


def _with(project: Project, wall: Wall) -> Project:
    return msgspec.structs.replace(project, walls=(*project.walls, wall))


def _across(project: Project) -> Ends:
    """The ends of a wall from eave to eave where there is none."""
    along = stated(project, project.habits.tape.round(_free_place(project)))
    zero = usual.length(project.system, "0")
    return Point(zero, along), Point(project.room.width, along)


def _new(project: Project, name: str, pattern: Wall | None, ends: Ends) -> Wall:
    """A wall under the first free letter."""
    letter = next_letter(project)
    if pattern is not None:
        stud, sole, top, layout = (
            pattern.stud,
            pattern.sole_plate,
            pattern.top_plate,
            pattern.layout,
        )
        meeting = pattern.meeting or MeetingKind.THREE_STUDS
        return Wall(letter, name, *ends, stud, sole, top, layout, meeting=meeting)
    stud = usual.stud(project.system)
    layout = Layout(usual.spacing(project.system), hung_board=usual.length(project.system, "0"))
    return Wall(
        letter, name, *ends, stud, stud, TopPlate(stud), layout, meeting=MeetingKind.THREE_STUDS
    )


def _free_place(project: Project) -> float:
    """A place along the room, mm: its middle, or the nearest that is clear of other walls."""
    length = project.room.length.mm
    middle = length / 2
    taken = [wall.left_end.along.mm for wall in project.walls]
    steps = range(1, math.ceil(middle / _APART))
    wanted = [middle, *(middle + side * step * _APART for step in steps for side in (1, -1))]
    clear = (p for p in wanted if all(abs(p - t) >= _APART - 1.0 for t in taken))
    return next(clear, middle)
