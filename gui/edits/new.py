"""A project to begin with, and its room as the answers to a few questions make it."""

from typing import Any

import msgspec

from core.lengths import Length, Pitch, System, Tape
from core.model import FloorSeen, Habits, Project, Room
from gui.edits import usual
from gui.edits.room import set_room


def new_project(system: System, name: str) -> Project:
    """A room of usual size with no walls yet, whose floor nobody has looked at."""
    room = msgspec.structs.replace(usual.room(system), floor_seen=FloorSeen.NOBODY)
    return Project(name, system, room, (), Habits(tape=Tape.usual(system)))


def set_rafters(
    project: Project, *, depth: Length | None = None, apart: Length | None = None
) -> Project:
    """The room with rafters of another depth or spacing."""
    rafter = project.room.rafter
    timber = msgspec.structs.replace(rafter.timber, width=depth or rafter.timber.width)
    changed = msgspec.structs.replace(rafter, timber=timber, spacing=apart or rafter.spacing)
    return set_room(project, rafter=changed)


def in_system(project: Project, system: System) -> Project:
    """The project in another system: what was answered is taken over, the rest is usual there.

    Lengths that were answered come out on that system's tape; a pitch stays as it was written.
    """
    if system is project.system:
        return project
    was, fresh = new_project(project.system, project.name), new_project(system, project.name)
    return msgspec.structs.replace(
        fresh, room=_taken_over(project.room, was.room, fresh.room, system)
    )


def _taken_over(room: Room, was: Room, fresh: Room, system: System) -> Any:
    """A struct of the room in another system, field by field."""
    if room == was:
        return fresh
    if isinstance(room, Length):
        return Length(Tape.usual(system).round(room.mm), system.bare_unit)
    if isinstance(room, msgspec.Struct) and type(room) is type(was) is type(fresh):
        if isinstance(room, Pitch):
            return room
        names = room.__struct_fields__
        parts = {
            n: _taken_over(getattr(room, n), getattr(was, n), getattr(fresh, n), system)
            for n in names
        }
        return msgspec.structs.replace(fresh, **parts)
    return room
