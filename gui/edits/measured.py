"""What the tape said: points of the roof and the floor, measured studs, level line and fit."""

import enum
from itertools import pairwise

import msgspec

from core.lengths import Length
from core.model import MeasuredStud, Project, Station, Wall
from core.roof import floor_line
from core.storage.limits import APART_MM
from core.wording import Mm, message
from gui.edits.refusal import Refusal
from gui.edits.sense import check_wall
from gui.edits.stating import stated, worked


class Line(enum.Enum):
    """The lines that are measured; the value is the field of a wall that holds its points."""

    ROOF = "roof_points"
    FLOOR = "floor_points"


def add_station(
    project: Project, letter: str, line: Line, at: Length, height: Length | None = None
) -> Project:
    """One more measured point; without a height it starts out as the line is there now."""
    wall = project.wall(letter)
    if height is None:
        height = stated(project, project.habits.tape.round(_now(project, wall, line, at.mm)))
    return _put(project, wall, line, (*_points(wall, line), Station(at, height)))


def set_station(
    project: Project,
    letter: str,
    line: Line,
    index: int,
    *,
    at: Length | None = None,
    height: Length | None = None,
) -> Project:
    """The point at an index with another place or another height."""
    wall = project.wall(letter)
    points = list(_points(wall, line))
    old = points[index]
    points[index] = Station(at or old.at, height or old.height)
    return _put(project, wall, line, tuple(points))


def remove_station(project: Project, letter: str, line: Line, index: int) -> Project:
    """The wall without one of its measured points."""
    wall = project.wall(letter)
    points = _points(wall, line)
    return _put(project, wall, line, (*points[:index], *points[index + 1 :]))


def measure_stud(
    project: Project, letter: str, key: str, length: Length, is_test: bool = False
) -> Project:
    """The stud with this key cut to a measured length at its long point."""
    wall = project.wall(letter)
    others = tuple(s for s in wall.measured_studs if s.key != key)
    studs = (*others, MeasuredStud(key, length, is_test))
    return _checked(project, msgspec.structs.replace(wall, measured_studs=studs))


def forget_stud(project: Project, letter: str, key: str) -> Project:
    """The stud with this key cut as it is worked out again."""
    wall = project.wall(letter)
    others = tuple(s for s in wall.measured_studs if s.key != key)
    return project.with_wall(msgspec.structs.replace(wall, measured_studs=others))


def gone_studs(project: Project, letter: str) -> tuple[str, ...]:
    """The keys of measured studs that do not stand in the wall any more."""
    frame = worked(project, letter).frame
    there = {tried.key for tried in frame.measured} if frame else set()
    return tuple(s.key for s in project.wall(letter).measured_studs if s.key not in there)


def forget_gone(project: Project, letter: str) -> Project:
    """The wall without the measured studs that are gone."""
    for key in gone_studs(project, letter):
        project = forget_stud(project, letter, key)
    return project


def _points(wall: Wall, line: Line) -> tuple[Station, ...]:
    points: tuple[Station, ...] = getattr(wall, line.value)
    return points


def _put(project: Project, wall: Wall, line: Line, points: tuple[Station, ...]) -> Project:
    """The wall with these points from left to right; refused where two stand at one place."""
    ordered = tuple(sorted(points, key=lambda p: p.at.mm))
    for a, b in pairwise(ordered):
        if b.at.mm - a.at.mm < APART_MM:
            nearest = a.at.mm + project.habits.tape.step.mm
            raise Refusal(message("edit.station-taken", at=Mm(a.at.mm), nearest=Mm(nearest)))
    return _checked(project, msgspec.structs.replace(wall, **{line.value: ordered}))


def _checked(project: Project, wall: Wall) -> Project:
    return check_wall(project.with_wall(wall), wall.letter)


def _now(project: Project, wall: Wall, line: Line, at: float) -> float:
    """What the tape would read at a place if the line were as it is now, mm."""
    level, floor = wall.level_line, floor_line(wall).height(at)
    if line is Line.FLOOR:
        return floor if level is None else level.mm - floor
    near = worked(project, wall.letter).inputs.near
    roof = near.height(at) if near is not None else 0.0
    return roof - (floor if level is None else level.mm)
