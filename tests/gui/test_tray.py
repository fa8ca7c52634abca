"""The tray of parts: dragged onto the wall with the mouse, and placed with the keys alone."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from core.model import Project
from gui.desk import Desk
from gui.middle import Middle
from gui.sketcher.ghosts import Part
from gui.theme import Theme
from gui.tray import Piece
from hand import LEFT, NONE, SHIFT, Hand
from loft import INCH, desk_of, loft
from walls import US

Key = Qt.Key


class Bench:
    """The middle of a window with the tray, and a hand on its sheet."""

    def __init__(self, qtbot: QtBot) -> None:
        self.desk: Desk = desk_of()
        self.said: list[str] = []
        self.desk.said.connect(self.said.append)
        self.middle = Middle(self.desk, Theme.day())
        qtbot.addWidget(self.middle)
        self.middle.resize(1000, 800)
        with qtbot.waitExposed(self.middle):
            self.middle.show()
        self.sheet = self.middle.sheet
        self.hand = Hand(self.sheet)

    def piece(self, part: Part) -> Piece:
        return self.middle.wall.tray.pieces[part]

    def pull(self, part: Part, to: QPoint) -> None:
        """Press a piece and carry it to a place of the screen; not let go yet."""
        piece = self.piece(part)
        middle = piece.rect().center()
        QTest.mousePress(piece, LEFT, NONE, middle)
        for spot in (piece.mapToGlobal(middle) + QPoint(9, 9), to + QPoint(1, 0), to):
            event = QMouseEvent(
                QEvent.Type.MouseMove,
                QPointF(piece.mapFromGlobal(spot)),
                QPointF(spot),
                Qt.MouseButton.NoButton,
                LEFT,
                NONE,
            )
            QApplication.sendEvent(piece, event)

    def drop(self, part: Part, to: QPoint) -> None:
        piece = self.piece(part)
        QTest.mouseRelease(piece, LEFT, NONE, piece.mapFromGlobal(to))

    def at(self, x: float, y: float) -> QPoint:
        """A place of the wall (inches) on the screen."""
        return self.sheet.mapToGlobal(self.hand.px(x, y))

    def wall(self) -> Project:
        return self.desk.project


@pytest.fixture
def bench(qtbot: QtBot) -> Bench:
    return Bench(qtbot)


def test_a_stud_is_dragged_onto_the_wall(bench: Bench) -> None:
    bench.pull(Part.STUD, bench.at(24.75, 40))
    assert bench.sheet.placing.ghost is not None
    # The wall itself is as it was until the part is let go.
    assert bench.desk.project == loft()
    bench.drop(Part.STUD, bench.at(24.75, 40))
    (stud,) = bench.desk.project.wall("B").added
    assert stud.left.mm / INCH == pytest.approx(24.0, abs=0.3)
    assert bench.desk.held == "B/stud-1"
    assert bench.desk.undo_text == "Add stud"
    assert not bench.sheet.placing.active


def test_where_it_cannot_stand_nothing_is_placed_and_it_says_why(bench: Bench) -> None:
    bench.pull(Part.ACCESS_DOOR, bench.at(75, 20))
    shown = bench.sheet.grab().toImage()
    assert "door 1 stands there: the nearest left edge is 30" in bench.said[-1]
    bench.pull(Part.ACCESS_DOOR, bench.at(30, 20))
    assert bench.sheet.grab().toImage() != shown
    bench.pull(Part.ACCESS_DOOR, bench.at(75, 20))
    bench.drop(Part.ACCESS_DOOR, bench.at(75, 20))
    assert bench.desk.project == loft()
    assert "the nearest left edge is" in bench.said[-1]
    assert not bench.sheet.placing.active


def test_let_go_beside_the_sheet_it_is_back_in_the_tray(bench: Bench) -> None:
    bench.pull(Part.WINDOW, bench.at(75, 40))
    assert bench.sheet.placing.active
    back = bench.piece(Part.WINDOW)
    away = back.mapToGlobal(back.rect().center())
    bench.pull(Part.WINDOW, away)
    assert not bench.sheet.placing.active
    bench.drop(Part.WINDOW, away)
    assert bench.desk.project == loft()


def test_a_click_on_a_piece_and_a_click_on_the_wall_place_it(bench: Bench) -> None:
    QTest.mouseClick(bench.piece(Part.SWITCH), LEFT)
    bench.hand.move(42, 47)
    assert bench.said[-1] == 'switch: 48" high, on the left of B4'
    bench.hand.click(42, 47)
    assert bench.desk.project.wall("B").boxes[-1].id == "switch-1"
    assert bench.desk.undo_text == "Add switch"
    # What the pointer does next is for the wall again.
    bench.hand.click(32, 40)
    assert bench.desk.held == "B/layout/2"


@pytest.mark.parametrize("key", [Key.Key_Return, Key.Key_Space])
def test_a_part_is_placed_by_the_keys_alone(bench: Bench, key: Qt.Key) -> None:
    bench.piece(Part.STUD).setFocus()
    QTest.keyClick(bench.piece(Part.STUD), key)
    assert bench.sheet.hasFocus()
    assert "arrow keys move it" in bench.said[-1]
    # The middle of the wall is in the door; 10 presses of an inch to the left are not.
    bench.hand.key(Key.Key_Return)
    assert bench.desk.project == loft()
    assert "nearest" in bench.said[-1]
    bench.hand.key(Key.Key_Left, SHIFT, times=10)
    bench.hand.key(Key.Key_Right, times=2)
    bench.hand.key(Key.Key_Return)
    (stud,) = bench.desk.project.wall("B").added
    # 60 less half a stud less 10 and two sixteenths.
    assert stud.left.mm / INCH == pytest.approx(49.375)
    assert bench.desk.held == "B/stud-1"


def test_a_row_of_blocking_is_placed_by_the_keys(bench: Bench) -> None:
    bench.piece(Part.BLOCKING).click()
    bench.hand.key(Key.Key_Down, SHIFT, times=8)
    bench.hand.key(Key.Key_Return)
    blocking = bench.desk.project.wall("B").blocking
    assert blocking is not None
    assert [row.mm / INCH for row in blocking.heights] == pytest.approx([40.0])
    assert bench.desk.undo_text == "Add a row of blocking"


def test_escape_puts_it_back(bench: Bench) -> None:
    bench.piece(Part.BOX).click()
    assert bench.sheet.placing.active
    bench.hand.key(Key.Key_Escape)
    assert not bench.sheet.placing.active
    assert bench.desk.project == loft()
    assert bench.said[-1] == ""


def test_arrow_keys_go_from_piece_to_piece(bench: Bench) -> None:
    bench.piece(Part.STUD).setFocus()
    QTest.keyClick(bench.piece(Part.STUD), Key.Key_Right)
    assert bench.piece(Part.DOOR).hasFocus()


@pytest.mark.parametrize("part", list(Part))
def test_every_piece_has_its_words_and_its_picture(bench: Bench, part: Part) -> None:
    piece = bench.piece(part)
    assert piece.accessibleName()
    assert "drag it onto the wall" in piece.toolTip()
    others = [bench.piece(p).grab().toImage() for p in Part if p is not part]
    assert piece.grab().toImage() not in others


def test_by_night_the_pieces_look_other(bench: Bench) -> None:
    before = bench.piece(Part.DOOR).grab().toImage()
    bench.middle.set_theme(Theme.night())
    assert bench.piece(Part.DOOR).grab().toImage() != before


def test_a_kept_clear_zone_is_dragged_in_and_pulled_on(bench: Bench) -> None:
    bench.pull(Part.KEPT_CLEAR, bench.at(24, 40))
    bench.drop(Part.KEPT_CLEAR, bench.at(24, 40))
    (zone,) = bench.desk.project.wall("B").kept_clear
    # 12 by 24 in., its middle under the pointer.
    assert (zone.left.mm / INCH, zone.bottom.mm / INCH) == pytest.approx((18.0, 28.0), abs=0.5)
    bench.hand.drag((24, 40), (40, 50))
    (zone,) = bench.desk.project.wall("B").kept_clear
    assert (zone.left.mm / INCH, zone.bottom.mm / INCH) == pytest.approx((34.0, 38.0), abs=0.8)
    assert bench.desk.undo_text == "Move kept clear 1"


def test_a_wall_that_cannot_be_framed_takes_nothing_and_says_so(bench: Bench) -> None:
    bench.desk.commit("short", loft().with_wall(US.wall((12.0, 100.0), (13.0, 100.0))))
    bench.piece(Part.STUD).click()
    assert not bench.sheet.placing.active
    assert bench.said[-1].startswith("Wall B cannot be framed as it is stated")
