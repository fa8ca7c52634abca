"""The chalk dimensions on the sheet: struck, typed over, refused, left again, by real events."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from figuring import figure, middle, strike, write
from gui.desk import Desk
from gui.sketcher.measures import Ruler
from gui.sketcher.sheet import Sheet
from hand import LEFT, NONE, Hand
from loft import BOX, DOOR, STUD, box_height, door_left, loft, stud_left

Key = Qt.Key


def test_a_figure_is_struck_and_typed_over(sheet: Sheet, desk: Desk) -> None:
    desk.hold(DOOR)
    strike(sheet, Ruler.LEFT_END)
    assert sheet.measuring.field.isVisible()
    assert sheet.measuring.field.text() == '60"'
    assert sheet.measuring.field.accessibleName() == "door 1, from the left end"
    write(sheet, "5' 4\"")
    assert door_left(desk.project) == pytest.approx(64.0)
    assert not sheet.measuring.field.isVisible()
    assert desk.undo_text == 'Move door 1 to 64" from the left end'
    assert desk.held == DOOR
    assert figure(sheet, Ruler.LEFT_END).text == '64"'


def test_nothing_held_or_fixed_has_no_figures(sheet: Sheet, desk: Desk) -> None:
    sheet.grab()
    assert sheet.measuring.figures() == ()
    desk.hold("B/sole")
    sheet.grab()
    assert sheet.measuring.figures() == ()


def test_enter_opens_and_escape_takes_back(hand: Hand, sheet: Sheet, desk: Desk) -> None:
    desk.hold(STUD)
    sheet.grab()
    hand.key(Key.Key_Return)
    assert sheet.measuring.field.isVisible()
    write(sheet, "30", Key.Key_Escape)
    assert not sheet.measuring.field.isVisible()
    assert desk.project == loft()
    assert desk.held == STUD
    assert sheet.hasFocus()


def test_a_digit_begins_to_type(hand: Hand, sheet: Sheet, desk: Desk) -> None:
    desk.hold(STUD)
    sheet.grab()
    hand.key(Key.Key_2)
    write(sheet, "8")
    assert stud_left(desk.project) == pytest.approx(28.0)


def test_tab_sets_and_goes_on(sheet: Sheet, desk: Desk) -> None:
    desk.hold(BOX)
    strike(sheet, Ruler.FLOOR)
    write(sheet, "20", Key.Key_Tab)
    assert box_height(desk.project) == pytest.approx(20.0)
    # Next comes what is left to the slope, and after it the first again.
    assert sheet.measuring.field.accessibleName() == "box 1, below the plates"
    QTest.keyClick(sheet.measuring.field, Key.Key_Tab)
    assert sheet.measuring.field.accessibleName() == "box 1, from the left end"
    QTest.keyClick(sheet.measuring.field, Key.Key_Backtab)
    assert sheet.measuring.field.accessibleName() == "box 1, below the plates"


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("1", "the nearest is 25 1/8"),
        ("a hand", "a hand"),
    ],
)
def test_what_cannot_be_is_said_and_the_field_stays(
    sheet: Sheet, desk: Desk, sayings: list[str], text: str, said: str
) -> None:
    desk.hold(DOOR)
    strike(sheet, Ruler.LEFT_END)
    write(sheet, text)
    assert said in sayings[-1]
    assert sheet.measuring.field.isVisible()
    assert sheet.measuring.field.property("refused") is True
    assert desk.project == loft()
    write(sheet, "64")
    assert door_left(desk.project) == pytest.approx(64.0)
    assert sayings[-1] == ""


def test_clicking_elsewhere_sets_what_was_typed(hand: Hand, sheet: Sheet, desk: Desk) -> None:
    desk.hold(STUD)
    strike(sheet, Ruler.LEFT_END)
    QTest.keyClicks(sheet.measuring.field, "30")
    hand.click(75, 20)
    assert stud_left(desk.project) == pytest.approx(30.0)
    assert not sheet.measuring.field.isVisible()


def test_figures_follow_a_drag(hand: Hand, sheet: Sheet, desk: Desk) -> None:
    desk.hold(DOOR)
    hand.press(75, 20)
    hand.move(83, 20)
    assert figure(sheet, Ruler.LEFT_END).text == '68"'
    hand.key(Key.Key_Escape)
    assert figure(sheet, Ruler.LEFT_END).text == '60"'


def test_the_pointer_over_a_figure_is_one_for_text(hand: Hand, sheet: Sheet, desk: Desk) -> None:
    desk.hold(DOOR)
    hand.move_px(middle(figure(sheet, Ruler.LEFT_END)))
    assert sheet.cursor().shape() is Qt.CursorShape.IBeamCursor


def test_a_figure_that_is_pulled_pulls_its_thing(hand: Hand, sheet: Sheet, desk: Desk) -> None:
    desk.hold(DOOR)
    start = middle(figure(sheet, Ruler.HEAD))
    away = hand.px(83, 40).x() - hand.px(75, 40).x()
    QTest.mousePress(sheet, LEFT, NONE, start)
    hand.move_px(start + QPoint(away, 0))
    QTest.mouseRelease(sheet, LEFT, NONE, start + QPoint(away, 0))
    assert door_left(desk.project) == pytest.approx(68.0, abs=0.3)
    assert not sheet.measuring.field.isVisible()
    assert desk.held == DOOR
