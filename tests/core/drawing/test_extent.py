"""How much paper a drawing takes up."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.drawing import Align, Dimension, Fill, Pen, Stroke, Text
from core.drawing.elements import XY
from core.drawing.extent import extent, text_corners
from core.drawing.page import Placed
from core.drawing.placing import Rect
from pages import text_shape

# In the font B is 636 and 7 is 578 of 1000 units wide, a capital 700 high (see test_typeface):
# "B7" of 10 mm is 12.14 mm by 7 mm.
WIDE, HIGH = 12.14, 7.0
UP = math.pi / 2


@pytest.mark.parametrize(
    ("align", "angle", "middle", "expected"),
    [
        (Align.START, 0.0, False, [(0, 0), (WIDE, 0), (WIDE, HIGH), (0, HIGH)]),
        (Align.END, 0.0, False, [(-WIDE, 0), (0, 0), (0, HIGH), (-WIDE, HIGH)]),
        (Align.MIDDLE, 0.0, False, [(-6.07, 0), (6.07, 0), (6.07, HIGH), (-6.07, HIGH)]),
        (Align.START, 0.0, True, [(0, -3.5), (WIDE, -3.5), (WIDE, 3.5), (0, 3.5)]),
        # Upward: along is up, and over the feet is to the left.
        (Align.START, UP, False, [(0, 0), (0, WIDE), (-HIGH, WIDE), (-HIGH, 0)]),
        (Align.END, -UP, False, [(0, WIDE), (0, 0), (HIGH, 0), (HIGH, WIDE)]),
        (Align.MIDDLE, UP, True, [(3.5, -6.07), (3.5, 6.07), (-3.5, 6.07), (-3.5, -6.07)]),
    ],
)
def test_text_corners(align: Align, angle: float, middle: bool, expected: list[XY]) -> None:
    text = Text("B7", (0, 0), 10.0, Pen.LABEL, align=align, angle=angle, middle=middle)
    corners = text_corners(text, 1.0)
    assert [n for c in corners for n in c] == pytest.approx([n for c in expected for n in c])


def test_a_text_takes_up_more_of_the_model_the_smaller_the_scale() -> None:
    """At 1:20 a paper mm is 20 mm of the model, and the place itself stays."""
    text = Text("B7", (1000, 500), 10.0, Pen.LABEL)
    start, _, top, _ = text_corners(text, 1 / 20)
    assert start == (1000, 500)
    assert top == pytest.approx((1000 + 20 * WIDE, 500 + 20 * HIGH))


def test_the_narrow_and_the_bold_cut_count() -> None:
    """Narrow: 507 and 488 units. Bold has the widths of regular."""
    narrow = text_corners(Text("B7", (0, 0), 10.0, Pen.LABEL, narrow=True), 1.0)
    bold = text_corners(Text("B7", (0, 0), 10.0, Pen.LABEL, bold=True), 1.0)
    assert narrow[1] == pytest.approx((9.95, 0))
    assert bold[1] == pytest.approx((WIDE, 0))


@given(
    st.text("A1 /", max_size=8),
    st.sampled_from(Align),
    st.floats(-3.2, 3.2),
    st.booleans(),
    st.sampled_from([1.0, 1 / 16, 1 / 96]),
)
def test_text_corners_turn_about_their_place(
    text: str, align: Align, angle: float, middle: bool, scale: float
) -> None:
    element = Text(text, (300, -40), 3.5, Pen.MARK, align=align, angle=angle, middle=middle)
    placed = Placed((element,), scale, (0.0, 0.0))
    on_paper = [placed.on_paper(corner) for corner in text_corners(element, scale)]
    expected = [n for corner in text_shape(placed, element) for n in corner]
    assert [n for corner in on_paper for n in corner] == pytest.approx(expected, abs=1e-9)


STROKE = Stroke(((10, 20), (40, -5)), Pen.STUD)
FILL = Fill(((0, 0), (30, 0), (30, 7)), Pen.STUD)


@pytest.mark.parametrize(
    ("drawing", "expected"),
    [
        ((STROKE,), (10, -5, 40, 20)),
        ((STROKE, FILL), (0, -5, 40, 20)),
        ((FILL, Text("B7", (30, 7), 10.0, Pen.LABEL)), (0, 0, 30 + WIDE, 14)),
        # 100 across, its line 50 over it: extension lines run 25.4/8 past the line, and the
        # ticks (25.4/8 long at 45 degrees, so 1.1225 either way) past both ends.
        (
            (Dimension((0, 0), (100, 0), 50, "", 3.5),),
            (-1.12253, 25.4 / 16, 101.12253, 50 + 25.4 / 8),
        ),
    ],
)
def test_extent(drawing: tuple[Stroke | Fill | Text | Dimension, ...], expected: Rect) -> None:
    assert extent(drawing, 1.0) == pytest.approx(expected, abs=1e-4)


def test_an_empty_drawing_has_no_extent() -> None:
    with pytest.raises(ValueError, match="not enough values"):
        extent((), 1.0)
