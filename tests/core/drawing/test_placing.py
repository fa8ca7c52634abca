"""Finding room: rectangles that are taken, and figures spread along a line."""

import itertools
import math
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.drawing.placing import Ground, Rect, Taken, bounds, spread

SPANS = st.tuples(st.integers(-900, 900), st.integers(1, 700))
RECTS = st.tuples(SPANS, SPANS).map(
    lambda s: (float(s[0][0]), float(s[1][0]), float(sum(s[0])), float(sum(s[1])))
)


@pytest.mark.parametrize(
    ("rect", "free"),
    [
        ((0.0, 0.0, 10.0, 10.0), False),  # the taken one itself
        ((9.9, 9.9, 20.0, 20.0), False),  # a corner of it
        ((2.0, 2.0, 3.0, 3.0), False),  # within it
        ((-5.0, -5.0, 15.0, 15.0), False),  # around it
        ((10.0, 0.0, 20.0, 10.0), True),  # beside it, touching
        ((0.0, -4.0, 10.0, 0.0), True),  # under it, touching
        ((11.0, 2.0, 12.0, 3.0), True),
    ],
)
def test_taken(rect: Rect, free: bool) -> None:
    taken = Taken(7.0)
    taken.add((0.0, 0.0, 10.0, 10.0))
    assert taken.free(rect) is free


@given(st.lists(RECTS, max_size=12), RECTS, st.sampled_from([3.0, 50.0, 400.0, 5000.0]))
def test_taken_answers_as_a_plain_list_does(rects: list[Rect], asked: Rect, column: float) -> None:
    taken = Taken(column)
    for rect in rects:
        taken.add(rect)
    apart = all(
        asked[2] <= r[0] or asked[0] >= r[2] or asked[3] <= r[1] or asked[1] >= r[3] for r in rects
    )
    assert taken.free(asked) is apart


def test_leaders_cross_timber_but_no_writing() -> None:
    ground = Ground(400.0)
    ground.add_timber((0.0, 0.0, 10.0, 10.0))
    ground.add_writing((20.0, 0.0, 30.0, 10.0))
    on_timber, on_writing, bare = ((x, 2.0, x + 2.0, 4.0) for x in (4.0, 24.0, 14.0))
    assert [ground.free(r) for r in (on_timber, on_writing, bare)] == [False, False, True]
    assert [ground.passable(r) for r in (on_timber, on_writing, bare)] == [True, False, True]


@pytest.mark.parametrize(
    ("wanted", "gap", "expected"),
    [
        ([], 3.0, []),
        ([5.0], 3.0, [5.0]),
        ([0.0, 3.0, 6.0], 3.0, [0.0, 3.0, 6.0]),
        # Two at one place part by half the gap each.
        ([4.0, 4.0], 3.0, [2.5, 5.5]),
        # 0 and 1 want the mean 0.5, less half a gap: -1 and 2. The third stands free.
        ([0.0, 1.0, 10.0], 3.0, [-1.0, 2.0, 10.0]),
        # The pair takes the third along: the three share the mean of (0, 1-3, 3-6) = -5/3.
        ([0.0, 1.0, 3.0], 3.0, [-5 / 3, 4 / 3, 13 / 3]),
    ],
)
def test_spread(wanted: list[float], gap: float, expected: list[float]) -> None:
    assert spread(wanted, gap) == pytest.approx(expected)


@pytest.mark.parametrize(
    ("wanted", "low", "high", "expected"),
    [
        ([0.0, 1.0, 10.0], 0.0, math.inf, [0.0, 3.0, 10.0]),
        ([0.0, 10.0, 11.0], -math.inf, 11.0, [0.0, 8.0, 11.0]),
        ([4.0, 4.0], 0.0, 9.0, [2.5, 5.5]),
        # Three take up 6, and there are 2: they stand 2 beyond either end.
        ([4.0, 5.0, 6.0], 4.0, 6.0, [2.0, 5.0, 8.0]),
    ],
)
def test_spread_within_bounds(
    wanted: list[float], low: float, high: float, expected: list[float]
) -> None:
    assert spread(wanted, 3.0, low, high) == pytest.approx(expected)


PLACES = st.lists(st.integers(-200, 200).map(lambda n: n / 4), max_size=30).map(sorted)


@given(PLACES, st.integers(1, 40).map(lambda n: n / 4))
def test_spread_keeps_order_and_gap_and_moves_only_what_crowds(
    wanted: list[float], gap: float
) -> None:
    places = spread(wanted, gap)
    assert all(b - a >= gap - 1e-9 for a, b in pairwise(places))
    # Who gives way to the left has a neighbour on the right at the gap, and the other way round.
    for n, (place, want) in enumerate(zip(places, wanted, strict=True)):
        crowded_from_left = n > 0 and place - places[n - 1] < gap + 1e-9
        crowded_from_right = n + 1 < len(places) and places[n + 1] - place < gap + 1e-9
        assert place >= want - 1e-9 or crowded_from_right
        assert place <= want + 1e-9 or crowded_from_left


def _cost(places: list[float], wanted: list[float]) -> float:
    return sum((a - b) ** 2 for a, b in zip(places, wanted, strict=True))


def _brute(wanted: list[int], gap: int, low: int, high: int) -> float:
    """The least cost over all whole-numbered places: each after the one before it by the gap."""
    best = math.inf
    for places in itertools.combinations(range(low, high + 1), len(wanted)):
        if all(b - a >= gap for a, b in pairwise(places)):
            best = min(best, _cost([float(p) for p in places], [float(w) for w in wanted]))
    return best


@given(
    st.lists(st.integers(0, 8), min_size=1, max_size=4).map(sorted),
    st.integers(1, 3),
    st.sampled_from([(-6, 14), (0, 14), (-6, 9), (0, 9)]),
)
def test_spread_is_the_nearest(wanted: list[int], gap: int, room: tuple[int, int]) -> None:
    """No whole-numbered places are nearer, and rounding ours to whole numbers costs little.

    In a row of n the best places are a mean, n times which is whole: scaled by n they are found.
    """
    scale = math.lcm(*range(1, len(wanted) + 1)) if len(wanted) < 3 else 1
    low, high = (edge * scale for edge in room)
    ours = spread([float(w * scale) for w in wanted], gap * scale, low, high)
    assert all(low - 1e-9 <= place <= high + 1e-9 for place in ours)
    cost = _cost(ours, [float(w * scale) for w in wanted])
    best = _brute([w * scale for w in wanted], gap * scale, low, high)
    assert cost <= best + 1e-9
    # Whole-numbered places lie within half a step of ours, so the oracle is no farther off.
    slack = 0.0 if scale > 1 or len(wanted) == 1 else len(wanted) / 4
    assert best <= cost + slack + 1e-9


@given(st.lists(st.tuples(st.integers(-50, 50), st.integers(-50, 50)), min_size=1, max_size=9))
def test_bounds(points: list[tuple[float, float]]) -> None:
    left, bottom, right, top = bounds(points)
    assert (left, right) == (min(x for x, _ in points), max(x for x, _ in points))
    assert (bottom, top) == (min(y for _, y in points), max(y for _, y in points))


def test_nothing_has_no_bounds() -> None:
    with pytest.raises(ValueError, match="not enough values"):
        bounds([])
