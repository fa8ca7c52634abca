"""Ends against surfaces out of plumb, worked by hand; millimetres.

The roof is level at 2400 over a wall 3000 long, unless a slope is named: studs stand on 38 of sole
plate under 38 of top plate, 2324 long, their tops at 2362. A surface that leans by 24 leans by 1 in
100: at 2362 it is 23.62 from its foot.
"""

from __future__ import annotations

import math
from typing import Any

import msgspec
import pytest

from core.job import WallResult
from core.lengths import Length
from core.model import (
    EndLean,
    EndStud,
    Joint,
    LineEdge,
    Opening,
    Passing,
    Purlin,
    Side,
    StandsOn,
    Wall,
)
from core.site import nails
from core.site.nails import lengths
from walls import UK, at_degrees, member, result, stations

ROOM = UK.room(6000, (2400, at_degrees(0)), None, length=8000)
SLOPE = UK.room(6000, (1400, at_degrees(45)), None, length=8000)


def wall(
    left: tuple[float, EndStud] | None = None,
    right: tuple[float, EndStud] | None = None,
    openings: tuple[Opening, ...] = (),
    start: Side = Side.LEFT,
) -> Wall:
    made = UK.wall((1000, 3000), (4000, 3000), openings=openings, start=start)
    ends = [None if at is None else EndLean(UK.length(at[0]), at[1]) for at in (left, right)]
    return msgspec.structs.replace(made, left_lean=ends[0], right_lean=ends[1])


def frame(made: WallResult) -> Any:
    assert made.frame is not None
    return made.frame


PLUMB, LEANING = EndStud.PLUMB, EndStud.LEANING


@pytest.mark.parametrize(
    ("ends", "studs", "plate"),
    [
        pytest.param((None, None), (0, 2962), (0, 3000), id="plumb"),
        # The plate reaches 23.62 past the end at its underside, 24 at its top.
        pytest.param(((24, PLUMB), None), (0, 2962), (-24, 3000), id="left out"),
        pytest.param((None, (24, PLUMB)), (0, 2962), (0, 3024), id="right out"),
        # A plumb stud is set in by all of the lean; the plate's underside begins at 23.62.
        pytest.param(((-24, PLUMB), None), (24, 2962), (23.62, 3000), id="left in"),
        pytest.param((None, (-24, PLUMB)), (0, 2938), (0, 2976.38), id="right in"),
        pytest.param(((-24, PLUMB), (24, PLUMB)), (24, 2962), (23.62, 3024), id="both"),
    ],
)
def test_a_plumb_end_stud_clears_the_surface_and_the_plate_reaches_it(
    ends: tuple[Any, Any], studs: tuple[float, float], plate: tuple[float, float]
) -> None:
    made = frame(result(ROOM, wall(*ends)))
    found = [member(made, f"end/{side.value}") for side in Side]
    assert tuple(m.left for m in found) == pytest.approx(studs)
    assert [m.long_point for m in found] == pytest.approx([2324, 2324])
    top = member(made, "top/1/1")
    assert (top.left, top.right) == pytest.approx(plate)
    sole = member(made, "sole")
    assert (sole.left, sole.right) == (0, 3000)


def test_the_plates_are_cut_along_the_surface() -> None:
    # 1 in 100 is 0.57 degrees: more than is sawn square. The plate is longer at its top by 0.38.
    top = member(frame(result(ROOM, wall((24, PLUMB)))), "top/1/1")
    assert math.degrees(top.first_cut[0].bevel) == pytest.approx(-0.573, abs=0.001)
    assert top.last_cut[0].is_square
    assert (top.edges[1] - top.edges[0], top.edges[0]) == pytest.approx((0.38, 3023.62))


def test_a_leaning_stud_stands_against_the_surface_all_the_way_up() -> None:
    made = member(frame(result(ROOM, wall((24, LEANING)))), "end/left")
    # Its outer edge is at -y/100, its inner one 38 times the secant further in.
    secant = math.hypot(1, 0.01)
    wanted = [(-0.38, 38), (38 * secant - 0.38, 38), (38 * secant - 23.62, 2362), (-23.62, 2362)]
    assert [x for corner in made.near for x in corner] == pytest.approx(
        [x for corner in wanted for x in corner]
    )
    assert made.edges == pytest.approx((2324 * secant,) * 4)
    assert math.degrees(made.lean) == pytest.approx(-0.573, abs=0.001)
    # Level above and below, its cuts differ from square by the lean, alike at both ends.
    cuts = [math.degrees(made.first_cut[0].bevel), math.degrees(made.last_cut[0].bevel)]
    assert cuts == pytest.approx([-0.573, -0.573], abs=0.001)
    # From tip to tip it is longer by 38 x 0.01.
    assert made.overall == pytest.approx(2324 * secant + 0.38, abs=0.001)


def test_under_a_slope_a_leaning_stud_meets_the_plate_and_is_cut_to_it() -> None:
    # The roof is 2400 at the left end and rises 45 degrees to the right; its plate's underside is
    # 2400 - 38 x root 2 = 2346.26 + x. Along x = -y/100: y = 2346.26 / 1.01 = 2323.03.
    made = member(frame(result(SLOPE, wall((24, LEANING)))), "end/left")
    assert made.near[3] == pytest.approx((-23.2303, 2323.03), abs=0.01)
    assert math.degrees(made.last_cut[0].bevel) == pytest.approx(45 - 0.573, abs=0.001)
    # Its right edge is longer by 38 x tan 44.427 at the top and by 38 x tan 0.573 at the foot.
    gap = made.edges[1] - made.edges[0] - 38 * math.tan(math.radians(0.573))
    assert gap == pytest.approx(38 * math.tan(math.radians(44.427)), abs=0.01)


