"""Deleting what is held."""

from __future__ import annotations

import pytest

from core.job import work_out
from core.model import SiteRecord
from gui.edits import Refusal, add_stud, delete, move_stud
from gui.wordings import wording_of
from loft import BOX, CRIPPLE, DOOR, INCH, STUD, loft


def test_a_stud_of_the_layout_leaves_its_place_empty() -> None:
    wall = delete(loft(), "B", STUD).wall("B")
    assert wall.left_out == (2,)
    frame = work_out(delete(loft(), "B", STUD), SiteRecord()).wall("B").frame
    assert frame is not None
    assert frame.member(STUD) is None
    assert frame.member("B/layout/3") is not None


def test_a_moved_stud_takes_its_move_with_it() -> None:
    wall = delete(move_stud(loft(), "B", STUD, 35 * INCH), "B", STUD).wall("B")
    assert (wall.moved, wall.left_out) == ((), (2,))


def test_a_cripple_is_the_place_that_it_keeps() -> None:
    assert delete(loft(), "B", CRIPPLE).wall("B").left_out == (4,)


def test_an_added_stud_is_taken_away() -> None:
    assert delete(add_stud(loft(), "B", 20 * INCH), "B", "B/stud-1") == loft()


@pytest.mark.parametrize("key", [DOOR, "B/door-1/king/left", "B/door-1/header/1"])
def test_an_opening_goes_with_all_around_it(key: str) -> None:
    assert delete(loft(), "B", key).wall("B").openings == ()


def test_a_box_is_taken_away() -> None:
    assert delete(loft(), "B", BOX).wall("B").boxes == ()


@pytest.mark.parametrize("key", ["B/end/left", "B/top/1/1", "B/sole", "B/nothing", "C/sole"])
def test_what_goes_with_the_wall_is_refused(key: str) -> None:
    with pytest.raises(Refusal) as refusal:
        delete(loft(), "B", key)
    assert "goes with wall B" in wording_of(loft()).say(refusal.value.message)
