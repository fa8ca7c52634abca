"""Stating rules, where layout starts, and doubled studs, on the wall of `loft`."""

from __future__ import annotations

import pytest

from core.job import work_out
from core.lengths import Length
from core.model import DoubledStud, Near, Project, Side, SiteRecord, WallRules
from gui.edits import Refusal, add_wall, delete, line_up, set_doubled, set_origin, set_rules
from gui.wordings import wording_of
from loft import STUD, loft


def keys(project: Project) -> list[str]:
    frame = work_out(project, SiteRecord()).wall("B").frame
    assert frame is not None
    return [m.key for m in frame.members]


def test_a_rule_is_stated_and_taken_back() -> None:
    kept = set_rules(loft(), "B", near_kings=Near.KEEP)
    assert kept.wall("B").rules == WallRules(near_kings=Near.KEEP)
    assert set_rules(kept, "B", near_kings=Near.DROP) == loft()


def test_merging_gets_a_room_of_three_inches() -> None:
    rules = set_rules(loft(), "B", near_ends=Near.MERGE).wall("B").rules
    assert rules is not None
    assert rules.closer_than == Length.of_inches(3)
    nearer = set_rules(set_rules(loft(), "B", closer_than=Length(50.0)), "B", near_ends=Near.MERGE)
    assert nearer.wall("B").goes_by.closer_than == Length(50.0)


def test_a_senseless_board_is_refused() -> None:
    with pytest.raises(Refusal):
        set_rules(loft(), "B", board=Length(10.0))


def test_the_origin() -> None:
    through = set_origin(loft(), "B", Length.of_inches(8))
    assert through.wall("B").layout.origin == Length.of_inches(8)
    assert set_origin(through, "B", None) == loft()


def test_doubling() -> None:
    doubled = set_doubled(loft(), "B", STUD, Side.LEFT)
    assert doubled.wall("B").doubled == (DoubledStud(STUD, Side.LEFT),)
    assert f"{STUD}/double" in keys(doubled)
    turned = set_doubled(doubled, "B", STUD, Side.RIGHT)
    assert turned.wall("B").doubled == (DoubledStud(STUD, Side.RIGHT),)
    assert set_doubled(turned, "B", STUD, None) == loft()


def test_without_room_the_other_side_is_named() -> None:
    with pytest.raises(Refusal) as refused:
        set_doubled(loft(), "B", "B/end/left", Side.LEFT)
    assert wording_of(loft()).say(refused.value.message) == (
        "There is no room for a second stud on that side of B1 in wall B: on its other side there"
        " is."
    )


def test_deleting_a_second_stud_and_a_doubled_one() -> None:
    doubled = set_doubled(loft(), "B", STUD, Side.RIGHT)
    assert delete(doubled, "B", f"{STUD}/double") == loft()
    gone = delete(doubled, "B", STUD).wall("B")
    assert (gone.doubled, gone.left_out) == ((), (2,))
    end = set_doubled(loft(), "B", "B/end/right", Side.LEFT)
    assert delete(end, "B", "B/end/right/double") == loft()


def test_lined_up_with_another_wall() -> None:
    project = add_wall(loft(), "across", "B")
    other = project.walls[-1].letter
    # It runs from the left eave wall: marks at 16, 32 and so on; the wall B starts at 12.
    lined = line_up(project, "B", other)
    origin = lined.wall("B").layout.origin
    assert origin is not None
    assert origin.mm == pytest.approx(4 * 25.4)


def test_a_wall_that_is_not_there_is_refused() -> None:
    with pytest.raises(Refusal) as refused:
        line_up(loft(), "B", "Q")
    assert "no other wall Q" in wording_of(loft()).say(refused.value.message)
