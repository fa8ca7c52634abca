"""A wall is filled from the tray, things are held, typed over, taken together and copied.

Once by the mouse alone, once by the keys alone; what comes of it is saved and read again.
"""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from asked import Asked
from core.model import Wall
from core.storage import load
from figuring import figure, middle, write
from gui.asking import Leave
from gui.desk import Desk
from gui.sketcher.ghosts import Part
from gui.sketcher.measures import Ruler
from gui.theme import Theme
from gui.window import Window
from hand import CTRL, LEFT, NONE, SHIFT, Hand
from loft import INCH, desk_of

Key = Qt.Key


class Shop:
    """A window with the wall of the small loft, the mouse and the keys."""

    def __init__(self, qtbot: QtBot, path: Path) -> None:
        self.path = path
        self.desk: Desk = desk_of()
        self.asked = Asked(saves=path, leaves=Leave.DISCARD)
        self.window = Window(self.desk, Theme.day(), ask=self.asked)
        qtbot.addWidget(self.window)
        self.window.resize(1400, 900)
        with qtbot.waitExposed(self.window):
            self.window.show()
        self.window.activateWindow()
        self.sheet = self.window.sheet
        self.hand = Hand(self.sheet)

    @property
    def wall(self) -> Wall:
        return self.desk.project.wall("B")

    def foot(self) -> str:
        return self.window.foot.text()

    def drag_in(self, part: Part, x: float, y: float) -> None:
        """Drag a part from the tray to a place of the wall, inches."""
        piece = self.window.middle.wall.tray.pieces[part]
        start, end = piece.rect().center(), self.sheet.mapToGlobal(self.hand.px(x, y))
        QTest.mousePress(piece, LEFT, NONE, start)
        for spot in (piece.mapToGlobal(start) + QPoint(9, 9), end + QPoint(1, 1), end):
            _move(piece, spot)
        QTest.mouseRelease(piece, LEFT, NONE, piece.mapFromGlobal(end))

    def key(self, key: Qt.Key, modifier: Qt.KeyboardModifier = NONE, times: int = 1) -> None:
        """Press a key in whatever has the keys."""
        for _ in range(times):
            has = QApplication.focusWidget() or self.window
            QTest.keyClick(has, key, modifier)

    def saved(self) -> Wall:
        """The wall as it stands in the file after a save."""
        self.window.menus.actions["action.save"].trigger()
        return load(self.path).project.wall("B")


def _move(widget: QWidget, spot: QPoint) -> None:
    place = QPointF(widget.mapFromGlobal(spot))
    none = Qt.MouseButton.NoButton
    event = QMouseEvent(QEvent.Type.MouseMove, place, QPointF(spot), none, LEFT, NONE)
    QApplication.sendEvent(widget, event)


@pytest.fixture
def shop(qtbot: QtBot, tmp_path: Path) -> Shop:
    return Shop(qtbot, tmp_path / "shop.eave")


def test_by_the_mouse(shop: Shop) -> None:
    hand, desk = shop.hand, shop.desk
    # A low door from the tray has no place over the other door, and says where it has one.
    shop.drag_in(Part.ACCESS_DOOR, 75, 15)
    assert "because door 1 stands there: the nearest left edge is" in shop.foot()
    shop.drag_in(Part.ACCESS_DOOR, 30, 15)
    assert desk.held == "B/access-door-1"
    # Its blue figure is struck and typed over.
    QTest.mouseClick(shop.sheet, LEFT, NONE, middle(figure(shop.sheet, Ruler.LEFT_END)))
    write(shop.sheet, "20 1/2")
    assert shop.wall.opening("access-door-1").left.mm == pytest.approx(20.5 * INCH)
    # A switch beside the door, drawn to its usual height.
    shop.drag_in(Part.SWITCH, 96, 47)
    assert shop.wall.box("switch-1").height.mm == pytest.approx(48 * INCH)
    # A rectangle over bare paper takes a stud, a click with Shift another, and both are pulled.
    hand.press(103, 75)
    hand.move(113, 20)
    hand.release(113, 20)
    assert desk.holding == ("B/layout/7",)
    hand.click(96, 80, SHIFT)
    assert desk.also == ("B/layout/6",)
    before = {m.place for m in shop.wall.moved}
    hand.drag((96, 80), (97.5, 80))
    assert {m.place for m in shop.wall.moved} > before
    assert (desk.undo_text or "").startswith("Move ")
    # What was moved is put back, one step, and the rest is in the file.
    desk.undo()
    assert {m.place for m in shop.wall.moved} == before
    assert shop.saved() == shop.wall


def test_by_the_keys(shop: Shop) -> None:
    desk = shop.desk
    tray = shop.window.middle.wall.tray
    tray.pieces[Part.STUD].setFocus()
    shop.key(Key.Key_Return)
    # From the middle of the wall, 59 1/4, forty inches to the left.
    shop.key(Key.Key_Left, CTRL, times=40)
    shop.key(Key.Key_Return)
    assert desk.held == "B/stud-1"
    assert shop.wall.added[0].left.mm == pytest.approx(19.25 * INCH)
    # A digit begins to type over its distance to the left end.
    shop.key(Key.Key_2)
    QTest.keyClicks(shop.sheet.measuring.field, "2")
    shop.key(Key.Key_Return)
    assert shop.wall.added[0].left.mm == pytest.approx(22 * INCH)
    # Again at the same distance, twice, 3 in. apart.
    shop.window.menus.actions["action.duplicate"].trigger()
    shop.key(Key.Key_Return)
    QTest.keyClicks(shop.sheet.measuring.field, "3 x 2")
    shop.key(Key.Key_Return)
    assert [round(s.left.mm / INCH, 3) for s in shop.wall.added] == [22, 25, 28]
    # The last copy and the next thing to the right are held, pushed and deleted together.
    shop.key(Key.Key_PageDown, SHIFT)
    assert len(desk.holding) == 2
    shop.key(Key.Key_Delete)
    assert len(shop.wall.added) == 2
    desk.undo()
    assert len(shop.wall.added) == 3
    assert shop.saved() == shop.wall
