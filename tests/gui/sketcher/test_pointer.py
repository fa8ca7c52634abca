"""What the pointer does, by real events; each drag has its twin that Escape takes back."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtGui import QImage
from PySide6.QtTest import QTest

from core.model import Project
from gui.desk import Desk
from gui.sketcher.sheet import Sheet
from hand import MIDDLE, SHIFT, Hand
from loft import (
    BOX,
    CRIPPLE,
    DOOR,
    STUD,
    box_height,
    cripple_left,
    door_left,
    loft,
    stud_left,
)

Key = Qt.Key

Place = tuple[float, float]

Look = Callable[[Project], float]

# What is pressed at, where it is dragged to (inches), what is looked at, its value, what is held,
# and the text of undo. The sheet shows about 6 px an inch, so places are good to a step of 1/4.
DRAGS = [
    pytest.param((32, 40), (35, 40), stud_left, 34.25, STUD, "Move B3", id="stud"),
    pytest.param((75, 40), (83, 40), door_left, 68.0, DOOR, "Move door 1", id="opening"),
    pytest.param(
        (57.75, 40), (65.75, 40), door_left, 68.0, "B/door-1/king/left", "Move door 1", id="king"
    ),
    pytest.param(
        (75, 80.75), (83, 95), door_left, 68.0, "B/door-1/header/1", "Move door 1", id="header"
    ),
    pytest.param((64, 95), (70, 95), cripple_left, 69.25, CRIPPLE, "Move B8", id="cripple"),
    pytest.param((33.75, 14), (33.75, 24), box_height, 24.0, BOX, "Move box 1", id="box"),
]

drags = pytest.mark.parametrize(("start", "end", "look", "value", "held", "text"), DRAGS)


@drags
def test_a_drag_is_one_edit(
    hand: Hand, desk: Desk, start: Place, end: Place, look: Look, value: float, held: str, text: str
) -> None:
    hand.press(*start)
    assert desk.held == held
    hand.move(*end)
    # The wall follows while the button is down, and undo knows nothing of it yet.
    assert look(desk.project) == pytest.approx(value, abs=0.3)
    assert desk.undo_text is None
    hand.release(*end)
    assert look(desk.project) == pytest.approx(value, abs=0.3)
    assert desk.undo_text == text
    assert desk.held == held
    desk.undo()
    assert desk.project == loft()
    assert desk.undo_text is None


@drags
def test_escape_takes_a_drag_back(
    hand: Hand, desk: Desk, start: Place, end: Place, look: Look, value: float, held: str, text: str
) -> None:
    hand.press(*start)
    hand.move(*end)
    assert look(desk.project) == pytest.approx(value, abs=0.3)
    hand.key(Key.Key_Escape)
    assert desk.project == loft()
    # Whatever the hand does before it lets go is nothing any more.
    hand.move(*start)
    hand.move(*end)
    hand.release(*end)
    assert desk.project == loft()
    assert desk.undo_text is None, f"{text} was undone by Escape"
    assert desk.held == held


def test_a_click_moves_nothing(hand: Hand, desk: Desk) -> None:
    hand.click(32, 40)
    assert desk.held == STUD
    assert desk.project == loft()
    assert desk.undo_text is None


def test_a_shaking_hand_moves_nothing(hand: Hand, desk: Desk) -> None:
    hand.press(32, 40)
    hand.move_px(hand.px(32, 40) + QPoint(2, 1))
    hand.release(32, 40)
    assert desk.project == loft()


def test_a_drag_there_and_back_is_no_edit(hand: Hand, desk: Desk) -> None:
    hand.press(32, 40)
    hand.move(37, 40)
    hand.move(32, 40)
    hand.release(32, 40)
    assert desk.project == loft()
    assert desk.undo_text is None


def test_shift_lets_go_of_the_layout(hand: Hand, desk: Desk, sayings: list[str]) -> None:
    hand.press(32, 40)
    hand.move(36, 40)
    hand.move(33, 40, SHIFT)
    assert "snapping to nothing" in sayings[-1]
    assert stud_left(desk.project) == pytest.approx(32.25, abs=0.1)
    # Without it, an inch from its own place on the layout is near enough to be drawn there.
    hand.move(33, 40)
    assert "on the layout" in sayings[-1]
    assert stud_left(desk.project) == 31.25
    hand.release(33, 40)


def test_a_drag_says_where_the_thing_stands(hand: Hand, sayings: list[str]) -> None:
    hand.drag((75, 40), (119, 40))
    assert sayings[-1] == 'door 1: left edge at 85 1/2", as far as it goes: the wall ends there'


@pytest.mark.parametrize("at", [(0.75, 40), (110, 0.75), (100, 107.2)])
def test_end_studs_and_plates_stay(hand: Hand, desk: Desk, at: Place) -> None:
    hand.drag(at, (at[0] + 9, at[1]))
    assert desk.held is not None
    assert desk.project == loft()


def test_a_click_on_bare_paper_lets_go(hand: Hand, sheet: Sheet, desk: Desk) -> None:
    hand.click(32, 40)
    before = sheet.camera
    hand.click(40, 40)
    assert desk.held is None
    assert sheet.camera == before


def test_the_middle_button_shoves_whatever_lies_there(hand: Hand, sheet: Sheet, desk: Desk) -> None:
    before = sheet.camera
    hand.press(75, 40, MIDDLE)
    hand.move_px(hand.px(75, 40) + QPoint(30, -20))
    hand.release(75, 40, MIDDLE)
    assert (sheet.camera.x, sheet.camera.y) == pytest.approx((before.x + 30, before.y - 20))
    assert desk.project == loft()
    assert desk.held is None


def test_space_shoves_with_the_left_button(hand: Hand, sheet: Sheet, desk: Desk) -> None:
    before = sheet.camera
    QTest.keyPress(sheet, Key.Key_Space)
    assert sheet.cursor().shape() is Qt.CursorShape.OpenHandCursor
    hand.press(75, 40)
    assert sheet.cursor().shape() is Qt.CursorShape.ClosedHandCursor
    hand.move_px(hand.px(75, 40) + QPoint(30, -20))
    hand.release(75, 40)
    QTest.keyRelease(sheet, Key.Key_Space)
    assert (sheet.camera.x, sheet.camera.y) == pytest.approx((before.x + 30, before.y - 20))
    assert desk.project == loft()


def test_a_zoom_in_the_middle_of_a_drag_keeps_hold(hand: Hand, desk: Desk) -> None:
    hand.press(75, 40)
    hand.move(79, 40)
    hand.wheel(79, 40, 2)
    hand.move(83, 40)
    assert door_left(desk.project) == pytest.approx(68.0, abs=0.3)
    hand.release(83, 40)
    assert door_left(desk.project) == pytest.approx(68.0, abs=0.3)


@pytest.mark.parametrize(
    ("at", "shape"),
    [
        ((32, 40), Qt.CursorShape.SizeHorCursor),
        ((75, 40), Qt.CursorShape.SizeHorCursor),
        ((33.75, 14), Qt.CursorShape.SizeAllCursor),
        ((0.75, 40), Qt.CursorShape.PointingHandCursor),
        ((40, 40), Qt.CursorShape.ArrowCursor),
    ],
)
def test_the_pointer_shows_what_can_be_done(
    hand: Hand, sheet: Sheet, at: Place, shape: Qt.CursorShape
) -> None:
    hand.move(*at)
    assert sheet.cursor().shape() is shape


def test_a_second_button_does_not_disturb_a_drag(hand: Hand, desk: Desk) -> None:
    hand.press(75, 40)
    hand.move(83, 40)
    hand.press(83, 40, MIDDLE)
    hand.release(83, 40, MIDDLE)
    assert door_left(desk.project) == pytest.approx(68.0, abs=0.3)
    assert desk.undo_text is None
    hand.release(83, 40)
    assert desk.undo_text == "Move door 1"


def test_only_the_left_and_middle_buttons_do_anything(hand: Hand, desk: Desk) -> None:
    hand.press(75, 40, Qt.MouseButton.RightButton)
    assert desk.held is None
    hand.release(75, 40, Qt.MouseButton.RightButton)
    assert desk.held is None


def test_a_drag_tells_beside_the_pointer_what_it_came_to_rest_at(
    hand: Hand, sheet: Sheet, desk: Desk
) -> None:
    def near_the_pointer(x: float, y: float) -> QImage:
        place = hand.px(x, y) + QPoint(14, 18)
        return sheet.grab(QRect(place, QSize(40, 20))).toImage()

    hand.press(32, 40)
    hand.move(36, 40)
    bare = near_the_pointer(36, 40)
    # An inch from its place on the layout it is drawn there, and a slip says so.
    hand.move(33, 40)
    assert stud_left(desk.project) == 31.25
    told = near_the_pointer(33, 40)
    assert told != bare
    hand.release(33, 40)
    assert near_the_pointer(33, 40) != told
