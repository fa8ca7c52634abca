"""A partition across a saltbox, 12 in 12 and 5 in 12, every number worked by hand; inches.

The room is 240 wide. On the left the roof rises from 60 at 12 in 12, on the right from 45 at 5 in
12; they meet at u = 60: 60 + 60 = 120 and 45 + 180 x 5/12 = 120. The wall runs from u = 12 to 228,
216 long: R = 72 + x to the ridge over x = 48, and 140 - 5 x / 12 beyond, 50 at its right end.
    Left: 45 degrees, secant 1.414214, a plate stands 2.121320 high.
    Right: arctan 5/12 = 22.620, secant 13/12 = 1.083333, a plate stands 1.625 high.
    The undersides meet where 72 + x - 2.121320 = 140 - 5 x / 12 - 1.625, so 17 x / 12 = 68.496320
    and x = 48.350344: 0.35 past the ridge, 118.2290 high.
    Studs: 68.378680 + x on the left, 136.875 - 5 x / 12 on the right.
The end stud on the right stands from 214.5. Our own arithmetic.
"""

from __future__ import annotations

import pytest

import reading
from core.job import WallResult
from core.lengths import System, Tape
from core.model import Side
from walls import US, in_12, result

TAPE = Tape.usual(System.INCH)

# Left and right edge. On the left 1.5 more on the right, on the right 1.5 x 5/12 = 0.625 less.
# Marks from the plate's low end to the downhill edge: x times 1.414214; on the right 216 - x - 1.5
# times 1.083333 (at 63.25: 151.25 x 1.083333 = 163.8542).
STUDS = """
end/left  |   0    |  68.3787  69.8787 | top/1/1 |   0
layout/1  |  15.25 |  83.6287  85.1287 | top/1/1 |  21.5668
layout/2  |  31.25 |  99.6287 101.1287 | top/1/1 |  44.1942
layout/4  |  63.25 | 110.5208 109.8958 | top/2/1 | 163.8542
layout/5  |  79.25 | 103.8542 103.2292 | top/2/1 | 146.5208
layout/6  |  95.25 |  97.1875  96.5625 | top/2/1 | 129.1875
layout/7  | 111.25 |  90.5208  89.8958 | top/2/1 | 111.8542
layout/8  | 127.25 |  83.8542  83.2292 | top/2/1 |  94.5208
layout/9  | 143.25 |  77.1875  76.5625 | top/2/1 |  77.1875
layout/10 | 159.25 |  70.5208  69.8958 | top/2/1 |  59.8542
layout/11 | 175.25 |  63.8542  63.2292 | top/2/1 |  42.5208
layout/12 | 191.25 |  57.1875  56.5625 | top/2/1 |  25.1875
layout/13 | 207.25 |  50.5208  49.8958 | top/2/1 |   7.8542
end/right | 214.5  |  47.5000  46.8750 | top/2/1 |   0
"""
ROWS = reading.rows(STUDS)
each_stud = pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])


def wall() -> WallResult:
    room = US.room(240, (60, in_12(12)), (45, in_12(5)))
    return result(room, US.wall((12, 100), (228, 100)))


@each_stud
def test_places_four_edges_and_saw(row: reading.Row) -> None:
    cause, left, lengths, plate, _ = row
    found = wall()
    stud = reading.stick(found, cause)
    assert [US.of(stud.left)] == reading.written(left)
    assert reading.edges(US, found, cause) == reading.written(lengths, lengths)
    long, short = sorted(lengths.split(), key=float, reverse=True)
    assert reading.points(US, found, cause) == reading.written(long, short, long)
    tilt = 45.0 if plate == "top/1/1" else -22.62
    assert reading.saw(stud.last_cut) == [(tilt, 0.0)]


