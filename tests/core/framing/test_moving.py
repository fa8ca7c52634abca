"""Where things go while they are moved: snaps in their order, and limits."""

from __future__ import annotations

import msgspec
import pytest

from core.framing.moving import (
    Grip,
    Moved,
    Snap,
    box_move,
    movable,
    opening_move,
    sill_move,
    stud_move,
)
from core.framing.stopping import Stop
from core.model import BoxHeight, DoubledStud, Opening, Room, Side, Wall, WallRules
from walls import US, frame_of, in_12, member

FLAT = US.room(264, left=(96, in_12(0)))
RAKE = US.room(264, left=(24, in_12(9)))
DOOR = US.opening("door-1", 40, 32, 80)
"""Framed from 37 to 75: kings at 37 and 73.5, header from 38.5 to 73.5, cripples 3 and 4."""
INCH = 25.4
TAPE = Grip(INCH / 16, INCH / 2)
FREE = Grip(INCH / 16, INCH / 2, free=True)
PLAIN = US.wall((0, 9), (120, 9))
"""Studs at 0, 15.25, 31.25, 47.25, 63.25, 79.25, 95.25, 111.25 and 118.5."""


def with_openings(*openings: Opening) -> Wall:
    return US.wall((0, 9), (120, 9), openings=openings)


def settled(moved: Moved) -> tuple[float, Snap]:
    return round(US.of(moved.left), 4), moved.snap


def move(wall: Wall, cause: str, wanted: float, grip: Grip) -> tuple[float, Snap]:
    frame = frame_of(FLAT, wall)
    return settled(stud_move(wall, frame, f"B/{cause}", wanted * INCH, grip))


@pytest.mark.parametrize(
    ("wanted", "grip", "expected"),
    [
        pytest.param(31.4, TAPE, (31.25, Snap.LAYOUT), id="back to its place"),
        pytest.param(17.1, TAPE, (16.75, Snap.FACE), id="against the stud on its left"),
        pytest.param(45.5, TAPE, (45.75, Snap.FACE), id="against the stud on its right"),
        pytest.param(35.03, TAPE, (35.0, Snap.STEP), id="to a sixteenth"),
        pytest.param(35.04, TAPE, (35.0625, Snap.STEP), id="to the next sixteenth"),
        pytest.param(31.4, FREE, (31.4, Snap.FREE), id="free"),
        pytest.param(16.0, TAPE, (16.75, Snap.LIMIT), id="not through a stud"),
        pytest.param(16.0, FREE, (16.75, Snap.LIMIT), id="not through a stud, free"),
        pytest.param(14.6, FREE, (13.75, Snap.LIMIT), id="to its nearer side"),
        pytest.param(-5, TAPE, (1.5, Snap.LIMIT), id="not past the end stud"),
        pytest.param(200, TAPE, (117, Snap.LIMIT), id="not past the other end stud"),
        pytest.param(55.5, TAPE, (55.5, Snap.STEP), id="beyond its neighbours"),
    ],
)
def test_stud(wanted: float, grip: Grip, expected: tuple[float, Snap]) -> None:
    assert move(PLAIN, "layout/2", wanted, grip) == expected


@pytest.mark.parametrize(
    ("cause", "wanted", "expected"),
    [
        pytest.param("layout/2", 36, (35.5, Snap.LIMIT), id="stud: not into the king"),
        pytest.param("layout/5", 70, (75, Snap.LIMIT), id="stud: not into the door"),
        # Between the kings, clear of the other cripple at 63.25.
        pytest.param("door-1/above/3", 55, (55, Snap.FREE), id="cripple"),
        pytest.param("door-1/above/3", 30, (38.5, Snap.LIMIT), id="cripple: not past the header"),
        pytest.param("door-1/above/3", 62.9, (61.75, Snap.LIMIT), id="cripple: not into the other"),
        pytest.param("door-1/above/4", 76, (72, Snap.LIMIT), id="cripple: not past the right end"),
    ],
)
def test_beside_and_over_a_door(cause: str, wanted: float, expected: tuple[float, Snap]) -> None:
    assert move(with_openings(DOOR), cause, wanted, FREE) == expected


