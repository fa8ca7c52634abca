"""What the keys do on the sheet, by real events."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from core.model import Side
from gui.desk import Desk
from gui.sketcher.sheet import Sheet
from hand import CTRL, NONE, Hand
from loft import (
    BOX,
    DOOR,
    INCH,
    STUD,
    box_height,
    door_left,
    loft,
    stud_left,
)

Key = Qt.Key


def test_f_fits_again(hand: Hand, sheet: Sheet) -> None:
    fitted = sheet.camera
    hand.wheel(90, 60, 4)
    assert sheet.camera != fitted
    hand.key(Key.Key_F)
    assert sheet.camera == fitted


@pytest.mark.parametrize(
    ("key", "factor"), [(Key.Key_Plus, 1.25), (Key.Key_Equal, 1.25), (Key.Key_Minus, 0.8)]
)
def test_plus_and_minus_zoom(hand: Hand, sheet: Sheet, key: Qt.Key, factor: float) -> None:
    before = sheet.camera.scale
    hand.key(key)
    assert sheet.camera.scale == pytest.approx(before * factor)


@pytest.mark.parametrize(
    ("key", "modifier", "left"),
    [
        (Key.Key_Right, NONE, 31.3125),
        (Key.Key_Left, NONE, 31.1875),
        (Key.Key_Right, CTRL, 32.25),
        (Key.Key_Left, CTRL, 30.25),
    ],
)
def test_arrow_keys_push_what_is_held(
    hand: Hand, desk: Desk, key: Qt.Key, modifier: Qt.KeyboardModifier, left: float
) -> None:
    desk.hold(STUD)
    hand.key(key, modifier)
    assert stud_left(desk.project) == pytest.approx(left)
    assert desk.undo_text == "Move B3"
    desk.undo()
    assert desk.project == loft()


def repeat(sheet: Sheet, kind: QEvent.Type, key: Qt.Key, count: int) -> None:
    """What the window system sends while a key is kept down."""
    for _ in range(count):
        event = QKeyEvent(kind, key, NONE, "", True)
        QApplication.sendEvent(sheet, event)


def test_a_key_kept_down_is_one_edit(sheet: Sheet, desk: Desk) -> None:
    desk.hold(STUD)
    QTest.keyPress(sheet, Key.Key_Right)
    for _ in range(7):
        repeat(sheet, QEvent.Type.KeyRelease, Key.Key_Right, 1)
        repeat(sheet, QEvent.Type.KeyPress, Key.Key_Right, 1)
    assert stud_left(desk.project) == pytest.approx(31.75)
    assert desk.undo_text is None
    QTest.keyRelease(sheet, Key.Key_Right)
    assert desk.undo_text == "Move B3"
    desk.undo()
    assert desk.project == loft()


def test_escape_takes_a_run_of_arrow_keys_back(hand: Hand, sheet: Sheet, desk: Desk) -> None:
    desk.hold(DOOR)
    QTest.keyPress(sheet, Key.Key_Right)
    repeat(sheet, QEvent.Type.KeyPress, Key.Key_Right, 5)
    assert door_left(desk.project) == pytest.approx(60.375)
    hand.key(Key.Key_Escape)
    QTest.keyRelease(sheet, Key.Key_Right)
    assert desk.project == loft()
    assert desk.undo_text is None
    assert desk.held == DOOR


def test_a_run_of_arrow_keys_ends_when_the_sheet_loses_the_keyboard(
    sheet: Sheet, desk: Desk
) -> None:
    desk.hold(STUD)
    sheet.setFocus()
    QTest.keyPress(sheet, Key.Key_Right)
    sheet.clearFocus()
    assert desk.undo_text == "Move B3"


def test_arrows_push_no_farther_than_there_is_room(
    hand: Hand, desk: Desk, sayings: list[str]
) -> None:
    desk.hold(STUD)
    hand.key(Key.Key_Left, CTRL, times=40)
    # Place 1 stands from 15 1/4 to 16 3/4, and an inch at a time does not pass it.
    assert stud_left(desk.project) == pytest.approx(16.75)
    assert sayings[-1] == 'B3: left edge at 16 3/4", as far as it goes: B2 stands there'
    # And the first push back moves it again.
    hand.key(Key.Key_Right, CTRL)
    assert stud_left(desk.project) == pytest.approx(17.75)


def test_arrows_push_a_box_up_and_from_side_to_side(hand: Hand, desk: Desk) -> None:
    desk.hold(BOX)
    hand.key(Key.Key_Up, CTRL, times=3)
    hand.key(Key.Key_Down)
    assert box_height(desk.project) == pytest.approx(16.9375)
    hand.key(Key.Key_Right)
    box = desk.project.wall("B").box("box-1")
    assert (box.stud, box.side) == ("B/layout/3", Side.LEFT)
    assert box.height.mm / INCH == pytest.approx(16.9375)


def test_an_arrow_on_a_plate_says_that_it_stays(hand: Hand, desk: Desk, sayings: list[str]) -> None:
    desk.hold("B/sole")
    hand.key(Key.Key_Right)
    assert "stays where it is" in sayings[-1]
    assert desk.project == loft()


def test_arrows_shove_the_paper_when_nothing_is_held(hand: Hand, sheet: Sheet) -> None:
    before = sheet.camera
    hand.key(Key.Key_Right)
    assert (sheet.camera.x, sheet.camera.y) == (before.x - 40, before.y)
    hand.key(Key.Key_Up)
    assert (sheet.camera.x, sheet.camera.y) == (before.x - 40, before.y + 40)


@pytest.mark.parametrize("key", [Key.Key_Delete, Key.Key_Backspace])
def test_delete(hand: Hand, desk: Desk, key: Qt.Key) -> None:
    hand.click(32, 40)
    hand.key(key)
    assert desk.project.wall("B").left_out == (2,)
    assert desk.undo_text == "Delete B3"
    assert desk.held is None
    desk.undo()
    assert desk.project == loft()


def test_what_goes_with_its_wall_is_not_deleted(hand: Hand, desk: Desk, sayings: list[str]) -> None:
    hand.click(0.75, 40)
    hand.key(Key.Key_Delete)
    assert desk.project == loft()
    assert sayings
    assert sayings[-1]


def test_delete_with_nothing_held_does_nothing(hand: Hand, desk: Desk) -> None:
    hand.key(Key.Key_Delete)
    assert desk.project == loft()


def test_escape_lets_go_of_what_is_held(hand: Hand, desk: Desk) -> None:
    hand.click(32, 40)
    hand.key(Key.Key_Escape)
    assert desk.held is None


def test_page_keys_take_hold_of_one_thing_after_the_other(hand: Hand, desk: Desk) -> None:
    hand.key(Key.Key_PageDown)
    assert desk.held == "B/end/left"
    hand.key(Key.Key_PageDown, times=2)
    assert desk.held == STUD
    hand.key(Key.Key_PageDown)
    assert desk.held == BOX
    hand.key(Key.Key_PageUp, times=4)
    assert desk.held == "B/end/right"


def test_keys_do_nothing_while_the_button_is_down(hand: Hand, desk: Desk) -> None:
    hand.press(75, 40)
    hand.move(83, 40)
    hand.key(Key.Key_Delete)
    hand.key(Key.Key_Right)
    hand.release(83, 40)
    assert door_left(desk.project) == pytest.approx(68.0, abs=0.3)
    assert desk.undo_text == "Move door 1"


def test_other_keys_are_left_to_the_window(sheet: Sheet) -> None:
    event = QKeyEvent(QEvent.Type.KeyPress, Key.Key_Q, NONE)
    QApplication.sendEvent(sheet, event)
    assert not event.isAccepted()
