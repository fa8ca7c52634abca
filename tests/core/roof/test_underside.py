"""Undersides of plates: every plane comes down square, so breaks of unlike slopes move."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.roof import RoofLine, Segment, lowered, underside

GABLE = RoofLine((Segment(0, 84, 48, 0.75, 0), Segment(84, 168, 174, -0.75, 0)))
"""9 in 12 both ways: 48 to 111 and down to 48."""
SALTBOX = RoofLine((Segment(0, 84, 54, 10 / 12, 0), Segment(84, 192, 145, -0.25, 0)))
"""10 in 12 up to 124, 3 in 12 down."""
TIES = RoofLine((Segment(0, 48, 48, 0.75, 0), Segment(48, 120, 84, 0, 0)))
"""9 in 12 up to a flat ceiling at 84."""
KNEE = RoofLine((Segment(0, 288, 48, 0.0, -0.75),))
STEP = RoofLine((Segment(0, 10, 102, 0.75, 0), Segment(10, 14, 100, 0, 0)))
"""A beam's underside at 100 where the rafters are at 109.5."""
VALLEY = RoofLine((Segment(0, 40, 90, -0.75, 0), Segment(40, 80, 30, 0.75, 0)))
"""Falls from 90 to 60 and rises again."""


@pytest.mark.parametrize(
    ("line", "thickness", "points"),
    [
        # 1 1/2 x 1.25 = 1.875 down on both sides: the break stays.
        pytest.param(GABLE, 1.5, ((0, 46.125), (84, 109.125), (168, 46.125)), id="gable"),
        pytest.param(GABLE, 3.0, ((0, 44.25), (84, 107.25), (168, 44.25)), id="double plate"),
        # 1.9526 and 1.5462 down: the break goes right by 0.4064 / 1.08333 = 0.3751.
        pytest.param(
            SALTBOX, 1.5, ((0, 52.0474), (84.3751, 122.3600), (192, 95.4538)), id="unequal slopes"
        ),
        # Slope 1.875 down, ceiling 1.5: the break goes right by 0.375 / 0.75 = 0.5.
        pytest.param(TIES, 1.5, ((0, 46.125), (48.5, 82.5), (120, 82.5)), id="under ties"),
        # The slope across the wall counts too.
        pytest.param(KNEE, 1.5, ((0, 46.125), (288, 46.125)), id="knee wall"),
        pytest.param(STEP, 1.5, ((0, 100.125), (10, 107.625), (10, 98.5), (14, 98.5)), id="step"),
        pytest.param(VALLEY, 1.5, ((0, 88.125), (40, 58.125), (80, 88.125)), id="valley"),
        pytest.param(GABLE, 0.0, ((0, 48), (84, 111), (168, 48)), id="no plate"),
    ],
)
def test_underside(
    line: RoofLine, thickness: float, points: tuple[tuple[float, float], ...]
) -> None:
    found = underside(line, thickness).points()
    assert len(found) == len(points)
    for place, expected in zip(found, points, strict=True):
        assert place == pytest.approx(expected, abs=1e-4)


def test_neighbours_swallow_a_short_segment() -> None:
    # A ceiling 1 wide at the top of 9 in 12: each break moves in by 0.5 for a plate of 1 1/2, so
    # with one of 2 nothing is left of it; the slopes meet in the middle.
    line = RoofLine(
        (Segment(0, 48, 48, 0.75, 0), Segment(48, 49, 84, 0, 0), Segment(49, 97, 120.75, -0.75, 0))
    )
    down = lowered(line, 2.0)
    assert [s is None for s in down] == [False, True, False]
    # 48 - 2.5 + 0.75 x 48.5 = 81.875.
    assert underside(line, 2.0).points()[1] == pytest.approx((48.5, 81.875))


def test_a_short_segment_at_the_end_is_swallowed() -> None:
    # The break at 119.75 would go to 120.25, past the wall's end at 120.
    line = RoofLine((Segment(0, 119.75, -5, 0.75, 0), Segment(119.75, 120, 84.8125, 0, 0)))
    under = underside(line, 1.5)
    assert [(s.left, s.right) for s in under.segments] == [(0, 120)]
    assert under.height(120) == pytest.approx(-5 + 90 - 1.875)


@st.composite
def ridged_lines(draw: st.DrawFn) -> RoofLine:
    """Lines of two to five planes over a wall of 100, each less steep upward than the one before,
    some very short: what a ceiling, a gambrel or a ridge makes of it."""
    slopes = sorted(draw(st.sets(st.integers(-20, 20), min_size=2, max_size=5)), reverse=True)
    count = len(slopes) - 1
    breaks = sorted(draw(st.sets(st.integers(1, 199), min_size=count, max_size=count)))
    across = draw(st.lists(st.integers(-5, 5), min_size=count + 1, max_size=count + 1))
    ends = [0.0, *(b / 2 for b in breaks), 100.0]
    segments: list[Segment] = []
    y = 500.0
    for slope, aside, (left, right) in zip(slopes, across, pairwise(ends), strict=True):
        along = slope / 10
        segments.append(Segment(left, right, y - along * left, along, aside / 10))
        y += along * (right - left)
    return RoofLine(tuple(segments))


@given(ridged_lines(), st.floats(0, 60))
def test_undersides_are_the_lowest_of_the_lowered_planes(line: RoofLine, thickness: float) -> None:
    """Where planes form ridges, the underside is the lowest of them all, whoever is swallowed."""
    under = underside(line, thickness)
    assert (under.segments[0].left, under.segments[-1].right) == (0.0, 100.0)
    for x in (0.0, 10.0, 20.0, 35.0, 50.0, 65.0, 80.0, 90.0, 100.0):
        planes = [
            s.at(x) - thickness * (1 + s.along**2 + s.across**2) ** 0.5 for s in line.segments
        ]
        assert under.height(x) == pytest.approx(min(planes), abs=1e-6)