def test_a_cripple_below_a_sill_stays_between_the_trimmers() -> None:
    wall = with_openings(US.opening("window-1", 40, 32, 70, sill=30))
    assert move(wall, "window-1/below/3", 30, FREE) == (40, Snap.LIMIT)
    assert move(wall, "window-1/below/4", 90, FREE) == (70.5, Snap.LIMIT)


@pytest.mark.parametrize(
    ("cause", "moves"),
    [
        ("layout/2", True),
        ("x", True),
        ("door-1/above/3", True),
        ("end/left", False),
        ("door-1/king/left", False),
        ("door-1/trimmer/left", False),
        ("door-1/header/1", False),
        ("sole", False),
        ("top/1/1", False),
    ],
)
def test_movable(cause: str, moves: bool) -> None:
    wall = US.wall((0, 9), (120, 9), openings=(DOOR,), added=(("x", 20.0),))
    frame = frame_of(FLAT, wall)
    assert movable(member(frame, cause)) is moves
    if not moves:
        with pytest.raises(ValueError, match="does not move"):
            stud_move(wall, frame, f"B/{cause}", 500.0, TAPE)


def test_no_such_thing() -> None:
    frame = frame_of(FLAT, PLAIN)
    with pytest.raises(KeyError):
        stud_move(PLAIN, frame, "B/layout/99", 500.0, TAPE)
    with pytest.raises(KeyError):
        opening_move(PLAIN, frame, "door-1", 500.0, TAPE)
    with pytest.raises(KeyError):
        box_move(PLAIN, frame, "box-1", (500.0, 500.0), TAPE)


@pytest.mark.parametrize(
    ("wanted", "grip", "expected"),
    [
        # A left king at 31.25 puts the opening at 34.25; a right one at 79.25 puts it at 45.75.
        pytest.param(34.5, TAPE, (34.25, Snap.LAYOUT), id="left king on the layout"),
        pytest.param(45.5, TAPE, (45.75, Snap.LAYOUT), id="right king on the layout"),
        pytest.param(38.03, TAPE, (38.0, Snap.STEP), id="to a sixteenth"),
        pytest.param(34.5, FREE, (34.5, Snap.FREE), id="free"),
        pytest.param(-9, TAPE, (4.5, Snap.LIMIT), id="left end"),
        pytest.param(200, FREE, (83.5, Snap.LIMIT), id="right end"),
    ],
)
def test_opening(wanted: float, grip: Grip, expected: tuple[float, Snap]) -> None:
    wall = with_openings(DOOR)
    moved = opening_move(wall, frame_of(FLAT, wall), "door-1", wanted * INCH, grip)
    assert settled(moved) == expected


@pytest.mark.parametrize(
    ("wanted", "expected"),
    [(77.7, (78, Snap.FACE)), (70, (78, Snap.LIMIT)), (1, (4.5, Snap.LIMIT))],
)
def test_opening_beside_another(wanted: float, expected: tuple[float, Snap]) -> None:
    # The first ends at 75, so the second starts at 78 or after; before it at 37 - 3 - 10 = 24.
    wall = with_openings(DOOR, US.opening("door-2", 90, 10, 80))
    moved = opening_move(wall, frame_of(FLAT, wall), "door-2", wanted * INCH, TAPE)
    assert settled(moved) == expected


def test_an_opening_that_fits_nowhere_stays() -> None:
    wall = with_openings(US.opening("door-1", 40, 32, 95))
    moved = opening_move(wall, frame_of(FLAT, wall), "door-1", 50 * INCH, TAPE)
    assert settled(moved) == (40, Snap.LIMIT)


