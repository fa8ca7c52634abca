"""What is said and drawn of ends out of plumb; millimetres."""

from __future__ import annotations

import msgspec
import pytest

from core.drawing import View
from core.drawing.elements import Stroke
from core.drawing.elevation import elevation
from core.drawing.lean_notes import lean_notes
from core.drawing.pen import Pen
from core.job import WallResult
from core.lengths import System, Tape
from core.model import EndLean, EndStud
from core.wording import Wording
from walls import UK, at_degrees, result

ROOM = UK.room(6000, (2400, at_degrees(0)), None, length=8000)
SAY = Wording("metric", Tape.usual(System.METRIC))


def made(offset: float, stud: EndStud) -> WallResult:
    wall = UK.wall((1000, 3000), (4000, 3000))
    return result(ROOM, msgspec.structs.replace(wall, left_lean=EndLean(UK.length(offset), stud)))


@pytest.mark.parametrize(
    ("offset", "stud", "said"),
    [
        pytest.param(
            24,
            EndStud.PLUMB,
            (
                "At the left end, what the wall stands against leans out 24 mm from floor to roof.",
                # 0.38 at 38, 23.62 at 2362.
                "B1 stands plumb: the gap beside it is 0 mm at its foot and 24 mm at its top.",
                "B10 reaches 24 mm past the end of the sole plate, cut along the surface.",
            ),
            id="out",
        ),
        pytest.param(
            -24,
            EndStud.PLUMB,
            (
                "At the left end, what the wall stands against leans in 24 mm from floor to roof.",
                "B1 stands plumb: the gap beside it is 24 mm at its foot and 0 mm at its top.",
                "B10 ends 24 mm short of the end of the sole plate, cut along the surface.",
            ),
            id="in",
        ),
        pytest.param(
            24,
            EndStud.LEANING,
            (
                "At the left end, what the wall stands against leans out 24 mm from floor to roof.",
                "B1 leans with it, 0.6° from plumb, 2324 mm long; its cuts are set from square to"
                " itself.",
                "B10 reaches 24 mm past the end of the sole plate, cut along the surface.",
            ),
            id="leaning",
        ),
    ],
)
def test_each_end_is_told(offset: float, stud: EndStud, said: tuple[str, ...]) -> None:
    assert lean_notes(made(offset, stud), SAY) == said


def test_the_surface_is_drawn_from_floor_to_roof() -> None:
    drawing = elevation(made(24, EndStud.PLUMB), View(1 / 20), SAY)
    lines = [e.points for e in drawing if isinstance(e, Stroke) and e.pen is Pen.EXISTING]
    assert lines[0][0] == (0.0, 0.0)
    assert lines[0][1] == pytest.approx((-24, 2400))
    # Short strokes on its other side, 2.4 mm apart on paper.
    assert len(lines) > 10
    assert all(end[0] < start[0] for start, end in lines[1:])
