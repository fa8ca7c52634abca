"""The plan in the window: looking, taking hold, going to a wall."""

from __future__ import annotations

import msgspec
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from gui.desk import Desk
from gui.plan.plan import Plan
from gui.theme import Theme
from loft import desk_of, loft
from plan_hand import LEFT, PlanHand
from walls import US


def test_a_press_takes_hold_of_a_wall_and_lets_go_on_the_floor(desk: Desk, hand: PlanHand) -> None:
    hand.click((72, 102))
    assert desk.held == "B"
    hand.click((72, 300))
    assert desk.held is None


def test_a_double_press_goes_to_the_wall(desk: Desk, plan: Plan, hand: PlanHand) -> None:
    QTest.mouseDClick(plan, LEFT, pos=hand.px((72, 102)))
    assert desk.letter == "B"


def test_enter_goes_to_the_wall_held(desk: Desk, hand: PlanHand) -> None:
    hand.key(Qt.Key.Key_Return)
    assert desk.letter is None
    desk.hold("B")
    hand.key(Qt.Key.Key_Return)
    assert desk.letter == "B"


def test_the_held_wall_is_chalked(desk: Desk, plan: Plan, hand: PlanHand) -> None:
    before = plan.grab().toImage()
    desk.hold("B")
    spot = hand.px((100, 102))
    assert plan.grab().toImage().pixelColor(spot) != before.pixelColor(spot)


def test_an_empty_room_says_what_to_do(qtbot: QtBot, qapp: object) -> None:
    assert qapp is not None
    plan = Plan(desk_of(msgspec.structs.replace(loft(), walls=())), Theme.day())
    qtbot.addWidget(plan)
    plan.resize(800, 700)
    with qtbot.waitExposed(plan):
        plan.show()
    assert plan.accessibleName() == "Plan of the room, 0 walls"
    image, middle = plan.grab().toImage(), PlanHand(plan).px((120, 200))
    tones = {
        image.pixelColor(middle.x() + x, middle.y() + y).name()
        for x in range(-60, 60)
        for y in range(-9, 9)
    }
    assert len(tones) > 5


def test_paper_outside_the_room_is_shoved(desk: Desk, plan: Plan, hand: PlanHand) -> None:
    before = plan.camera
    hand.drag((-60, 200), (-40, 200))
    assert plan.camera.x > before.x
    assert desk.project == loft()


def test_it_is_fitted_again_when_the_room_grows_but_not_when_a_wall_comes(
    desk: Desk, plan: Plan, hand: PlanHand
) -> None:
    before = plan.camera
    hand.drag((10, 300), (200, 300))
    assert plan.camera == before
    room = msgspec.structs.replace(desk.project.room, length=US.length(500.0))
    desk.commit("longer", msgspec.structs.replace(desk.project, room=room))
    assert plan.camera.scale < before.scale


def test_the_wheel_of_keys_zooms_and_fits(plan: Plan, hand: PlanHand) -> None:
    before = plan.camera
    hand.key(Qt.Key.Key_Plus)
    assert plan.camera.scale > before.scale
    hand.key(Qt.Key.Key_Right)
    hand.key(Qt.Key.Key_F)
    assert plan.camera == before


def test_a_low_pane_gives_its_place_to_the_room(plan: Plan, hand: PlanHand) -> None:
    # 400 in. stand between 22 px at the top and as many at the bottom of 200 px.
    plan.resize(600, 200)
    assert hand.px((0, 0)).y() - hand.px((0, 400)).y() == pytest.approx(156, abs=2)
    plan.resize(600, 400)
    assert hand.px((0, 0)).y() - hand.px((0, 400)).y() < 300


@pytest.mark.parametrize("key", [Qt.Key.Key_Delete, Qt.Key.Key_Backspace])
def test_delete_takes_the_held_wall_away(desk: Desk, hand: PlanHand, key: Qt.Key) -> None:
    desk.hold("B")
    hand.key(key)
    assert (hand.letters, desk.undo_text) == ([], "Delete wall B")
