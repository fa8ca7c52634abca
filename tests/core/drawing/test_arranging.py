"""How elevation and list share a page."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.drawing.arranging import arrangements
from core.drawing.placing import Rect
from core.drawing.table import Row
from core.drawing.writing import LINE

AREA = (8.0, 60.0, 208.0, 160.0)  # 200 mm wide, 100 mm high: 22 rows under their heads
GAP = 4.0


def rows(count: int) -> tuple[Row, ...]:
    return tuple(Row((f"A/{n}",), (f"A{n}", "", "", "", "", "")) for n in range(count))


def shape(found: Rect) -> list[float]:
    """Left, bottom, width, height."""
    return [found[0], found[1], found[2] - found[0], found[3] - found[1]]


def test_one_column_below_and_one_beside() -> None:
    """Below: 5 rows and a head are 6 * 4.2 = 25.2 mm high. Beside: 120 mm of the width."""
    below, beside = arrangements(rows(5), 120.0, AREA, GAP)
    (column,) = below.columns
    assert column.corner == pytest.approx((8, 85.2))
    assert column.rows == rows(5)
    assert shape(below.space) == pytest.approx([8, 60 + 25.2 + 4, 200, 100 - 25.2 - 4])
    assert [(c.corner, len(c.rows)) for c in beside.columns] == [((88.0, 160.0), 5)]
    assert shape(beside.space) == pytest.approx([8, 60, 200 - 120 - 4, 100])


def test_two_columns_below() -> None:
    """Two of 98 mm with 4 mm between are 200 mm. Of 7 rows the first column has the odd one."""
    below = arrangements(rows(7), 98.0, AREA, GAP)[0]
    first, second = below.columns
    assert first.corner == pytest.approx((8, 60 + 5 * LINE))
    assert second.corner == pytest.approx((8 + 98 + 4, 60 + 5 * LINE))
    assert [len(c.rows) for c in below.columns] == [4, 3]


def test_no_empty_column() -> None:
    below = arrangements(rows(1), 50.0, AREA, GAP)[0]
    assert len(below.columns) == 1


@pytest.mark.parametrize(
    ("count", "ways"),
    [
        # 100 mm are 23.8 lines: 22 rows and a head.
        (22, 2),
        # 23 stand in two columns of 12, but no longer beside in one.
        (23, 1),
        (44, 1),
        (45, 0),
    ],
)
def test_a_long_list_has_fewer_ways(count: int, ways: int) -> None:
    assert len(arrangements(rows(count), 98.0, AREA, GAP)) == ways


def test_a_whole_page_of_list() -> None:
    """From the top down, as many rows as go in."""
    (whole,) = arrangements(rows(100), 98.0, AREA, GAP, whole=True)
    assert [c.corner for c in whole.columns] == [(8.0, 160.0), (110.0, 160.0)]
    assert [len(c.rows) for c in whole.columns] == [22, 22]


def test_a_whole_page_always_shows_a_row() -> None:
    """However small it is, so that a list comes to its end."""
    (whole,) = arrangements(rows(3), 98.0, (8.0, 60.0, 208.0, 62.0), GAP, whole=True)
    assert [row for column in whole.columns for row in column.rows] == list(rows(2))


@given(st.integers(1, 60), st.floats(30.0, 200.0), st.booleans())
def test_columns_stay_in_the_area_and_clear_of_the_space(
    count: int, width: float, whole: bool
) -> None:
    for found in arrangements(rows(count), width, AREA, GAP, whole=whole):
        shown = [row for column in found.columns for row in column.rows]
        assert shown == list(rows(count)[: len(shown)])
        assert whole or len(shown) == count
        for column in found.columns:
            left, top = column.corner
            bottom = top - (len(column.rows) + 1) * LINE
            assert AREA[0] - 1e-9 <= left <= left + width <= AREA[2] + 1e-9
            assert AREA[1] - 1e-9 <= bottom <= top <= AREA[3] + 1e-9
            apart = top <= found.space[1] - GAP + 1e-9 or left >= found.space[2] + GAP - 1e-9
            assert whole or apart
