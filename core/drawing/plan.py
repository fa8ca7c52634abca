"""The plan: the room from above with its walls, u to the right and v (along the ridge) up."""

from core.drawing import plan_walls
from core.drawing.elements import XY, Drawing, Stroke
from core.drawing.pen import Pen
from core.drawing.view import View
from core.job import Results
from core.model import Room


def plan(results: Results, view: View) -> Drawing:
    """The drawing of the room seen from above, in model mm."""
    return (
        Stroke(outline(results.project.room), Pen.FLOOR, closed=True),
        *plan_walls.walls(results, view),
    )


def outline(room: Room) -> tuple[XY, ...]:
    """The room at the framing faces of its eave walls and gables, without wings, mm."""
    width, length = room.width.mm, room.length.mm
    return ((0.0, 0.0), (width, 0.0), (width, length), (0.0, length))
