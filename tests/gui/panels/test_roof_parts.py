"""Parts of the roof are added, set and taken away; each edit is named for undo."""

from __future__ import annotations

from collections.abc import Callable

import msgspec
import pytest
from PySide6.QtWidgets import QLineEdit
from pytestqt.qtbot import QtBot

from core.lengths import Length
from core.model import DormerKind, Passing, Room, Side, StandsOn
from gui.desk import Desk
from gui.fields import Choice, Field, Tick
from gui.panels.form import Form
from gui.panels.roof_parts import RoofPartsForm
from gui.panels.wall import WallForm
from loft import desk_of, loft


@pytest.fixture
def desk(qapp: object) -> Desk:
    assert qapp is not None
    return desk_of()


@pytest.fixture
def form(desk: Desk, qtbot: QtBot) -> RoofPartsForm:
    made = RoofPartsForm(desk, desk.wording)
    qtbot.addWidget(made)
    made.refresh()
    return made


def enter(field: QLineEdit, text: str) -> None:
    field.setText(text)
    field.setModified(True)
    field.editingFinished.emit()


def named(form: Form, name: str) -> Field:
    return next(f for f in form.findChildren(Field) if f.accessibleName() == name)


def choose(form: Form, name: str, text: str) -> None:
    box = next(c for c in form.findChildren(Choice) if c.accessibleName() == name)
    box.setCurrentText(text)
    box.activated.emit(box.currentIndex())


LISTS: dict[str, Callable[[Room], tuple[object, ...]]] = {
    "left-breaks": lambda room: room.left.breaks if room.left else (),
    "right-breaks": lambda room: room.right.breaks if room.right else (),
    "dormers": lambda room: room.dormers,
    "wings": lambda room: room.wings,
    "purlins": lambda room: room.purlins,
    "kept_clear": lambda room: room.kept_clear,
}


@pytest.mark.parametrize("name", LISTS)
def test_each_list_adds_and_takes_away(desk: Desk, form: RoofPartsForm, name: str) -> None:
    rows, of = form.lists[name], LISTS[name]
    assert rows.body.isHidden()
    assert rows.remove.isHidden()
    rows.add.click()
    rows.add.click()
    assert len(of(desk.project.room)) == 2
    assert rows.which.count() == 2
    assert rows.index() == 1
    assert not rows.body.isHidden()
    rows.remove.click()
    rows.remove.click()
    assert of(desk.project.room) == ()
    assert rows.body.isHidden()


@pytest.mark.parametrize(
    ("name", "field", "text", "path", "mm"),
    [
        ("dormers", "Front wall in from eave wall", "30", "face", 762.0),
        ("dormers", "Starts along the room at", "100", "start", 2540.0),
        ("wings", "Reaches out by", "60", "reach", 1524.0),
        ("wings", "First eave height", "50", "first.eave_height", 1270.0),
        ("purlins", "Its left face across at", "40", "left", 1016.0),
        ("purlins", "Starts along the room at (nothing: runs on)", "40", "start", 1016.0),
        ("purlins", "Ends along the room at (nothing: runs on)", "90", "end", 2286.0),
        (
            "purlins",
            "Left face across at its end (nothing: straight)",
            "70",
            "end_left",
            1778.0,
        ),
        ("purlins", "Gap kept", "1/2", "gap", 12.7),
        ("kept_clear", "Wide across", "20", "wide", 508.0),
        ("kept_clear", "Leans: height of a second measure (nothing: plumb)", "60", "up_to", 1524.0),
        ("right-breaks", "In from the eave wall, level", "30", "run", 762.0),
    ],
)
def test_a_field_states_its_value(
    desk: Desk, form: RoofPartsForm, name: str, field: str, text: str, path: str, mm: float
) -> None:
    rows = form.lists[name]
    rows.add.click()
    enter(named(rows.body, field), text)
    found: object = LISTS[name](desk.project.room)[0]
    for part in path.split("."):
        found = getattr(found, part)
    assert isinstance(found, Length)
    assert found.mm == pytest.approx(mm)


