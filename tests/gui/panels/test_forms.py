"""Each form makes one edit a field, names it for undo, and says under the field why it cannot."""

from __future__ import annotations

from collections.abc import Callable

import msgspec
import pytest
from PySide6.QtWidgets import QLineEdit
from pytestqt.qtbot import QtBot

from core.lengths import Length, Unit
from core.model import AddedStud, BoxHeight, FloorSeen, HeaderKind, LineEdge, RoofBuilt, Side
from gui.desk import Desk
from gui.fields import Choice, Field, Tick
from gui.panels.box import BoxForm
from gui.panels.form import Form
from gui.panels.habits import HabitsForm
from gui.panels.opening import OpeningForm
from gui.panels.room import RoomForm
from gui.panels.stud import StudForm
from gui.panels.wall import WallForm
from loft import BOX, DOOR, STUD, desk_of, loft

Make = Callable[[type[Form], str | None], Form]


@pytest.fixture
def desk(qapp: object) -> Desk:
    assert qapp is not None
    return desk_of()


@pytest.fixture
def make(desk: Desk, qtbot: QtBot) -> Make:
    def made(kind: type[Form], held: str | None) -> Form:
        desk.hold(held)
        form = kind(desk, desk.wording)
        qtbot.addWidget(form)
        form.refresh()
        return form

    return made


def named(form: Form, name: str) -> Field:
    """The field that says it has this name."""
    return next(f for f in form.findChildren(Field) if f.accessibleName() == name)


def choice(form: Form, name: str) -> Choice:
    return next(c for c in form.findChildren(Choice) if c.accessibleName() == name)


def tick(form: Form, name: str) -> Tick:
    return next(t for t in form.findChildren(Tick) if t.text() == name)


def enter(field: QLineEdit, text: str) -> None:
    field.setText(text)
    field.setModified(True)
    field.returnPressed.emit()
    field.editingFinished.emit()


def choose(box: Choice, text: str) -> None:
    box.setCurrentText(text)
    box.activated.emit(box.currentIndex())


def texts(form: Form) -> dict[str, str]:
    return {f.accessibleName(): f.text() for f in form.findChildren(Field)}


def test_an_opening_shows_its_fields(make: Make) -> None:
    # The wall is 120 long and the opening stands from 60 to 90. The test's timber is 1.5 * 25.4 mm
    # in floating point, which nobody would write, so it shows as on the tape.
    assert texts(make(OpeningForm, DOOR)) == {
        "Left edge from the left end": "60 in",
        "Right edge from the right end": '30"',
        "Width": "30 in",
        "Head above subfloor": "80 in",
        "Sill above subfloor": "0 in",
        "Header timber, thickness": '1 1/2"',
        "Header timber, width": '3 1/2"',
        "Spacer thickness": "",
    }


@pytest.mark.parametrize(
    ("name", "text", "field", "length"),
    [
        ("Left edge from the left end", "5' 8\"", "left", Length.of_inches(68, Unit.FEET)),
        # 120 - 20 - 30.
        ("Right edge from the right end", "20", "left", Length.of_inches(70)),
        ("Width", "700 mm", "width", Length(700.0, Unit.MM)),
        ("Head above subfloor", "82 1/2", "head", Length.of_inches(82.5)),
        ("Sill above subfloor", "12", "sill", Length.of_inches(12)),
    ],
)
def test_a_field_of_an_opening_is_one_edit(
    make: Make, desk: Desk, name: str, text: str, field: str, length: Length
) -> None:
    form = make(OpeningForm, DOOR)
    enter(named(form, name), text)
    assert desk.wall is not None
    assert getattr(desk.wall.opening("door-1"), field) == length
    assert desk.undo_text == f"{name} of door 1"
    desk.undo()
    form.refresh()
    assert named(form, "Left edge from the left end").text() == "60 in"


def test_what_does_not_fit_is_said_under_the_field_and_at_the_foot(
    make: Make, desk: Desk, qtbot: QtBot
) -> None:
    field = named(make(OpeningForm, DOOR), "Left edge from the left end")
    with qtbot.waitSignal(desk.said) as said:
        enter(field, "10")
    assert field.note.text() == (
        'In wall B, door 1 does not fit with its left edge at 10": it fits from 25 1/8" to 85 1/2".'
    )
    assert said.args == [field.note.text()]
    assert (field.text(), desk.undo_text) == ("10", None)


