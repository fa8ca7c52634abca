"""Where a detail stands on the page; mm on paper."""

from __future__ import annotations

import pytest

from core.drawing.arranging import Arrangement
from core.drawing.detailing import with_detail
from core.drawing.placing import Rect
from core.drawing.table import Row
from core.drawing.writing import LINE

AREA: Rect = (10.0, 20.0, 210.0, 120.0)
GAP = 5.0


def ways(count: int, width: float, size: tuple[float, float]) -> tuple[Arrangement, ...]:
    rows = tuple(Row((f"B/layout/{n}",), (f"B{n}",)) for n in range(count))
    return with_detail(rows, width, AREA, GAP, size)


def rects(way: Arrangement, width: float, size: tuple[float, float]) -> list[Rect]:
    """The space of the elevation, the columns of the list, and the detail."""
    assert way.detail is not None
    left, bottom = way.detail
    columns = [
        (c.corner[0], c.corner[1] - (len(c.rows) + 1) * LINE, c.corner[0] + width, c.corner[1])
        for c in way.columns
    ]
    return [way.space, *columns, (left, bottom, left + size[0], bottom + size[1])]


@pytest.mark.parametrize(("count", "width"), [(3, 60.0), (9, 60.0), (9, 120.0), (10, 190.0)])
@pytest.mark.parametrize("size", [(70.0, 40.0), (40.0, 20.0)])
def test_nothing_overlaps_or_leaves_the_area(
    count: int, width: float, size: tuple[float, float]
) -> None:
    found = ways(count, width, size)
    assert found
    for way in found:
        parts = rects(way, width, size)
        for n, (left, bottom, right, top) in enumerate(parts):
            assert AREA[0] - 1e-9 <= left
            assert right <= AREA[2] + 1e-9
            assert AREA[1] - 1e-9 <= bottom
            assert top <= AREA[3] + 1e-9
            for other in parts[n + 1 :]:
                beside = right <= other[0] + 1e-9 or left >= other[2] - 1e-9
                assert beside or top <= other[1] + 1e-9 or bottom >= other[3] - 1e-9
        assert sum(len(column.rows) for column in way.columns) == count


def test_the_detail_stands_beside_a_list_below() -> None:
    # 200 less 70 and 5 is 125: two columns of 60 and a gap fit, 5 rows and a head each are 25.2.
    # The detail is higher: 40 and the gap of 5 above the foot at 20.
    first = ways(9, 60.0, (70.0, 40.0))[0]
    assert first.space == (10.0, 65.0, 210.0, 120.0)
    assert first.detail == (140.0, 20.0)
    assert [len(c.rows) for c in first.columns] == [5, 4]
