"""Dimension strings around the plan: where the walls stand, and the room as a whole."""

from itertools import pairwise

from core.drawing.dimension import ROOM
from core.drawing.elements import XY, Dimension, Drawing, Element
from core.drawing.plan_roof import floors
from core.drawing.typeface import text_width
from core.drawing.view import View
from core.model import Room, Wall
from core.wording import Wording

FIRST, STRING = 9.0, 8.0
"""From the room's edge to the first string, and between two strings, mm on paper."""

_SQUARE = 1.0
"""How far (mm) the ends of a wall may differ for it to count as square to the room."""


def strings(room: Room, walls: tuple[Wall, ...], view: View, wording: Wording) -> Drawing:
    """Chalk lines and edges across the room above it, along the room to its left.

    A stretch too short for its figure is not told there, but at the wall when it is held.
    """
    corners = [corner for floor in floors(room) for corner in floor]
    left, top = min(u for u, _ in corners), room.length.mm
    across = sorted({0.0, room.width.mm, *_chalk(walls, 0, 1)})
    along = sorted({0.0, room.length.mm, *_chalk(walls, 1, 0)})
    beside: list[Element] = []
    for places, aside in _levels(across, view):
        beside += [_string((a, top), (b, top), aside, view, wording) for a, b in pairwise(places)]
    for places, aside in _levels(along, view):
        beside += [_string((left, a), (left, b), aside, view, wording) for a, b in pairwise(places)]
    return tuple(beside)


def _levels(places: list[float], view: View) -> list[tuple[list[float], float]]:
    """The strings one over the other, each with how far it stands off, mm: the whole one last."""
    if len(places) == 2:
        return [(places, view.model(FIRST))]
    whole = [places[0], places[-1]]
    return [(places, view.model(FIRST)), (whole, view.model(FIRST + STRING))]


def _string(start: XY, end: XY, aside: float, view: View, wording: Wording) -> Dimension:
    """One stretch; without its figure where there is no room for it."""
    run = abs(end[0] - start[0]) + abs(end[1] - start[1])
    text = wording.length(run)
    fits = view.model(text_width(text, view.size, narrow=True) + 2 * ROOM) <= run
    return Dimension(start, end, aside, text if fits else "", view.size)


def _chalk(walls: tuple[Wall, ...], axis: int, other: int) -> set[float]:
    """Where chalk lines stand that are square to one axis of the plan, mm along that axis."""
    found = set()
    for wall in walls:
        a, b = wall.chalk
        if abs(a[axis] - b[axis]) <= _SQUARE < abs(a[other] - b[other]):
            found.add(round(a[axis], 3))
    return found
