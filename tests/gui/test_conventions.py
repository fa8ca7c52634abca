"""What every window does: recent files, dropped files, the card, help, texts, what-is-this."""

from __future__ import annotations

import importlib.resources
import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, QMimeData, QPointF, Qt, QUrl
from PySide6.QtGui import QDropEvent, QHelpEvent, QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel, QToolTip
from pytestqt.qtbot import QtBot

import resources
from asked import Asked
from core.model import SiteRecord
from core.storage import Document, save
from gui.asking import Leave
from gui.desk import Desk
from gui.help_page import help_text
from gui.keeping import Fleeting, Kept
from gui.sizes import set_text_step, text_scale
from gui.theme import Theme
from gui.tips import answer
from gui.window import Window
from loft import loft


@pytest.fixture
def kept() -> Kept:
    return Kept(Fleeting())


@pytest.fixture
def window(qtbot: QtBot, kept: Kept) -> Iterator[Window]:
    asked = Asked(leaves=Leave.DISCARD)
    window = Window(Desk(Document(loft(), SiteRecord())), Theme.day(), None, asked, kept)
    qtbot.addWidget(window)
    window.resize(1400, 860)
    window.show()
    yield window
    set_text_step(0)


@pytest.fixture
def saved(tmp_path: Path) -> Path:
    path = tmp_path / "loft & barn.eave"
    save(path, Document(loft(), SiteRecord()))
    return path


def do(window: Window, name: str) -> None:
    window.menus.actions[f"action.{name}"].trigger()


def drop(window: Window, *paths: Path) -> None:
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path)) for path in paths])
    copy, left = Qt.DropAction.CopyAction, Qt.MouseButton.LeftButton
    window.dropEvent(QDropEvent(QPointF(5, 5), copy, data, left, Qt.KeyboardModifier.NoModifier))


def test_a_dropped_project_is_opened_and_remembered(
    window: Window, saved: Path, kept: Kept
) -> None:
    drop(window, saved)
    assert window.files.path == saved
    assert kept.recent == (saved,)


@pytest.mark.parametrize("names", [["a.pdf"], ["a.eave", "b.eave"], []])
def test_what_is_no_project_is_told(window: Window, tmp_path: Path, names: list[str]) -> None:
    drop(window, *(tmp_path / name for name in names))
    assert window.files.path is None
    assert window.foot.text().startswith("Drop one project at a time")


def test_a_recent_file_is_opened_from_the_menu(window: Window, saved: Path, kept: Kept) -> None:
    kept.note(saved)
    window.recent.fill()
    first, *_ = window.menus.recent.actions()
    assert first.text() == "&1  loft && barn.eave"
    first.trigger()
    assert window.files.path == saved


def test_with_nothing_recent_the_menu_says_so(window: Window, saved: Path, kept: Kept) -> None:
    (only,) = window.menus.recent.actions()
    assert (only.text(), only.isEnabled()) == ("Nothing yet", False)
    kept.note(saved)
    window.recent.fill()
    window.menus.recent.actions()[-1].trigger()
    window.recent.fill()
    assert [a.text() for a in window.menus.recent.actions()] == ["Nothing yet"]


@pytest.mark.parametrize(("name", "title"), [("demo-inch", "inch"), ("demo-metric", "metric")])
def test_a_demo_has_no_file_so_it_stays_as_it_is(window: Window, name: str, title: str) -> None:
    do(window, name)
    assert window.files.path is None
    assert window.desk.is_clean
    assert window.desk.project.system.value == title
    assert window.foot.text().startswith("This is a demo")


def test_the_card_greets_once(window: Window, kept: Kept) -> None:
    assert window.card.isVisible()
    QTest.mouseClick(window.card.open_demo, Qt.MouseButton.LeftButton)
    assert len(window.desk.project.walls) == 5
    QTest.mouseClick(window.card.done, Qt.MouseButton.LeftButton)
    assert not window.card.isVisible()
    assert kept.welcomed
    do(window, "card")
    assert window.card.isVisible()


def test_help_opens_beside_the_work(window: Window) -> None:
    do(window, "help")
    assert window.help_page.isVisible()
    assert not window.help_page.isModal()
    shown = window.help_page.page.toPlainText()
    assert "sole plate" in shown
    assert "It sizes nothing for load" in shown
    window.help_page.close()


def test_help_asks_for_no_network(window: Window) -> None:
    assert "http" not in help_text(window.desk.wording)


def test_larger_texts_reach_the_sheet_and_the_fields(window: Window) -> None:
    before, high = window.sheet.density, window.held.forms.wall.sizeHint().height()
    do(window, "larger")
    assert text_scale() == 1.15
    assert window.sheet.density == pytest.approx(before * 1.15)
    assert window.held.forms.wall.sizeHint().height() > high
    do(window, "smaller")
    assert window.sheet.density == pytest.approx(before)


def test_resting_on_a_word_tells_what_it_is(window: Window) -> None:
    window.desk.show_wall("B")
    window.held.refresh()
    labels = window.held.findChildren(QLabel)
    label = next(x for x in labels if x.text() == "Sole plate" and x.isVisible())
    place = label.rect().center()
    event = QHelpEvent(QEvent.Type.ToolTip, place, label.mapToGlobal(place))
    assert window.event(event)
    assert QToolTip.text().startswith("sole plate: ")
    QToolTip.hideText()


def test_resting_on_bare_panel_tells_nothing(window: Window) -> None:
    bare = window.foot.mapTo(window, window.foot.rect().center())
    event = QHelpEvent(QEvent.Type.WhatsThis, bare, window.mapToGlobal(bare))
    assert not answer(event, window, window.desk.wording)


def test_day_and_night_by_the_menu(window: Window, kept: Kept) -> None:
    do(window, "night")
    assert window.theme.dark
    assert kept.night is True
    do(window, "as-system")
    assert not window.theme.dark
    assert window.menus.actions["action.as-system"].isChecked()


def test_the_window_opens_where_it_was_closed(window: Window, kept: Kept) -> None:
    assert kept.frame is None
    window.close()
    assert kept.frame is not None


def test_the_guide_uses_no_word_that_one_of_the_trades_does_not_know() -> None:
    guide = (importlib.resources.files(resources) / "help" / "guide.md").read_text("utf-8")
    known_to_one = r"\b(headers?|lintels?|sills?|cills?|cripples?|noggins?|miters?|top plates?)\b"
    assert re.findall(known_to_one, guide, re.IGNORECASE) == []


def test_the_keys_of_the_menu_that_the_guide_tells_are_those_of_the_menu(window: Window) -> None:
    guide = (importlib.resources.files(resources) / "help" / "guide.md").read_text("utf-8")
    keys = {
        name: action.shortcut().toString(QKeySequence.SequenceFormat.PortableText)
        for name, action in window.menus.actions.items()
    }
    told = ("action.hold-all", "action.duplicate", "action.what-is-this")
    assert [keys[name] for name in told] == ["Ctrl+A", "Ctrl+D", "Shift+F1"]
    assert all(f"| {keys[name]}" in guide for name in told)
