"""Which texts of a window do not show whole; run by itself, those of every state of one."""

from __future__ import annotations

import json
import sys
from collections.abc import Iterator

from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QCheckBox,
    QComboBox,
    QLabel,
    QLineEdit,
    QPushButton,
    QToolButton,
    QWidget,
)

from asked import Asked
from core.lengths import System
from gui.panels.section import Section
from gui.theme import Theme
from gui.window import Window, application
from loft import BOX, DOOR, STUD, desk_of


def clipped(whole: QWidget) -> list[str]:
    """The texts in it that do not show whole."""
    labels = [label.text() for label in whole.findChildren(QLabel) if not _shows_label(label)]
    fields = [field.text() for field in whole.findChildren(QLineEdit) if not _shows_field(field)]
    boxes = [box.currentText() for box in whole.findChildren(QComboBox) if not _shows_box(box)]
    buttons = whole.findChildren(QAbstractButton)
    return labels + fields + boxes + [b.text() for b in buttons if not _shows_button(b)]


def _shows_label(label: QLabel) -> bool:
    if not label.isVisible() or not label.text():
        return True
    high = label.heightForWidth(label.width()) if label.wordWrap() else 0
    return label.height() >= high and label.width() >= label.minimumSizeHint().width()


def _shows_field(field: QLineEdit) -> bool:
    # Six px of padding, one of frame and two of margin on either side.
    wide = field.fontMetrics().horizontalAdvance(field.text()) + 18
    return not field.isVisible() or wide <= field.width()


def _shows_box(box: QComboBox) -> bool:
    wide = box.fontMetrics().horizontalAdvance(box.currentText()) + 30
    return not box.isVisible() or wide <= box.width()


def _shows_button(button: QAbstractButton) -> bool:
    """Whether a tick, a heading or a button to press has room for its words."""
    plain = isinstance(button, QCheckBox | QPushButton | QToolButton)
    return not plain or not button.isVisible() or button.width() >= button.sizeHint().width()


def states(window: Window) -> Iterator[str]:
    """Goes through what the window can show, and gives what each is called."""
    desk = window.desk
    for key in (None, DOOR, STUD, BOX):
        desk.hold(key)
        unfold(window)
        yield f"held {key}"
    desk.hold(None)
    desk.show_room()
    unfold(window)
    yield "room"
    desk.show_wall("B")
    for name in ("list", "walk"):
        window.menus.actions[f"action.{name}"].trigger()
        yield name
        window.menus.actions[f"action.{name}"].trigger()
    for system in System:
        window.new_room(system)
        yield f"new room {system.value}"


def unfold(window: Window) -> None:
    """Unfolds every form that is shown."""
    for section in window.held.findChildren(Section):
        if not section.isHidden():
            section.button.setChecked(True)


def all_clipped(window: Window) -> dict[str, list[str]]:
    """What does not show whole, by the state it does not in; and panels wider than their side."""
    found = {}
    for state in states(window):
        for _ in range(40):
            QTest.qWait(10)
            found[state] = clipped(window) + _cut_off(window)
            if not found[state]:
                break
    return {state: texts for state, texts in found.items() if texts}


def _cut_off(window: Window) -> list[str]:
    column, side = window.held.widget(), window.held.viewport()
    wide = column is not None and column.isVisible() and column.width() > side.width()
    return ["the right side"] if wide else []


def larger(window: Window, steps: int) -> None:
    """Makes the texts so many steps larger, or smaller below nought, from the menu."""
    name = "larger" if steps > 0 else "smaller"
    for _ in range(abs(steps)):
        window.menus.actions[f"action.{name}"].trigger()


def main() -> int:
    """Prints the density of the screen, and what is clipped in a window of the usual size."""
    made = application([])
    window = Window(desk_of(), Theme.day(), ask=Asked())
    window.resize(1400, 860)
    window.show()
    made.processEvents()
    print(json.dumps([window.devicePixelRatioF(), all_clipped(window)]))
    return 0


if __name__ == "__main__":
    sys.exit(main())
