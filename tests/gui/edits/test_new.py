"""What a new project begins with, and what becomes of its answers in the other system."""

from __future__ import annotations

from pathlib import Path

import pytest

from core.job import work_out
from core.lengths import Length, System, Unit, parse_pitch
from core.model import FloorSeen, OpeningKind, Project, RoofBuilt, SiteRecord
from core.storage import Document, load, save
from gui.edits import add_box, add_opening, add_wall, new_project, set_room
from gui.edits.beyond import Beyond
from gui.edits.new import in_system, set_rafters
from gui.edits.shaping import set_eaves, set_pitches
from gui.wordings import wording_of

INCH = 25.4


def begun(system: System) -> Project:
    """A new project with its first wall."""
    return add_wall(new_project(system, "New"), "Partition")


@pytest.mark.parametrize("system", list(System))
def test_a_new_project_is_a_room_whose_floor_nobody_has_looked_at(system: System) -> None:
    project = new_project(system, "New")
    assert (project.walls, project.room.floor_seen) == ((), FloorSeen.NOBODY)
    assert project.room.roof_built is None
    assert project.habits.tape.system is system


@pytest.mark.parametrize("system", list(System))
def test_its_first_wall_can_be_built(system: System) -> None:
    results = work_out(begun(system), SiteRecord())
    assert results.buildable
    assert [wall.wall.letter for wall in results.walls] == ["A"]


@pytest.mark.parametrize("system", list(System))
def test_with_one_of_everything_it_can_be_saved_and_read_back(
    system: System, tmp_path: Path
) -> None:
    project = begun(system)
    for kind in (OpeningKind.DOOR, OpeningKind.WINDOW):
        project = add_opening(project, "A", kind)
    project = set_room(add_box(project, "A"), roof_built=RoofBuilt.TRUSSES)
    document = Document(project, SiteRecord())
    save(tmp_path / "new.eave", document)
    assert load(tmp_path / "new.eave") == document
    assert work_out(project, SiteRecord()).buildable


def test_eaves_and_pitches_of_both_sides_are_set_at_once() -> None:
    project = set_eaves(new_project(System.INCH, "New"), Length.of_inches(48))
    project = set_pitches(project, parse_pitch("33 in at 0, 69 in at 48 in", Unit.INCH))
    for slope in (project.room.left, project.room.right):
        assert slope is not None
        assert (slope.eave_height, slope.pitch.tangent) == (Length.of_inches(48), 0.75)


def test_a_level_roof_has_no_ridge_and_is_refused() -> None:
    project = new_project(System.INCH, "New")
    with pytest.raises(Beyond) as refusal:
        set_pitches(project, parse_pitch("0 in 12", Unit.INCH))
    said = wording_of(project).say(refusal.value.message)
    assert said.startswith("Pitch: 0 in 12 does not fit, the nearest that does is 1/16 in 12.")


def test_rafters_keep_what_was_not_asked() -> None:
    project = set_rafters(new_project(System.INCH, "New"), depth=Length.of_inches(7.25))
    rafter = project.room.rafter
    assert (rafter.timber.width, rafter.timber.thickness) == (
        Length.of_inches(7.25),
        Length.of_inches(1.5),
    )
    assert rafter.spacing == Length.of_inches(24)
    assert set_rafters(project, apart=Length.of_inches(16)).room.rafter.timber == rafter.timber


def test_in_the_other_system_what_was_not_answered_is_usual_there() -> None:
    project = new_project(System.INCH, "New")
    assert in_system(project, System.METRIC) == new_project(System.METRIC, "New")
    assert in_system(project, System.INCH) is project


def test_in_the_other_system_answers_are_taken_over() -> None:
    """20' is 6096 mm; a pitch stays as it was written."""
    project = set_room(new_project(System.INCH, "New"), width=Length.of_inches(240, Unit.FEET))
    project = set_pitches(project, parse_pitch("8 in 12", Unit.INCH))
    project = set_room(project, roof_built=RoofBuilt.TRUSSES)
    metric = in_system(project, System.METRIC)
    assert metric.room.width == Length(6096.0)
    assert metric.room.left is not None
    assert metric.room.left.pitch.text == "8 in 12"
    assert metric.room.left.eave_height == Length(800.0)
    assert metric.room.roof_built is RoofBuilt.TRUSSES
    back = in_system(metric, System.INCH).room.width
    assert back.unit is Unit.INCH
    assert back.mm == pytest.approx(240 * INCH)
