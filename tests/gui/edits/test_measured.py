"""Typing what the tape said: along the wall of `loft`, 60 high at its left end, 108 from 48 on."""

from __future__ import annotations

import msgspec
import pytest

from core.lengths import Length
from core.model import MeasuredStud, Project, Station
from gui.edits import (
    Line,
    Refusal,
    add_station,
    add_stud,
    delete,
    forget_gone,
    forget_stud,
    gone_studs,
    measure_stud,
    remove_station,
    set_station,
    set_wall,
)
from gui.wordings import wording_of
from loft import STUD, loft


def inch(value: float) -> Length:
    return Length.of_inches(value)


def points(project: Project, line: Line = Line.ROOF) -> list[tuple[float, float]]:
    found = getattr(project.wall("B"), line.value)
    return [(round(p.at.mm / 25.4, 4), round(p.height.mm / 25.4, 4)) for p in found]


def with_points(*found: tuple[float, float]) -> Project:
    project = loft()
    for at, height in found:
        project = add_station(project, "B", Line.ROOF, inch(at), inch(height))
    return project


def test_points_stand_from_left_to_right() -> None:
    assert points(with_points((96, 108), (0, 60), (48, 107))) == [(0, 60), (48, 107), (96, 108)]


def test_a_new_point_starts_out_as_the_line_is_there() -> None:
    # 60 + 24 at 24; lowered by an inch there, 83 - at 30 then 60 + 30 - 1.
    project = add_station(loft(), "B", Line.ROOF, inch(24))
    assert points(project) == [(24, 84)]
    lower = set_station(project, "B", Line.ROOF, 0, height=inch(83))
    assert points(add_station(lower, "B", Line.ROOF, inch(30))) == [(24, 83), (30, 89)]


def test_a_new_point_is_read_as_the_others_are() -> None:
    # From a line 40 up, the roof at 24 reads 84 - 40, and the level floor 40.
    project = set_wall(loft(), "B", level_line=inch(40))
    assert points(add_station(project, "B", Line.ROOF, inch(24))) == [(24, 44)]
    floor = add_station(project, "B", Line.FLOOR, inch(24))
    assert points(floor, Line.FLOOR) == [(24, 40)]


def test_a_point_moves_past_another() -> None:
    project = set_station(with_points((0, 60), (48, 107)), "B", Line.ROOF, 0, at=inch(96))
    assert points(project) == [(48, 107), (96, 60)]


def test_a_point_is_taken_away() -> None:
    assert points(remove_station(with_points((0, 60), (48, 107)), "B", Line.ROOF, 0)) == [(48, 107)]


@pytest.mark.parametrize("index", [0, 1])
def test_two_points_at_one_place_are_refused(index: int) -> None:
    project = with_points((0, 60), (48, 107))
    with pytest.raises(Refusal) as refusal:
        set_station(project, "B", Line.ROOF, index, at=inch(48 - 48 * index))
    said = wording_of(project).say(refusal.value.message)
    taken, nearest = ('48"', '48 1/16"') if index == 0 else ('0"', '1/16"')
    assert said == (f"A point was measured at {taken} already: change that one, or take {nearest}.")


def test_a_stud_is_measured_tried_and_forgotten() -> None:
    project = measure_stud(loft(), "B", STUD, inch(88.5))
    assert project.wall("B").measured_studs == (MeasuredStud(STUD, inch(88.5), False),)
    tried = measure_stud(project, "B", STUD, inch(88.625), is_test=True)
    assert tried.wall("B").measured_studs == (MeasuredStud(STUD, inch(88.625), True),)
    assert forget_stud(tried, "B", STUD) == loft()


def test_a_stud_of_no_length_is_refused() -> None:
    with pytest.raises(Refusal):
        measure_stud(loft(), "B", STUD, inch(0))


def test_what_is_stated_is_kept_as_typed() -> None:
    project = add_station(loft(), "B", Line.FLOOR, Length(1000.0), Length(-3.0))
    assert project.wall("B").floor_points == (Station(Length(1000.0), Length(-3.0)),)


@pytest.mark.parametrize(
    ("held", "kept"),
    [
        (STUD, ["B/door-1/above/4", "B/door-1/king/left", "B/end/left"]),
        ("B/door-1", [STUD, "B/end/left"]),
        ("B/door-1/above/4", [STUD, "B/door-1/king/left", "B/end/left"]),
        ("B/box-1", [STUD, "B/door-1/above/4", "B/door-1/king/left", "B/end/left"]),
    ],
)
def test_a_measured_length_goes_with_its_stud(held: str, kept: list[str]) -> None:
    project = loft()
    for key in (STUD, "B/door-1/above/4", "B/door-1/king/left", "B/end/left"):
        project = measure_stud(project, "B", key, inch(40))
    left = delete(project, "B", held).wall("B").measured_studs
    assert [stud.key for stud in left] == kept


def test_a_new_stud_does_not_inherit_a_length() -> None:
    project = measure_stud(add_stud(loft(), "B"), "B", "B/stud-1", inch(90))
    assert add_stud(delete(project, "B", "B/stud-1"), "B").wall("B").measured_studs == ()


def test_studs_that_are_gone_can_be_forgotten() -> None:
    project = measure_stud(measure_stud(loft(), "B", STUD, inch(88)), "B", "B/end/left", inch(57))
    wide = set_wall(
        project, "B", layout=msgspec.structs.replace(project.wall("B").layout, spacing=inch(70))
    )
    assert gone_studs(project, "B") == ()
    assert gone_studs(wide, "B") == (STUD,)
    assert [s.key for s in forget_gone(wide, "B").wall("B").measured_studs] == ["B/end/left"]
