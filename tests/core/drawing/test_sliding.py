"""A rectangle slid along a straight way: where it overlaps what is taken."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.drawing.placing import Rect
from core.drawing.sliding import XY, Stretch, first_free, in_the_way, is_free

RIGHT, LEFT, UP, DOWN = (1.0, 0.0), (-1.0, 0.0), (0.0, 1.0), (0.0, -1.0)
SLANTING = (0.6, 0.8)
SMALL = (0.0, 0.0, 2.0, 1.0)


@pytest.mark.parametrize(
    ("way", "taken", "expected"),
    [
        # From 5 to 6: its right edge arrives after 3, its left one leaves after 6.
        (RIGHT, (5.0, 0.0, 6.0, 9.0), [(3.0, 6.0)]),
        (RIGHT, (5.0, 1.0, 6.0, 9.0), []),  # passed under, touching
        (LEFT, (-6.0, 0.0, -5.0, 9.0), [(5.0, 8.0)]),
        (LEFT, (5.0, 0.0, 6.0, 9.0), [(-6.0, -3.0)]),  # behind it
        (UP, (1.0, 4.0, 9.0, 5.0), [(3.0, 5.0)]),
        (UP, (2.0, 4.0, 9.0, 5.0), []),  # passed beside, touching
        (DOWN, (1.0, -5.0, 9.0, -4.0), [(4.0, 6.0)]),
        # Along 3-4-5: beside each other in x from 5 (right edge at 5 after 3/0.6) to 10, in y from
        # 5 (top at 5 after 4/0.8) to 10.
        (SLANTING, (5.0, 5.0, 6.0, 8.0), [(5.0, 10.0)]),
        # In x from 5 to 10, in y only from 10: it passes under.
        (SLANTING, (5.0, 9.0, 6.0, 12.0), []),
    ],
)
def test_in_the_way(way: XY, taken: Rect, expected: list[Stretch]) -> None:
    found = [end for stretch in in_the_way(SMALL, way, [taken]) for end in stretch]
    assert found == pytest.approx([end for stretch in expected for end in stretch])


@pytest.mark.parametrize(
    ("place", "free"), [(2.9, True), (3.0, True), (3.1, False), (6.0, True), (7.0, False)]
)
def test_free_places(place: float, free: bool) -> None:
    assert is_free(place, [(3.0, 6.0), (6.5, 8.0)]) is free


SPANS = st.tuples(st.integers(-50, 50), st.integers(1, 40))
RECTS = st.tuples(SPANS, SPANS).map(
    lambda s: (float(s[0][0]), float(s[1][0]), float(sum(s[0])), float(sum(s[1])))
)
WAYS = st.one_of(
    st.sampled_from([RIGHT, LEFT, UP, DOWN]),
    st.floats(0.0, 2 * math.pi).map(lambda angle: (math.cos(angle), math.sin(angle))),
)


@given(RECTS, st.lists(RECTS, max_size=8), WAYS, st.integers(-60, 60))
def test_as_the_rectangle_would_be_tried_there(
    rect: Rect, taken: list[Rect], way: XY, place: int
) -> None:
    """But for places within a hair of touching, where sums of floats differ."""
    free = is_free(float(place), in_the_way(rect, way, taken))
    x, y = way[0] * place, way[1] * place
    there = (rect[0] + x, rect[1] + y, rect[2] + x, rect[3] + y)
    assert free in {_clear(there, taken, slack) for slack in (-1e-6, 1e-6)}


def _clear(rect: Rect, taken: list[Rect], slack: float) -> bool:
    """Whether a rectangle shares no more than the slack with any other."""
    shared = [
        (min(rect[2], o[2]) - max(rect[0], o[0]), min(rect[3], o[3]) - max(rect[1], o[1]))
        for o in taken
    ]
    return all(min(overlap) <= slack for overlap in shared)


@pytest.mark.parametrize(
    ("step", "count", "stretches", "expected"),
    [
        (2.0, 3, [], 0),
        (2.0, 0, [], None),
        (2.0, 5, [(-1.0, 1.0), (3.0, 6.0)], 1),  # at 2
        (2.0, 5, [(-1.0, 5.0)], 3),
        (2.0, 3, [(-1.0, 5.0)], None),
        (2.0, 5, [(1.0, 6.5), (-1.0, 2.5)], 4),  # out of order, one into the other
        (2.0, 5, [(-1.0, 4.0)], 2),  # touching
        (-2.0, 5, [(-1.0, 1.0), (-3.5, -1.5)], 2),  # at -4
    ],
)
def test_first_free(
    step: float, count: int, stretches: list[Stretch], expected: int | None
) -> None:
    assert first_free(0.0, step, count, stretches) == expected


STRETCHES = st.lists(
    st.tuples(st.floats(-60, 60), st.floats(0, 30)).map(lambda s: (s[0], s[0] + s[1])), max_size=8
)
STEPS = st.floats(0.25, 9.0).flatmap(lambda step: st.sampled_from([step, -step]))


@given(st.floats(-50, 50), STEPS, st.integers(0, 30), STRETCHES)
def test_first_free_as_place_by_place(
    start: float, step: float, count: int, stretches: list[Stretch]
) -> None:
    tried = (n for n in range(count) if is_free(start + n * step, stretches))
    assert first_free(start, step, count, stretches) == next(tried, None)
