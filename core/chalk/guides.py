"""The lines of a plan that a chalk line can be drawn to: edges, ridge, faces of walls."""

import enum
import math

import msgspec

from core.framing import Footprint, existing_footprints, stair_footprint
from core.model import Room, Side, Wing
from core.roof import ridge

XY = tuple[float, float]


class Kind(enum.Enum):
    """What a line of the plan is."""

    LEFT_EAVE = "left eave"
    RIGHT_EAVE = "right eave"
    START = "start"
    END = "end"
    WING = "wing"
    RIDGE = "ridge"
    FACE_A = "face a"
    FAR_FACE = "far face"
    WALL_END = "wall end"
    IN_LINE = "in line"
    STAIR = "stair"


EDGES = frozenset({Kind.LEFT_EAVE, Kind.RIGHT_EAVE, Kind.START, Kind.END, Kind.WING})
"""The kinds that are an edge of the room."""


class Guide(msgspec.Struct, frozen=True):
    """A line through `at` in the direction `along` (of length one), from `low` to `high`, mm.

    An edge has the room to its left. `name` is the letter or id of what it belongs to.
    """

    kind: Kind
    at: XY
    along: XY
    low: float = -math.inf
    high: float = math.inf
    name: str = ""

    def place(self, point: XY) -> float:
        """How far along the line a point lies, mm from `at`."""
        return (point[0] - self.at[0]) * self.along[0] + (point[1] - self.at[1]) * self.along[1]

    def aside(self, point: XY) -> float:
        """How far to the left of the line a point lies, mm."""
        return (point[1] - self.at[1]) * self.along[0] - (point[0] - self.at[0]) * self.along[1]

    def foot(self, point: XY) -> XY:
        """The point of the line nearest to a point, beyond its ends too."""
        place = self.place(point)
        return self.at[0] + self.along[0] * place, self.at[1] + self.along[1] * place

    def reaches(self, point: XY, beyond: float) -> bool:
        """Whether a point lies beside the line's stretch, or at most `beyond` mm past its ends."""
        return self.low - beyond <= self.place(point) <= self.high + beyond


def guides(room: Room, grounds: tuple[Footprint, ...]) -> tuple[Guide, ...]:
    """The edges of the room and its wings, the ridge, and the faces and ends of what stands.

    `grounds` are those of the walls; what the room itself has is found here.

    Lines in line with a wall's faces go on without end. What comes first is preferred where
    several are as near.
    """
    found = [*_edges(room)]
    across = ridge(room)
    if across is not None:
        found.append(Guide(Kind.RIDGE, (across[0], 0.0), (0.0, 1.0)))
    grounds = (*grounds, *existing_footprints(room))
    for ground in grounds:
        found += _faces(ground)
    for stair in room.stair_openings:
        edges = _faces(stair_footprint(stair))
        found += [msgspec.structs.replace(edge, kind=Kind.STAIR) for edge in edges]
    for ground in grounds:
        found += [
            Guide(Kind.IN_LINE, face.at, face.along, name=face.name) for face in _faces(ground)[:2]
        ]
    return tuple(found)


def _edges(room: Room) -> list[Guide]:
    width, length = room.width.mm, room.length.mm
    found = [
        Guide(Kind.LEFT_EAVE, (0.0, length), (0.0, -1.0), 0.0, length),
        Guide(Kind.RIGHT_EAVE, (width, 0.0), (0.0, 1.0), 0.0, length),
        Guide(Kind.START, (0.0, 0.0), (1.0, 0.0), 0.0, width),
        Guide(Kind.END, (width, length), (-1.0, 0.0), 0.0, width),
    ]
    for wing in room.wings:
        found += _wing(room, wing)
    return found


def _wing(room: Room, wing: Wing) -> list[Guide]:
    """A wing's own eave walls and its gable, the wing to their left."""
    first, last, reach = wing.start.mm, wing.start.mm + wing.width.mm, wing.reach.mm
    name = wing.id
    if wing.side is Side.RIGHT:
        foot, far = room.width.mm, room.width.mm + reach
        return [
            Guide(Kind.WING, (foot, first), (1.0, 0.0), 0.0, reach, name),
            Guide(Kind.WING, (far, first), (0.0, 1.0), 0.0, last - first, name),
            Guide(Kind.WING, (far, last), (-1.0, 0.0), 0.0, reach, name),
        ]
    return [
        Guide(Kind.WING, (-reach, first), (1.0, 0.0), 0.0, reach, name),
        Guide(Kind.WING, (-reach, last), (0.0, -1.0), 0.0, last - first, name),
        Guide(Kind.WING, (0.0, last), (-1.0, 0.0), 0.0, reach, name),
    ]


def _faces(ground: Footprint) -> list[Guide]:
    """Both faces of a wall, then its ends."""
    far = _on(ground, 0.0, ground.width)
    right = _on(ground, ground.run, 0.0)
    return [
        Guide(Kind.FACE_A, ground.start, ground.along, 0.0, ground.run, ground.letter),
        Guide(Kind.FAR_FACE, far, ground.along, 0.0, ground.run, ground.letter),
        Guide(Kind.WALL_END, ground.start, ground.away, 0.0, ground.width, ground.letter),
        Guide(Kind.WALL_END, right, ground.away, 0.0, ground.width, ground.letter),
    ]


def _on(ground: Footprint, along: float, away: float) -> XY:
    (u, v), (du, dv), (au, av) = ground.start, ground.along, ground.away
    return u + du * along + au * away, v + dv * along + av * away
