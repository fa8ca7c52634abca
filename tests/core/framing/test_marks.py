"""Marks on the plates: lines and letters, from either end, by either habit."""

from __future__ import annotations

import pytest

from core.framing import Mark
from core.model import HeaderKind, LineEdge, Room, Side, Wall
from walls import US, in_12, result

NEAR, UPHILL = LineEdge.NEAR, LineEdge.UPHILL
SLOPE = (12.0, in_12(9))
GABLE = US.room(264, SLOPE, SLOPE)
TIES = US.room(264, SLOPE, SLOPE, flat=84)
FLAT = US.room(264, left=(96, in_12(0)))
RAKE = US.wall((48, 9), (92, 9))
"""44 long up 9 in 12: studs at 0, 15.25, 31.25 and 42.5."""
FALLING = US.wall((92, 9), (48, 9))
FROM_RIGHT = US.wall((48, 9), (92, 9), start=Side.RIGHT)
"""Layout from the right: places at 44 - 16.75 = 27.25 and 44 - 32.75 = 11.25."""


def marks(room: Room, wall: Wall, plate: str, edge: LineEdge = NEAR) -> list[Mark]:
    return [m for m in result(room, wall, edge).marks if m.plate == f"B/{plate}"]


def lines(found: list[Mark]) -> list[tuple[str, float]]:
    """The cause of each line and its running distance along its own plate, in inches."""
    return [(m.member.removeprefix("B/"), round(US.of(m.along), 4)) for m in found]


def sides(found: list[Mark]) -> set[tuple[str, str, str]]:
    """The end the tape hooks on, the edge lined, the side of the letter."""
    return {(m.origin.value, m.edge.value, m.x_side.value) for m in found}


@pytest.mark.parametrize(
    ("wall", "edge", "along", "side"),
    [
        pytest.param(RAKE, NEAR, [0, 15.25, 31.25, 42.5], ("left", "left", "right"), id="near"),
        pytest.param(RAKE, UPHILL, [1.5, 16.75, 32.75, 44], ("left", "right", "left"), id="uphill"),
        pytest.param(
            FALLING, UPHILL, [0, 15.25, 31.25, 42.5], ("left", "left", "right"), id="falling"
        ),
        # Running from the right end: 0, 15.25, 31.25 and 42.5 again.
        pytest.param(
            FROM_RIGHT, NEAR, [0, 15.25, 31.25, 42.5], ("right", "right", "left"), id="right end"
        ),
        # Uphill is the right edge, the near one from the right end.
        pytest.param(
            FROM_RIGHT,
            UPHILL,
            [0, 15.25, 31.25, 42.5],
            ("right", "right", "left"),
            id="right end, uphill",
        ),
    ],
)
def test_sole_plate(
    wall: Wall, edge: LineEdge, along: list[float], side: tuple[str, str, str]
) -> None:
    found = marks(GABLE, wall, "sole", edge)
    assert [place for _, place in lines(found)] == along
    assert sides(found) == {side}
    assert {m.along_top for m in found} == {None}


@pytest.mark.parametrize(
    ("wall", "edge", "along", "side"),
    [
        # Along the floor times 1.25, from the low end.
        pytest.param(
            RAKE, NEAR, [0, 19.0625, 39.0625, 53.125], ("left", "left", "right"), id="near"
        ),
        pytest.param(
            RAKE, UPHILL, [1.875, 20.9375, 40.9375, 55], ("left", "right", "left"), id="uphill"
        ),
        # Falling to the right the low end is the right one. Right edges from there: 44 - 44,
        # 44 - 32.75 = 11.25, 44 - 16.75 = 27.25, 44 - 1.5 = 42.5.
        pytest.param(
            FALLING, NEAR, [0, 14.0625, 34.0625, 53.125], ("right", "right", "left"), id="falling"
        ),
        # Left edges: 1.5, 12.75, 28.75, 44.
        pytest.param(
            FALLING,
            UPHILL,
            [1.875, 15.9375, 35.9375, 55],
            ("right", "left", "right"),
            id="falling, uphill",
        ),
        # The low end stays the left one: 0, 11.25, 27.25, 42.5.
        pytest.param(
            FROM_RIGHT,
            NEAR,
            [0, 14.0625, 34.0625, 53.125],
            ("left", "left", "right"),
            id="layout from the right",
        ),
    ],
)
def test_sloping_plate(
    wall: Wall, edge: LineEdge, along: list[float], side: tuple[str, str, str]
) -> None:
    found = marks(GABLE, wall, "top/1/1", edge)
    assert [place for _, place in lines(found)] == pytest.approx(along)
    assert sides(found) == {side}
    assert [US.of(m.along_sole) * 1.25 for m in found] == pytest.approx(along)


