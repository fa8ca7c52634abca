"""A partition cut to a roof line measured on site, worked by hand: a sag of 5/8 in. in the rafters.

The garage loft's partition: 9 in 12, R = 48 at its left end, ridge stated and measured 111 over 84,
right slope as stated. Half way up the left slope the line is stated 79 1/2 and measured 78 7/8.
    lower half:  30.875 / 42 = 0.735119, secant 1.241129, a plate 1 1/2 thick stands 1.861693 high
    upper half:  32.125 / 42 = 0.764881, secant 1.258985, plate 1.888477
Slopes of 36.320 and 37.412 degrees: one plate bends through the 1.09 between them. Its underside
bends where 48 + 0.735119 x - 1.861693 = 46.75 + 0.764881 x - 1.888477, so at x = 42.9000, and meets
the right plate's, 172.125 - 0.75 x, at x = 84.0089. All figures are our own arithmetic.
"""

from __future__ import annotations

import msgspec
import pytest
from shapely import LineString, Point

from core.framing import Role
from core.job import WallResult
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


@pytest.mark.parametrize(
    ("cause", "left", "right"),
    [
        # 48 - 1.861693 - 1.5 = 44.638307 at the left end; 1.5 x 0.735119 = 1.102679 more.
        pytest.param("end/left", 44.6383, 45.7410, id="end stud"),
        # 44.638307 + 31.25 x 0.735119 = 67.610778: 9/16 shorter than as stated, 68 1/16.
        pytest.param("layout/2", 67.6108, 68.7135, id="under the lower half"),
        # 46.75 + 47.25 x 0.764881 - 1.888477 - 1.5 = 79.502148; 1.5 x 0.764881 = 1.147322 more.
        pytest.param("layout/3", 79.5021, 80.6495, id="under the upper half"),
        # The right slope is as stated: 99 3/16 and 98 1/16.
        pytest.param("layout/6", 99.1875, 98.0625, id="right of the ridge"),
    ],
)
def test_studs_are_cut_to_the_measured_line(cause: str, left: float, right: float) -> None:
    found = partition().frame
    assert found is not None
    assert [inches(e) for e in member(found, cause).edges] == [left, right] * 2


@pytest.mark.parametrize(
    ("cause", "along"),
    [
        # 31.25 x 1.241129; 42.9000 x 1.241129 + 4.3500 x 1.258985 = 53.2444 + 5.4766.
        pytest.param("layout/2", 38.7853, id="lower half"),
        pytest.param("layout/3", 58.7210, id="past the bend"),
    ],
)
def test_marks_run_along_the_bent_plate(cause: str, along: float) -> None:
    (mark,) = [m for m in partition().marks if m.member == f"B/{cause}" and "/top/" in m.plate]
    assert US.of(mark.along) == pytest.approx(along, abs=1e-3)
    assert mark.plate == "B/top/1/1"


def test_one_plate_bends_along_the_sag() -> None:
    # 53.2444 + (84.0089 - 42.9000) x 1.258985 = 104.9999 along its underside.
    found = partition().frame
    assert found is not None
    plates = [m for m in found.members if m.role is Role.TOP_PLATE]
    assert [m.key for m in plates] == ["B/top/1/1", "B/top/2/1"]
    assert US.of(plates[0].edges[0]) == pytest.approx(104.9999, abs=1e-3)


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
