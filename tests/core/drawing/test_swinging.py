"""The drawing of a swing: lines where the numbers say."""

from __future__ import annotations

import math

import pytest

from core.drawing import Drawing, Fill, Pen, Stroke, Text
from core.drawing.swinging import swing_drawing
from core.lengths import System, Tape
from core.model import Room, Wall
from core.wording import Wording
from raising import around, raised
from walls import US, frame_of, in_12

WORDS = Wording("us", Tape.usual(System.INCH))
LEVEL = US.room(264, (96, in_12(0)))
GABLE = US.room(264, (12, in_12(9)), (12, in_12(9)))


def drawn(room: Room, wall: Wall, best: int) -> Drawing:
    swing = raised(room, wall).swings[best]
    return swing_drawing(around(room, wall), frame_of(room, wall), swing, 25.4 / 16, WORDS)


def strokes(drawing: Drawing, pen: Pen) -> list[list[tuple[float, float]]]:
    return [
        [(US.of(x), US.of(y)) for x, y in e.points]
        for e in drawing
        if isinstance(e, Stroke) and e.pen is pen
    ]


def same(found: list[tuple[float, float]], *wanted: tuple[float, float]) -> bool:
    """Whether these are the corners, whatever corner comes first."""
    near = [[math.dist(a, b) < 1e-6 for b in wanted] for a in found]
    return len(found) == len(wanted) and all(any(row) for row in near)


def test_the_wall_lies_on_the_side_of_face_a_and_stands_behind_it() -> None:
    drawing = drawn(LEVEL, US.wall((48, 100), (216, 100)), 0)
    lying, standing = strokes(drawing, Pen.STUD)
    # 96 high and 3.5 thick: it lies from 0 to -96, its far face 3.5 up.
    assert same(lying, (0, 0), (0, 3.5), (-96, 3.5), (-96, 0))
    assert same(standing, (0, 0), (3.5, 0), (3.5, 96), (0, 96))
    assert any(isinstance(e, Fill) for e in drawing)


def test_the_far_side_is_its_mirror_image() -> None:
    drawing = drawn(LEVEL, US.wall((48, 100), (216, 100)), 1)
    lying = strokes(drawing, Pen.STUD)[0]
    assert same(lying, (3.5, 0), (3.5, 3.5), (99.5, 3.5), (99.5, 0))


def test_where_it_strikes_it_is_drawn_and_what_it_needs_is_written() -> None:
    # 96 - sqrt(96^2 - 3.5^2) = 0.064: 1/8 on a tape of sixteenths, rounded up.
    drawing = drawn(LEVEL, US.wall((48, 100), (216, 100)), 0)
    assert len(strokes(drawing, Pen.UNBUILDABLE)) == 1
    assert 'needs 1/8"' in [e.text for e in drawing if isinstance(e, Text)]
    (roof,) = strokes(drawing, Pen.ROOF)
    assert [y for _, y in roof] == pytest.approx([96] * len(roof))


def test_one_that_passes_has_neither() -> None:
    drawing = drawn(GABLE, US.wall((48, 100), (48, 300)), 0)
    assert strokes(drawing, Pen.UNBUILDABLE) == []
    assert [e.text for e in drawing if isinstance(e, Text)] == ["face A"]
    # The roof meets the standing wall's top at both faces: 48 and 45.375.
    standing = strokes(drawing, Pen.STUD)[1]
    assert same(standing, (0, 0), (3.5, 0), (3.5, 45.375), (0, 48))


def test_the_roof_is_drawn_down_to_the_floor_only() -> None:
    # Laid down behind its far face the wall reaches past the eave, where the slope goes below 0.
    drawing = drawn(GABLE, US.wall((48, 100), (48, 300)), 1)
    heights = [y for roof in strokes(drawing, Pen.ROOF) for _, y in roof]
    assert min(heights) >= 0.0