def moved_box(
    wanted: tuple[float, float],
    to: BoxHeight = BoxHeight.CENTRE,
    room: Room = FLAT,
    grip: Grip = TAPE,
) -> tuple[str, Side, float]:
    """Where a box 2 wide and 4 tall at the right of stud 1 goes; its height in inches."""
    box = US.box("box-1", "B/layout/1", Side.RIGHT, 12, to)
    wall = US.wall((0, 9), (120, 9), openings=(DOOR,), boxes=(box,))
    corner = (wanted[0] * INCH, wanted[1] * INCH)
    moved = box_move(wall, frame_of(room, wall), "box-1", corner, grip)
    return moved.stud.removeprefix("B/"), moved.side, round(US.of(moved.height), 4)


@pytest.mark.parametrize(
    ("x", "stud", "side"),
    [
        (33.0, "layout/2", Side.RIGHT),  # its right side begins at 32.75
        (29.0, "layout/2", Side.LEFT),  # on the left a box begins at 29.25
        (25.0, "layout/2", Side.LEFT),  # 16.75 is further off
        (35.2, "door-1/king/left", Side.LEFT),
        (41.0, "door-1/king/left", Side.LEFT),  # not on the trimmer, in the doorway
        (75.5, "door-1/king/right", Side.RIGHT),
        (2.0, "end/left", Side.RIGHT),
        (-9.0, "end/left", Side.RIGHT),  # not on its outer side, out of the wall
        (140.0, "end/right", Side.LEFT),
    ],
)
def test_box_goes_to_the_nearest_free_side(x: float, stud: str, side: Side) -> None:
    assert moved_box((x, 10)) == (stud, side, 12.0)


@pytest.mark.parametrize(
    ("to", "bottom", "height"),
    [
        (BoxHeight.CENTRE, 10.0, 12.0),
        (BoxHeight.BOTTOM, 10.0, 10.0),
        (BoxHeight.TOP, 10.0, 14.0),
        (BoxHeight.BOTTOM, 10.03, 10.0),  # to a sixteenth
        (BoxHeight.BOTTOM, -9.0, 1.5),  # on the sole plate
        (BoxHeight.TOP, 200.0, 94.5),  # under the top plate
    ],
)
def test_height_of_a_box(to: BoxHeight, bottom: float, height: float) -> None:
    assert moved_box((17, bottom), to) == ("layout/1", Side.RIGHT, height)


def test_height_of_a_box_held_free() -> None:
    assert moved_box((17, 10.03), BoxHeight.BOTTOM, grip=FREE)[2] == 10.03


def test_a_box_stays_within_its_stud_whatever_the_step() -> None:
    # The left side of stud 1 reaches 24 + 11.4375 - 1.875 = 33.5625; a box 4 tall is centred at
    # 31.5625 at most, that is 801.6875 mm, which in steps of 1 mm would be 802.
    moved = moved_box((13.25, 90), BoxHeight.CENTRE, RAKE, Grip(1.0, INCH / 2))
    assert moved == ("layout/1", Side.LEFT, 31.5625)


@pytest.mark.parametrize(
    ("side", "wanted", "left"),
    [
        # Mark 2 of a wall of 60: between the studs at 15.25 to 16.75 and 47.25.
        (Side.RIGHT, 45, 47.25 - 3),  # its second, on its right, stands between
        (Side.RIGHT, 16, 16.75),
        (Side.LEFT, 46.5, 45.75),
        (Side.LEFT, 17, 16.75 + 1.5),
    ],
)
def test_a_stud_moves_with_its_second(side: Side, wanted: float, left: float) -> None:
    room = US.room(264, left=(96, in_12(0)))
    wall = US.wall((0, 9), (60, 9), spacing=16)
    wall = msgspec.structs.replace(wall, doubled=(DoubledStud("B/layout/2", side),))
    frame = frame_of(room, wall)
    moved = stud_move(wall, frame, "B/layout/2", US.length(wanted).mm, Grip(1.0, 0.0, free=True))
    assert US.of(moved.left) == pytest.approx(left)