def test_the_header_is_chosen(make: Make, desk: Desk) -> None:
    form = make(OpeningForm, DOOR)
    choose(choice(form, "Header"), "on edge")
    choose(choice(form, "Plies"), "2")
    enter(named(form, "Header timber, width"), "5 1/2")
    assert desk.wall is not None
    header = desk.wall.opening("door-1").header
    assert (header.kind, header.plies) == (HeaderKind.ON_EDGE, 2)
    assert header.timber.width == Length.of_inches(5.5)


def test_a_head_is_raked_and_level_again(make: Make, desk: Desk) -> None:
    form = make(OpeningForm, DOOR)
    head = choice(form, "Head follows")
    assert head.currentText() == "the level"
    choose(head, "the slope of the roof")
    assert desk.wall is not None
    assert desk.wall.opening("door-1").is_raked
    choose(head, "the level")
    assert not desk.wall.opening("door-1").is_raked
    assert desk.undo_text == "Head follows of door 1"


def test_a_choice_that_is_refused_goes_back(make: Make) -> None:
    form = make(OpeningForm, DOOR)
    enter(named(form, "Head above subfloor"), "105")
    box = choice(form, "Header")
    # On edge the header is 3 1/2 high and would pass through the plates.
    choose(box, "on edge")
    assert box.currentText() == "lies flat"


@pytest.mark.parametrize("key", [STUD, "B/door-1/above/4"])
def test_a_stud_is_placed_from_either_end(make: Make, desk: Desk, key: str) -> None:
    form = make(StudForm, key)
    start = {STUD: ('31 1/4"', '87 1/4"'), "B/door-1/above/4": ('63 1/4"', '55 1/4"')}[key]
    assert tuple(texts(form).values()) == start
    enter(named(form, "Right edge from the right end"), "54 1/2" if "above" in key else "85 1/2")
    # 120 - 1 1/2 - 85 1/2 = 33; 120 - 1 1/2 - 54 1/2 = 64.
    left = named(form, "Left edge from the left end")
    assert left.text() == ('64"' if "above" in key else '33"')
    enter(left, "34 in" if key == STUD else "65 in")
    assert desk.undo_text is not None
    assert desk.undo_text.startswith("Left edge from the left end of B")


def test_a_stud_with_no_room_is_placed_where_there_is_some(qtbot: QtBot) -> None:
    # It is stated at 31, where the stud of place 2 begins at 31 1/4.
    clash = AddedStud("stud-1", Length.of_inches(31))
    wall = msgspec.structs.replace(loft().wall("B"), added=(clash,))
    desk = desk_of(loft().with_wall(wall))
    desk.hold("B/stud-1")
    form = StudForm(desk, desk.wording)
    qtbot.addWidget(form)
    form.refresh()
    assert list(texts(form).values()) == ['31"', '87 1/2"']
    enter(named(form, "Left edge from the left end"), "36")
    assert desk.result is not None
    assert desk.result.frame is not None
    assert desk.result.frame.no_room == ()


def test_a_box_is_set(make: Make, desk: Desk) -> None:
    form = make(BoxForm, BOX)
    enter(named(form, "Height above subfloor"), "40")
    choose(choice(form, "Measured to its"), "top")
    choose(choice(form, "Side of the stud"), "left")
    choose(choice(form, "Opens on"), "the far face")
    enter(named(form, "Box width"), "3")
    assert desk.wall is not None
    box = desk.wall.box("box-1")
    assert (box.height, box.to, box.side, box.width) == (
        Length.of_inches(40),
        BoxHeight.TOP,
        Side.LEFT,
        Length.of_inches(3),
    )
    assert box.on_far_face
    assert desk.undo_text == "Box width of box 1"
    choose(choice(form, "Opens on"), "face A")
    # What is usual is not stated.
    assert desk.wall.box("box-1").face is None


def test_a_wall_is_set(make: Make, desk: Desk) -> None:
    form = make(WallForm, None)
    enter(named(form, "Name"), "Store")
    enter(named(form, "Right end, across"), "140")
    enter(named(form, "Studs on center"), "24")
    choose(choice(form, "Layout starts at the"), "right end")
    enter(named(form, "Top plate, width"), "5 1/2")
    choose(choice(form, "Top plates"), "2")
    wall = desk.wall
    assert wall is not None
    assert (wall.name, wall.right_end.across) == ("Store", Length.of_inches(140))
    assert (wall.layout.spacing, wall.layout.start) == (Length.of_inches(24), Side.RIGHT)
    assert (wall.top_plate.timber.width, wall.top_plate.count) == (Length.of_inches(5.5), 2)
    assert desk.undo_text == "Top plates of wall B"


