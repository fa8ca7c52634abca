"""Kept-clear zones as they are drawn in an elevation."""

from __future__ import annotations

import msgspec
import pytest

from core.drawing import Pen, Stroke, Text, View
from core.drawing.elevation import elevation
from core.drawing.extent import text_corners
from core.drawing.placing import bounds
from core.lengths import System, Tape
from core.model import ClearZone
from core.wording import Wording
from walls import US, in_12, result

INCH = 25.4
SAY = Wording("us", Tape.usual(System.INCH))


def drawn(width: float, scale: float = 1 / 16) -> list[Stroke | Text]:
    zone = ClearZone("kept-clear-1", *(US.length(x) for x in (18, 40, width, 30)))
    wall = msgspec.structs.replace(US.wall((0, 9), (120, 9)), kept_clear=(zone,))
    found = elevation(result(US.room(264, left=(96, in_12(0))), wall), View(scale), SAY)
    return [e for e in found if e.pen is Pen.KEPT_CLEAR and isinstance(e, Stroke | Text)]


def test_a_zone_is_outlined_and_its_corners_are_marked() -> None:
    strokes = [e for e in drawn(12) if isinstance(e, Stroke)]
    outline, *corners = strokes
    assert outline.closed
    assert outline.key == "B/kept-clear-1"
    xs, ys = zip(*outline.points, strict=True)
    assert (min(xs), max(xs)) == pytest.approx((18 * INCH, 30 * INCH))
    assert (min(ys), max(ys)) == pytest.approx((40 * INCH, 70 * INCH))
    assert len(corners) == 4


def test_it_says_to_keep_clear_where_there_is_room() -> None:
    # Twelve inches at 1 to 16 are 19 mm on paper, at 1 to 96 only 3.
    (text,) = (e for e in drawn(12) if isinstance(e, Text))
    assert text.text == "keep clear"
    assert not [e for e in drawn(12, 1 / 96) if isinstance(e, Text)]


def test_the_words_stand_clear_of_the_timber() -> None:
    # A zone over the stud of place 2, at 31 1/4: the words stand beside it.
    (text,) = (e for e in drawn(40) if isinstance(e, Text))
    left, _, right, _ = bounds(text_corners(text, 1 / 16))
    studs = ((15.25, 16.75), (31.25, 32.75), (47.25, 48.75))
    assert all(right <= a * INCH or left >= b * INCH for a, b in studs)
