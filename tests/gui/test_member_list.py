"""The list of members below the sheet: it follows what is held both ways, and is copied."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QSignalSpy, QTest
from pytestqt.qtbot import QtBot

from asked import Asked
from core.drawing.member_list import Order
from gui.asking import Leave
from gui.edits import move_opening
from gui.member_list import MemberList
from gui.theme import Theme
from gui.window import Window
from loft import DOOR, INCH, STUD, desk_of


class Shown:
    """A window with the list shown through its menu."""

    def __init__(self, qtbot: QtBot, tmp_path: Path) -> None:
        self.desk = desk_of()
        self.window = Window(
            self.desk, Theme.day(), ask=Asked(saves=tmp_path / "mine.eave", leaves=Leave.DISCARD)
        )
        qtbot.addWidget(self.window)
        self.window.resize(1300, 900)
        self.desk.show_wall("B")
        with qtbot.waitExposed(self.window):
            self.window.show()
        self.turn()

    def turn(self) -> None:
        self.window.menus.actions["action.list"].trigger()
        QTest.qWait(1)

    @property
    def members(self) -> MemberList:
        return self.window.middle.wall.listed.list

    def labels(self) -> list[str]:
        return [row.cells[0] for row in self.members.model.rows]

    def chosen(self) -> list[str]:
        rows = self.members.table.selectionModel().selectedRows()
        return sorted(self.members.model.rows[index.row()].key for index in rows)

    def click(self, label: str, modifier: Qt.KeyboardModifier | None = None) -> None:
        table = self.members.table
        index = self.members.model.index(self.labels().index(label), 0)
        table.scrollTo(index)
        place: QPoint = table.visualRect(index).center()
        keys = modifier or Qt.KeyboardModifier.NoModifier
        QTest.mouseClick(table.viewport(), Qt.MouseButton.LeftButton, keys, place)

    def key(self, key: Qt.Key, modifier: Qt.KeyboardModifier | None = None) -> None:
        QTest.keyClick(self.members.table, key, modifier or Qt.KeyboardModifier.NoModifier)


@pytest.fixture
def shown(qtbot: QtBot, tmp_path: Path) -> Shown:
    return Shown(qtbot, tmp_path)


def test_the_menu_shows_it_below_the_sheet_and_hides_it(shown: Shown) -> None:
    assert shown.members.isVisible()
    assert shown.window.menus.actions["action.list"].isChecked()
    below = shown.members.mapTo(shown.window, QPoint(0, 0)).y()
    assert below >= shown.window.sheet.mapTo(shown.window, QPoint(0, 0)).y() + 300
    shown.turn()
    assert not shown.members.isVisible()


def test_it_stays_shown_from_wall_to_room_and_back(shown: Shown) -> None:
    shown.desk.show_room()
    assert not shown.members.isVisible()
    shown.desk.show_wall("B")
    assert shown.members.isVisible()


def test_a_click_on_a_row_takes_hold_of_the_piece(shown: Shown) -> None:
    shown.click("B3")
    assert shown.desk.held == STUD
    assert shown.chosen() == [STUD]


def test_several_rows_are_held_at_once(shown: Shown) -> None:
    shown.click("B3")
    shown.click("B4", Qt.KeyboardModifier.ControlModifier)
    assert set(shown.desk.holding) == {STUD, "B/layout/3"}
    assert shown.desk.held == "B/layout/3"


def test_holding_a_piece_chooses_its_row_and_brings_it_into_sight(shown: Shown) -> None:
    shown.desk.hold("B/sole")
    assert shown.chosen() == ["B/sole"]
    index = shown.members.model.index(shown.labels().index("B17"), 0)
    assert (
        shown.members.table.viewport()
        .rect()
        .contains(shown.members.table.visualRect(index).center())
    )
    shown.desk.hold(STUD, ("B/layout/1",))
    assert shown.chosen() == ["B/layout/1", STUD]


def test_what_is_no_piece_chooses_none_and_stays_held(shown: Shown) -> None:
    shown.click("B3")
    shown.desk.hold(DOOR)
    assert shown.chosen() == []
    assert shown.desk.held == DOOR


def test_letting_go_lets_go_of_the_rows(shown: Shown) -> None:
    shown.click("B3")
    shown.key(Qt.Key.Key_Escape)
    assert shown.desk.held is None
    assert shown.chosen() == []


def test_arrow_keys_go_from_piece_to_piece(shown: Shown) -> None:
    shown.click("B3")
    shown.key(Qt.Key.Key_Down)
    assert shown.desk.held == "B/layout/3"
    shown.key(Qt.Key.Key_Up)
    assert shown.desk.held == STUD


def test_tab_leaves_the_table(shown: Shown) -> None:
    shown.window.activateWindow()
    shown.members.table.setFocus()
    shown.key(Qt.Key.Key_Tab)
    assert shown.window.focusWidget() is not shown.members.table


def test_sorted_by_label_or_in_cutting_order_with_the_same_piece_held(shown: Shown) -> None:
    shown.click("B3")
    shown.members.order.setFocus()
    QTest.keyClick(shown.members.order, Qt.Key.Key_Down)
    assert shown.labels()[0] != "B1"
    assert sorted(shown.labels(), key=lambda label: int(label[1:])) != shown.labels()
    assert (shown.desk.held, shown.chosen()) == (STUD, [STUD])


def test_the_table_is_copied_as_text_and_in_html(shown: Shown) -> None:
    shown.click("B3")
    shown.key(Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    data = QGuiApplication.clipboard().mimeData()
    lines = data.text().splitlines()
    assert lines[0].split("\t")[:4] == ["Label", "What it is", "Section", "Long point"]
    assert len(lines) == 1 + len(shown.labels())
    assert lines[3].split("\t")[:4] == ["B3", "stud", "2x4", '89 1/8"']
    assert data.html().count("<tr>") == len(lines)


def test_of_several_rows_only_those_are_copied(shown: Shown) -> None:
    shown.click("B3")
    shown.click("B4", Qt.KeyboardModifier.ControlModifier)
    QTest.mouseClick(shown.members.copy, Qt.MouseButton.LeftButton)
    lines = QGuiApplication.clipboard().text().splitlines()
    assert [line.split("\t")[0] for line in lines] == ["Label", "B3", "B4"]


def test_an_edit_tells_only_of_the_rows_that_changed(shown: Shown, qtbot: QtBot) -> None:
    qtbot.wait(150)
    changed, reset = (
        QSignalSpy(shown.members.model.dataChanged),
        QSignalSpy(shown.members.model.modelReset),
    )
    shown.desk.commit("move", move_opening(shown.desk.project, "B", "door-1", 61 * INCH))
    qtbot.waitUntil(lambda: changed.count() > 0)
    told = {shown.members.model.rows[changed.at(n)[0].row()].key for n in range(changed.count())}
    assert reset.count() == 0
    assert {key for key in told if not key.startswith(DOOR)} == set()


def test_hidden_it_does_no_work(shown: Shown, qtbot: QtBot) -> None:
    shown.turn()
    qtbot.wait(150)
    before = shown.members.model.rows
    shown.desk.commit("move", move_opening(shown.desk.project, "B", "door-1", 61 * INCH))
    qtbot.wait(150)
    assert shown.members.model.rows is before
    shown.turn()
    assert shown.members.model.rows != before


def test_it_is_named_for_a_reader(shown: Shown) -> None:
    table = shown.members.table
    assert table.accessibleName() == "Members of the wall"
    index = shown.members.model.index(2, 3)
    assert index.data(Qt.ItemDataRole.AccessibleTextRole) == 'Long point 89 1/8"'
    assert shown.members.order.accessibleName() == "Sorted"
    assert len(Order) == shown.members.order.count()
