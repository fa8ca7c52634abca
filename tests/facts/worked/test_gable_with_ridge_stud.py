"""A gable wall at 8 in 12 with a stud under its ridge, every number worked by hand; inches.

The room is 160 wide, 40 high at both eaves: R = 40 + 2 x / 3 to the ridge over x = 80, where it is
40 + 53.3333 = 93.3333, and 40 + 2 (160 - x) / 3 beyond. The wall runs from eave to eave.
    Secant: root of 1 + 4/9 = 1.201850. Angle: arctan 2/3 = 33.690.
    A plate stands 1.5 x 1.201850 = 1.802776 high; both come down alike, so their undersides meet
    over x = 80 too.
    A stud's edge: R - 1.802776 - 1.5 = R - 3.302776.
Centres at 16 n: the fifth is over 80, so the stud from 79.25 to 80.75 stands astride the ridge.
The tenth, 159.25, would stand in the end stud and is left out. Our own arithmetic.
"""

from __future__ import annotations

import pytest

import reading
from core.job import WallResult
from core.lengths import System, Tape
from core.model import LineEdge, Side
from walls import US, in_12, result

TAPE = Tape.usual(System.INCH)

# Lengths at the left and at the right edge: at 15.25 R = 50.1667, less 3.3028: 46.8639; 1.5 x 2/3 =
# 1 more on the uphill edge. On the right the same backwards: 143.25 is 16.75 from the right end.
# Marks on the slope run from its low end to the downhill edge: times 1.201850, on the right from
# the right end to the right edge (at 95.25: 160 - 96.75 = 63.25).
STUDS = """
end/left  |   0    | 36.6972 37.6972 | 36 11/16 | 37 11/16 | top/1/1 |  0
layout/1  |  15.25 | 46.8639 47.8639 | 46 7/8   | 47 7/8   | top/1/1 | 18.3282
layout/2  |  31.25 | 57.5306 58.5306 | 57 1/2   | 58 1/2   | top/1/1 | 37.5578
layout/3  |  47.25 | 68.1972 69.1972 | 68 3/16  | 69 3/16  | top/1/1 | 56.7874
layout/4  |  63.25 | 78.8639 79.8639 | 78 7/8   | 79 7/8   | top/1/1 | 76.0170
layout/6  |  95.25 | 79.8639 78.8639 | 78 7/8   | 79 7/8   | top/2/1 | 76.0170
layout/7  | 111.25 | 69.1972 68.1972 | 68 3/16  | 69 3/16  | top/2/1 | 56.7874
layout/8  | 127.25 | 58.5306 57.5306 | 57 1/2   | 58 1/2   | top/2/1 | 37.5578
layout/9  | 143.25 | 47.8639 46.8639 | 46 7/8   | 47 7/8   | top/2/1 | 18.3282
end/right | 158.5  | 37.6972 36.6972 | 36 11/16 | 37 11/16 | top/2/1 |  0
"""
ROWS = reading.rows(STUDS)
each_stud = pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])


def wall(edge: LineEdge = LineEdge.NEAR) -> WallResult:
    slope = (40, in_12(8))
    return result(US.room(160, slope, slope), US.wall((0, 100), (160, 100)), edge)


@each_stud
def test_places_and_four_edges(row: reading.Row) -> None:
    found = wall()
    assert [US.of(reading.stick(found, row[0]).left)] == reading.written(row[1])
    assert reading.edges(US, found, row[0]) == reading.written(row[2], row[2])


@each_stud
def test_long_and_short_point_and_the_saw(row: reading.Row) -> None:
    cause, left, _, short, long, *_ = row
    stud = reading.stick(wall(), cause)
    assert [TAPE.text(x) for x in (stud.long_point, stud.short_point)] == [f'{long}"', f'{short}"']
    tilt, side = (33.69, "right") if float(left) < 80 else (-33.69, "left")
    assert reading.saw(stud.last_cut) == [(tilt, 0.0)]
    assert stud.last_cut[0].face_up == side