@pytest.mark.parametrize("stud", EndStud)
@pytest.mark.parametrize("offset", [24, -24])
@pytest.mark.parametrize("start", Side)
def test_marks_are_true_from_the_end_of_each_plate(
    stud: EndStud, offset: float, start: Side
) -> None:
    made = result(ROOM, wall((offset, stud), (offset, stud), start=start))
    plate = member(frame(made), "top/1/1")
    ends = {Side.LEFT: plate.near[0][0], Side.RIGHT: plate.near[1][0]}
    for mark in made.marks:
        if mark.along_top is None:
            assert mark.along == pytest.approx(abs(mark.x - (0 if start is Side.LEFT else 3000)))
        else:
            assert mark.along == pytest.approx(abs(mark.x - ends[start]))
    found = [(m.member, m.plate) for m in made.marks if "/end/" in m.member]
    assert len(found) == 4
    # A stud of the layout keeps its place along the floor.
    assert member(frame(made), "layout/2").left == (781 if start is Side.LEFT else 2181)


def test_a_leaning_stud_is_marked_where_it_is_on_each_plate() -> None:
    made = result(ROOM, wall((24, LEANING)))
    sole, top = (m for m in made.marks if m.member == "B/end/left")
    # At the top of the sole plate it stands 0.38 past the end: it is marked at the end.
    assert (sole.edge, top.edge) == (Side.LEFT, Side.LEFT)
    assert (sole.along, top.along) == pytest.approx((0, 0), abs=1e-6)
    lined = result(SLOPE, wall((24, LEANING)), LineEdge.UPHILL)
    assert {m.edge for m in lined.marks if m.member == "B/end/left"} == {Side.RIGHT}


def test_the_layout_and_openings_keep_clear_of_an_end_stud_set_in() -> None:
    # Set in by 100 it takes up 100 to 138: a door's framing, 76 wide, may begin at 138.
    door = UK.opening("door-1", left=500, width=800, head=2000)
    (placed,) = frame(result(ROOM, wall((-100, PLUMB), openings=(door,)))).openings
    assert placed.fit.ranges[0][0] == pytest.approx(138 + 76)
    leaning = frame(result(ROOM, wall((-100, LEANING), openings=(door,)))).openings
    assert leaning[0].fit.ranges[0][0] == pytest.approx(100 + 1.05 * 38 + 76)


def test_a_measured_roof_is_what_the_surface_leans_to() -> None:
    # Measured 2500 at the left end, 24 of lean are over 2500.
    measured = msgspec.structs.replace(
        wall((24, PLUMB)), roof_points=stations(UK, (0, 2500), (3000, 2500))
    )
    (lean,) = frame(result(ROOM, measured)).leans
    assert lean.slope == pytest.approx(-24 / 2500)


@pytest.mark.parametrize(("offset", "leans"), [(24, 1), (-24, 1), (26, 0), (-26, 0)])
@pytest.mark.parametrize("stud", EndStud)
def test_where_the_roof_is_low_nothing_leans_more_than_one_in_four(
    offset: float, leans: int, stud: EndStud
) -> None:
    # Under a roof 100 high a stud is 24 long: 25 is one in four.
    low = UK.room(6000, (100, at_degrees(0)), None, length=8000)
    made = frame(result(low, wall((offset, stud))))
    assert len(made.leans) == leans


def test_a_wall_on_rafters_has_no_such_end() -> None:
    cheek = msgspec.structs.replace(wall((24, PLUMB)), stands_on=StandsOn.RAFTERS)
    high = UK.room(6000, (300, at_degrees(30)), None, length=8000)
    assert frame(result(high, cheek)).leans == ()


def test_a_leaning_stud_is_nailed_like_any_other() -> None:
    plain, leaning = (result(ROOM, wall(at)) for at in (None, (24, LEANING)))
    for joint in (Joint.STUD_TO_SOLE, Joint.STUD_TO_TOP):
        counts = [len(list(lengths(joint, r.wall, frame(r)))) for r in (plain, leaning)]
        assert counts[0] == counts[1]
    assert nails(leaning.wall, frame(leaning), ())


def test_a_purlin_that_meets_a_leaning_stud_is_told() -> None:
    purlin = Purlin(
        "purlin-1",
        UK.length(1000),
        UK.timber((50, 100)),
        UK.length(2000),
        Passing.NOTCHED,
        Length(5.0),
    )
    room = msgspec.structs.replace(ROOM, purlins=(purlin,))
    made = result(room, wall((24, LEANING)))
    assert [c.key for c in made.clashes] == ["B/end/left"]


def test_the_mirror_image_is_the_same_wall() -> None:
    left = frame(result(ROOM, wall((24, LEANING))))
    right = frame(result(ROOM, wall(None, (24, LEANING))))
    first, last = member(left, "end/left"), member(right, "end/right")
    assert first.edges == pytest.approx(last.edges)
    assert first.lean == pytest.approx(-last.lean)
    assert [x for x, _ in first.near] == pytest.approx([3000 - x for x, _ in _turned(last.near)])


def _turned(outline: Any) -> Any:
    """The corners in the order they have in a mirror."""
    a, b, c, d = outline
    return b, a, d, c
