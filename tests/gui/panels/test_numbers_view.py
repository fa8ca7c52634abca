"""A number opens its working right below it, by mouse and by key; it can be copied."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from gui.desk import Desk
from gui.held import Held
from gui.panels.number_button import NumberButton
from loft import DOOR, STUD, desk_of


class Panel:
    """The right side with the stud at 31 1/4 held, shown offscreen."""

    def __init__(self, qtbot: QtBot) -> None:
        self.desk: Desk = desk_of()
        self.held = Held(self.desk)
        qtbot.addWidget(self.held)
        self.held.resize(380, 900)
        with qtbot.waitExposed(self.held):
            self.held.show()
        self.hold(STUD)

    def hold(self, key: str | None) -> None:
        self.desk.hold(key)
        QTest.qWait(1)

    def number(self, caption: str) -> NumberButton:
        shown = self.held.numbers.shown
        return next(b for b in shown if b.figure and b.figure.caption == caption)

    def click(self, caption: str) -> None:
        QTest.mouseClick(self.number(caption), Qt.MouseButton.LeftButton)
        QTest.qWait(1)

    @property
    def plain(self) -> list[str]:
        view = self.held.numbers.working
        return view.plain.splitlines() if view.isVisible() else []


@pytest.fixture
def panel(qtbot: QtBot) -> Panel:
    return Panel(qtbot)


LONG = [
    "At its right edge, face A",
    # The roof is 45 degrees: 60 + 32 3/4; the plate takes 1.5 x sqrt 2 = 2.1213.
    'roof above here\t92 3/4"',
    'top plate on the slope, 1 1/2" ÷ cos 45°\t− 2 1/8"',
    'sole plate\t− 1 1/2"',
    '=\t89 1/8"',
]


def test_a_click_opens_the_working_and_another_closes_it(panel: Panel) -> None:
    assert panel.plain == []
    panel.click("Long point")
    assert panel.plain == LONG
    assert panel.number("Long point").isChecked()
    panel.click("Long point")
    assert panel.plain == []


def test_it_stands_below_its_number_and_above_the_next_row(panel: Panel) -> None:
    panel.click("Long point")
    view = panel.held.numbers.working.geometry()
    assert view.top() >= panel.number("Long point").geometry().bottom()
    assert view.bottom() <= panel.number("Cut, set from square").geometry().top()


def test_one_is_open_at_a_time(panel: Panel) -> None:
    panel.click("Long point")
    panel.click("Mark on sole plate B17")
    assert panel.plain == [
        "Along the floor",
        '2 × 16" on center\t32"',
        'half a stud\t− 3/4"',
        '=\t31 1/4"',
    ]
    assert not panel.number("Long point").isChecked()


@pytest.mark.parametrize("key", [Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space])
def test_keys_open_it_and_escape_closes_it(panel: Panel, key: Qt.Key) -> None:
    number = panel.number("Long point")
    number.setFocus()
    QTest.keyClick(number, key)
    assert panel.plain == LONG
    QTest.keyClick(number, Qt.Key.Key_Escape)
    assert panel.plain == []
    assert panel.desk.held == STUD


def test_tab_goes_from_number_to_number(panel: Panel) -> None:
    first, second = panel.number("Long point"), panel.number("Short point")
    panel.held.activateWindow()
    first.setFocus()
    QTest.keyClick(first, Qt.Key.Key_Tab)
    assert panel.held.focusWidget() is second


def test_what_is_open_follows_from_thing_to_thing(panel: Panel) -> None:
    panel.click("Long point")
    panel.hold("B/layout/1")
    assert panel.plain[1] == 'roof above here\t76 3/4"'
    panel.hold(DOOR)
    assert panel.plain == []
    panel.hold(STUD)
    assert panel.plain == LONG


def test_what_has_no_working_does_not_open(panel: Panel) -> None:
    panel.click("Stock")
    assert panel.plain == []
    assert panel.number("Stock").focusPolicy() is Qt.FocusPolicy.NoFocus


def test_the_whole_is_copied_as_text(panel: Panel) -> None:
    panel.click("Long point")
    view = panel.held.numbers.working
    QTest.mouseClick(view.copy, Qt.MouseButton.LeftButton)
    assert QGuiApplication.clipboard().text().splitlines() == LONG
    QGuiApplication.clipboard().clear()
    QTest.keyClick(view.copy, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    assert QGuiApplication.clipboard().text().splitlines() == LONG


def test_of_the_wall_itself(panel: Panel) -> None:
    panel.hold(None)
    panel.click("Studs")
    assert panel.plain == ["Studs", "at the ends\t2", "of the layout\t+ 5", "=\t7"]


def test_a_number_says_what_it_is_to_a_reader(panel: Panel) -> None:
    assert panel.number("Long point").accessibleName() == 'Long point: 89 1/8"'
    panel.click("Long point")
    assert panel.held.numbers.working.text.accessibleDescription().splitlines() == LONG


def test_every_number_of_everything_in_a_wall_opens(panel: Panel) -> None:
    result = panel.desk.result
    assert result is not None
    for key in [None, DOOR, "B/box-1", *(key for key, _ in result.labels)]:
        panel.hold(key)
        for button in panel.held.numbers.shown:
            if button.figure is None or button.figure.number is None:
                continue
            button.click()
            assert panel.plain, (key, button.figure.caption)
            button.click()
