"""Kept-clear zones in an elevation: a dashed outline with its diagonals' ends, and its words."""

import msgspec

from core.drawing.elements import Align, Drawing, Element, Stroke, Text
from core.drawing.extent import text_corners
from core.drawing.pen import Pen
from core.drawing.placing import Ground, bounds
from core.drawing.view import View
from core.model import ClearZone, Wall
from core.wording import Wording

_CORNER = 0.12
"""How far into the zone the strokes at its corners reach, of its sides."""


def zone_outlines(wall: Wall) -> Drawing:
    """The outline of every zone, with a short stroke of its diagonals at each corner."""
    drawing: list[Element] = []
    for zone in wall.kept_clear:
        left, bottom, right, top = _rect(zone)
        key = f"{wall.letter}/{zone.id}"
        corners = ((left, bottom), (right, bottom), (right, top), (left, top))
        drawing.append(Stroke(corners, Pen.KEPT_CLEAR, key, closed=True))
        in_x, in_y = (right - left) * _CORNER, (top - bottom) * _CORNER
        for x, way_x in ((left, in_x), (right, -in_x)):
            for y, way_y in ((bottom, in_y), (top, -in_y)):
                drawing.append(Stroke(((x, y), (x + way_x, y + way_y)), Pen.KEPT_CLEAR, key))
    return tuple(drawing)


def zone_texts(wall: Wall, view: View, wording: Wording, ground: Ground) -> Drawing:
    """What each zone is, in its middle or as near above or below as there is room; else nothing."""
    drawing: list[Element] = []
    for zone in wall.kept_clear:
        left, bottom, right, top = _rect(zone)
        key, words = f"{wall.letter}/{zone.id}", wording.word("zone.keep-clear")
        at = ((left + right) / 2, (bottom + top) / 2)
        text = Text(words, at, view.size, Pen.KEPT_CLEAR, key, Align.MIDDLE, narrow=True)
        for share in (0.5, 0.7, 0.3, 0.85, 0.15):
            placed = msgspec.structs.replace(text, at=(at[0], bottom + (top - bottom) * share))
            rect = bounds(text_corners(placed, view.scale))
            if rect[0] >= left and rect[2] <= right and ground.passable(rect):
                ground.add_writing(rect)
                drawing.append(placed)
                break
    return tuple(drawing)


def _rect(zone: ClearZone) -> tuple[float, float, float, float]:
    left, bottom = zone.left.mm, zone.bottom.mm
    return left, bottom, left + zone.width.mm, bottom + zone.height.mm
