"""The terrace loft, worked by hand: metric, 40 degrees, collars at 2300, partition M1.

6400 clear between the points where the rafters' underside meets the deck; tangent 0.83910, cosine
0.76604. The collars' underside is flat from 2741.0 to 3659.0. M1 runs from 1150 to 5250, so 4100
long. Studs 38 x 89 at 400, centres at 400 n from the left.
A plate stands 38 / 0.76604 = 49.6 high under the slope, so a stud is R - 49.6 - 38 long there and
2300 - 38 - 38 = 2224 under the collars; its edges differ by 38 x 0.83910 = 31.9.
The purlins, 75 x 175 set plumb with their undersides at 1052, take up 1462.5 to 1537.5 and, on the
other side, 4862.5 to 4937.5: 312.5 to 387.5 and 3712.5 to 3787.5 along M1. Timber keeps 5 mm off
them. The sloping plates stop at them; M1 is first taken without them, then with them. All figures
are our own arithmetic.
"""

from __future__ import annotations

import math
from itertools import pairwise
from typing import Any

import msgspec
import pytest

from core.checks import Severity
from core.job import WallResult
from core.lengths import System, Tape
from core.model import BoxHeight, Opening, Passing, Purlin, Side, Wall
from core.wording import Wording
from walls import UK, at_degrees, member, result

TAPE = Tape.usual(System.METRIC)
SLOPE = (0.0, at_degrees(40))
ROOM = UK.room(6400, SLOPE, SLOPE, flat=2300, length=8000)
PURLINS = tuple(
    Purlin(
        name, UK.length(left), UK.timber((75, 175)), UK.length(1052), Passing.THROUGH, UK.length(5)
    )
    for name, left in (("purlin-1", 1462.5), ("purlin-2", 4862.5))
)
WITH_PURLINS = msgspec.structs.replace(ROOM, purlins=PURLINS)

# cause | left edge, right edge | length at the left | at the right | plate | mark on it from its
#       | low plumb end (a level plate: from the left) to the edge named
STUDS = """
end/left  |    0 |   38 |  877 |  909 | 1 |    0 | left
layout/1  |  381 |  419 | 1197 | 1229 | 1 |  497 | left
layout/2  |  781 |  819 | 1533 | 1565 | 1 | 1020 | left
layout/3  | 1181 | 1219 | 1868 | 1900 | 1 | 1542 | left
layout/4  | 1581 | 1619 | 2204 | 2224 | 1 | 2064 | left
layout/5  | 1981 | 2019 | 2224 | 2224 | 2 |  376 | left
layout/6  | 2381 | 2419 | 2224 | 2224 | 2 |  776 | left
layout/7  | 2781 | 2819 | 1984 | 1952 | 3 | 1672 | right
layout/8  | 3181 | 3219 | 1648 | 1617 | 3 | 1150 | right
layout/9  | 3581 | 3619 | 1313 | 1281 | 3 |  628 | right
layout/10 | 3981 | 4019 |  977 |  945 | 3 |  106 | right
end/right | 4062 | 4100 |  909 |  877 | 3 |    0 | right
"""
ROWS = [[cell.strip() for cell in line.split("|")] for line in STUDS.strip().splitlines()]


def partition(*openings: Opening) -> WallResult:
    return result(ROOM, UK.wall((1150, 4000), (5250, 4000), openings=openings))


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])
def test_stud_and_its_mark(row: list[str]) -> None:
    # At 1600 the edges lie astride the break of the undersides, u = 1604.9; at 2000 and 2400 the
    # studs stand under the collars: marks 1981 - 1604.9 and 2381 - 1604.9.
    cause, left, right, at_left, at_right, plate, along, edge = row
    wall = partition()
    assert wall.frame is not None
    stud = member(wall.frame, cause)
    assert (stud.left, stud.right) == pytest.approx((float(left), float(right)))
    assert [TAPE.text(e) for e in stud.edges] == [at_left, at_right] * 2
    (mark,) = [m for m in wall.marks if m.member == stud.key and "/top/" in m.plate]
    assert (mark.plate, TAPE.text(mark.along), mark.edge.value) == (f"B/top/{plate}/1", along, edge)


