"""The sense of a project and its room: one table for each rule."""

from __future__ import annotations

from typing import Any

import msgspec
import pytest

from core.lengths import Length, Pitch
from core.model import Habits, Letters, Point, Project, RidgeBeam, Slope, Timber
from core.storage import Document
from core.storage.sense import (
    eave_height,
    end_in_room,
    has_slope,
    pencil_letters,
    project_faults,
    rafter_size,
    ridge_beam_size,
    room_faults,
    room_size,
    timber_size,
    wall_letter,
    wall_letters_differ,
)

NINE = Pitch(0.75, "9 in 12")
replace = msgspec.structs.replace


def mm(value: float) -> Length:
    return Length(float(value))


def places(faults: Any) -> list[str]:
    return [fault.place for fault in faults]


def test_sail_loft_makes_sense(loft: Document) -> None:
    assert places(project_faults(loft.project)) == []


def test_every_rule_is_asked_with_the_place_in_the_file(loft: Document) -> None:
    """One thing spoilt for each rule of project and room, told in the order of the file."""
    project = loft.project
    wall = project.walls[0]
    room = replace(
        project.room,
        width=mm(0),
        rafter=replace(project.room.rafter, spacing=mm(10)),
        left=Slope(mm(-1), NINE),
        ridge_beam=RidgeBeam(mm(0), mm(2000)),
        flat_ceiling=mm(-1),
    )
    spoilt = replace(
        project,
        room=room,
        walls=(replace(wall, letter="b"), replace(wall, letter="b", boxes=wall.boxes * 2)),
        habits=Habits(letters=Letters(stud="")),
    )
    assert places(project_faults(spoilt)) == [
        "project.room.width",
        "project.room.rafter.spacing",
        "project.room.left.eave_height",
        "project.room.ridge_beam.width",
        "project.room.flat_ceiling",
        "project.walls[1].letter",
        "project.walls[0].letter",
        "project.walls[0].right_end[0]",
        "project.walls[1].letter",
        "project.walls[1].boxes[1].id",
        "project.walls[1].right_end[0]",
        "project.habits.letters.stud",
    ]


@pytest.mark.parametrize(
    ("width", "length", "bad"),
    [
        (7000, 9000, []),
        (1, 100_000, []),
        (0, 9000, ["r.width"]),
        (7000, -1, ["r.length"]),
        (100_001, 100_001, ["r.width", "r.length"]),
    ],
)
def test_room_size(loft: Document, width: float, length: float, bad: list[str]) -> None:
    room = replace(loft.project.room, width=mm(width), length=mm(length))
    assert places(room_size(room, "r")) == bad


@pytest.mark.parametrize(
    ("left", "right", "bad"),
    [(True, True, []), (True, False, []), (False, True, []), (False, False, ["r"])],
)
def test_roof_has_a_slope(loft: Document, left: bool, right: bool, bad: list[str]) -> None:
    slope = Slope(mm(800), NINE)
    room = replace(loft.project.room, left=slope if left else None, right=slope if right else None)
    assert places(has_slope(room, "r")) == bad
    assert places(room_faults(room, "r")) == bad


@pytest.mark.parametrize(
    ("height", "bad"),
    [
        (0, []),
        (838, []),
        (100_000, []),
        (-1, ["s.eave_height"]),
        (100_001, ["s.eave_height"]),
    ],
)
def test_eave_height(height: float, bad: list[str]) -> None:
    assert places(eave_height(Slope(mm(height), NINE), "s")) == bad


@pytest.mark.parametrize(
    ("spacing", "bad"), [(50, []), (610, []), (49.9, ["f.spacing"]), (100_001, ["f.spacing"])]
)
def test_rafter_spacing(loft: Document, spacing: float, bad: list[str]) -> None:
    rafter = replace(loft.project.room.rafter, spacing=mm(spacing))
    assert places(rafter_size(rafter, "f")) == bad


@pytest.mark.parametrize(
    ("thickness", "width", "bad"),
    [
        (38, 235, []),
        (1000, 1000, []),
        (0, 235, ["t.thickness"]),
        (38, 0, ["t.width"]),
        (1001, -1, ["t.thickness", "t.width"]),
    ],
)
def test_timber_size(thickness: float, width: float, bad: list[str]) -> None:
    assert places(timber_size(Timber(mm(thickness), mm(width)), "t")) == bad


