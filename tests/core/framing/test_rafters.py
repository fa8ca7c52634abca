"""Rafters over a plate, worked by hand: crossings, the gap it runs in, the blocks between."""

from __future__ import annotations

import math

import msgspec
import pytest

from core.framing import Crossing, Member, OverPlate, Rafters, rafter_places
from core.framing.rafters import over_plate
from core.job import WallResult
from core.model import Rafter, RafterBacking, Room, Wall
from walls import UK, US, in_12, result

ROOM = US.room(240, (24, in_12(9)), (24, in_12(9)), length=100)


def with_rafters(spacing: float, *places: float, room: Room = ROOM) -> Room:
    """2-by rafters at a spacing, or at measured places along the room."""
    rafter = Rafter(US.timber((1.5, 9.25)), US.length(spacing), tuple(US.length(p) for p in places))
    return msgspec.structs.replace(room, rafter=rafter)


def middles(room: Room) -> list[float]:
    return [round(US.of(m), 3) for m in rafter_places(room).middles]


def test_rafters_stand_flush_with_the_ends_and_on_centre_between() -> None:
    """100 in. long at 24: 3/4, 24, 48, 72, 96 and 99 1/4: the last two are 3 1/4 apart."""
    assert middles(with_rafters(24)) == [0.75, 24, 48, 72, 96, 99.25]


def test_a_rafter_that_would_touch_the_last_one_is_left_out() -> None:
    """97 in. at 24: the last stands at 96 1/4, and one at 96 would lie in it."""
    assert middles(with_rafters(24, room=msgspec.structs.replace(ROOM, length=US.length(97)))) == [
        0.75,
        24,
        48,
        72,
        96.25,
    ]


def test_measured_rafters_stand_where_the_tape_says() -> None:
    assert middles(with_rafters(24, 30, 2.5, 55)) == [2.5, 30, 55]


def over(wall: Wall, room: Room) -> OverPlate:
    return over_plate(wall, rafter_places(room))


def test_a_wall_along_the_ridge_crosses_every_rafter() -> None:
    """From v = 10 to v = 90: rafters at 24, 48, 72 lie over it at 13.25-14.75 and so on."""
    found = over(US.wall((60, 10), (60, 90)), with_rafters(24))
    assert [
        (c.number, round(US.of(c.left), 3), round(US.of(c.right), 3)) for c in found.crossings
    ] == [(2, 13.25, 14.75), (3, 37.25, 38.75), (4, 61.25, 62.75)]
    assert found.between is None


def test_a_wall_at_30_degrees_crosses_rafters_aslant() -> None:
    """Along it v rises by sin 30 = 1/2: the rafter at 48 (47.25-48.75) lies over 74.5 to 77.5."""
    along = (60 + 80 * math.cos(math.radians(30)), 50)
    found = over(US.wall((60, 10), along), with_rafters(100, 48))
    assert [(round(US.of(c.left), 3), round(US.of(c.right), 3)) for c in found.crossings] == [
        (74.5, 77.5)
    ]


def test_drawn_from_the_other_end_the_crossings_are_mirrored() -> None:
    found = over(US.wall((60, 90), (60, 10)), with_rafters(24))
    assert [c.number for c in found.crossings] == [4, 3, 2]
    assert US.of(found.crossings[0].left) == pytest.approx(17.25)


@pytest.mark.parametrize(
    ("v", "between"),
    [
        # The plate takes up v to v + 3.5. Rafters at 24 and 48: faces 24.75 and 47.25.
        pytest.param(30, (24.75, 47.25), id="between"),
        pytest.param(22, None, id="under a rafter"),
        # 47.25 + 3/4: a rafter overlaps by 3/4 in., enough for a nail; by a quarter it is not.
        pytest.param(44.5, None, id="edge enough"),
        pytest.param(44, (24.75, 47.25), id="edge too little"),
    ],
)
def test_a_wall_along_the_rafters(v: float, between: tuple[float, float] | None) -> None:
    found = over(US.wall((0, v), (100, v)), with_rafters(24)).between
    assert (found and (US.of(found.before), US.of(found.after))) == pytest.approx(between)


def backed(wall: Wall, room: Room, most: float = 24) -> WallResult:
    """The wall with 2x4 blocks between the rafters."""
    stated = RafterBacking(US.timber((1.5, 3.5)), US.length(most))
    return result(room, msgspec.structs.replace(wall, rafter_backing=stated))


