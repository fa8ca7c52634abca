"""A desk with the room shown, its plan, and a hand on it."""

from __future__ import annotations

import pytest
from pytestqt.qtbot import QtBot

from gui.desk import Desk
from gui.plan.plan import Plan
from gui.theme import Theme
from loft import desk_of
from plan_hand import PlanHand


@pytest.fixture
def desk(qapp: object) -> Desk:
    assert qapp is not None
    made = desk_of()
    made.show_room()
    made.hold(None)
    return made


@pytest.fixture
def plan(desk: Desk, qtbot: QtBot) -> Plan:
    made = Plan(desk, Theme.day())
    qtbot.addWidget(made)
    made.resize(800, 700)
    with qtbot.waitExposed(made):
        made.show()
    made.activateWindow()
    made.setFocus()
    return made


@pytest.fixture
def hand(plan: Plan) -> PlanHand:
    return PlanHand(plan)


@pytest.fixture
def sayings(desk: Desk) -> list[str]:
    heard: list[str] = []
    desk.said.connect(heard.append)
    return heard
