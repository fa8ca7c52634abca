"""Walking the site: the page in the window, with real events."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QImage
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from asked import Asked
from core.model import SiteRecord
from core.storage import Document
from gui.asking import Leave
from gui.desk import Desk
from gui.site.table import CUT, NAILED
from gui.site.walk import Walk
from gui.theme import Theme
from gui.window import Window
from loft import STUD, loft

ASKED = Asked(leaves=Leave.DISCARD)


@pytest.fixture
def window(qtbot: QtBot) -> Window:
    window = Window(Desk(Document(loft(), SiteRecord())), Theme.day(), Path("loft.eave"), ASKED)
    qtbot.addWidget(window)
    window.resize(1400, 860)
    window.desk.show_wall("B")
    window.show()
    window.menus.actions["action.walk"].trigger()
    return window


def walk(window: Window) -> Walk:
    return window.middle.walk


def press(window: Window, key: str, column: int) -> None:
    """Presses the right-hand part of a cell, beside its square."""
    table, seen = walk(window).table, walk(window).list
    row = table.row_of(key)
    assert row is not None
    index = table.index(row, column)
    seen.scrollTo(index)
    place = seen.visualRect(index).center() + QPoint(20, 0)
    QTest.mouseClick(seen.viewport(), Qt.MouseButton.LeftButton, pos=place)


def done(window: Window) -> dict[str, bool]:
    return {cut.piece.key: cut.nailed for cut in window.desk.site.cut}


def test_the_walk_takes_the_place_of_drawing_and_forms(window: Window) -> None:
    assert walk(window).isVisible()
    assert not window.held.isVisible()
    QTest.mouseClick(walk(window).back, Qt.MouseButton.LeftButton)
    assert window.sheet.isVisible()
    assert window.held.isVisible()
    assert not window.menus.actions["action.walk"].isChecked()


def test_the_room_is_not_walked(window: Window) -> None:
    window.desk.show_room()
    assert window.middle.room.isVisible()
    assert window.held.isVisible()
    window.desk.show_wall("B")
    assert walk(window).isVisible()


def test_a_press_ticks_anywhere_in_the_cell(window: Window) -> None:
    press(window, STUD, CUT)
    assert done(window) == {STUD: False}
    press(window, STUD, NAILED)
    assert done(window) == {STUD: True}
    press(window, STUD, CUT)
    assert done(window) == {}


def test_the_keys_tick_the_row_they_are_in(window: Window) -> None:
    window.desk.hold(STUD)
    QTest.keyClick(walk(window).list, Qt.Key.Key_Space)
    assert done(window) == {STUD: False}
    QTest.keyClick(walk(window).list, Qt.Key.Key_N)
    assert done(window) == {STUD: True}


def test_a_tick_makes_the_file_unsaved_and_no_undo(window: Window) -> None:
    press(window, STUD, CUT)
    assert window.isWindowModified()
    assert window.desk.undo_text is None


def test_row_and_hold_follow_each_other(window: Window) -> None:
    window.desk.hold(STUD)
    table = walk(window).table
    assert walk(window).list.currentIndex().row() == table.row_of(STUD)
    press(window, "B/layout/3", CUT)
    assert window.desk.held == "B/layout/3"


def test_pressing_a_piece_in_the_picture_chooses_its_row(window: Window) -> None:
    view = walk(window).view
    place = view.middle_of(STUD)
    assert place is not None
    QTest.mouseClick(view, Qt.MouseButton.LeftButton, pos=place)
    assert window.desk.held == STUD
    assert walk(window).list.currentIndex().row() == walk(window).table.row_of(STUD)


def test_the_count_is_told(window: Window) -> None:
    frame = window.desk.result.frame if window.desk.result else None
    assert frame is not None
    press(window, STUD, NAILED)
    assert walk(window).count.text() == f"1 of {len(frame.members)} cut, 1 nailed"


def test_what_is_done_turns_grey_in_the_picture(window: Window) -> None:
    """The stud's middle is timber at first, and nearer to paper once it is nailed."""
    view = walk(window).view
    before = view.grab().toImage()
    press(window, STUD, NAILED)
    window.desk.hold(None)
    after = view.grab().toImage()
    paper, stud = Theme.day().paper, view.middle_of(STUD)
    assert stud is not None

    def far(image: QImage) -> int:
        colour = image.pixelColor(stud)
        return abs(colour.red() - paper.red()) + abs(colour.blue() - paper.blue())

    assert far(after) < far(before) / 2
