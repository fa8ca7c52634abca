"""Elements made fit for a line drawing."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.drawing import Dimension, Element, Fill, Pen, Stroke, Text
from core.drawing.elements import XY
from core.output.tidy import tidy

SQUARE = ((0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0))


def line(*points: XY, pen: Pen = Pen.STUD, key: str = "", closed: bool = False) -> Stroke:
    return Stroke(points, pen, key, closed)


@pytest.mark.parametrize(
    ("element", "expected"),
    [
        (line((0, 0), (5, 0)), line((0, 0), (5, 0))),
        (line((0, 0), (0, 0), (5, 0), (5, 0)), line((0, 0), (5, 0))),
        (line((0, 0), (1e-8, 0), (5, 0)), line((0, 0), (5, 0))),
        # Out and back is a line with two points that are apart.
        (line((0, 0), (5, 0), (0, 0)), line((0, 0), (5, 0), (0, 0))),
        # An outline that repeats its first corner at its end.
        (line(*SQUARE, (0, 0), closed=True), line(*SQUARE, closed=True)),
        # An outline of two corners.
        (line((0, 0), (5, 0), closed=True), line((0, 0), (5, 0))),
        (Fill((*SQUARE, (0, 0)), Pen.STUD), Fill(SQUARE, Pen.STUD)),
        (Text("A1\nA2\t", (0, 0), 3.5, Pen.LABEL), Text("A1 A2 ", (0, 0), 3.5, Pen.LABEL)),
    ],
)
def test_idle_points_and_line_breaks_are_dropped(element: Element, expected: Element) -> None:
    assert tidy([element]) == (expected,)


@pytest.mark.parametrize(
    "element",
    [
        line(),
        line((3, 3)),
        line((3, 3), (3, 3)),
        line((3, 3), (3, 3), (3, 3), closed=True),
        Fill((), Pen.STUD),
        Fill(((0, 0), (5, 0), (5, 0)), Pen.STUD),
        Text("", (0, 0), 3.5, Pen.LABEL),
        Text(" \n", (0, 0), 3.5, Pen.LABEL),
        Dimension((3, 3), (3, 3), 40, "0", 3.5),
    ],
)
def test_what_shows_nothing_is_left_out(element: Element) -> None:
    assert tidy([element]) == ()


STUD = line(*SQUARE, key="A/layout/1", closed=True)
LABEL = Text("A1", (0, 0), 3.5, Pen.LABEL, "A/layout/1")
SPAN = Dimension((0, 0), (10, 0), -40, "10", 3.5, key="A/door-1")


@pytest.mark.parametrize(
    ("first", "second"),
    [
        (line((0, 0), (5, 0), key="a"), line((0, 0), (5, 0), key="b")),
        (line((0, 0), (5, 0)), line((5, 0), (0, 0))),
        # The same outline from another corner, and the other way round.
        (STUD, line(*SQUARE[2:], *SQUARE[:2], closed=True)),
        (STUD, line(*SQUARE[::-1], closed=True)),
        (Fill(SQUARE, Pen.STUD), Fill(SQUARE[::-1], Pen.STUD)),
        (LABEL, Text("A1", (0, -0.0), 3.5, Pen.LABEL)),
        (SPAN, Dimension((0, 0), (10, 0), -40, "10", 3.5)),
    ],
)
def test_of_two_that_look_alike_the_first_stays(first: Element, second: Element) -> None:
    assert tidy([first, second]) == (first,)


@pytest.mark.parametrize(
    ("first", "second"),
    [
        (STUD, line(*SQUARE, pen=Pen.KING, closed=True)),
        (STUD, line(*SQUARE)),
        (STUD, Fill(SQUARE, Pen.STUD)),
        (line((0, 0), (5, 0)), line((0, 0), (5.001, 0))),
        (LABEL, Text("A2", (0, 0), 3.5, Pen.LABEL)),
        (LABEL, Text("A1", (0, 0), 3.5, Pen.LABEL, bold=True)),
        (SPAN, Dimension((0, 0), (10, 0), -50, "10", 3.5)),
    ],
)
def test_what_differs_to_the_eye_stays(first: Element, second: Element) -> None:
    assert tidy([first, second]) == (first, second)


corners = st.tuples(st.integers(0, 3), st.integers(0, 3)).map(lambda p: (float(p[0]), float(p[1])))
strokes = st.builds(
    Stroke, st.lists(corners, max_size=6).map(tuple), st.just(Pen.STUD), closed=st.booleans()
)


@given(st.lists(strokes, max_size=8))
def test_what_is_tidy_stays_as_it_is(elements: list[Element]) -> None:
    once = tidy(elements)
    assert tidy(once) == once
    assert tidy([*elements, *elements]) == once
