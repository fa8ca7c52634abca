"""A wall from the wing of an L-shaped roof through its valley, every number by hand; inches.

The room is 240 wide, 12 in 12 from 30: R = 30 + u. A wing goes out on its left from v = 100 to 260,
12 in 12 from 30 as well: 30 + (v - 100) up to its ridge at v = 180. The wall goes along v = 130
from the wing's gable at u = -90 to u = 60, 150 long, its timber toward greater v:
    to x = 120   the wing, 30 + 30 = 60, level; it rises 1 in 1 through the wall, so the far face
                 is 3.5 higher and the valley there 3.5 further, at 123.5;
    beyond       the main roof, 30 + u = x - 60, to 90 at x = 150.
Both planes have the secant root 2: plates stand 2.121320 high, undersides break under the valley.
Our own arithmetic.
"""

from __future__ import annotations

import msgspec
import pytest

import reading
from core.job import WallResult
from core.model import Side
from valleys import GABLE, WING
from walls import US, result

# In the wing 60 - 3.621320 = 56.3787, the far face 3.5 more. Beyond x - 63.621320, 1.5 more on the
# right. Marks: x along the level plate; (x - 120) times 1.414214 along the rising one.
STUDS = """
end/left  |   0    | 56.3787 56.3787 59.8787 59.8787 |  0 45 | 1 |   0
layout/1  |  15.25 | 56.3787 56.3787 59.8787 59.8787 |  0 45 | 1 |  15.25
layout/2  |  31.25 | 56.3787 56.3787 59.8787 59.8787 |  0 45 | 1 |  31.25
layout/3  |  47.25 | 56.3787 56.3787 59.8787 59.8787 |  0 45 | 1 |  47.25
layout/4  |  63.25 | 56.3787 56.3787 59.8787 59.8787 |  0 45 | 1 |  63.25
layout/5  |  79.25 | 56.3787 56.3787 59.8787 59.8787 |  0 45 | 1 |  79.25
layout/6  |  95.25 | 56.3787 56.3787 59.8787 59.8787 |  0 45 | 1 |  95.25
layout/7  | 111.25 | 56.3787 56.3787 59.8787 59.8787 |  0 45 | 1 | 111.25
layout/8  | 127.25 | 63.6287 65.1287 63.6287 65.1287 | 45 0  | 2 |  10.2530
layout/9  | 143.25 | 79.6287 81.1287 79.6287 81.1287 | 45 0  | 2 |  32.8805
end/right | 148.5  | 84.8787 86.3787 84.8787 86.3787 | 45 0  | 2 |  40.3051
"""
ROWS = reading.rows(STUDS)
each_stud = pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])


def wall() -> WallResult:
    room = msgspec.structs.replace(GABLE, wings=(WING,))
    return result(room, US.wall((-90, 130), (60, 130)))


def test_the_roof_line_on_both_faces() -> None:
    made = wall().inputs
    assert made.near is not None
    assert made.far is not None
    near, far = ([US.of(n) for c in line.points() for n in c] for line in (made.near, made.far))
    assert near == reading.written(0, 60, 120, 60, 150, 90)
    assert far == reading.written(0, 63.5, 123.5, 63.5, 150, 90)


@each_stud
def test_places_four_edges_and_saw(row: reading.Row) -> None:
    cause, left, lengths, settings, *_ = row
    found = wall()
    stud = reading.stick(found, cause)
    assert [US.of(stud.left)] == reading.written(left)
    assert reading.edges(US, found, cause) == reading.written(lengths)
    assert [n for pair in reading.saw(stud.last_cut) for n in pair] == reading.written(settings)
    long, short = max(lengths.split()), min(lengths.split())
    assert reading.points(US, found, cause) == reading.written(long, short, long)


@each_stud
def test_marks(row: reading.Row) -> None:
    cause, left, *_, plate, along = row
    found = wall()
    assert [US.of(reading.on_sole(found, cause).along)] == reading.written(left)
    mark = reading.on_top(found, cause)
    assert (mark.plate, mark.origin, mark.edge) == (f"B/top/{plate}/1", Side.LEFT, Side.LEFT)
    assert [US.of(mark.along)] == reading.written(along)


def test_the_level_plate() -> None:
    # 120 on face A, 123.5 on the far face.
    assert reading.edges(US, wall(), "top/1/1") == reading.written(120, 120, 123.5, 123.5)
    assert reading.points(US, wall(), "top/1/1") == reading.written(123.5, 120, 123.5)


def test_the_rising_plate() -> None:
    # 30 x 1.414214 on face A, 26.5 x 1.414214 on the far face; the plumb cut at its high end has
    # its top 1.5 further up the slope than its underside.
    assert reading.edges(US, wall(), "top/2/1") == reading.written(
        "42.4264 42.4264 37.4767 37.4767"
    )
    assert reading.points(US, wall(), "top/2/1") == reading.written(42.4264, 37.4767, 43.9264)


def test_cuts_of_the_plates() -> None:
    # In (along, up, away) the planes' normals are (0, 1, -1) / root 2 and (-1, 1, 0) / root 2: the
    # one halfway has (1, 0, -1) / root 2. To the level plate, which runs (1, 0, 0), with
    # (0, 1, 1) / root 2 across it: along 0.7071, across -0.5, out of square 0.5: swung
    # arctan 0.7071 = 35.26, tilted arcsin 0.5 = 30. To the rising one, (1, 1, 0) / root 2, with
    # (0, 0, 1) across it: along 0.5, across -0.7071, out of square -0.5: swung arctan 1.4142 =
    # 54.74, tilted 30.
    found = wall()
    level, rising = reading.stick(found, "top/1/1"), reading.stick(found, "top/2/1")
    assert reading.saw((*level.first_cut, *level.last_cut)) == [(0.0, 0.0), (-30.0, 35.26)]
    assert reading.saw((*rising.first_cut, *rising.last_cut)) == [(30.0, 54.74), (45.0, 0.0)]


def test_what_is_told() -> None:
    # A 2x4 at 45 degrees covers 3.5 / root 2; 3.5 x root 2 = 4.95 is needed. A mitre of 54.7 is
    # past a saw that swings 50.
    assert [c.message.id for c in wall().cautions] == ["plate.narrow", "saw.past"]


def test_nothing_else_is_in_it() -> None:
    found = wall()
    assert reading.uprights(found) == [row[0] for row in ROWS]
    assert reading.lying(found) == {"sole", "top/1/1", "top/2/1"}
    assert reading.points(US, found, "sole") == reading.written(150, 150, 150)