def test_a_chimney_leans_once_a_height_is_stated(desk: Desk, form: RoofPartsForm) -> None:
    rows = form.lists["kept_clear"]
    rows.add.click()
    across = named(rows.body, "That corner there, across at")
    enter(across, "130")
    assert "state the height first" in across.note.text()
    enter(named(rows.body, "Leans: height of a second measure (nothing: plumb)"), "60")
    enter(across, "130")
    (kept,) = desk.project.room.kept_clear
    assert kept.corner_at(1524.0)[0] == pytest.approx(130 * 25.4)


def test_an_emptied_field_is_not_stated(desk: Desk, form: RoofPartsForm) -> None:
    rows = form.lists["purlins"]
    rows.add.click()
    field = named(rows.body, "Ends along the room at (nothing: runs on)")
    enter(field, "90")
    enter(field, "")
    assert desk.project.room.purlins[0].end is None


def test_choices_state_their_values(desk: Desk, form: RoofPartsForm) -> None:
    form.lists["dormers"].add.click()
    choose(form.lists["dormers"].body, "Kind", "gable")
    choose(form.lists["dormers"].body, "On the side", "left")
    form.lists["purlins"].add.click()
    choose(form.lists["purlins"].body, "Walls", "pass under it")
    (dormer,), (purlin,) = desk.project.room.dormers, desk.project.room.purlins
    assert (dormer.kind, dormer.side) == (DormerKind.GABLE, Side.LEFT)
    assert purlin.passing is Passing.UNDER


def test_the_one_chosen_is_set(desk: Desk, form: RoofPartsForm) -> None:
    rows = form.lists["purlins"]
    rows.add.click()
    rows.add.click()
    rows.which.setCurrentIndex(0)
    rows.which.activated.emit(0)
    enter(named(rows.body, "Its left face across at"), "33")
    assert [round(p.left.mm / 25.4) for p in desk.project.room.purlins] == [33, 60]
    assert rows.index() == 0


def test_undo_says_what_was_set(desk: Desk, form: RoofPartsForm) -> None:
    rows = form.lists["dormers"]
    rows.add.click()
    enter(named(rows.body, "Starts along the room at"), "100")
    assert desk.undo_text == "Starts along the room at of dormer 1"


def test_what_makes_no_sense_is_said_under_the_field(desk: Desk, form: RoofPartsForm) -> None:
    rows = form.lists["dormers"]
    rows.add.click()
    field = named(rows.body, "Width over its cheeks")
    enter(field, "600")
    assert "past the end of the room" in field.note.text()
    assert desk.project.room.dormers[0].width.mm < 400 * 25.4


def test_hips_are_there_or_not(desk: Desk, form: RoofPartsForm) -> None:
    tick = next(t for t in form.findChildren(Tick) if t.text() == "Hip at the start of the room")
    pitch = named(form, "Hip at the start of the room, Pitch")
    assert not pitch.isEnabled()
    tick.click()
    assert desk.project.room.start_hip is not None
    assert pitch.isEnabled()
    enter(pitch, "8 in 12")
    enter(named(form, "Hip at the start of the room, Height at gable wall"), "40")
    hip = desk.project.room.start_hip
    assert (hip.pitch.tangent, hip.eave_height.mm) == pytest.approx((8 / 12, 1016))
    tick.click()
    assert desk.project.room.start_hip is None


def test_a_slope_that_is_not_there_has_no_changes(qtbot: QtBot) -> None:
    project = loft()
    shed = msgspec.structs.replace(project.room, right=None)
    form = RoofPartsForm(desk_of(msgspec.structs.replace(project, room=shed)), desk_of().wording)
    qtbot.addWidget(form)
    form.refresh()
    hidden = [name for name, rows in form.lists.items() if rows.isHidden()]
    assert hidden == ["right-breaks"]


def test_a_wall_may_stand_on_rafters(desk: Desk, qtbot: QtBot) -> None:
    form = WallForm(desk, desk.wording)
    qtbot.addWidget(form)
    form.refresh()
    sole = [f for f in form.findChildren(Field) if f.accessibleName().startswith("Sole plate")]
    top = [f for f in form.findChildren(Field) if f.accessibleName().startswith("Top plate")]
    assert sole
    choose(form, "Stands on", "rafters' tops")
    choose(form, "Top plates", "none")
    wall = desk.project.wall("B")
    assert (wall.stands_on, wall.top_plate.count) == (StandsOn.RAFTERS, 0)
    assert not any(field.isEnabled() for field in (*sole, *top))
