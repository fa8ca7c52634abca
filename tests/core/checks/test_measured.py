"""Each caution of measured lines and studs, with a wall that provokes it. Inches throughout."""

from __future__ import annotations

import msgspec
import pytest

from core.lengths import Length, System, Tape
from core.model import MeasuredStud
from core.wording import Wording
from walls import US, in_12, result, stations

SLOPE = (12.0, in_12(9))
ROOM = US.room(264, SLOPE, SLOPE)
DOOR = US.opening("door-1", 56, 34, 80)
WORDING = Wording("us", Tape.usual(System.INCH))

# Stated 48, 79 1/2, 111, 79 1/2, 48.
AS_STATED = ((0, 48), (42, 79.5), (84, 111), (126, 79.5), (168, 48))


def cautions(**changes: object) -> list[tuple[str, str]]:
    wall = US.wall((48, 144), (216, 144), openings=(DOOR,))
    found = result(ROOM, msgspec.structs.replace(wall, **changes))
    return [(c.key, WORDING.say(c.message)) for c in found.cautions]


def line(*changed: tuple[int, float]) -> tuple[tuple[float, float], ...]:
    new = dict(changed)
    return tuple((at, new.get(n, height)) for n, (at, height) in enumerate(AS_STATED))


def test_a_sag_is_no_mistake() -> None:
    assert cautions(roof_points=stations(US, *line((1, 78.875)))) == []


def test_a_foot_misread_names_what_its_neighbours_lead_to_expect() -> None:
    # Cut to that line, studs get a bevel past the saw, which is told first.
    saw, astray = cautions(roof_points=stations(US, *line((1, 91.5))))
    assert saw[1].startswith("In wall B, bevel 46.0° is past your saw: ")
    assert [astray] == [
        (
            "B",
            'In wall B, the roof measured at 42" lies 12" too high for the points beside it:'
            ' measure it again (they lead to expect 79 1/2").',
        )
    ]


def test_what_is_expected_is_told_as_the_tape_reads_it() -> None:
    # Read up from a line 48 above the floor: 79 1/2 is 31 1/2 on the tape.
    points = tuple((at, height - 48) for at, height in line((1, 67.5)))
    found = cautions(roof_points=stations(US, *points), level_line=Length.of_inches(48))
    (said,) = [text for _, text in found if "measured at" in text]
    assert said.endswith('(they lead to expect 31 1/2").')


def test_a_floor_misread() -> None:
    # Down from a line 40 above the floor, 40 each but for 30, which is 10 too high.
    points = stations(US, (0, 40), (84, 30), (168, 40))
    found = cautions(floor_points=points, level_line=Length.of_inches(40))
    assert found[0] == (
        "B",
        'In wall B, the floor measured at 84" lies 10" too high for the points beside it:'
        ' measure it again (they lead to expect 40").',
    )


def test_a_measured_stud_far_from_what_is_worked_out() -> None:
    # layout/2 is worked out 69 3/16 at its long point.
    measured = (MeasuredStud("B/layout/2", Length.of_inches(63.1875), False),)
    assert cautions(measured_studs=measured) == [
        (
            "B/layout/2",
            'In wall B, the stud at 31 1/4" is measured 63 3/16" and worked out 69 3/16", 6" apart:'
            " measure it again before cutting.",
        )
    ]


def test_a_measured_stud_that_is_gone() -> None:
    measured = (MeasuredStud("B/layout/2", Length.of_inches(69), True),)
    found = cautions(measured_studs=measured, left_out=(2,))
    assert [key for key, _ in found] == ["B/layout/2"]
    assert found[0][1].startswith('A stud of wall B that was measured 69" is no longer there')


@pytest.mark.parametrize(
    ("right", "told"),
    [
        # From 0 to +-1 over 168: highest under the door at its right edge 90, 15/28 = 0.536, or at
        # its left edge 56, a third below. Head 80.
        pytest.param(1, '9/16" higher, so that its head is 79 7/16" above it', id="rising"),
        pytest.param(-1, '5/16" lower, so that its head is 80 5/16" above it', id="falling"),
        pytest.param(0.125, None, id="next to level"),
    ],
)
def test_a_floor_that_changes_a_clear_height(right: float, told: str | None) -> None:
    found = cautions(floor_points=stations(US, (0, 0), (168, right)))
    assert [key for key, _ in found] == (["B/door-1"] if told else [])
    if told:
        assert told in found[0][1]
