"""Ends out of plumb are stated per end, and what follows is told below."""

from __future__ import annotations

import msgspec
import pytest
from pytestqt.qtbot import QtBot

from core.model import EndLean, EndStud, Side, StandsOn
from gui.desk import Desk
from gui.fields import Choice, Field
from gui.panels.leaning import LeaningForm
from loft import desk_of


@pytest.fixture
def desk(qapp: object) -> Desk:
    assert qapp is not None
    return desk_of()


@pytest.fixture
def form(desk: Desk, qtbot: QtBot) -> LeaningForm:
    made = LeaningForm(desk, desk.wording)
    qtbot.addWidget(made)
    made.refresh()
    return made


def enter(field: Field, text: str) -> None:
    field.setText(text)
    field.setModified(True)
    field.editingFinished.emit()


def choose(box: Choice, text: str) -> None:
    box.setCurrentText(text)
    box.activated.emit(box.currentIndex())


@pytest.mark.parametrize("side", Side)
def test_an_end_is_stated_changed_and_taken_back(desk: Desk, form: LeaningForm, side: Side) -> None:
    def stated() -> EndLean | None:
        wall = desk.project.wall("B")
        return wall.left_lean if side is Side.LEFT else wall.right_lean

    assert not form.studs[side].isEnabled()
    enter(form.offsets[side], "3/4")
    lean = stated()
    assert lean is not None
    assert lean.offset.mm == pytest.approx(19.05)
    assert lean.stud is EndStud.PLUMB
    assert f"{side.value.capitalize()} end leans out of" in (desk.undo_text or "")
    choose(form.studs[side], "leans with it")
    lean = stated()
    assert lean is not None
    assert lean.stud is EndStud.LEANING
    enter(form.offsets[side], "-1/2")
    lean = stated()
    assert lean is not None
    assert lean.offset.mm == pytest.approx(-12.7)
    assert lean.stud is EndStud.LEANING
    enter(form.offsets[side], "")
    assert stated() is None


def test_what_follows_is_told(form: LeaningForm) -> None:
    assert form.told.isHidden()
    enter(form.offsets[Side.LEFT], "3/4")
    assert 'leans out 3/4"' in form.told.text()


def test_too_much_is_refused_with_the_most(desk: Desk, form: LeaningForm) -> None:
    enter(form.offsets[Side.LEFT], "9")
    assert "write 200 mm or less" in form.offsets[Side.LEFT].note.text()
    assert desk.project.wall("B").left_lean is None


def test_a_wall_on_rafters_has_nothing_to_state(desk: Desk, form: LeaningForm) -> None:
    wall = msgspec.structs.replace(desk.project.wall("B"), stands_on=StandsOn.RAFTERS)
    desk.commit("cheek", desk.project.with_wall(wall))
    form.refresh()
    assert not form.offsets[Side.LEFT].isEnabled()
