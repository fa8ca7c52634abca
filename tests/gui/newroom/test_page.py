"""The page of a new room: its questions, its drawings, and how it ends."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QLineEdit, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from core.lengths import Length, System, Unit
from core.model import FloorSeen, Project, RoofBuilt, Room
from gui.newroom.page import NewRoom
from gui.theme import Theme

NONE = Qt.KeyboardModifier.NoModifier
Key = Qt.Key


class Shown:
    """The page, shown offscreen, and what came of it."""

    def __init__(self, qtbot: QtBot, system: System = System.INCH) -> None:
        self.page = NewRoom(system, "New room", Theme.day())
        qtbot.addWidget(self.page)
        self.begun: list[Project] = []
        self.left: list[bool] = []
        self.page.begun.connect(self.begun.append)
        self.page.left.connect(lambda: self.left.append(True))
        self.page.resize(1000, 620)
        with qtbot.waitExposed(self.page):
            self.page.show()
        self.page.activateWindow()
        self.page.start()

    @property
    def room(self) -> Room:
        return self.page.desk.project.room

    @property
    def here(self) -> QWidget:
        found = QApplication.focusWidget()
        assert found is not None
        return found

    def type(self, text: str) -> None:
        QTest.keyClicks(self.here, text)

    def enter(self, times: int = 1) -> None:
        for _ in range(times):
            QTest.keyClick(self.here, Key.Key_Return)


@pytest.fixture
def shown(qtbot: QtBot) -> Shown:
    return Shown(qtbot)


def test_enter_straight_through_gives_the_usual_room(shown: Shown) -> None:
    shown.enter(9)
    assert shown.begun == [shown.page.desk.project]
    assert shown.room.width == Length.of_inches(288, Unit.FEET)
    assert shown.room.floor_seen is FloorSeen.NOBODY


def test_every_question_can_be_answered_with_the_keys(shown: Shown) -> None:
    for text in ("20'", "26' 6\"", "3' 6\"", "8 in 12", "7 1/4", "16"):
        shown.type(text)
        shown.enter()
    assert shown.here is shown.page.questions.roof
    QTest.keyClick(shown.here, Key.Key_Down)
    QTest.keyClick(shown.here, Key.Key_Down)
    shown.enter()
    QTest.keyClick(shown.here, Key.Key_Down)
    shown.enter(2)
    (project,) = shown.begun
    room = project.room
    assert [str(x) for x in (room.width, room.length)] == ["20'", "26' 6\""]
    for slope in (room.left, room.right):
        assert slope is not None
        assert (str(slope.eave_height), slope.pitch.text) == ("3' 6\"", "8 in 12")
    assert [str(x) for x in (room.rafter.timber.width, room.rafter.spacing)] == [
        "7 1/4 in",
        "16 in",
    ]
    assert (room.roof_built, room.floor_seen) == (RoofBuilt.TRUSSES, FloorSeen.PAPERS)


def test_a_refused_answer_keeps_the_keys_and_holds_the_room_back(shown: Shown) -> None:
    shown.type("wide")
    shown.enter()
    field = shown.page.questions.across
    assert (shown.here is field, field.refused, field.note.isVisible()) == (True, True, True)
    shown.page.go.click()
    assert shown.begun == []
    assert shown.here is field
    shown.type("20'")
    shown.enter()
    assert shown.here is shown.page.questions.along


def test_the_drawings_follow_every_answer(shown: Shown) -> None:
    before = shown.page.section.grab().toImage(), shown.page.plan.grab().toImage()
    shown.type("14'")
    shown.enter()
    after = shown.page.section.grab().toImage(), shown.page.plan.grab().toImage()
    assert before[0] != after[0]
    assert before[1] != after[1]


def test_a_handle_of_the_section_answers_too(shown: Shown) -> None:
    spot = shown.page.section.spot("eave/left")
    spot.setFocus()
    QTest.keyClick(spot, Key.Key_Up, Qt.KeyboardModifier.ControlModifier)
    assert shown.page.questions.eave.text() == "31 in"


def test_undo_takes_an_answer_back(shown: Shown) -> None:
    shown.type("20'")
    shown.enter()
    QTest.keyClick(shown.here, Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert shown.page.questions.across.text() == "24'"
    QTest.keyClick(
        shown.here,
        Key.Key_Z,
        Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier,
    )
    assert shown.page.questions.across.text() == "20'"


def test_the_answers_bring_their_cautions_up_at_once(shown: Shown) -> None:
    def said() -> str:
        labels = shown.page.questions.findChildren(QLabel, "standing")
        return " ".join(label.text() for label in labels if label.isVisible())

    assert "somebody qualified look at the floor" in said()
    shown.page.questions.floor.chosen.emit(FloorSeen.LICENSED)
    assert said() == ""
    shown.page.questions.roof.chosen.emit(RoofBuilt.TRUSSES)
    assert "a member of a truss" in said()


def test_the_other_system_has_its_own_words_and_usual_values(shown: Shown) -> None:
    shown.type("20'")
    shown.enter()
    shown.page.units.buttons[System.METRIC].click()
    questions = shown.page.questions
    assert (questions.across.text(), questions.along.text()) == ("6096 mm", "9 m")
    assert shown.page.units.buttons[System.METRIC].isChecked()
    labels = [label.text() for label in questions.findChildren(QLabel)]
    assert "Is the roof of rafters or trussed rafters?" in labels
    shown.page.units.buttons[System.INCH].click()
    assert shown.page.questions.along.text() == "30'"


def test_escape_first_gives_a_text_back_and_then_the_work_at_hand(shown: Shown) -> None:
    shown.type("20")
    QTest.keyClick(shown.here, Key.Key_Escape)
    assert (shown.page.questions.across.text(), shown.left) == ("24'", [])
    QTest.keyClick(shown.here, Key.Key_Escape)
    assert shown.left == [True]


def test_escape_does_not_give_up_answers_by_itself(shown: Shown) -> None:
    said: list[str] = []
    shown.page.said.connect(said.append)
    shown.type("20'")
    shown.enter()
    QTest.keyClick(shown.here, Key.Key_Escape)
    assert shown.left == []
    assert shown.here is shown.page.back
    assert said[-1] == "Back gives up what was answered here."
    shown.enter()
    assert shown.left == [True]


def test_begin_takes_the_text_that_is_still_being_typed(shown: Shown) -> None:
    shown.type("20'")
    shown.page.begin()
    assert str(shown.begun[0].room.width) == "20'"


def test_tab_goes_through_questions_then_buttons_then_the_section(shown: Shown) -> None:
    questions = shown.page.questions
    wanted = [
        *questions.asked,
        shown.page.back,
        shown.page.go,
        shown.page.section.spot("eave/left"),
    ]
    for widget in wanted:
        assert shown.here is widget, shown.here.accessibleName()
        QTest.keyClick(shown.here, Key.Key_Tab)


def test_everything_that_takes_the_keys_has_a_name(shown: Shown) -> None:
    for widget in shown.page.findChildren(QWidget):
        takes = widget.focusPolicy() & Qt.FocusPolicy.TabFocus
        if takes and widget.isVisible():
            text = widget.text() if isinstance(widget, QPushButton) else ""
            assert widget.accessibleName() or text, widget


def test_fields_tell_how_to_measure(shown: Shown) -> None:
    told = [
        w.accessibleDescription() for w in shown.page.questions.asked if isinstance(w, QLineEdit)
    ]
    assert len(told) == 6
    assert all(told)


@pytest.mark.parametrize("system", list(System))
@pytest.mark.parametrize("size", [(1024, 625), (1400, 805)])
def test_no_question_is_clipped(qtbot: QtBot, system: System, size: tuple[int, int]) -> None:
    shown = Shown(qtbot, system)
    shown.page.resize(*size)
    QApplication.processEvents()
    for label in shown.page.questions.findChildren(QLabel):
        if label.isVisible() and label.text():
            high = label.heightForWidth(label.width()) if label.wordWrap() else 0
            assert label.height() >= high, label.text()
            assert label.width() >= label.minimumSizeHint().width(), label.text()
    for field in shown.page.questions.findChildren(QLineEdit):
        wide = field.fontMetrics().horizontalAdvance(field.text()) + 18
        assert wide <= field.width(), field.text()
