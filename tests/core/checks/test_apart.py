"""Distances between solids with six sides, by hand and by turning boxes in space."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.checks.apart import Point, Solid, apart


def box(low: Point, high: Point) -> Solid:
    (x0, y0, z0), (x1, y1, z1) = low, high
    round_ = ((x0, y0), (x1, y0), (x1, y1), (x0, y1))
    return tuple((x, y, z) for z in (z0, z1) for x, y in round_)


CUBE = box((0, 0, 0), (10, 10, 10))


@pytest.mark.parametrize(
    ("other", "distance"),
    [
        pytest.param(box((13, 0, 0), (20, 10, 10)), 3, id="face to face"),
        pytest.param(box((13, 14, 0), (20, 20, 10)), 5, id="edge to edge"),
        pytest.param(box((12, 13, 16), (20, 20, 20)), 7, id="corner to corner"),
        pytest.param(box((10, 0, 0), (20, 10, 10)), 0, id="touching"),
        pytest.param(box((5, 5, 5), (20, 20, 20)), 0, id="in each other"),
        pytest.param(box((2, 2, 2), (3, 3, 3)), 0, id="one in the other"),
        # Two edges that cross at a distance: a beam of no height along y = x over the cube's edge.
        pytest.param(box((-5, -5, 14), (15, 15, 20)), 4, id="over it"),
    ],
)
def test_by_hand(other: Solid, distance: float) -> None:
    assert apart(CUBE, other) == pytest.approx(distance)
    assert apart(other, CUBE) == pytest.approx(distance)


def test_beside_a_leaning_face() -> None:
    # It leans 3 toward the cube for 4 up, from 20 on the floor: at the cube's top it is at 12.5,
    # 2.5 from its edge and 2.5 x 4/5 square to the leaning face.
    low = ((20, 0, 0), (30, 0, 0), (30, 10, 0), (20, 10, 0))
    leaning = (*low, *((x - 30, y, 40.0) for x, y, _ in low))
    assert apart(CUBE, leaning) == pytest.approx(2)


NUMBERS = st.integers(-50, 50).map(float)
SIZES = st.integers(1, 40).map(float)
POINTS = st.tuples(NUMBERS, NUMBERS, NUMBERS)


@given(POINTS, st.tuples(SIZES, SIZES, SIZES), POINTS, st.tuples(SIZES, SIZES, SIZES), NUMBERS)
def test_boxes_turned_together_are_as_far_apart_as_their_sides_say(
    at: Point, size: Point, other: Point, its_size: Point, turn: float
) -> None:
    gaps = [
        max(b - (a + s), a - (b + t), 0.0)
        for a, s, b, t in zip(at, size, other, its_size, strict=True)
    ]
    first, second = (
        tuple(_turned(p, turn) for p in box(low, (low[0] + s[0], low[1] + s[1], low[2] + s[2])))
        for low, s in ((at, size), (other, its_size))
    )
    assert apart(first, second) == pytest.approx(math.hypot(*gaps), abs=1e-6)


def _turned(point: Point, by: float) -> Point:
    """Turned about an upright and then about a level axis."""
    x, y, z = point
    x, y = x * math.cos(by) - y * math.sin(by), x * math.sin(by) + y * math.cos(by)
    y, z = y * math.cos(2 * by) - z * math.sin(2 * by), y * math.sin(2 * by) + z * math.cos(2 * by)
    return x, y, z
