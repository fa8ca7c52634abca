"""Units and words of the trade are chosen in the window, which is then made anew in place."""

from __future__ import annotations

from pathlib import Path

import msgspec
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QComboBox
from pytestqt.qtbot import QtBot

from asked import Asked
from core.lengths import Length, System
from core.model import SiteRecord, TradeWords
from core.storage import Document, load, save
from gui.asking import Leave
from gui.commands import main
from gui.desk import Desk
from gui.edits import set_habits
from gui.fields import LengthField
from gui.panels.section import Section
from gui.theme import Theme
from gui.window import Window
from loft import INCH, desk_of, loft


@pytest.fixture
def desk() -> Desk:
    return desk_of()


@pytest.fixture
def window(qtbot: QtBot, desk: Desk, tmp_path: Path) -> Window:
    asked = Asked(leaves=Leave.DISCARD, saves=tmp_path / "mine.eave")
    window = Window(desk, Theme.day(), ask=asked)
    qtbot.addWidget(window)
    window.resize(1400, 860)
    with qtbot.waitExposed(window):
        window.show()
    window.activateWindow()
    desk.show_room()
    unfold(window)
    return window


def unfold(window: Window) -> None:
    section = window.held.part("habits")
    assert isinstance(section, Section)
    QTest.mouseClick(section.button, Qt.MouseButton.LeftButton)


def choice(window: Window, name: str) -> QComboBox:
    shown = (box for box in window.held.forms.habits.findChildren(QComboBox))
    return next(box for box in shown if box.accessibleName() == name)


def pick(window: Window, name: str, text: str) -> None:
    """Chooses by the keys, as somebody without a mouse does."""
    box = choice(window, name)
    box.setFocus()
    way = 1 if box.findText(text) > box.currentIndex() else -1
    for _ in range(abs(box.findText(text) - box.currentIndex())):
        QTest.keyClick(box, Qt.Key.Key_Down if way > 0 else Qt.Key.Key_Up)


def undo_text(window: Window) -> str:
    return window.menus.actions["action.undo"].text()


def test_other_units_change_tape_and_bare_numbers_and_no_length(window: Window, desk: Desk) -> None:
    before = desk.project
    pick(window, "Units", "millimeters")
    assert desk.project.system is System.METRIC
    assert (desk.project.room, desk.project.walls) == (before.room, before.walls)
    assert desk.wording.length(before.room.width.mm) == str(round(before.room.width.mm))
    assert undo_text(window) == "&Undo: Units"
    fields = window.held.forms.room.findChildren(LengthField)
    field = next(f for f in fields if f.accessibleName() == "Width between eave walls")
    field.setFocus()
    QTest.keyClick(field, Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
    QTest.keyClicks(field, "7400")
    QTest.keyClick(field, Qt.Key.Key_Return)
    assert desk.project.room.width.mm == 7400
    desk.undo()
    desk.undo()
    assert desk.project == before
    assert choice(window, "Round to").currentText() == "1/16 in."


def test_the_keys_stay_where_they_were(window: Window, desk: Desk) -> None:
    pick(window, "Units", "millimeters")
    assert choice(window, "Units").hasFocus()
    assert choice(window, "Round to").currentText() == "1 mm"
    QTest.keyClick(choice(window, "Units"), Qt.Key.Key_Up)
    assert desk.project.system is System.INCH
    assert choice(window, "Units").hasFocus()


def test_words_go_apart_from_the_units(window: Window, desk: Desk) -> None:
    pick(window, "Words of the trade", "metric trade words")
    assert desk.project.habits.words is TradeWords.METRIC
    assert desk.project.system is System.INCH
    assert undo_text(window) == "&Undo: Words of the trade"
    desk.show_wall("B")
    desk.hold("B/door-1")
    captions = window.held.numbers.accessibleDescription()
    assert captions.startswith('Structural opening 30"')
    desk.undo()
    desk.hold("B/door-1")
    assert window.held.numbers.accessibleDescription().startswith('Rough opening 30"')


def test_units_do_not_change_stated_words(window: Window, desk: Desk) -> None:
    pick(window, "Words of the trade", "US trade words")
    pick(window, "Units", "millimeters")
    assert desk.wording.word("role.header") == "header"
    assert desk.wording.length(10 * INCH) == "254"


def test_the_walk_goes_on_in_other_words(window: Window, desk: Desk) -> None:
    desk.show_wall("B")
    window.menus.actions["action.walk"].trigger()
    desk.undo()
    project = desk.project
    desk.show_room()
    pick(window, "Words of the trade", "metric trade words")
    desk.show_wall("B")
    assert window.middle.walks
    assert window.menus.actions["action.walk"].isChecked()
    assert desk.project.walls == project.walls


def test_stated_words_are_in_the_file(window: Window, tmp_path: Path) -> None:
    pick(window, "Words of the trade", "metric trade words")
    window.menus.actions["action.save"].trigger()
    path = tmp_path / "mine.eave"
    assert load(path).project.habits.words is TradeWords.METRIC
    assert '"words": "metric"' in path.read_text(encoding="utf-8")


@pytest.mark.parametrize(
    ("words", "said"), [(TradeWords.US, "the sill of"), (TradeWords.METRIC, "the cill of")]
)
def test_the_command_line_speaks_the_stated_words(
    words: TradeWords, said: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    # A sill half an inch up lies in the sole plate, 1 1/2 in. thick.
    project = set_habits(loft(), words=words)
    wall = next(wall for wall in project.walls if wall.letter == "B")
    low = msgspec.structs.replace(wall.openings[0], sill=Length.of_inches(0.5))
    changed = msgspec.structs.replace(wall, openings=(low, *wall.openings[1:]))
    walls = tuple(changed if other is wall else other for other in project.walls)
    path = tmp_path / "low.eave"
    save(path, Document(msgspec.structs.replace(project, walls=walls), SiteRecord()))
    assert main(["check", str(path)]) == 1
    assert said in capsys.readouterr().out
