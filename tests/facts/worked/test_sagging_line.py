"""A partition cut to a roof line measured on site, worked by hand: a sag of 5/8 in. in the rafters.

The garage loft's partition: 9 in 12, R = 48 at its left end, ridge stated and measured 111 over 84,
right slope as stated. Half way up the left slope the line is stated 79 1/2 and measured 78 7/8.
    lower half:  30.875 / 42 = 0.735119, secant 1.241129, a plate 1 1/2 thick stands 1.861693 high
    upper half:  32.125 / 42 = 0.764881, secant 1.258985, plate 1.888477
    right half: as stated, 174 - 0.75 x, plate 1.875
Slopes of 36.320 and 37.412 degrees: one plate bends through the 1.09 between them. Its underside
bends where 48 + 0.735119 x - 1.861693 = 46.75 + 0.764881 x - 1.888477, so at x = 42.9000, and meets
the right plate's, 172.125 - 0.75 x, at x = 84.0089. All figures are our own arithmetic.
"""

from __future__ import annotations

import msgspec
import pytest
from shapely import LineString, Point

import reading
from core.framing import Role
from core.job import WallResult, work_out
from core.lengths import System, Tape
from core.model import Habits, PlateRules, Project, SiteRecord
from walls import US, in_12, member, result, stations

SLOPE = (12.0, in_12(9))
ROOM = US.room(264, SLOPE, SLOPE)
POINTS = stations(US, (0, 48), (42, 78.875), (84, 111), (168, 48))
DOOR = US.opening("door-1", 56, 34, 82.5)


def partition(**changes: object) -> WallResult:
    wall = US.wall((48, 144), (216, 144), openings=(DOOR,))
    return result(ROOM, msgspec.structs.replace(wall, **{"roof_points": POINTS, **changes}))


def inches(mm: float) -> float:
    return round(US.of(mm), 4)


# Lengths at the left and right edge; mark along the slope, from its low end to the downhill edge.
# To x = 42.9: 48 + 0.735119 x - 1.861693 - 1.5 = 44.638307 + 0.735119 x; marks 1.241129 x.
# To the ridge: 46.75 + 0.764881 x - 1.888477 - 1.5 = 43.361523 + 0.764881 x; marks 42.9000 x
# 1.241129 = 53.2444 and 1.258985 for each inch past 42.9. Cripples stand on the header, 84 up
# instead of 1.5: 82.5 shorter.
# Right: 174 - 0.75 x - 1.875 - 1.5 = 170.625 - 0.75 x; marks (168 - x - 1.5) x 1.25.
STUDS = """
end/left          |   0    |  44.6383  45.7410 | top/1/1 |  0
layout/1          |  15.25 |  55.8489  56.9516 | top/1/1 | 18.9272
layout/2          |  31.25 |  67.6108  68.7135 | top/1/1 | 38.7853
layout/3          |  47.25 |  79.5021  80.6495 | top/1/1 | 58.7210
door-1/king/left  |  53    |  83.9002  85.0475 | top/1/1 | 65.9602
door-1/above/4    |  63.25 |   9.2402  10.3876 | top/1/1 | 78.8648
door-1/above/5    |  79.25 |  21.4783  22.6257 | top/1/1 | 99.0085
door-1/king/right |  91.5  | 102.0000 100.8750 | top/2/1 | 93.7500
layout/6          |  95.25 |  99.1875  98.0625 | top/2/1 | 89.0625
layout/7          | 111.25 |  87.1875  86.0625 | top/2/1 | 69.0625
layout/8          | 127.25 |  75.1875  74.0625 | top/2/1 | 49.0625
layout/9          | 143.25 |  63.1875  62.0625 | top/2/1 | 29.0625
layout/10         | 159.25 |  51.1875  50.0625 | top/2/1 |  9.0625
end/right         | 166.5  |  45.7500  44.6250 | top/2/1 |  0
"""
ROWS = reading.rows(STUDS)


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])
def test_studs_are_cut_to_the_measured_line(row: reading.Row) -> None:
    cause, left, lengths, *_ = row
    found = partition()
    stud = reading.stick(found, cause)
    assert [US.of(stud.left)] == reading.written(left)
    assert reading.edges(US, found, cause) == reading.written(lengths, lengths)
    x = float(left)
    tilt = 36.32 if x < 42.9 else 37.41 if x < 84 else -36.87
    assert reading.saw(stud.last_cut) == [(tilt, 0.0)]


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])
def test_marks_run_along_the_bent_plate(row: reading.Row) -> None:
    cause, *_, plate, along = row
    mark = reading.on_top(partition(), cause)
    assert mark.plate == f"B/{plate}"
    assert [US.of(mark.along)] == reading.written(along)


def test_nothing_else_is_in_it() -> None:
    found = partition()
    trimmers = {"door-1/trimmer/left", "door-1/trimmer/right"}
    assert set(reading.uprights(found)) == {row[0] for row in ROWS} | trimmers
    assert reading.lying(found) == {"sole", "top/1/1", "top/2/1", "door-1/header/1"}


