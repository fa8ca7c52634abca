"""The dimensions that matter to a wall in plan, and stating one of them anew. No Qt."""

import enum

import msgspec

from core.chalk import clearances
from core.drawing.plan_roof import outline
from core.drawing.plan_walls import at
from core.framing import Footprint, footprints
from core.model import Project, Side
from gui.edits import lengthen_wall, place_wall
from gui.sketcher.camera import XY


class Ruler(enum.Enum):
    """What a dimension is of; the value names its words in the catalogue."""

    LENGTH = "plan-length"
    BEFORE = "plan-before"
    BEHIND = "plan-behind"
    LEFT = "plan-left"
    RIGHT = "plan-right"


class Measure(msgspec.Struct, frozen=True):
    """A stretch of the plan between two points, mm."""

    ruler: Ruler
    start: XY
    end: XY
    reads: float


def measures(project: Project, letter: str, off: float) -> tuple[Measure, ...]:
    """A wall's length, then its clear distances before, behind and past its ends.

    The length stands `off` mm behind the far face. Empty for a wall without length.
    """
    wall = project.wall(letter)
    ground = Footprint.of(wall)
    if ground is None:
        return ()
    others = footprints(tuple(w for w in project.walls if w.letter != letter))
    beyond = ground.width + off
    length = Measure(
        Ruler.LENGTH, at(ground, 0.0, beyond), at(ground, ground.run, beyond), ground.run
    )
    rulers = (Ruler.BEFORE, Ruler.BEHIND, Ruler.LEFT, Ruler.RIGHT)
    found = zip(rulers, clearances(ground, outline(project.room), others), strict=True)
    clear = (Measure(r, c.start, c.end, c.run) for r, c in found if c is not None)
    return (length, *clear)


def restate(project: Project, letter: str, measure: Measure, to: float) -> Project:
    """The project with a dimension of a wall made to read `to` mm; Refusal if it cannot.

    The length is set at the right end; a clear distance moves the wall.
    """
    wall = project.wall(letter)
    ground = Footprint.of(wall)
    if ground is None:
        return project
    if measure.ruler is Ruler.LENGTH:
        return lengthen_wall(project, letter, Side.RIGHT, at(ground, to, 0.0))
    by = to - measure.reads
    along, away = {
        Ruler.BEFORE: (0.0, by),
        Ruler.BEHIND: (0.0, -by),
        Ruler.LEFT: (by, 0.0),
        Ruler.RIGHT: (-by, 0.0),
    }[measure.ruler]
    left, right = at(ground, along, away), at(ground, ground.run + along, away)
    return place_wall(project, letter, left, right)
