"""The section of blocking and backing, and the fields of a fixture, as a person uses them."""

from __future__ import annotations

import msgspec
import pytest
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from core.lengths import Length, Unit
from core.model import Blocking, FixtureKind, MeetingKind, Project, WallFace
from gui.desk import Desk
from gui.edits import add_fixture, add_zone
from gui.fields import Choice, Field, Tick
from gui.numbers import numbers_of
from gui.panels.fixture import FixtureForm
from gui.panels.form import Form
from gui.panels.nailed import NailedForm
from gui.panels.room import RoomForm
from gui.panels.zone import ZoneForm
from loft import desk_of, loft
from walls import US


def form_of(kind: type[Form], desk: Desk, qtbot: QtBot) -> Form:
    form = kind(desk, desk.wording)
    qtbot.addWidget(form)
    form.refresh()
    return form


@pytest.fixture
def desk(qapp: object) -> Desk:
    assert qapp is not None
    return desk_of()


@pytest.fixture
def form(desk: Desk, qtbot: QtBot) -> Form:
    return form_of(NailedForm, desk, qtbot)


def field(form: Form, name: str) -> Field:
    return next(f for f in form.findChildren(Field) if f.accessibleName() == name)


def enter(form: Form, name: str, text: str) -> Field:
    found = field(form, name)
    found.setText(text)
    found.setModified(True)
    found.editingFinished.emit()
    return found


def tick(form: Form, name: str) -> Tick:
    return next(t for t in form.findChildren(Tick) if t.text() == name)


def choose(form: Form, name: str, text: str) -> None:
    box = next(c for c in form.findChildren(Choice) if c.accessibleName() == name)
    box.setCurrentText(text)
    box.activated.emit(box.currentIndex())


def said(form: Form) -> list[str]:
    return [label.text() for label in form.findChildren(QLabel)]


def blocking(desk: Desk) -> Blocking | None:
    return desk.wall.blocking if desk.wall else None


def test_rows_are_typed_with_semicolons_between(desk: Desk, form: Form) -> None:
    enter(form, "Heights of rows", "24; 4'")
    assert blocking(desk) == Blocking((Length.of_inches(24), Length.of_inches(48, Unit.FEET)))
    assert field(form, "Heights of rows").text() == "24 in; 4'"
    assert desk.undo_text == "Heights of rows of wall B"
    enter(form, "Heights of rows", "")
    assert blocking(desk) is None


def test_a_row_that_does_not_fit_is_refused_under_the_field(desk: Desk, form: Form) -> None:
    found = enter(form, "Heights of rows", "107")
    assert found.note.text().endswith('lower the row to 105 3/4" or less.')
    assert blocking(desk) is None


def test_a_greatest_distance_is_stated_and_taken_back(desk: Desk, form: Form) -> None:
    enter(form, "Rows at most apart", "48")
    found = blocking(desk)
    assert found is not None
    assert found.at_most == Length.of_inches(48)
    enter(form, "Rows at most apart", "")
    assert blocking(desk) is None


def test_fire_blocks_begin_at_ten_feet(desk: Desk, form: Form) -> None:
    over = field(form, "In bays higher than")
    assert not over.isEnabled()
    tick(form, "Fire blocks").click()
    assert (over.isEnabled(), over.text()) == (True, "10'")
    enter(form, "In bays higher than", "8'")
    found = blocking(desk)
    assert found is not None
    assert found.fire == Length.of_inches(96, Unit.FEET)
    tick(form, "Fire blocks").click()
    assert blocking(desk) is None


def test_only_rows_that_there_are_can_be_staggered(desk: Desk, form: Form) -> None:
    staggered = tick(form, "Staggered, to be end-nailed")
    assert not staggered.isEnabled()
    enter(form, "Heights of rows", "24")
    assert staggered.isEnabled()
    staggered.click()
    assert blocking(desk) == Blocking((Length.of_inches(24),), staggered=True)


def meeting_loft() -> Project:
    """The loft with a wall C whose end stands against B's face A, from 46.5 to 50 of the room."""
    other = msgspec.structs.replace(US.wall((50, 20), (50, 100)), letter="C")
    return msgspec.structs.replace(loft(), walls=(*loft().walls, other))


def test_walls_that_meet_are_told_and_chosen_for(qtbot: QtBot, qapp: object) -> None:
    """B begins at u = 12: C takes up 46.5 - 12 = 34.5 to 38."""
    assert qapp is not None
    desk = desk_of(meeting_loft())
    form = form_of(NailedForm, desk, qtbot)
    assert 'Wall C ends here from 34 1/2" to 38".' in said(form)
    choose(form, "Gets there", "three studs")
    assert desk.wall is not None
    assert desk.wall.meeting is MeetingKind.THREE_STUDS
    choose(form, "Gets there", "nothing chosen")
    assert desk.wall.meeting is None


