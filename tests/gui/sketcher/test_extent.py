"""No ink falls outside an element's extent."""

from __future__ import annotations

import math

import pytest
from PySide6.QtCore import QSize

from core.drawing import Align, Dimension, Element, Fill, Pen, Stroke, Text
from gui.sketcher.camera import Camera, Rect
from gui.sketcher.extent import extent, marker_corners, pixels, text_corners, union
from gui.sketcher.layers import Scene
from gui.sketcher.paint import Ink
from gui.theme import Theme
from painted import inked, picture

SIZE = QSize(300, 300)
DENSITY = 96 / 25.4
CAMERA = Camera(0.5, 20.0, 280.0)
ANGLES = [0.0, math.pi / 2, -math.pi / 2, 0.64, -2.2]

ELEMENTS: list[Element] = [
    Stroke(((100.0, 100.0), (300.0, 260.0)), Pen.ROOF),
    Stroke(((100.0, 100.0), (300.0, 100.0), (300.0, 290.0)), Pen.STUD, closed=True),
    Fill(((100.0, 100.0), (300.0, 100.0), (200.0, 290.0)), Pen.KING),
    Dimension((60.0, 200.0), (340.0, 200.0), 60.0, '11 1/16"', 3.5),
    Dimension((200.0, 60.0), (200.0, 340.0), -40.0, '11 1/16"', 3.5),
    Dimension((200.0, 200.0), (210.0, 200.0), 40.0, 'wider than its line"', 3.5),
    *(
        Text('Åg 47 3/16"', (250.0, 250.0), size, Pen.LENGTH, "", align, angle, bold, narrow, mid)
        for align in Align
        for angle in ANGLES
        for bold, narrow, size in ((False, False, 3.5), (True, True, 5.0))
        for mid in (False, True)
    ),
]


def ink_of(element: Element) -> Rect:
    """The rectangle of all dots that are not paper."""
    theme = Theme.day()
    scene = Scene((element,), CAMERA, Ink(theme, DENSITY), SIZE)
    return Rect(*inked(picture(scene), theme.paper))


@pytest.mark.parametrize("element", ELEMENTS, ids=lambda e: type(e).__name__)
@pytest.mark.usefixtures("qapp")
def test_ink_lies_within_the_extent_and_near_its_edges(element: Element) -> None:
    ink, rect = ink_of(element), extent(element, CAMERA, DENSITY)
    assert rect.left <= ink.left
    assert rect.low <= ink.low
    assert ink.right <= rect.right
    assert ink.high <= rect.high
    # Not far beyond either: the em of a text is about 13 px and its capitals are two thirds of it.
    assert max(ink.left - rect.left, ink.low - rect.low) < 14
    assert max(rect.right - ink.right, rect.high - ink.high) < 14


def test_a_dimension_without_length_is_a_point() -> None:
    rect = extent(Dimension((0.0, 0.0), (0.0, 0.0), 10.0, '0"', 3.5), CAMERA, DENSITY)
    assert (rect.left + rect.right) / 2 == pytest.approx(20.0)
    assert (rect.low + rect.high) / 2 == pytest.approx(280.0)
    assert rect.right - rect.left < 8


def test_union() -> None:
    assert union([Rect(0, 1, 2, 3), Rect(-1, 2, 1, 9)]) == Rect(-1, 1, 2, 9)
    with pytest.raises(ValueError, match="unpack"):
        union([])


def test_an_upright_text_runs_up_the_screen() -> None:
    text = Text("II", (0.0, 0.0), 3.5, Pen.LENGTH, angle=math.pi / 2)
    foot, end, *_ = text_corners(text, CAMERA, DENSITY)
    assert foot[0] == pytest.approx(end[0])
    assert end[1] < foot[1]


def test_a_marker_is_as_high_as_the_letters_and_a_little_longer() -> None:
    text = Text("57 K", (0.0, 0.0), 3.5, Pen.MARK)
    low_left, low_right, high_right, _ = marker_corners(text, CAMERA, DENSITY)
    plain_left, plain_right, *_ = text_corners(text, CAMERA, DENSITY)
    assert low_left[0] == pytest.approx(plain_left[0] - 1.5)
    assert low_right[0] == pytest.approx(plain_right[0] + 1.5)
    # Capitals of a 13 px font are about 9 px high; 2 px are added above and below.
    assert 12 < low_right[1] - high_right[1] < 15


@pytest.mark.parametrize(("size", "px"), [(3.5, 13), (3.44, 13), (0.01, 1), (7.0, 26)])
def test_pixels(size: float, px: int) -> None:
    assert pixels(size, DENSITY) == px
