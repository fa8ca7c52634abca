"""Walls drawn, moved, turned, copied and mirrored in plan: edits of their chalk lines."""

import math

import msgspec

from core.lengths import Length
from core.model import Point, Project, Side, Wall, next_letter
from core.roof import ridge
from core.wording import message
from gui.edits.along import relettered, seen_from_behind, shifted, turned_over
from gui.edits.refusal import Refusal
from gui.edits.sense import check_sense
from gui.edits.stating import stated
from gui.edits.walls import add_wall, check_ends

XY = tuple[float, float]


def draw_wall(
    project: Project,
    chalk: tuple[XY, XY],
    name: str,
    like: str | None = None,
    spent: frozenset[str] = frozenset(),
) -> Project:
    """A new wall on a chalk line, (u, v) in mm from its left end to its right one."""
    ends = point(project, chalk[0]), point(project, chalk[1])
    return add_wall(project, name, like, spent, ends)


def place_wall(project: Project, letter: str, left: XY, right: XY) -> Project:
    """The wall with its chalk line elsewhere; what stands in it keeps its places from the left."""
    wall = project.wall(letter)
    return _put(project, _between(project, wall, left, right))


def lengthen_wall(project: Project, letter: str, end: Side, to: XY) -> Project:
    """The wall with one end drawn to a point; what stands in it stays where it is in the room."""
    wall = project.wall(letter)
    left, right = wall.chalk
    if end is Side.RIGHT:
        return _put(project, _between(project, wall, left, to))
    along = ((right[0] - left[0]) / wall.run, (right[1] - left[1]) / wall.run)
    by = (left[0] - to[0]) * along[0] + (left[1] - to[1]) * along[1]
    return _put(project, _between(project, shifted(project, wall, by), to, right))


def turn_wall(project: Project, letter: str, about: XY, angle: float) -> Project:
    """The wall turned about a plan point by an angle, radians against the clock."""
    wall = project.wall(letter)
    left, right = (turned(end, about, angle) for end in wall.chalk)
    return _put(project, _between(project, wall, left, right))


def copy_wall(project: Project, letter: str, by: XY, spent: frozenset[str]) -> Project:
    """The project with a copy of a wall moved by (u, v) mm, all that stands in it included."""
    wall = project.wall(letter)
    left, right = ((p[0] + by[0], p[1] + by[1]) for p in wall.chalk)
    return _add(project, _between(project, wall, left, right), spent)


def mirror_wall(project: Project, letter: str, spent: frozenset[str]) -> Project:
    """The project with a copy of a wall mirrored about the ridge, or the middle of the room.

    A wall that would come to stand where it stands is refused.
    """
    wall, middle = project.wall(letter), mirror_line(project)
    left, right = ((2 * middle - u, v) for u, v in wall.chalk)
    if math.dist(right, wall.chalk[0]) < 1.0 and math.dist(left, wall.chalk[1]) < 1.0:
        raise Refusal(message("edit.mirrored-alike", letter=letter))
    return _add(project, _between(project, turned_over(project, wall), right, left), spent)


def turn_face(project: Project, letter: str) -> Project:
    """The wall with its face A on the other side; its timber and what stands in it stay put."""
    wall = project.wall(letter)
    far = _far(wall)
    over = seen_from_behind(turned_over(project, wall))
    return _put(project, _between(project, over, far[1], far[0]))


def mirror_line(project: Project) -> float:
    """Where across the room walls are mirrored, mm: at the ridge, or in the room's middle."""
    at = ridge(project.room)
    return at[0] if at is not None else project.room.width.mm / 2


def point(project: Project, at: XY, before: Point | None = None) -> Point:
    """A plan point (mm) as stated; a coordinate that has not changed stays as it was written."""

    def coordinate(mm: float, old: Length | None) -> Length:
        mm = mm + 0.0
        return old if old is not None and abs(old.mm - mm) < 1e-6 else stated(project, mm)

    across, along = (before.across, before.along) if before else (None, None)
    return Point(coordinate(at[0], across), coordinate(at[1], along))


def _between(project: Project, wall: Wall, left: XY, right: XY) -> Wall:
    ends = point(project, left, wall.left_end), point(project, right, wall.right_end)
    return msgspec.structs.replace(wall, left_end=ends[0], right_end=ends[1])


def _put(project: Project, wall: Wall) -> Project:
    check_ends(project.room, wall)
    return check_sense(project.with_wall(wall))


def _add(project: Project, wall: Wall, spent: frozenset[str]) -> Project:
    """The project with one more wall, under the first letter that is neither taken nor spent."""
    full = project
    letter = next_letter(full)
    while letter in spent:
        taken = msgspec.structs.replace(wall, letter=letter)
        full = msgspec.structs.replace(full, walls=(*full.walls, taken))
        letter = next_letter(full)
    new = relettered(wall, letter)
    check_ends(project.room, new)
    return check_sense(msgspec.structs.replace(project, walls=(*project.walls, new)))


def _far(wall: Wall) -> tuple[XY, XY]:
    """The ends of the wall's far face, left end first, mm."""
    (u0, v0), (u1, v1) = wall.chalk
    deep = wall.stud.width.mm / wall.run
    aside = (-(v1 - v0) * deep, (u1 - u0) * deep)
    return (u0 + aside[0], v0 + aside[1]), (u1 + aside[0], v1 + aside[1])


def turned(at: XY, about: XY, angle: float) -> XY:
    """A plan point turned about another by an angle, radians against the clock."""
    x, y = at[0] - about[0], at[1] - about[1]
    cos, sin = math.cos(angle), math.sin(angle)
    return about[0] + x * cos - y * sin, about[1] + x * sin + y * cos
