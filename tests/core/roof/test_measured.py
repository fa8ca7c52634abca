"""The stated line moved through measured points. Inches throughout; slopes in rise over run."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.roof import RoofLine, Segment, corrected, differences
from core.roof.measured import AT_BREAK

IN = 25.4


def line(*corners: tuple[float, float], across: float = 0.0) -> RoofLine:
    """The line through corners in inches."""
    segments = []
    for (x0, y0), (x1, y1) in pairwise(corners):
        along = (y1 - y0) / (x1 - x0)
        segments.append(Segment(x0 * IN, x1 * IN, (y0 - along * x0) * IN, along, across))
    return RoofLine(tuple(segments))


def moved(stated: RoofLine, *points: tuple[float, float]) -> RoofLine:
    mm = tuple((x * IN, y * IN) for x, y in points)
    return corrected(stated, differences(stated, mm))


def corners(found: RoofLine) -> list[tuple[float, float]]:
    return [(round(x / IN, 4), round(y / IN, 4)) for x, y in found.points()]


RAKE = line((0, 48), (168, 174))  # 9 in 12: 48 + 168 x 0.75 = 174
GABLE = line((0, 48), (84, 111), (168, 48))


@pytest.mark.parametrize(
    ("stated", "points", "expected"),
    [
        pytest.param(RAKE, [], [(0, 48), (168, 174)], id="nothing measured"),
        # One point moves the whole line: 110 stated at 84 is 111, so all an inch lower.
        pytest.param(RAKE, [(84, 110)], [(0, 47), (168, 173)], id="one point"),
        pytest.param(
            RAKE,
            [(0, 48), (84, 110.375), (168, 174)],
            [(0, 48), (84, 110.375), (168, 174)],
            id="a sag of 5/8 in. in the middle",
        ),
        # Beyond the outermost points the difference stays: 1 low at 24 and at 144.
        pytest.param(
            RAKE,
            [(24, 65), (144, 155)],
            [(0, 47), (168, 173)],
            id="points short of the ends",
        ),
        # Points 4 from either end, 1 low and as stated: the slope between them is
        # (171 - 50) / 160 = 0.75625, and runs on: 50 - 4 x 0.75625 and 171 + 4 x 0.75625.
        pytest.param(
            RAKE,
            [(4, 50), (164, 171)],
            [(0, 46.975), (168, 174.025)],
            id="points at the ends, but for a hand",
        ),
        # The ridge was not measured: it stays at 84, lower by what its neighbours are, 1/2.
        pytest.param(
            GABLE,
            [(60, 92.5), (108, 92.5)],
            [(0, 47.5), (84, 110.5), (168, 47.5)],
            id="a ridge between two points",
        ),
        # Measured at 87, within 6 in. of the stated ridge: there it is.
        pytest.param(
            GABLE,
            [(0, 48), (87, 112), (168, 48)],
            [(0, 48), (87, 112), (168, 48)],
            id="a ridge that was measured",
        ),
    ],
)
def test_through_the_points(
    stated: RoofLine, points: list[tuple[float, float]], expected: list[tuple[float, float]]
) -> None:
    assert corners(moved(stated, *points)) == expected


def test_a_step_stays_a_step() -> None:
    # 60 high to x = 50, then 80: a point on either side moves its own side by the line between
    # them, 1 lower at 40 and 2 higher at 60, so 0.5 higher at the step on both sides.
    stepped = RoofLine((*line((0, 60), (50, 60)).segments, *line((50, 80), (100, 80)).segments))
    found = moved(stepped, (40, 59), (60, 82))
    assert corners(found) == [(0, 59), (40, 59), (50, 60.5), (50, 80.5), (60, 82), (100, 82)]


def test_the_slope_across_stays_the_plane_s() -> None:
    found = moved(line((0, 48), (96, 48), across=0.75), (48, 47.5), (96, 48))
    assert {s.across for s in found.segments} == {0.75}


@given(
    st.dictionaries(st.integers(1, 15), st.integers(-20, 20), min_size=1, max_size=6),
    st.sampled_from([RAKE, GABLE]),
)
def test_passes_through_every_point_and_bends_only_there(
    found: dict[int, int], stated: RoofLine
) -> None:
    points = sorted((x * 10.0, stated.height(x * 10 * IN) / IN + d / 16) for x, d in found.items())
    measured = moved(stated, *points)
    for x, y in points:
        assert measured.height(x * IN) == pytest.approx(y * IN)
    allowed = [x * IN for x, _ in points] + [84 * IN]
    for segment in measured.segments[:-1]:
        assert min(abs(segment.right - x) for x in allowed) < 1e-6


@given(st.lists(st.floats(0, 168), min_size=1, max_size=8, unique=True))
def test_points_that_agree_change_nothing(places: list[float]) -> None:
    spaced = [x for n, x in enumerate(sorted(places)) if n == 0 or x - sorted(places)[n - 1] > 0.1]
    # A point near the ridge takes its place; those that agree lie on the line all the same.
    spaced = [x for x in spaced if x == 84 or abs(x - 84) * IN > AT_BREAK]
    found = moved(GABLE, *((x, GABLE.height(x * IN) / IN) for x in spaced))
    for x in range(0, 169, 7):
        assert math.isclose(found.height(x * IN), GABLE.height(x * IN), abs_tol=1e-6)


def test_a_slope_across_that_goes_on_is_one_line() -> None:
    # A knee wall: the roof falls through the wall, and points along it agree with it.
    line = RoofLine((Segment(0.0, 1000.0, 1200.0, 0.0, -0.75),))
    points = ((200.0, 0.0), (500.0, 0.0), (800.0, 0.0))
    assert corrected(line, points).segments == line.segments


def test_planes_that_slope_otherwise_across_are_two_lines() -> None:
    # Level along the wall on both sides of a break, rising through it on one and falling on the
    # other.
    line = RoofLine(
        (Segment(0.0, 400.0, 1200.0, 0.0, 0.5), Segment(400.0, 1000.0, 1200.0, 0.0, -0.5))
    )
    assert [s.across for s in corrected(line, ((100.0, 2.0),)).segments] == [0.5, -0.5]