def test_nothing_else_stands_in_it() -> None:
    wall = partition()
    assert wall.frame is not None
    level = {"top/1/1", "top/2/1", "top/3/1", "sole"}
    causes = {m.key.removeprefix("B/") for m in wall.frame.members}
    assert causes == {row[0] for row in ROWS} | level
    assert wall.cautions == ()


def test_the_stud_astride_the_break_has_a_facet_and_a_level_end() -> None:
    wall = partition()
    assert wall.frame is not None
    cuts = member(wall.frame, "layout/4").last_cut
    assert [round(math.degrees(c.bevel), 2) for c in cuts] == [40.0, 0.0]


def test_common_difference_and_step() -> None:
    # 400 x 0.83910 = 335.6; 400 / 0.76604 = 522.2.
    wall = partition()
    assert wall.frame is not None
    first, second = (member(wall.frame, f"layout/{n}") for n in (1, 2))
    assert round(second.long_point - first.long_point, 1) == 335.6
    assert round(first.long_point - first.short_point, 1) == 31.9
    marks = [m.along for m in wall.marks if m.plate == "B/top/1/1"]
    assert [round(b - a, 1) for a, b in pairwise(marks[1:])] == [522.2] * 3


def test_breaks_and_plates() -> None:
    # Roof break 2741.0; 0.83910 x - 49.6 = 2262 at x = 2754.9, mirrored 3645.1.
    wall = partition()
    assert wall.frame is not None
    assert wall.inputs.near is not None
    roof = [round(s.right + 1150, 1) for s in wall.inputs.near.segments[:2]]
    inner = [round(s.right + 1150, 1) for s in wall.frame.near.segments[:2]]
    assert roof == [2741.0, 3659.0]
    assert inner == [2754.9, 3645.1]
    # Each plate is mitred 20 at the break, half of 40: the sloping ones 2095 along the underside
    # and 2077 along the top; plumb, 40, at the low end.
    low, level, high = (member(wall.frame, f"top/{n}/1") for n in (1, 2, 3))
    for plate in (low, high):
        assert [TAPE.text(e) for e in plate.edges] == ["2095", "2077"] * 2
    assert [round(math.degrees(c.bevel), 2) for c in (*low.first_cut, *low.last_cut)] == [40, 20]
    assert [round(math.degrees(c.bevel), 2) for c in (*high.first_cut, *high.last_cut)] == [
        -20,
        -40,
    ]
    # 3645.1 - 2754.9 = 890.2 under, 918.0 over; the ends lean towards each other going down.
    assert [round(e, 1) for e in level.edges] == [890.3, 917.9] * 2
    assert [round(math.degrees(c.bevel), 2) for c in (*level.first_cut, *level.last_cut)] == [
        -20,
        20,
    ]


def test_door_limit() -> None:
    # The opening is 838 wide, its head 2035 up, a 38 header on it: 2073. The underside of the
    # plate is as high at x >= 2122.61 / 0.83910 = 2529.7, rounded up; the header ends 38 outside
    # the opening: 2529.7 + 38 - 1150 = 1417.7.
    door = UK.opening("door-1", left=1630, width=838, head=2035)
    frame = partition(door).frame
    assert frame is not None
    (placed,) = frame.openings
    assert placed.fit.fits
    ((low, _),) = placed.fit.ranges
    assert math.ceil(low * 10) / 10 == 1417.7


