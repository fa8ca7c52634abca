"""Common differences, plumb cuts and marks along the slope, 2 in 12 to 18 in 12.

All cells are our own arithmetic, confirmed against text as said beside each check. Two different
differences are kept apart: the common difference of plumb studs (spacing x rise / 12), and the
spacing of their marks along the sloping plate (spacing x length per foot of run / 12), which is
also the framing square's "difference in length of jacks".
"""

from __future__ import annotations

import functools
import math
from itertools import pairwise

import pytest

from core.framing import Role
from core.job import WallResult
from core.lengths import System, Tape
from core.model import LineEdge
from walls import US, in_12, result

SPACINGS = (12.0, 16.0, 19.2, 24.0)

# pitch | length per foot of run | plumb cut, degrees | common differences at 12, 16, 19.2, 24 in.
#       | marks along the sloping plate at the same spacings
DECIMALS = """
 2 | 12.17 |  9.46 |  2.000  2.667  3.200  4.000 | 12.166 16.221 19.465 24.331
 3 | 12.37 | 14.04 |  3.000  4.000  4.800  6.000 | 12.369 16.492 19.791 24.739
 4 | 12.65 | 18.43 |  4.000  5.333  6.400  8.000 | 12.649 16.865 20.239 25.298
 5 | 13.00 | 22.62 |  5.000  6.667  8.000 10.000 | 13.000 17.333 20.800 26.000
 6 | 13.42 | 26.57 |  6.000  8.000  9.600 12.000 | 13.416 17.889 21.466 26.833
 7 | 13.89 | 30.26 |  7.000  9.333 11.200 14.000 | 13.892 18.523 22.228 27.785
 8 | 14.42 | 33.69 |  8.000 10.667 12.800 16.000 | 14.422 19.230 23.076 28.844
 9 | 15.00 | 36.87 |  9.000 12.000 14.400 18.000 | 15.000 20.000 24.000 30.000
10 | 15.62 | 39.81 | 10.000 13.333 16.000 20.000 | 15.620 20.827 24.993 31.241
11 | 16.28 | 42.51 | 11.000 14.667 17.600 22.000 | 16.279 21.705 26.046 32.558
12 | 16.97 | 45.00 | 12.000 16.000 19.200 24.000 | 16.971 22.627 27.153 33.941
13 | 17.69 | 47.29 | 13.000 17.333 20.800 26.000 | 17.692 23.589 28.307 35.384
14 | 18.44 | 49.40 | 14.000 18.667 22.400 28.000 | 18.439 24.585 29.503 36.878
15 | 19.21 | 51.34 | 15.000 20.000 24.000 30.000 | 19.209 25.612 30.735 38.419
16 | 20.00 | 53.13 | 16.000 21.333 25.600 32.000 | 20.000 26.667 32.000 40.000
17 | 20.81 | 54.78 | 17.000 22.667 27.200 34.000 | 20.809 27.745 33.294 41.617
18 | 21.63 | 56.31 | 18.000 24.000 28.800 36.000 | 21.633 28.844 34.613 43.267
"""

# The same, as read on a tape to 1/16 in.
ON_THE_TAPE = """
 2 |  2,  2 11/16,  3 3/16,   4 | 12 3/16,  16 1/4,   19 7/16,  24 5/16
 3 |  3,  4,        4 13/16,  6 | 12 3/8,   16 1/2,   19 13/16, 24 3/4
 4 |  4,  5 5/16,   6 3/8,    8 | 12 5/8,   16 7/8,   20 1/4,   25 5/16
 5 |  5,  6 11/16,  8,       10 | 13,       17 5/16,  20 13/16, 26
 6 |  6,  8,        9 5/8,   12 | 13 7/16,  17 7/8,   21 7/16,  26 13/16
 7 |  7,  9 5/16,  11 3/16,  14 | 13 7/8,   18 1/2,   22 1/4,   27 13/16
 8 |  8, 10 11/16, 12 13/16, 16 | 14 7/16,  19 1/4,   23 1/16,  28 7/8
 9 |  9, 12,       14 3/8,   18 | 15,       20,       24,       30
10 | 10, 13 5/16,  16,       20 | 15 5/8,   20 13/16, 25,       31 1/4
11 | 11, 14 11/16, 17 5/8,   22 | 16 1/4,   21 11/16, 26 1/16,  32 9/16
12 | 12, 16,       19 3/16,  24 | 17,       22 5/8,   27 1/8,   33 15/16
13 | 13, 17 5/16,  20 13/16, 26 | 17 11/16, 23 9/16,  28 5/16,  35 3/8
14 | 14, 18 11/16, 22 3/8,   28 | 18 7/16,  24 9/16,  29 1/2,   36 7/8
15 | 15, 20,       24,       30 | 19 3/16,  25 5/8,   30 3/4,   38 7/16
16 | 16, 21 5/16,  25 5/8,   32 | 20,       26 11/16, 32,       40
17 | 17, 22 11/16, 27 3/16,  34 | 20 13/16, 27 3/4,   33 5/16,  41 5/8
18 | 18, 24,       28 13/16, 36 | 21 5/8,   28 7/8,   34 5/8,   43 1/4
"""