def test_an_opening_snaps_to_where_it_shares_a_king() -> None:
    # Beside the door from 40 to 72: 72 + 4 1/2, a place of its own before 72 + 6.
    second = US.opening("door-2", 85, 20, 80)
    wall = with_openings(DOOR, second)
    wall = msgspec.structs.replace(wall, rules=WallRules(share_kings=True))
    frame = frame_of(FLAT, wall)
    for wanted, expected in ((76.3, 76.5), (76.8, 76.5)):
        moved = opening_move(wall, frame, "door-2", US.length(wanted).mm, TAPE)
        assert settled(moved) == (expected, Snap.FACE)


def test_what_stops_a_stud_is_named() -> None:
    frame = frame_of(FLAT, PLAIN)
    moved = stud_move(PLAIN, frame, "B/layout/2", 16 * INCH, FREE)
    assert (moved.stop, moved.other) == (Stop.THING, "B/layout/1")
    moved = stud_move(PLAIN, frame, "B/layout/2", 500 * INCH, FREE)
    assert moved.other == "B/end/right"


def test_a_stud_and_an_opening_find_the_middle_of_the_wall() -> None:
    # 112 in. long with studs 16 in. on centre from the left: no stud stands astride 56.
    wall = US.wall((0, 9), (112, 9), openings=(US.opening("door-1", 30, 32, 80),))
    frame = frame_of(FLAT, wall)
    moved = opening_move(wall, frame, "door-1", 40.2 * INCH, TAPE)
    assert settled(moved) == (40.0, Snap.MIDDLE)
    plain = US.wall((0, 9), (112, 9))
    found = stud_move(plain, frame_of(FLAT, plain), "B/layout/2", 55.4 * INCH, TAPE)
    assert settled(found) == (55.25, Snap.MIDDLE)


WINDOW = US.opening("window-1", 40, 32, 70, sill=30)


@pytest.mark.parametrize(
    ("wanted", "grip", "expected"),
    [
        pytest.param(30.3, TAPE, (30.0, Snap.OWN), id="its own height"),
        # The door's head at 80, less the window's 40.
        pytest.param(39.7, TAPE, (40.0, Snap.LINE), id="head in line with the door's"),
        pytest.param(35.03, TAPE, (35.0, Snap.STEP), id="to a sixteenth"),
        # Sole plate and sill are 1 1/2 each.
        pytest.param(-9.0, TAPE, (3.0, Snap.LIMIT), id="down to the sole plate"),
        # Under a roof at 96 the plate's underside is at 94 1/2; the header takes 1 1/2.
        pytest.param(70.0, TAPE, (53.0, Snap.LIMIT), id="up to the plates"),
    ],
)
def test_a_window_goes_up_and_down(wanted: float, grip: Grip, expected: tuple[float, Snap]) -> None:
    wall = with_openings(WINDOW, US.opening("door-1", 82, 28, 80))
    frame = frame_of(FLAT, wall)
    assert settled(sill_move(wall, frame, "window-1", wanted * INCH, grip)) == expected


def test_a_box_comes_in_line_with_another() -> None:
    boxes = (
        US.box("box-1", "B/layout/2", Side.RIGHT, 14.0),
        US.box("box-2", "B/layout/4", Side.RIGHT, 20.0),
    )
    wall = US.wall((0, 9), (120, 9), boxes=boxes)
    moved = box_move(wall, frame_of(FLAT, wall), "box-1", (32.75 * INCH, 17.7 * INCH), TAPE)
    # Box 1 is 4 in. tall: its foot wanted at 17.7 is its centre at 19.7.
    assert (moved.height, moved.snap, moved.other) == (20 * INCH, Snap.LINE, "B/box-2")
