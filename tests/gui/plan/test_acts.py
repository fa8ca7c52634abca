"""Copying, mirroring and turning the wall at hand, from the form and the menu."""

from __future__ import annotations

import pytest
from pytestqt.qtbot import QtBot

from gui.desk import Desk
from gui.panels.plan_wall import PlanWallForm
from gui.plan.acts import Acts
from loft import INCH, loft

Chalk = list[tuple[float, float]]


def chalk(desk: Desk, letter: str) -> Chalk:
    ends = desk.project.wall(letter).chalk
    return [(round(u / INCH, 3) + 0.0, round(v / INCH, 3) + 0.0) for u, v in ends]


@pytest.fixture
def form(desk: Desk, qtbot: QtBot) -> PlanWallForm:
    made = PlanWallForm(desk, desk.wording)
    qtbot.addWidget(made)
    desk.hold("B")
    made.refresh()
    return made


@pytest.mark.parametrize(
    ("button", "letter", "wanted", "undo"),
    [
        # Behind it is more room: two feet farther, its own thickness between.
        ("plan.copy", "A", [(12, 127.5), (132, 127.5)], "Copy to wall A"),
        ("plan.mirror", "A", [(108, 100), (228, 100)], "Mirror to wall A"),
        ("plan.quarter-turn", "B", [(72, 40), (72, 160)], "Turn wall B"),
        ("plan.turn-face", "B", [(132, 103.5), (12, 103.5)], "Turn face A of wall B"),
    ],
)
def test_each_button_makes_one_edit_and_holds_its_wall(
    desk: Desk, form: PlanWallForm, button: str, letter: str, wanted: Chalk, undo: str
) -> None:
    form.buttons[button].click()
    assert chalk(desk, letter) == wanted
    assert (desk.held, desk.undo_text) == (letter, undo)
    desk.undo()
    assert desk.project == loft()


def test_the_wall_is_deleted_or_shown(desk: Desk, form: PlanWallForm) -> None:
    form.buttons["plan.to-drawing"].click()
    assert desk.letter == "B"
    desk.show_room()
    form.buttons["plan.delete"].click()
    assert (desk.project.walls, form.stands) == ((), False)


def test_its_length_is_typed(desk: Desk, form: PlanWallForm) -> None:
    assert form.run.text() == "120 in"
    form.run.setText("10' 6\"")
    form.run.editingFinished.emit()
    assert chalk(desk, "B") == [(12, 100), (138, 100)]
    assert desk.undo_text == "Length of wall B"


def test_from_its_own_drawing_a_copy_is_shown(desk: Desk) -> None:
    desk.show_wall("B")
    Acts(desk).copy()
    assert desk.letter == "A"


def test_without_a_wall_nothing_happens(desk: Desk) -> None:
    acts = Acts(desk)
    for act in (acts.copy, acts.mirror, acts.turn, acts.turn_face):
        act()
    assert desk.project == loft()


def test_what_does_not_fit_is_refused(desk: Desk) -> None:
    said: list[str] = []
    desk.said.connect(said.append)
    desk.hold("B")
    # Turned about its middle at (72, 100) it fits; turned at (72, 30) it would end at -30.
    wall = desk.project.wall("B")
    assert wall.run == pytest.approx(120 * INCH)
    Acts(desk).turn()
    Acts(desk).turn()
    assert said[-1] == ""
    assert chalk(desk, "B") == [(132, 100), (12, 100)]
