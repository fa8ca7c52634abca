"""The roof line of a wall: segments, steps, and what is overhead of a stretch of it."""

from __future__ import annotations

import math

import pytest

from core.roof import Part, Plan, Plane, Roof, RoofLine, Segment, roof_line

LEFT = Plane(0.75, 0.0, 12.0)
RIGHT = Plane(-0.75, 0.0, 210.0)
GABLE = Roof((Part((LEFT, RIGHT)),))
"""9 in 12, eaves at 12, ridge at u = 132, 111 high."""
TIES = Roof(GABLE.parts, (Part((Plane(0.0, 0.0, 84.0),)),))
"""The same under a flat ceiling at 84, from u = 96 to 168."""
SHED = Roof((Part((Plane(0.25, 0.0, 60.0),)),))
STRIP = ((130.25, -999.0), (133.75, -999.0), (133.75, 999.0), (130.25, 999.0))
BEAM = Roof(GABLE.parts, (Part((Plane(0.0, 0.0, 100.0),), STRIP),))
"""A beam under the ridge, 3 1/2 wide, its underside at 100."""
OUTLINE = ((132.0, 0.0), (264.0, 0.0), (264.0, 120.0), (132.0, 120.0))
DORMER = Roof((*GABLE.parts, Part((Plane(-0.25, 0.0, 144.0),), OUTLINE)))
"""A shed dormer of 3 in 12 over v = 0 to 120: 111 at the ridge, 144 - u / 4."""

Points = tuple[tuple[float, float], ...]


@pytest.mark.parametrize(
    ("roof", "start", "end", "points"),
    [
        pytest.param(GABLE, (48, 9), (120, 9), ((0, 48), (72, 102)), id="rake"),
        pytest.param(GABLE, (120, 9), (48, 9), ((0, 102), (72, 48)), id="rake, the other face"),
        pytest.param(GABLE, (48, 9), (216, 9), ((0, 48), (84, 111), (168, 48)), id="gable"),
        pytest.param(GABLE, (48, 0), (48, 288), ((0, 48), (288, 48)), id="knee wall"),
        pytest.param(
            TIES, (48, 9), (216, 9), ((0, 48), (48, 84), (120, 84), (168, 48)), id="under ties"
        ),
        pytest.param(TIES, (100, 9), (160, 9), ((0, 84), (60, 84)), id="all under ties"),
        pytest.param(SHED, (0, 9), (120, 9), ((0, 60), (120, 90)), id="shed"),
        # A wall of 3-4-5: 100 along it is 60 across, so the roof rises 0.45 in 1.
        pytest.param(GABLE, (12, 0), (72, 80), ((0, 21), (100, 66)), id="diagonal"),
        # 200 along it is 120 across: the ridge is 84 across, so 140 along.
        pytest.param(
            GABLE, (48, 0), (168, 160), ((0, 48), (140, 111), (200, 84)), id="diagonal, ridge"
        ),
        pytest.param(
            BEAM,
            (120, 9),
            (144, 9),
            ((0, 102), (10.25, 109.6875), (10.25, 100), (13.75, 100), (13.75, 109.6875), (24, 102)),
            id="ridge beam",
        ),
        # Under the dormer, 144 - 192 / 4 = 96; beside it the main roof, 210 - 192 x 0.75 = 66.
        pytest.param(
            DORMER, (192, 60), (192, 180), ((0, 96), (60, 96), (60, 66), (120, 66)), id="cheek"
        ),
        pytest.param(DORMER, (48, 60), (240, 60), ((0, 48), (84, 111), (192, 84)), id="in dormer"),
    ],
)
def test_points(roof: Roof, start: Plan, end: Plan, points: Points) -> None:
    found = roof_line(roof, start, end).points()
    assert len(found) == len(points)
    for place, expected in zip(found, points, strict=True):
        assert place == pytest.approx(expected)


@pytest.mark.parametrize(
    ("end", "along", "across"),
    [
        ((148, 50), 0.75, 0.0),  # up the slope
        ((0, 50), -0.75, 0.0),  # down it
        ((48, 150), 0.0, -0.75),  # along the ridge, the roof falling away from face A
        ((48, -50), 0.0, 0.75),  # the same seen from the other side
        ((108, 130), 0.45, -0.6),  # 3-4-5: 0.75 x 0.6 along, 0.75 x -0.8 across
    ],
)
def test_slopes_along_and_across(end: Plan, along: float, across: float) -> None:
    (segment,) = roof_line(SHED_9, (48, 50), end).segments
    assert (segment.along, segment.across) == pytest.approx((along, across))
    assert segment.angle == pytest.approx(math.atan(along))
    # One over the cosine of the true slope, whichever way the wall goes: 1 / 0.8.
    assert segment.secant == pytest.approx(1.25)


SHED_9 = Roof((Part((LEFT,)),))


@pytest.mark.parametrize(
    ("start", "end", "message"),
    [
        ((48, 9), (48, 9), "two ends apart"),
        ((100, 60), (200, 60), "no roof over part"),
    ],
)
def test_no_roof_line(start: Plan, end: Plan, message: str) -> None:
    only_dormer = Roof((DORMER.parts[1],))
    with pytest.raises(ValueError, match=message):
        roof_line(only_dormer, start, end)


