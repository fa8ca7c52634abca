"""The forms for rules of framing and for doubled studs."""

from __future__ import annotations

import pytest
from pytestqt.qtbot import QtBot

from core.lengths import Length
from core.model import DoubledStud, Near, Side
from gui.desk import Desk
from gui.edits import add_wall, delete
from gui.fields import Choice, Field, Tick
from gui.panels.doubled import DoubledForm
from gui.panels.form import Form
from gui.panels.rules import RulesForm
from loft import STUD, desk_of, loft


@pytest.fixture
def desk(qapp: object) -> Desk:
    assert qapp is not None
    return desk_of()


def form_of(kind: type[Form], desk: Desk, qtbot: QtBot) -> Form:
    form = kind(desk, desk.wording)
    qtbot.addWidget(form)
    form.refresh()
    return form


def enter(form: Form, name: str, text: str) -> None:
    field = next(f for f in form.findChildren(Field) if f.accessibleName() == name)
    assert field.isEnabled()
    field.setText(text)
    field.editingFinished.emit()


def choose(form: Form, name: str, text: str) -> Choice:
    box = next(c for c in form.findChildren(Choice) if c.accessibleName() == name)
    box.setCurrentText(text)
    box.activated.emit(box.currentIndex())
    return box


def set_tick(form: Form, name: str) -> None:
    next(t for t in form.findChildren(Tick) if t.text() == name).click()


def test_the_point_can_be_typed_once_it_is_wanted(desk: Desk, qtbot: QtBot) -> None:
    form = form_of(RulesForm, desk, qtbot)
    assert isinstance(form, RulesForm)
    assert not form.origin.isEnabled()
    set_tick(form, "Layout lines up with a point")
    enter(form, "Point from the left end", "7 1/2")
    assert desk.wall is not None
    assert desk.wall.layout.origin == Length.of_inches(7.5)
    assert desk.undo_text == "Point from the left end of wall B"
    set_tick(form, "Layout lines up with a point")
    assert desk.wall.layout.origin is None


def test_rules_are_chosen(desk: Desk, qtbot: QtBot) -> None:
    form = form_of(RulesForm, desk, qtbot)
    assert isinstance(form, RulesForm)
    assert not form.closer.isEnabled()
    choose(form, "… a king", "stands tight beside it")
    choose(form, "… an end stud", "is left out, or too close")
    enter(form, "Too close means under", "4 in")
    enter(form, "Board edges every", "54 in")
    set_tick(form, "Two openings may share one king")
    assert desk.wall is not None
    rules = desk.wall.goes_by
    assert (rules.near_kings, rules.near_ends) == (Near.KEEP, Near.MERGE)
    assert (rules.closer_than, rules.board) == (Length.of_inches(4), Length.of_inches(54))
    assert (rules.share_kings, rules.end_as_king, rules.cut_sole_first) == (True, False, False)


def test_bare_marks_are_told(desk: Desk, qtbot: QtBot) -> None:
    form = form_of(RulesForm, desk, qtbot)
    assert isinstance(form, RulesForm)
    # Marks 1 to 7 of the wall of 120: studs, and cripples 4 and 5 over the door.
    assert form.bare.text() == "None: every mark has its stud or cripple."
    desk.commit("x", delete(desk.project, "B", STUD))
    form.refresh()
    assert form.bare.text() == 'Mark 2, center at 32": left out by you'


def test_a_stud_is_doubled(desk: Desk, qtbot: QtBot) -> None:
    desk.hold(STUD)
    form = form_of(DoubledForm, desk, qtbot)
    choose(form, "Doubled", "second on the left")
    assert desk.wall is not None
    assert desk.wall.doubled == (DoubledStud(STUD, Side.LEFT),)
    assert desk.undo_text == "Doubled of B3"
    # The second one held, the same field shows.
    desk.hold(f"{STUD}/double")
    assert desk.held == f"{STUD}/double"
    form.refresh()
    assert choose(form, "Doubled", "no, single").currentText() == "no, single"
    assert not desk.wall.doubled


def test_it_lines_up_with_another_wall(qtbot: QtBot, qapp: object) -> None:
    assert qapp is not None
    desk = desk_of(add_wall(loft(), "across", "B"))
    form = form_of(RulesForm, desk, qtbot)
    assert isinstance(form, RulesForm)
    enter(form, "… as the layout of wall", "q")
    assert form.lined.note.text() == "There is no other wall Q here: write one of A."
    enter(form, "… as the layout of wall", "a")
    assert desk.wall is not None
    assert desk.wall.layout.origin == Length.of_inches(4)
    assert (form.lined.text(), form.origin.text()) == ("", "4 in")