@pytest.mark.parametrize("edge", [NEAR, UPHILL])
@pytest.mark.parametrize("start", [Side.LEFT, Side.RIGHT])
@pytest.mark.parametrize(
    "room_ends",
    [(FLAT, ((0, 9), (44, 9))), (GABLE, ((48, 0), (48, 44)))],
    ids=["level", "knee wall"],
)
def test_without_an_uphill_edge_the_near_edge_is_lined(
    edge: LineEdge,
    start: Side,
    room_ends: tuple[Room, tuple[tuple[float, float], tuple[float, float]]],
) -> None:
    room, ends = room_ends
    wall = US.wall(*ends, start=start)
    for plate in ("sole", "top/1/1"):
        found = marks(room, wall, plate, edge)
        assert [place for _, place in lines(found)] == [0, 15.25, 31.25, 42.5]
        assert sides(found) == {(start.value, start.value, start.other.value)}


def test_gable_marks_run_from_both_low_ends() -> None:
    wall = US.wall((108, 9), (156, 9))
    # 48 long, the ridge at 24: on the right 48 - 48, 48 - 32.75 = 15.25 times 1.25.
    assert lines(marks(GABLE, wall, "top/1/1")) == [("end/left", 0), ("layout/1", 19.0625)]
    assert lines(marks(GABLE, wall, "top/2/1")) == [("end/right", 0), ("layout/2", 19.0625)]


@pytest.mark.parametrize(
    ("left", "plate", "edge", "along"),
    [
        # The ridge at 24. Under its middle on the left plate: the left edge is lined.
        pytest.param(23.0, "top/1/1", Side.LEFT, 28.75, id="mostly left"),
        pytest.param(23.25, "top/1/1", Side.LEFT, 29.0625, id="at the middle"),
        # From the right low end, 48 - 25 = 23 times 1.25.
        pytest.param(23.5, "top/2/1", Side.RIGHT, 28.75, id="mostly right"),
    ],
)
@pytest.mark.parametrize("habit", [NEAR, UPHILL])
def test_astride_the_ridge(
    left: float, plate: str, edge: Side, along: float, habit: LineEdge
) -> None:
    wall = US.wall((108, 9), (156, 9), added=(("peak", left),))
    found = [m for m in result(GABLE, wall, habit).marks if m.member == "B/peak"]
    (mark,) = [m for m in found if "/top/" in m.plate]
    assert (mark.plate, mark.edge) == (f"B/{plate}", edge)
    assert US.of(mark.along) == pytest.approx(along)


def test_astride_a_break_the_edge_on_the_marked_plate_is_lined() -> None:
    # Undersides break at 48.5 under ties at 84. The uphill edge, 49, lies on the level plate.
    wall = US.wall((48, 9), (152, 9), added=(("x", 47.5),), left_out=(3,))
    (mark,) = [m for m in marks(TIES, wall, "top/1/1", UPHILL) if m.member == "B/x"]
    assert (mark.edge, round(US.of(mark.along), 4)) == (Side.LEFT, 59.375)


