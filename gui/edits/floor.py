"""What the floor has, drawn and changed: stair openings, and walls that stand there already."""

from itertools import count
from typing import Any

import msgspec

from core.framing import Footprint, existing_footprint, stair_footprint
from core.lengths import System
from core.model import ExistingWall, Project, Room, Side, StairOpening
from core.wording import message
from gui.edits import usual
from gui.edits.chalk import lengthen_wall, place_wall, point, turned
from gui.edits.deleting import delete_wall
from gui.edits.refusal import Refusal
from gui.edits.sense import check_sense
from gui.edits.stating import stated

XY = tuple[float, float]

LEAST = 100.0
"""The least that a stair opening measures either way, mm: anything less is a slip of the hand."""


def part_id(room: Room, stem: str) -> str:
    """The first of stem-1, stem-2, ... that nothing in the room is called."""
    lists: tuple[tuple[Any, ...], ...] = (
        *(room.dormers, room.wings, room.purlins, room.kept_clear),
        *(room.stair_openings, room.existing_walls),
    )
    taken = {item.id for items in lists for item in items}
    return next(name for n in count(1) if (name := f"{stem}-{n}") not in taken)


def draw_existing(project: Project, chalk: tuple[XY, XY]) -> Project:
    """The room with one more wall that is there already; as thick as the last one, or a stud."""
    walls = project.room.existing_walls
    thick = walls[-1].thickness if walls else usual.stud(project.system).width
    name = part_id(project.room, "existing-wall")
    ends = point(project, chalk[0]), point(project, chalk[1])
    return _room(project, existing_walls=(*walls, ExistingWall(name, *ends, thick)))


def draw_stair(project: Project, first: XY, last: XY) -> Project:
    """The room with one more stair opening between two corners; Refusal for next to nothing."""
    (u0, u1), (v0, v1) = (sorted(pair) for pair in zip(first, last, strict=True))
    if min(u1 - u0, v1 - v0) < LEAST:
        raise Refusal(message("edit.small-stair"))
    sizes = (stated(project, mm) for mm in (u0, v0, u1 - u0, v1 - v0))
    stair = StairOpening(part_id(project.room, "stair-opening"), *sizes)
    return _room(project, stair_openings=(*project.room.stair_openings, stair))


def usual_stair(project: Project) -> StairOpening:
    """A stair opening of common size in the middle of the room; common practice, no source."""
    inch = project.system is System.INCH
    wide, deep = (
        usual.length(project.system, text)
        for text in (("36 in", "120 in") if inch else ("900 mm", "3000 mm"))
    )
    middle = (project.room.width.mm / 2, project.room.length.mm / 2)
    across, along = point(project, middle).across, point(project, middle).along
    return StairOpening(part_id(project.room, "stair-opening"), across, along, wide, deep)


def usual_existing(project: Project) -> ExistingWall:
    """A wall across half the room, halfway along it."""
    middle = project.room.width.mm / 2, project.room.length.mm / 2
    return draw_existing(project, ((0.0, middle[1]), middle)).room.existing_walls[-1]


def ground_of(project: Project, key: str) -> Footprint | None:
    """Where a thing of the plan stands; None for what is not there or has no length."""
    for wall in project.walls:
        if wall.letter == key:
            return Footprint.of(wall)
    for old in project.room.existing_walls:
        if old.id == key:
            return existing_footprint(old)
    for stair in project.room.stair_openings:
        if stair.id == key:
            return stair_footprint(stair)
    return None


def plan_keys(project: Project) -> tuple[str, ...]:
    """The keys of all that can be held in the plan: letters of walls, ids of what is there."""
    room = project.room
    things: tuple[Any, ...] = (*room.existing_walls, *room.stair_openings)
    return (*(wall.letter for wall in project.walls), *(thing.id for thing in things))


def place(project: Project, key: str, left: XY, right: XY) -> Project:
    """A thing of the plan with its line elsewhere; a stair opening only moves, or gets wider."""
    room = project.room
    if any(wall.letter == key for wall in project.walls):
        return place_wall(project, key, left, right)
    old = tuple(
        msgspec.structs.replace(
            wall,
            left_end=point(project, left, wall.left_end),
            right_end=point(project, right, wall.right_end),
        )
        if wall.id == key
        else wall
        for wall in room.existing_walls
    )
    stairs = tuple(
        msgspec.structs.replace(
            stair,
            across=stated(project, min(left[0], right[0])),
            along=stated(project, left[1]),
            wide=stated(project, abs(right[0] - left[0])),
        )
        if stair.id == key
        else stair
        for stair in room.stair_openings
    )
    return _room(project, existing_walls=old, stair_openings=stairs)


def lengthen(project: Project, key: str, end: Side, to: XY) -> Project:
    """A thing of the plan with one end drawn to a point."""
    if any(wall.letter == key for wall in project.walls):
        return lengthen_wall(project, key, end, to)
    ground = ground_of(project, key)
    if ground is None:
        return project
    far = (
        ground.start[0] + ground.along[0] * ground.run,
        ground.start[1] + (ground.along[1] * ground.run),
    )
    return place(project, key, *((ground.start, to) if end is Side.RIGHT else (to, far)))


def turn(project: Project, key: str, about: XY, angle: float) -> Project:
    """A wall turned about a plan point by an angle, radians; a stair opening is not turned."""
    ground = ground_of(project, key)
    if ground is None or any(stair.id == key for stair in project.room.stair_openings):
        return project
    ends = (
        ground.start,
        tuple(s + a * ground.run for s, a in zip(ground.start, ground.along, strict=True)),
    )
    left, right = (turned((end[0], end[1]), about, angle) for end in ends)
    return place(project, key, left, right)


def deepen(project: Project, key: str, deep: float) -> Project:
    """A stair opening so deep, or an existing wall so thick (mm)."""
    room, to = project.room, stated(project, deep)
    replace = msgspec.structs.replace
    stairs = (replace(s, deep=to) if s.id == key else s for s in room.stair_openings)
    walls = (replace(w, thickness=to) if w.id == key else w for w in room.existing_walls)
    return _room(project, stair_openings=tuple(stairs), existing_walls=tuple(walls))


def without(project: Project, key: str) -> Project:
    """The project without a thing of the plan."""
    if any(wall.letter == key for wall in project.walls):
        return delete_wall(project, key)
    room = project.room
    return _room(
        project,
        stair_openings=tuple(s for s in room.stair_openings if s.id != key),
        existing_walls=tuple(w for w in room.existing_walls if w.id != key),
    )


def _room(project: Project, **changes: object) -> Project:
    room = msgspec.structs.replace(project.room, **changes)
    return check_sense(msgspec.structs.replace(project, room=room))
