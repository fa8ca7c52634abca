"""The panel of the saw's stops."""

from __future__ import annotations

import pytest
from pytestqt.qtbot import QtBot

from gui.desk import Desk
from gui.figure import Figure
from gui.numbers import numbers_of
from gui.panels.saw import SawForm
from loft import STUD, desk_of


@pytest.fixture
def desk(qapp: object) -> Desk:
    assert qapp is not None
    return desk_of()


@pytest.fixture
def form(desk: Desk, qtbot: QtBot) -> SawForm:
    made = SawForm(desk, desk.wording)
    qtbot.addWidget(made)
    made.refresh()
    return made


def enter(form: SawForm, text: str) -> None:
    form.bevel.setText(text)
    form.bevel.setModified(True)
    form.bevel.editingFinished.emit()


def test_the_usual_stops_are_shown(form: SawForm, desk: Desk) -> None:
    assert (form.bevel.text(), form.mitre.text()) == ("45°", "50°")
    assert desk.project.habits.saw is None


@pytest.mark.parametrize("text", ["40°", "40", " 40 ° "])
def test_a_stop_is_one_edit_and_tells_the_way_round(form: SawForm, desk: Desk, text: str) -> None:
    # The stud at 31 1/4 stands under 12 in 12: bevel 45, within the usual stop.
    captions = [f.caption for f in _figures(desk)]
    assert not any(caption.startswith("Past your saw") for caption in captions)
    enter(form, text)
    assert desk.project.habits.saw is not None
    assert desk.project.habits.saw.bevel.degrees == pytest.approx(40)
    assert desk.undo_text == "Bevel goes to"
    (told,) = (f for f in _figures(desk) if f.caption == "Past your saw: bevel 45.0°")
    assert told.text.startswith(
        "stand the piece on its narrow edge, clamp it to the fence and set miter"
    )
    desk.undo()
    form.refresh()
    assert form.bevel.text() == "45°"


def test_what_is_no_angle_is_refused_under_the_field(form: SawForm, desk: Desk) -> None:
    enter(form, "90")
    assert form.bevel.refused
    assert form.bevel.note.text() == (
        "“90” is no angle that a saw is set to; write degrees from a square cut, from 0° to 79°, as"
        " in 45°."
    )
    assert desk.project.habits.saw is None


def _figures(desk: Desk) -> tuple[Figure, ...]:
    assert desk.result is not None
    return numbers_of(desk.result, STUD, desk.wording).figures
