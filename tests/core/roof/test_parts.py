"""Heights under roofs of many parts, at places worked by hand; inches."""

from __future__ import annotations

from typing import Any

import msgspec
import pytest
from hypothesis import given
from hypothesis import strategies as st

import shell
from core.lengths import System
from core.model import Dormer, DormerKind, Passing, PitchBreak, Purlin, Room, Side, Slope, Wing
from core.roof import rafters_of, ridge, roof_of, stands_in_wing
from roof_strategies import with_roof_parts
from strategies import rooms
from walls import US, at_degrees, in_12

GABLE = US.room(240, (30, in_12(12)), (30, in_12(12)), length=360)


def height(room: Room, across: float, along: float = 180) -> float:
    return round(US.of(roof_of(room).height((25.4 * across, 25.4 * along))), 6)


def room_with(**changes: Any) -> Room:
    return msgspec.structs.replace(GABLE, **changes)


def broken(eave: float, first: float, *breaks: tuple[float, float]) -> Slope:
    """A slope: its pitch in 12, then each change as (run, pitch in 12)."""
    return Slope(
        US.length(eave),
        in_12(first),
        tuple(PitchBreak(US.length(run), in_12(pitch)) for run, pitch in breaks),
    )


# Steep 24 in 12 for 40 in., then 6 in 12: 30 + 80 = 110 at 40, 110 + 40 = 150 at 120.
GAMBREL = broken(30, 24, (40, 6))
# Shallow 6 in 12 for 40 in., then 12 in 12: 30 + 20 = 50 at 40, 50 + 80 = 130 at 120.
KICKED = broken(30, 6, (40, 12))
# Kicked, then steep, then shallow: 50 at 40, 90 at 60 (24 in 12), then 6 in 12: 120 at 120.
BOTH = broken(30, 6, (40, 24), (60, 6))


@pytest.mark.parametrize(
    ("slope", "places"),
    [
        pytest.param(GAMBREL, {0: 30, 20: 70, 40: 110, 80: 130, 120: 150}, id="gambrel"),
        pytest.param(KICKED, {0: 30, 20: 40, 40: 50, 80: 90, 120: 130}, id="kicked eave"),
        pytest.param(BOTH, {20: 40, 40: 50, 50: 70, 60: 90, 80: 100, 120: 120}, id="both"),
    ],
)
def test_changes_of_pitch(slope: Slope, places: dict[float, float]) -> None:
    room = room_with(left=slope, right=slope)
    for across, expected in places.items():
        assert height(room, across) == expected
        assert height(room, 240 - across) == expected


@pytest.mark.parametrize(
    ("left", "right", "across", "up"),
    [
        pytest.param(GAMBREL, GAMBREL, 120, 150, id="two gambrels"),
        # The left side is at 110 + (u - 40) / 2, the right one at 30 + (240 - u): 90 + u / 2 =
        # 270 - u at u = 120, 150.
        pytest.param(GAMBREL, broken(30, 12), 120, 150, id="gambrel and plain"),
        # 10 + u and 30 + (240 - u) / 2: u = 140 - u / 2, 93.33 and 103.33.
        pytest.param(KICKED, broken(30, 6), 280 / 3, 310 / 3, id="kicked and shallow"),
        pytest.param(KICKED, broken(60, 0), 50, 60, id="against a level one"),
    ],
)
def test_ridge(left: Slope, right: Slope, across: float, up: float) -> None:
    found = ridge(room_with(left=left, right=right))
    assert found is not None
    assert [US.of(mm) for mm in found] == pytest.approx([across, up])


@pytest.mark.parametrize(
    ("across", "along", "expected"),
    [
        pytest.param(120, 10, 40, id="hip near the start: 30 + 10"),
        pytest.param(120, 120, 150, id="on the ridge, where the hip has come up to it"),
        pytest.param(60, 60, 90, id="on the hip rafter"),
        pytest.param(60, 50, 80, id="before it"),
        pytest.param(120, 350, 40, id="at the other end, at 24 in 12 from 20"),
        pytest.param(120, 180, 150, id="between the hips"),
    ],
)
def test_hip_ends(across: float, along: float, expected: float) -> None:
    hips = {"start_hip": broken(30, 12), "end_hip": broken(20, 24)}
    assert height(room_with(**hips), across, along) == expected


