"""Studs notched round purlins or ended under them, worked by hand; millimetres.

The roof is 45 degrees from 500 at the left eave wall; the wall starts at u = 1000, so that its roof
is 1500 + x and the underside of its plate 1500 + x - 38 x root 2 = 1446.26 + x. Stud 3 stands from
1181 to 1219 on a sole plate of 38: short point 1446.26 + 1181 - 38 = 2589.26, long point 38 more.
"""

from __future__ import annotations

import math
from typing import Any

import msgspec
import pytest

from core.framing import Notch, in_pieces, keys
from core.framing.notching import before_notches
from core.job import WallResult
from core.model import (
    Blocking,
    Box,
    LineEdge,
    MeasuredStud,
    PassesPurlin,
    Passing,
    PlateRules,
    Purlin,
    Side,
    Wall,
    WallRules,
)
from walls import UK, Pair, at_degrees, frame_of, member, result

ROOM = UK.room(6000, (500, at_degrees(45)), None, length=8000)
ACROSS = UK.wall((1000, 3000), (3000, 3000))
STUD = "B/layout/3"
SHORT = 1446.26 + 1181 - 38


def purlin(
    left: float, under: float, way: Passing = Passing.NOTCHED, size: Pair = (50, 100)
) -> Purlin:
    """A purlin with its left face at `left` along the wall, to be kept clear of by 5."""
    return Purlin(
        "purlin-1",
        UK.length(1000 + left),
        UK.timber(size),
        UK.length(under),
        way,
        UK.length(5),
    )


def passed(made: Purlin, wall: Wall = ACROSS, line_edge: LineEdge = LineEdge.NEAR) -> WallResult:
    return result(msgspec.structs.replace(ROOM, purlins=(made,)), wall, line_edge)


def stud(made: WallResult, key: str = "layout/3") -> Any:
    assert made.frame is not None
    return member(made.frame, key)


@pytest.mark.parametrize(
    ("left", "under", "notch"),
    [
        # 1219 - (1210 - 5) = 14 deep; from 2300 - 5 - 38 up; to 2400 + 5 - 38, with 225 over it.
        pytest.param(1210, 2300, Notch("purlin-1", Side.RIGHT, 14, 2257, 2367), id="right"),
        # Its right face at 1190: 1190 + 5 - 1181 = 14 deep.
        pytest.param(1140, 2300, Notch("purlin-1", Side.LEFT, 14, 2257, 2367), id="left"),
        # The stud's top is 2627 and more: over 2587 + 5 are 35, less than 38, which split off.
        pytest.param(1140, 2487, Notch("purlin-1", Side.LEFT, 14, 2444, None), id="to the top"),
        pytest.param(1140, 2484, Notch("purlin-1", Side.LEFT, 14, 2441, 2551), id="38 over it"),
    ],
)
def test_a_stud_met_on_one_side_is_notched(left: float, under: float, notch: Notch) -> None:
    made = stud(passed(purlin(left, under)))
    (found,) = made.notches
    assert (found.purlin, found.side) == (notch.purlin, notch.side)
    assert found.depth == pytest.approx(notch.depth)
    assert (found.bottom, found.top) == (pytest.approx(notch.bottom), pytest.approx(notch.top))
    # Lengths and cuts are those before it is notched.
    assert (made.short_point, made.long_point) == pytest.approx((SHORT, SHORT + 38), abs=0.01)
    assert math.degrees(made.last_cut[0].bevel) == pytest.approx(45)


def corners(outline: tuple[Pair, ...]) -> list[Pair]:
    return [(round(x, 1), round(y, 1)) for x, y in outline]


def test_the_outline_follows_a_notch_in_the_right_side() -> None:
    made = stud(passed(purlin(1210, 2300)))
    assert corners(made.near) == [
        (1181, 38),
        (1219, 38),
        (1219, 2295),
        (1205, 2295),
        (1205, 2405),
        (1219, 2405),
        (1219, 2665.3),
        (1181, 2627.3),
    ]
    assert made.far == made.near


def test_the_outline_follows_a_notch_up_to_the_top_on_the_left() -> None:
    # What is left at the top begins at 1195, 1446.3 + 1195 = 2641.3 high.
    assert corners(stud(passed(purlin(1140, 2540))).near) == [
        (1181, 38),
        (1219, 38),
        (1219, 2665.3),
        (1195, 2641.3),
        (1195, 2535),
        (1181, 2535),
    ]


@pytest.mark.parametrize(
    ("left", "under"), [(1210, 2300), (1140, 2300), (1140, 2540), (1210, 2540)]
)
def test_before_it_is_notched_a_stud_is_as_it_would_be(left: float, under: float) -> None:
    made = stud(passed(purlin(left, under)))
    plain = stud(passed(purlin(left, 2900)))
    assert made.notches
    for found, wanted in zip(before_notches(made), (plain.near, plain.far), strict=True):
        assert [x for corner in found for x in corner] == pytest.approx(
            [x for corner in wanted for x in corner]
        )


