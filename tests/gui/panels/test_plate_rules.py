"""The panel of the plates' stock and joints."""

from __future__ import annotations

import pytest
from pytestqt.qtbot import QtBot

from core.lengths import Length, Unit
from core.model import PlateJoint, PlateRules
from gui.desk import Desk
from gui.panels.plate_rules import PlateRulesForm
from loft import desk_of


@pytest.fixture
def desk(qapp: object) -> Desk:
    assert qapp is not None
    return desk_of()


@pytest.fixture
def form(desk: Desk, qtbot: QtBot) -> PlateRulesForm:
    made = PlateRulesForm(desk, desk.wording)
    qtbot.addWidget(made)
    made.refresh()
    return made


def plates(desk: Desk) -> list[str]:
    assert desk.result is not None
    return [key for key, _ in desk.result.labels if key.startswith("B/sole")]


def enter(form: PlateRulesForm, text: str) -> None:
    form.longest.setText(text)
    form.longest.setModified(True)
    form.longest.editingFinished.emit()


def test_nothing_is_stated_at_first(form: PlateRulesForm, desk: Desk) -> None:
    assert desk.project.habits.plates is None
    assert not form.longest_tick.isChecked()
    assert (form.longest.isEnabled(), form.lap.isEnabled()) == (False, False)
    assert form.joint.currentText() == "half the angle each"


def test_stock_is_stated_and_taken_back(form: PlateRulesForm, desk: Desk) -> None:
    # The wall is 120 long: 16 ft reach over it, 96 in. do not.
    form.longest_tick.click()
    assert form.longest.text() == "16'"
    assert plates(desk) == ["B/sole"]
    enter(form, "96")
    assert desk.project.habits.plates == PlateRules(Length.of_inches(96, Unit.INCH))
    assert desk.undo_text == "Longest stock"
    assert len(plates(desk)) == 2
    form.longest_tick.click()
    assert plates(desk) == ["B/sole"]
    assert (form.longest.text(), form.longest.isEnabled()) == ("", False)


def test_stock_too_short_is_refused(form: PlateRulesForm, desk: Desk) -> None:
    form.longest_tick.click()
    enter(form, "12")
    assert form.longest.refused
    assert "600 mm" in form.longest.note.text()
    assert plates(desk) == ["B/sole"]


def test_lap_and_joint(form: PlateRulesForm, desk: Desk) -> None:
    form.lap_tick.click()
    form.joint.setCurrentText("both cut plumb, butted")
    form.joint.activated.emit(form.joint.currentIndex())
    rules = desk.project.habits.plates
    assert rules == PlateRules(lap=Length.of_inches(24), joint=PlateJoint.PLUMB)
    assert desk.undo_text == "Where slopes meet"
