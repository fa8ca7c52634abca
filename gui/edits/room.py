"""Setting the room, the project's name and the person's habits."""

from typing import Any

import msgspec

from core.lengths import Length, System, Tape
from core.model import Habits, Point, Project, Room, Wall
from core.wording import message
from gui.edits.refusal import Refusal
from gui.edits.sense import check_sense
from gui.edits.walls import check_end


def set_room(project: Project, **changes: Any) -> Project:
    """The room with some of its fields changed.

    Walls that ended at the right eave wall or at the far gable go with it; a change that would
    leave another wall's end outside is refused.
    """
    before, room = project.room, msgspec.structs.replace(project.room, **changes)
    if room.left is None and room.right is None:
        raise Refusal(message("edit.no-slope"))
    walls = tuple(_followed(wall, before, room) for wall in project.walls)
    for wall in walls:
        for end in (wall.left_end, wall.right_end):
            check_end(room, wall.letter, end)
    return check_sense(msgspec.structs.replace(project, room=room, walls=walls))


def set_habits(project: Project, **changes: Any) -> Project:
    """The project with some of the person's habits changed."""
    habits: Habits = msgspec.structs.replace(project.habits, **changes)
    return check_sense(msgspec.structs.replace(project, habits=habits))


def set_system(project: Project, system: System) -> Project:
    """The project in other units: every length stays as it was written.

    The tape becomes the usual one of those units unless it has them already.
    """
    tape = project.habits.tape
    if tape.system is not system:
        tape = Tape.usual(system)
    return set_habits(msgspec.structs.replace(project, system=system), tape=tape)


def set_name(project: Project, name: str) -> Project:
    """The project under another name."""
    if not name.strip():
        raise Refusal(message("edit.no-name"))
    return check_sense(msgspec.structs.replace(project, name=name.strip()))


def _followed(wall: Wall, before: Room, room: Room) -> Wall:
    ends = (_end(end, before, room) for end in (wall.left_end, wall.right_end))
    left, right = ends
    return msgspec.structs.replace(wall, left_end=left, right_end=right)


def _end(end: Point, before: Room, room: Room) -> Point:
    return Point(
        _coordinate(end.across, before.width, room.width),
        _coordinate(end.along, before.length, room.length),
    )


def _coordinate(at: Length, before: Length, after: Length) -> Length:
    return after if abs(at.mm - before.mm) <= 1.0 and before != after else at