def test_a_wall_aslant_is_notched_for_what_both_faces_need() -> None:
    # At 45 degrees in plan the purlin takes up 50 x root 2 = 70.7 on each face, 89 farther on the
    # far one: 159.7 in all and 5 on either side. From 1414.2 on: it meets the studs that stand
    # from 1181 (no), 1581 (no: it ends at 1578.9 + 5 = 1578.9), so moved to 1570 it is notched 8.9.
    wall = UK.wall((1000, 1000), (3000, 3000), moved=((4, 1570),))
    made = passed(
        msgspec.structs.replace(purlin(1000, 2000, size=(50, 200)), gap=UK.length(5)), wall
    )
    (notch,) = stud(made, "layout/4").notches
    through = 1000 * math.sqrt(2) + 89 + 50 * math.sqrt(2) + 5
    assert (notch.side, notch.depth) == (Side.LEFT, pytest.approx(through - 1570))


@pytest.mark.parametrize(
    ("left", "size", "way"),
    [
        pytest.param(1180, (50, 100), Passing.NOTCHED, id="covered"),
        pytest.param(1195, (10, 100), Passing.NOTCHED, id="split"),
        pytest.param(1215, (50, 100), Passing.STOPPED, id="stopped though met on one side"),
    ],
)
def test_a_stud_ends_under_the_purlin_and_goes_on_over_it(
    left: float, size: Pair, way: Passing
) -> None:
    made = passed(purlin(left, 1500, way, size))
    low, high = stud(made), stud(made, "layout/3/over/purlin-1")
    # 1500 - 5 - 38, square; over it from 1600 + 5 up.
    assert low.edges == pytest.approx((1457,) * 4)
    assert (low.stops, low.last_cut[0].is_square, low.notches) == (True, True, ())
    assert high.bottom == pytest.approx(1605)
    assert (high.short_point, high.long_point) == pytest.approx((1022.26, 1060.26), abs=0.01)
    assert high.first_cut[0].is_square
    assert math.degrees(high.last_cut[0].bevel) == pytest.approx(45)
    assert made.clashes == ()
    # The mark on the plate is that of the piece that reaches it.
    plates = {mark.member: mark.plate for mark in made.marks if mark.member.startswith(STUD)}
    assert plates == {STUD: "B/sole", keys.over(STUD, "purlin-1"): "B/top/1/1"}


@pytest.mark.parametrize(
    ("under", "above"),
    [
        # Over the purlin, its gap above it, 38 are wanted under the short side's 2627.26.
        pytest.param(2484.2, True, id="38 and a little"),
        pytest.param(2484.3, False, id="less than 38"),
    ],
)
def test_a_piece_over_it_is_no_shorter_than_it_is_thick(under: float, above: bool) -> None:
    made = passed(purlin(1180, under))
    assert made.frame is not None
    assert (made.frame.member(f"{STUD}/over/purlin-1") is not None) is above


def test_a_stud_with_no_room_under_the_purlin_is_left_out_and_told() -> None:
    made = passed(purlin(1180, 80))
    assert made.frame is not None
    assert made.frame.member(STUD) is None
    assert (STUD, "purlin-1") in made.frame.no_room_under
    assert "purlin.no-room-under" in [c.message.id for c in made.cautions]


def test_a_mark_stands_for_the_edge_that_is_left() -> None:
    # Notched up to the top on the left by 14, its near edge is gone there: both its marks stand for
    # the right edge, 1219 along the floor, on the piece of plate that begins at 1190 + 5.
    made = passed(purlin(1140, 2540))
    sole, top = (m for m in made.marks if m.member == STUD)
    assert (sole.edge, sole.x_side) == (Side.RIGHT, Side.LEFT)
    assert sole.along == pytest.approx(1219)
    assert (top.edge, top.plate) == (Side.RIGHT, "B/top/1/1/past/purlin-1")
    assert top.along == pytest.approx((1219 - 1195) * math.sqrt(2))
    # Told to line the uphill edge, which is left, it stays.
    kept = passed(purlin(1140, 2540), line_edge=LineEdge.UPHILL)
    assert {m.edge for m in kept.marks if m.member == STUD} == {Side.RIGHT}


def test_each_wall_has_its_own_way() -> None:
    own = (PassesPurlin("purlin-1", Passing.THROUGH),)
    made = passed(purlin(1210, 2300), msgspec.structs.replace(ACROSS, passes=own))
    assert stud(made).notches == ()
    assert [clash.key for clash in made.clashes] == [STUD]


