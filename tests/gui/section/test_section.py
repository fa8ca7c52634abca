"""The section in the window: real events on its handles and numbers."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QKeyEvent, QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from core.lengths import Length
from core.model import Room
from gui.desk import Desk
from gui.section.section import SectionView
from gui.theme import Theme
from loft import INCH, desk_of

LEFT = Qt.MouseButton.LeftButton
NONE = Qt.KeyboardModifier.NoModifier
SHIFT = Qt.KeyboardModifier.ShiftModifier
CTRL = Qt.KeyboardModifier.ControlModifier


class Shown:
    """A section on the loft, shown offscreen; px and inches."""

    def __init__(self, qtbot: QtBot) -> None:
        self.desk: Desk = desk_of()
        self.said: list[str] = []
        self.desk.said.connect(self.said.append)
        self.view = SectionView(self.desk, Theme.day())
        qtbot.addWidget(self.view)
        self.view.resize(760, 420)
        with qtbot.waitExposed(self.view):
            self.view.show()
        self.view.activateWindow()

    @property
    def room(self) -> Room:
        return self.desk.project.room

    def at(self, key: str) -> QPoint:
        return self.view.place_of(key).toPoint()

    def press(self, key: str) -> QPoint:
        start = self.at(key)
        QTest.mousePress(self.view, LEFT, NONE, start)
        return start

    def move(self, to: QPoint, modifier: Qt.KeyboardModifier = NONE) -> None:
        event = QMouseEvent(
            QEvent.Type.MouseMove,
            QPointF(to),
            QPointF(self.view.mapToGlobal(to)),
            Qt.MouseButton.NoButton,
            LEFT,
            modifier,
        )
        QApplication.sendEvent(self.view, event)

    def px(self, inches: float) -> int:
        return round(inches * INCH * self.view.camera.scale)

    def drag(self, key: str, right: float, up: float) -> None:
        """Pulls a handle by so many inches, in four steps as a hand would."""
        start = self.press(key)
        for step in range(1, 5):
            self.move(start + QPoint(self.px(right), -self.px(up)) * step / 4)
        QTest.mouseRelease(self.view, LEFT, NONE, start + QPoint(self.px(right), -self.px(up)))


@pytest.fixture
def shown(qtbot: QtBot) -> Shown:
    return Shown(qtbot)


def eaves(room: Room) -> tuple[float, float]:
    assert room.left is not None
    assert room.right is not None
    return tuple(round(s.eave_height.mm / INCH, 3) for s in (room.left, room.right))  # type: ignore[return-value]


def pitches(room: Room) -> tuple[str, str]:
    assert room.left is not None
    assert room.right is not None
    return room.left.pitch.text, room.right.pitch.text


def test_an_eave_pulled_up_is_one_step_of_undo_with_its_name(shown: Shown) -> None:
    shown.drag("eave/left", 0, 12)
    left, right = eaves(shown.room)
    assert left == pytest.approx(60, abs=1)
    assert (right, left % 1) == (48, 0)
    assert shown.desk.undo_text == "Left eave of the room"
    shown.desk.undo()
    assert eaves(shown.room) == (48, 48)


def test_every_wall_follows_while_it_is_pulled(shown: Shown) -> None:
    before = shown.desk.results.wall("B").frame
    start = shown.press("pitch/left/0")
    shown.move(start + QPoint(0, shown.px(20)))
    during = shown.desk.results.wall("B").frame
    assert shown.desk.document.project != shown.desk.project
    assert before is not None
    assert during is not None
    assert during.members[0].long_point < before.members[0].long_point
    QTest.mouseRelease(shown.view, LEFT, NONE, start + QPoint(0, shown.px(20)))
    assert shown.desk.document.project == shown.desk.project


def test_the_ridge_up_changes_both_pitches(shown: Shown) -> None:
    shown.drag("ridge", 0, -30)
    assert pitches(shown.room) == ("9 in 12", "9 in 12")
    assert shown.said[-1] == 'Ridge height 138": a pitch of 9 in 12 on both sides.'
    assert shown.desk.undo_text == "Ridge height of the room"


def test_the_ridge_along_the_width_makes_two_pitches(shown: Shown) -> None:
    shown.drag("ridge", -40, 0)
    assert pitches(shown.room) == ("18 in 12", "9 in 12")
    assert shown.desk.undo_text == "Left run to the ridge of the room"


def test_the_flat_ceiling_and_the_width(shown: Shown) -> None:
    shown.drag("ceiling", 0, -8)
    shown.drag("width", 24, 0)
    assert shown.room.flat_ceiling is not None
    assert shown.room.flat_ceiling.mm / INCH == pytest.approx(100, abs=1)
    assert shown.room.width.mm / INCH == pytest.approx(264, abs=1)


def test_shift_pulls_freely(shown: Shown) -> None:
    start = shown.press("pitch/left/0")
    shown.move(start + QPoint(0, shown.px(17)), SHIFT)
    QTest.mouseRelease(shown.view, LEFT, NONE, start + QPoint(0, shown.px(17)))
    text = pitches(shown.room)[0]
    assert "/" in text
    assert "1/2" not in text


def test_escape_takes_a_pull_back(shown: Shown) -> None:
    before = shown.desk.document
    start = shown.press("eave/right")
    shown.move(start + QPoint(0, -60))
    assert shown.desk.project != before.project
    QTest.keyClick(shown.view.spot("eave/right"), Qt.Key.Key_Escape)
    assert (shown.desk.project, shown.desk.undo_text) == (before.project, None)
    QTest.mouseRelease(shown.view, LEFT, NONE, start + QPoint(0, -60))
    assert shown.desk.document == before


def test_a_click_moves_nothing(shown: Shown) -> None:
    QTest.mouseClick(shown.view, LEFT, NONE, shown.at("ridge"))
    assert shown.desk.undo_text is None
    assert shown.view.spot("ridge").hasFocus()


def test_what_stops_a_pull_is_said_and_the_nearest_stands(shown: Shown) -> None:
    shown.drag("ceiling", 0, 90)
    assert shown.room.flat_ceiling == Length.of_inches(168)
    assert 'the nearest that does is 168"' in shown.said[-1]


def test_arrow_keys_push_and_a_run_of_them_is_one_edit(shown: Shown) -> None:
    spot = shown.view.spot("eave/left")
    spot.setFocus()
    for _ in range(3):
        QTest.keyPress(spot, Qt.Key.Key_Up, CTRL)
    assert shown.desk.undo_text is None
    QTest.keyRelease(spot, Qt.Key.Key_Up, CTRL)
    assert eaves(shown.room) == (51, 48)
    shown.desk.undo()
    assert eaves(shown.room) == (48, 48)


def test_escape_takes_a_run_of_arrow_keys_back(shown: Shown) -> None:
    spot = shown.view.spot("ridge")
    QTest.keyPress(spot, Qt.Key.Key_Left, CTRL)
    assert pitches(shown.room) != ("12 in 12", "12 in 12")
    QTest.keyClick(spot, Qt.Key.Key_Escape)
    assert pitches(shown.room) == ("12 in 12", "12 in 12")


def test_tab_goes_through_the_handles_in_order(shown: Shown) -> None:
    shown.view.spot("eave/left").setFocus()
    order = []
    for _ in range(7):
        held = QApplication.focusWidget()
        assert held is not None
        order.append(getattr(held, "key", ""))
        QTest.keyClick(held, Qt.Key.Key_Tab)
    assert order == [
        *("eave/left", "pitch/left/0", "ridge", "pitch/right/0", "eave/right"),
        *("ceiling", "width"),
    ]


def test_handles_have_names_with_their_values(shown: Shown) -> None:
    assert shown.view.spot("eave/left").accessibleName() == 'Left eave 48"'
    assert shown.view.spot("pitch/right/0").accessibleName() == "Right pitch 12 in 12"
    shown.drag("eave/left", 0, 12)
    assert shown.view.spot("eave/left").accessibleName() != 'Left eave 48"'


def test_enter_types_the_number_over_and_gives_the_keys_back(shown: Shown) -> None:
    spot = shown.view.spot("eave/left")
    spot.setFocus()
    QTest.keyClick(spot, Qt.Key.Key_Return)
    typing = shown.view.typing
    assert typing is not None
    assert (typing.field.text(), typing.field.hasFocus()) == ('48"', True)
    QTest.keyClicks(typing.field, "5'")
    QTest.keyClick(typing.field, Qt.Key.Key_Return)
    assert eaves(shown.room) == (60, 48)
    assert shown.view.typing is None
    assert spot.hasFocus()


def test_a_digit_begins_the_number_anew(shown: Shown) -> None:
    spot = shown.view.spot("pitch/left/0")
    spot.setFocus()
    QTest.keyClicks(spot, "9")
    typing = shown.view.typing
    assert typing is not None
    QTest.keyClicks(typing.field, " in 12")
    QTest.keyClick(typing.field, Qt.Key.Key_Return)
    assert pitches(shown.room) == ("9 in 12", "12 in 12")


@pytest.mark.parametrize(
    ("key", "text", "read"),
    [
        ("width", "264", lambda room: room.width.mm / INCH == pytest.approx(264)),
        ("run/left", "80", lambda room: pitches(room) == ("18 in 12", "9 in 12")),
        ("ridge", "138", lambda room: pitches(room) == ("9 in 12", "9 in 12")),
        ("ceiling", "96", lambda room: room.flat_ceiling.mm / INCH == pytest.approx(96)),
        ("pitch/right/0", "45°", lambda room: pitches(room) == ("12 in 12", "45°")),
    ],
)
def test_every_number_can_be_clicked_and_typed_over(
    shown: Shown, key: str, text: str, read: object
) -> None:
    QTest.mouseClick(shown.view, LEFT, NONE, shown.view.number_rect(key).center())
    typing = shown.view.typing
    assert typing is not None
    assert typing.key == key
    QTest.keyClicks(typing.field, text)
    QTest.keyClick(typing.field, Qt.Key.Key_Return)
    assert callable(read)
    assert read(shown.room)


def test_a_number_that_does_not_fit_stays_with_its_sentence_under_it(shown: Shown) -> None:
    QTest.mouseClick(shown.view, LEFT, NONE, shown.view.number_rect("ceiling").center())
    typing = shown.view.typing
    assert typing is not None
    QTest.keyClicks(typing.field, "200")
    QTest.keyClick(typing.field, Qt.Key.Key_Return)
    assert typing.field.note.isVisible()
    assert 'the nearest that does is 168"' in typing.field.note.text()
    assert shown.view.rect().contains(typing.field.note.geometry())
    QTest.keyClick(typing.field, Qt.Key.Key_Escape)
    QTest.keyClick(typing.field, Qt.Key.Key_Escape)
    assert shown.view.typing is None
    assert shown.desk.undo_text is None


def test_a_flat_ceiling_is_pulled_in_and_deleted(shown: Shown) -> None:
    spot = shown.view.spot("ceiling")
    spot.setFocus()
    QTest.keyClick(spot, Qt.Key.Key_Delete)
    assert shown.room.flat_ceiling is None
    assert shown.desk.undo_text == "Flat ceiling of the room"
    # It is offered at three quarters of the ridge's 168, at 126.
    shown.drag("ceiling", 0, -26)
    assert shown.room.flat_ceiling is not None
    assert shown.room.flat_ceiling.mm / INCH == pytest.approx(100, abs=1)
    QTest.keyClick(shown.view.spot("ceiling"), Qt.Key.Key_Delete)
    QTest.keyClick(shown.view.spot("ceiling"), Qt.Key.Key_Return)
    typing = shown.view.typing
    assert typing is not None
    assert typing.field.text() == ""
    QTest.keyClicks(typing.field, "96")
    QTest.keyClick(typing.field, Qt.Key.Key_Return)
    assert shown.room.flat_ceiling == Length.of_inches(96)


def test_undo_is_left_to_the_window_while_nothing_is_pulled(shown: Shown) -> None:
    """Though the pointer rests on the handle that has the keys."""
    spot = shown.view.spot("ridge")
    spot.setFocus()
    QTest.mouseMove(shown.view, shown.at("ridge"))
    event = QKeyEvent(QEvent.Type.ShortcutOverride, Qt.Key.Key_Z, CTRL)
    event.ignore()
    QApplication.sendEvent(spot, event)
    assert not event.isAccepted()
    shown.press("ridge")
    shown.move(shown.at("ridge") + QPoint(0, 20))
    QApplication.sendEvent(spot, event)
    assert event.isAccepted()


def test_pointing_tells_what_it_is_and_what_can_be_done(shown: Shown) -> None:
    QTest.mouseMove(shown.view, shown.at("ridge"))
    assert shown.view.toolTip().startswith('Ridge height 168". Pull it')
    assert shown.view.lively == "ridge"
    assert shown.view.cursor().shape() is Qt.CursorShape.SizeAllCursor
    QTest.mouseMove(shown.view, shown.view.number_rect("width").center())
    assert shown.view.toolTip() == 'Room width 240". Click and type it over.'
    assert shown.view.cursor().shape() is Qt.CursorShape.IBeamCursor
    QTest.mouseMove(shown.view, QPoint(3, 3))
    assert shown.view.toolTip() == ""
    assert shown.view.lively is None


def test_a_roof_that_loses_its_ridge_loses_the_handle(shown: Shown) -> None:
    from gui.edits import set_room

    ridge = shown.view.spot("ridge")
    shown.desk.commit("shed", set_room(shown.desk.project, right=None))
    assert ridge.isHidden()
    with pytest.raises(KeyError):
        shown.view.spot("ridge")
    assert not shown.view.number_rect("high/right").isEmpty()


def test_no_handle_stands_on_a_number(shown: Shown) -> None:
    for key in ("eave/left", "pitch/left/0", "ridge", "ceiling", "width"):
        place = shown.at(key)
        for number in ("eave/left", "pitch/left/0", "ridge", "ceiling", "width", "run/left"):
            assert not shown.view.number_rect(number).contains(place), (key, number)
