"""Elements as they come out on screen."""

from __future__ import annotations

import math

import pytest
from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QFontInfo, QFontMetricsF, QImage

from core.drawing import Align, Dimension, Element, Fill, Pen, Stroke, Text
from core.drawing.typeface import FAMILY, NARROW_FAMILY, cap_height, text_width
from gui.sketcher.camera import Camera
from gui.sketcher.fonts import font
from gui.sketcher.layers import Scene
from gui.sketcher.paint import Ink, shape
from gui.theme import Theme
from painted import colours, inked, picture

SIZE = QSize(200, 200)
DENSITY = 4.0
# Model (0, 0) is 20 px from the left and 20 from the bottom; 1 px is 2 mm.
CAMERA = Camera(0.5, 20.0, 180.0)
DAY, NIGHT = Theme.day(), Theme.night()
SQUARE = ((0.0, 0.0), (200.0, 0.0), (200.0, 100.0), (0.0, 100.0))

pytestmark = pytest.mark.usefixtures("qapp")


def seen(*drawing: Element, theme: Theme = DAY) -> QImage:
    return picture(Scene(tuple(drawing), CAMERA, Ink(theme, DENSITY), SIZE))


@pytest.mark.parametrize("theme", [DAY, NIGHT])
@pytest.mark.parametrize("pen", [Pen.STUD, Pen.HEADER, Pen.BOX, Pen.TAPE])
def test_a_fill_has_the_colour_of_its_pen_and_its_place(theme: Theme, pen: Pen) -> None:
    image = seen(Fill(SQUARE, pen), theme=theme)
    # 200 by 100 mm: 100 by 50 px, from the lower left corner at (20, 180) up to (120, 130).
    assert image.pixelColor(70, 155) == theme.looks[pen].fill
    for outside in ((18, 155), (122, 155), (70, 128), (70, 182)):
        assert image.pixelColor(*outside) == theme.paper


def test_what_cannot_be_built_lets_through_what_stands_behind() -> None:
    image = seen(Fill(SQUARE, Pen.STUD), Fill(SQUARE, Pen.UNBUILDABLE))
    stud = DAY.looks[Pen.STUD].fill
    mixed = image.pixelColor(70, 155)
    assert mixed not in (stud, DAY.warning)
    assert abs(mixed.green() - stud.green()) < abs(mixed.green() - DAY.warning.green())


@pytest.mark.parametrize(("pen", "weight"), [(Pen.ROOF, 0.70), (Pen.OPENING, 0.50)])
def test_a_line_has_the_weight_of_its_pen(pen: Pen, weight: float) -> None:
    image = seen(Stroke(((0.0, 100.0), (200.0, 100.0)), pen))
    dark = sum(
        (DAY.paper.lightnessF() - image.pixelColor(70, y).lightnessF())
        / (DAY.paper.lightnessF() - DAY.ink.lightnessF())
        for y in range(200)
    )
    # mm on paper times 4 px for each.
    assert dark == pytest.approx(weight * 4, abs=0.15)


def test_lines_are_cut_off_at_their_ends_and_outlines_close() -> None:
    line = inked(seen(Stroke(((0.0, 0.0), (100.0, 0.0)), Pen.ROOF)), DAY.paper)
    # From x = 20 to 70 px and not a px further.
    assert (line[0], line[2]) == (20, 70)
    image = seen(Stroke(SQUARE, Pen.ROOF, closed=True))
    for corner in ((20, 180), (119, 180), (20, 130), (119, 130)):
        assert image.pixelColor(*corner).lightness() < 80


def test_a_dashed_outline_has_gaps() -> None:
    image = seen(Stroke(SQUARE, Pen.UNBUILDABLE, closed=True))
    along = [image.pixelColor(x, 180).name() == DAY.paper.name() for x in range(24, 116)]
    assert any(along)
    assert not all(along)


def test_an_open_line_goes_round_its_corners_and_does_not_close() -> None:
    corner = Stroke(((0.0, 0.0), (200.0, 0.0), (200.0, 100.0)), Pen.ROOF)
    image = seen(corner)
    assert image.pixelColor(70, 180).lightness() < 80
    assert image.pixelColor(119, 155).lightness() < 80
    assert image.pixelColor(20, 155) == DAY.paper


