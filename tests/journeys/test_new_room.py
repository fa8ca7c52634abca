"""A new room from nothing: once with the keys alone, once with the pointer and typed numbers.

What is begun is the room that was asked for, and shaping it in the section reaches every wall.
"""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from asked import Asked
from core.job import work_out
from core.lengths import System
from core.model import FloorSeen, RoofBuilt, Room, SiteRecord
from core.storage import Document, load
from core.wording import texts
from gui.asking import Leave
from gui.desk import Desk
from gui.edits import new_project
from gui.newroom.page import NewRoom
from gui.section.section import SectionView
from gui.theme import Theme
from gui.window import Window

INCH = 25.4
LEFT = Qt.MouseButton.LeftButton
NONE = Qt.KeyboardModifier.NoModifier
CTRL = Qt.KeyboardModifier.ControlModifier
Key = Qt.Key


class Work:
    """A window as it opens without a file, offscreen."""

    def __init__(self, qtbot: QtBot, folder: Path) -> None:
        self.asked = Asked(saves=folder / "attic.eave", leaves=Leave.DISCARD)
        document = Document(new_project(System.INCH, "New room"), SiteRecord())
        self.desk = Desk(document)
        self.window = Window(self.desk, Theme.day(), ask=self.asked)
        qtbot.addWidget(self.window)
        self.window.resize(1024, 680)
        with qtbot.waitExposed(self.window):
            self.window.show()
        self.window.activateWindow()

    @property
    def page(self) -> NewRoom:
        page = self.window.page
        assert page is not None
        return page

    @property
    def room(self) -> Room:
        return self.desk.project.room

    @property
    def section(self) -> SectionView:
        return self.window.middle.room.section

    def key(self, key: Qt.Key, modifier: Qt.KeyboardModifier = NONE, times: int = 1) -> None:
        """Presses a key wherever the keys go."""
        for _ in range(times):
            QTest.keyClick(here(), key, modifier)

    def type(self, text: str) -> None:
        """Types a text, each letter wherever the keys go by then."""
        for letter in text:
            QTest.keyClicks(here(), letter)


def here() -> QWidget:
    found = QApplication.focusWidget()
    assert found is not None
    return found


def click(widget: QWidget) -> None:
    QTest.mouseClick(widget, LEFT, NONE, widget.rect().center())


@pytest.fixture
def work(qtbot: QtBot, tmp_path: Path) -> Work:
    return Work(qtbot, tmp_path)


def slopes(room: Room) -> list[tuple[str, str]]:
    found = (room.left, room.right)
    return [(str(s.eave_height), s.pitch.text) for s in found if s is not None]


def test_with_the_keys_alone(work: Work, tmp_path: Path) -> None:
    work.key(Key.Key_N, CTRL)
    work.type("22'")
    work.key(Key.Key_Return)
    work.type("28'")
    work.key(Key.Key_Return)
    work.type("36")
    work.key(Key.Key_Return)
    work.type("33 in at 0, 69 in at 48 in")
    work.key(Key.Key_Return, times=3)
    # The roof: the first answer below "not answered"; the floor stays with nobody.
    work.key(Key.Key_Down)
    work.key(Key.Key_Return, times=3)
    assert work.window.page is None
    assert (str(work.room.width), str(work.room.length)) == ("22'", "28'")
    assert slopes(work.room) == [("36 in", "33 in at 0 in, 69 in at 48 in")] * 2
    assert (work.room.roof_built, work.room.floor_seen) == (RoofBuilt.RAFTERS, FloorSeen.NOBODY)
    assert work.window.middle.paper.hasFocus()

    # From the plan on to the section: the left eave one inch up, the ridge typed over.
    work.key(Key.Key_6, CTRL)
    work.desk.show_room()
    work.section.spot("eave/left").setFocus()
    work.key(Key.Key_Up, CTRL)
    work.key(Key.Key_Tab, times=2)
    assert here() is work.section.spot("ridge")
    work.type("140")
    work.key(Key.Key_Return)
    assert here() is work.section.spot("ridge")
    assert work.section.number_rect("ridge").isValid()
    assert work.desk.undo_text == "Ridge height of the room"

    work.key(Key.Key_S, CTRL)
    saved = load(tmp_path / "attic.eave").project
    assert saved == work.desk.project
    assert work_out(saved, SiteRecord()).buildable


def test_with_the_pointer_and_typed_numbers(work: Work, qtbot: QtBot) -> None:
    work.window.menus.actions["action.new-metric"].trigger()
    questions = work.page.questions
    for field, text in (
        (questions.across, "6400"),
        (questions.along, "9.2 m"),
        (questions.eave, "850"),
        (questions.pitch, "38°"),
        (questions.deep, "200"),
        (questions.apart, "600"),
    ):
        QTest.mouseDClick(field, LEFT, NONE, field.rect().center())
        field.selectAll()
        work.type(text)
    questions.roof.setFocus()
    click(work.page.go)
    assert work.window.page is None
    assert work.desk.project.system is System.METRIC
    assert slopes(work.room) == [("850 mm", "38°")] * 2
    assert [str(x) for x in (work.room.width, work.room.length)] == ["6400 mm", "9.2 m"]

    # In the section the ridge is pulled up until both slopes have 45 degrees.
    section = work.section
    qtbot.waitUntil(section.isVisible)
    start = section.place_of("ridge").toPoint()
    up = round((3200 - 3200 * 0.7813) * section.camera.scale)
    QTest.mousePress(section, LEFT, NONE, start)
    for step in range(1, 5):
        QTest.mouseMove(section, start - QPoint(0, up * step // 4))
    QTest.mouseRelease(section, LEFT, NONE, start - QPoint(0, up))
    assert [pitch for _, pitch in slopes(work.room)] == ["45°", "45°"]
    assert "45° on both sides" in work.window.foot.text()

    # A number is typed over in place.
    QTest.mouseClick(section, LEFT, NONE, section.number_rect("eave/right").center())
    work.type("1000")
    work.key(Key.Key_Return)
    assert slopes(work.room)[1] == ("1000 mm", "45°")


def test_escape_in_the_middle_of_a_pull_leaves_the_room_as_it_was(work: Work) -> None:
    before = work.desk.document
    section = work.section
    start = section.place_of("eave/left").toPoint()
    QTest.mousePress(section, LEFT, NONE, start)
    QTest.mouseMove(section, start - QPoint(0, 30))
    assert work.desk.project != before.project
    work.key(Key.Key_Escape)
    QTest.mouseRelease(section, LEFT, NONE, start - QPoint(0, 30))
    assert work.desk.document == before


def test_every_question_is_in_both_wordings() -> None:
    """The metric one differs where the trade speaks otherwise, and in its examples."""
    differs = {i for i in texts("metric") if i.startswith("question.")}
    assert {"question.pitch-how", "question.roof", "question.metric"} <= differs
