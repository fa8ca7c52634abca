"""Holding walls in the plan: moving, lengthening, turning, copying, typing over."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from gui.desk import Desk
from gui.edits import draw_wall
from gui.plan.handles import Grasp, Handle
from gui.plan.plan import Plan
from loft import INCH, loft
from plan_hand import CTRL, SHIFT, PlanHand


def handle(plan: Plan, grasp: Grasp, side: str) -> tuple[float, float]:
    """The place of a handle of the wall held, inches."""
    found: list[Handle] = [
        h for h in plan._pointer.handles() if h.grasp is grasp and h.end.value == side
    ]
    u, v = plan.camera.to_model(found[0].pos)
    return u / INCH, v / INCH


def test_a_wall_is_moved_by_whole_steps(desk: Desk, hand: PlanHand, sayings: list[str]) -> None:
    hand.drag((72, 102), (82, 152))
    assert hand.chalk("B") == [(22, 150), (142, 150)]
    assert desk.undo_text == "Move wall B"
    assert sayings[-1].startswith("wall B moved by 51")


def test_moved_near_an_eave_its_end_is_at_it(hand: PlanHand, sayings: list[str]) -> None:
    hand.drag((72, 102), (62, 152))
    assert hand.chalk("B") == [(0, 150), (120, 150)]
    assert sayings[-1].endswith("at the left eave wall")


def test_moved_back_to_where_it_was_nothing_has_happened(desk: Desk, hand: PlanHand) -> None:
    hand.pull((72, 102), (82, 152))
    hand.move((72, 102))
    hand.release((72, 102))
    assert (desk.project, desk.undo_text) == (loft(), None)


def test_escape_takes_the_move_back(desk: Desk, hand: PlanHand) -> None:
    hand.pull((72, 102), (82, 152))
    hand.key(Qt.Key.Key_Escape)
    hand.release((82, 152))
    assert (desk.project, desk.held) == (loft(), "B")


def test_out_of_the_room_it_does_not_go(hand: PlanHand, sayings: list[str]) -> None:
    hand.drag((72, 102), (72, 520))
    assert hand.chalk("B")[0][1] <= 400
    assert "400" in sayings[-1]


def test_dragged_with_ctrl_it_is_copied(desk: Desk, hand: PlanHand) -> None:
    hand.drag((72, 102), (72, 202), CTRL)
    assert hand.chalk("B") == [(12, 100), (132, 100)]
    assert hand.chalk("A") == [(12, 200), (132, 200)]
    assert (desk.held, desk.undo_text) == ("A", "Copy to wall A")


@pytest.mark.parametrize(
    ("side", "to", "chalk"),
    [
        ("right", (150.0, 130.0), [(12, 100), (150, 100)]),
        ("right", (236.0, 100.0), [(12, 100), (240, 100)]),
        ("left", (3.0, 100.0), [(0, 100), (132, 100)]),
    ],
)
def test_an_end_is_drawn_along_the_wall(
    desk: Desk,
    plan: Plan,
    hand: PlanHand,
    side: str,
    to: tuple[float, float],
    chalk: list[tuple[float, float]],
) -> None:
    desk.hold("B")
    hand.drag(handle(plan, Grasp.LENGTHEN, side), to)
    assert hand.chalk("B") == chalk
    assert desk.undo_text == "Lengthen wall B"


def test_a_knob_turns_it_about_its_other_end(desk: Desk, plan: Plan, hand: PlanHand) -> None:
    desk.hold("B")
    hand.drag(handle(plan, Grasp.TURN, "right"), (15, 250))
    assert hand.chalk("B") == [(12, 100), (12, 220)]
    assert desk.undo_text == "Turn wall B"


def test_turned_freely_it_goes_as_the_pointer_does(desk: Desk, plan: Plan, hand: PlanHand) -> None:
    desk.hold("B")
    hand.drag(handle(plan, Grasp.TURN, "right"), (100, 130), SHIFT)
    (u, v) = hand.chalk("B")[1]
    assert v > 110
    assert (u - 12) ** 2 + (v - 100) ** 2 == pytest.approx(120**2, rel=1e-4)


@pytest.mark.parametrize(
    ("key", "modifier", "start"),
    [
        (Qt.Key.Key_Right, Qt.KeyboardModifier.NoModifier, (12.0625, 100)),
        (Qt.Key.Key_Up, CTRL, (12, 112)),
        (Qt.Key.Key_Down, CTRL, (12, 88)),
    ],
)
def test_arrow_keys_push_the_wall_held(
    desk: Desk,
    hand: PlanHand,
    key: Qt.Key,
    modifier: Qt.KeyboardModifier,
    start: tuple[float, float],
) -> None:
    desk.hold("B")
    hand.key(key, modifier)
    assert hand.chalk("B")[0] == pytest.approx(start, abs=1e-3)
    assert desk.undo_text == "Move wall B"


def test_a_run_of_arrow_keys_is_one_edit(desk: Desk, plan: Plan, hand: PlanHand) -> None:
    desk.hold("B")
    for _ in range(3):
        QTest.keyPress(plan, Qt.Key.Key_Up, CTRL)
    QTest.keyRelease(plan, Qt.Key.Key_Up, CTRL)
    assert hand.chalk("B")[0] == (12, 136)
    desk.undo()
    assert desk.project == loft()


def test_page_keys_hold_the_next_wall(desk: Desk, hand: PlanHand) -> None:
    hand.drag((2, 200), (237, 203))
    desk.hold(None)
    held = []
    for _ in range(3):
        hand.key(Qt.Key.Key_PageDown)
        held.append(desk.held)
    assert held == ["B", "A", "B"]
    hand.key(Qt.Key.Key_PageUp)
    assert desk.held == "A"


@pytest.mark.parametrize(
    ("tabs", "typed", "name", "chalk"),
    [
        (0, "100", "B, length", [(12, 100), (112, 100)]),
        (1, "50", "B, clear before face A", [(12, 50), (132, 50)]),
        (2, "50", "B, clear behind the far face", [(12, 346.5), (132, 346.5)]),
        (3, "30", "B, clear past the left end", [(30, 100), (150, 100)]),
        (4, "30", "B, clear past the right end", [(90, 100), (210, 100)]),
    ],
)
def test_the_figures_of_the_wall_held_are_typed_over(
    desk: Desk,
    plan: Plan,
    hand: PlanHand,
    tabs: int,
    typed: str,
    name: str,
    chalk: list[tuple[float, float]],
) -> None:
    desk.hold("B")
    plan.grab()
    hand.key(Qt.Key.Key_Tab)
    field = plan.measuring.field
    for _ in range(tabs):
        QTest.keyClick(field, Qt.Key.Key_Tab)
    assert field.accessibleName() == name
    field.setText(typed)
    QTest.keyClick(field, Qt.Key.Key_Return)
    assert hand.chalk("B") == chalk
    assert desk.undo_text is not None
    assert plan.hasFocus()


def test_a_figure_is_opened_by_a_press(desk: Desk, plan: Plan) -> None:
    desk.hold("B")
    plan.grab()
    left, low, right, high = plan.measuring.figures[1].slip
    spot = ((left + right) / 2, (low + high) / 2)
    assert plan.measuring.press(spot)
    assert plan.measuring.field.isVisible()


def test_what_cannot_be_typed_is_refused(
    desk: Desk, plan: Plan, hand: PlanHand, sayings: list[str]
) -> None:
    desk.hold("B")
    plan.grab()
    hand.type("999")
    assert desk.project == loft()
    assert "240" in sayings[-1]


def test_figures_of_a_short_wall_askew_keep_clear_of_each_other(desk: Desk, plan: Plan) -> None:
    plan.resize(560, 440)
    project = draw_wall(desk.project, ((20 * INCH, 130 * INCH), (40 * INCH, 150 * INCH)), "short")
    desk.commit("short", project)
    desk.hold("A")
    plan.grab()
    slips = [figure.slip for figure in plan.measuring.figures]
    assert len(slips) == 5
    for n, a in enumerate(slips):
        for b in slips[n + 1 :]:
            across = a.left < b.right and a.right > b.left
            assert not (across and a.low < b.high and a.high > b.low)
