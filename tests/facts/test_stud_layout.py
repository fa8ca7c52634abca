"""Stud layout along the sole plate, as published."""

from __future__ import annotations

import pytest

from core.framing import Role
from core.lengths import System, Tape
from core.model import Side, Wall
from walls import UK, US, in_12, result

FLAT = US.room(240, left=(96, in_12(0)))
TAPE = Tape.usual(System.INCH)


def sole_marks(wall: Wall) -> list[str]:
    """The running marks on the sole plate, as read on the tape."""
    return [TAPE.text(m.along) for m in result(FLAT, wall).marks if m.plate == "B/sole"]


def test_first_mark_is_at_fifteen_and_a_quarter() -> None:
    # NAVEDTRA 14044, figs 1-40 and 1-41: the first stud is marked 15 1/4 in. from the corner, the
    # rest 16 in. on centre, so that edges of 4 x 8 ft panels fall on the centres of studs.
    first, *layout, last = sole_marks(US.wall((0, 50), (100, 50)))
    assert (first, last) == ('0"', '98 1/2"')
    assert layout == ['15 1/4"', '31 1/4"', '47 1/4"', '63 1/4"', '79 1/4"', '95 1/4"']
    # A panel edge at 48 and at 96 lies at the middle of a stud 1 1/2 in. thick.
    frame = result(FLAT, US.wall((0, 50), (100, 50))).frame
    assert frame is not None
    middles = [US.of((m.left + m.right) / 2) for m in frame.members if m.role is Role.STUD]
    assert middles == pytest.approx([0.75, 16, 32, 48, 64, 80, 96, 99.25])


@pytest.mark.parametrize(
    ("board", "first"), [(0.375, '15 5/8"'), (0.5, '15 3/4"'), (0.625, '15 7/8"')]
)
def test_board_on_the_wall_met_moves_the_first_mark(board: float, first: str) -> None:
    # NAVEDTRA 14044, fig. 1-42: 15 1/4 in. and the thickness of the board on the adjoining wall.
    assert sole_marks(US.wall((0, 50), (100, 50), hung=board))[1] == first
    from_right = US.wall((0, 50), (100, 50), hung=board, start=Side.RIGHT)
    assert sole_marks(from_right)[1] == first


def test_sixteen_feet_take_thirteen_studs() -> None:
    # hunker.com 12522814: 192 / 16 + 1 = 13. The same from the layout, our own arithmetic: 0, then
    # 15 1/4 to 175 1/4, then the end stud at 190 1/2.
    marks = sole_marks(US.wall((0, 50), (192, 50)))
    assert len(marks) == 13
    assert (marks[0], marks[1], marks[-2], marks[-1]) == ('0"', '15 1/4"', '175 1/4"', '190 1/2"')


def test_order_rule_of_thumb() -> None:
    # hansenpolebuildings.com, studs: at 16 in. on centre one stud per foot of wall is enough, at
    # 24 in. two thirds of that. It allows for openings, so a plain wall stays below it.
    feet = 20
    for spacing, share in ((16.0, 1.0), (24.0, 2 / 3)):
        count = len(sole_marks(US.wall((0, 50), (feet * 12, 50), spacing=spacing)))
        assert 0.75 * feet * share < count <= feet * share


def test_precut_stud_makes_a_wall_of_97_and_an_eighth() -> None:
    # mathscinotes.com 2016/05 and jlconline.com: 92 5/8 in. precut studs; finehomebuilding.com:
    # with three plates of 1 1/2 in. the wall is 97 1/8 in. high.
    room = US.room(240, left=(97.125, in_12(0)))
    frame = result(room, US.wall((0, 50), (100, 50), plates=2)).frame
    assert frame is not None
    studs = [m for m in frame.members if m.role is Role.STUD]
    assert {TAPE.text(m.long_point) for m in studs} == {'92 5/8"'}


def test_door_framing() -> None:
    # constructionjargon.com, Framing Walls: a 2/8 x 6/8 door has a rough opening of 32 x 82 1/2;
    # consumersolution.org: king and jack each side, header 3 in. longer than the opening (35 for
    # 32). Our own arithmetic: the jack on the sole plate is 82 1/2 - 1 1/2 = 81.
    door = US.opening("door-1", left=40, width=32, head=82.5)
    frame = result(FLAT, US.wall((0, 50), (120, 50), openings=(door,))).frame
    assert frame is not None
    lengths = {
        role: [TAPE.text(m.long_point) for m in frame.members if m.role is role]
        for role in (Role.HEADER, Role.TRIMMER, Role.KING)
    }
    assert lengths[Role.HEADER] == ['35"']
    assert lengths[Role.TRIMMER] == ['81"', '81"']
    assert len(lengths[Role.KING]) == 2


def test_metric_studs_at_400_carry_boards_of_1200() -> None:
    # Studs at 400 or 600 mm and boards of 1200 x 2400: from memory; confirm with the adopted code.
    room = UK.room(6000, left=(2400, in_12(0)))
    for spacing in (400.0, 600.0):
        frame = result(room, UK.wall((0, 500), (5000, 500), spacing=spacing)).frame
        assert frame is not None
        middles = {round((m.left + m.right) / 2, 6) for m in frame.members if not m.lies}
        assert {1200.0, 2400.0, 3600.0, 4800.0} <= middles
