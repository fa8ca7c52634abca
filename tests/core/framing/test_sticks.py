"""Single members: standing under lines, lying level."""

from __future__ import annotations

import math

import pytest

from core.framing.member import Member, Role
from core.framing.sticks import flat_line, lying, standing
from core.lengths import Length
from core.model import Side, Timber
from core.roof import RoofLine, Segment

STUD = Timber(Length(38.0), Length(89.0))
RISING = RoofLine((Segment(0, 1000, 500, 0.5, 0),))
GABLE = RoofLine((Segment(0, 500, 500, 0.5, 0), Segment(500, 1000, 1000, -0.5, 0)))
LEVEL = flat_line(2000.0, 1000.0)


def stud(left: float, near: RoofLine, far: RoofLine | None = None) -> Member | None:
    return standing("B/x", Role.STUD, STUD, left, 38.0, (near, far or near))


@pytest.mark.parametrize(
    ("line", "left", "edges", "bevels"),
    [
        # 500 + 0.5 x 100 - 38 = 512, and 19 more at the other edge.
        pytest.param(RISING, 100, (512, 531), [26.57], id="up the slope"),
        pytest.param(LEVEL, 100, (1962, 1962), [0], id="level"),
        # 750 at the ridge, 500; the edges at 481 and 519 are both at 740.5.
        pytest.param(GABLE, 481, (702.5, 702.5), [26.57, -26.57], id="astride the ridge"),
        pytest.param(GABLE, 462, (693, 712), [26.57], id="up to the ridge"),
        pytest.param(GABLE, 490, (707, 698), [26.57, -26.57], id="astride, off the middle"),
    ],
)
def test_standing(
    line: RoofLine, left: float, edges: tuple[float, float], bevels: list[float]
) -> None:
    member = stud(left, line)
    assert member is not None
    assert member.edges == pytest.approx(edges * 2)
    assert [round(math.degrees(f.bevel), 2) for f in member.last_cut] == bevels
    assert [f.is_square for f in member.first_cut] == [True]
    assert (member.left, member.right, member.bottom) == (left, left + 38, 38)


def test_the_point_astride_the_ridge_is_the_long_point() -> None:
    member = stud(481, GABLE)
    assert member is not None
    assert (member.long_point, member.short_point, member.overall) == (712, 702.5, 712)
    assert member.near == ((481, 38), (519, 38), (519, 740.5), (500, 750), (481, 740.5))
    assert member.top == 750


def test_far_face_has_its_own_edges() -> None:
    # A knee wall whose roof is 60 lower at the far face.
    low = RoofLine((Segment(0, 1000, 1440, 0, -0.674),))
    member = stud(100, RoofLine((Segment(0, 1000, 1500, 0, -0.674),)), low)
    assert member is not None
    assert member.edges == (1462, 1462, 1402, 1402)
    assert (member.long_point, member.short_point) == (1462, 1402)
    assert [p[1] for p in member.far] == [38, 38, 1440, 1440]


@pytest.mark.parametrize(
    ("near", "far"),
    [
        pytest.param(20, 2000, id="near face"),
        pytest.param(2000, 20, id="far face"),
        pytest.param(38, 38, id="nothing left"),
    ],
)
def test_no_room(near: float, far: float) -> None:
    assert stud(100, flat_line(near, 1000), flat_line(far, 1000)) is None


def test_no_room_at_one_edge() -> None:
    # At 0 the line is at 30, at 38 it is at 49: the left edge has no length.
    assert stud(0, RoofLine((Segment(0, 1000, 30, 0.5, 0),))) is None


@pytest.mark.parametrize(
    ("role", "rise"), [(Role.HEADER, 38.0), (Role.HEADER, 89.0), (Role.SOLE_PLATE, 38.0)]
)
def test_lying(role: Role, rise: float) -> None:
    member = lying("B/x", role, STUD, 100.0, 1000.0, 2035.0, rise)
    assert member.lies
    assert member.edges == (900.0,) * 4
    assert (member.overall, member.long_point, member.short_point) == (900, 900, 900)
    assert (member.left, member.right, member.bottom, member.top) == (100, 1000, 2035, 2035 + rise)
    assert member.near == member.far
    assert [f.is_square for f in (*member.first_cut, *member.last_cut)] == [True, True]


LOW = RoofLine((Segment(0, 1000, 100, 0.25, 0),))
HOLLOW = RoofLine((Segment(0, 500, 500, -1, 0), Segment(500, 1000, -500, 1, 0)))


def on(foot: tuple[RoofLine, RoofLine], left: float = 100) -> Member:
    member = standing("B/x", Role.STUD, STUD, left, foot, (RISING, RISING))
    assert member is not None
    return member


def test_standing_on_a_slope() -> None:
    # Foot 100 + 100/4 = 125 and 134.5; top 550 and 569: lengths 425 and 434.5, tip to tip 444.
    member = on((LOW, LOW))
    assert member.edges == pytest.approx((425, 434.5, 425, 434.5))
    assert (member.short_point, member.long_point) == pytest.approx((425, 434.5))
    assert member.overall == pytest.approx(569 - 125)
    assert member.near == ((100, 125), (138, 134.5), (138, 569), (100, 550))
    assert (*member.span(Side.LEFT), *member.span(Side.RIGHT)) == (125, 550, 134.5, 569)


def test_a_foot_has_the_bevel_of_what_it_stands_on_and_its_long_point_downhill() -> None:
    [foot] = on((LOW, LOW)).first_cut
    assert (round(math.degrees(foot.bevel), 2), foot.mitre, foot.face_up) == (14.04, 0, "left")
    [top] = on((LOW, LOW)).last_cut
    assert (round(math.degrees(top.bevel), 2), top.face_up) == (26.57, "right")


def test_a_foot_on_a_level_line_is_square() -> None:
    level = flat_line(38.0, 1000.0)
    assert on((level, level)) == stud(100, RISING)


def test_a_foot_that_falls_away_from_face_a_has_a_mitre() -> None:
    # 10 lower at the far face, which is 89 away: across = -10/89.
    near = RoofLine((Segment(0, 1000, 100, 0, -10 / 89),))
    far = RoofLine((Segment(0, 1000, 90, 0, -10 / 89),))
    member = on((near, far))
    assert member.edges == pytest.approx((450, 469, 460, 479))
    [foot] = member.first_cut
    assert (foot.mitre, foot.bevel) == pytest.approx((math.atan(-10 / 89), 0))


def test_a_foot_astride_a_valley_has_two_facets() -> None:
    # The foot is at 19 on both edges and at 0 in the middle, where the top is at 750.
    member = on((HOLLOW, HOLLOW), 481)
    assert member.near[:3] == ((481, 19), (500, 0), (519, 19))
    assert member.edges[:2] == pytest.approx((740.5 - 19, 759.5 - 19))
    assert (member.long_point, member.short_point) == pytest.approx((750, 721.5))
    assert member.overall == pytest.approx(759.5)
    assert [round(math.degrees(f.bevel)) for f in member.first_cut] == [-45, 45]


def test_no_room_above_a_sloping_foot() -> None:
    # The top is at 550 to 569 on both faces; the foot at 530 on face A, at 560 on the far face.
    high = RoofLine((Segment(0, 1000, 530, 0, 0),)), RoofLine((Segment(0, 1000, 560, 0, 0),))
    assert standing("B/x", Role.STUD, STUD, 100, high, (RISING, RISING)) is None


def test_a_stud_does_not_lie() -> None:
    member = stud(100, LEVEL)
    assert member is not None
    assert not member.lies
    assert (member.thickness, member.width, member.count) == (38, 89, 1)
