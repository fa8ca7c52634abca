"""The form for leaf, allowances and hinges, and the spacer of a header."""

from __future__ import annotations

import pytest
from pytestqt.qtbot import QtBot

from core.lengths import Length
from core.model import Hanging, Opening, Side, Swing
from gui.desk import Desk
from gui.fields import Choice, Field, Tick
from gui.numbers import numbers_of
from gui.panels.form import Form
from gui.panels.leaf import LeafForm
from gui.panels.opening import OpeningForm
from loft import DOOR, desk_of


@pytest.fixture
def desk(qapp: object) -> Desk:
    assert qapp is not None
    desk = desk_of()
    desk.hold(DOOR)
    return desk


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


def choose(form: Form, name: str, text: str) -> None:
    box = next(c for c in form.findChildren(Choice) if c.accessibleName() == name)
    assert box.isEnabled()
    box.setCurrentText(text)
    box.activated.emit(box.currentIndex())


def set_tick(form: Form, name: str) -> None:
    tick = next(t for t in form.findChildren(Tick) if t.text() == name)
    assert tick.isEnabled()
    tick.click()


def opening(desk: Desk) -> Opening:
    assert desk.wall is not None
    return desk.wall.opening("door-1")


def test_the_sum_is_shown(desk: Desk, qtbot: QtBot) -> None:
    form = form_of(LeafForm, desk, qtbot)
    assert isinstance(form, LeafForm)
    assert form.sums.text() == ""
    set_tick(form, "Size from the leaf or unit")
    assert form.sums.text() == 'Width 28" + 2" = 30"\nHeight 77 1/2" + 2 1/2" = 80"'
    enter(form, "Leaf width", "26 in")
    assert opening(desk).width == Length.of_inches(28)
    assert form.sums.text().startswith('Width 26" + 2" = 28"')
    set_tick(form, "Size from the leaf or unit")
    assert (opening(desk).leaf, opening(desk).width) == (None, Length.of_inches(28))


def test_it_hangs_and_says_so(desk: Desk, qtbot: QtBot) -> None:
    form = form_of(LeafForm, desk, qtbot)
    set_tick(form, "Hinged")
    choose(form, "Hinges on the", "right")
    choose(form, "Opens", "away from face A")
    assert opening(desk).hung == Hanging(Side.RIGHT, Swing.AWAY)
    assert desk.result is not None
    said = {f.caption: f.text for f in numbers_of(desk.result, DOOR, desk.wording).figures}
    assert said["Opens"] == "hinges on the right, away from face A"


def test_spacers_make_a_header_flush(desk: Desk, qtbot: QtBot) -> None:
    form = form_of(OpeningForm, desk, qtbot)
    assert isinstance(form, OpeningForm)
    assert not form.spacer.isEnabled()
    choose(form, "Header", "on edge")
    choose(form, "Plies", "2")
    set_tick(form, "Spacers between plies on edge")
    assert opening(desk).header.spacer == Length.of_inches(0.5)
    assert desk.result is not None
    header = f"{DOOR}/header/1"
    said = {f.caption: f.text for f in numbers_of(desk.result, header, desk.wording).figures}
    assert said["Stock"] == '2 × 2x4, 1 × spacer 1/2": 3 1/2" thick'
