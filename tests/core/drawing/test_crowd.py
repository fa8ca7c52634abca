"""Figures over several plates keep off each other."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import Polygon

from core.drawing.crowd import MOST, Crowd, Quad, Shape, apart, meeting, shape


def upright(left: float, bottom: float, right: float, top: float) -> Quad:
    return (left, bottom), (right, bottom), (right, top), (left, top)


def turned(x: float, y: float, wide: float, high: float, angle: float) -> Quad:
    """A rectangle about (x, y), turned by an angle in radians."""
    turn = complex(math.cos(angle), math.sin(angle))
    corners = [
        complex(x, y) + complex(a * wide / 2, b * high / 2) * turn
        for a, b in ((-1, -1), (1, -1), (1, 1), (-1, 1))
    ]
    first, second, third, fourth = ((c.real, c.imag) for c in corners)
    return first, second, third, fourth


SQUARE = upright(0, 0, 10, 10)


@pytest.mark.parametrize(
    ("other", "expected"),
    [
        (SQUARE, False),
        (upright(9, 9, 20, 20), False),
        (upright(2, 2, 3, 3), False),
        (upright(-5, 4, 15, 6), False),  # across it: no corner of either lies in the other
        (upright(10, 0, 20, 10), True),  # touching
        (upright(12, 0, 20, 10), True),
        # A square on its corner, 14.14 from corner to corner, 7.07 from its middle: it reaches to
        # 9.93 in the first case and to 10.93 in the second.
        (turned(17, 5, 10, 10, math.pi / 4), False),
        (turned(18, 5, 10, 10, math.pi / 4), True),
        # Its box overlaps the square's corner, itself it does not: the corner at (10, 10) lies
        # 11.3 from its middle at (18, 18), its side only 5.
        (turned(18, 18, 30, 10, -math.pi / 4), True),
    ],
)
def test_apart(other: Quad, expected: bool) -> None:
    assert apart(SQUARE, other) is expected
    assert apart(other, SQUARE) is expected


PLACES, SIDES = st.integers(-30, 30), st.integers(1, 40)
QUADS = st.builds(turned, PLACES, PLACES, SIDES, SIDES, st.floats(0.0, math.pi))


@given(QUADS, QUADS)
def test_apart_as_polygons_are(one: Quad, other: Quad) -> None:
    shared = Polygon(one).intersection(Polygon(other)).area
    if apart(one, other):
        assert shared < 1e-6
    else:
        assert Polygon(one).distance(Polygon(other)) < 1e-6


def lifted(crowd: Crowd, plate: str, x: float) -> float:
    """How far a figure over x is lifted: 4 wide and from 10 up to 30, its leader under it."""

    def shapes(lift: float) -> tuple[Shape, Shape]:
        low = 10 + lift
        figure, leader = upright(x - 2, low, x + 2, low + 20), upright(x - 0.1, 0, x + 0.1, low)
        return shape(figure), shape(leader)

    return crowd.lift(plate, shapes, 3.0)


def test_a_figure_alone_is_not_lifted() -> None:
    crowd = Crowd()
    assert [lifted(crowd, "A/top/1/1", x) for x in (0, 5, 10)] == [0, 0, 0]


def test_figures_over_one_plate_are_not_looked_at() -> None:
    """They stand apart already."""
    crowd = Crowd()
    assert [lifted(crowd, "A/top/1/1", x) for x in (0, 1)] == [0, 0]


def test_a_figure_is_lifted_over_that_of_another_plate() -> None:
    """The first stands from 10 to 30, 2 to either side; the second's leader 3 beside it is free,
    its figure is not before it begins at 30: 7 steps of 3."""
    crowd = Crowd()
    lifted(crowd, "A/top/1/1", 0)
    assert lifted(crowd, "A/top/2/1", 3) == 21


def test_a_leader_does_not_cross_a_figure() -> None:
    """Right behind the first figure no lift leaves its leader free: so the figure alone is."""
    crowd = Crowd()
    lifted(crowd, "A/top/1/1", 0)
    assert lifted(crowd, "A/top/2/1", 1) == 21
    other = Crowd()
    other.add("A/top/1/1", shape(upright(-50, 2, 50, 4)))
    assert lifted(other, "A/top/2/1", 0) == 0


def test_tapes_are_kept_off() -> None:
    crowd = Crowd()
    crowd.add("A/top/1/1", shape(upright(1.5, 8, 40, 33)))
    assert lifted(crowd, "A/top/2/1", 0) == 24


def test_out_of_reach_it_is_left_where_it_is() -> None:
    crowd = Crowd()
    crowd.add("A/top/1/1", shape(upright(-50, 0, 50, 30 + 3 * MOST)))
    assert lifted(crowd, "A/top/2/1", 0) == 0


@given(QUADS, QUADS, st.floats(0.0, 2 * math.pi), st.integers(-40, 40))
def test_where_a_slide_meets_another_as_tried_place_by_place(
    one: Quad, other: Quad, angle: float, along: int
) -> None:
    """But for places within a hair of touching, where sums of floats differ."""
    way = (math.cos(angle), math.sin(angle))
    stretch = meeting(one, way, other)
    first, second, third, fourth = ((x + along * way[0], y + along * way[1]) for x, y in one)
    inside = stretch is not None and stretch[0] < along < stretch[1]
    if apart((first, second, third, fourth), other) is inside:
        ends = stretch or (along, along)
        shared = Polygon((first, second, third, fourth)).intersection(Polygon(other)).area
        assert min(abs(along - end) for end in ends) < 1e-6 or shared < 1e-6


@pytest.mark.parametrize(
    ("way", "expected"),
    [
        ((1.0, 0.0), (10.0, 40.0)),  # the other stands from 20 to 40; it arrives after 10
        ((-1.0, 0.0), (-40.0, -10.0)),
        ((0.0, 1.0), None),  # past it
    ],
)
def test_a_slide_meets_another(way: tuple[float, float], expected: tuple[float, float]) -> None:
    found = meeting(SQUARE, way, upright(20, 0, 40, 10))
    assert found == (None if expected is None else pytest.approx(expected))
