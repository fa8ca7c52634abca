"""A desk and a sheet on it, shown offscreen."""

from __future__ import annotations

import pytest
from pytestqt.qtbot import QtBot

from gui.desk import Desk
from gui.sketcher.sheet import Sheet
from gui.theme import Theme
from hand import Hand
from loft import desk_of


@pytest.fixture
def desk(qapp: object) -> Desk:
    assert qapp is not None
    return desk_of()


@pytest.fixture
def sheet(desk: Desk, qtbot: QtBot) -> Sheet:
    made = Sheet(desk, Theme.day())
    qtbot.addWidget(made)
    made.resize(1000, 700)
    with qtbot.waitExposed(made):
        made.show()
    return made


@pytest.fixture
def hand(sheet: Sheet) -> Hand:
    return Hand(sheet)


@pytest.fixture
def sayings(desk: Desk) -> list[str]:
    heard: list[str] = []
    desk.said.connect(heard.append)
    return heard