GABLE_LINE = roof_line(GABLE, (48, 9), (216, 9))
BEAM_LINE = roof_line(BEAM, (120, 9), (144, 9))


@pytest.mark.parametrize(
    ("line", "x", "height"),
    [
        (GABLE_LINE, 0, 48),
        (GABLE_LINE, 40, 78),
        (GABLE_LINE, 84, 111),
        (GABLE_LINE, 168, 48),
        (GABLE_LINE, -4, 45),  # beyond the ends the end planes go on
        (GABLE_LINE, 172, 45),
        (BEAM_LINE, 10.25, 100),  # the lower side at a step
        (BEAM_LINE, 10.0, 109.5),
    ],
)
def test_height(line: RoofLine, x: float, height: float) -> None:
    assert line.height(x) == pytest.approx(height)


@pytest.mark.parametrize(
    ("line", "left", "right", "lowest"),
    [
        (GABLE_LINE, 40, 50, 78),
        (GABLE_LINE, 80, 90, 106.5),  # 111 - 6 x 0.75 on the right, less than 108 on the left
        (GABLE_LINE, 0, 168, 48),
        (BEAM_LINE, 9, 12, 100),
        (BEAM_LINE, 2, 22, 100),  # the beam in the middle of the stretch
    ],
)
def test_lowest(line: RoofLine, left: float, right: float, lowest: float) -> None:
    assert line.lowest(left, right) == pytest.approx(lowest)


@pytest.mark.parametrize(
    ("line", "left", "right", "expected"),
    [
        # left, right and slope of each facet
        pytest.param(GABLE_LINE, 16, 17.5, ((16, 17.5, 0.75),), id="one plane"),
        pytest.param(
            GABLE_LINE, 83.25, 84.75, ((83.25, 84, 0.75), (84, 84.75, -0.75)), id="astride"
        ),
        pytest.param(GABLE_LINE, 82.5, 84, ((82.5, 84, 0.75),), id="up to the break"),
        pytest.param(GABLE_LINE, 84, 85.5, ((84, 85.5, -0.75),), id="from the break"),
        # Astride the step of the beam: one level cut under it over the whole width.
        pytest.param(BEAM_LINE, 9.5, 11, ((9.5, 11, 0.0),), id="astride a step"),
        pytest.param(BEAM_LINE, 10.25, 11.75, ((10.25, 11.75, 0.0),), id="against a step"),
        pytest.param(GABLE_LINE, 170, 171.5, ((170, 171.5, -0.75),), id="beyond the end"),
    ],
)
def test_between(
    line: RoofLine, left: float, right: float, expected: tuple[tuple[float, float, float], ...]
) -> None:
    found = [(s.left, s.right, s.along) for s in line.between(left, right)]
    assert len(found) == len(expected)
    for facet, wanted in zip(found, expected, strict=True):
        assert facet == pytest.approx(wanted)


def test_astride_a_step_a_slope_may_be_the_lower_for_a_part() -> None:
    # A dormer's cheek seen along the slope: 10 + x over the left, level 30 over the right; over
    # the stud from 19 to 23 the slope is under 30 up to x = 20 and the level line from there on.
    line = RoofLine((Segment(0, 22, 10, 1.0, 0), Segment(22, 50, 30, 0.0, 0)))
    found = [(s.left, s.right, s.height, s.along) for s in line.between(19, 23)]
    assert found == [(19, 20, 10, 1.0), (20, 23, 30, 0.0)]


@pytest.mark.parametrize(
    ("roof", "ends", "toward", "along_height", "across"),
    [
        # Chalked right under the ridge; the timber lies on one side of it or on the other, and the
        # roof falls away over it either way.
        pytest.param(GABLE, ((132, 0), (132, 50)), 0.01, 111, -0.75, id="ridge, timber left"),
        pytest.param(GABLE, ((132, 50), (132, 0)), 0.01, 111, -0.75, id="ridge, timber right"),
        # The far face right under the ridge: the roof has been rising up to it.
        pytest.param(GABLE, ((132, 0), (132, 50)), -0.01, 111, 0.75, id="far face, timber right"),
        pytest.param(GABLE, ((132, 50), (132, 0)), -0.01, 111, 0.75, id="far face, timber left"),
        # Where the ties begin: sloping over one side, level over the other.
        pytest.param(TIES, ((96, 0), (96, 50)), 0.01, 84, -0.75, id="ties, timber under the slope"),
        pytest.param(TIES, ((96, 50), (96, 0)), 0.01, 84, 0.0, id="ties, timber under the ties"),
    ],
)
def test_right_under_a_break_the_side_of_the_timber_counts(
    roof: Roof, ends: tuple[Plan, Plan], toward: float, along_height: float, across: float
) -> None:
    (segment,) = roof_line(roof, *ends, toward).segments
    assert (segment.height, segment.across) == pytest.approx((along_height, across))


def test_segments_of_one_plane_are_one() -> None:
    # The strip's edges are crossed, but its underside is above the rafters there.
    high = Roof(GABLE.parts, (Part((Plane(0.0, 0.0, 120.0),), STRIP),))
    assert len(roof_line(high, (48, 9), (216, 9)).segments) == 2


def test_a_break_at_the_very_end_is_no_segment() -> None:
    line = roof_line(GABLE, (48, 9), (132, 9))
    assert line.points() == ((0.0, 48.0), (84.0, 111.0))