@pytest.mark.parametrize(
    ("align", "left", "right"),
    # "57 K" at 20 px is about 43 px wide.
    [(Align.START, 120, 165), (Align.MIDDLE, 97, 143), (Align.END, 75, 120)],
)
def test_a_text_stands_to_its_place_as_it_says(align: Align, left: int, right: int) -> None:
    text = Text("57 K", (200.0, 200.0), 5.0, Pen.MARK, align=align)
    x0, y0, x1, y1 = inked(seen(text), DAY.paper)
    assert left <= x0 < x1 <= right
    assert x1 - x0 == pytest.approx(text_width("57 K", 20.0), abs=4)
    # Its feet stand on y = 180 - 100 = 80 px, its heads are as high as capitals.
    assert y1 == pytest.approx(80, abs=1)
    assert y1 - y0 == pytest.approx(cap_height(20.0), abs=2)


def test_a_text_in_the_middle_has_its_capitals_about_its_place() -> None:
    _, y0, _, y1 = inked(seen(Text("H", (100.0, 200.0), 5.0, Pen.MARK, middle=True)), DAY.paper)
    assert (y0 + y1) / 2 == pytest.approx(80, abs=1)


@pytest.mark.parametrize(
    ("angle", "box"),
    # Up the sheet from (70, 80): left of it and above; straight down: right of it and below.
    [(math.pi / 2, (54, 36, 71, 81)), (-math.pi / 2, (69, 79, 86, 124))],
)
def test_a_text_is_turned_the_way_the_wall_counts(
    angle: float, box: tuple[int, int, int, int]
) -> None:
    x0, y0, x1, y1 = inked(
        seen(Text("57 K", (100.0, 200.0), 5.0, Pen.MARK, angle=angle)), DAY.paper
    )
    assert box[0] <= x0
    assert box[1] <= y0
    assert x1 <= box[2]
    assert y1 <= box[3]


def test_a_dimension_has_line_ticks_and_figure() -> None:
    image = seen(Dimension((0.0, 50.0), (200.0, 50.0), 60.0, '7 7/8"', 3.0))
    x0, y0, x1, y1 = inked(image, DAY.paper)
    # The line is 60 mm over y = 50: at 180 - 55 = 125 px; the extension lines begin 1/16 in. off.
    assert image.pixelColor(40, 125) != DAY.paper or image.pixelColor(40, 124) != DAY.paper
    assert x0 < 20
    assert x1 > 120
    assert y0 < 118
    assert 145 < y1 < 156


def test_a_dimension_without_length_paints_nothing() -> None:
    image = seen(Dimension((0.0, 0.0), (0.0, 0.0), 10.0, '0"', 3.0))
    assert colours(image) == {DAY.paper.name()}


@pytest.mark.parametrize("bold", [False, True])
@pytest.mark.parametrize("narrow", [False, True])
@pytest.mark.parametrize("pixels", [9, 13, 26])
def test_qt_writes_as_wide_as_the_core_measures(pixels: int, bold: bool, narrow: bool) -> None:
    made = font(pixels, bold=bold, narrow=narrow)
    assert QFontInfo(made).family() == (NARROW_FAMILY if narrow else FAMILY)
    assert QFontInfo(made).bold() == bold
    text = 'B14  113 15/16" Long Point'
    measured = text_width(text, float(pixels), bold, narrow=narrow)
    assert QFontMetricsF(made).horizontalAdvance(text) == pytest.approx(measured, rel=0.006)


@pytest.mark.parametrize(
    ("points", "upright"),
    [
        (SQUARE, True),
        (SQUARE[::-1], True),
        ((*SQUARE[1:], SQUARE[0]), True),
        (((0.0, 0.0), (200.0, 1e-9), (200.0, 100.0), (0.0, 100.0)), True),
        (((0.0, 0.0), (200.0, 10.0), (200.0, 100.0), (0.0, 100.0)), False),
        (((0.0, 0.0), (200.0, 0.0), (150.0, 100.0), (50.0, 100.0)), False),
        (SQUARE[:3], False),
    ],
)
def test_upright_rectangles_are_filled_as_such(
    points: tuple[tuple[float, float], ...], upright: bool
) -> None:
    found = shape(points, CAMERA)
    assert isinstance(found, QRectF) is upright
    outline = found if isinstance(found, QRectF) else found.boundingRect()
    assert (outline.left(), outline.bottom()) == (20.0, 180.0)
