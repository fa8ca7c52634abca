"""The shed dormer's partition SD: 10 in 12 on the left, 3 in 12 on the right, unequal slopes.

Over SD the main roof rises from R = 54 at u = 0 (14 + 48 x 10/12) to 124 at the ridge, u = 84;
the dormer's roof falls from there a quarter to 97 at u = 192. Angles 39.81 and 14.04; plates stand
1.9526 and 1.5462 high. Lengths are R less plate less 1 1/2 for the sole plate. Our own arithmetic,
by a script of its own. Cheek walls and purlins belong elsewhere.
"""

from __future__ import annotations

import math
from itertools import pairwise

import pytest

from core.job import WallResult
from core.lengths import System, Tape
from walls import US, in_12, member, result

TAPE = Tape.usual(System.INCH)

# The right slope is stated at the right eave wall, 264: 124 - 132 / 4 = 91.
ROOM = US.room(264, (14, in_12(10)), (91, in_12(3)), length=120)

# cause | left edge, in. | length at the left | at the right
STUDS = """
end/left  |   0    |  50 9/16  |  51 13/16
layout/1  |  15.25 |  63 1/4   |  64 1/2
layout/2  |  31.25 |  76 9/16  |  77 13/16
layout/3  |  47.25 |  89 15/16 |  91 3/16
layout/4  |  63.25 | 103 1/4   | 104 1/2
layout/5  |  79.25 | 116 9/16  | 117 13/16
layout/6  |  95.25 | 118 1/8   | 117 3/4
layout/7  | 111.25 | 114 1/8   | 113 3/4
layout/8  | 127.25 | 110 1/8   | 109 3/4
layout/9  | 143.25 | 106 1/8   | 105 3/4
layout/10 | 159.25 | 102 1/8   | 101 3/4
layout/11 | 175.25 |  98 1/8   |  97 3/4
end/right | 190.5  |  94 5/16  |  93 15/16
"""
ROWS = [[cell.strip() for cell in line.split("|")] for line in STUDS.strip().splitlines()]


def partition() -> WallResult:
    return result(ROOM, US.wall((48, 60), (240, 60)))


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])
def test_stud(row: list[str]) -> None:
    cause, left, at_left, at_right = row
    frame = partition().frame
    assert frame is not None
    stud = member(frame, cause)
    assert US.of(stud.left) == pytest.approx(float(left))
    assert [TAPE.text(e) for e in stud.edges] == [f'{at_left}"', f'{at_right}"'] * 2
    (cut,) = stud.last_cut
    assert round(math.degrees(cut.bevel), 2) == (39.81 if float(left) < 84 else -14.04)


def test_ridge_and_inner_ridge() -> None:
    # Undersides: 124 - 1.9526 + (x - 132) 10/12 = 124 - 1.5462 - (x - 132) / 4, so x is further by
    # 0.4064 / 1.08333 = 0.375.
    wall = partition()
    assert wall.frame is not None
    assert wall.inputs.near is not None
    assert US.of(wall.inputs.near.segments[0].right) + 48 == pytest.approx(132)
    assert US.of(wall.frame.near.segments[0].right) + 48 == pytest.approx(132.375, abs=5e-4)


def test_plates_meet_at_half_the_change() -> None:
    # The slopes turn by 39.81 + 14.04 = 53.84; each plate is cut at half of it, 26.92 from square.
    frame = partition().frame
    assert frame is not None
    left, right = member(frame, "top/1/1"), member(frame, "top/2/1")
    assert [round(math.degrees(c.bevel), 2) for c in left.first_cut] == [39.81]
    assert [round(math.degrees(c.bevel), 2) for c in left.last_cut] == [26.92]
    assert [round(math.degrees(c.bevel), 2) for c in right.first_cut] == [-26.92]
    assert [round(math.degrees(c.bevel), 2) for c in right.last_cut] == [-14.04]


def test_common_differences() -> None:
    # 13 1/3 on the left, 4 on the right.
    frame = partition().frame
    assert frame is not None
    lengths = [US.of(member(frame, f"layout/{n}").long_point) for n in range(1, 12)]
    steps = [round(b - a, 3) for a, b in pairwise(lengths)]
    assert steps[:4] == [13.333] * 4
    assert steps[5:] == [-4.0] * 5
