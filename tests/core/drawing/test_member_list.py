"""The list of members: what its rows say, how they are sorted, and how they are copied."""

from __future__ import annotations

import msgspec
import pytest

from core.drawing.member_list import HEADS, Order, Row, RowMaker, as_html, ordered, tab_separated
from core.job import WallResult, work_out
from core.lengths import System, Tape
from core.model import Project, SiteRecord
from core.wording import Wording
from loft import loft

WORDS = Wording("us", Tape.usual(System.INCH))


def worked(project: Project | None = None) -> WallResult:
    return work_out(project or loft(), SiteRecord()).wall("B")


def rows(order: Order = Order.LABEL) -> dict[str, tuple[str, ...]]:
    return {row.cells[0]: row.cells for row in RowMaker().rows(worked(), WORDS, order)}


@pytest.mark.parametrize(
    "cells",
    [
        # Place 2 under the slope: see tests/gui/test_numbers.py for its lengths and marks.
        (
            "B3",
            "stud",
            "2x4",
            '89 1/8"',
            '87 5/8"',
            "square",
            "bevel 45.0°",
            'B17: 31 1/4" from left · B15: 44 3/16" from left',
        ),
        # A trimmer has one length and one mark.
        ("B6", "trimmer", "2x4", '78 1/2"', "", "square", "square", 'B17: 58 1/2" from left'),
        ("B17", "sole plate", "2x4", '120"', "", "square", "square", ""),
    ],
)
def test_what_a_row_says(cells: tuple[str, ...]) -> None:
    assert rows()[cells[0]] == cells


def test_every_member_has_one_row_with_a_cell_under_each_head() -> None:
    result = worked()
    made = RowMaker().rows(result, WORDS, Order.LABEL)
    assert sorted(row.key for row in made) == sorted(key for key, _ in result.labels)
    assert {len(row.cells) for row in made} == {len(HEADS)}


def test_labels_are_sorted_as_numbers() -> None:
    assert list(rows()) == [f"B{number}" for number in range(1, 18)]


def test_in_cutting_order_plates_come_first_and_then_square_cuts_long_to_short() -> None:
    names = [row[1] for row in rows(Order.CUTTING).values()]
    assert all("plate" in name for name in names[:3])
    found = ordered(worked(), Order.CUTTING)
    square = [m.long_point for m in found[3:] if all(f.is_square for f in m.last_cut)]
    assert square == sorted(square, reverse=True)


def test_a_row_is_made_anew_only_where_it_differs() -> None:
    maker = RowMaker()
    before = {row.key: row for row in maker.rows(worked(), WORDS, Order.LABEL)}
    wall = loft().wall("B")
    moved = msgspec.structs.replace(
        wall.openings[0], left=msgspec.structs.replace(wall.openings[0].left, mm=61 * 25.4)
    )
    project = loft().with_wall(msgspec.structs.replace(wall, openings=(moved,)))
    after = {row.key: row for row in maker.rows(worked(project), WORDS, Order.LABEL)}
    fresh = {row.key: row for row in RowMaker().rows(worked(project), WORDS, Order.LABEL)}
    assert after == fresh
    assert after["B/layout/2"] is before["B/layout/2"]
    assert after["B/door-1/king/left"] != before["B/door-1/king/left"]


def test_other_words_make_other_rows() -> None:
    maker = RowMaker()
    maker.rows(worked(), WORDS, Order.LABEL)
    metric = Wording("metric", Tape.usual(System.METRIC))
    made = {row.cells[0]: row.cells for row in maker.rows(worked(), metric, Order.LABEL)}
    assert made["B6"][1:4] == ("trimmer stud", "2x4", "1994")


def test_the_table_as_text_and_in_html() -> None:
    some = (Row("a", ("A1", '16"')), Row("b", ("A2", "<8")))
    assert tab_separated(("Label", "Long"), some) == 'Label\tLong\nA1\t16"\nA2\t<8'
    assert as_html(("Label", "Long"), some) == (
        "<table><tr><th>Label</th><th>Long</th></tr>"
        "<tr><td>A1</td><td>16&quot;</td></tr><tr><td>A2</td><td>&lt;8</td></tr></table>"
    )
