"""Purlins through walls: square and aslant, above, below and beside; millimetres."""

from __future__ import annotations

import math
from typing import Any

import msgspec
import pytest

from core.checks import Severity
from core.framing import Member
from core.job import WallResult
from core.model import Passing, Purlin, Room, Wall
from walls import UK, at_degrees, member, result

# 45 degrees from 500 at the left eave wall: R = 500 + u.
ROOM = UK.room(6000, (500, at_degrees(45)), None, length=8000)


def purlin(left: float, under: float, *, gap: float = 0, size: Any = (50, 100)) -> Purlin:
    return Purlin(
        f"purlin-{left:g}".replace(".", "-"),
        UK.length(left),
        UK.timber(size),
        UK.length(under),
        Passing.THROUGH,
        UK.length(gap),
    )


def passed(wall: Wall, *purlins: Purlin, room: Room = ROOM) -> WallResult:
    return result(msgspec.structs.replace(room, purlins=purlins), wall)


def plates(made: WallResult) -> list[Member]:
    assert made.frame is not None
    return [m for m in made.frame.members if m.key.startswith("B/top/")]


ACROSS = UK.wall((1000, 3000), (3000, 3000))


@pytest.mark.parametrize(
    ("under", "pieces"),
    [
        # Over u = 2000 to 2050 the plate takes up 2500 - 53.7 to 2550.
        pytest.param(2551, 1, id="above the plate"),
        pytest.param(2549, 2, id="into its top"),
        pytest.param(2400, 2, id="through it"),
        pytest.param(2345, 1, id="below it"),
    ],
)
def test_a_plate_stops_where_the_purlin_is_in_its_way(under: float, pieces: int) -> None:
    assert len(plates(passed(ACROSS, purlin(2000, under)))) == pieces


def test_pieces_have_their_lengths_and_plumb_ends() -> None:
    # From 0 to 990 and from 1060 to 2000 along the wall; times the root of 2.
    low, high = plates(passed(ACROSS, purlin(2000, 2400, gap=10)))
    assert [m.key for m in (low, high)] == ["B/top/1/1", "B/top/1/1/past/purlin-2000"]
    assert low.edges == pytest.approx((990 * math.sqrt(2),) * 4)
    assert high.edges == pytest.approx((940 * math.sqrt(2),) * 4)
    cuts = (*low.first_cut, *low.last_cut, *high.first_cut, *high.last_cut)
    assert [round(math.degrees(c.bevel)) for c in cuts] == [45] * 4
    # Tip to tip a plumb cut adds 38 x tan 45.
    assert low.overall == pytest.approx(990 * math.sqrt(2) + 38)


def test_two_purlins_make_three_pieces() -> None:
    made = passed(ACROSS, purlin(2500, 2900), purlin(1500, 1900))
    assert [m.key for m in plates(made)] == [
        "B/top/1/1",
        "B/top/1/1/past/purlin-1500",
        "B/top/1/1/past/purlin-2500",
    ]
    spans = [(round(m.left), round(m.right)) for m in plates(made)]
    assert spans == [(0, 500), (550, 1500), (1550, 2000)]
    begins = sorted({round(m.begins / math.sqrt(2)) for m in made.marks})
    assert begins == [0, 550, 1550]


def test_a_double_plate_stops_in_both_layers() -> None:
    wall = UK.wall((1000, 3000), (3000, 3000), plates=2)
    assert len(plates(passed(wall, purlin(2000, 2400)))) == 4


def test_a_wall_aslant_is_cut_along_the_purlin() -> None:
    # At 45 degrees in plan the purlin's face runs 89 farther along the far face; it takes up
    # 50 x root 2 = 70.7 along the wall on each face.
    wall = UK.wall((1000, 1000), (3000, 3000))
    low, high = plates(passed(wall, purlin(2000, 2400, size=(50, 200))))
    start = 1000 * math.sqrt(2)
    assert low.near[1][0] == pytest.approx(start)
    assert low.far[1][0] == pytest.approx(start + 89)
    assert high.near[0][0] == pytest.approx(start + 50 * math.sqrt(2))
    assert high.far[0][0] == pytest.approx(start + 89 + 50 * math.sqrt(2))
    assert low.last_cut[0].mitre != 0
    # Both cuts lie in the purlin's parallel faces.
    assert low.last_cut[0].mitre == pytest.approx(high.first_cut[0].mitre)
    assert low.last_cut[0].bevel == pytest.approx(high.first_cut[0].bevel)


