"""The lines of a hinged leaf."""

from __future__ import annotations

import math

import msgspec
import pytest

from core.drawing import Pen
from core.drawing.elements import Stroke
from core.drawing.swing import swing
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
