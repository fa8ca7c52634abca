"""The floor from above: a stair's opening, and hatched the walls that stand there already."""

import math

from core.drawing.elements import XY, Align, Drawing, Element, Fill, Stroke, Text
from core.drawing.extent import text_corners
from core.drawing.pen import Pen
from core.drawing.placing import Taken, bounds
from core.drawing.plan_ground import at, corners, take
from core.drawing.view import View
from core.framing import Footprint, existing_footprints, spoken, stair_footprint
from core.model import Room

HATCH = 1.6
"""Between two lines of the hatch, mm on paper along the wall."""


def floor(room: Room, view: View, taken: Taken) -> Drawing:
    """Stair openings with their names, then existing walls; each under its id as key."""
    drawing: list[Element] = []
    for stair in room.stair_openings:
        drawing += _stair(stair_footprint(stair), view, taken)
    for ground in existing_footprints(room):
        drawing += _existing(ground, view)
        take(ground, taken)
    return tuple(drawing)


def _stair(ground: Footprint, view: View, taken: Taken) -> Drawing:
    """The opening's edge, one line from corner to corner for what is open, and its name."""
    outline, key = corners(ground), ground.letter
    drawing: list[Element] = [
        Fill(outline, Pen.STAIR, key),
        Stroke(outline, Pen.STAIR, key, closed=True),
        Stroke((outline[0], outline[2]), Pen.STAIR, key),
    ]
    name = _name(ground, view, taken)
    return (*drawing, name) if name is not None else tuple(drawing)


def _name(ground: Footprint, view: View, taken: Taken) -> Text | None:
    """The opening's name in it, across or up, where it has room and nothing is written yet."""
    key, size = ground.letter, view.size * 0.86
    for angle in (0.0, math.pi / 2):
        for share in (0.25, 0.75):
            up = (0.5, share) if angle == 0.0 else (share, 0.5)
            place = at(ground, ground.run * up[0], ground.width * up[1])
            name = Text(spoken(key), place, size, Pen.NOTE, key, Align.MIDDLE, angle, middle=True)
            rect = bounds(text_corners(name, view.scale))
            fits = rect[2] - rect[0] < ground.run and rect[3] - rect[1] < ground.width
            if fits and taken.free(rect):
                taken.add(rect)
                return name
    return None


def _existing(ground: Footprint, view: View) -> Drawing:
    """The wall's outline, hatched at 45 degrees from its left end to its right."""
    outline, key = corners(ground), ground.letter
    step = max(view.model(HATCH), ground.run / 500)
    lines = [_hatch(ground, n * step) for n in range(math.ceil((ground.run + ground.width) / step))]
    return (
        Fill(outline, Pen.EXISTING, key),
        *(Stroke(line, Pen.RULE, key) for line in lines if math.dist(*line) > 1e-6),
        Stroke(outline, Pen.EXISTING, key, closed=True),
    )


def _hatch(ground: Footprint, place: float) -> tuple[XY, XY]:
    """The line that leaves the first face at a place along it and runs back to the left."""
    first = max(place - ground.run, 0.0), min(place, ground.width)
    return tuple(at(ground, place - y, y) for y in first)  # type: ignore[return-value]
