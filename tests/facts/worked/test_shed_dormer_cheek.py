"""The cheek of a shed dormer, standing on a rafter with no plates, every number by hand; inches.

The room is 264 wide under 10 in 12 from 14 at both eaves. On the right, from 60 to 180 along, a
shed dormer falls outward at 3 in 12 to 97 over its front's inner face, at u = 240; there the main
roof is at 14 + 24 x 10/12 = 34. The cheek at v = 180 is drawn from the front, x = 0, up the roof:
    main roof 34 + 10 x / 12, dormer 97 + 3 x / 12; they meet where 63 = 7 x / 12, x = 108.
    A stud's edge: 63 - 7 x / 12; the edge up the roof is 1.5 x 7/12 = 0.875 shorter.
    Angles: arctan 10/12 = 39.806 at the foot, arctan 3/12 = 14.036 at the top.
    Along the rafter one inch of floor is root 244 / 12 = 1.301708.
Its studs lie against the rafter's side and reach down to its underside. Our own arithmetic.
"""

from __future__ import annotations

import math
from itertools import pairwise

import msgspec
import pytest

import reading
from core.job import WallResult
from core.lengths import System, Tape
from core.model import Dormer, DormerKind, LineEdge, Side, StandsOn, TopPlate
from walls import US, in_12, result

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

# Left and right edge; on the middle, as published tables give it (53 2/3, then 9 1/3 less each);
# mark up the rafter to the left, lower edge: x times 1.301708, and to the upper one 1.9526 more.
STUDS = """
end/left |  0    | 63.0000 62.1250 | 62 9/16  |   0      |   1.9526
layout/1 | 15.25 | 54.1042 53.2292 | 53 11/16 |  19.8511 |  21.8036
layout/2 | 31.25 | 44.7708 43.8958 | 44 5/16  |  40.6784 |  42.6309
layout/3 | 47.25 | 35.4375 34.5625 | 35       |  61.5057 |  63.4583
layout/4 | 63.25 | 26.1042 25.2292 | 25 11/16 |  82.3330 |  84.2856
layout/5 | 79.25 | 16.7708 15.8958 | 16 5/16  | 103.1604 | 105.1129
layout/6 | 95.25 |  7.4375  6.5625 | 7        | 123.9877 | 125.9403
"""
ROWS = reading.rows(STUDS)
each_stud = pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])


def cheek(
    stands_on: StandsOn = StandsOn.BESIDE_RAFTERS, edge: LineEdge = LineEdge.NEAR
) -> WallResult:
    """Seen from outside, from the front: the timber lies on the far side, toward lower numbers."""
    wall = US.wall((240, 180), (132, 180))
    plates = TopPlate(wall.top_plate.timber, 0)
    stated = msgspec.structs.replace(wall, top_plate=plates, stands_on=stands_on)
    return result(ROOM, stated, edge)


@each_stud
def test_places_and_four_edges(row: reading.Row) -> None:
    cause, left, lengths, middle, *_ = row
    found = cheek()
    stud = reading.stick(found, cause)
    assert [US.of(stud.left)] == reading.written(left)
    assert reading.edges(US, found, cause) == reading.written(lengths, lengths)
    assert TAPE.text(sum(stud.edges) / 4) == f'{middle}"'


@each_stud
def test_long_and_short_point_and_overall(row: reading.Row) -> None:
    # From tip to tip a stud goes from the lower edge's foot to the upper edge's top: the lower
    # edge and 1.5 x 3/12 = 0.375.
    long, short = row[2].split()
    assert reading.points(US, cheek(), row[0]) == reading.written(long, short, float(long) + 0.375)


@each_stud
def test_cuts_are_the_main_roof_s_below_and_the_dormer_s_above(row: reading.Row) -> None:
    # Seen from face A the front is on the left, so both roofs rise to the right. The long point of
    # the foot is at the left, that of the top at the right.
    stud = reading.stick(cheek(), row[0])
    assert reading.saw((*stud.first_cut, *stud.last_cut)) == [(39.81, 0.0), (14.04, 0.0)]
    assert [c.face_up for c in (*stud.first_cut, *stud.last_cut)] == ["left", "right"]


@each_stud
def test_where_it_stands(row: reading.Row) -> None:
    # Feet on 34 + 10 x / 12, tops under 97 + 3 x / 12.
    left = float(row[1])
    corners = [US.of(y) for _, y in reading.stick(cheek(), row[0]).near]
    right = left + 1.5
    feet = [34 + left * 10 / 12, 34 + right * 10 / 12]
    assert corners == reading.written(*feet, 97 + right / 4, 97 + left / 4)


@each_stud
def test_marks_run_up_the_rafter(row: reading.Row) -> None:
    cause, left, *_, lower, upper = row
    for edge, along, level in (
        (LineEdge.NEAR, lower, float(left)),
        (LineEdge.UPHILL, upper, float(left) + 1.5),
    ):
        (mark,) = (m for m in cheek(edge=edge).marks if m.member == f"B/{cause}")
        assert (mark.plate, mark.origin) == ("B/rafters", Side.LEFT)
        assert [US.of(mark.along), US.of(mark.along_sole)] == reading.written(along, level)


def test_common_difference() -> None:
    # 16 x (10 - 3) / 12 = 9 1/3; along the rafter 16 x 1.301708 = 20.8273.
    found = cheek()
    studs = [reading.stick(found, f"layout/{n}") for n in range(1, 7)]
    steps = [US.of(a.long_point - b.long_point) for a, b in pairwise(studs)]
    assert steps == reading.written(*[9.3333] * 5)
    marks = [US.of(m.along) for m in found.marks if "/layout/" in m.member]
    assert [b - a for a, b in pairwise(marks)] == reading.written(*[20.8273] * 5)


def test_it_has_no_plates_and_ends_in_a_point() -> None:
    # At 108 the roofs meet: the end stud there and the seventh, 111.25, are not wanted.
    found = cheek()
    assert reading.uprights(found) == [row[0] for row in ROWS]
    assert reading.lying(found) == set()
    assert found.cautions == ()


def test_on_top_of_the_rafters_they_are_shorter_by_the_rafter_s_plumb_depth() -> None:
    # Rafters 3 1/2 deep here: 3.5 / cosine 0.768221 = 4.5560 plumb. 54.1042 - 4.5560 = 49.5482.
    found = cheek(StandsOn.RAFTERS)
    assert reading.edges(US, found, "layout/1") == reading.written(*[49.5482, 48.6732] * 2)
    # A seventh of 7.4375 - 4.556 = 2.8815 is still longer than thick.
    assert math.isclose(US.of(reading.stick(found, "layout/6").long_point), 2.8815, abs_tol=1e-4)


@pytest.mark.parametrize("left", [-0.25, 0, 106.75])
def test_an_added_stud_that_is_not_in_the_cheek_is_told(left: float) -> None:
    # The cheek is 108 long: from 106.75 on a stud 1.5 thick is past its end. At 0 the end stud
    # stands, which comes first.
    wall = US.wall((240, 180), (132, 180), added=(("extra-1", left),))
    plates = TopPlate(wall.top_plate.timber, 0)
    stated = msgspec.structs.replace(wall, top_plate=plates, stands_on=StandsOn.BESIDE_RAFTERS)
    frame = result(ROOM, stated).frame
    assert frame is not None
    assert frame.no_room == ("B/extra-1",)
    assert "B/end/left" in [m.key for m in frame.members]
    assert "B/extra-1" not in [m.key for m in frame.members]
