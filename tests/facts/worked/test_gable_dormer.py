"""A wall through the valley of a gable dormer, every number worked by hand; inches.

The room is 240 wide, 12 in 12 from 30: R = 30 + u to the ridge at u = 120 and 270 - u beyond. On
the right a gable dormer from v = 120 to 240, over its cheeks 90 high, 6 in 12 to its own ridge at
v = 180: 90 + (v - 120) / 2. The wall goes along v = 150 from u = 100 to 216, 116 long, its timber
toward greater v. With x from its left end:
    to x = 20      the main roof rises:  130 + x, to the ridge at 150;
    to x = 65      it falls:             170 - x, until it meets the dormer's plane;
    to x = 116     the dormer:           90 + 30 / 2 = 105, level; it rises 1/2 in 1 through the
                   wall, 3.5 / 2 = 1.75 higher on the far face, and the valley there is at 63.25.
Plates stand 1.5 x root 2 = 2.121320 high under the main roof, 1.5 x root 1.25 = 1.677051 under the
dormer. Undersides meet at the ridge's own x, since the slopes are alike, and where 170 - x -
2.121320 = 105 - 1.677051: x = 64.555731, on the far face 62.805731. Our own arithmetic.
"""

from __future__ import annotations

import msgspec
import pytest

import reading
from core.job import WallResult
from core.model import Side
from valleys import DORMER, GABLE
from walls import US, result

# Near left, near right, far left, far right. Studs: 130 + x - 3.621320; 170 - x - 3.621320; under
# the dormer 105 - 3.177051 = 101.8229, the far face 103.5729.
# layout/4, from 63.25 to 64.75, is astride the valley: on face A its left edge is under the main
# roof, 166.3787 - 63.25 = 103.1287; on the far face all of it is under the dormer.
# Marks from each plate's low end: x times 1.414214; (64.5557 - x - 1.5) times 1.414214; level:
# x - 64.5557. Of layout/4 the left edge alone is on the plate: 1.3057 x 1.414214 = 1.8466.
STUDS = """
end/left  |   0    | 126.3787 127.8787 126.3787 127.8787 |  45     0    | 1 |  0      | left
layout/1  |  15.25 | 141.6287 143.1287 141.6287 143.1287 |  45     0    | 1 | 21.5668 | left
layout/2  |  31.25 | 135.1287 133.6287 135.1287 133.6287 | -45     0    | 2 | 44.9801 | right
layout/3  |  47.25 | 119.1287 117.6287 119.1287 117.6287 | -45     0    | 2 | 22.3527 | right
layout/4  |  63.25 | 103.1287 101.8229 103.5729 103.5729 | -45 0 0 26.57 | 2 | 1.8466  | left
layout/5  |  79.25 | 101.8229 101.8229 103.5729 103.5729 |   0    26.57 | 3 | 14.6943 | left
layout/6  |  95.25 | 101.8229 101.8229 103.5729 103.5729 |   0    26.57 | 3 | 30.6943 | left
layout/7  | 111.25 | 101.8229 101.8229 103.5729 103.5729 |   0    26.57 | 3 | 46.6943 | left
end/right | 114.5  | 101.8229 101.8229 103.5729 103.5729 |   0    26.57 | 3 | 49.9443 | left
"""
ROWS = reading.rows(STUDS)
each_stud = pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])


def wall() -> WallResult:
    room = msgspec.structs.replace(GABLE, dormers=(DORMER,))
    return result(room, US.wall((100, 150), (216, 150)))


def test_the_roof_line_on_both_faces() -> None:
    made = wall().inputs
    assert made.near is not None
    assert made.far is not None
    near, far = ([US.of(n) for c in line.points() for n in c] for line in (made.near, made.far))
    assert near == reading.written(0, 130, 20, 150, 65, 105, 116, 105)
    assert far == reading.written(0, 130, 20, 150, 63.25, 106.75, 116, 106.75)


@each_stud
def test_places_and_four_edges(row: reading.Row) -> None:
    cause, left, lengths, *_ = row
    found = wall()
    assert [US.of(reading.stick(found, cause).left)] == reading.written(left)
    assert reading.edges(US, found, cause) == reading.written(lengths)


@each_stud
def test_the_saw(row: reading.Row) -> None:
    # Under the main roof a bevel of 45; under the dormer a mitre of arctan 1/2 = 26.565.
    settings = [n for pair in reading.saw(reading.stick(wall(), row[0]).last_cut) for n in pair]
    assert settings == reading.written(row[3], each=0.01)


@each_stud
def test_marks(row: reading.Row) -> None:
    cause, left, _, _, plate, along, edge = row
    found = wall()
    assert [US.of(reading.on_sole(found, cause).along)] == reading.written(left)
    mark = reading.on_top(found, cause)
    assert (mark.plate, mark.edge.value) == (f"B/top/{plate}/1", edge)
    assert mark.origin is (Side.RIGHT if plate == "2" else Side.LEFT)
    assert [US.of(mark.along)] == reading.written(along)


@pytest.mark.parametrize(
    ("cause", "lengths"),
    [
        # 20 x 1.414214 on every edge.
        ("top/1/1", "28.2843 28.2843 28.2843 28.2843"),
        # Underside 44.555731 x 1.414214, top 45 x 1.414214; far 42.805731 and 43.25.
        ("top/2/1", "63.0113 63.6396 60.5364 61.1647"),
        # 116 - 64.555731, 116 - 65; far 116 - 62.805731, 116 - 63.25.
        ("top/3/1", "51.4443 51 53.1943 52.75"),
    ],
)
def test_edges_of_the_plates(cause: str, lengths: str) -> None:
    assert reading.edges(US, wall(), cause) == reading.written(lengths)


def test_cuts_of_the_plates() -> None:
    # At the ridge both are cut plumb, 45. In the valley both lie against the plane halfway between
    # the two slopes: its normal is the difference of theirs. In (along, up, away) those are
    # (1, 1, 0) / root 2 and (0, 1, -1/2) / root 1.25; the difference (0.707107, -0.187320,
    # 0.447214) over its size 0.857373 is p = (0.824737, -0.218482, 0.521609).
    # Out of square to either plate by arcsin 0.428686 = 25.38. The falling plate runs (1, -1, 0) /
    # root 2, p's share along it is 0.737666, across it 0.521609: swung 35.26. The level one: along
    # 0.824737, across (0, 0.447214, 0.894427) 0.368833: swung 24.09.
    found = wall()
    cuts = {n: reading.stick(found, f"top/{n}/1") for n in (1, 2, 3)}
    settings = [reading.saw((*m.first_cut, *m.last_cut)) for m in cuts.values()]
    assert settings[0] == [(45.0, 0.0), (45.0, 0.0)]
    assert settings[1] == [(-45.0, 0.0), (-25.38, -35.26)]
    assert settings[2] == [(25.38, -24.09), (0.0, 0.0)]


def test_nothing_else_is_in_it() -> None:
    found = wall()
    assert reading.uprights(found) == [row[0] for row in ROWS]
    assert reading.lying(found) == {"sole", "top/1/1", "top/2/1", "top/3/1"}
    # Over the dormer a 2x4 tilted by 26.565 has to be 3.5 / 0.894427 = 3.9131 wide.
    assert [c.message.id for c in found.cautions] == ["plate.narrow"]