@pytest.mark.parametrize(
    ("width", "underside", "bad"),
    [
        (90, 2600, []),
        (0, 2600, ["b.width"]),
        (90, 0, ["b.underside"]),
        (1001, 100_001, ["b.width", "b.underside"]),
    ],
)
def test_ridge_beam_size(width: float, underside: float, bad: list[str]) -> None:
    assert places(ridge_beam_size(RidgeBeam(mm(width), mm(underside)), "b")) == bad


@pytest.mark.parametrize("letter", ["A", "Z", "AA", "ABC"])
def test_letter_of_a_wall(letter: str) -> None:
    assert places(wall_letter(letter, "w")) == []


@pytest.mark.parametrize("letter", ["", "a", "A1", "Ä", "A ", "A\n", "A/B", "ABCD", "Α"])
def test_no_letter_of_a_wall(letter: str) -> None:
    assert places(wall_letter(letter, "w")) == ["w"]


@pytest.mark.parametrize(
    ("letters", "bad"),
    [
        ("", []),
        ("AB", []),
        ("ABA", ["project.walls[2].letter"]),
        ("AAA", ["project.walls[1].letter", "project.walls[2].letter"]),
    ],
)
def test_letters_differ(loft: Document, letters: str, bad: list[str]) -> None:
    wall = loft.project.walls[0]
    walls = tuple(replace(wall, letter=letter) for letter in letters)
    assert places(wall_letters_differ(replace(loft.project, walls=walls))) == bad


@pytest.mark.parametrize(("count", "bad"), [(200, []), (201, ["project.walls"])])
def test_walls_are_no_absurd_number(loft: Document, count: int, bad: list[str]) -> None:
    wall = loft.project.walls[0]
    walls = tuple(replace(wall, letter=_letters(index)) for index in range(count))
    assert places(project_faults(replace(loft.project, walls=walls))) == bad


def _letters(index: int) -> str:
    return chr(65 + index // 26) + chr(65 + index % 26)


@pytest.mark.parametrize(
    ("across", "along", "bad"),
    [
        # The room is 24' by 31' 6", which are 7315.2 mm by 9601.2 mm.
        (0, 0, []),
        (7315.2, 9601.2, []),
        (-1, -1, []),
        (7316.2, 9602.2, []),
        (-1.1, 0, ["e[0]"]),
        (0, 9602.3, ["e[1]"]),
        (7400, -400, ["e[0]", "e[1]"]),
    ],
)
def test_wall_ends_in_the_room(loft: Document, across: float, along: float, bad: list[str]) -> None:
    end = Point(mm(across), mm(along))
    assert places(end_in_room(end, loft.project.room, "e")) == bad


def test_end_outside_is_told_with_the_rooms_size(loft: Document) -> None:
    (fault,) = end_in_room(Point(mm(8000), mm(0)), loft.project.room, "e")
    assert str(fault) == (
        "8000 mm is outside the room, which ends at 24'; write 0 to 24', or widen the room."
    )


@pytest.mark.parametrize("letter", ["X", "KS", "Tri", "×", "字"])
def test_pencil_letters(letter: str) -> None:
    assert places(pencil_letters(Letters(stud=letter, king=letter), "l")) == []


@pytest.mark.parametrize("letter", ["", " ", "a b", "king", "\n", "\x00", "\u2028"])
def test_pencil_letters_that_cannot_be_seen_or_are_too_many(letter: str) -> None:
    assert places(pencil_letters(Letters(trimmer=letter), "l")) == ["l.trimmer"]


def test_what_cannot_be_built_makes_sense_all_the_same(loft: Document) -> None:
    """An opening past the wall's end, under a roof that is too low, on a stud that is not there."""
    wall = loft.project.walls[0]
    opening = replace(wall.openings[0], left=mm(6000), head=mm(5000))
    spoilt = replace(wall, openings=(opening,), boxes=(replace(wall.boxes[0], stud="B/none"),))
    assert places(project_faults(_with(loft.project, spoilt))) == []


def _with(project: Project, wall: Any) -> Project:
    return project.with_wall(wall)
