"""The stated fit, measured studs that stay with their key, and test studs. Inches throughout."""

from __future__ import annotations

import math

import msgspec
import pytest

from core.framing import Frame, Member, Tried
from core.framing.fitted import crown, one_cut, raised
from core.lengths import Length
from core.model import MeasuredStud
from walls import US, frame_of, in_12, member, stations

# The garage loft's partition: layout/2 is 69 3/16 at its long point, layout/8 75 3/16.
SLOPE = (12.0, in_12(9))
ROOM = US.room(264, SLOPE, SLOPE)
DOOR = US.opening("door-1", 56, 34, 82.5)


def frame(
    *studs: tuple[str, float, bool], fit: float | None = None, left_out: tuple[int, ...] = ()
) -> Frame:
    wall = US.wall((48, 144), (216, 144), openings=(DOOR,), left_out=left_out)
    measured = tuple(
        MeasuredStud(f"B/{cause}", Length.of_inches(length), test) for cause, length, test in studs
    )
    gap = None if fit is None else Length.of_inches(fit)
    return frame_of(ROOM, msgspec.structs.replace(wall, measured_studs=measured, fit=gap))


def longer(found: Frame, cause: str) -> float:
    """How much longer than worked out a member is, inches."""
    change = member(found, cause).long_point - member(frame(), cause).long_point
    return round(US.of(change), 6)


REACH = ("end/left", "layout/2", "door-1/king/left", "door-1/above/4", "layout/8", "end/right")


@pytest.mark.parametrize("fit", [0.0625, 0.25, -0.03125])
def test_the_fit_shortens_what_reaches_the_plates(fit: float) -> None:
    found = frame(fit=fit)
    assert {longer(found, cause) for cause in REACH} == {-fit}
    for cause in ("door-1/trimmer/left", "door-1/header/1", "sole", "top/1/1"):
        assert member(found, cause) == member(frame(), cause)


def test_marks_and_cuts_are_those_of_a_stud_that_touches() -> None:
    short, touching = member(frame(fit=0.25), "layout/2"), member(frame(), "layout/2")
    assert (short.last_cut, short.left) == (touching.last_cut, touching.left)
    assert [round(US.of(a - b), 6) for a, b in zip(touching.edges, short.edges, strict=True)] == (
        [0.25] * 4
    )


def test_a_measured_stud_has_its_measured_length_whatever_the_fit() -> None:
    found = frame(("layout/2", 69.5, False), fit=0.0625)
    assert US.of(member(found, "layout/2").long_point) == pytest.approx(69.5)
    assert longer(found, "layout/1") == -0.0625
    (tried,) = found.measured
    assert US.of(tried.worked) == pytest.approx(69.125)
    assert (tried.key, tried.corrected) == ("B/layout/2", ())


def test_a_test_stud_corrects_those_under_its_plate_and_says_by_how_much() -> None:
    found = frame(("layout/2", 69.3125, True))
    (tried,) = found.measured
    assert US.of(tried.difference) == pytest.approx(0.125)
    for cause in ("end/left", "layout/1", "layout/3", "door-1/king/left", "door-1/above/4"):
        assert longer(found, cause) == 0.125
        assert f"B/{cause}" in tried.corrected
    for cause in ("layout/8", "end/right", "door-1/trimmer/left"):
        assert longer(found, cause) == 0
        assert f"B/{cause}" not in tried.corrected


def test_between_two_test_studs_in_proportion() -> None:
    # layout/1 is an eighth longer, layout/3 three eighths: layout/2 half way between is a quarter.
    found = frame(("layout/1", 57.1875 + 0.125, True), ("layout/3", 81.1875 + 0.375, True))
    assert longer(found, "layout/2") == 0.25
    assert longer(found, "end/left") == 0.125
    assert longer(found, "door-1/king/left") == 0.375


def test_a_stud_that_is_gone_is_not_tried() -> None:
    assert frame(("layout/2", 69.0, True), left_out=(2,)).measured == ()


def test_raising_keeps_a_member_that_would_vanish() -> None:
    stud = member(frame(), "layout/2")
    assert raised(stud, -stud.long_point) is stud
    assert raised(stud, 0.0) is stud


def test_the_crown_of_a_stud_with_two_facets() -> None:
    outline = ((0.0, 0.0), (2.0, 0.0), (2.0, 9.0), (1.0, 10.0), (0.0, 9.0))
    assert crown(outline) == ((2.0, 9.0), (1.0, 10.0), (0.0, 9.0))


@pytest.mark.parametrize(
    ("low", "facets"),
    [
        # Stated 83.25 at 47, where layout/3 stands. 1/16 low turns the line 0.07 degrees one way
        # and 0.05 the other way: one cut. 5/8 low turns it by 1.3: two.
        pytest.param(0.0625, 1, id="next to nothing"),
        pytest.param(0.625, 2, id="a bend"),
    ],
)
def test_facets_under_a_measured_line(low: float, facets: int) -> None:
    points = stations(US, (0, 48), (47, 83.25 - low), (84, 111), (168, 48))
    wall = msgspec.structs.replace(US.wall((48, 144), (216, 144)), roof_points=points)
    found: Member = member(frame_of(ROOM, wall), "layout/3")
    assert len(found.last_cut) == facets
    assert len(found.near) == 3 + facets
    assert one_cut(found) == found


def test_the_one_cut_is_straight_from_edge_to_edge() -> None:
    # 83.9375 at 48 (stated 84), then 111 at 84: the line turns over layout/3, 47.25 to 48.75.
    points = stations(US, (0, 48), (48, 83.9375), (84, 111), (168, 48))
    wall = msgspec.structs.replace(US.wall((48, 144), (216, 144)), roof_points=points)
    found = member(frame_of(ROOM, wall), "layout/3")
    (facet,) = found.last_cut
    assert math.tan(facet.bevel) * 1.5 == pytest.approx(US.of(found.edges[1] - found.edges[0]))


def test_tried_is_told_by_its_difference() -> None:
    assert Tried("B/x", 100.0, 98.5, ()).difference == -1.5


def test_a_foot_over_a_slight_break_of_the_floor_is_cut_once() -> None:
    # The floor turns 0.1 in 16, 0.36 degrees, at the middle of layout/2.
    floor = stations(US, (0, 0), (32, 0), (48, 0.1), (168, 0.1))
    wall = msgspec.structs.replace(US.wall((48, 144), (216, 144)), floor_points=floor)
    found = member(frame_of(ROOM, wall), "layout/2")
    assert len(found.first_cut) == 1
    assert len(found.near) == 4
    assert found.long_point == max(found.edges)


def test_a_test_stud_corrects_all_under_its_plate_and_none_under_the_other() -> None:
    # End stud 45 3/4 worked out: the tape says 46 1/4. Every further stud up to the ridge, and the
    # king and cripples there, is half an inch longer; those on the right stay.
    found = frame(("end/left", 46.25, True))
    left = ("layout/1", "layout/2", "layout/3", "door-1/king/left", "door-1/above/4")
    right = ("door-1/king/right", "layout/6", "layout/10", "end/right")
    assert {longer(found, cause) for cause in left} == {0.5}
    assert {longer(found, cause) for cause in right} == {0.0}