@pytest.mark.parametrize(
    ("left", "expected"),
    [
        # A beam from 82.25 to 85.75. Cut to pass under it, the stud meets its plate alone, whose
        # marks run from its left end.
        pytest.param(81.0, ("B/top/2/1", "right", 0.25), id="mostly before the step"),
        pytest.param(82.0, ("B/top/2/1", "right", 1.25), id="mostly under the beam"),
        pytest.param(83.0, ("B/top/2/1", "left", 0.75), id="under the beam"),
        pytest.param(80.75, ("B/top/1/1", "left", 100.9375), id="against the beam"),
    ],
)
def test_at_a_step(left: float, expected: tuple[str, str, float]) -> None:
    room = US.room(264, SLOPE, SLOPE, beam=(3.5, 100))
    wall = US.wall((48, 9), (216, 9), added=(("x", left),), left_out=(5,))
    (mark,) = [m for m in result(room, wall).marks if m.member == "B/x" and "/top/" in m.plate]
    assert (mark.plate, mark.edge.value, round(US.of(mark.along), 4)) == expected


def test_letters_and_plates_around_a_window() -> None:
    window = US.opening("window-1", 20, 32, 40, sill=20)
    wall = US.wall((0, 9), (72, 9), openings=(window,))
    written = {
        plate: [(m.letter, round(US.of(m.along), 4)) for m in marks(FLAT, wall, plate)]
        for plate in ("sole", "top/1/1", "window-1/header/1")
    }
    # Kings at 17 and 53.5, trimmers at 18.5 and 52; places 2 (31.25) and 3 (47.25) above and below.
    assert written["sole"] == [
        ("X", 0),
        ("X", 15.25),
        ("K", 17),
        ("T", 18.5),
        ("C", 31.25),
        ("C", 47.25),
        ("T", 52),
        ("K", 53.5),
        ("X", 63.25),
        ("X", 70.5),
    ]
    # Trimmers end under the header, the cripples below under the sill.
    without_trimmers = [mark for mark in written["sole"] if mark[0] != "T"]
    assert written["top/1/1"] == without_trimmers
    # The header begins at 18.5: 31.25 - 18.5 and 47.25 - 18.5.
    assert written["window-1/header/1"] == [("C", 12.75), ("C", 28.75)]


def test_header_marks_from_the_right() -> None:
    door = US.opening("door-1", 20, 32, 80)
    wall = US.wall((0, 9), (72, 9), start=Side.RIGHT, openings=(door,))
    # Places from the right at 72 - 16.75 = 55.25 (a king's), 39.25, 23.25; the header ends at 53.5.
    found = marks(FLAT, wall, "door-1/header/1")
    assert lines(found) == [("door-1/above/2", 12.75), ("door-1/above/3", 28.75)]
    assert sides(found) == {("right", "right", "left")}


@pytest.mark.parametrize(
    ("kind", "plies", "marked"),
    [(HeaderKind.FLAT, 2, "door-1/header/2"), (HeaderKind.ON_EDGE, 2, "door-1/header/1")],
)
def test_cripples_are_marked_on_the_ply_they_stand_on(
    kind: HeaderKind, plies: int, marked: str
) -> None:
    door = US.opening("door-1", 20, 32, 80, header=US.header(kind, plies=plies))
    wall = US.wall((0, 9), (72, 9), openings=(door,))
    on_headers = {m.plate for m in result(FLAT, wall).marks if "/header/" in m.plate}
    assert on_headers == {f"B/{marked}"}


def test_of_two_top_plates_the_lower_is_marked() -> None:
    wall = US.wall((48, 9), (92, 9), plates=2)
    assert marks(GABLE, wall, "top/1/1") == []
    assert [p for _, p in lines(marks(GABLE, wall, "top/1/2"))] == [0, 19.0625, 39.0625, 53.125]


def test_marks_go_plate_by_plate_and_along_each() -> None:
    door = US.opening("door-1", 56, 34, 82.5)
    found = result(GABLE, US.wall((48, 9), (216, 9), openings=(door,))).marks
    plates = list(dict.fromkeys(m.plate for m in found))
    assert plates == ["B/sole", "B/top/1/1", "B/top/2/1", "B/door-1/header/1"]
    for plate in plates:
        along = [m.along for m in found if m.plate == plate]
        assert along == sorted(along)
