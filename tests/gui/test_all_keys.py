"""Everything in the window is reached by the keys, in the order it is read, under a name."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator
from itertools import pairwise

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible, QAction
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from asked import Asked
from core.lengths import System
from core.model import TradeWords
from gui.asking import Leave
from gui.edits import set_habits
from gui.panels.section import Section
from gui.sketcher.typed import Typed
from gui.theme import Theme
from gui.window import Window
from loft import BOX, DOOR, STUD, desk_of


@pytest.fixture
def window(qtbot: QtBot) -> Iterator[Window]:
    asked = Asked(leaves=Leave.DISCARD)
    window = Window(desk_of(), Theme.day(), ask=asked)
    qtbot.addWidget(window)
    window.resize(1400, 860)
    with qtbot.waitExposed(window):
        window.show()
    window.activateWindow()
    yield window
    asked.leaves = Leave.DISCARD


def do(window: Window, name: str) -> None:
    window.menus.actions[f"action.{name}"].trigger()


def unfold(window: Window) -> None:
    for section in window.held.findChildren(Section):
        if not section.isHidden():
            section.button.setChecked(True)


def holds(key: str | None) -> Callable[[Window], None]:
    def put(window: Window) -> None:
        window.desk.hold(key)
        unfold(window)

    return put


def room(window: Window) -> None:
    window.desk.show_room()
    unfold(window)


STATES: dict[str, Callable[[Window], None]] = {
    "wall": holds(None),
    "door": holds(DOOR),
    "stud": holds(STUD),
    "box": holds(BOX),
    "room": room,
    "list": lambda window: do(window, "list"),
    "walk": lambda window: do(window, "walk"),
    "new room": lambda window: window.new_room(System.INCH),
    "first start": lambda window: window.card.setVisible(True),
}


@pytest.fixture(params=STATES)
def state(request: pytest.FixtureRequest, window: Window) -> Window:
    STATES[request.param](window)
    QApplication.processEvents()
    return window


def controls(window: Window) -> list[QWidget]:
    """All that says it can have the keys by Tab, in whatever order."""
    able = Qt.FocusPolicy.TabFocus
    return [
        w
        for w in window.findChildren(QWidget)
        if w.isVisible() and w.isEnabled() and w.window() is window and w.focusPolicy() & able
    ]


def having_keys() -> QWidget:
    """What has the keys now."""
    found = QApplication.focusWidget()
    assert found is not None
    return found


def walked(first: QWidget, key: Qt.Key, most: int) -> list[QWidget]:
    """What has the keys after each Tab, until it comes round to the first."""
    first.setFocus()
    found = [first]
    for _ in range(most):
        QTest.keyClick(having_keys(), key)
        there = having_keys()
        if there is first:
            break
        # The figures on a drawing have the keys in between.
        if not isinstance(there, Typed):
            found.append(there)
    return found


def test_tab_reaches_every_control_once(state: Window) -> None:
    there = controls(state)
    found = walked(there[0], Qt.Key.Key_Tab, len(there) + 20)
    assert Counter(map(called, found)) == Counter(map(called, there))
    back = walked(there[0], Qt.Key.Key_Backtab, len(there) + 20)
    assert back[1:] == found[:0:-1]


def test_every_control_has_a_name(state: Window) -> None:
    assert [type(w).__name__ for w in controls(state) if not called(w)] == []


def test_the_right_side_is_gone_through_from_top_to_bottom(state: Window) -> None:
    held, column = state.held, state.held.widget()
    if column is None or not held.isVisible():
        return
    inside = [w for w in walked(held, Qt.Key.Key_Tab, 300) if column.isAncestorOf(w)]
    middles = [(w.mapTo(column, w.rect().center()), w) for w in inside]
    for (before, _), (after, widget) in pairwise(middles):
        beside = abs(after.y() - before.y()) < widget.height()
        assert after.y() > before.y() or (beside and after.x() > before.x()), called(widget)


def called(widget: QWidget) -> str:
    """What a screen reader says of it."""
    interface = QAccessible.queryAccessibleInterface(widget)
    return interface.text(QAccessible.Text.Name)


def test_the_keys_go_from_part_to_part(window: Window) -> None:
    parts = (window.walls, window.middle, window.held)

    def part() -> int:
        return next(n for n, p in enumerate(parts) if p.isAncestorOf(having_keys()))

    window.sheet.setFocus()
    went = []
    for _ in range(3):
        QTest.keyClick(having_keys(), Qt.Key.Key_F6)
        went.append(part())
    assert went == [2, 0, 1]
    assert window.sheet.hasFocus()
    shift = Qt.KeyboardModifier.ShiftModifier
    for _ in range(3):
        QTest.keyClick(having_keys(), Qt.Key.Key_F6, shift)
        went.append(part())
    assert went[3:] == [0, 2, 1]


def test_the_keys_go_from_questions_to_drawings(window: Window) -> None:
    window.new_room(System.INCH)
    assert window.page is not None
    asking, drawings = window.page.parts
    QTest.keyClick(having_keys(), Qt.Key.Key_F6)
    assert drawings.isAncestorOf(having_keys())
    QTest.keyClick(having_keys(), Qt.Key.Key_F6)
    assert asking.isAncestorOf(having_keys())


def actions(window: Window) -> list[QAction]:
    menus = [window.menuBar()]
    found: list[QAction] = []
    while menus:
        for action in menus.pop().actions():
            menu = action.menu()
            if isinstance(menu, QWidget):
                menus.append(menu)  # type: ignore[arg-type]
            if not action.isSeparator():
                found.append(action)
    return found


def test_every_action_has_a_text_and_no_two_have_one_shortcut(window: Window) -> None:
    there = actions(window)
    assert len(there) > 50
    assert [a for a in there if not a.text().strip("&. ")] == []
    keys = Counter(key.toString() for action in there for key in action.shortcuts())
    assert [key for key, times in keys.items() if times > 1] == []


@pytest.mark.parametrize("words", TradeWords)
def test_in_a_menu_no_two_entries_have_one_letter(window: Window, words: TradeWords) -> None:
    window.desk.commit("words", set_habits(window.desk.project, words=words))
    for top in window.menuBar().actions():
        menu = top.menu()
        texts = [action.text().lower() for action in menu.actions()]  # type: ignore[attr-defined]
        letters = Counter(text[text.index("&") + 1] for text in texts if "&" in text)
        assert {letter: n for letter, n in letters.items() if n > 1} == {}, top.text()


def test_what_is_held_never_opens_a_window_of_its_own(window: Window) -> None:
    for key in (DOOR, STUD, BOX, None):
        window.desk.hold(key)
        assert QApplication.activeWindow() is window
