"""Where walls meet, found from the plan."""

import math

import msgspec

from core.model import ExistingWall, Project, Room, Side, StairOpening, Wall, WallFace

REACH = 30.0
"""How far (mm) the end of a wall may be off another's face and still meet it: hung board."""

NAIL = 12.7
"""The least of a stud (mm) that has to show beside the other wall for a board's edge: common
practice, no source."""

_STEEP = 0.34
"""The sine of the least angle, 20 degrees, at which a wall ends against another."""

Span = tuple[float, float]


class Meeting(msgspec.Struct, frozen=True):
    """The end of another wall against this one: which wall, which of its ends, on which face.

    Its timber takes up this wall from `left` to `right`, mm.
    """

    other: str
    end: Side
    face: WallFace
    left: float
    right: float


class Footprint(msgspec.Struct, frozen=True):
    """Where a wall stands in plan, mm: its left end, its direction and that away from face A."""

    letter: str
    start: Span
    along: Span
    away: Span
    run: float
    width: float

    @classmethod
    def of(cls, wall: Wall) -> "Footprint | None":
        """The footprint of a wall; None for one without length."""
        (u0, v0), (u1, v1) = wall.chalk
        run = wall.run
        if run <= 0.0:
            return None
        along = ((u1 - u0) / run, (v1 - v0) / run)
        away = (-along[1], along[0])
        return cls(wall.letter, (u0, v0), along, away, run, wall.stud.width.mm)


def existing_footprint(wall: ExistingWall) -> Footprint | None:
    """Where a wall stands that is there already, under its id; None for one without length."""
    left, right = wall.left_end, wall.right_end
    start, end = (left.across.mm, left.along.mm), (right.across.mm, right.along.mm)
    run = math.dist(start, end)
    if run <= 0.0:
        return None
    along = ((end[0] - start[0]) / run, (end[1] - start[1]) / run)
    away = (-along[1], along[0])
    return Footprint(wall.id, start, along, away, run, wall.thickness.mm)


def stair_footprint(stair: StairOpening) -> Footprint:
    """The ground of a stair opening under its id, told like that of a wall across the room."""
    start = (stair.across.mm, stair.along.mm)
    return Footprint(stair.id, start, (1.0, 0.0), (0.0, 1.0), stair.wide.mm, stair.deep.mm)


def existing_footprints(room: Room) -> tuple[Footprint, ...]:
    """Where the walls of a room stand that are there already."""
    found = (existing_footprint(wall) for wall in room.existing_walls)
    return tuple(ground for ground in found if ground is not None)


def standing_in(project: Project) -> tuple[Footprint, ...]:
    """Where all walls of a project stand: those to be framed, then those that are there already."""
    return (*footprints(project.walls), *existing_footprints(project.room))


def footprints(walls: tuple[Wall, ...]) -> tuple[Footprint, ...]:
    """The footprints of all walls that have a length."""
    return tuple(found for wall in walls if (found := Footprint.of(wall)) is not None)


def meetings(wall: Wall, plan: tuple[Footprint, ...]) -> tuple[Meeting, ...]:
    """Every end of another wall that stands against a face of this one, from left to right."""
    own = Footprint.of(wall)
    if own is None:
        return ()
    found = [
        met
        for other in plan
        if other.letter != wall.letter
        for end in Side
        if (met := _met(own, other, end)) is not None
    ]
    return tuple(sorted(found, key=lambda met: met.left))


def _met(wall: Footprint, other: Footprint, end: Side) -> Meeting | None:
    """Where the end of another wall stands against a face of this one, if it does.

    Both long sides of the other wall are followed to the face, so that a wall at an angle takes up
    what it covers there; one corner of its end has to be at the face.
    """
    first = _corner(wall, other, end, 0.0)
    if not -other.width - REACH <= first[1] <= wall.width + other.width + REACH:
        return None
    turn = 1.0 if end is Side.LEFT else -1.0
    lean = turn * _dot(other.along, wall.away)
    if abs(lean) < _STEEP:
        return None
    face, surface = (WallFace.FAR, wall.width) if lean > 0 else (WallFace.A, 0.0)
    corners = (first, _corner(wall, other, end, other.width))
    if all(abs(surface - depth) > REACH for _, depth in corners):
        return None
    aside = turn * _dot(other.along, wall.along) / lean
    left, right = sorted(x + (surface - depth) * aside for x, depth in corners)
    if min(right, wall.run) - max(left, 0.0) < NAIL:
        return None
    return Meeting(other.letter, end, face, left, right)


def _corner(wall: Footprint, other: Footprint, end: Side, aside: float) -> Span:
    """A corner of the other wall's end, along this wall and away from its face A."""
    at = other.run if end is Side.RIGHT else 0.0
    u = other.start[0] + other.along[0] * at + other.away[0] * aside - wall.start[0]
    v = other.start[1] + other.along[1] * at + other.away[1] * aside - wall.start[1]
    return _dot((u, v), wall.along), _dot((u, v), wall.away)


def _dot(a: Span, b: Span) -> float:
    return a[0] * b[0] + a[1] * b[1]