def dormer(kind: DormerKind, side: Side = Side.RIGHT) -> Dormer:
    """Ten feet long from 120; its front 24 in from the eave, where the main roof is at 54."""
    return Dormer(
        "dormer-1",
        kind,
        side,
        start=US.length(120),
        width=US.length(120),
        face=US.length(24),
        front=US.length(3.5),
        height=US.length(90),
        pitch=in_12(3) if kind is DormerKind.SHED else in_12(6),
    )


@pytest.mark.parametrize(
    ("across", "along", "expected"),
    [
        pytest.param(216, 180, 90, id="at its front"),
        pytest.param(219.5, 180, 89.125, id="over the outer face of its front wall"),
        pytest.param(220, 180, 50, id="before its front: the main roof"),
        pytest.param(176, 180, 100, id="40 in: 90 + 10"),
        # 90 + (216 - u) / 4 = 270 - u at u = 168: from there the main roof is higher.
        pytest.param(168, 180, 102, id="where it dies into the main roof"),
        pytest.param(150, 180, 120, id="above that the main roof"),
        pytest.param(100, 180, 130, id="the other slope is as it was"),
        pytest.param(216, 119, 54, id="beside its cheek"),
        pytest.param(216, 241, 54, id="beside its other cheek"),
    ],
)
def test_shed_dormer(across: float, along: float, expected: float) -> None:
    for side in Side:
        at = across if side is Side.RIGHT else 240 - across
        assert height(room_with(dormers=(dormer(DormerKind.SHED, side),)), at, along) == expected


@pytest.mark.parametrize(
    ("across", "along", "expected"),
    [
        pytest.param(216, 120, 90, id="over its cheek"),
        pytest.param(216, 140, 100, id="20 in from it: 90 + 10"),
        pytest.param(216, 180, 120, id="its ridge: 90 + 30"),
        pytest.param(216, 220, 100, id="20 in from the other cheek"),
        pytest.param(150, 180, 120, id="its ridge meets the main roof at 270 - 150"),
        pytest.param(140, 180, 130, id="and ends there"),
        # On the valley: 90 + 20 x 1/2 = 100 = 270 - 170.
        pytest.param(170, 140, 100, id="on its valley"),
        pytest.param(160, 140, 110, id="above the valley the main roof"),
    ],
)
def test_gable_dormer(across: float, along: float, expected: float) -> None:
    assert height(room_with(dormers=(dormer(DormerKind.GABLE),)), across, along) == expected


def test_a_dormer_higher_than_the_ridge_meets_the_other_slope() -> None:
    # 3 in 12 from 90 at u = 216 would be at 114 on the ridge line; from 130 it is at 154, over the
    # 150 there, and meets the left slope drawn on: 130 + (216 - u) / 4 = 30 + u at u = 123.2.
    high = msgspec.structs.replace(dormer(DormerKind.SHED), height=US.length(130))
    room = room_with(dormers=(high,))
    assert height(room, 123.2) == 153.2
    assert height(room, 120) == 150


WING = Wing(
    "wing-1",
    Side.LEFT,
    start=US.length(100),
    width=US.length(160),
    reach=US.length(90),
    first=broken(30, 12),
    last=broken(30, 12),
)


@pytest.mark.parametrize(
    ("across", "along", "expected"),
    [
        pytest.param(-90, 180, 110, id="its ridge at its gable: 30 + 80"),
        pytest.param(-90, 100, 30, id="its eave"),
        pytest.param(-10, 130, 60, id="30 in from its eave"),
        pytest.param(-10, 230, 60, id="30 in from its other eave"),
        pytest.param(40, 140, 70, id="on the valley: 30 + 40 both ways"),
        pytest.param(40, 180, 110, id="its ridge over the room"),
        pytest.param(80, 180, 110, id="where its ridge meets the main slope"),
        pytest.param(90, 180, 120, id="above that the main slope"),
        pytest.param(40, 90, 70, id="beside it the main slope"),
        pytest.param(200, 180, 70, id="the other side is as it was"),
    ],
)
def test_wing(across: float, along: float, expected: float) -> None:
    assert height(room_with(wings=(WING,)), across, along) == expected


