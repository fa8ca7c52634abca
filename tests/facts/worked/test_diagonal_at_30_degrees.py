"""A wall that runs 30 degrees off the way up a 9 in 12 roof, every number by hand; inches.

The roof rises from 12 at the left eave: 12 + 0.75 u, its secant 1.25. The wall starts at u = 48,
where R is 48, and runs 96 at 30 degrees to the way up, so each inch of it is cos 30 = 0.866025 up
the roof and sin 30 = 0.5 along it. Its timber lies to the left hand, 3 1/2 in. off face A, so each
inch through it is 0.5 down the roof.
    Along the wall the roof rises 0.75 x 0.866025 = 0.649519, through it -0.75 x 0.5 = -0.375.
    Mitre: arctan -0.375 = -20.556, cosine 0.936329.
    Bevel: arctan (0.649519 x 0.936329 = 0.608163) = 31.306.
    A plate stands 1.5 x 1.25 = 1.875 high (the true slope counts, not the wall's).
    Studs on face A: 48 + 0.649519 x - 1.875 - 1.5 = 44.625 + 0.649519 x; on the far face, 3 1/2
    through, 3.5 x 0.375 = 1.3125 less. The right edge is 1.5 x 0.649519 = 0.974279 longer.
    Along the plate one inch of floor is root (1 + 0.649519^2) = 1.192424.
Our own arithmetic.
"""

from __future__ import annotations

import math

import pytest

import reading
from core.job import WallResult
from core.model import LineEdge, Side
from core.wording import Mm
from walls import US, Pair, in_12, result

# Near left, near right, far left, far right: at 15.25 44.625 + 9.9052 = 54.5302, 0.9743 more,
# 1.3125 less; the mark on the plate 15.25 x 1.192424 = 18.1845.
STUDS = """
end/left  |  0    |  44.6250  45.5993  43.3125  44.2868 |   0
layout/1  | 15.25 |  54.5302  55.5044  53.2177  54.1919 |  18.1845
layout/2  | 31.25 |  64.9225  65.8967  63.6100  64.5842 |  37.2633
layout/3  | 47.25 |  75.3148  76.2891  74.0023  74.9766 |  56.3420
layout/4  | 63.25 |  85.7071  86.6814  84.3946  85.3689 |  75.4208
layout/5  | 79.25 |  96.0994  97.0737  94.7869  95.7612 |  94.4996
end/right | 94.5  | 106.0046 106.9788 104.6921 105.6663 | 112.6841
"""
ROWS = reading.rows(STUDS)
each_stud = pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])


def wall(edge: LineEdge = LineEdge.NEAR, plate: Pair = (1.5, 5.5)) -> WallResult:
    slope = (12, in_12(9))
    up, aside = 96 * math.cos(math.pi / 6), 96 * math.sin(math.pi / 6)
    made = US.wall((48, 100), (48 + up, 100 + aside), plate=plate)
    return result(US.room(264, slope, slope), made, edge)


@each_stud
def test_places_and_four_edges(row: reading.Row) -> None:
    found = wall()
    assert [US.of(reading.stick(found, row[0]).left)] == reading.written(row[1])
    assert reading.edges(US, found, row[0]) == reading.written(row[2])


@each_stud
def test_long_and_short_point(row: reading.Row) -> None:
    # The long point is at face A's right edge, the short point diagonally across.
    _, long, short, _ = row[2].split()
    assert reading.points(US, wall(), row[0]) == reading.written(long, short, long)


@each_stud
def test_the_saw_swings_first_and_then_tilts(row: reading.Row) -> None:
    stud = reading.stick(wall(), row[0])
    assert reading.saw(stud.last_cut) == [(31.31, -20.56)]
    assert stud.last_cut[0].face_up == "right"


@each_stud
def test_marks(row: reading.Row) -> None:
    cause, left, _, along = row
    found = wall()
    assert [US.of(reading.on_sole(found, cause).along)] == reading.written(left)
    mark = reading.on_top(found, cause)
    assert [US.of(mark.along)] == reading.written(along)
    assert (mark.origin, mark.edge, mark.x_side) == (Side.LEFT, Side.LEFT, Side.RIGHT)
    # On the uphill edge, the right one, 1.5 x 1.192424 = 1.7886 further.
    uphill = reading.on_top(wall(LineEdge.UPHILL), cause)
    assert [US.of(uphill.along - mark.along)] == reading.written(1.7886)


def test_the_plate() -> None:
    # 96 x 1.192424 = 114.4727 on all four edges: both ends are plumb and square to the wall.
    # From tip to tip: what is plumb goes by 0.649519 / 1.192424 = 0.544705 along the plate. Its top
    # stands 1.875 over its underside, 1.0213 along it; its far edge lies 1.3125 under that on face
    # A, 0.7149 along it. Together 114.4727 + 1.7362 = 116.2090.
    found = wall()
    assert reading.edges(US, found, "top/1/1") == reading.written(*[114.4727] * 4)
    assert reading.points(US, found, "top/1/1") == reading.written(114.4727, 114.4727, 116.2090)
    assert reading.points(US, found, "sole") == reading.written(96, 96, 96)


def test_the_plate_s_ends() -> None:
    # The saw cuts the plane square to the wall. In (along, up, away) the plate runs along
    # a = (1, 0.649519, 0) / 1.192424, square to it is n = (-0.649519, 1, 0.375) / 1.25, and over
    # its broad face goes b = a x n, whose share along the wall is 0.649519 x 0.375 / (1.192424 x
    # 1.25) = 0.163412. So the plane leans arcsin (0.649519 / 1.25 = 0.519615) = 31.306 out of
    # square to the broad face, and swings over it by arctan (0.163412 / 0.838628) = 11.026.
    plate = reading.stick(wall(), "top/1/1")
    assert reading.saw((*plate.first_cut, *plate.last_cut)) == [(31.31, -11.03)] * 2


def test_a_two_by_four_does_not_cover_the_studs() -> None:
    # Square to its run the plate is tilted by arctan (0.375 / 1.192424 = 0.314486) = 17.458: it has
    # to be 3.5 / cosine 0.953941 = 3.6690 wide.
    found = wall(plate=(1.5, 3.5))
    assert [c.message.id for c in found.cautions] == ["plate.narrow"]
    told = dict(found.cautions[0].message.values)
    widths = [told[name] for name in ("need", "have")]
    assert [US.of(w.mm) for w in widths if isinstance(w, Mm)] == reading.written(3.6690, 3.5)


def test_nothing_else_is_in_it() -> None:
    found = wall()
    assert reading.uprights(found) == [row[0] for row in ROWS]
    assert reading.lying(found) == {"sole", "top/1/1"}
    assert found.cautions == ()
