"""Drawings moved and set beside each other."""

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.drawing import Dimension, Drawing, Element, Fill, Pen, Stroke, Text
from core.drawing.arrange import bounds, moved, side_by_side
from core.drawing.elements import XY

STROKE = Stroke(((10, 20), (40, -5)), Pen.STUD, "A/layout/1")
FILL = Fill(((0, 0), (30, 0), (30, 7)), Pen.STUD)
TEXT = Text("A1", (-8, 3), 3.5, Pen.LABEL)
# Leftward, so its left is down: the line runs at y = -50.
DIMENSION = Dimension((100, 0), (0, 0), 50, "100", 3.5)


@pytest.mark.parametrize(
    ("drawing", "expected"),
    [
        ((), None),
        ((STROKE,), ((10, -5), (40, 20))),
        ((FILL,), ((0, 0), (30, 7))),
        ((TEXT,), ((-8, 3), (-8, 3))),
        ((DIMENSION,), ((0, -50), (100, 0))),
        ((STROKE, FILL, TEXT, DIMENSION), ((-8, -50), (100, 20))),
    ],
)
def test_bounds(drawing: Drawing, expected: tuple[XY, XY] | None) -> None:
    assert bounds(drawing) == expected


@pytest.mark.parametrize(
    ("element", "expected"),
    [
        (STROKE, Stroke(((110, 25), (140, 0)), Pen.STUD, "A/layout/1")),
        (FILL, Fill(((100, 5), (130, 5), (130, 12)), Pen.STUD)),
        (TEXT, Text("A1", (92, 8), 3.5, Pen.LABEL)),
        (DIMENSION, Dimension((200, 5), (100, 5), 50, "100", 3.5)),
    ],
)
def test_moved(element: Element, expected: Element) -> None:
    assert moved((element,), (100, 5)) == (expected,)


def wall(left: float, right: float) -> Drawing:
    return (Stroke(((left, 0), (right, 10)), Pen.STUD),)


@pytest.mark.parametrize(
    ("drawings", "expected"),
    [
        ((), ()),
        ((wall(5, 25),), (wall(5, 25),)),
        # 5 to 25, then 7 apart: 32 to 62 (30 wide), then 69 to 70.
        ((wall(5, 25), wall(0, 30), wall(-1, 0)), (wall(5, 25), wall(32, 62), wall(69, 70))),
        (((), wall(5, 25), (), wall(0, 30)), ((), wall(5, 25), (), wall(32, 62))),
    ],
)
def test_side_by_side(drawings: tuple[Drawing, ...], expected: tuple[Drawing, ...]) -> None:
    assert side_by_side(drawings, 7) == expected


spans = st.tuples(st.integers(-9000, 9000), st.integers(0, 9000)).map(
    lambda s: wall(s[0], s[0] + s[1])
)


@given(st.lists(spans, max_size=6).map(tuple), st.integers(0, 500))
def test_neighbours_stand_the_gap_apart_and_keep_their_width(
    drawings: tuple[Drawing, ...], gap: int
) -> None:
    placed = [bounds(d) for d in side_by_side(drawings, gap)]
    found = [(span[0][0], span[1][0]) for span in placed if span is not None]
    assert [b[0] - a[1] for a, b in pairwise(found)] == [gap] * (max(len(drawings) - 1, 0))
    widths = [span[1][0] - span[0][0] for d in drawings if (span := bounds(d)) is not None]
    assert [b - a for a, b in found] == widths
