"""Walls cut to generated measured lines, held against distances that another library works out.

A wall runs up the slopes of a gable from eave to eave, so both faces are alike. Inches.
"""

from __future__ import annotations

from itertools import pairwise

import msgspec
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import LineString, Point

from core.framing import Frame, Member, Role
from core.framing.fitted import crown
from core.model import Room, Side, Wall
from walls import US, frame_of, in_12, member, stations

IN = 25.4
WIDTH = 240
PLACES = tuple(range(0, WIDTH + 1, 12))

Points = tuple[tuple[float, float], ...]


@st.composite
def surveys(draw: st.DrawFn) -> tuple[Room, Points, Points]:
    """A gable, and points of its roof and of the floor: both ends, the ridge, some in between."""
    pitch = draw(st.integers(6, 24)) / 2
    slope = (draw(st.integers(24, 60)), in_12(pitch))
    between = draw(st.lists(st.sampled_from(PLACES[1:-1]), unique=True, max_size=5))

    def stated(at: float) -> float:
        return slope[0] + min(at, WIDTH - at) * pitch / 12

    roof = tuple(
        (float(at), stated(at) + draw(st.integers(-24, 24)) / 16)
        for at in sorted({0, WIDTH // 2, WIDTH, *between})
    )
    floor = tuple((float(at), draw(st.integers(-16, 16)) / 16) for at in (0, *between[:1], WIDTH))
    return US.room(WIDTH, slope, slope), roof, tuple(dict(sorted(floor)).items())


def walled(room: Room, roof: Points, floor: Points, plates: int = 1) -> tuple[Wall, Frame]:
    wall = US.wall((0, 144), (WIDTH, 144), plates=plates)
    measured = msgspec.structs.replace(
        wall, roof_points=stations(US, *roof), floor_points=stations(US, *floor)
    )
    return measured, frame_of(room, measured)


def above_floor(roof: Points, floor: Points) -> Points:
    """What the tape reads from the floor under each point."""

    def under(at: float) -> float:
        (x0, y0), (x1, y1) = next(p for p in pairwise(floor) if p[0][0] <= at <= p[1][0])
        return y0 + (y1 - y0) * (at - x0) / (x1 - x0)

    return tuple((at, height - under(at)) for at, height in roof)


def line(points: Points) -> LineString:
    """The line through points in mm, far past its ends."""
    (x0, y0), (x1, y1), *_ = points
    *_, (x2, y2), (x3, y3) = points
    before = (x0 - 100, y0 - 100 * (y1 - y0) / (x1 - x0))
    after = (x3 + 100, y3 + 100 * (y3 - y2) / (x3 - x2))
    return LineString([(x * IN, y * IN) for x, y in (before, *points, after)])


def studs(frame: Frame) -> list[Member]:
    return [m for m in frame.members if m.role is Role.STUD]


@given(surveys(), st.integers(1, 2))
def test_studs_reach_from_plate_to_plate(survey: tuple[Room, Points, Points], plates: int) -> None:
    room, roof, floor = survey
    wall, frame = walled(room, above_floor(roof, floor), floor, plates)
    assume(not frame.too_low)
    over, under = line(roof), line(floor)
    thick = wall.stud.thickness.mm
    assert len(studs(frame)) == 16
    for stud in studs(frame):
        top = crown(stud.near)
        foot = stud.near[: len(stud.near) - len(top)]
        for corner in top:
            # A break that turns a little leaves a corner of two plates farther from both.
            assert plates * thick - 0.05 <= over.distance(Point(corner)) <= plates * thick + 1.0
        for corner in foot:
            assert under.distance(Point(corner)) == pytest.approx(thick, abs=0.05)


@given(surveys())
def test_a_wall_seen_from_its_other_end_is_the_same(survey: tuple[Room, Points, Points]) -> None:
    room, roof, floor = survey
    read = above_floor(roof, floor)
    _, frame = walled(room, read, floor)
    assume(not frame.too_low)
    turned, back = (tuple((WIDTH - at, h) for at, h in line[::-1]) for line in (read, floor))
    wall = US.wall((0, 144), (WIDTH, 144), start=Side.RIGHT)
    mirrored = frame_of(
        room,
        msgspec.structs.replace(
            wall, roof_points=stations(US, *turned), floor_points=stations(US, *back)
        ),
    )
    for place in range(1, 15):
        here, there = (member(f, f"layout/{place}") for f in (frame, mirrored))
        left, right, *_ = here.edges
        assert there.edges[:2] == pytest.approx((right, left))
        assert there.long_point == pytest.approx(here.long_point)
        assert [-f.bevel for f in there.last_cut] == pytest.approx(
            [f.bevel for f in here.last_cut[::-1]]
        )


@given(surveys(), st.integers(-3, 8))
def test_the_fit_changes_lengths_alone(survey: tuple[Room, Points, Points], gap: int) -> None:
    room, roof, floor = survey
    wall, frame = walled(room, roof, floor)
    assume(not frame.too_low)
    fitted = frame_of(room, msgspec.structs.replace(wall, fit=US.length(gap / 16)))
    for exact in studs(frame):
        cut = fitted.member(exact.key)
        assert cut is not None
        assert exact.long_point - cut.long_point == pytest.approx(gap / 16 * IN)
        assert (cut.left, cut.first_cut, cut.last_cut) == (
            exact.left,
            exact.first_cut,
            exact.last_cut,
        )
