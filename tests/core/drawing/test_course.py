"""Where tapes lie, and what their figures take up."""

import math

import pytest

from core.drawing import View
from core.drawing.course import BAND, FOOT, LEAD, OFF, Course, Lane
from core.drawing.crowd import Quad
from core.drawing.typeface import text_width

VIEW = View(1 / 10)
LEVEL = Course((100.0, 20.0), 1000.0, (1.0, 0.0), (0.0, -1.0), -math.pi / 2)
# Up a slope of 3 in 4, off it to the left and up.
SLOPING = Course((100.0, 20.0), 1000.0, (0.8, 0.6), (-0.6, 0.8), math.atan2(0.8, -0.6))


@pytest.mark.parametrize(
    ("course", "along", "off", "expected"),
    [
        (LEVEL, 0.0, 0.0, (100.0, 20.0)),
        (LEVEL, 50.0, 5.0, (150.0, 15.0)),
        (SLOPING, 50.0, 0.0, (140.0, 50.0)),
        (SLOPING, 50.0, 5.0, (137.0, 54.0)),
    ],
)
def test_places_beside_the_timber(
    course: Course, along: float, off: float, expected: tuple[float, float]
) -> None:
    assert course.bend(along, off) == pytest.approx(expected)


def sides(quad: Quad) -> tuple[float, float]:
    return math.dist(quad[0], quad[1]), math.dist(quad[1], quad[2])


@pytest.mark.parametrize("course", [LEVEL, SLOPING])
@pytest.mark.parametrize("lift", [0.0, 30.0])
def test_a_lane_is_a_leader_and_a_figure_beyond_it(course: Course, lift: float) -> None:
    """At 1:10 a figure stands 10 (OFF + BAND + LEAD + FOOT) off the timber, as wide as its text."""
    shapes = Lane.of(course, 200.0, '57 3/16" S', VIEW).shapes(lift)
    figure, leader = (shape.quad for shape in shapes)
    wide = 10 * text_width('57 3/16" S', VIEW.size, narrow=True)
    assert sides(figure) == pytest.approx((24.5, wide))
    assert sides(leader) == pytest.approx((3.0, 10 * (LEAD + FOOT) + lift))
    foot = 10 * (OFF + BAND + LEAD + FOOT) + lift
    assert figure[0] == pytest.approx(course.bend(200.0 - 12.25, foot))
    assert leader[0] == pytest.approx(course.bend(200.0 - 1.5, 10 * (OFF + BAND)))


def test_at_rest_it_is_reckoned_once() -> None:
    lane = Lane.of(LEVEL, 200.0, "B", VIEW)
    assert lane.shapes(0.0) is lane.shapes(0.0)
    assert lane.shapes(0.0) == Lane.of(LEVEL, 200.0, "B", VIEW).shapes(0.0)
