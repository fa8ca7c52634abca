"""Dimension strings under a wall, and the heights of its ends."""

from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.drawing import Dimension, Text, View
from core.drawing.course import BAND, LEAD, OFF
from core.drawing.dimension import ROOM, dimension_line
from core.drawing.strings import BESIDE, FIRST, STRING, figures_reach, strings
from core.drawing.typeface import text_width
from core.framing import Fit, Frame, PlacedOpening
from core.lengths import System, Tape
from core.roof import RoofLine, Segment
from core.wording import Wording
from walls import UK

WORDS = Wording("metric", Tape.usual(System.METRIC))
VIEW = View(1 / 50)


def level(run: float, height: float) -> RoofLine:
    return RoofLine((Segment(0.0, run, height, 0.0, 0.0),))


def framed(*openings: tuple[float, float]) -> Frame:
    """A frame with nothing but openings at (left, width)."""
    placed = tuple(
        PlacedOpening(f"B/door-{n}", UK.opening(f"door-{n}", left, width, 2000), Fit(True, ()))
        for n, (left, width) in enumerate(openings, start=1)
    )
    line = level(1.0, 1.0)
    return Frame(line, line, (), placed, (), ())


def drawn(
    *openings: tuple[float, float], run: float = 6000, height: float = 2400
) -> list[Dimension]:
    """The strings of a wall whose marks reach 20 mm below the floor."""
    drawing = strings(run, level(run, height), framed(*openings), 20.0, VIEW, WORDS)
    return [element for element in drawing if isinstance(element, Dimension)]


def line_y(dimension: Dimension) -> float:
    """How far its line stands below the floor, mm on paper."""
    return -dimension_line(dimension)[0][1] * VIEW.scale


def test_the_length_of_the_wall_stands_under_its_marks() -> None:
    """Half a mm under what the marks take up, and from there to the first string."""
    overall = drawn()[0]
    assert (overall.start[0], overall.end[0], overall.text) == (0, 6000, "6000")
    assert line_y(overall) == pytest.approx(20 + 0.5 + FIRST)


def test_openings_stand_in_a_string_over_the_length() -> None:
    door, window, overall, *_ = drawn((1000, 800), (3000, 1200))
    assert [(d.start[0], d.end[0], d.text, d.key) for d in (door, window)] == [
        (1000, 1800, "800", "B/door-1"),
        (3000, 4200, "1200", "B/door-2"),
    ]
    assert line_y(door) == line_y(window) == pytest.approx(20.5 + FIRST)
    assert line_y(overall) == pytest.approx(20.5 + FIRST + STRING)


def test_openings_are_in_order_whatever_order_they_were_stated_in() -> None:
    assert [d.text for d in drawn((3000, 1200), (1000, 800))][:2] == ["800", "1200"]


def test_a_figure_without_room_takes_its_neighbour_to_another_string() -> None:
    """300 mm at 1:50 are 6 mm. "300" is 3 * 1.708 = 5.1 mm narrow, with 1.25 on either side 7.6:
    too wide, so it stands beyond, over 7.6 mm, where the next opening begins after 2 mm."""
    first, second, third, overall, *_ = drawn((1000, 300), (1400, 900), (3000, 900))
    assert [d.text for d in (first, third, second)] == ["300", "900", "900"]
    rows = [line_y(d) for d in (first, second, third, overall)]
    assert rows == pytest.approx([20.5 + FIRST + n * STRING for n in (0, 0, 1, 2)])
    assert (second.start[0], third.start[0]) == (3000, 1400)


@given(
    st.lists(st.tuples(st.integers(0, 11500), st.integers(150, 1500)), max_size=8),
    st.sampled_from([1 / 20, 1 / 50, 1 / 100]),
)
def test_no_two_openings_share_a_stretch_of_a_string(
    openings: list[tuple[int, int]], scale: float
) -> None:
    view = View(scale)
    found = strings(13000, level(13000, 2400), framed(*openings), 20.0, view, WORDS)
    keyed = [d for d in found if isinstance(d, Dimension) and d.key]
    assert len(keyed) == len(openings)
    for one, other in combinations(keyed, 2):
        if one.start[1] == other.start[1]:
            first, second = sorted((one, other), key=lambda d: d.start[0])
            figure = (text_width(first.text, 3.5, narrow=True) + 2 * ROOM) / scale
            wide = first.end[0] - first.start[0]
            end = first.end[0] + (figure if figure > wide else 0.0)
            assert second.start[0] >= end + BESIDE / scale - 1e-6


def heights(height: float) -> tuple[list[Dimension], list[Text]]:
    """The end heights of a wall 3000 long under a level roof, and figures beside them."""
    drawing = strings(3000, level(3000, height), framed(), 20.0, VIEW, WORDS)
    upright = [e for e in drawing if isinstance(e, Dimension) and e.start[0] == e.end[0]]
    return upright, [e for e in drawing if isinstance(e, Text)]


def test_the_end_heights_stand_beside_the_wall() -> None:
    """6 mm to its left and 9 to its right, where figures stand on the wall's side: 300 and 450."""
    (left, right), texts = heights(2400)
    assert dimension_line(left) == ((-300, 0), (-300, 2400))
    assert dimension_line(right) == ((3450, 0), (3450, 2400))
    assert [left.text, right.text] == ["2400", "2400"]
    assert texts == []


def test_a_low_end_has_its_figure_outward_of_its_line() -> None:
    """300 mm are 6 mm on paper and the figure needs 7.6: it lies outward, at half the height."""
    (left, right), (on_left, on_right) = heights(300)
    assert [left.text, right.text] == ["", ""]
    assert [on_left.text, on_right.text] == ["300", "300"]
    assert on_left.at == pytest.approx((-300 - 50 * BESIDE, 150))
    assert on_right.at == pytest.approx((3450 + 50 * BESIDE, 150))
    assert (on_left.align.value, on_right.align.value) == ("end", "start")


def test_how_far_the_marks_reach() -> None:
    """Past tape and leader by 0.8 mm and the longest figure."""
    assert figures_reach([3.0, 14.5]) == pytest.approx(OFF + BAND + LEAD + 0.8 + 14.5)
    assert figures_reach([]) == OFF + BAND + LEAD + 0.8
