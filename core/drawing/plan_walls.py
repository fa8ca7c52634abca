"""Walls from above: two faces with their thickness, openings, the letter, and which face is A."""

import math
from collections.abc import Iterable

from core.drawing.elements import Align, Drawing, Element, Fill, Stroke, Text
from core.drawing.extent import text_corners
from core.drawing.pen import Pen
from core.drawing.placing import Taken, bounds
from core.drawing.plan_ground import at, corners, take
from core.drawing.plan_openings import opening
from core.drawing.view import View
from core.framing import Footprint, footprints
from core.model import Wall
from core.wording import Wording

OFF = 1.4
"""From a wall's face to the letter before it, mm on paper."""

_PLACES = (0.5, 0.35, 0.65, 0.2, 0.8, 0.42, 0.58, 0.1, 0.9)
"""Where along a wall its letter may stand, as shares of its length, best first."""


def walls(all_walls: Iterable[Wall], taken: Taken) -> Drawing:
    """All walls that have a length, face A drawn heavy; `taken` learns where timber stands."""
    drawing: list[Element] = []
    for wall in all_walls:
        ground = Footprint.of(wall)
        if ground is None:
            continue
        drawing += wall_strokes(wall, ground)
        take(ground, taken)
    return tuple(drawing)


def wall_strokes(wall: Wall, ground: Footprint) -> Drawing:
    """One wall: its timber, the gaps of its openings, and face A heavy."""
    outline = corners(ground)
    drawing: list[Element] = [
        Fill(outline, Pen.STUD, wall.letter),
        Stroke(outline, Pen.STUD, wall.letter, closed=True),
        Stroke(outline[:2], Pen.OPENING, wall.letter),
    ]
    for each in wall.openings:
        drawing += opening(ground, each)
    return tuple(drawing)


def letters(all_walls: tuple[Wall, ...], view: View, wording: Wording, taken: Taken) -> Drawing:
    """The letter of every wall before its face A, and the face's name where there is room."""
    drawing: list[Element] = []
    for ground in footprints(all_walls):
        letter = _letter(ground, view, taken)
        drawing.append(letter)
        face = _face(ground, letter, view, wording)
        if face is not None and taken.free(bounds(text_corners(face, view.scale))):
            taken.add(bounds(text_corners(face, view.scale)))
            drawing.append(face)
    return tuple(drawing)


def _letter(ground: Footprint, view: View, taken: Taken) -> Text:
    """The letter before face A, at the first place along the wall that is free."""
    size = view.size * 1.5
    tried = []
    for share in _PLACES:
        place = at(ground, ground.run * share, -view.model(OFF + size * 0.42))
        made = Text(
            ground.letter, place, size, Pen.LABEL, ground.letter, Align.MIDDLE, bold=True,
            middle=True,
        )  # fmt: skip
        rect = bounds(text_corners(made, view.scale))
        if taken.free(rect):
            taken.add(rect)
            return made
        tried.append(made)
    return tried[0]


def _face(ground: Footprint, letter: Text, view: View, wording: Wording) -> Text | None:
    """The name of face A along it, beside the letter; None on a wall too short for it."""
    text = wording.word("plan.face-a")
    (du, dv) = ground.along
    angle = math.atan2(dv, du)
    turned = angle > math.pi / 2 + 1e-9 or angle <= -math.pi / 2 + 1e-9
    if turned:
        angle += math.pi if angle < 0 else -math.pi
    size = view.size * 0.86
    start = (letter.at[0] - ground.start[0]) * du + (letter.at[1] - ground.start[1]) * dv
    on = start + view.model(view.size * 1.5)
    made = Text(
        text, at(ground, on, -view.model(OFF + size * 0.4)), size, Pen.NOTE, ground.letter,
        Align.END if turned else Align.START, angle, middle=True,
    )  # fmt: skip
    corners = text_corners(made, view.scale)
    long = math.dist(corners[0], corners[1])
    return made if on + long <= ground.run else None
