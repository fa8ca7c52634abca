"""How elevation and list share a page: the list below in columns, or beside in one."""

import math

import msgspec

from core.drawing.elements import XY
from core.drawing.placing import Rect
from core.drawing.table import Row
from core.drawing.writing import LINE


class Column(msgspec.Struct, frozen=True):
    """Rows of the list under each other; `corner` is the upper left one, mm on paper."""

    corner: XY
    rows: tuple[Row, ...]


class Arrangement(msgspec.Struct, frozen=True):
    """The space left for the elevation, and the columns of the list; none if it does not fit.

    `detail` is the lower left corner of a detail that stands on the page too.
    """

    space: Rect
    columns: tuple[Column, ...]
    detail: XY | None = None


def arrangements(
    rows: tuple[Row, ...], width: float, area: Rect, gap: float, *, whole: bool = False
) -> tuple[Arrangement, ...]:
    """The ways a list `width` mm wide can share an area: below in columns, then beside.

    With `whole` the list has the area to itself and shows as many rows as go into it, at least one
    a column.
    """
    left, bottom, right, top = area
    count = max(1, math.floor((right - left + gap) / (width + gap)))
    most = math.floor((top - bottom) / LINE) - 1
    each = max(1, most) if whole else math.ceil(len(rows) / count)
    found = []
    if whole or each <= most:
        high = (each + 1) * LINE
        corner_y = top if whole else bottom + high
        columns = tuple(
            Column((left + n * (width + gap), corner_y), rows[n * each : (n + 1) * each])
            for n in range(count)
            if rows[n * each : (n + 1) * each]
        )
        found.append(Arrangement((left, bottom + high + gap, right, top), columns))
    if len(rows) <= most and not whole:
        beside = Column((right - width, top), rows)
        found.append(Arrangement((left, bottom, right - width - gap, top), (beside,)))
    return tuple(found)
