"""Few rectangles around many, for painting anew."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gui.sketcher.patches import SPARE, Dots, around, meet, patches

WIDE, HIGH = 600, 400


@pytest.mark.parametrize(
    ("places", "expected"),
    [
        ([], []),
        ([(5, 5, 9, 9)], [(5, 5, 9, 9)]),
        ([(5, 5, 9, 9), (5, 5, 9, 9)], [(5, 5, 9, 9)]),
        # Side by side: one around both wastes 20 dots.
        ([(0, 0, 10, 10), (12, 0, 22, 10)], [(0, 0, 22, 10)]),
        # Corner to corner: around both lie 300 by 300, 80,000 more than the two hold.
        (
            [(0, 0, 100, 100), (200, 200, 300, 300)],
            [(0, 0, 100, 100), (200, 200, 300, 300)],
        ),
        # The third reaches to both: the three become one, the first of 500 by 20 with it.
        ([(0, 0, 240, 20), (260, 0, 500, 20), (230, 0, 270, 20)], [(0, 0, 500, 20)]),
        # Past the edge of the picture, or wholly outside it.
        ([(-10, 390, 20, 450)], [(0, 390, 20, 400)]),
        ([(700, 0, 800, 20)], []),
    ],
)
def test_patches(places: list[Dots], expected: list[Dots]) -> None:
    assert patches(places, WIDE, HIGH) == expected


SPANS = st.tuples(st.integers(-50, 650), st.integers(1, 200))
PLACES = st.tuples(SPANS, SPANS).map(
    lambda s: (s[0][0], s[1][0], s[0][0] + s[0][1], s[1][0] + s[1][1])
)


@given(st.lists(PLACES, max_size=30))
def test_every_place_in_the_picture_lies_in_one_patch(places: list[Dots]) -> None:
    found = patches(places, WIDE, HIGH)
    for left, top, right, bottom in places:
        inside = max(left, 0), max(top, 0), min(right, WIDE), min(bottom, HIGH)
        if inside[0] < inside[2] and inside[1] < inside[3]:
            assert any(around([one, inside]) == one for one in found)
    assert all(around([one, (0, 0, WIDE, HIGH)]) == (0, 0, WIDE, HIGH) for one in found)


@given(st.lists(PLACES, max_size=12))
def test_no_two_patches_would_better_be_one(places: list[Dots]) -> None:
    found = patches(places, WIDE, HIGH)
    for n, one in enumerate(found):
        for other in found[n + 1 :]:
            left, top, right, bottom = around([one, other])
            apart = sum((c - a) * (d - b) for a, b, c, d in (one, other))
            assert (right - left) * (bottom - top) > apart + SPARE


@pytest.mark.parametrize(
    ("one", "expected"),
    [
        ((0, 0, 10, 10), False),  # touching: no dot is shared
        ((0, 0, 11, 11), True),
        ((12, 12, 13, 13), True),
        ((0, 15, 50, 16), True),
        ((20, 0, 30, 50), False),
    ],
)
def test_meet(one: Dots, expected: bool) -> None:
    assert meet(one, (10, 10, 20, 20)) is expected