def test_door_studs_and_short_studs() -> None:
    """The door's full-height studs and what stands over the door.

    The practice of the place is one full-height stud each side and no trimmer, which is not
    modelled. An opening narrower by two studs has its king studs where the door studs stand,
    1592 and 2468, and its header, 838 long, between them; only its trimmers are not in the table.
    """
    door = UK.opening("door-1", left=1668, width=762, head=2035)
    wall = partition(door)
    assert wall.frame is not None
    left, right = (member(wall.frame, f"door-1/king/{side}") for side in ("left", "right"))
    assert (left.left, left.right, right.left, right.right) == (1592, 1630, 2468, 2506)
    assert [TAPE.text(e) for e in left.edges[:2]] == ["2213", "2224"]
    assert [TAPE.text(e) for e in right.edges[:2]] == ["2224", "2215"]
    assert (len(left.last_cut), len(right.last_cut)) == (2, 2)
    assert TAPE.text(member(wall.frame, "door-1/header/1").overall) == "838"
    # Short studs over the door: 2262 - 2073 = 189. Stud 1600 gives way to the door stud.
    short = [m for m in wall.frame.members if "/above/" in m.key]
    assert [(m.key, TAPE.text(m.long_point), TAPE.text(m.short_point)) for m in short] == [
        ("B/door-1/above/5", "189", "189"),
        ("B/door-1/above/6", "189", "189"),
    ]
    assert wall.frame.member("B/layout/4") is None
    assert wall.cautions == ()


def m1(**changes: Any) -> Wall:
    return UK.wall((1150, 4000), (5250, 4000), **changes)


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])
def test_stud_and_its_mark_with_the_purlins(row: list[str]) -> None:
    # Studs are as before. The mark is on the piece of plate that the stud is nailed to; that piece
    # begins 392.5 / 0.76604 = 512.4 up the slope, where its own tape hooks on.
    cause, left, _, at_left, at_right, plate, along, edge = row
    wall = result(WITH_PURLINS, m1())
    assert wall.frame is not None
    stud = member(wall.frame, cause)
    assert [TAPE.text(e) for e in stud.edges] == [at_left, at_right] * 2
    (mark,) = [m for m in wall.marks if m.member == stud.key and "/top/" in m.plate]
    assert mark.along_top is not None
    assert (TAPE.text(mark.along_top), mark.edge.value) == (along, edge)
    # The right-hand plate is stopped from 3707.5 to 3792.5: its piece on the low side is the one
    # past the purlin, and the other begins (4100 - 3707.5) / 0.76604 = 512.4 up as well.
    past = {"1": float(left) >= 392.5, "2": False, "3": float(left) + 38 > 3750}[plate]
    high = (plate == "1" and past) or (plate == "3" and not past)
    assert mark.plate.endswith({"1": "past/purlin-1", "3": "past/purlin-2"}.get(plate, "-")) == past
    assert round(mark.begins, 1) == (512.4 if high else 0.0)


def test_the_clash_names_the_stud_and_the_nearest_places() -> None:
    # Stud 400 stands from 381 to 419, the purlin to 387.5: an overlap of 6.5. Clear of it by 5 are
    # 392.5 on the right and 307.5 - 38 = 269.5 on the left. No stud is in the other's way.
    wall = result(WITH_PURLINS, m1())
    (clash,) = wall.clashes
    assert (clash.key, clash.purlin, clash.left) == ("B/layout/1", "purlin-1", 381)
    assert clash.places == pytest.approx((269.5, 392.5))
    (caution,) = [c for c in wall.cautions if c.severity is Severity.UNBUILDABLE]
    assert caution.key == "B/layout/1"
    assert Wording("metric", TAPE).say(caution.message) == (
        "In wall B, purlin 1 runs into the stud with its left edge at 381 mm: it stands clear "
        "with its left edge at 270 mm or 393 mm."
    )


def test_the_plates_stop_at_the_purlins() -> None:
    # Low pieces from the end to 307.5: 307.5 / 0.76604 = 401.4, plumb, 40, at both ends.
    wall = result(WITH_PURLINS, m1())
    assert wall.frame is not None
    low, high = member(wall.frame, "top/1/1"), member(wall.frame, "top/1/1/past/purlin-1")
    assert [round(e, 1) for e in low.edges] == [401.4] * 4
    assert [round(math.degrees(c.bevel), 2) for c in (*low.first_cut, *low.last_cut)] == [40, 40]
    # Underside 2095.0 and top 2077.1 in one piece, less 392.5 / 0.76604 = 512.4.
    assert [round(e) for e in high.edges] == [1583, 1565] * 2
    assert [round(math.degrees(c.bevel), 2) for c in (*high.first_cut, *high.last_cut)] == [40, 20]
    warned = [c.message.id for c in wall.cautions if c.severity is Severity.WARNING]
    assert warned == ["purlin.cuts-plate"] * 2


