"""What is told of a thing: by the pointer at rest, by the keys, to a screen reader."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from core.job import work_out
from core.model import SiteRecord
from gui.desk import Desk
from gui.sketcher.pointing import REST_MS, told
from gui.sketcher.sheet import Sheet
from gui.wordings import wording_of
from hand import Hand
from loft import BOX, DOOR, STUD, loft


@pytest.mark.parametrize(
    ("key", "lines"),
    [
        # 60 + 31 1/4 less the plate's 2.1213 and the sole plate's 1 1/2, on 45 degrees.
        (
            STUD,
            (
                "B3  stud",
                'Long point: 89 1/8"',
                'Short point: 87 5/8"',
                "Cut, set from square: bevel 45.0°",
            ),
        ),
        (DOOR, ("door 1  door", 'Rough opening: 30" × 80"', 'Left edge: 60"')),
        (BOX, ("box 1  box", 'Height to center: 14"', "On the stud: right of B3")),
    ],
)
def test_what_is_told(key: str, lines: tuple[str, ...]) -> None:
    result = work_out(loft(), SiteRecord()).walls[0]
    assert told(result, key, wording_of(loft())) == lines


def test_a_pointer_that_rests_is_told(hand: Hand, sheet: Sheet, qtbot: QtBot) -> None:
    hand.move(32, 40)
    bare = sheet.grab().toImage()
    assert sheet.rest.on is None
    with qtbot.waitSignal(sheet.rest.rested, timeout=REST_MS * 10):
        pass
    assert sheet.rest.on is not None
    assert sheet.rest.on[0] == STUD
    assert sheet.grab().toImage() != bare
    # Off the thing, the note is gone.
    hand.move(24, 30)
    assert sheet.rest.on is None


def test_a_press_ends_the_waiting(hand: Hand, sheet: Sheet, qtbot: QtBot) -> None:
    hand.move(32, 40)
    hand.press(32, 40)
    qtbot.wait(round(REST_MS * 1.5))
    assert sheet.rest.on is None
    hand.release(32, 40)


def test_what_the_keys_come_to_is_said(hand: Hand, sayings: list[str]) -> None:
    hand.key(Qt.Key.Key_PageDown)
    assert sayings[-1].startswith("B1  stud · Long point: ")


def test_a_screen_reader_hears_what_is_held(sheet: Sheet, desk: Desk) -> None:
    desk.hold(DOOR)
    assert sheet.accessibleDescription().startswith("door 1  door · Rough opening")
    desk.hold(None)
    assert sheet.accessibleDescription() == ""
