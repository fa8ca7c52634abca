"""A metric gable at 35 degrees, studs at 400, a door under the ridge, every number by hand; mm.

The room is 4800 wide, both eaves 900 high: R = 900 + 0.700208 x to the ridge over x = 2400, where
it is 900 + 1680.4981 = 2580.4981, and the same backwards beyond. Studs 38 x 89, plates 38.
    Tangent 0.7002075, secant 1.2207746. A plate stands 38 x 1.2207746 = 46.3894 high.
    A stud's edge: 900 + 0.7002075 x - 46.3894 - 38 = 815.6106 + 0.7002075 x; the uphill edge is
    38 x 0.7002075 = 26.6079 longer.
Centres at 400 n, so left edges at 400 n - 19; the twelfth, 4781, would stand in the end stud.
The door's rough opening is 838 wide, 1981 to 2819, its head 2035 up. Trimmers stand from 1943 and
from 2819, kings from 1905 and from 2857. A flat header 838 + 2 x 38 = 914 long lies on the
trimmers; its top is 2035 + 38 = 2073 up, so cripples are R - 46.3894 - 2073. Our own arithmetic.
"""

from __future__ import annotations

import pytest

import reading
from core.job import WallResult
from core.lengths import System, Tape
from core.model import Side
from walls import UK, at_degrees, result

TAPE = Tape.usual(System.METRIC)

# Lengths at the left and at the right edge, and as read on the tape; marks on the plate from its
# low end to the downhill edge, x times 1.2207746, on the right 4800 - x - 38 times that.
STUDS = """
end/left          |    0 |  815.6106  842.2185 |  816 |  842 | top/1/1 |    0
layout/1          |  381 | 1082.3896 1108.9975 | 1082 | 1109 | top/1/1 |  465.1151
layout/2          |  781 | 1362.4727 1389.0805 | 1362 | 1389 | top/1/1 |  953.4250
layout/3          | 1181 | 1642.5557 1669.1636 | 1643 | 1669 | top/1/1 | 1441.7348
layout/4          | 1581 | 1922.6387 1949.2466 | 1923 | 1949 | top/1/1 | 1930.0446
door-1/king/left  | 1905 | 2149.5059 2176.1138 | 2150 | 2176 | top/1/1 | 2325.5756
door-1/above/5    | 1981 |  167.7217  194.3296 |  168 |  194 | top/1/1 | 2418.3545
door-1/above/7    | 2781 |  194.3296  167.7217 |  168 |  194 | top/2/1 | 2418.3545
door-1/king/right | 2857 | 2176.1138 2149.5059 | 2150 | 2176 | top/2/1 | 2325.5756
layout/8          | 3181 | 1949.2466 1922.6387 | 1923 | 1949 | top/2/1 | 1930.0446
layout/9          | 3581 | 1669.1636 1642.5557 | 1643 | 1669 | top/2/1 | 1441.7348
layout/10         | 3981 | 1389.0805 1362.4727 | 1362 | 1389 | top/2/1 |  953.4250
layout/11         | 4381 | 1108.9975 1082.3896 | 1082 | 1109 | top/2/1 |  465.1151
end/right         | 4762 |  842.2185  815.6106 |  816 |  842 | top/2/1 |    0
"""
ROWS = reading.rows(STUDS)
each_stud = pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])


def wall() -> WallResult:
    slope = (900, at_degrees(35))
    door = UK.opening("door-1", left=1981, width=838, head=2035)
    return result(UK.room(4800, slope, slope), UK.wall((0, 2000), (4800, 2000), openings=(door,)))


@each_stud
def test_places_four_edges_and_saw(row: reading.Row) -> None:
    cause, left, lengths, short, long, plate, _ = row
    found = wall()
    stud = reading.stick(found, cause)
    assert [stud.left] == reading.written(left)
    assert reading.edges(UK, found, cause) == reading.written(lengths, lengths)
    assert [TAPE.text(x) for x in (stud.short_point, stud.long_point)] == [short, long]
    tilt, side = (35.0, "right") if plate == "top/1/1" else (-35.0, "left")
    assert reading.saw(stud.last_cut) == [(tilt, 0.0)]
    assert stud.last_cut[0].face_up == side


@each_stud
def test_marks_on_the_slope(row: reading.Row) -> None:
    cause, *_, plate, along = row
    mark = reading.on_top(wall(), cause)
    low = Side.LEFT if plate == "top/1/1" else Side.RIGHT
    assert (mark.plate, mark.origin, mark.edge) == (f"B/{plate}", low, low)
    assert [mark.along] == reading.written(along)


