"""Adding and setting walls."""

from __future__ import annotations

from itertools import pairwise
from typing import Any

import msgspec
import pytest

from core.lengths import Length
from core.model import Layout, Point, Project
from gui.edits import Refusal, add_wall, delete_wall, set_wall
from gui.wordings import wording_of
from loft import loft


def inches(value: float) -> Length:
    return Length.of_inches(value)


def at(across: float, along: float) -> Point:
    return Point(inches(across), inches(along))


def sentence(project: Project, refusal: pytest.ExceptionInfo[Refusal]) -> str:
    return wording_of(project).say(refusal.value.message)


def test_a_new_wall_runs_from_eave_to_eave_like_the_one_shown() -> None:
    project = add_wall(loft(), "Partition", "B")
    wall, pattern = project.walls[-1], loft().wall("B")
    # The room is 240 by 400; its middle, at 200, is clear of the wall at 100.
    assert (wall.letter, wall.name) == ("A", "Partition")
    assert (wall.left_end, wall.right_end) == (at(0, 200), at(240, 200))
    assert (wall.stud, wall.top_plate, wall.layout) == (
        pattern.stud,
        pattern.top_plate,
        pattern.layout,
    )
    assert wall.openings == ()


def test_without_a_pattern_it_has_the_usual_timber() -> None:
    wall = add_wall(loft(), "Partition").walls[-1]
    assert [str(wall.stud.thickness), str(wall.stud.width)] == ["1 1/2 in", "3 1/2 in"]
    assert str(wall.layout.spacing) == "16 in"


def test_walls_keep_clear_of_each_other() -> None:
    project = loft()
    for _ in range(6):
        project = add_wall(project, "Partition")
    places = sorted(wall.left_end.along.mm for wall in project.walls)
    apart = [b - a for a, b in pairwise(places)]
    assert min(apart) >= 599


def test_letters_on_paper_are_not_given_again() -> None:
    # A and C stand on printed sheets, B is taken, so D is the first free one.
    project = add_wall(loft(), "Partition", None, frozenset({"A", "C"}))
    assert [wall.letter for wall in project.walls] == ["B", "D"]


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        (
            {"right_end": at(241, 100)},
            'at 241" across lies outside the room: the nearest place inside is 240".',
        ),
        (
            {"left_end": at(12, -5)},
            'at -5" along lies outside the room: the nearest place inside is 0".',
        ),
        ({"right_end": at(20, 100)}, 'would be 8" long: keep its ends at least 11 13/16" apart.'),
        ({"layout": Layout(inches(1))}, "1 in is less than 50 mm"),
    ],
)
def test_what_makes_no_wall_is_refused(changes: dict[str, Any], words: str) -> None:
    with pytest.raises(Refusal) as refusal:
        set_wall(loft(), "B", **changes)
    assert words in sentence(loft(), refusal)


def test_an_end_a_hair_outside_is_taken() -> None:
    project = set_wall(loft(), "B", right_end=Point(Length.of_mm(6096.5), inches(100)))
    assert project.wall("B").right_end.across.mm == 6096.5


def test_a_wall_is_renamed() -> None:
    assert set_wall(loft(), "B", name="Store").wall("B").name == "Store"


def test_deleting_a_wall_leaves_the_others() -> None:
    project = add_wall(loft(), "Partition")
    assert [wall.letter for wall in delete_wall(project, "B").walls] == ["A"]
    assert delete_wall(loft(), "B") == msgspec.structs.replace(loft(), walls=())