def test_the_cut_aslant_lies_in_the_purlins_face() -> None:
    """The saw's plane, worked from its setting, against the face u = constant.

    The plate's axis runs (1, 1, root 2 s) with the slope s = 1/root 2 along the wall: the angle of
    the face's normal (1, 0, 0) to the axis is what mitre and bevel together turn the cut by.
    """
    wall = UK.wall((1000, 1000), (3000, 3000))
    low, _ = plates(passed(wall, purlin(2000, 2400, size=(50, 200))))
    (cut,) = low.last_cut
    axis = (1 / math.sqrt(2), 1 / math.sqrt(2), 1 / math.sqrt(2))
    between = axis[0] / math.sqrt(sum(a * a for a in axis))
    assert math.cos(cut.mitre) * math.cos(cut.bevel) == pytest.approx(between)


def test_studs_under_a_high_purlin_are_clear() -> None:
    # Stud 3, from 1181 to 1219, reaches 2719; the purlin over u = 2190 is above 2800.
    made = passed(ACROSS, purlin(2190, 2800))
    assert made.clashes == ()


@pytest.mark.parametrize(
    ("gap", "places"),
    [
        pytest.param(0, (1190 - 38, 1240), id="no gap"),
        pytest.param(10, (1180 - 38, 1250), id="with a gap"),
        # 1190 - 370 - 38 = 782 overlaps the stud at 781; 1240 + 370 = 1610 that at 1581.
        pytest.param(370, (), id="where neighbours stand"),
    ],
)
def test_nearest_places(gap: float, places: tuple[float, ...]) -> None:
    made = passed(ACROSS, purlin(2190, 2600, gap=gap))
    clash = next(c for c in made.clashes if c.key == "B/layout/3")
    assert clash.places == pytest.approx(places)


def test_an_end_stud_is_told_to_move_with_its_wall() -> None:
    made = passed(ACROSS, purlin(1010, 1400))
    ids = [c.message.id for c in made.cautions if c.severity is Severity.UNBUILDABLE]
    assert ids == ["purlin.clash-end"]


def test_an_opening_is_told_with_its_nearest_places() -> None:
    # The door's framing runs from 724 to 1376; at 2100 high the purlin over 1190 hits header and
    # cripples. Clear of it: left = 1240 + 76 = 1316, but the wall's end wants 2000 - 114 - 500 =
    # 1386 at most; and 1190 - 76 - 500 = 614 where the roof is 2114 and more: fits.
    door = UK.opening("door-1", left=800, width=500, head=1400)
    wall = UK.wall((1000, 3000), (3000, 3000), openings=(door,))
    made = passed(wall, purlin(2190, 1420, size=(50, 100)))
    (caution,) = [c for c in made.cautions if c.severity is Severity.UNBUILDABLE]
    assert (caution.key, caution.message.id) == ("B/door-1", "purlin.clash-opening")


def test_a_wall_along_within_a_purlin() -> None:
    wall = UK.wall((2010, 1000), (2010, 4000))
    made = passed(wall, purlin(1950, 2400))
    assert [c.message.id for c in made.cautions if "purlin" in c.message.id] == ["purlin.inside"]
    beside = passed(UK.wall((2210, 1000), (2210, 4000)), purlin(1950, 2400))
    assert not [c for c in beside.cautions if "purlin" in c.message.id]


def test_without_purlins_nothing_changes() -> None:
    assert passed(ACROSS).clashes == ()
    assert all(mark.begins == 0 for mark in passed(ACROSS).marks)
    assert member(frame_of(passed(ACROSS)), "top/1/1").right == pytest.approx(2000)


def frame_of(made: WallResult) -> Any:
    assert made.frame is not None
    return made.frame
