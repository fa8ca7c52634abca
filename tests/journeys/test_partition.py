"""A new room gets its partition, drawn by the mouse alone and by the keys alone."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from asked import Asked
from core.lengths import System
from core.storage import Document
from gui.asking import Leave
from gui.desk import Desk
from gui.files import new_document
from gui.plan.drawing import Tool
from gui.theme import Theme
from gui.window import Window
from gui.wordings import plain_wording
from plan_hand import CTRL, LEFT, SHIFT, PlanHand

Key = Qt.Key


def opened(qtbot: QtBot, document: Document) -> Window:
    window = Window(Desk(document), Theme.day(), ask=Asked(leaves=Leave.DISCARD))
    qtbot.addWidget(window)
    window.resize(1300, 820)
    with qtbot.waitExposed(window):
        window.show()
    window.activateWindow()
    return window


@pytest.fixture
def window(qtbot: QtBot) -> Window:
    return opened(qtbot, new_document(System.INCH, plain_wording()))


def press_first_row(window: Window) -> None:
    """The room, first in the list, by the mouse."""
    rows = window.walls.list
    QTest.mouseClick(rows.viewport(), LEFT, pos=rows.visualItemRect(rows.item(0)).center())


def test_by_the_mouse_alone(window: Window) -> None:
    desk, room = window.desk, window.middle.room
    press_first_row(window)
    assert desk.letter is None
    before = {wall.letter for wall in desk.project.walls}
    hand = PlanHand(room.plan)
    QTest.mouseClick(room.page.buttons[Tool.WALL], LEFT)
    hand.drag((2, 100), (285, 104))
    (new,) = {wall.letter for wall in desk.project.walls} - before
    assert hand.chalk(new) == [(0, 100), (288, 100)]
    # Moved on by its timber, then to its drawing.
    hand.drag((200, 101), (200, 141))
    assert hand.chalk(new) == [(0, 140), (288, 140)]
    QTest.mouseDClick(room.plan, LEFT, pos=hand.px((200, 141)))
    assert desk.letter == new
    assert window.middle.currentWidget() is window.middle.wall
    assert desk.result is not None
    assert desk.result.frame is not None
    assert len(window.sheet.scene().drawing) > 50


def test_by_the_keys_alone(window: Window) -> None:
    desk, plan = window.desk, window.middle.room.plan
    rows = window.walls.list
    rows.setFocus()
    QTest.keyClick(rows, Key.Key_Home)
    assert desk.letter is None
    before = {wall.letter for wall in desk.project.walls}
    # Out of the list with Tab until the plan has the keys.
    for _ in range(12):
        if plan.hasFocus():
            break
        QTest.keyClick(window.focusWidget(), Key.Key_Tab)
    assert plan.hasFocus()
    desk.hold(None)
    hand = PlanHand(plan)
    hand.key(Key.Key_W)
    hand.key(Key.Key_Down, CTRL, times=5)
    hand.key(Key.Key_Return)
    hand.key(Key.Key_Right, SHIFT, times=2)
    hand.key(Key.Key_Return)
    (new,) = {wall.letter for wall in desk.project.walls} - before
    # From eave to eave, five feet nearer than the middle of the 30-ft room.
    assert hand.chalk(new) == [(0, 120), (288, 120)]
    hand.type("200")
    assert hand.chalk(new) == [(0, 120), (200, 120)]
    hand.key(Key.Key_Return)
    assert window.sheet.hasFocus()
    assert window.sheet.accessibleName().startswith(f"Drawing of wall {new}")


def test_it_can_be_left_with_undo_and_comes_back_with_redo(window: Window) -> None:
    start = window.desk.project
    press_first_row(window)
    hand = PlanHand(window.middle.room.plan)
    hand.drag((2, 100), (285, 104))
    drawn = window.desk.project
    window.menus.actions["action.undo"].trigger()
    assert window.desk.project == start
    assert window.desk.letter is None
    window.menus.actions["action.redo"].trigger()
    assert window.desk.project == drawn


def test_the_middle_button_and_the_wheel_only_look(window: Window) -> None:
    press_first_row(window)
    plan = window.middle.room.plan
    before = plan.camera
    middle = Qt.MouseButton.MiddleButton
    QTest.mousePress(plan, middle, pos=QPoint(300, 300))
    QTest.mouseMove(plan, QPoint(340, 310))
    QTest.mouseRelease(plan, middle, pos=QPoint(340, 310))
    after = plan.camera
    assert (after.x - before.x, after.y - before.y) == pytest.approx((40, 10))
    assert after.scale == before.scale
    assert window.desk.undo_text is None
