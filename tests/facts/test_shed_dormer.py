"""The shed dormer's partition SD: 10 in 12 on the left, 3 in 12 on the right, unequal slopes.

Over SD the main roof rises from R = 54 at u = 0 (14 + 48 x 10/12) to 124 at the ridge, u = 84;
the dormer's roof falls from there a quarter to 97 at u = 192. Angles 39.81 and 14.04; plates stand
1.9526 and 1.5462 high. Lengths are R less plate less 1 1/2 for the sole plate. Our own arithmetic,
by a script of its own.

The main roof is 10 in 12 on both sides. The dormer takes the right slope's place for 10 feet; its
front wall stands with its inner face at u = 240, 24 in from the right eave wall.
"""

from __future__ import annotations

import math
from itertools import pairwise

import msgspec
import pytest

from core.job import WallResult
from core.lengths import System, Tape
from core.model import Dormer, DormerKind, Side
from walls import US, in_12, member, result

TAPE = Tape.usual(System.INCH)

DORMER = Dormer(
    "dormer-1",
    DormerKind.SHED,
    Side.RIGHT,
    start=US.length(60),
    width=US.length(120),
    face=US.length(24),
    front=US.length(3.5),
    height=US.length(97),
    pitch=in_12(3),
)
ROOM = msgspec.structs.replace(
    US.room(264, (14, in_12(10)), (14, in_12(10)), length=240), dormers=(DORMER,)
)

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
    return result(ROOM, US.wall((48, 120), (240, 120)))


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


def test_the_door_under_the_ridge_fits_where_it_is_stated() -> None:
    # The opening is from u = 100 to 134, 82 1/2 high with a flat 1 1/2 header: 84 under 117.6 and
    # more. On the left the plate is as high at 54 + u x 10/12 - 1.9526 = 84, u = 38.343; the header
    # begins 1 1/2 before the opening: 39.843. On the right the wall's end sets the limit:
    # 192 - 4 1/2 - 34 = 153 1/2.
    door = US.opening("door-1", left=100, width=34, head=82.5)
    frame = result(ROOM, US.wall((48, 120), (240, 120), openings=(door,))).frame
    assert frame is not None
    (placed,) = frame.openings
    assert placed.fit.fits
    ((low, high),) = [tuple(US.of(mm) for mm in stretch) for stretch in placed.fit.ranges]
    assert (round(low, 3), round(high, 3)) == (39.843, 153.5)
    # Kings at 97 and 135 1/2: under the dormer 97 + (192 - u) / 4 - 1.5462 - 1.5.
    king = member(frame, "door-1/king/left")
    assert [round(US.of(e), 3) for e in king.edges[:2]] == [117.704, 117.329]


def front() -> WallResult:
    """The dormer's front wall between its cheeks, seen from the room, with its window."""
    window = US.opening("window-1", left=30, width=60, head=66, sill=30)
    return result(ROOM, US.wall((240, 180), (240, 60), plate=(1.5, 5.5), openings=(window,)))


def test_the_front_wall_and_its_window() -> None:
    # R = 97 all along face A; the dormer falls a quarter toward its eave, through the wall: the far
    # face is 3 1/2 / 4 = 0.875 lower. 97 - 1.5462 - 1.5 = 93.954 and 93.079, mitre 14.04.
    wall = front()
    assert wall.frame is not None
    stud = member(wall.frame, "layout/1")
    assert [round(US.of(e), 3) for e in stud.edges] == [93.954, 93.954, 93.079, 93.079]
    (cut,) = stud.last_cut
    assert (round(math.degrees(cut.mitre), 2), round(math.degrees(cut.bevel), 2)) == (-14.04, 0)
    # Trimmers 66 - 1 1/2; the sill lies 1 1/2 under 30; cripples on the header at 67 1/2 reach
    # 95.454: 27.954.
    assert US.of(member(wall.frame, "window-1/trimmer/left").overall) == pytest.approx(64.5)
    assert US.of(member(wall.frame, "window-1/sill/1").top) == pytest.approx(30)
    above = [m for m in wall.frame.members if "/above/" in m.key]
    assert [round(US.of(m.long_point), 3) for m in above] == [27.954] * len(above)
    assert len(above) == 4
    assert wall.cautions == ()


def test_a_dormer_leaves_the_walls_beside_it_as_they_were() -> None:
    # At 40 along, before the dormer: the main roof on both sides, ridge at u = 84, 124 high.
    wall = result(ROOM, US.wall((48, 40), (216, 40)))
    assert wall.inputs.near is not None
    corners = [(round(US.of(x), 4), round(US.of(y), 4)) for x, y in wall.inputs.near.points()]
    assert corners == [(0, 54), (84, 124), (168, 54)]