@pytest.mark.parametrize(
    ("across", "along", "inside"),
    [(-90, 100, True), (0, 260, True), (-91, 180, False), (-10, 99, False), (10, 180, False)],
)
def test_standing_in_a_wing(across: float, along: float, inside: bool) -> None:
    point = (25.4 * across, 25.4 * along)
    assert stands_in_wing(room_with(wings=(WING,)), point, 1.0) is inside


def test_a_purlin_to_pass_under_is_the_lowest_where_it_lies() -> None:
    timber = US.timber((4, 8))
    purlin = Purlin("purlin-1", US.length(70), timber, US.length(80), Passing.UNDER, US.length(0))
    room = room_with(purlins=(purlin,))
    assert [height(room, u) for u in (69, 72, 75)] == [99, 80, 105]
    through = msgspec.structs.replace(purlin, passing=Passing.THROUGH)
    assert height(room_with(purlins=(through,)), 72) == 102


def test_cheeks_stand_on_the_room_s_own_slopes() -> None:
    room = room_with(dormers=(dormer(DormerKind.SHED),), wings=(WING,), start_hip=broken(30, 12))
    assert rafters_of(room) == rafters_of(room_with(start_hip=broken(30, 12)))


def test_no_slope_no_roof() -> None:
    bare = room_with(left=None, right=None, start_hip=broken(30, 12))
    with pytest.raises(ValueError, match="slope"):
        roof_of(bare)


def test_the_first_part_of_a_plain_roof_is_as_before() -> None:
    (part,) = roof_of(GABLE).parts
    assert part.outline is None
    assert [p.across for p in part.planes] == [1.0, -1.0]


def _without_turned_beams(room: Room) -> Room:
    """The room without beams that are turned.

    Their edges run askew, so a point drawn on one may be told to either side; and in a mirror the
    face that is left on the way from a beam's start is the other one, whose ends lie elsewhere.
    """
    straight = tuple(p for p in room.purlins if p.end_left is None)
    return msgspec.structs.replace(room, purlins=straight)


HOUSES = (
    rooms(System.METRIC)
    .flatmap(lambda room: with_roof_parts(room, System.METRIC))
    .map(_without_turned_beams)
)


def _points(room: Room) -> st.SearchStrategy[tuple[float, float]]:
    """A point of the plan, on no edge: what is stated has whole or half mm."""
    wide, long = int(room.width.mm), int(room.length.mm)
    whole = st.tuples(st.integers(-3000, wide + 3000), st.integers(0, long - 1))
    return whole.map(lambda point: (point[0] + _OFF, point[1] + _OFF))


_OFF = 0.37


@given(st.data())
def test_heights_agree_with_walking_up_each_slope(data: st.DataObject) -> None:
    room = data.draw(HOUSES)
    u, v = data.draw(_points(room))
    assert roof_of(room).height((u, v)) == pytest.approx(shell.height(room, u, v), abs=0.01)


@given(st.data())
def test_a_mirrored_roof_has_the_same_heights_the_other_way_round(data: st.DataObject) -> None:
    room = data.draw(HOUSES)
    mirrored = mirror(room)
    u, v = data.draw(_points(room))
    there, here = roof_of(mirrored).height((room.width.mm - u, v)), roof_of(room).height((u, v))
    assert there == pytest.approx(here, abs=1e-3)


def mirror(room: Room) -> Room:
    """The room with left and right changed over."""
    other = {Side.LEFT: Side.RIGHT, Side.RIGHT: Side.LEFT}
    replace = msgspec.structs.replace
    purlins = tuple(
        replace(p, left=US.length((room.width.mm - p.left.mm - p.timber.thickness.mm) / 25.4))
        for p in room.purlins
    )
    return replace(
        room,
        left=room.right,
        right=room.left,
        dormers=tuple(replace(d, side=other[d.side]) for d in room.dormers),
        wings=tuple(replace(w, side=other[w.side]) for w in room.wings),
        purlins=purlins,
    )


def test_steep_slopes_in_degrees() -> None:
    # 45 degrees is 12 in 12.
    assert height(room_with(left=Slope(US.length(30), at_degrees(45))), 60) == 90