def test_where_no_wall_meets_that_is_told(form: Form) -> None:
    assert "No wall ends against this one." in said(form)


def test_blocks_between_rafters(desk: Desk, form: Form) -> None:
    """B takes up v = 100 to 103.5; rafters at 96 and 112, 1 1/2 thick: 16 - 1.5 = 14 1/2.

    Up the slope 48 * sqrt 2 = 67.88, less 3 1/2: 64.38 at most 24 apart, 3 steps and 4 blocks; on
    the level 72 - 3.5 = 68.5: 3 steps and 4 blocks.
    """
    assert 'It runs between two rafters, 14 1/2" apart in the clear.' in said(form)
    assert not field(form, "At most apart along it").isEnabled()
    tick(form, "Blocks between the rafters").click()
    told = 'It runs between two rafters, 14 1/2" apart in the clear: 8 blocks of 14 1/2".'
    assert told in said(form)
    assert desk.wall is not None
    assert desk.wall.rafter_backing is not None
    tick(form, "Blocks between the rafters").click()
    assert desk.wall.rafter_backing is None


def test_a_slip_gap_is_typed_and_taken_back(desk: Desk, form: Form) -> None:
    enter(form, "Plate short of the rafters by", "1/2")
    assert desk.wall is not None
    assert desk.wall.slip_gap == Length.of_inches(0.5)
    enter(form, "Plate short of the rafters by", "")
    assert desk.wall.slip_gap is None


def test_measured_rafters_are_typed_in_the_room(desk: Desk, qtbot: QtBot) -> None:
    room = form_of(RoomForm, desk, qtbot)
    enter(room, "Measured at", "1; 24 1/4; 4'")
    assert [US.of(p.mm) for p in desk.project.room.rafter.places] == pytest.approx([1, 24.25, 48])


def test_every_field_of_a_zone_is_one_edit(desk: Desk, qtbot: QtBot) -> None:
    desk.commit("zone", add_zone(desk.project, "B"))
    desk.hold("B/kept-clear-1")
    form = form_of(ZoneForm, desk, qtbot)
    enter(form, "Left edge from the left end", "20")
    enter(form, "Bottom above subfloor", "30")
    enter(form, "Width", "14")
    enter(form, "Height of the zone", "18")
    assert desk.wall is not None
    (zone,) = desk.wall.kept_clear
    sizes = (zone.left, zone.bottom, zone.width, zone.height)
    assert [US.of(x.mm) for x in sizes] == pytest.approx([20, 30, 14, 18])
    assert desk.undo_text == "Height of the zone of kept clear 1"


@pytest.fixture
def fixture_form(qapp: object, qtbot: QtBot) -> Form:
    assert qapp is not None
    desk = desk_of(add_fixture(loft(), "B"))
    desk.hold("B/backing-1")
    return form_of(FixtureForm, desk, qtbot)


def test_every_field_of_a_fixture_is_one_edit(fixture_form: Form) -> None:
    form, desk = fixture_form, fixture_form.desk
    choose(form, "What hangs there", "grab bar")
    choose(form, "Backing flush with", "the far face")
    enter(form, "Height to its middle", "34")
    enter(form, "Left edge from the left end", "20")
    enter(form, "Width", "30")
    enter(form, "Backing timber, width", "7 1/4")
    assert desk.wall is not None
    (found,) = desk.wall.fixtures
    assert (found.kind, found.face) == (FixtureKind.GRAB_BAR, WallFace.FAR)
    lengths = (found.height, found.left, found.width, found.timber.width)
    assert [US.of(x.mm) for x in lengths] == pytest.approx([34, 20, 30, 7.25])
    assert desk.undo_text == "Backing timber, width of backing 1"


def test_a_fixture_tells_what_backs_it(fixture_form: Form) -> None:
    """From 40 to 80 the bays 32.75-47.25 and 48.75-57 carry it; from 57 stands the door's king."""
    desk = fixture_form.desk
    assert desk.result is not None
    found = numbers_of(desk.result, "B/backing-1", desk.wording)
    assert (found.name, found.what) == ("backing 1", "rail")
    assert {f.caption: f.text for f in found.figures} == {
        "Height to center": '36"',
        "Backed by": '14 1/2", 8 1/4"',
        "Stock": "2 of 2x6, on edge, flush with face A",
    }


def test_a_piece_of_backing_stands_for_its_fixture_and_is_held_on(fixture_form: Form) -> None:
    desk = fixture_form.desk
    desk.hold("B/backing-1/layout/2")
    enter(fixture_form, "Left edge from the left end", "50")
    assert desk.held == "B/backing-1"
