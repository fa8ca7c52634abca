"""The project's own small questions: finding and replacing walls, naming the next one."""

import msgspec
import pytest

from core.lengths import Length, System
from core.model import (
    Layout,
    Point,
    Project,
    Rafter,
    Room,
    Side,
    Timber,
    TopPlate,
    Wall,
    next_letter,
)

STUD = Timber(Length(38.0), Length(89.0))
ROOM = Room(Length(6000.0), Length(9000.0), Rafter(STUD, Length(600.0)))


def wall(letter: str, across: float = 4000.0, along: float = 0.0) -> Wall:
    ends = Point(Length(0.0), Length(0.0)), Point(Length(across), Length(along))
    layout = Layout(Length(400.0))
    return Wall(letter, f"wall {letter}", *ends, STUD, STUD, TopPlate(STUD), layout)


def project(*letters: str) -> Project:
    return Project("loft", System.METRIC, ROOM, tuple(wall(letter) for letter in letters))


@pytest.mark.parametrize(
    ("taken", "letter"),
    [
        ([], "A"),
        (["A"], "B"),
        (["B", "C"], "A"),
        (list("ABCDEFGH"), "J"),  # I passes for 1
        (list("ABCDEFGHJKLMN"), "P"),  # O passes for 0
        (list("ABCDEFGHJKLMNPQRSTUVWXYZ"), "AA"),
        ([*"ABCDEFGHJKLMNPQRSTUVWXYZ", "AA", "AB"], "AC"),
    ],
)
def test_next_letter(taken: list[str], letter: str) -> None:
    assert next_letter(project(*taken)) == letter


def test_a_wall_is_found_and_replaced_by_its_letter() -> None:
    old = project("A", "B")
    new = old.with_wall(msgspec.structs.replace(old.wall("B"), name="store"))
    assert [w.name for w in new.walls] == ["wall A", "store"]
    assert old.wall("B").name == "wall B"
    with pytest.raises(KeyError):
        old.wall("C")


@pytest.mark.parametrize(
    ("across", "along", "run"),
    [(4000.0, 0.0, 4000.0), (0.0, 2500.0, 2500.0), (3000.0, 4000.0, 5000.0)],
)
def test_a_wall_runs_from_end_to_end(across: float, along: float, run: float) -> None:
    assert wall("A", across, along).run == run
    assert wall("A", across, along).chalk == ((0.0, 0.0), (across, along))


def test_what_a_wall_does_not_have_is_a_key_error() -> None:
    with pytest.raises(KeyError):
        wall("A").opening("door-1")
    with pytest.raises(KeyError):
        wall("A").box("box-1")


def test_sides_are_each_others_other() -> None:
    assert Side.LEFT.other is Side.RIGHT
    assert Side.RIGHT.other is Side.LEFT
