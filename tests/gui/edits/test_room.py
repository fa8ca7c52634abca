"""Setting the room, the name and the habits."""

from __future__ import annotations

import msgspec
import pytest

from core.lengths import Length, System, Tape, Unit
from core.model import Letters, LineEdge, Point, Project
from gui.edits import Refusal, set_habits, set_name, set_room, set_system, set_wall
from gui.wordings import wording_of
from loft import loft


def inches(value: float) -> Length:
    return Length.of_inches(value)


def sentence(project: Project, refusal: pytest.ExceptionInfo[Refusal]) -> str:
    return wording_of(project).say(refusal.value.message)


def spanning() -> Project:
    """The loft with its wall from eave to eave at the far gable."""
    ends = Point(inches(0), inches(400)), Point(inches(240), inches(400))
    return set_wall(loft(), "B", left_end=ends[0], right_end=ends[1])


def test_a_wall_that_ended_at_the_eave_wall_goes_with_it() -> None:
    project = set_room(spanning(), width=inches(230))
    assert project.wall("B").right_end == Point(inches(230), inches(400))
    assert project.wall("B").left_end.across == inches(0)


def test_a_wall_at_the_gable_goes_with_it_in_the_unit_typed() -> None:
    project = set_room(spanning(), length=Length(11_000.0, Unit.MM))
    assert project.wall("B").left_end.along == Length(11_000.0, Unit.MM)
    assert project.wall("B").right_end.along == Length(11_000.0, Unit.MM)


def test_a_wall_that_would_be_left_outside_holds_the_room_open() -> None:
    # The wall of the loft ends at 132 across.
    with pytest.raises(Refusal) as refusal:
        set_room(loft(), width=inches(130))
    assert 'An end of wall B at 132" across' in sentence(loft(), refusal)


def test_the_last_slope_stays() -> None:
    project = set_room(loft(), left=None)
    assert project.room.left is None
    with pytest.raises(Refusal) as refusal:
        set_room(project, right=None)
    assert "at least one slope" in sentence(project, refusal)


def test_a_senseless_room_is_refused() -> None:
    with pytest.raises(Refusal) as refusal:
        set_room(loft(), flat_ceiling=inches(-1))
    assert "This cannot be: -1 in is not above zero" in sentence(loft(), refusal)


def test_habits_change_one_at_a_time() -> None:
    project = set_habits(loft(), line_edge=LineEdge.UPHILL)
    letters = msgspec.structs.replace(Letters(), king="DL")
    project = set_habits(project, letters=letters)
    assert project.habits.line_edge is LineEdge.UPHILL
    assert project.habits.letters.king == "DL"


@pytest.mark.parametrize("letter", ["", "ABCD", "a b"])
def test_a_pencil_letter_is_short(letter: str) -> None:
    with pytest.raises(Refusal):
        set_habits(loft(), letters=Letters(stud=letter))


def test_a_name_is_trimmed_and_needed() -> None:
    assert set_name(loft(), "  Attic ").name == "Attic"
    with pytest.raises(Refusal) as refusal:
        set_name(loft(), "   ")
    assert sentence(loft(), refusal) == "A project needs a name."


def test_other_units_leave_every_length_as_it_was_written() -> None:
    metric = set_system(loft(), System.METRIC)
    assert (metric.room, metric.walls) == (loft().room, loft().walls)
    assert metric.habits.tape == Tape.usual(System.METRIC)
    assert set_system(metric, System.INCH) == loft()


def test_a_tape_that_has_the_units_already_is_kept() -> None:
    halves = Tape(System.METRIC, Length(0.5))
    project = set_habits(loft(), tape=halves)
    assert set_system(project, System.METRIC).habits.tape == halves