@each_stud
def test_marks(row: reading.Row) -> None:
    cause, left, *_, plate, along = row
    found = wall()
    assert [US.of(reading.on_sole(found, cause).along)] == reading.written(left)
    mark = reading.on_top(found, cause)
    downhill = Side.LEFT if plate == "top/1/1" else Side.RIGHT
    assert (mark.plate, mark.origin, mark.edge) == (f"B/{plate}", downhill, downhill)
    assert [US.of(mark.along)] == reading.written(along)
    # Lined on the uphill edge it is 1.5 x 1.201850 = 1.8028 further up.
    uphill = reading.on_top(wall(LineEdge.UPHILL), cause)
    assert (uphill.edge, uphill.x_side) == (downhill.other, downhill)
    assert [US.of(uphill.along - mark.along)] == reading.written(1.8028)


def test_the_ridge_stud() -> None:
    # Its shoulders are at 79.25 and 80.75, R = 92.8333: 89.5306 long there. Its point in the
    # middle: 93.3333 - 3.3028 = 90.0306, half of it (0.5) up either way.
    found = wall()
    stud = reading.stick(found, "layout/5")
    assert reading.edges(US, found, "layout/5") == reading.written(*[89.5306] * 4)
    assert reading.points(US, found, "layout/5") == reading.written(90.0306, 89.5306, 90.0306)
    assert reading.saw(stud.last_cut) == [(33.69, 0.0), (-33.69, 0.0)]
    # On face A: feet at 1.5, shoulders at 91.0306, the point at 91.5306 over x = 80.
    corners = [US.of(n) for corner in stud.near for n in corner]
    shoulders = (80.75, 91.0306, 80, 91.5306, 79.25, 91.0306)
    assert corners == reading.written(79.25, 1.5, 80.75, 1.5, *shoulders)


def test_the_ridge_stud_is_marked_at_both_plates_foot() -> None:
    # On the sole plate at 79.25; on the left slope at 79.25 x 1.201850 = 95.2466.
    found = wall()
    assert [US.of(reading.on_sole(found, "layout/5").along)] == reading.written(79.25)
    mark = reading.on_top(found, "layout/5")
    assert (mark.plate, mark.edge) == ("B/top/1/1", Side.LEFT)
    assert [US.of(mark.along)] == reading.written(95.2466)


def test_the_plates() -> None:
    # Each 80 x 1.201850 = 96.1480 along both faces. Half of the turn at the ridge, 2 x 33.690, is
    # the plumb cut again; so both ends are plumb, and tip to tip is 1.5 x 2/3 = 1 more.
    found = wall()
    for cause, tilt in (("top/1/1", 33.69), ("top/2/1", -33.69)):
        plate = reading.stick(found, cause)
        assert reading.edges(US, found, cause) == reading.written(*[96.1480] * 4)
        assert reading.points(US, found, cause) == reading.written(96.1480, 96.1480, 97.1480)
        assert reading.saw((*plate.first_cut, *plate.last_cut)) == [(tilt, 0.0)] * 2
    assert reading.points(US, found, "sole") == reading.written(160, 160, 160)


def test_the_undersides_meet_under_the_ridge() -> None:
    # 93.3333 - 1.8028 = 91.5306 over x = 80.
    frame = wall().frame
    assert frame is not None
    low, peak, end = frame.near.points()
    corners = [US.of(n) for corner in (low, peak, end) for n in corner]
    assert corners == reading.written(0, 38.1972, 80, 91.5306, 160, 38.1972)


def test_nothing_else_is_in_it() -> None:
    found = wall()
    causes = [row[0] for row in ROWS]
    assert reading.uprights(found) == [*causes[:5], "layout/5", *causes[5:]]
    assert reading.lying(found) == {"sole", "top/1/1", "top/2/1"}
    assert found.cautions == ()
