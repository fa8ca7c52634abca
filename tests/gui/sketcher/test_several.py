"""Several things held, pulled, pushed and deleted at once, by real events."""

from __future__ import annotations

import re

import msgspec
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from core.model import Wall
from gui.desk import Desk
from gui.sketcher.choosing import once
from gui.sketcher.sheet import Sheet
from hand import CTRL, NONE, SHIFT, Hand
from loft import BOX, CRIPPLE, DOOR, INCH, STUD, box_height, door_left, loft, stud_left

Key = Qt.Key
NEXT = "B/layout/3"


def held(desk: Desk) -> tuple[str, ...]:
    return desk.holding


def lefts(desk: Desk) -> dict[int, float]:
    """Where moved studs stand, inches, by their places."""
    return {m.place: round(m.left.mm / INCH, 3) for m in desk.project.wall("B").moved}


@pytest.mark.parametrize("modifier", [SHIFT, CTRL])
def test_a_click_with_shift_or_ctrl_holds_one_more_and_lets_it_go(
    hand: Hand, desk: Desk, sayings: list[str], modifier: Qt.KeyboardModifier
) -> None:
    hand.click(32, 40)
    hand.click(48, 40, modifier)
    assert held(desk) == (STUD, NEXT)
    assert sayings[-1] == "2 things held: they move and go together."
    hand.click(75, 40, modifier)
    assert held(desk) == (STUD, NEXT, DOOR)
    hand.click(48, 40, modifier)
    assert held(desk) == (STUD, DOOR)
    # The king is of the door, which is held: it goes too.
    hand.click(57.75, 40, modifier)
    assert held(desk) == (STUD,)


def test_a_rectangle_over_bare_paper_holds_what_has_its_middle_in_it(
    hand: Hand, desk: Desk, sheet: Sheet
) -> None:
    hand.press(24, 70)
    hand.move(52, 6)
    bare = sheet.grab()
    assert held(desk) == (STUD, BOX, NEXT)
    hand.move(36, 6)
    assert held(desk) == (STUD, BOX)
    hand.release(36, 6)
    assert held(desk) == (STUD, BOX)
    assert sheet.grab().toImage() != bare.toImage()


def test_a_rectangle_with_shift_adds_and_escape_takes_it_back(hand: Hand, desk: Desk) -> None:
    hand.click(75, 40)
    start, end = hand.px(24, 70), hand.px(40, 6)
    QTest.mousePress(hand.sheet, Qt.MouseButton.LeftButton, SHIFT, start)
    hand.move_px(end, SHIFT)
    assert held(desk) == (DOOR, STUD, BOX)
    hand.key(Key.Key_Escape)
    assert held(desk) == (DOOR,)
    hand.release(40, 6)
    assert held(desk) == (DOOR,)


def test_all_that_is_held_is_pulled_as_one(hand: Hand, desk: Desk, sayings: list[str]) -> None:
    desk.hold(STUD, (NEXT,))
    hand.press(32, 40)
    hand.move(35, 40)
    assert lefts(desk) == pytest.approx({2: 34.25, 3: 50.25}, abs=0.3)
    # What is said is where they are, to the px's worth of the tape.
    assert re.match(r'2 things: (2 3/4|3|3 1/4)" to the right', sayings[-1])
    assert desk.undo_text is None
    hand.release(35, 40)
    assert desk.undo_text == "Move 2 things"
    assert held(desk) == (STUD, NEXT)
    desk.undo()
    assert desk.project == loft()


def test_escape_takes_the_pull_of_several_back(hand: Hand, desk: Desk) -> None:
    desk.hold(STUD, (NEXT, DOOR))
    hand.press(32, 40)
    hand.move(35, 40)
    assert desk.project != loft()
    hand.key(Key.Key_Escape)
    hand.release(35, 40)
    assert desk.project == loft()
    assert held(desk) == (STUD, NEXT, DOOR)


def test_several_stop_where_the_first_of_them_does(
    hand: Hand, desk: Desk, sayings: list[str]
) -> None:
    desk.hold(STUD, (NEXT,))
    hand.press(32, 40)
    hand.move(52, 40)
    # Place 3 ends at 48 3/4 and the door's left king stands at 57; a px is about 1/6 in.
    assert lefts(desk)[3] == pytest.approx(55.5, abs=0.2)
    assert "as far as it goes: B4 has no place there" in sayings[-1]
    hand.release(52, 40)
    assert desk.undo_text == "Move 2 things"


def test_a_click_without_a_pull_holds_that_one_alone(hand: Hand, desk: Desk) -> None:
    desk.hold(STUD, (NEXT,))
    hand.click(48, 40)
    assert held(desk) == (NEXT,)


@pytest.mark.parametrize(
    ("modifier", "times", "by"), [(NONE, 4, 0.25), (SHIFT, 2, 2.0), (CTRL, 2, 2.0)]
)
def test_arrow_keys_push_all(
    hand: Hand, desk: Desk, modifier: Qt.KeyboardModifier, times: int, by: float
) -> None:
    desk.hold(STUD, (DOOR,))
    hand.key(Key.Key_Right, modifier, times)
    assert stud_left(desk.project) == pytest.approx(31.25 + by)
    assert door_left(desk.project) == pytest.approx(60.0 + by)


def test_boxes_go_up_together(hand: Hand, desk: Desk) -> None:
    desk.hold(BOX, (DOOR,))
    hand.key(Key.Key_Up, SHIFT)
    assert box_height(desk.project) == pytest.approx(15.0)
    assert door_left(desk.project) == pytest.approx(60.0)


def test_delete_takes_all_as_one_edit(hand: Hand, desk: Desk) -> None:
    desk.hold(STUD, (DOOR, BOX))
    hand.key(Key.Key_Delete)
    wall = desk.project.wall("B")
    assert (wall.openings, wall.boxes, wall.left_out) == ((), (), (2,))
    assert desk.undo_text == "Delete 3 things"
    desk.undo()
    assert desk.project == loft()


def test_a_door_goes_with_its_cripples_and_the_layout_stays_whole(hand: Hand, desk: Desk) -> None:
    assert desk.result is not None
    assert once(desk.result, (DOOR, CRIPPLE, "B/door-1/above/5")) == (DOOR,)
    desk.hold(DOOR, (CRIPPLE,))
    hand.key(Key.Key_Delete)
    assert desk.project.wall("B").left_out == ()


def test_shift_and_page_down_hold_one_more(hand: Hand, desk: Desk, sayings: list[str]) -> None:
    desk.hold("B/layout/1")
    hand.key(Key.Key_PageDown, SHIFT)
    assert held(desk) == ("B/layout/1", STUD)
    hand.key(Key.Key_PageDown, SHIFT)
    assert len(desk.holding) == 3
    assert sayings[-1].startswith("3 things held")
    hand.key(Key.Key_PageDown)
    assert len(desk.holding) == 1


def test_what_is_gone_is_let_go_of_the_others_too(desk: Desk) -> None:
    desk.hold(STUD, (DOOR, BOX))
    heard: list[None] = []
    desk.held_changed.connect(lambda: heard.append(None))
    desk.commit("without", loft().with_wall(_without_boxes(desk)))
    assert held(desk) == (STUD, DOOR)
    assert len(heard) == 1


def _without_boxes(desk: Desk) -> Wall:
    return msgspec.structs.replace(desk.project.wall("B"), boxes=())