def test_one_plate_bends_along_the_sag() -> None:
    # 53.2444 + (84.0089 - 42.9000) x 1.258985 = 104.9999 along its underside, and along its top
    # 42 x 1.241129 + 42 x 1.258985 = 105.0048. Plumb at its low end; at the ridge half of 37.412 +
    # 36.870. The other one's underside is (168 - 84.0089) x 1.25 = 104.9889, its top 105.
    found = partition()
    bent, other = reading.stick(found, "top/1/1"), reading.stick(found, "top/2/1")
    assert reading.edges(US, found, "top/1/1") == reading.written(*[104.9999, 105.0048] * 2)
    assert reading.saw((*bent.first_cut, *bent.last_cut)) == [(36.32, 0.0), (37.14, 0.0)]
    # At the ridge its top juts out past the underside by 1.5 x tangent of 37.141 = 1.1361.
    assert reading.points(US, found, "top/1/1") == reading.written(105.0048, 104.9999, 106.1360)
    assert reading.edges(US, found, "top/2/1") == reading.written(*[104.9889, 105] * 2)
    assert reading.saw((*other.first_cut, *other.last_cut)) == [(-37.14, 0.0), (-36.87, 0.0)]


def test_every_top_lies_a_plate_s_thickness_under_the_measured_line() -> None:
    """Independent of the core's slopes and secants: distances by another library."""
    corners = [(p.at.mm, p.height.mm) for p in POINTS]
    (_, low), (_, high) = corners[0], corners[-1]
    # Beyond the ends the slopes go on: 735.12 and 750 mm in a metre.
    ends = [(-1000.0, low - 735.119), (corners[-1][0] + 1000.0, high - 750.0)]
    measured = LineString([ends[0], *corners, ends[1]])
    found = partition().frame
    assert found is not None
    thick = US.length(1.5).mm
    for stud in (m for m in found.members if m.role in (Role.STUD, Role.KING)):
        for corner in stud.near[2:]:
            assert thick - 1e-3 <= measured.distance(Point(corner)) <= thick * 1.001


def test_a_floor_that_falls_an_inch() -> None:
    # 1 / 168 = 0.0059524; the sole plate stands 1.500027 high on it. Under the stated roof layout/2
    # is 71.4375 - 1.875 - 1.500027 + 0.186012 = 68.2485 at its left edge, and at its right one
    # 72.5625 - 3.375027 + 0.194940 = 69.3824. The trimmers are 82.5 - 1.500027 + 0.333333 at x = 56
    # and 82.5 - 1.500027 + 0.535714 at x = 90; head and header stay level.
    found = partition(roof_points=(), floor_points=stations(US, (0, 0), (168, -1))).frame
    assert found is not None
    stud = member(found, "layout/2")
    assert [inches(e) for e in stud.edges] == [68.2485, 69.3824] * 2
    assert all(facet.is_square for facet in stud.first_cut)
    left, right = (member(found, f"door-1/trimmer/{side}") for side in ("left", "right"))
    assert inches(left.edges[1]) == 81.3333
    assert inches(right.edges[0]) == 81.5357
    header = member(found, "door-1/header/1")
    assert (inches(header.bottom), inches(header.edges[0])) == (82.5, 37.0)
    sole = member(found, "sole")
    assert [inches(y) for _, y in sole.near] == [0.0, -1.0, 0.5, 1.5]
    # Plumb at both ends: it falls by arctan 0.0059524 = 0.341. 168 x 1.0000177 = 168.0030 long.
    assert reading.saw((*sole.first_cut, *sole.last_cut)) == [(-0.34, 0.0)] * 2
    assert [inches(e) for e in sole.edges] == [168.0030] * 4


def test_a_bent_plate_in_pieces() -> None:
    # Without the door, of stock of 6 ft. Over layout/4, x = 64, 53.2444 + 21.1 x 1.258985 = 79.8090
    # would be too long; over layout/3, x = 48, it is 53.2444 + 5.1000 x 1.258985 = 59.6652, and the
    # rest is 104.9999 - 59.6652 = 45.3347.
    rules = PlateRules(longest=US.length(72))
    habits = Habits(Tape.usual(System.INCH), plates=rules)
    wall = msgspec.structs.replace(US.wall((48, 144), (216, 144)), roof_points=POINTS)
    project = Project("sag", System.INCH, ROOM, (wall,), habits)
    frame = work_out(project, SiteRecord()).walls[0].frame
    assert frame is not None
    pieces = [m for m in frame.members if m.key.startswith("B/top/1/1")]
    assert [m.key for m in pieces] == ["B/top/1/1", "B/top/1/1/layout/3"]
    assert [inches(m.edges[0]) for m in pieces] == [59.6652, 45.3347]
