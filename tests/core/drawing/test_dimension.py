"""Dimensions taken apart: where line, extension lines, ticks and figure stand."""

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from core.drawing import Align, Dimension, Pen, Stroke, Text
from core.drawing.dimension import dimension_line, dimension_parts
from core.drawing.elements import XY

# At one to ten a mm on paper is 10 mm of the model.
SCALE = 0.1
GAP = 15.875  # 1/16 in. on paper
PAST = 31.75  # 1/8 in. on paper
TICK = 31.75 / 2 / math.sqrt(2)  # half of a tick of 1/8 in., along and across
LIFT = 10.0  # 1 mm on paper


def dimension(start: XY, end: XY, aside: float, text: str = "1000") -> Dimension:
    return Dimension(start, end, aside, text, 3.5, Pen.DIMENSION, "A/door-1")


def strokes(shown: Dimension) -> list[tuple[XY, ...]]:
    return [p.points for p in dimension_parts(shown, SCALE) if isinstance(p, Stroke)]


def ends(line: tuple[XY, ...]) -> list[float]:
    return [number for point in line for number in point]


def figure(shown: Dimension) -> Text:
    (text,) = (p for p in dimension_parts(shown, SCALE) if isinstance(p, Text))
    return text


def test_a_level_dimension_below_what_it_measures() -> None:
    line, *others = strokes(dimension((0, 0), (1000, 0), -300))
    assert line == ((0, -300), (1000, -300))
    assert others == [
        ((0, -GAP), (0, -300 - PAST)),
        ((1000, -GAP), (1000, -300 - PAST)),
        (pytest.approx((-TICK, -300 - TICK)), pytest.approx((TICK, -300 + TICK))),
        (pytest.approx((1000 - TICK, -300 - TICK)), pytest.approx((1000 + TICK, -300 + TICK))),
    ]


@pytest.mark.parametrize(
    ("start", "end", "aside", "first", "last", "degrees", "at"),
    [
        # The left of rightward is up, of leftward down, of upward the left, of downward the right.
        ((0, 0), (1000, 0), 300, (0, 300), (1000, 300), 0, (500, 300 + LIFT)),
        ((0, 0), (1000, 0), -300, (0, -300), (1000, -300), 0, (500, -300 + LIFT)),
        ((1000, 0), (0, 0), 300, (0, -300), (1000, -300), 0, (500, -300 + LIFT)),
        ((0, 0), (0, 1000), 200, (-200, 0), (-200, 1000), 90, (-200 - LIFT, 500)),
        ((0, 0), (0, 1000), -200, (200, 0), (200, 1000), 90, (200 - LIFT, 500)),
        ((0, 1000), (0, 0), -200, (-200, 0), (-200, 1000), 90, (-200 - LIFT, 500)),
        # 3-4-5: the left of (0.8, 0.6) is (-0.6, 0.8); the middle is (400, 300).
        ((0, 0), (800, 600), 100, (-60, 80), (740, 680), 36.8699, (340 - 6, 380 + 8)),
        ((800, 600), (0, 0), -100, (-60, 80), (740, 680), 36.8699, (340 - 6, 380 + 8)),
        # Falling to the right: read downhill. The left of (0.8, -0.6) is (0.6, 0.8).
        ((0, 600), (800, 0), 100, (60, 680), (860, 80), -36.8699, (460 + 6, 380 + 8)),
    ],
)
def test_the_figure_stands_above_its_line_and_is_read_from_below_or_the_right(
    start: XY, end: XY, aside: float, first: XY, last: XY, degrees: float, at: XY
) -> None:
    shown = dimension(start, end, aside)
    assert ends(strokes(shown)[0]) == pytest.approx([*first, *last])
    text = figure(shown)
    assert math.degrees(text.angle) == pytest.approx(degrees, abs=1e-4)
    assert text.at == pytest.approx(at)
    assert (text.text, text.size, text.align, text.narrow) == ("1000", 3.5, Align.MIDDLE, False)


@pytest.mark.parametrize(
    ("run", "narrow", "align", "x", "line_end"),
    [
        # 57 3/16" at 3.5 mm is 4.010 * 3.5 = 14.035 mm wide, narrow 3.370 * 3.5 = 11.795 mm, and
        # wants 1.25 mm clear on both sides: 16.535 and 14.295 mm; in the model 165.35 and 142.95.
        (166, False, Align.MIDDLE, 83, 166),
        (165, True, Align.MIDDLE, 82.5, 165),
        (143, True, Align.MIDDLE, 71.5, 143),
        (142, True, Align.START, 142 + 12.5, 142 + 142.95),
    ],
)
def test_a_figure_too_wide_for_its_line_is_written_narrow_then_beyond_the_end(
    run: float, narrow: bool, align: Align, x: float, line_end: float
) -> None:
    shown = dimension((0, 0), (run, 0), 50, '57 3/16"')
    text = figure(shown)
    assert (text.narrow, text.align) == (narrow, align)
    assert text.at == pytest.approx((x, 50 + LIFT))
    assert ends(strokes(shown)[0]) == pytest.approx([0, 50, line_end, 50])


def test_the_same_point_twice_is_no_dimension() -> None:
    assert dimension_parts(dimension((5, 5), (5, 5), 30), SCALE) == ()


def test_on_what_it_measures_it_has_no_extension_lines() -> None:
    line, *ticks = strokes(dimension((0, 0), (1000, 0), 0))
    assert line == ((0, 0), (1000, 0))
    assert len(ticks) == 2


def test_without_a_text_there_is_no_figure_and_the_line_is_not_carried_on() -> None:
    parts = dimension_parts(dimension((0, 0), (5, 0), 50, ""), SCALE)
    assert all(isinstance(part, Stroke) for part in parts)
    assert isinstance(parts[0], Stroke)
    assert parts[0].points == ((0, 50), (5, 50))


def test_every_part_has_the_pen_and_the_key() -> None:
    parts = dimension_parts(dimension((0, 0), (1000, 0), 50), SCALE)
    assert {(part.pen, part.key) for part in parts} == {(Pen.DIMENSION, "A/door-1")}


places = st.tuples(st.floats(-5000, 5000), st.floats(-5000, 5000))


@given(places, places, st.floats(-900, 900), st.sampled_from(["", '16"', "4'-9 3/16\""]))
def test_it_looks_the_same_taken_from_either_end(
    start: XY, end: XY, aside: float, text: str
) -> None:
    """Turned round, left is right: the same picture."""
    one = strokes(dimension(start, end, aside, text))
    other = strokes(dimension(end, start, -aside, text))
    assert len(one) == len(other)
    for a, b in zip(sorted(one), sorted(other), strict=True):
        assert ends(a) == pytest.approx(ends(b), abs=1e-6)


@given(places, places, st.floats(-900, 900))
def test_the_line_is_as_long_as_the_measure_and_aside_by_as_much_as_stated(
    start: XY, end: XY, aside: float
) -> None:
    run = math.dist(start, end)
    assume(run > 1)
    first, last = dimension_line(dimension(start, end, aside))
    assert math.dist(first, last) == pytest.approx(run)
    # The signed distance of its start from the measured line, by the cross product.
    cross = (end[0] - start[0]) * (first[1] - start[1]) - (end[1] - start[1]) * (
        first[0] - start[0]
    )
    assert cross / run == pytest.approx(aside, abs=1e-6)
