"""Stair openings and existing walls: drawn, held, typed over, deleted in the plan; as forms."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from core.model import Project
from gui.desk import Desk
from gui.panels.floor import FloorForm
from gui.plan.drawing import Tool
from gui.plan.plan import Plan
from loft import INCH, loft
from plan_hand import PlanHand

OLD, STAIR = "existing-wall-1", "stair-opening-1"


def stair(project: Project) -> list[float]:
    found = project.room.stair_openings[0]
    parts = (found.across, found.along, found.wide, found.deep)
    return [round(part.mm / INCH, 3) for part in parts]


def old(project: Project) -> list[float]:
    found = project.room.existing_walls[0]
    ends = (found.left_end, found.right_end)
    return [round(mm / INCH, 3) for end in ends for mm in (end.across.mm, end.along.mm)]


def test_a_stair_opening_is_drawn_from_corner_to_corner(
    desk: Desk, plan: Plan, hand: PlanHand
) -> None:
    plan.arm(Tool.STAIR)
    hand.drag((180, 300), (150.4, 200.2))
    assert stair(desk.project) == [150, 200, 30, 100]
    assert (desk.held, desk.undo_text) == (STAIR, "Draw stair opening 1")
    assert plan.armed is None
    desk.undo()
    assert desk.project == loft()


def test_drawn_to_nothing_there_is_no_opening(desk: Desk, plan: Plan, hand: PlanHand) -> None:
    plan.arm(Tool.STAIR)
    hand.drag((180, 300), (181, 200))
    assert (desk.project, plan.busy) == (loft(), False)


def test_an_existing_wall_is_drawn_and_others_are_drawn_to_it(
    desk: Desk, plan: Plan, hand: PlanHand, sayings: list[str]
) -> None:
    plan.arm(Tool.EXISTING)
    hand.drag((150, 398), (151, 203))
    # Its line at 150, its timber to the right: drawn down, the far side lies at 153 1/2.
    assert old(desk.project) == [150, 400, 150, 203]
    assert desk.held == OLD
    hand.drag((20, 300), (147, 302))
    assert sayings[-1] == '130" long, square to the eave walls, at face A of existing wall 1'
    assert hand.chalk("A") == [(20, 300), (150, 300)]


@pytest.mark.parametrize("key", [Qt.Key.Key_O, Qt.Key.Key_E])
def test_by_keys(desk: Desk, hand: PlanHand, key: Qt.Key) -> None:
    ctrl = Qt.KeyboardModifier.ControlModifier
    hand.key(key)
    hand.key(Qt.Key.Key_Return)
    hand.key(Qt.Key.Key_Right, ctrl, times=4)
    if key == Qt.Key.Key_O:
        hand.key(Qt.Key.Key_Up, ctrl, times=3)
    hand.key(Qt.Key.Key_Return)
    if key == Qt.Key.Key_O:
        assert stair(desk.project) == [0, 200, 48, 36]
    else:
        assert old(desk.project) == [0, 200, 48, 200]
    hand.key(Qt.Key.Key_Delete)
    assert desk.project == loft()
    assert desk.undo_text is not None


@pytest.fixture
def both(desk: Desk, plan: Plan, hand: PlanHand) -> PlanHand:
    plan.arm(Tool.STAIR)
    hand.drag((150, 200), (180, 300))
    plan.arm(Tool.EXISTING)
    hand.drag((20, 300), (100, 300))
    desk.hold(None)
    return hand


def test_they_are_moved_and_lengthened(desk: Desk, both: PlanHand) -> None:
    both.drag((165, 280), (175, 240))
    assert stair(desk.project) == [160, 160, 30, 100]
    both.drag((60, 302), (60, 322))
    assert old(desk.project) == [20, 320, 100, 320]


def test_their_figures_are_typed_over(desk: Desk, plan: Plan, both: PlanHand) -> None:
    for key, typed, wanted in ((STAIR, ("36", "110"), [150, 200, 36, 110]),):
        desk.hold(key)
        plan.grab()
        both.key(Qt.Key.Key_Tab)
        field = plan.measuring.field
        field.setText(typed[0])
        QTest.keyClick(field, Qt.Key.Key_Tab)
        assert field.accessibleName() == "stair-opening-1, depth"
        field.setText(typed[1])
        QTest.keyClick(field, Qt.Key.Key_Return)
        assert stair(desk.project) == wanted
    desk.hold(OLD)
    plan.grab()
    both.type("90")
    assert old(desk.project) == [20, 300, 110, 300]


def test_they_have_no_drawing_of_their_own(desk: Desk, both: PlanHand) -> None:
    desk.hold(OLD)
    both.key(Qt.Key.Key_Return)
    assert desk.letter is None
    both.key(Qt.Key.Key_PageDown)
    assert desk.held == STAIR


def test_a_wall_across_the_opening_is_a_caution(desk: Desk, both: PlanHand) -> None:
    both.drag((130, 250), (237, 250))
    ids = [c.message.id for c in desk.results.wall("A").cautions]
    assert "floor.stair" in ids


def test_as_forms(desk: Desk, qtbot: QtBot) -> None:
    form = FloorForm(desk, desk.wording)
    qtbot.addWidget(form)
    form.refresh()
    for name, made in form.lists.items():
        made.add.click()
        assert len(getattr(desk.project.room, name)) == 1
        made.remove.click()
    assert desk.project == loft()