def test_marks_on_the_sole_plate() -> None:
    # Left edges from the left end. Cripples stand on the header and have no mark on the sole.
    found = wall()
    marks = [f"{TAPE.text(m.along)} {m.letter}" for m in found.marks if m.plate == "B/sole"]
    studs = ["0 X", "381 X", "781 X", "1181 X", "1581 X"]
    door = ["1905 K", "1943 T", "2819 T", "2857 K"]
    assert marks == [*studs, *door, "3181 X", "3581 X", "3981 X", "4381 X", "4762 X"]


def test_the_cripple_under_the_ridge() -> None:
    # Centred on 2400: shoulders at 2381 and 2419, R = 900 + 2381 x 0.7002075 = 2567.1942:
    # 2567.1942 - 46.3894 - 2073 = 447.8047; its point 19 x 0.7002075 = 13.3039 higher, 461.1087.
    found = wall()
    cripple = reading.stick(found, "door-1/above/6")
    assert reading.edges(UK, found, "door-1/above/6") == reading.written(*[447.8047] * 4)
    assert reading.points(UK, found, "door-1/above/6") == reading.written(
        461.1087, 447.8047, 461.1087
    )
    assert reading.saw(cripple.last_cut) == [(35.0, 0.0), (-35.0, 0.0)]
    # Half under each plate: marked on the one where the layout starts, 2381 x 1.2207746.
    mark = reading.on_top(found, "door-1/above/6")
    assert (mark.plate, mark.edge) == ("B/top/1/1", Side.LEFT)
    assert [mark.along] == reading.written(2906.6643)


def test_marks_on_the_header() -> None:
    # The header starts at 1943: 1981 - 1943 = 38, 2381 - 1943 = 438, 2781 - 1943 = 838.
    found = wall()
    marks = [m for m in found.marks if m.plate == "B/door-1/header/1"]
    assert [TAPE.text(m.along) for m in marks] == ["38", "438", "838"]


def test_door() -> None:
    # Trimmers 2035 - 38 = 1997, square.
    found = wall()
    for side, left in (("left", 1943), ("right", 2819)):
        trimmer = reading.stick(found, f"door-1/trimmer/{side}")
        assert [trimmer.left, trimmer.bottom] == reading.written(left, 38)
        assert reading.points(UK, found, f"door-1/trimmer/{side}") == reading.written(*[1997] * 3)
    header = reading.stick(found, "door-1/header/1")
    assert [header.left, header.right] == reading.written(1943, 2857)
    assert [header.bottom, header.top, header.overall] == reading.written(2035, 2073, 914)


def test_where_the_door_fits() -> None:
    # The plate's underside is 2073 up at (2073 - 900 + 46.3894) / 0.7002075 = 1741.4686; the
    # header starts there at the earliest, so the opening 38 further, 1779.4686. On the right it
    # ends 4800 - 1779.4686 at the latest: it starts 838 before that, at 2182.5314.
    frame = wall().frame
    assert frame is not None
    (stretch,) = frame.openings[0].fit.ranges
    assert list(stretch) == reading.written(1779.4686, 2182.5314)


def test_the_plates() -> None:
    # Each 2400 x 1.2207746 = 2929.8590 along both faces, plumb at both ends, since half of the turn
    # at the ridge is the plumb cut; tip to tip 38 x 0.7002075 = 26.6079 more.
    found = wall()
    for cause, tilt in (("top/1/1", 35.0), ("top/2/1", -35.0)):
        plate = reading.stick(found, cause)
        assert reading.edges(UK, found, cause) == reading.written(*[2929.8590] * 4)
        assert reading.points(UK, found, cause) == reading.written(2929.8590, 2929.8590, 2956.4669)
        assert reading.saw((*plate.first_cut, *plate.last_cut)) == [(tilt, 0.0)] * 2
    assert reading.points(UK, found, "sole") == reading.written(4800, 4800, 4800)


def test_steps() -> None:
    # 400 x 0.7002075 = 280.0830 from stud to stud, 400 x 1.2207746 = 488.3098 along the plate.
    found = wall()
    first, second = (f"layout/{n}" for n in (1, 2))
    step = reading.stick(found, second).long_point - reading.stick(found, first).long_point
    along = reading.on_top(found, second).along - reading.on_top(found, first).along
    assert [step, along] == reading.written(280.0830, 488.3098)


def test_nothing_else_is_in_it() -> None:
    found = wall()
    door = {"door-1/trimmer/left", "door-1/trimmer/right", "door-1/above/6"}
    assert set(reading.uprights(found)) == {row[0] for row in ROWS} | door
    assert reading.lying(found) == {"sole", "top/1/1", "top/2/1", "door-1/header/1"}
    assert found.cautions == ()