@each_stud
def test_marks(row: reading.Row) -> None:
    cause, left, _, plate, along = row
    found = wall()
    assert [US.of(reading.on_sole(found, cause).along)] == reading.written(left)
    mark = reading.on_top(found, cause)
    low = Side.LEFT if plate == "top/1/1" else Side.RIGHT
    assert (mark.plate, mark.origin, mark.edge) == (f"B/{plate}", low, low)
    assert [US.of(mark.along)] == reading.written(along)


def test_the_stud_astride_the_break() -> None:
    # From 47.25 to 48.75, astride 48.350344. Left 68.3787 + 47.25 = 115.6287, the point 116.7290,
    # right 136.875 - 20.3125 = 116.5625. The ridge itself, at 48, has nothing to do with it.
    found = wall()
    stud = reading.stick(found, "layout/3")
    assert reading.edges(US, found, "layout/3") == reading.written(*["115.6287 116.5625"] * 2)
    assert reading.points(US, found, "layout/3") == reading.written(116.7290, 115.6287, 116.7290)
    assert reading.saw(stud.last_cut) == [(45.0, 0.0), (-22.62, 0.0)]
    # Its middle, x = 48, is under the left plate: 47.25 x 1.414214 = 66.8216.
    mark = reading.on_top(found, "layout/3")
    assert mark.plate == "B/top/1/1"
    assert [US.of(mark.along)] == reading.written(66.8216)


def test_common_differences() -> None:
    # 16 on the left; 16 x 5/12 = 6.6667 on the right, 6 11/16 on the tape.
    found = wall()
    long = {n: reading.stick(found, f"layout/{n}").long_point for n in (1, 2, 4, 5)}
    assert (TAPE.text(long[2] - long[1]), TAPE.text(long[4] - long[5])) == ('16"', '6 11/16"')


def test_the_left_plate() -> None:
    # Underside 48.350344 x 1.414214 = 68.3777, top 48 x 1.414214 = 67.8823. The low end is plumb:
    # its top lies 1.5 x 1 up the slope, so tip to tip 67.8823 + 1.5 = 69.3823. At the joint half of
    # 45 + 22.620.
    found = wall()
    plate = reading.stick(found, "top/1/1")
    assert reading.edges(US, found, "top/1/1") == reading.written(
        68.3777, 67.8823, 68.3777, 67.8823
    )
    assert reading.points(US, found, "top/1/1") == reading.written(68.3777, 67.8823, 69.3823)
    assert reading.saw((*plate.first_cut, *plate.last_cut)) == [(45.0, 0.0), (33.81, 0.0)]


def test_the_right_plate() -> None:
    # Underside (216 - 48.350344) x 1.083333 = 181.6205, top 168 x 1.083333 = 182. At its plumb low
    # end the underside juts out 1.5 x 5/12 = 0.625: 182.625 from tip to tip.
    found = wall()
    plate = reading.stick(found, "top/2/1")
    assert reading.edges(US, found, "top/2/1") == reading.written(181.6205, 182, 181.6205, 182)
    assert reading.points(US, found, "top/2/1") == reading.written(182, 181.6205, 182.625)
    assert reading.saw((*plate.first_cut, *plate.last_cut)) == [(-33.81, 0.0), (-22.62, 0.0)]


def test_where_the_roof_and_the_undersides_break() -> None:
    found = wall()
    assert found.inputs.near is not None
    assert found.frame is not None
    roof = [US.of(n) for corner in found.inputs.near.points() for n in corner]
    assert roof == reading.written(0, 72, 48, 120, 216, 50)
    under = [US.of(n) for corner in found.frame.near.points() for n in corner]
    assert under == reading.written(0, 69.8787, 48.3503, 118.2290, 216, 48.3750)


def test_nothing_else_is_in_it() -> None:
    found = wall()
    causes = [row[0] for row in ROWS]
    assert reading.uprights(found) == [*causes[:3], "layout/3", *causes[3:]]
    assert reading.lying(found) == {"sole", "top/1/1", "top/2/1"}
    assert reading.points(US, found, "sole") == reading.written(216, 216, 216)
    assert found.cautions == ()
