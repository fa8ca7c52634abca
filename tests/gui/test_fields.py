"""Fields: what they take, what they refuse, what they keep."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from core.lengths import Length, System, Tape, Unit
from gui.fields import Choice, Field, LengthField, PitchField, TextField, Tick, shown
from loft import desk_of

KEY = Qt.Key


@pytest.mark.parametrize(
    ("length", "text"),
    [
        (Length.of_inches(63.5), "63 1/2 in"),
        (Length(1612.9, Unit.FEET), "5' 3 1/2\""),
        (Length.of_mm(1613.0), "1613 mm"),
        (Length.of_mm(1612.93217123), '63 1/2"'),
        (Length(1.5 * 25.4, Unit.INCH), '1 1/2"'),
    ],
)
def test_a_length_shows_as_written_unless_nobody_would_write_it_so(
    length: Length, text: str
) -> None:
    assert shown(length, Tape.usual(System.INCH)) == text


class Bench:
    """A field in a window, beside another that can take the focus, and all that it stated."""

    def __init__(self, qtbot: QtBot, field: Field) -> None:
        self.window, self.field, self.other = QWidget(), field, TextField("other")
        column = QVBoxLayout(self.window)
        for widget in (field, field.note, self.other):
            column.addWidget(widget)
        self.stated: list[object] = []
        field.stated.connect(self.stated.append)
        qtbot.addWidget(self.window)
        with qtbot.waitExposed(self.window):
            self.window.show()
        self.window.activateWindow()
        field.setFocus()

    def type(self, text: str, key: Qt.Key | None = KEY.Key_Return) -> None:
        self.field.selectAll()
        QTest.keyClicks(self.field, text)
        if key is not None:
            QTest.keyClick(self.field, key)


@pytest.fixture
def bench(qtbot: QtBot) -> Bench:
    bench = Bench(qtbot, LengthField("Width", desk_of()))
    bench.field.show_text("34 in")
    return bench


@pytest.mark.parametrize(
    ("text", "length"),
    [
        ("36", Length.of_inches(36)),
        ("3' 1 1/2\"", Length.of_inches(37.5, Unit.FEET)),
        ("900 mm", Length(900.0, Unit.MM)),
    ],
)
def test_enter_states_what_was_typed_in_its_own_unit(
    bench: Bench, text: str, length: Length
) -> None:
    bench.type(text)
    assert bench.stated == [length]


def test_leaving_the_field_states_it_once(bench: Bench, qtbot: QtBot) -> None:
    bench.type("36", key=None)
    bench.other.setFocus()
    qtbot.waitUntil(lambda: bench.stated == [Length.of_inches(36)])
    bench.field.show_text("36 in")
    bench.field.setFocus()
    bench.other.setFocus()
    assert len(bench.stated) == 1


def test_the_same_text_states_nothing(bench: Bench) -> None:
    bench.type("34 in")
    assert bench.stated == []


def test_what_cannot_be_read_is_refused_under_the_field(bench: Bench) -> None:
    bench.type("1,613")
    assert bench.stated == []
    assert bench.field.refused
    assert bench.field.note.isVisible()
    assert bench.field.note.text().startswith("“1,613” can be read two ways")
    assert bench.field.text() == "1,613"


def test_a_mended_text_takes_the_sentence_away(bench: Bench) -> None:
    bench.type("1,613")
    bench.type("1613 mm")
    assert bench.stated == [Length(1613.0, Unit.MM)]
    assert not bench.field.refused
    assert not bench.field.note.isVisible()


def test_escape_brings_back_the_last_good_text(bench: Bench) -> None:
    bench.type("abc")
    QTest.keyClick(bench.field, KEY.Key_Escape)
    assert (bench.field.text(), bench.field.refused, bench.stated) == ("34 in", False, [])


def test_escape_while_typing_states_nothing(bench: Bench, qtbot: QtBot) -> None:
    bench.type("36", KEY.Key_Escape)
    bench.other.setFocus()
    qtbot.wait(1)
    assert (bench.field.text(), bench.stated) == ("34 in", [])


def test_what_the_model_refuses_stays_until_the_value_changes(bench: Bench) -> None:
    bench.type("99")
    bench.field.refuse("It does not fit.")
    bench.field.show_text("34 in")
    assert (bench.field.text(), bench.field.note.text()) == ("99", "It does not fit.")
    bench.field.show_text("35 in")
    assert (bench.field.text(), bench.field.refused) == ("35 in", False)


def test_a_value_shown_again_does_not_disturb_typing(bench: Bench) -> None:
    bench.type("3", key=None)
    bench.field.show_text("34 in")
    assert bench.field.text() == "3"


def test_undo_is_left_to_the_window_unless_text_is_being_typed(bench: Bench) -> None:
    def taken() -> bool:
        from PySide6.QtCore import QEvent
        from PySide6.QtGui import QKeyEvent

        control = Qt.KeyboardModifier.ControlModifier
        event = QKeyEvent(QEvent.Type.ShortcutOverride, KEY.Key_Z, control)
        event.ignore()
        QApplication.sendEvent(bench.field, event)
        return event.isAccepted()

    assert not taken()
    bench.type("3", key=None)
    assert taken()


def test_a_pitch_field_reads_pitches(qtbot: QtBot) -> None:
    bench = Bench(qtbot, PitchField("Pitch", desk_of()))
    bench.type("9 in 12")
    bench.type("89°")
    assert [str(getattr(p, "text", "")) for p in bench.stated] == ["9 in 12"]
    assert "80 degrees" in bench.field.note.text()


def test_a_text_field_trims(qtbot: QtBot) -> None:
    bench = Bench(qtbot, TextField("Name"))
    bench.type("  Store ")
    assert bench.stated == ["Store"]


def test_fields_have_names_for_those_who_listen(bench: Bench) -> None:
    assert bench.field.accessibleName() == "Width"


def test_a_choice_offers_words_for_values(qtbot: QtBot) -> None:
    choice = Choice("Start", ((1, "one"), (2, "two")))
    qtbot.addWidget(choice)
    chosen: list[object] = []
    choice.chosen.connect(chosen.append)
    choice.show_value(2)
    assert (choice.currentText(), chosen) == ("two", [])
    choice.setFocus()
    QTest.keyClick(choice, KEY.Key_Up)
    assert chosen == [1]
    choice.show_value(3)
    assert choice.currentIndex() == -1


def test_the_wheel_never_changes_a_choice(qtbot: QtBot) -> None:
    choice = Choice("Start", ((1, "one"), (2, "two")))
    qtbot.addWidget(choice)
    choice.show_value(1)
    choice.setFocus()
    event = QWheelEvent(
        QPointF(5, 5),
        QPointF(5, 5),
        QPoint(0, 0),
        QPoint(0, -120),
        Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier,
        Qt.ScrollPhase.NoScrollPhase,
        False,
    )
    QApplication.sendEvent(choice, event)
    assert choice.currentText() == "one"


def test_a_tick_is_painted_with_its_mark(qtbot: QtBot) -> None:
    tick = Tick("Flat ceiling")
    qtbot.addWidget(tick)
    chosen: list[bool] = []
    tick.chosen.connect(chosen.append)
    bare = tick.grab().toImage()
    tick.click()
    assert chosen == [True]
    assert tick.grab().toImage() != bare
