"""The plan in the window: looking, taking hold, going to a wall."""

from __future__ import annotations

import msgspec
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from gui.desk import Desk
from gui.plan.plan import Plan
from gui.theme import Theme
from loft import INCH, desk_of, loft

LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def desk(qapp: object) -> Desk:
    assert qapp is not None
    made = desk_of()
    made.show_room()
    made.hold(None)
    return made


@pytest.fixture
def plan(desk: Desk, qtbot: QtBot) -> Plan:
    return shown(desk, qtbot)


def shown(desk: Desk, qtbot: QtBot) -> Plan:
    made = Plan(desk, Theme.day())
    qtbot.addWidget(made)
    made.resize(800, 700)
    with qtbot.waitExposed(made):
        made.show()
    return made


def px(plan: Plan, u: float, v: float) -> QPoint:
    right, down = plan.camera.to_screen((u * INCH, v * INCH))
    return QPoint(round(right), round(down))


def test_a_press_takes_hold_of_a_wall_and_lets_go_on_the_floor(desk: Desk, plan: Plan) -> None:
    QTest.mouseClick(plan, LEFT, pos=px(plan, 72, 102))
    assert desk.held == "B"
    QTest.mouseClick(plan, LEFT, pos=px(plan, 72, 300))
    assert desk.held is None


def test_a_double_press_goes_to_the_wall(desk: Desk, plan: Plan) -> None:
    QTest.mouseDClick(plan, LEFT, pos=px(plan, 72, 102))
    assert desk.letter == "B"


def test_enter_goes_to_the_wall_held(desk: Desk, plan: Plan) -> None:
    QTest.keyClick(plan, Qt.Key.Key_Return)
    assert desk.letter is None
    desk.hold("B")
    QTest.keyClick(plan, Qt.Key.Key_Return)
    assert desk.letter == "B"


def test_the_held_wall_is_chalked(desk: Desk, plan: Plan) -> None:
    before = plan.grab().toImage()
    desk.hold("B")
    spot = px(plan, 72, 102)
    assert plan.grab().toImage().pixelColor(spot) != before.pixelColor(spot)


def test_an_empty_room_says_what_to_do(qtbot: QtBot, qapp: object) -> None:
    assert qapp is not None
    plan = shown(desk_of(msgspec.structs.replace(loft(), walls=())), qtbot)
    assert plan.accessibleName() == "Plan of the room, 0 walls"
    image = plan.grab().toImage()
    middle = px(plan, 120, 200)
    tones = {image.pixelColor(x, middle.y() + y).name() for x in range(300, 500) for y in range(9)}
    assert len(tones) > 5
