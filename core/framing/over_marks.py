"""Marks on the top plates where they cross rafters: as running as the studs' are."""

from core.framing import keys
from core.framing.bending import length_along, underside
from core.framing.frame import Frame
from core.framing.layout import CLEAR
from core.framing.marks import Mark, origin_of
from core.framing.member import XY, Member, Role
from core.framing.rafters import Crossing
from core.model import Letters, Side, Wall

Found = list[tuple[Member, tuple[XY, ...]]]
"""The plates of the lowest layer, each with the corners of its underside."""


def over_marks(wall: Wall, frame: Frame, letters: Letters) -> tuple[Mark, ...]:
    """A mark for each rafter over a plate, on its edge nearer to the end the tape hooks on.

    A rafter that lies partly past the plate is lined on the edge that is over it; one over a break
    is marked on the plate that has its near edge.
    """
    plates = [(m, underside(m)) for m in frame.members if m.role is Role.TOP_PLATE]
    if not plates:
        return ()
    lowest = _lowest(plates)
    crossings = frame.nailed.over_plate.crossings
    marks = (_mark(wall, c, lowest, letters.of_rafters) for c in crossings)
    return tuple(mark for mark in marks if mark is not None)


def _lowest(plates: Found) -> Found:
    """The plates of the layer that studs are nailed to."""
    layer = max(keys.layer(m.key).rpartition("/")[2] for m, _ in plates)
    return [(m, c) for m, c in plates if keys.layer(m.key).rpartition("/")[2] == layer]


def _mark(wall: Wall, crossing: Crossing, plates: Found, letter: str) -> Mark | None:
    origins = [origin_of(wall, course) for _, course in plates]
    for turned in (False, True):
        for (plate, course), origin in zip(plates, origins, strict=True):
            edge = origin.other if turned else origin
            x = crossing.left if edge is Side.LEFT else crossing.right
            if course[0][0] - CLEAR <= x <= course[-1][0] + CLEAR:
                along_sole, along_top = x - course[0][0], length_along(course, x)
                if origin is Side.RIGHT:
                    along_sole = course[-1][0] - x
                    along_top = length_along(course, course[-1][0]) - along_top
                key = keys.rafter_over(wall.letter, crossing.number)
                return Mark(key, plate.key, letter, origin, edge, along_sole, along_top, x)
    return None
