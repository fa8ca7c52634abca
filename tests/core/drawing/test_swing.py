"""The lines of a hinged leaf."""

from __future__ import annotations

import math

import msgspec
import pytest

from core.drawing import Pen
from core.drawing.elements import Align, Stroke, Text
from core.drawing.extent import text_corners
from core.drawing.placing import bounds
from core.drawing.swing import Line, _outside, swing
from core.drawing.view import View
from core.framing import PlacedOpening
from core.model import Hanging, Side, Swing
from walls import UK, Pair, frame_of, in_12

ROOM = UK.room(6600, left=(2400, in_12(0)))
VIEW = View(1 / 20)


def placed(hung: Hanging | None) -> PlacedOpening:
    door = msgspec.structs.replace(UK.opening("d", 1000, 800, 2000), hung=hung)
    return frame_of(ROOM, UK.wall((0, 9), (3000, 9), openings=(door,))).openings[0]


def strokes(hung: Hanging | None) -> list[Stroke]:
    return [s for s in swing(placed(hung), VIEW) if isinstance(s, Stroke)]


def test_without_hinges_there_are_none() -> None:
    assert strokes(None) == []


@pytest.mark.parametrize(
    ("side", "tip", "free"), [(Side.LEFT, (1000, 1000), 1800), (Side.RIGHT, (1800, 1000), 1000)]
)
def test_lines_meet_on_the_hinge_side(side: Side, tip: Pair, free: float) -> None:
    found = strokes(Hanging(side, Swing.TOWARD))
    assert [s.points for s in found] == [((free, 2000), tip), ((free, 0), tip)]
    assert {(s.pen, s.key) for s in found} == {(Pen.SWING, "B/d")}


def test_away_from_face_a_they_are_dashed() -> None:
    found = strokes(Hanging(Side.LEFT, Swing.AWAY))
    # Each line is hypot(800, 1000) = 1280.6 long, a dash and its gap 3.4 x 20 = 68: 19 dashes.
    assert len(found) == 2 * 19
    first = found[0].points
    assert first[0] == (1800, 2000)
    assert math.dist(*first) == pytest.approx(40)  # 2 mm on paper
    assert all(math.dist(*s.points) <= 40 + 1e-6 for s in found)


def test_they_are_broken_where_texts_stand() -> None:
    text = Text("door 1", (1400, 500), 3.5, Pen.OPENING, "B/d", Align.MIDDLE)
    found = list(swing(placed(Hanging(Side.LEFT, Swing.TOWARD)), VIEW, (text,)))
    # The upper line stays clear of it; the lower, from (1800, 0) to (1000, 1000), passes through
    # (1400, 500) and is cut in two.
    assert len(found) == 3
    left, bottom, right, top = bounds(text_corners(text, VIEW.scale))
    for stroke in found:
        assert isinstance(stroke, Stroke)
        for x, y in stroke.points:
            assert not (left < x < right and bottom < y < top)
    assert [s.points[0] for s in found if isinstance(s, Stroke)][1] == (1800, 0)


@pytest.mark.parametrize(
    ("line", "expected"),
    [
        # Around the square from (0, 0) to (10, 10).
        (((-5, 5), (15, 5)), [((-5, 5), (0, 5)), ((10, 5), (15, 5))]),
        (((5, 5), (15, 5)), [((10, 5), (15, 5))]),
        (((-5, 5), (5, 5)), [((-5, 5), (0, 5))]),
        (((2, 2), (8, 8)), []),
        (((-5, 12), (15, 12)), [((-5, 12), (15, 12))]),
        (((12, -5), (12, 15)), [((12, -5), (12, 15))]),
        (((5, -5), (5, 15)), [((5, -5), (5, 0)), ((5, 10), (5, 15))]),
        (((-5, 20), (20, 20)), [((-5, 20), (20, 20))]),
        (((-10, 0), (0, 20)), [((-10, 0), (0, 20))]),
    ],
)
def test_outside_a_rectangle(line: Line, expected: list[Line]) -> None:
    assert _outside(line, (0, 0, 10, 10)) == expected
