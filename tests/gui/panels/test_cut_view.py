"""The cut of what is held, as a picture that follows the hand and the panel's width."""

from __future__ import annotations

import pytest
from pytestqt.qtbot import QtBot

from core.drawing import Pen
from gui.desk import Desk
from gui.held import Held
from gui.theme import Theme
from loft import BOX, STUD, desk_of


@pytest.fixture
def held(qtbot: QtBot) -> Held:
    desk: Desk = desk_of()
    made = Held(desk)
    qtbot.addWidget(made)
    made.resize(380, 900)
    with qtbot.waitExposed(made):
        made.show()
    return made


@pytest.mark.parametrize(
    ("key", "there"), [(None, False), (STUD, True), ("B/sole", False), (BOX, False)]
)
def test_it_stands_there_for_a_piece_that_is_not_square(
    held: Held, key: str | None, there: bool
) -> None:
    held._desk.hold(key)
    assert held.cut.isVisible() is there


def test_it_is_as_wide_as_the_panel_has_room_for(held: Held, qtbot: QtBot) -> None:
    held._desk.hold(STUD)
    qtbot.waitUntil(lambda: held.cut.height() > 100)
    narrow = held.cut.height()
    held.resize(900, 900)
    # With more room all of it stands in one row.
    qtbot.waitUntil(lambda: held.cut.height() < narrow)
    assert held.cut.sizeHint().width() <= held.cut.width()


def test_it_is_painted(held: Held, qtbot: QtBot) -> None:
    held._desk.hold(STUD)
    qtbot.waitUntil(lambda: held.cut.height() > 100)
    image = held.cut.grab().toImage()
    dots = ((x, y) for x in range(image.width()) for y in range(image.height()))
    colours = {image.pixelColor(*dot).name() for dot in dots}
    assert Theme.day().looks[Pen.STUD].fill.name() in colours