def _rows(table: str) -> list[list[str]]:
    return [[cell.strip() for cell in line.split("|")] for line in table.strip().splitlines()]


_FIGURES = [
    (float(row[0]), spacing, float(difference), float(mark))
    for row in _rows(DECIMALS)
    for spacing, difference, mark in zip(SPACINGS, row[3].split(), row[4].split(), strict=True)
]
_TAPES = [
    (float(row[0]), spacing, difference.strip(), mark.strip())
    for row in _rows(ON_THE_TAPE)
    for spacing, difference, mark in zip(
        SPACINGS, row[1].split(","), row[2].split(","), strict=True
    )
]


@functools.cache
def rake(rise: float, spacing: float, edge: LineEdge = LineEdge.NEAR) -> WallResult:
    """A rake wall of five layout studs, 24 in. high at its low end."""
    room = US.room(400, left=(24, in_12(rise)))
    return result(room, US.wall((0, 100), (5.5 * spacing, 100), spacing=spacing), edge)


def differences(wall: WallResult) -> list[float]:
    """From each layout stud's long point to the next one's, mm."""
    assert wall.frame is not None
    studs = [m for m in wall.frame.members if m.key.startswith("B/layout/")]
    assert len(studs) == 5
    return [b.long_point - a.long_point for a, b in pairwise(studs)]


def steps(wall: WallResult) -> list[float]:
    """From each layout stud's mark on the sloping plate to the next one's, mm."""
    places = [
        m.along for m in wall.marks if m.plate == "B/top/1/1" and m.member.startswith("B/layout/")
    ]
    assert len(places) == 5
    return [b - a for a, b in pairwise(places)]


@pytest.mark.parametrize(("rise", "spacing", "difference", "step"), _FIGURES)
def test_differences_and_steps(rise: float, spacing: float, difference: float, step: float) -> None:
    # Our own arithmetic. 10/12 at 16 in. = 20.83 also in Audel, Carpenters and Builders Guide,
    # vol. 3, p. 975.
    wall = rake(rise, spacing)
    assert [round(US.of(d), 3) for d in differences(wall)] == [difference] * 4
    assert [round(US.of(s), 3) for s in steps(wall)] == [step] * 4


@pytest.mark.parametrize(("rise", "spacing", "difference", "step"), _TAPES)
def test_on_the_tape(rise: float, spacing: float, difference: str, step: str) -> None:
    # Our own arithmetic.
    tape, wall = Tape.usual(System.INCH), rake(rise, spacing, LineEdge.UPHILL)
    assert {tape.text(d) for d in differences(wall)} == {f'{difference}"'}
    assert {tape.text(s) for s in steps(wall)} == {f'{step}"'}


@pytest.mark.parametrize("row", _rows(DECIMALS), ids=lambda row: f"{row[0]} in 12")
def test_plumb_cut_and_length_per_foot_of_run(row: list[str]) -> None:
    # Lengths per foot of run: "How To Make A Common Rafter For Any Width Structure", step 4,
    # instructables.com, all 17; 16 -> 20.00 and 13 -> 17.69 also in the US Army correspondence
    # course, fig. 2-14; 7 -> 13.89 also in NAVEDTRA 14044, fig. 2-17. Degrees of 2/12 to 5/12:
    # zenkankakufes.com, roof pitch in degrees (a weak page); the others are our own arithmetic.
    wall = rake(float(row[0]), 12.0)
    assert wall.frame is not None
    standing = [m for m in wall.frame.members if m.role is Role.STUD]
    (plate,) = (m for m in wall.frame.members if m.role is Role.TOP_PLATE)
    cuts = [facet for m in standing for facet in m.last_cut] + [*plate.first_cut, *plate.last_cut]
    assert {round(math.degrees(facet.bevel), 2) for facet in cuts} == {float(row[2])}
    assert {facet.mitre for facet in cuts} == {0.0}
    assert {round(US.of(step), 2) for step in steps(wall)} == {float(row[1])}


def test_six_in_twelve_at_sixteen_inches() -> None:
    # Common practice, no source: 16-in. studs under 6 in 12 are marked 17 7/8 in. apart along the
    # sloping plate, and differ by 8 in.
    tape, wall = Tape.usual(System.INCH), rake(6, 16.0)
    assert (tape.text(steps(wall)[0]), tape.text(differences(wall)[0])) == ('17 7/8"', '8"')
