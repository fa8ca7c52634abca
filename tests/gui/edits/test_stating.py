"""Dragged places as stated lengths, and ids."""

from __future__ import annotations

import msgspec
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.lengths import Length, System, Unit, write
from gui.edits import add_stud
from gui.edits.stating import next_id, stated, worked
from loft import loft

METRIC = msgspec.structs.replace(loft(), system=System.METRIC)


@pytest.mark.parametrize(
    ("mm", "inch", "metric"),
    [
        (1612.9, "63 1/2 in", "1612.9 mm"),
        # As 1364 steps of a sixteenth come out in floating point: 85 1/4 in.
        (1364 * 1.5875, "85 1/4 in", "2165.35 mm"),
        # 19.2 in. on centre, less half a stud: 18.45 in.
        (468.63, "18.45 in", "468.63 mm"),
        (100.0, "3.937007874015748 in", "100 mm"),
        (0.0, "0 in", "0 mm"),
    ],
)
def test_a_dragged_place_is_written_shortly(mm: float, inch: str, metric: str) -> None:
    assert write(stated(loft(), mm)) == inch
    assert write(stated(METRIC, mm)) == metric


@given(st.floats(0.0, 60_000.0))
def test_it_moves_by_less_than_anybody_can_see(mm: float) -> None:
    assert abs(stated(loft(), mm).mm - mm) <= 1.1e-6
    assert abs(stated(METRIC, mm).mm - mm) <= 1.1e-6


def test_a_typed_length_is_left_as_it_is() -> None:
    assert stated(METRIC, Length.of_inches(3)) == Length.of_inches(3)
    assert stated(loft(), Length(3.0, Unit.M)) == Length(3.0, Unit.M)


def test_ids_go_on_over_openings_boxes_and_studs_alike() -> None:
    wall = add_stud(loft(), "B").wall("B")
    assert [next_id(wall, stem) for stem in ("door", "box", "stud", "window")] == [
        "door-2",
        "box-2",
        "stud-2",
        "window-1",
    ]


def test_a_wall_alone_is_worked_out_like_in_its_project() -> None:
    assert worked(loft(), "B").wall == loft().wall("B")
