"""Duplicating along the wall from the sheet: again at the same distance, a count stated."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt

from figuring import figure, strike, write
from gui.desk import Desk
from gui.sketcher.measures import Ruler
from gui.sketcher.sheet import Sheet
from hand import Hand
from loft import BOX, INCH, STUD, loft

Key = Qt.Key


def added(desk: Desk) -> list[float]:
    return [round(s.left.mm / INCH, 4) for s in desk.project.wall("B").added]


def test_again_at_the_same_distance(sheet: Sheet, desk: Desk, sayings: list[str]) -> None:
    desk.hold(STUD)
    sheet.measuring.repeating.again()
    assert added(desk) == [39.25]
    assert desk.held == "B/stud-1"
    assert desk.undo_text == "Duplicate B3"
    assert sayings[-1].startswith('B3 again, 8" on, × 1')
    assert figure(sheet, Ruler.AGAIN).text == '8" × 1'


def test_a_copy_that_was_moved_gives_the_distance(hand: Hand, sheet: Sheet, desk: Desk) -> None:
    desk.hold(STUD)
    sheet.measuring.repeating.again()
    hand.key(Key.Key_Left, Qt.KeyboardModifier.ControlModifier, times=4)
    sheet.measuring.repeating.again()
    assert added(desk) == [35.25, 39.25]
    # The layout's own stud is in the way of a fourth, 16 in. on, but not of a third.
    sheet.measuring.repeating.again()
    assert added(desk) == [35.25, 39.25, 43.25]
    for _ in range(2):
        desk.undo()
    assert added(desk) == [35.25]


@pytest.mark.parametrize(
    ("text", "lefts", "shown"),
    [
        ("4 x 3", [35.25, 39.25, 43.25], '4" × 3'),
        ("x 1", [39.25], '8" × 1'),
        ('3 1/2"', [34.75], '3 1/2" × 1'),
    ],
)
def test_distance_and_count_are_typed_over(
    sheet: Sheet, desk: Desk, text: str, lefts: list[float], shown: str
) -> None:
    desk.hold(STUD)
    sheet.measuring.repeating.again()
    strike(sheet, Ruler.AGAIN)
    write(sheet, text)
    assert added(desk) == lefts
    assert figure(sheet, Ruler.AGAIN).text == shown
    # It is still one step of undo.
    desk.undo()
    assert desk.project == loft()


def test_too_many_are_refused_with_how_many_fit(
    sheet: Sheet, desk: Desk, sayings: list[str]
) -> None:
    desk.hold(STUD)
    sheet.measuring.repeating.again()
    strike(sheet, Ruler.AGAIN)
    write(sheet, "4 x 9")
    assert sayings[-1].endswith('Copies 4" apart have places for 3.')
    assert added(desk) == [39.25]
    assert sheet.measuring.field.isVisible()


def test_several_are_duplicated_together(sheet: Sheet, desk: Desk) -> None:
    desk.hold(STUD, (BOX,))
    sheet.measuring.repeating.again()
    assert desk.holding == ("B/stud-1", "B/box-2")
    assert desk.undo_text == "Duplicate 2 things"
    assert figure(sheet, Ruler.AGAIN).text == '8" × 1'


def test_what_stands_once_is_refused(sheet: Sheet, desk: Desk, sayings: list[str]) -> None:
    desk.hold("B/sole")
    sheet.measuring.repeating.again()
    assert "is there once" in sayings[-1]
    assert desk.project == loft()
