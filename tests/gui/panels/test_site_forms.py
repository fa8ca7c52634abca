"""How the wall goes up, and its nails, in the panel."""

from __future__ import annotations

import msgspec
import pytest
from PySide6.QtWidgets import QLineEdit
from pytestqt.qtbot import QtBot

from core.model import Joint, Nailing, Point, Species
from gui.desk import Desk
from gui.fields import Choice, Field
from gui.held import Held
from gui.panels.form import Form
from gui.panels.nails import NailsForm
from gui.panels.raising import RaisingForm
from gui.panels.section import Section
from gui.panels.turns import TurnsForm
from gui.theme import Theme
from loft import desk_of, loft
from walls import US


@pytest.fixture
def desk(qapp: object) -> Desk:
    assert qapp is not None
    return desk_of()


def raising(desk: Desk, qtbot: QtBot) -> RaisingForm:
    form = RaisingForm(desk, desk.wording)
    qtbot.addWidget(form)
    form.refresh()
    return form


def nails(desk: Desk, qtbot: QtBot) -> NailsForm:
    form = NailsForm(desk, desk.wording)
    qtbot.addWidget(form)
    form.refresh()
    return form


def enter(field: QLineEdit, text: str) -> None:
    field.setText(text)
    field.setModified(True)
    field.editingFinished.emit()


def named(form: Form, name: str) -> Field:
    return next(f for f in form.findChildren(Field) if f.accessibleName() == name)


def test_the_verdict_and_the_gaps(desk: Desk, qtbot: QtBot) -> None:
    # The wall is 60 high at its low end: 60 - sqrt(60^2 - 3.5^2) = 0.102: 1/8 rounded up. 100 from
    # the gable that face A looks to, and 108 high: 8 short of floor there.
    form = raising(desk, qtbot)
    assert form.verdict.text().startswith('Frame it flat, 1/8" short')
    assert "at the far face" in form.verdict.text()
    assert 'On the side of face A the room is 8" short of floor' in form.facts.text()
    assert form.order.text().splitlines()[1].startswith("1. nail down the sole plate")


def test_the_species_changes_the_weight(desk: Desk, qtbot: QtBot) -> None:
    form = raising(desk, qtbot)
    before = form.facts.text()
    choice = form.findChildren(Choice)[0]
    choice.setCurrentText("western larch, green")
    choice.activated.emit(choice.currentIndex())
    assert desk.project.species is Species.WESTERN_LARCH_GREEN
    assert form.facts.text() != before
    assert desk.undo_text == "Timber is of the job"


def test_the_swing_is_painted_by_day_and_by_night(desk: Desk, qtbot: QtBot) -> None:
    form = raising(desk, qtbot)
    form.resize(360, 600)
    picture = form.picture.grab().toImage()
    colours = {picture.pixelColor(x, 95).name() for x in range(picture.width())}
    assert Theme.day().paper.name() in colours
    assert len(colours) > 1


def test_where_no_wall_is_shown_there_is_nothing_to_be_put_up(qtbot: QtBot) -> None:
    form = raising(desk_of(msgspec.structs.replace(loft(), walls=())), qtbot)
    assert form.verdict.text() == "There is nothing to be put up yet."
    assert form.picture.isHidden()


def test_a_row_of_the_schedule_is_changed_and_taken_back(desk: Desk, qtbot: QtBot) -> None:
    form = nails(desk, qtbot)
    count = named(form, "Stud to sole plate, number")
    assert count.text() == "2"
    enter(count, "3")
    assert desk.project.nailing == (Nailing(Joint.STUD_TO_SOLE, count=3),)
    # 2 end studs, places 1, 2, 3, 6, 7, two kings, two trimmers.
    said = form.totals[Joint.STUD_TO_SOLE].text()
    assert said == "33 in 11 places · as you state it"
    enter(count, "")
    assert not desk.project.nailing
    assert count.text() == "2"


def test_a_spacing_and_a_nail(desk: Desk, qtbot: QtBot) -> None:
    form = nails(desk, qtbot)
    enter(named(form, "Sole plate to floor, at most apart"), "12")
    enter(named(form, "Sole plate to floor, nail"), "4 in. screw")
    row = desk.project.nailing[0]
    assert (row.joint, row.nail) == (Joint.SOLE_TO_FLOOR, "4 in. screw")
    assert row.every is not None
    assert row.every.mm == pytest.approx(304.8)
    assert named(form, "Sole plate to floor, at most apart").text() == "12 in"


@pytest.mark.parametrize("text", ["two", "-1", "1.5", "1000"])
def test_what_is_no_number_is_said_under_the_field(desk: Desk, qtbot: QtBot, text: str) -> None:
    count = named(nails(desk, qtbot), "Stud to sole plate, number")
    enter(count, text)
    assert count.refused
    assert text in count.note.text()
    assert not desk.project.nailing


def test_what_takes_time_is_worked_out_only_while_unfolded(desk: Desk, qtbot: QtBot) -> None:
    held = Held(desk)
    qtbot.addWidget(held)
    section = held.part("raising")
    assert isinstance(section, Section)
    assert held.forms.raising.verdict.text() == ""
    section.button.setChecked(True)
    assert held.forms.raising.verdict.text().startswith("Frame it flat")


def test_which_wall_goes_up_first(qtbot: QtBot) -> None:
    """The wall B runs up the slope at v = 100; a second one 36 farther on is laid away from it.

    Each is 108 high. On the side of face A the room is short of floor for B, and C stands where B
    would lie on the far side; C lies on the far side as well, where nothing stands.
    """
    second = msgspec.structs.replace(
        loft().wall("B"),
        letter="C",
        left_end=Point(US.length(12), US.length(136)),
        right_end=Point(US.length(132), US.length(136)),
        boxes=(),
    )
    first = loft().wall("B")
    form = TurnsForm(desk := desk_of(loft()), desk.wording)
    qtbot.addWidget(form)
    form.refresh()
    assert len(form.order.text().splitlines()) == 1
    desk.commit("", msgspec.structs.replace(loft(), walls=(second, first)))
    form.refresh()
    assert form.order.text().splitlines() == [
        '1. Wall B: 1/8" short, tilted up from the side of the far face; before C, whose place is'
        " where it lies.",
        '2. Wall C: 1/8" short, tilted up from the side of the far face; no wall still to come'
        " stands where it lies.",
    ]


def test_the_order_stands_in_a_section_of_wall_and_room(desk: Desk, qtbot: QtBot) -> None:
    held = Held(desk)
    qtbot.addWidget(held)
    section = held.part("turns")
    assert isinstance(section, Section)
    assert not section.isHidden()
    desk.show_room()
    assert not section.isHidden()
