"""Kept-clear zones in an elevation: a dashed outline with its diagonals' ends, and its words."""

import msgspec

from core.drawing.elements import Align, Drawing, Element, Stroke, Text
from core.drawing.extent import text_corners
from core.drawing.leaders import GAP
from core.drawing.pen import Pen
from core.drawing.placing import Ground, Rect, bounds
from core.drawing.typeface import text_width
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
    """What each zone is, where there is room in it clear of timber and writing; else nothing."""
    drawing: list[Element] = []
    for zone in wall.kept_clear:
        key, words = f"{wall.letter}/{zone.id}", wording.word("zone.keep-clear")
        text = Text(words, (0.0, 0.0), view.size, Pen.KEPT_CLEAR, key, Align.MIDDLE, narrow=True)
        placed = _placed(text, _rect(zone), view, ground)
        if placed is not None:
            ground.add_writing(bounds(text_corners(placed, view.scale)))
            drawing.append(placed)
    return tuple(drawing)


def _placed(text: Text, zone: Rect, view: View, ground: Ground) -> Text | None:
    """The text in the middle of a zone, or as near as it has room; None if it has none."""
    left, bottom, right, top = zone
    half = view.model(text_width(text.text, text.size, narrow=True) / 2 + GAP)
    if left + half > right - half:
        return None
    middle = (left + right) / 2
    for up in (0.5, 0.7, 0.3, 0.85, 0.15):
        for x in (middle, (left + middle) / 2, (middle + right) / 2, left + half, right - half):
            at = (min(max(x, left + half), right - half), bottom + (top - bottom) * up)
            placed = msgspec.structs.replace(text, at=at)
            if ground.free(bounds(text_corners(placed, view.scale))):
                return placed
    return None


def _rect(zone: ClearZone) -> tuple[float, float, float, float]:
    left, bottom = zone.left.mm, zone.bottom.mm
    return left, bottom, left + zone.width.mm, bottom + zone.height.mm
