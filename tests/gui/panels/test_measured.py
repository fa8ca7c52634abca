"""The table of measured points and the fields of a measured stud, on the wall of `loft`."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QLineEdit
from pytestqt.qtbot import QtBot

from gui.desk import Desk
from gui.fields import Tick
from gui.panels.measured import MeasuredForm
from gui.panels.measured_stud import MeasuredStudForm
from gui.panels.stations import Stations
from loft import CRIPPLE, DOOR, STUD, desk_of


@pytest.fixture
def desk(qapp: object) -> Desk:
    assert qapp is not None
    return desk_of()


@pytest.fixture
def form(desk: Desk, qtbot: QtBot) -> MeasuredForm:
    made = MeasuredForm(desk, desk.wording)
    qtbot.addWidget(made)
    made.refresh()
    return made


def enter(field: QLineEdit, text: str) -> None:
    field.setText(text)
    field.setModified(True)
    field.editingFinished.emit()


def table(stations: Stations) -> list[tuple[str, str, str]]:
    return [(row.at.text(), row.height.text(), row.off.text()) for row in stations.rows]


def type_in(stations: Stations, *points: tuple[str, str]) -> None:
    for at, height in points:
        enter(stations.new, at)
        row = next(row for row in stations.rows if row.at.text() == at)
        enter(row.height, height)


def test_points_are_typed_and_show_what_they_differ_by(form: MeasuredForm) -> None:
    # Stated 60 at 0, 84 at 24 and 108 at 96.
    type_in(form.roof, ("96 in", "108 in"), ("0 in", "60 in"), ("24 in", "83 3/8 in"))
    assert table(form.roof) == [
        ("0 in", "60 in", "±0"),
        ("24 in", "83 3/8 in", '−5/8"'),
        ("96 in", "108 in", "±0"),
    ]
    assert form.roof.new.text() == ""
    assert 'Farthest from stated: 5/8" lower, at 24".' in form.said.text()


def test_best_fit_of_the_points_of_one_slope(form: MeasuredForm) -> None:
    # 12 in 12 stated; 46 in 48 is 11.5 in 12.
    type_in(form.roof, ("0 in", "60 in"), ("48 in", "106 in"))
    said = 'Best fit from 0" to 48": 11.5 in 12 (43.8°), stated 12 in 12 (45°).'
    assert said in form.said.text().replace("45.0", "45")


def test_a_point_is_removed_and_its_row_goes(form: MeasuredForm) -> None:
    type_in(form.floor, ("0 in", "0 in"), ("96 in", "-1/2 in"))
    form.floor.rows[0].remove.click()
    assert table(form.floor) == [("96 in", "-1/2 in", '−1/2"')]


def test_a_second_point_at_a_place_is_refused_under_its_field(form: MeasuredForm) -> None:
    type_in(form.roof, ("24 in", "84 in"))
    enter(form.roof.new, "24 in")
    assert form.roof.new.note.text().startswith('A point was measured at 24" already')
    assert len(form.roof.rows) == 1


def test_a_point_that_looks_mistyped_shows_in_the_warning_tone(form: MeasuredForm) -> None:
    type_in(form.floor, ("0 in", "0 in"), ("48 in", "6 in"), ("96 in", "0 in"))
    assert [row.off.objectName() for row in form.floor.rows] == ["faint", "warning", "faint"]


def test_the_level_line_and_the_fit(form: MeasuredForm, desk: Desk) -> None:
    ticks = {t.text(): t for t in form.findChildren(Tick)}
    ticks["Read from a level line"].click()
    assert desk.project.wall("B").level_line is not None
    fields = {f.accessibleName(): f for f in form.findChildren(QLineEdit)}
    enter(fields["Line above subfloor"], "48 in")
    enter(fields["Studs short by"], "1/16 in")
    wall = desk.project.wall("B")
    assert (str(wall.level_line), str(wall.fit)) == ("48 in", "1/16 in")
    enter(fields["Studs short by"], "0")
    ticks["Read from a level line"].click()
    wall = desk.project.wall("B")
    assert (wall.level_line, wall.fit) == (None, None)


def stud_form(desk: Desk, qtbot: QtBot, held: str) -> MeasuredStudForm:
    desk.hold(held)
    made = MeasuredStudForm(desk, desk.wording)
    qtbot.addWidget(made)
    made.refresh()
    return made


@pytest.mark.parametrize(
    ("held", "shown"),
    [
        (STUD, True),
        (CRIPPLE, True),
        ("B/end/left", True),
        ("B/door-1/king/left", True),
        ("B/door-1/trimmer/left", False),
        (DOOR, False),
        ("B/sole", False),
    ],
)
def test_what_can_be_measured(desk: Desk, qtbot: QtBot, held: str, shown: bool) -> None:
    assert stud_form(desk, qtbot, held).shows_held is shown


def test_a_stud_is_cut_to_its_measured_length_and_tried(desk: Desk, qtbot: QtBot) -> None:
    # 12 in 12: a plate stands 1.5 x 1.41421 = 2.1213 high. The long point is under x = 32 3/4:
    # 60 + 32.75 - 2.1213 - 1.5 = 89.1287, on the tape 89 1/8.
    form = stud_form(desk, qtbot, STUD)
    assert (form.long_point.text(), form.long_point.isEnabled()) == ('89 1/8"', False)
    form.measured.click()
    enter(form.long_point, "89 1/4")
    form.test.click()
    (stud,) = desk.project.wall("B").measured_studs
    assert (stud.key, str(stud.length), stud.is_test) == (STUD, "89 1/4 in", True)
    # 89.25 - 89.1287 is 1/8; the end stud, layout/1 and layout/3 stand under
    # the same plate, which ends at 60 + x - 2.1213 = 106.5, x = 48.6.
    assert form.said.text() == (
        'Test stud B3 is 89 1/4", 1/8" longer than worked out:'
        " 3 more under its plate are corrected by it."
    )
    form.measured.click()
    assert desk.project.wall("B").measured_studs == ()
    assert form.said.isHidden()