def test_a_wall_end_outside_the_room_is_said_under_its_field(make: Make) -> None:
    field = named(make(WallForm, None), "Left end, along")
    enter(field, "500")
    assert 'the nearest place inside is 400"' in field.note.text()


def test_the_room_is_set(make: Make, desk: Desk) -> None:
    form = make(RoomForm, None)
    enter(named(form, "Width between eave walls"), "20' 6\"")
    enter(named(form, "Left slope of the roof, Pitch"), "9 in 12")
    enter(named(form, "Left slope of the roof, Height at eave wall"), "60")
    enter(named(form, "On center"), "24")
    room = desk.project.room
    assert room.width == Length.of_inches(246, Unit.FEET)
    assert room.left is not None
    assert (room.left.pitch.text, room.left.eave_height) == ("9 in 12", Length.of_inches(60))
    assert room.rafter.spacing == Length.of_inches(24)
    assert desk.undo_text == "On center of the room"


def test_parts_of_the_roof_come_and_go_with_their_ticks(make: Make, desk: Desk) -> None:
    form = make(RoomForm, None)
    beam = named(form, "Beam width")
    assert not beam.isEnabled()
    tick(form, "Beam under the ridge").click()
    assert desk.project.room.ridge_beam is not None
    assert beam.isEnabled()
    enter(beam, "6")
    assert desk.project.room.ridge_beam.width == Length.of_inches(6)
    tick(form, "Flat ceiling").click()
    assert desk.project.room.flat_ceiling is None
    tick(form, "Flat ceiling").click()
    # Three quarters of the ridge: 48 + 120 = 168 over the middle.
    assert desk.project.room.flat_ceiling == Length.of_inches(126)


def test_the_last_slope_keeps_its_tick(make: Make, desk: Desk) -> None:
    form = make(RoomForm, None)
    right, left = tick(form, "Right slope of the roof"), tick(form, "Left slope of the roof")
    right.click()
    assert (desk.project.room.right, right.isChecked()) == (None, False)
    left.click()
    assert desk.project.room.left is not None
    assert left.isChecked()
    right.click()
    assert desk.project.room.right == desk.project.room.left


def test_habits_are_set(make: Make, desk: Desk) -> None:
    form = make(HabitsForm, None)
    choose(choice(form, "Round to"), "1/8 in.")
    choose(choice(form, "Line on the plate is"), "the uphill edge")
    tick(form, "Feet and inches").click()
    enter(named(form, "Letter for a king"), "DL")
    habits = desk.project.habits
    assert str(habits.tape.step) == "1/8 in"
    assert (habits.tape.feet, habits.line_edge) == (True, LineEdge.UPHILL)
    assert habits.letters.king == "DL"
    assert desk.wording.length(1612.9) == "5'-3 1/2\""
    enter(named(form, "Letter for a stud"), "TOO LONG")
    assert "does not do for a pencil mark" in named(form, "Letter for a stud").note.text()


def test_the_answers_about_roof_and_floor_decide_the_cautions(make: Make, desk: Desk) -> None:
    form = make(RoomForm, None)
    assert (choice(form, "Rafters or trusses").currentText(), len(desk.results.cautions)) == (
        "not answered",
        6,
    )
    choice(form, "Rafters or trusses").chosen.emit(RoofBuilt.TRUSSES)
    choice(form, "Who looked at the floor").chosen.emit(FloorSeen.PAPERS)
    assert (desk.project.room.roof_built, desk.project.room.floor_seen) == (
        RoofBuilt.TRUSSES,
        FloorSeen.PAPERS,
    )
    ids = [caution.message.id for caution in desk.results.cautions]
    assert {"standing.trusses", "standing.floor-papers"} < set(ids)
    assert desk.undo_text == "Who looked at the floor of the room"


def test_an_eave_over_the_other_slope_is_refused_with_the_nearest(make: Make, desk: Desk) -> None:
    # The right slope is 288 high at the left eave, and the ridge stays a millimetre off the wall.
    field = named(make(RoomForm, None), "Left slope of the roof, Height at eave wall")
    enter(field, "300")
    assert 'the nearest that does is 287 7/8"' in field.note.text()
    assert desk.project == loft()