def blocks(found: WallResult) -> list[Member]:
    assert found.frame is not None
    return [m for m in found.frame.members if m.key.startswith("B/rafters/")]


def test_blocks_between_rafters_are_counted_and_cut_to_the_clear_width() -> None:
    """Rafters at 24 and 48, 1 1/2 thick: blocks 22 1/2 long.

    Up the left slope from u = 0 to the ridge at 120: 120 * 1.25 = 150 along it, less the last
    block's own 3 1/2 is 146.5: 7 steps of 20.93, 8 blocks. As many on the right.
    """
    found = blocks(backed(US.wall((0, 30), (240, 30)), with_rafters(24)))
    assert [m.key.split("/")[2] for m in found] == ["1"] * 8 + ["2"] * 8
    assert {round(US.of(m.long_point), 3) for m in found} == {22.5}
    first, second = found[0], found[1]
    # It lies on the roof line with its foot at (0, 24), and the next 20.93 up the slope.
    assert [US.of(v) for v in first.near[0]] == pytest.approx([0, 24])
    step = 146.5 / 7
    assert [US.of(v) for v in second.near[0]] == pytest.approx([0.8 * step, 24 + 0.6 * step])
    # 3 1/2 along the slope, then 1 1/2 square to it: (-0.6, 0.8).
    assert [US.of(v) for v in first.near[2]] == pytest.approx(
        [3.5 * 0.8 - 1.5 * 0.6, 24 + 3.5 * 0.6 + 1.5 * 0.8]
    )


def test_uneven_rafters_give_blocks_of_their_own_gap() -> None:
    """Measured at 20 and 47: 27 - 1.5 = 25 1/2."""
    found = blocks(backed(US.wall((0, 30), (100, 30)), with_rafters(24, 3, 20, 47)))
    assert {round(US.of(m.long_point), 3) for m in found} == {25.5}


def test_no_blocks_under_a_rafter_nor_where_the_plate_crosses_them() -> None:
    assert blocks(backed(US.wall((0, 22), (240, 22)), with_rafters(24))) == []
    assert blocks(backed(US.wall((60, 10), (60, 90)), with_rafters(24))) == []


def test_a_plate_outside_the_last_rafter_is_told() -> None:
    found = backed(US.wall((0, 60), (100, 60)), with_rafters(24, 20, 40))
    assert blocks(found) == []
    assert [c.message.id for c in found.cautions] == ["rafters.one-side"]


def test_metric_crossings() -> None:
    """Rafters 50 thick at 400: the one at 800 lies over 275 to 325 of a wall from v = 500."""
    rafters = Rafters((400.0, 800.0), 50.0)
    found = over_plate(UK.wall((1000, 500), (1000, 1500)), rafters)
    assert found.crossings == (Crossing(2, pytest.approx(275), pytest.approx(325)),)  # type: ignore[arg-type]


def test_a_slip_gap_lets_the_plate_down_plumb_and_says_so() -> None:
    """A knee wall at u = 48 under 9 in 12 from 24: roof at 60 on face A of a wall along the ridge
    whose timber lies to the eave. Plate 1.5 * 1.25 = 1.875 and sole 1.5: studs 56 5/8 at the long
    point; with a gap of 1/2 in. plumb 56 1/8.
    """
    wall = US.wall((48, 10), (48, 90), plate=(1.5, 5.5))
    tight = result(ROOM, wall)
    slipped = result(ROOM, msgspec.structs.replace(wall, slip_gap=US.length(0.5)))
    lengths = []
    for found in (tight, slipped):
        assert found.frame is not None
        stud = found.frame.member("B/layout/1")
        assert stud is not None
        lengths.append(US.of(stud.long_point))
    assert lengths == pytest.approx([56.625, 56.125])
    assert [c.message.id for c in tight.cautions] == []
    assert [c.message.id for c in slipped.cautions] == ["wall.slip-gap"]


def test_beyond_the_first_or_the_last_rafter_there_is_one_side_alone() -> None:
    # Rafters from 19.25 to 20.75 and from 39.25 to 40.75.
    room = with_rafters(24, 20, 40)
    before = over(US.wall((0, 5), (100, 5)), room).between
    after = over(US.wall((0, 60), (100, 60)), room).between
    assert before is not None
    assert after is not None
    assert (before.before, after.after) == (-math.inf, math.inf)
    assert (US.of(before.after), US.of(after.before)) == pytest.approx((19.25, 40.75))
