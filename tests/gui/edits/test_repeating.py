"""Copies along the wall: where they come to stand, and how many have a place."""

from __future__ import annotations

import pytest

from core.model import Project, Side
from gui.edits import Refusal, add_fixture, add_stud
from gui.edits.repeating import Copies, free_distance, repeat
from gui.wordings import wording_of
from loft import BOX, CRIPPLE, DOOR, INCH, STUD, loft


def copies(keys: tuple[str, ...], apart: float, count: int = 1) -> Copies:
    return repeat(loft(), "B", keys, apart * INCH, count)


def refused(project: Project, keys: tuple[str, ...], apart: float, count: int = 1) -> str:
    with pytest.raises(Refusal) as found:
        repeat(project, "B", keys, apart * INCH, count)
    return wording_of(project).say(found.value.message)


def test_a_stud_again_and_again() -> None:
    made = copies((STUD,), 4.0, 3)
    added = made.project.wall("B").added
    # From 31 1/4; the next of the layout begins at 47 1/4.
    assert [s.left.mm / INCH for s in added] == pytest.approx([35.25, 39.25, 43.25])
    assert made.keys == ("B/stud-3",)


def test_a_door_to_the_left_of_itself() -> None:
    # 30 in. wide from 60: there is no room at its left under the slope, 36 away.
    assert "nearest distance that fits" not in refused(loft(), (DOOR,), -36.0)
    assert refused(loft(), (DOOR,), -36.0).startswith("door 1 has no place there: the slope")


def test_how_many_fit_is_named() -> None:
    # 8 in. on stands at 39 1/4; 16 on would be the next stud of the layout itself.
    assert refused(loft(), (STUD,), 8.0, 2) == (
        'B3 has no place there: something stands there. Copies 8" apart have places for 1.'
    )


def test_the_nearest_distance_is_named() -> None:
    assert refused(loft(), (STUD,), 16.0).endswith('The nearest distance that fits is 18".')


def test_a_box_hangs_on_the_stud_nearest_to_where_it_would_be() -> None:
    (box,) = copies((BOX,), 16.0).project.wall("B").boxes[1:]
    # From 32 3/4, 16 on is 48 3/4: the right of the stud at 47 1/4.
    assert (box.stud, box.side, box.id) == ("B/layout/3", Side.RIGHT, "box-2")


def test_a_box_goes_along_with_a_copy_of_its_stud() -> None:
    made = copies((BOX, STUD), 8.0)
    assert made.keys == ("B/box-2", "B/stud-1")
    assert made.project.wall("B").box("box-2").stud == "B/stud-1"


def test_backing_again() -> None:
    project = add_fixture(loft(), "B")
    before = project.wall("B").fixtures[0]
    # A rail of a third of the wall: the next begins where it ends.
    made = repeat(project, "B", ("B/backing-1",), -before.width.mm)
    after = made.project.wall("B").fixtures[1]
    assert before.left.mm - after.left.mm == pytest.approx(40 * INCH)


@pytest.mark.parametrize("key", [CRIPPLE, "B/sole", "B/end/left"])
def test_what_is_there_once_is_refused(key: str) -> None:
    assert "is there once" in refused(loft(), (key,), 10.0)


@pytest.mark.parametrize("count", [0, 51])
def test_the_count_has_bounds(count: int) -> None:
    assert "take 1 to 50" in refused(loft(), (STUD,), 4.0, count)


def test_the_usual_distance_has_room() -> None:
    # Half of 16 in. on centre; from 22 in. that stands against the next stud, 11 does not.
    beside = add_stud(loft(), "B", 22 * INCH)
    assert free_distance(beside, "B", ("B/stud-1",)) == pytest.approx(11 * INCH)
    assert free_distance(loft(), "B", (STUD,)) == pytest.approx(8 * INCH)
    assert free_distance(loft(), "B", (BOX,)) == pytest.approx(16 * INCH)
    # No second door 30 in. wide beside one from 60 to 90 in 120: the usual distance stays.
    assert free_distance(loft(), "B", (DOOR,)) == pytest.approx(36 * INCH)
