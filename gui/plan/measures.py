"""The dimensions that matter to what is held in plan, and stating one of them anew. No Qt."""

import enum

import msgspec

from core.chalk import clearances
from core.drawing.plan_ground import at
from core.drawing.plan_roof import outline
from core.framing import Footprint, standing_in
from core.model import Project, Side
from gui.edits.floor import deepen, ground_of, lengthen, place, without
from gui.sketcher.camera import XY


class Ruler(enum.Enum):
    """What a dimension is of; the value names its words in the catalogue."""

    LENGTH = "plan-length"
    DEEP = "plan-deep"
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
    """The length of a thing of the plan, then its clear distances before, behind, past its ends.

    The length stands `off` mm behind the far face. Empty for a wall without length.
    """
    ground = ground_of(project, letter)
    if ground is None:
        return ()
    others = standing_in(without(project, letter))
    beyond = ground.width + off
    length = Measure(
        Ruler.LENGTH, at(ground, 0.0, beyond), at(ground, ground.run, beyond), ground.run
    )
    rulers = (Ruler.BEFORE, Ruler.BEHIND, Ruler.LEFT, Ruler.RIGHT)
    found = zip(rulers, clearances(ground, outline(project.room), others), strict=True)
    clear = (Measure(r, c.start, c.end, c.run) for r, c in found if c is not None)
    return (length, *_deep(project, letter, ground, off), *clear)


def _deep(project: Project, key: str, ground: Footprint, off: float) -> tuple[Measure, ...]:
    """How deep a stair opening or how thick an existing wall is; timber has its own thickness."""
    if any(wall.letter == key for wall in project.walls):
        return ()
    aside = ground.run + off
    ends = at(ground, aside, 0.0), at(ground, aside, ground.width)
    return (Measure(Ruler.DEEP, *ends, ground.width),)


def restate(project: Project, letter: str, measure: Measure, to: float) -> Project:
    """The project with a dimension of a wall made to read `to` mm; Refusal if it cannot.

    The length is set at the right end; a clear distance moves the wall.
    """
    ground = ground_of(project, letter)
    if ground is None:
        return project
    if measure.ruler is Ruler.DEEP:
        return deepen(project, letter, to)
    if measure.ruler is Ruler.LENGTH:
        return lengthen(project, letter, Side.RIGHT, at(ground, to, 0.0))
    by = to - measure.reads
    along, away = {
        Ruler.BEFORE: (0.0, by),
        Ruler.BEHIND: (0.0, -by),
        Ruler.LEFT: (by, 0.0),
        Ruler.RIGHT: (-by, 0.0),
    }[measure.ruler]
    left, right = at(ground, along, away), at(ground, ground.run + along, away)
    return place(project, letter, left, right)
