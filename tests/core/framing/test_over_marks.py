"""Marks on top plates where they cross rafters, in inches.

Rafters 1 1/2 thick with their middles at 20, 44, 68 and 92 along the room.
"""

from __future__ import annotations

import msgspec
import pytest

from core.framing import keys
from core.job import WallResult, work_out
from core.lengths import System
from core.model import Habits, Letters, PlateRules, Project, Room, Side, SiteRecord, Wall
from walls import US, in_12


def room(pitch: float = 9) -> Room:
    made = US.room(264, (60, in_12(pitch)))
    rafter = msgspec.structs.replace(made.rafter, places=tuple(map(US.length, (20, 44, 68, 92))))
    return msgspec.structs.replace(made, rafter=rafter)


def found(wall: Wall, habits: Habits | None = None) -> WallResult:
    project = Project("t", System.INCH, room(), (wall,), habits or Habits())
    return work_out(project, SiteRecord()).walls[0]


def lines(result: WallResult) -> list[tuple[object, ...]]:
    return [
        (m.member.removeprefix("B/rafters/over/"), m.plate.removeprefix("B/"), US.of(m.along))
        for m in result.over_marks
    ]


def test_a_knee_wall_is_marked_from_where_layout_starts() -> None:
    """From v = 10 to 100: near faces at 19 1/4, 43 1/4, ... 9 1/4 and on, every 24."""
    result = found(US.wall((48, 10), (48, 100)))
    assert lines(result) == [
        (str(n), "top/1/1", pytest.approx(9.25 + 24 * (n - 1))) for n in (1, 2, 3, 4)
    ]
    assert {(m.letter, m.edge, m.x_side) for m in result.over_marks} == {
        ("R", Side.LEFT, Side.RIGHT)
    }


def test_from_the_right_end() -> None:
    """The near face of the last one is at 92 3/4: 7 1/4 from the end at 100."""
    result = found(US.wall((48, 10), (48, 100), start=Side.RIGHT))
    assert sorted(lines(result)) == [
        (str(n), "top/1/1", pytest.approx(7.25 + 24 * (4 - n))) for n in (1, 2, 3, 4)
    ]
    assert {m.edge for m in result.over_marks} == {Side.RIGHT}


def test_a_rafter_partly_past_the_end_is_lined_on_its_other_edge() -> None:
    """The wall begins at 20, in the middle of the first one, which ends at 20 3/4."""
    result = found(US.wall((48, 20), (48, 60)))
    assert lines(result) == [
        ("1", "top/1/1", pytest.approx(0.75)),
        ("2", "top/1/1", pytest.approx(23.25)),
    ]
    assert [m.edge for m in result.over_marks] == [Side.RIGHT, Side.LEFT]


def test_marks_run_along_a_sloping_plate() -> None:
    """At 45 degrees in plan the wall rises 9 in 12 x 0.7071 along itself; from (48, 10) on, a near
    face at 43 1/4 is 33 1/4 x 1.41421 = 47.0226 along the floor, and 1 / cos 27.938 = 1.13192
    times that along the plate."""
    result = found(US.wall((48, 10), (138, 100)))
    marks = {m.member: m for m in result.over_marks}
    second = marks[keys.rafter_over("B", 2)]
    assert US.of(second.along_sole) == pytest.approx(47.0226, abs=1e-3)
    assert US.of(second.along) == pytest.approx(47.0226 * 1.131923, abs=1e-2)


def test_along_the_rafters_there_are_none() -> None:
    assert found(US.wall((48, 10), (138, 10))).over_marks == ()


def test_of_two_layers_the_lower_is_marked_and_pieces_share_the_marks() -> None:
    """In pieces of 60 the second begins over the stud at 48; marks run on over both."""
    habits = Habits(plates=PlateRules(US.length(60)))
    result = found(US.wall((48, 10), (48, 100), plates=2), habits)
    plates = {m.plate for m in result.over_marks}
    assert len(plates) == 2
    assert all(key.startswith("B/top/1/2") for key in plates)
    along = [US.of(m.along) for m in result.over_marks]
    assert along == pytest.approx([9.25, 33.25, 57.25, 81.25])


def test_the_letter_is_the_persons() -> None:
    result = found(US.wall((48, 10), (48, 100)), Habits(letters=Letters(rafter="RR")))
    assert {m.letter for m in result.over_marks} == {"RR"}


def test_studs_keep_their_marks_to_themselves() -> None:
    result = found(US.wall((48, 10), (48, 100)))
    assert not [m for m in result.marks if keys.is_rafter_over(m.member)]
    assert result.marks
