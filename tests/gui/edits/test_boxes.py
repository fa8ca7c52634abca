"""Moving, setting and adding boxes, in inches on the wall of `loft`.

Stud 2 stands from 31 1/4 to 32 3/4 on a plate 1 1/2 high, and reaches at its right edge
60 + 32.75 - 1.5 * sqrt 2 = 90.63 high.
"""

from __future__ import annotations

from typing import Any

import pytest

from core.job import work_out
from core.lengths import Length
from core.model import BoxHeight, HeadLie, Project, Side, SiteRecord
from gui.edits import (
    Refusal,
    add_box,
    add_stud,
    delete,
    move_box,
    move_opening,
    set_box,
    set_opening,
)
from gui.wordings import wording_of
from loft import INCH, STUD, loft

RAKED = {"head_lie": HeadLie.RAKED}
LEFT_TRIMMER = "B/door-1/trimmer/left"


def inches(value: float) -> Length:
    return Length.of_inches(value)


def sentence(project: Project, refusal: pytest.ExceptionInfo[Refusal]) -> str:
    return wording_of(project).say(refusal.value.message)


def test_a_box_goes_to_the_side_of_another_stud() -> None:
    project = move_box(loft(), "B", "box-1", "B/layout/3", Side.LEFT, 40 * INCH)
    box = project.wall("B").box("box-1")
    assert (box.stud, box.side, box.height) == ("B/layout/3", Side.LEFT, inches(40))


def test_a_height_off_the_stud_is_refused_with_the_nearest_that_it_reaches() -> None:
    with pytest.raises(Refusal) as refusal:
        set_box(loft(), "B", "box-1", height=inches(0.5), to=BoxHeight.BOTTOM)
    assert sentence(loft(), refusal).endswith('the nearest height that its stud reaches is 1 1/2".')
    with pytest.raises(Refusal) as refusal:
        set_box(loft(), "B", "box-1", height=inches(100), to=BoxHeight.TOP)
    assert sentence(loft(), refusal).endswith('reaches is 90 5/8".')


@pytest.mark.parametrize(
    ("to", "height"),
    [(BoxHeight.BOTTOM, 1.5), (BoxHeight.TOP, 90.6)],
)
def test_at_the_very_foot_and_head_of_the_stud_it_is_taken(to: BoxHeight, height: float) -> None:
    project = set_box(loft(), "B", "box-1", to=to, height=inches(height))
    placed = work_out(project, SiteRecord()).wall("B").boxes[0]
    assert placed.stud == STUD


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        ({"stud": "B/layout/99"}, "needs a stud to be fixed to."),
        ({"stud": "B/sole"}, "needs a stud to be fixed to."),
        # The trimmer's right side is the doorway; on its left stands the king.
        ({"stud": LEFT_TRIMMER, "side": Side.RIGHT}, "in the rough opening of door 1"),
        ({"stud": LEFT_TRIMMER, "side": Side.LEFT}, "Another piece of timber stands in the way"),
        ({"stud": "B/door-1/king/left", "side": Side.RIGHT}, "Another piece of timber"),
        ({"tall": inches(95)}, "The stud is too short"),
        ({"width": inches(0)}, "This cannot be:"),
    ],
)
def test_where_it_cannot_hang_it_is_refused(changes: dict[str, Any], words: str) -> None:
    with pytest.raises(Refusal) as refusal:
        set_box(loft(), "B", "box-1", **changes)
    assert words in sentence(loft(), refusal)


def test_a_box_that_lost_its_stud_may_be_changed_until_it_has_one() -> None:
    lost = delete(loft(), "B", STUD)
    higher = set_box(lost, "B", "box-1", height=inches(30))
    mended = set_box(higher, "B", "box-1", stud="B/layout/3", side=Side.LEFT)
    assert work_out(mended, SiteRecord()).wall("B").boxes[0].stud == "B/layout/3"


def test_a_new_box_hangs_on_the_stud_that_is_held() -> None:
    box = add_box(loft(), "B", "B/layout/1").wall("B").boxes[-1]
    assert (box.id, box.stud, box.side) == ("box-2", "B/layout/1", Side.RIGHT)
    assert (box.height, box.to) == (inches(12), BoxHeight.CENTRE)


def test_without_one_it_hangs_near_the_middle_outside_the_doorway() -> None:
    # The middle is at 60; the left trimmer at 58 1/2 has the doorway and its king beside it, so
    # the king at 57 carries the box on its left side.
    box = add_box(loft(), "B").wall("B").boxes[-1]
    assert (box.stud, box.side) == ("B/door-1/king/left", Side.LEFT)


def test_where_the_right_side_is_taken_it_hangs_on_the_left() -> None:
    crowded = add_stud(loft(), "B", 33 * INCH)
    box = add_box(delete(crowded, "B", "B/box-1"), "B", STUD).wall("B").boxes[-1]
    assert (box.stud, box.side) == (STUD, Side.LEFT)


def test_the_upper_corner_of_a_raked_opening_is_open_too() -> None:
    # From 26 to 46 under 12 in 12: its head is 60 high at the left and 80 at the right, where a
    # box at 70 would hang on the right trimmer.
    away = set_box(loft(), "B", "box-1", stud="B/end/right", side=Side.LEFT)
    lower = set_opening(away, "B", "door-1", width=inches(20), head=inches(60))
    door = set_opening(move_opening(lower, "B", "door-1", 26 * INCH), "B", "door-1", **RAKED)
    trimmer = {"stud": "B/door-1/trimmer/right", "side": Side.LEFT}
    with pytest.raises(Refusal) as refusal:
        set_box(door, "B", "box-1", height=inches(70), **trimmer)
    assert "in the rough opening of door 1" in sentence(door, refusal)
