"""The plan: the room from above with its walls, u to the right and v (along the ridge) up."""

from core.drawing import (
    plan_floor,
    plan_purlins,
    plan_roof,
    plan_standing,
    plan_strings,
    plan_walls,
)
from core.drawing.elements import Drawing
from core.drawing.placing import Taken
from core.drawing.view import Show, View
from core.model import Project
from core.wording import Wording


def plan(project: Project, view: View, wording: Wording) -> Drawing:
    """The drawing of the room seen from above, in model mm.

    Every wall's elements have its letter as key. Words that find no room are left out, letters
    never are.
    """
    room, walls = project.room, project.walls
    taken = Taken(1000.0)
    timber = plan_walls.walls(walls, taken)
    standing = (
        *plan_floor.floor(room, view, taken),
        *plan_standing.standing(room, view, taken),
    )
    letters = plan_walls.letters(walls, view, wording, taken)
    drawing = (
        *plan_roof.overhead(room),
        *plan_purlins.purlins(room),
        *plan_roof.floor_edge(room),
        *standing,
        *timber,
        *letters,
        *plan_roof.words(room, view, wording, taken),
    )
    if Show.DIMENSIONS in view.shows:
        return (*drawing, *plan_strings.strings(room, walls, view, wording))
    return drawing