def test_timber_that_does_not_reach_the_plates_is_told_as_before() -> None:
    # A header at 1400 to 1438 in the way of a purlin from 1420 up.
    door = UK.opening("door-1", left=800, width=500, head=1400)
    wall = UK.wall((1000, 3000), (3000, 3000), openings=(door,))
    made = passed(purlin(1000, 1420), wall)
    assert "B/door-1/header/1" in [clash.key for clash in made.clashes]
    assert "purlin.clash-opening" in [c.message.id for c in made.cautions]


@pytest.mark.parametrize(
    ("left", "under", "ids"),
    [
        # 9 of 38 are 24 %, 10 are 26 %, 15 are 39 %, 16 are 42 %.
        pytest.param(1215, 2300, [], id="within both limits"),
        pytest.param(1214, 2300, ["notch.not-bearing"], id="where it carries nothing"),
        pytest.param(1209, 2300, ["notch.not-bearing"], id="just"),
        pytest.param(1208, 2300, ["notch.past-limit"], id="past both"),
        pytest.param(1180, 2300, ["purlin.stops"], id="ended under it"),
    ],
)
def test_what_is_left_is_told(left: float, under: float, ids: list[str]) -> None:
    made = passed(purlin(left, under))
    found = [c.message.id for c in made.cautions if c.key == STUD]
    assert found == ids


def test_a_stated_share_is_asked_for() -> None:
    # 9 deep leaves 29 of 38: 76 %.
    for least, told in ((76, []), (77, ["notch.little-left"])):
        rules = WallRules(least_left=least)
        made = passed(purlin(1215, 2300), msgspec.structs.replace(ACROSS, rules=rules))
        assert [c.message.id for c in made.cautions if c.key == STUD] == told


def test_a_measured_stud_under_a_purlin_is_cut_as_measured_and_corrects_no_other() -> None:
    measured = (MeasuredStud(STUD, UK.length(1450), True),)
    wall = msgspec.structs.replace(ACROSS, measured_studs=measured)
    made = passed(purlin(1180, 1500), wall)
    plain = passed(purlin(1180, 1500))
    assert stud(made).long_point == pytest.approx(1450)
    assert stud(made, "layout/2").long_point == stud(plain, "layout/2").long_point


def test_blocks_step_aside_for_a_purlin_and_stay_below_an_ended_stud() -> None:
    # A purlin between studs 2 (781 to 819) and 3, from 1300 to 1400 up: the row at 1350 lies below
    # it, its middle 1300 - 5 - 19 = 1276.
    rows = Blocking((UK.length(1350),))
    wall = msgspec.structs.replace(ACROSS, blocking=rows)
    made = passed(purlin(1000, 1300), wall)
    block = stud(made, "blocking/row-1/layout/2")
    assert (block.bottom + block.top) / 2 == pytest.approx(1276)
    assert made.clashes == ()
    # Stud 3 ended at 1295: no block beside it stands higher.
    ended = passed(purlin(1180, 1300), wall)
    beside = [m for m in frame(ended).members if m.key in _BESIDE]
    assert [m.top <= 1295 for m in beside] == [True] * len(beside)


_BESIDE = ("B/blocking/row-1/layout/2", "B/blocking/row-1/layout/3")


def frame(made: WallResult) -> Any:
    assert made.frame is not None
    return made.frame


@pytest.mark.parametrize(
    ("under", "over"),
    [
        # The plate is 2828 long, and stock 1750: stud 3, at 1200 x root 2, is the last in reach.
        pytest.param(2900, "layout/3", id="clear of the purlin"),
        pytest.param(1500, "layout/3/over/purlin-1", id="a piece over the purlin bears it"),
        # Under a purlin at 2500 to 2600 it ends, with no room over it: stud 2 bears the joint.
        pytest.param(2500, "layout/2", id="ended under it"),
    ],
)
def test_a_plate_is_joined_over_what_bears_it(under: float, over: str) -> None:
    whole = passed(purlin(1180, under, Passing.STOPPED))
    made, _ = in_pieces(frame(whole), whole.marks, PlateRules(UK.length(1750)))
    joined = [m.key for m in made.members if m.key.startswith("B/top/1/1/")]
    assert joined == [f"B/top/1/1/{over}"]


def test_a_box_stays_on_a_stud_that_is_ended_above_it() -> None:
    box: Box = UK.box("box-1", STUD, Side.RIGHT, 400)
    made = passed(purlin(1180, 1500), msgspec.structs.replace(ACROSS, boxes=(box,)))
    assert [(placed.stud, placed.blocked_by) for placed in made.boxes] == [(STUD, None)]


def test_without_a_purlin_in_its_way_a_stud_is_as_it_was() -> None:
    assert member(frame_of(ROOM, ACROSS), "layout/3") == stud(passed(purlin(1300, 2300)))
