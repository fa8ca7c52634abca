"""Drawing walls in the plan: with the pointer, with the keys, with typed lengths."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from gui.desk import Desk
from gui.plan.drawing import Tool
from gui.plan.plan import Plan
from loft import loft
from plan_hand import CTRL, LEFT, SHIFT, PlanHand

# A px is about 3/4 in. here: places are caught at 9 px, about 6 1/2 in.


def test_a_wall_is_drawn_from_eave_to_eave(desk: Desk, hand: PlanHand, sayings: list[str]) -> None:
    hand.drag((2, 200), (237, 203))
    assert hand.chalk("A") == [(0, 200), (240, 200)]
    assert sayings[-1] == '240" long, square to the eave walls, at the right eave wall'
    assert (desk.held, desk.undo_text) == ("A", "Draw wall A")
    desk.undo()
    assert hand.letters == ["B"]


def test_it_can_begin_at_a_wall_once_drawing_is_begun(plan: Plan, hand: PlanHand) -> None:
    plan.arm(Tool.WALL)
    hand.drag((60, 103), (62, 300))
    # A round length from there: 197 in.
    assert hand.chalk("A") == [(60, 103.5), (60, 300.5)]
    assert plan.armed is None


def test_w_begins_it_too_and_the_pointer_may_go_on(plan: Plan, hand: PlanHand) -> None:
    hand.key(Qt.Key.Key_W)
    assert plan.armed is Tool.WALL
    hand.drag((60, 103), (62, 300))
    assert hand.chalk("A") == [(60, 103.5), (60, 300.5)]


def test_held_with_shift_it_snaps_to_nothing(hand: PlanHand) -> None:
    hand.drag((2, 200), (237, 210), SHIFT)
    (_, v0), (u, v) = hand.chalk("A")
    assert u == pytest.approx(237, abs=0.8)
    assert v - v0 == pytest.approx(10, abs=1.6)


def test_escape_takes_it_back(desk: Desk, plan: Plan, hand: PlanHand) -> None:
    hand.pull((2, 200), (200, 203))
    assert plan.scene().drawing != ()
    hand.key(Qt.Key.Key_Escape)
    hand.release((200, 203))
    assert (desk.project, desk.undo_text, plan.busy) == (loft(), None, False)


def test_the_list_of_walls_follows_while_it_is_drawn(
    desk: Desk, plan: Plan, hand: PlanHand, qtbot: QtBot
) -> None:
    hand.pull((2, 200), (200, 203))
    gesture = plan.gesture
    assert gesture is not None
    qtbot.waitUntil(lambda: desk.project == gesture.project)
    hand.key(Qt.Key.Key_Escape)
    assert desk.project == loft()


def test_its_length_and_its_distances_are_shown_while_it_is_drawn(
    plan: Plan, hand: PlanHand
) -> None:
    hand.pull((2, 200), (150, 203))
    plan.grab()
    told = {f.measure.ruler.value: f.text for f in plan.measuring.figures}
    # 96 1/2 to the far face of B at 103 1/2, 196 1/2 behind it, 90 to the right eave.
    assert told == {
        "plan-length": '150"',
        "plan-before": '96 1/2"',
        "plan-behind": '196 1/2"',
        "plan-right": '90"',
    }
    hand.key(Qt.Key.Key_Escape)


def test_a_length_typed_while_drawing_is_its_length(desk: Desk, hand: PlanHand) -> None:
    hand.pull((2, 200), (150, 203))
    hand.type("123")
    assert hand.chalk("A") == [(0, 200), (123, 200)]
    hand.release((150, 203))
    assert (hand.chalk("A"), desk.undo_text) == ([(0, 200), (123, 200)], "Draw wall A")


def test_a_length_that_does_not_fit_is_refused_and_can_be_mended(
    plan: Plan, hand: PlanHand, sayings: list[str]
) -> None:
    hand.pull((2, 200), (150, 203))
    hand.type("999")
    field = plan.measuring.field
    assert field.isVisible()
    assert "240" in sayings[-1]
    field.setText("100")
    QTest.keyClick(field, Qt.Key.Key_Return)
    assert hand.chalk("A") == [(0, 200), (100, 200)]


def test_escape_from_the_typed_length_takes_the_wall_back(
    desk: Desk, plan: Plan, hand: PlanHand
) -> None:
    hand.pull((2, 200), (150, 203))
    QTest.keyClicks(plan, "1")
    QTest.keyClick(plan.measuring.field, Qt.Key.Key_Escape)
    hand.release((150, 203))
    assert (desk.project, plan.busy) == (loft(), False)


def test_a_length_typed_just_after_is_its_length(hand: PlanHand) -> None:
    hand.drag((2, 200), (150, 203))
    hand.type("123")
    assert hand.chalk("A") == [(0, 200), (123, 200)]


def test_drawn_along_the_end_of_the_room_it_stands_against_it(hand: PlanHand) -> None:
    hand.drag((20, 398), (200, 399))
    assert hand.chalk("A") == [(20, 396.5), (200, 396.5)]


def test_by_keys_alone(desk: Desk, plan: Plan, hand: PlanHand, sayings: list[str]) -> None:
    hand.key(Qt.Key.Key_W)
    assert plan.armed is Tool.WALL
    # The cross begins at the left eave wall, halfway along: 200. A foot farther, a step back.
    hand.key(Qt.Key.Key_Up, CTRL)
    hand.key(Qt.Key.Key_Down)
    assert sayings[-1] == '0" from the left eave wall, 211 15/16" from the start'
    hand.key(Qt.Key.Key_Up)
    hand.key(Qt.Key.Key_Return)
    hand.key(Qt.Key.Key_Right, SHIFT)
    assert sayings[-1] == '120" long, square to the eave walls, at the ridge'
    hand.key(Qt.Key.Key_Right, SHIFT)
    hand.key(Qt.Key.Key_Return)
    assert hand.chalk("A") == [(0, 212), (240, 212)]
    assert (desk.held, plan.busy) == ("A", False)


def test_by_keys_with_a_typed_length(hand: PlanHand) -> None:
    hand.key(Qt.Key.Key_W)
    hand.key(Qt.Key.Key_Return)
    hand.key(Qt.Key.Key_Right, CTRL)
    hand.type("150")
    assert hand.chalk("A") == [(0, 200), (150, 200)]


def test_the_cross_begins_at_the_end_of_the_wall_held(desk: Desk, hand: PlanHand) -> None:
    desk.hold("B")
    hand.key(Qt.Key.Key_W)
    hand.key(Qt.Key.Key_Return)
    hand.key(Qt.Key.Key_Up, CTRL, times=3)
    hand.key(Qt.Key.Key_Return)
    assert hand.chalk("A") == [(132, 100), (132, 136)]


def test_escape_takes_the_cross_away(desk: Desk, plan: Plan, hand: PlanHand) -> None:
    hand.key(Qt.Key.Key_W)
    hand.key(Qt.Key.Key_Return)
    hand.key(Qt.Key.Key_Right, CTRL)
    hand.key(Qt.Key.Key_Escape)
    assert (desk.project, plan.busy) == (loft(), False)
    # It stays in the room.
    hand.key(Qt.Key.Key_W)
    hand.key(Qt.Key.Key_Left, CTRL, times=3)
    hand.key(Qt.Key.Key_Left, SHIFT)
    hand.key(Qt.Key.Key_Escape)
    assert not plan.busy


def test_undo_waits_until_the_wall_is_drawn(desk: Desk, plan: Plan, hand: PlanHand) -> None:
    hand.drag((2, 200), (237, 203))
    hand.pull((2, 300), (237, 303))
    hand.key(Qt.Key.Key_Z, CTRL)
    assert plan.gesture is not None
    hand.release((237, 303))
    assert hand.letters == ["B", "A", "C"]
    assert desk.undo_text == "Draw wall C"


def test_a_click_draws_nothing(desk: Desk, plan: Plan, hand: PlanHand) -> None:
    QTest.mouseClick(plan, LEFT, pos=hand.px((60, 200)))
    assert desk.project == loft()
