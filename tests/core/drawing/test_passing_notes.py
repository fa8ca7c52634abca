"""What is said of purlins that a wall meets: the rule, and studs that give way; millimetres."""

from __future__ import annotations

import msgspec
import pytest

from core.drawing.passing_notes import passing_notes, purlin_notes
from core.drawing.table import rows
from core.job import WallResult
from core.lengths import System, Tape
from core.model import Passing, Purlin
from core.wording import Wording
from walls import UK, at_degrees, member, result

ROOM = UK.room(6000, (500, at_degrees(45)), None, length=8000)
SAY = Wording("metric", Tape.usual(System.METRIC))
ACROSS = UK.wall((1000, 3000), (3000, 3000))


def wall_with(left: float, way: Passing) -> WallResult:
    made = Purlin(
        "purlin-1",
        UK.length(1000 + left),
        UK.timber((50, 100)),
        UK.length(2300),
        way,
        UK.length(5),
    )
    return result(msgspec.structs.replace(ROOM, purlins=(made,)), ACROSS)


def notes(left: float, way: Passing) -> tuple[str, ...]:
    return passing_notes(wall_with(left, way), SAY)


def test_a_notched_stud_is_told_with_what_is_left() -> None:
    rule, stud = notes(1210, Passing.NOTCHED)
    assert rule.startswith("purlin 1: plates in its way stop 5 mm clear on either side; a stud")
    assert "notched there through its whole width, 5 mm clear all round" in rule
    # 14 deep leaves 24 of 38.
    assert stud == (
        "B4: notch right 14 mm deep, 2257 mm to 2367 mm up; 24 mm of its thickness is left, 63 %."
    )


def test_an_ended_stud_is_told_with_the_piece_over_it() -> None:
    _, low, high = notes(1180, Passing.STOPPED)
    # 2300 - 5 - 38.
    assert low == "B4 ends under it, 2257 mm long."
    assert high == "B5 stands over it."


@pytest.mark.parametrize("way", [Passing.UNDER, Passing.THROUGH])
def test_nothing_is_said_where_no_stud_gives_way_by_rule(way: Passing) -> None:
    assert notes(1210, way) == ()


def test_of_one_purlin_the_rule_is_said_though_no_stud_meets_it() -> None:
    # Between studs 3 and 4.
    assert notes(1300, Passing.NOTCHED) == ()
    assert len(purlin_notes(wall_with(1300, Passing.NOTCHED), "purlin-1", SAY)) == 1
    assert purlin_notes(wall_with(1300, Passing.NOTCHED), "purlin-2", SAY) == ()
    assert purlin_notes(wall_with(1300, Passing.UNDER), "purlin-1", SAY) == ()


def test_the_list_says_how_a_notch_is_cut() -> None:
    made = Purlin(
        "purlin-1",
        UK.length(2210),
        UK.timber((50, 320)),
        UK.length(2300),
        Passing.NOTCHED,
        UK.length(5),
    )
    wall = result(msgspec.structs.replace(ROOM, purlins=(made,)), ACROSS)
    assert wall.frame is not None
    (row,) = rows((member(wall.frame, "layout/3"),), wall.label_of, SAY)
    assert row.cells[4] == "bevel 45.0° · notch right 14 mm deep, 2257 mm up to the top"
