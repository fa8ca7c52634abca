"""The plan of a room."""

from __future__ import annotations

import pytest

from core.drawing import Fill, Pen, Stroke, Text, View
from core.drawing.plan import plan
from core.job import work_out
from core.model import SiteRecord
from loft import INCH, loft


def test_the_room_stands_at_its_framing_faces_and_walls_on_the_far_side_of_their_chalk() -> None:
    drawing = plan(work_out(loft(), SiteRecord()), View(0.02))
    room = next(e for e in drawing if isinstance(e, Stroke) and e.pen is Pen.FLOOR)
    assert [(u / INCH, v / INCH) for u, v in room.points] == [
        (0, 0),
        (240, 0),
        (240, 400),
        (0, 400),
    ]
    wall = next(e for e in drawing if isinstance(e, Fill) and e.key == "B")
    # Drawn from left to right its far side lies farther along the room: 3 1/2 in. of stud.
    wanted = [(12, 100), (132, 100), (132, 103.5), (12, 103.5)]
    corners = [(round(u / INCH, 6), round(v / INCH, 6)) for u, v in wall.outline]
    assert corners == wanted


def test_the_letter_stands_before_face_a() -> None:
    drawing = plan(work_out(loft(), SiteRecord()), View(0.02))
    (letter,) = (e for e in drawing if isinstance(e, Text) and e.pen is Pen.LABEL)
    assert letter.text == "B"
    assert letter.at[0] == pytest.approx(72 * INCH)
    assert letter.at[1] < 100 * INCH
