"""What was measured in the words of a sheet, and the lines it is drawn by. Inches throughout."""

from __future__ import annotations

import msgspec
import pytest

from core.drawing import Pen, Stroke, View
from core.drawing.elevation import elevation
from core.drawing.measured import lowest, signed, told
from core.job import WallResult
from core.lengths import Length, System, Tape
from core.model import MeasuredStud
from core.wording import Wording
from walls import US, in_12, result, stations

SLOPE = (12.0, in_12(9))
ROOM = US.room(264, SLOPE, SLOPE)
WORDING = Wording("us", Tape.usual(System.INCH))
SAG = stations(US, (0, 48), (42, 78.875), (84, 111), (168, 48))
FALL = stations(US, (0, 0), (168, -1))


def wall(**changes: object) -> WallResult:
    return result(ROOM, msgspec.structs.replace(US.wall((48, 144), (216, 144)), **changes))


def test_nothing_measured_is_nothing_told() -> None:
    assert told(wall(), WORDING) == []


def test_a_sag() -> None:
    # Both slopes still fit 9 in 12 within a twentieth, so no pitch is told.
    points, worst = told(wall(roof_points=SAG), WORDING)
    assert '(−5/8")' in points
    assert points.count("(") == 1
    assert worst == 'Farthest from stated: 5/8" lower, at 42".'


def test_another_pitch_than_stated() -> None:
    # 59.5 in 84 is 8.5 in 12, 35.3 degrees: 3 1/2 lower at the ridge.
    found = told(wall(roof_points=stations(US, (0, 48), (84, 107.5), (168, 48))), WORDING)
    assert 'Best fit from 0" to 84": 8.5 in 12 (35.3°), stated 9 in 12 (36.9°).' in found


def test_a_floor_that_falls() -> None:
    found = told(wall(floor_points=FALL), WORDING)
    assert 'The floor is 1" lower at the right end than at the left.' in found
    assert any(text.startswith("Sole plate and studs follow the floor") for text in found)


def test_how_heights_were_read() -> None:
    both = told(wall(roof_points=SAG, floor_points=FALL), WORDING)
    assert "Heights were read up from the floor under each point." in both
    level = told(wall(roof_points=SAG, level_line=Length.of_inches(0)), WORDING)
    assert 'Heights were read from a level line 0" above the subfloor.' in level


@pytest.mark.parametrize(
    ("gap", "said"),
    [
        (0.0625, ['Studs are cut 1/16" short of the plates.']),
        (-0.0625, ['Studs are cut 1/16" long, for a tight fit.']),
        (0.0, []),
    ],
)
def test_the_fit(gap: float, said: list[str]) -> None:
    assert told(wall(fit=Length.of_inches(gap)), WORDING) == said


def test_measured_and_test_studs() -> None:
    # layout/2 is worked out 69 3/16, layout/8 75 3/16.
    studs = (
        MeasuredStud("B/layout/2", Length.of_inches(69.3125), True),
        MeasuredStud("B/layout/8", Length.of_inches(75.125), False),
    )
    test, plain = told(wall(measured_studs=studs), WORDING)
    # Under the left plate: the end stud, layout/1, 3, 4 and 5, whose middle is at 80.
    assert test == (
        'Test stud B3 is 69 5/16", 1/8" longer than worked out:'
        " 5 more under its plate are corrected by it."
    )
    assert plain == 'B9 is measured: 75 1/8", 1/16" shorter than worked out.'


def test_the_stated_line_is_drawn_beside_the_measured_one() -> None:
    found = elevation(wall(roof_points=SAG), View(1 / 24), WORDING)
    stated = wall().inputs.near
    assert stated is not None
    assert Stroke(stated.points(), Pen.ABOVE_ROOF) in found
    assert Stroke(stated.points(), Pen.ABOVE_ROOF) not in elevation(wall(), View(1 / 24), WORDING)


def test_the_floor_is_drawn_through_its_points() -> None:
    strokes = [
        element
        for element in elevation(wall(floor_points=FALL), View(1 / 24), WORDING)
        if isinstance(element, Stroke) and element.pen is Pen.FLOOR
    ]
    assert [round(US.of(y), 3) for _, y in strokes[0].points[1:-1]] == [0.0, -1.0]
    assert US.of(lowest(wall(floor_points=FALL).wall)) == pytest.approx(-1)
    assert lowest(wall().wall) == 0.0


@pytest.mark.parametrize(
    ("inches", "text"), [(-0.625, '−5/8"'), (0.5, '+1/2"'), (0.0, "±0"), (0.01, "±0")]
)
def test_a_difference_has_its_sign(inches: float, text: str) -> None:
    assert signed(inches * 25.4, WORDING) == text
