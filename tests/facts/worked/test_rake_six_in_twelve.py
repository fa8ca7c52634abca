"""A rake wall at 6 in 12, 7 ft long, every number worked by hand; inches.

The roof rises from 36 at the eave, 36 + u / 2. The wall goes straight up it from u = 24 to 108, so
over it R = 48 + x / 2, from 48 to 90. Timber 1 1/2 by 3 1/2, one top plate, a sole plate.
    Secant of the slope: root of 1 + 1/4 = 1.118034. Angle: arctan 1/2 = 26.565.
    A plate nailed up under it stands 1.5 x 1.118034 = 1.677051 high.
    A stud's edge at x: 48 + x / 2 - 1.677051 - 1.5 = 44.822949 + x / 2.
Our own arithmetic.
"""

from __future__ import annotations

import pytest

import reading
from core.job import WallResult
from core.lengths import System, Tape
from core.model import LineEdge, Side
from walls import US, in_12, result

TAPE = Tape.usual(System.INCH)

# Left edges: centres at 16 n, so 16 n - 0.75; the end stud at 84 - 1.5.
# Left edge's length: 44.822949 + half of that; the right one is 1.5 / 2 = 0.75 longer.
# Mark on the slope, from its low end, to the left edge: x times 1.118034; to the right edge, the
# uphill one: 1.677051 more.
STUDS = """
end/left  |  0    | 44.8229 | 45.5729 | 44 13/16 | 45 9/16  |  0      |  1.6771
layout/1  | 15.25 | 52.4479 | 53.1979 | 52 7/16  | 53 3/16  | 17.0500 | 18.7271
layout/2  | 31.25 | 60.4479 | 61.1979 | 60 7/16  | 61 3/16  | 34.9386 | 36.6156
layout/3  | 47.25 | 68.4479 | 69.1979 | 68 7/16  | 69 3/16  | 52.8271 | 54.5042
layout/4  | 63.25 | 76.4479 | 77.1979 | 76 7/16  | 77 3/16  | 70.7156 | 72.3927
layout/5  | 79.25 | 84.4479 | 85.1979 | 84 7/16  | 85 3/16  | 88.6042 | 90.2812
end/right | 82.5  | 86.0729 | 86.8229 | 86 1/16  | 86 13/16 | 92.2378 | 93.9149
"""
ROWS = reading.rows(STUDS)
each_stud = pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])


def wall(edge: LineEdge = LineEdge.NEAR) -> WallResult:
    return result(US.room(240, left=(36, in_12(6))), US.wall((24, 100), (108, 100)), edge)


@each_stud
def test_places_and_four_edges(row: reading.Row) -> None:
    # The roof does not slope through the wall: the far face is like face A.
    cause, left, low, high, *_ = row
    found = wall()
    assert [US.of(reading.stick(found, cause).left)] == reading.written(left)
    assert reading.edges(US, found, cause) == reading.written(low, high, low, high)


@each_stud
def test_long_and_short_point_on_the_tape(row: reading.Row) -> None:
    cause, _, _, high, short, long, *_ = row
    stud = reading.stick(wall(), cause)
    assert [TAPE.text(x) for x in (stud.long_point, stud.short_point)] == [f'{long}"', f'{short}"']
    # A foot cut square: from tip to tip it is as long as its long point.
    assert [US.of(stud.overall)] == reading.written(high)


@each_stud
def test_the_saw_tilts_and_does_not_swing(row: reading.Row) -> None:
    stud = reading.stick(wall(), row[0])
    assert reading.saw(stud.last_cut) == [(26.57, 0.0)]
    assert stud.last_cut[0].face_up == "right"
    assert reading.saw(stud.first_cut) == [(0.0, 0.0)]


@each_stud
def test_marks_on_the_sole_plate(row: reading.Row) -> None:
    mark = reading.on_sole(wall(), row[0])
    assert [US.of(mark.along)] == reading.written(row[1])
    assert (mark.origin, mark.edge, mark.x_side) == (Side.LEFT, Side.LEFT, Side.RIGHT)


@each_stud
def test_marks_on_the_slope(row: reading.Row) -> None:
    cause, left, *_, near, uphill = row
    mark, other = (reading.on_top(wall(edge), cause) for edge in (LineEdge.NEAR, LineEdge.UPHILL))
    assert [US.of(m.along) for m in (mark, other)] == reading.written(near, uphill)
    assert (mark.edge, other.edge) == (Side.LEFT, Side.RIGHT)
    # The same line, along the floor.
    assert [US.of(mark.along_sole), US.of(other.along_sole) - 1.5] == reading.written(left, left)


def test_steps() -> None:
    # From stud to stud 16 / 2 = 8; along the plate 16 x 1.118034 = 17.8885, 17 7/8 on the tape.
    found = wall()
    first, second = (f"layout/{n}" for n in (1, 2))
    step = reading.stick(found, second).long_point - reading.stick(found, first).long_point
    along = reading.on_top(found, second).along - reading.on_top(found, first).along
    assert (TAPE.text(step), TAPE.text(along)) == ('8"', '17 7/8"')


def test_the_plates() -> None:
    # 84 x 1.118034 = 93.9149 along its underside and its top, plumb at both ends; the top lies
    # 1.5 x 1/2 = 0.75 up the slope from the underside: 94.6649 from tip to tip.
    found = wall()
    top = reading.stick(found, "top/1/1")
    assert reading.edges(US, found, "top/1/1") == reading.written(*[93.9149] * 4)
    assert reading.points(US, found, "top/1/1") == reading.written(93.9149, 93.9149, 94.6649)
    assert reading.saw((*top.first_cut, *top.last_cut)) == [(26.57, 0.0)] * 2
    sole = reading.stick(found, "sole")
    assert reading.points(US, found, "sole") == reading.written(84, 84, 84)
    assert reading.saw((*sole.first_cut, *sole.last_cut)) == [(0.0, 0.0)] * 2


def test_where_the_plate_lies() -> None:
    # Its top along the roof, from 48 to 90; its underside 1.6771 lower.
    corners = [US.of(y) for _, y in reading.stick(wall(), "top/1/1").near]
    assert corners == reading.written(46.3229, 88.3229, 90, 48)


def test_nothing_else_is_in_it() -> None:
    found = wall()
    assert reading.uprights(found) == [row[0] for row in ROWS]
    assert reading.lying(found) == {"sole", "top/1/1"}
    assert found.cautions == ()
