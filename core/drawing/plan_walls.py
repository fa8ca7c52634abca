"""Walls from above: two faces with their thickness, the letter, and which face is A."""

from core.drawing.elements import XY, Align, Drawing, Element, Fill, Stroke, Text
from core.drawing.pen import Pen
from core.drawing.view import View
from core.framing import Footprint, footprints
from core.job import Results

OFF = 1.6
"""From a wall's face to the letter beside it, mm on paper."""


def walls(results: Results, view: View) -> Drawing:
    """All walls that have a length, each under its letter as key."""
    drawing: list[Element] = []
    for ground in footprints(results.project.walls):
        corners = wall_corners(ground)
        drawing.append(Fill(corners, Pen.STUD, ground.letter))
        drawing.append(Stroke(corners, Pen.STUD, ground.letter, closed=True))
        drawing.append(_letter(ground, view))
    return tuple(drawing)


def wall_corners(ground: Footprint) -> tuple[XY, ...]:
    """A wall's corners in plan: along face A from left to right, back along the far face, mm."""
    return (
        at(ground, 0.0, 0.0),
        at(ground, ground.run, 0.0),
        at(ground, ground.run, ground.width),
        at(ground, 0.0, ground.width),
    )


def at(ground: Footprint, along: float, away: float) -> XY:
    """The plan point so far along a wall from its left end and away from its face A, mm."""
    (u, v), (du, dv), (au, av) = ground.start, ground.along, ground.away
    return u + du * along + au * away, v + dv * along + av * away


def _letter(ground: Footprint, view: View) -> Text:
    """The letter before face A, where the person stands who draws the wall."""
    size = view.size * 1.4
    place = at(ground, ground.run / 2, -view.model(OFF + size / 2))
    return Text(
        ground.letter, place, size, Pen.LABEL, ground.letter, Align.MIDDLE, bold=True, middle=True
    )
