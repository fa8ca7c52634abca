"""How a detail shares the page with elevation and list, at no cost to the elevation's scale."""

import msgspec

from core.drawing.arranging import Arrangement, arrangements
from core.drawing.elements import XY
from core.drawing.placing import Rect
from core.drawing.table import Row


def with_detail(
    rows: tuple[Row, ...], width: float, area: Rect, gap: float, size: XY
) -> tuple[Arrangement, ...]:
    """The ways a list `width` mm wide and a detail of a `size` can share an area.

    The detail stands beside a list that is below, under one that is beside, or over the elevation.
    """
    left, bottom, right, top = area
    wide, high = size
    narrowed = (left, bottom, right - wide - gap, top)
    found = []
    if narrowed[2] - left >= width:
        for way in arrangements(rows, width, narrowed, gap):
            if way.space[1] > bottom:
                space = (left, max(way.space[1], bottom + high + gap), right, top)
                found.append(_with(way, space, (right - wide, bottom)))
    for way in arrangements(rows, width, (left, bottom + high + gap, right, top), gap):
        if way.space[1] == bottom + high + gap:
            space = (left, bottom, min(way.space[2], right - wide - gap), top)
            found.append(_with(way, space, (right - wide, bottom)))
    for way in arrangements(rows, width, (left, bottom, right, top - high - gap), gap):
        found.append(_with(way, way.space, (left, top - high)))
    return tuple(found)


def _with(way: Arrangement, space: Rect, detail: XY) -> Arrangement:
    return msgspec.structs.replace(way, space=space, detail=detail)
