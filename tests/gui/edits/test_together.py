"""Several things moved by the same way, and refused together."""

from __future__ import annotations

import msgspec
import pytest

from core.model import MovedStud, Project
from gui.edits import Refusal, add_fixture, move_together
from gui.edits.stating import stated
from gui.wordings import wording_of
from loft import BOX, DOOR, INCH, STUD, box_height, door_left, loft
from walls import US

NEXT = "B/layout/3"


def moved(project: Project, keys: tuple[str, ...], right: float, up: float = 0.0) -> Project:
    return move_together(project, "B", keys, (right * INCH, up * INCH))


def test_studs_side_by_side_go_together() -> None:
    project = moved(loft(), (STUD, NEXT), 4.0)
    # Layout places 2 and 3 stand at 31 1/4 and 47 1/4.
    assert project.wall("B").moved == (
        MovedStud(2, stated(project, 35.25 * INCH)),
        MovedStud(3, stated(project, 51.25 * INCH)),
    )
    assert moved(project, (STUD, NEXT), -4.0) == loft()


def test_each_goes_where_it_can() -> None:
    project = moved(loft(), (DOOR, STUD, BOX), 2.0, 3.0)
    assert door_left(project) == pytest.approx(62.0)
    assert box_height(project) == pytest.approx(17.0)
    assert [m.place for m in project.wall("B").moved] == [2]


def test_backing_goes_both_ways() -> None:
    project = add_fixture(loft(), "B")
    before = project.wall("B").fixtures[0]
    (after,) = moved(project, ("B/backing-1",), 2.0, -3.0).wall("B").fixtures
    assert after.left.mm - before.left.mm == pytest.approx(2 * INCH)
    assert after.height.mm - before.height.mm == pytest.approx(-3 * INCH)


@pytest.mark.parametrize(
    ("keys", "right", "up", "sentence"),
    [
        # The left king is at 57: a stud from 47 1/4 to 48 3/4 goes 8 1/4 at the most.
        ((STUD, NEXT), 9.0, 0.0, "B4 has no place there: something stands there."),
        # The door's header meets the slope 25 1/8 from the left end.
        ((DOOR, STUD), -40.0, 0.0, "door 1 has no place there: the slope is too low beyond."),
        ((DOOR, NEXT), 30.0, 0.0, "door 1 has no place there: the wall ends there."),
        ((BOX, DOOR), 0.0, -13.0, "box 1 has no place there: its stud does not reach that far."),
    ],
)
def test_all_are_refused_if_one_has_no_place(
    keys: tuple[str, ...], right: float, up: float, sentence: str
) -> None:
    with pytest.raises(Refusal) as refused:
        moved(loft(), keys, right, up)
    assert wording_of(loft()).say(refused.value.message) == sentence


def test_what_had_no_place_before_may_be_moved() -> None:
    project = loft()
    wall = project.wall("B")
    high = msgspec.structs.replace(wall, openings=(US.opening("door-1", 60.0, 30.0, 200.0),))
    project = moved(project.with_wall(high), (DOOR,), 3.0)
    assert door_left(project) == pytest.approx(63.0)