def test_the_accepted_answer_clears_the_purlin() -> None:
    # The stud goes to 392.5 - 430.5 and one is added at 269.5 - 307.5. R at 1542.5 is 1294.3, less
    # 87.6: 1206.7 and 31.9 more; at 1419.5 it is 1191.1.
    changed = m1(moved=((1, 392.5),), added=(("extra-1", 269.5),))
    wall = result(WITH_PURLINS, changed)
    assert wall.frame is not None
    for cause, at_left, at_right in (("layout/1", "1207", "1239"), ("extra-1", "1103", "1135")):
        assert [TAPE.text(e) for e in member(wall.frame, cause).edges[:2]] == [at_left, at_right]
    assert wall.clashes == ()
    assert all(c.severity is not Severity.UNBUILDABLE for c in wall.cautions)


@pytest.mark.parametrize("ends", [((1150, 1000), (1150, 7000)), ((5250, 7000), (5250, 1000))])
def test_dwarf_walls(ends: tuple[tuple[float, float], tuple[float, float]]) -> None:
    # Face A towards the room, R = 1150 x 0.83910 = 965. 965 - 49.6 - 38 = 877 there; the far face,
    # 89 nearer the eave, is 74.7 lower: 803. The mitred end is 89 / 0.76604 = 116.2 long: a head
    # plate 140 wide covers it.
    wall = result(WITH_PURLINS, UK.wall(*ends, plate=(38, 140)))
    assert wall.frame is not None
    studs = [m for m in wall.frame.members if not m.lies]
    # 6000 / 400 = 15 spaces, 16 studs.
    assert len(studs) == 16
    for stud in studs:
        assert [TAPE.text(e) for e in stud.edges] == ["877", "877", "803", "803"]
        (cut,) = stud.last_cut
        assert (round(math.degrees(cut.mitre), 2), round(math.degrees(cut.bevel), 2)) == (-40, 0)
    assert wall.cautions == ()


def test_a_head_plate_of_89_is_too_narrow_for_dwarf_walls() -> None:
    wall = result(ROOM, UK.wall((1150, 1000), (1150, 7000)))
    (caution,) = wall.cautions
    assert Wording("metric", TAPE).say(caution.message).count("116") == 1


def test_sockets_and_switch() -> None:
    # Sockets 450 to their middle on stud 800, on the right of its edge at 819, and on stud 3200, on
    # the left of its edge at 3181; a switch with its top at 1200 on the door stud's far side, 2506.
    # Each 50 wide and 100 tall.
    door = UK.opening("door-1", left=1668, width=762, head=2035)
    boxes = (
        UK.box("socket-1", "B/layout/2", Side.RIGHT, 450),
        UK.box("socket-2", "B/layout/8", Side.LEFT, 450),
        UK.box("switch-1", "B/door-1/king/right", Side.RIGHT, 1200, BoxHeight.TOP),
    )
    wall = result(ROOM, m1(openings=(door,), boxes=boxes))
    placed = [(b.left, b.right, b.bottom, b.top) for b in wall.boxes]
    assert placed == [
        pytest.approx((819, 869, 400, 500)),
        pytest.approx((3131, 3181, 400, 500)),
        pytest.approx((2506, 2556, 1100, 1200)),
    ]
    assert {b.blocked_by for b in wall.boxes} == {None}
    assert wall.cautions == ()


def test_boards_meet_on_studs() -> None:
    # 1200 wide boards end at 1200, 2400 and 3600, the middles of studs; with the one at 400 moved
    # for the purlin they still do.
    for changed in (m1(), m1(moved=((1, 392.5),), added=(("extra-1", 269.5),))):
        frame = result(WITH_PURLINS, changed).frame
        assert frame is not None
        middles = {round((m.left + m.right) / 2, 6) for m in frame.members if not m.lies}
        assert {1200.0, 2400.0, 3600.0} <= middles
