"""Hundreds of careless steps: whatever is pressed, dragged and typed, nothing breaks.

After the steps the work can be saved and read back, worked out afresh it is the same, and undo goes
back to the very beginning and forth again.
"""

from __future__ import annotations

import os
import random
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from asked import Asked
from core.job import work_out
from core.storage import Document, load, save
from gui.asking import Leave
from gui.commands import main
from gui.desk import Desk
from gui.fields import Choice, Field, Tick
from gui.panels.section import Section
from gui.theme import Theme
from gui.window import Window

STEPS = 10_000 if os.environ.get("EAVEWRIGHT_PROFILE") == "long" else 250
"""Steps for each demo."""

TYPED = (
    *("", "0", "1", "-1", "12", "16 in", "5' 3 1/2\"", "1,613", "1613 mm", "abc", "1e9", "9 in 12"),
    *("38°", "89°", "100 m", "3/0", "½", "24", "2.5", "X", "Store", "999999", "0.001 mm", "7'"),
)
KEYS = (
    *(Qt.Key.Key_Left, Qt.Key.Key_Right, Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_Delete),
    *(Qt.Key.Key_PageDown, Qt.Key.Key_PageUp, Qt.Key.Key_F, Qt.Key.Key_Plus, Qt.Key.Key_Escape),
)
MENU = (
    *("undo", "redo", "undo", "delete", "add-stud", "add-door", "add-access-door", "add-window"),
    *("add-box", "add-fixture", "add-wall", "delete-wall", "put-back", "fit", "night"),
    *("zoom-in", "zoom-out"),
)


class Monkey:
    """Does what comes into its head, the same every time for the same seed."""

    def __init__(self, window: Window, seed: int) -> None:
        self.window, self.desk = window, window.desk
        self.dice = random.Random(seed)
        self.done: list[str] = []

    def step(self) -> None:
        acts: tuple[Callable[[], str], ...] = (
            *(self.drag, self.drag, self.drag, self.keys, self.menu, self.menu),
            *(self.type, self.type, self.choose, self.tick, self.wall, self.hold),
        )
        self.done.append(self.dice.choice(acts)())

    def drag(self) -> str:
        sheet = self.window.middle.paper
        place = self._point()
        by = QPoint(self.dice.randint(-300, 300), self.dice.randint(-100, 100))
        shift = Qt.KeyboardModifier.ShiftModifier
        free = shift if self.dice.random() < 0.2 else Qt.KeyboardModifier.NoModifier
        QTest.mousePress(sheet, Qt.MouseButton.LeftButton, free, place)
        for part in (0.3, 0.7, 1.0):
            QTest.mouseMove(sheet, place + by * part)
        if self.dice.random() < 0.3:
            QTest.keyClick(sheet, Qt.Key.Key_Escape)
        QTest.mouseRelease(sheet, Qt.MouseButton.LeftButton, free, place + by)
        return f"drag {place} {by}"

    def keys(self) -> str:
        key = self.dice.choice(KEYS)
        for _ in range(self.dice.randint(1, 4)):
            QTest.keyClick(self.window.middle.paper, key)
        return f"keys {key}"

    def menu(self) -> str:
        name = self.dice.choice(MENU)
        self.window.menus.actions[f"action.{name}"].trigger()
        return name

    def type(self) -> str:
        fields = [f for f in self.window.held.findChildren(Field) if f.isVisible()]
        field = self.dice.choice([f for f in fields if f.isEnabled()] or [None])
        if field is None:
            return "no field"
        text = self.dice.choice(TYPED)
        field.setFocus()
        field.selectAll()
        QTest.keyClicks(field, text)
        QTest.keyClick(field, self.dice.choice((Qt.Key.Key_Return, Qt.Key.Key_Tab)))
        return f"type {field.accessibleName()}: {text}"

    def choose(self) -> str:
        boxes = [b for b in self.window.held.findChildren(Choice) if b.isVisible()]
        box = self.dice.choice(boxes or [None])
        if box is None:
            return "no choice"
        box.setFocus()
        QTest.keyClick(box, self.dice.choice((Qt.Key.Key_Up, Qt.Key.Key_Down)))
        return f"choose {box.accessibleName()}: {box.currentText()}"

    def tick(self) -> str:
        ticks = [t for t in self.window.held.findChildren(Tick) if t.isVisible()]
        tick = self.dice.choice(ticks or [None])
        if tick is None:
            return "no tick"
        tick.click()
        return f"tick {tick.text()}"

    def wall(self) -> str:
        walls = self.window.walls.list
        if walls.count():
            walls.setCurrentRow(self.dice.randrange(walls.count()))
        return f"wall {self.desk.letter}"

    def hold(self) -> str:
        result = self.desk.result
        keys = [key for key, _ in result.labels] if result else []
        self.desk.hold(self.dice.choice([None, *keys]))
        return f"hold {self.desk.held}"

    def _point(self) -> QPoint:
        """Somewhere on the sheet, most often on a thing."""
        sheet, result = self.window.middle.paper, self.desk.result
        members = result.frame.members if result and result.frame else ()
        if not members or self.dice.random() < 0.2:
            return QPoint(self.dice.randrange(sheet.width()), self.dice.randrange(sheet.height()))
        member = self.dice.choice(members)
        x, y = sheet.camera.to_screen(self.dice.choice(member.near))
        return QPoint(round(x) + self.dice.randint(-3, 3), round(y) + self.dice.randint(-3, 3))


@pytest.mark.parametrize("more", [(), ("--metric",)], ids=["inch", "metric"])
def test_nothing_breaks(more: tuple[str, ...], tmp_path: Path, qtbot: QtBot) -> None:
    path = tmp_path / "demo.eave"
    assert main(["demo", *more, "--out", str(path)]) == 0
    start = load(path)
    desk = Desk(start)
    window = Window(desk, Theme.day(), path, Asked(leaves=Leave.DISCARD))
    qtbot.addWidget(window)
    window.resize(1300, 820)
    with qtbot.waitExposed(window):
        window.show()
    for section in window.held.findChildren(Section):
        section.button.click()
    monkey = Monkey(window, seed=20260228)
    try:
        for number in range(STEPS):
            monkey.step()
            if number % 10 == 0:
                QApplication.processEvents()
                window.grab()
            if number % 50 == 0:
                _can_be_kept(desk, tmp_path / "kept.eave")
    except BaseException:
        print("\n".join(monkey.done[-12:]))
        raise
    _can_be_kept(desk, tmp_path / "kept.eave")
    _goes_all_the_way(desk, start)


def _can_be_kept(desk: Desk, path: Path) -> None:
    """What is on the desk is saved and read back, and worked out afresh it is the same."""
    desk.drop_preview()
    save(path, desk.document)
    assert load(path) == desk.document
    assert work_out(desk.project, desk.site) == desk.results


def _goes_all_the_way(desk: Desk, start: Document) -> None:
    while desk.redo_text is not None:
        desk.redo()
    end = desk.document
    steps = 0
    while desk.undo_text is not None:
        desk.undo()
        steps += 1
    assert steps > STEPS / 20
    assert desk.document == start
    assert desk.is_clean
    while desk.redo_text is not None:
        desk.redo()
    assert desk.document == end
