"""Boxes: on either side of a stud, at every way of stating a height, and what is in the way."""

from __future__ import annotations

import msgspec
import pytest

from core.framing import PlacedBox
from core.framing.boxes import box_bottom
from core.model import Box, BoxHeight, Room, Side, WallFace
from walls import US, in_12, result

FLAT = US.room(264, left=(96, in_12(0)))
RAKE = US.room(264, left=(24, in_12(9)))
WINDOW = US.opening("window-1", 40, 32, 70, sill=30)
"""Kings at 37 and 73.5, trimmers at 38.5 and 72; cripples of places 3 (47.25) and 4 (63.25)."""
LEFT, RIGHT = Side.LEFT, Side.RIGHT


def place(box: Box, room: Room = FLAT) -> tuple[PlacedBox, list[str]]:
    """A box in a wall of 120 with a window, and the messages it gives rise to."""
    found = result(room, US.wall((0, 9), (120, 9), boxes=(box,), openings=(WINDOW,)))
    (placed,) = found.boxes
    return placed, [c.message.id for c in found.cautions if c.key == placed.key]


def box(stud: str, side: Side, height: float, to: BoxHeight = BoxHeight.CENTRE) -> Box:
    """A box 2 wide and 4 tall."""
    return US.box("box-1", f"B/{stud}", side, height, to)


@pytest.mark.parametrize(
    ("to", "bottom"), [(BoxHeight.CENTRE, 10), (BoxHeight.BOTTOM, 12), (BoxHeight.TOP, 8)]
)
def test_stated_height(to: BoxHeight, bottom: float) -> None:
    assert US.of(box_bottom(box("layout/1", RIGHT, 12, to))) == pytest.approx(bottom)


@pytest.mark.parametrize(
    ("stud", "side", "left", "right"),
    [
        ("layout/1", RIGHT, 16.75, 18.75),
        ("layout/1", LEFT, 13.25, 15.25),
        ("end/left", RIGHT, 1.5, 3.5),
        ("end/right", LEFT, 116.5, 118.5),
        ("window-1/king/left", LEFT, 35, 37),
        ("window-1/trimmer/right", LEFT, 70, 72),  # inside the opening: a person may want it there
        ("window-1/below/3", RIGHT, 48.75, 50.75),
    ],
)
def test_sides(stud: str, side: Side, left: float, right: float) -> None:
    placed, messages = place(box(stud, side, 12))
    assert (US.of(placed.left), US.of(placed.right)) == pytest.approx((left, right))
    assert (US.of(placed.bottom), US.of(placed.top)) == pytest.approx((10, 14))
    assert (placed.stud, placed.blocked_by, messages) == (f"B/{stud}", None, [])


@pytest.mark.parametrize(
    ("stud", "side", "height", "blocked_by"),
    [
        pytest.param("window-1/king/left", RIGHT, 12, "window-1/trimmer/left", id="trimmer"),
        pytest.param("window-1/trimmer/right", RIGHT, 12, "window-1/king/right", id="king"),
        pytest.param("window-1/trimmer/left", RIGHT, 30, "window-1/sill/1", id="sill"),
        pytest.param("layout/1", RIGHT, 3, "sole", id="into the sole plate"),
        pytest.param("layout/1", RIGHT, 93, "top/1/1", id="into the top plate"),
        pytest.param("window-1/above/3", RIGHT, 72, "window-1/header/1", id="header"),
    ],
)
def test_blocked(stud: str, side: Side, height: float, blocked_by: str) -> None:
    placed, messages = place(box(stud, side, height))
    assert placed.blocked_by == f"B/{blocked_by}"
    assert len(messages) == 1


@pytest.mark.parametrize(
    ("side", "top", "blocked"),
    [
        # At 31.25 the stud's left edge reaches 24 + 23.4375 - 1.875 = 45.5625, its right 46.6875.
        # On the left the plate is lower still: 44.0625 over the box's far side.
        pytest.param(LEFT, 44, False, id="under the plate"),
        pytest.param(LEFT, 44.1, True, id="its far corner in the plate"),
        pytest.param(RIGHT, 46.6, False, id="the plate rises from the stud"),
    ],
)
def test_under_a_sloping_plate(side: Side, top: float, blocked: bool) -> None:
    placed, messages = place(box("layout/2", side, top, BoxHeight.TOP), RAKE)
    assert placed.stud == "B/layout/2"
    assert placed.blocked_by == ("B/top/1/1" if blocked else None)
    assert messages == (["box.blocked"] if blocked else [])


@pytest.mark.parametrize(
    ("stud", "height"),
    [
        pytest.param("layout/99", 12, id="the stud is gone"),
        pytest.param("window-1/trimmer/left", 69, id="above the trimmer's top"),
        pytest.param("window-1/above/3", 12, id="below the cripple's foot"),
        pytest.param("layout/1", 95, id="above the stud"),
        pytest.param("layout/1", 1, id="below the stud"),
    ],
)
def test_no_stud_to_fix_it_to(stud: str, height: float) -> None:
    placed, messages = place(box(stud, LEFT, height))
    assert (placed.stud, messages) == (None, ["box.no-stud"])


def test_a_box_whose_stud_is_gone_stands_at_the_left_end() -> None:
    placed, _ = place(box("layout/99", LEFT, 12))
    assert (placed.left, US.of(placed.right)) == pytest.approx((0, 2))
    assert placed.key == "B/box-1"


def test_a_box_past_the_end_of_the_wall_is_blocked_by_the_wall() -> None:
    # The left end stud stands at 0: a box 2 wide on its left side would stand from -2 to 0.
    placed, messages = place(box("end/left", LEFT, 12))
    assert (US.of(placed.left), placed.blocked_by, messages) == (-2, "B", ["box.blocked"])


@pytest.mark.parametrize(("height", "blocked_by"), [(15, "B/box-1"), (16, None)])
def test_two_boxes_in_one_place(height: float, blocked_by: str | None) -> None:
    # The first reaches from 10 to 14; the second, 4 tall about its centre, from 13 or from 14.
    boxes = (
        US.box("box-1", "B/layout/1", RIGHT, 12),
        US.box("box-2", "B/layout/1", RIGHT, height),
    )
    found = result(FLAT, US.wall((0, 9), (120, 9), boxes=boxes))
    assert [b.blocked_by for b in found.boxes] == [None, blocked_by]


def test_a_box_flush_with_the_stud_s_end_is_held() -> None:
    # The trimmer reaches from 1.5 to 70: a box of 4 with its top at 70, or its bottom at 1.5.
    for height, to in ((70, BoxHeight.TOP), (1.5, BoxHeight.BOTTOM)):
        placed, messages = place(box("window-1/trimmer/right", LEFT, height, to))
        assert (placed.stud, messages) == ("B/window-1/trimmer/right", [])


@pytest.mark.parametrize(
    ("depth", "blocked_by"),
    [
        # Studs are 3 1/2 deep: two boxes of 1 3/4 stand back to back, deeper ones do not.
        (1.75, None),
        (1.8125, "B/box-1"),
    ],
)
def test_boxes_on_opposite_faces_stand_back_to_back(depth: float, blocked_by: str | None) -> None:
    near, far = (
        msgspec.structs.replace(
            US.box(name, "B/layout/1", RIGHT, 12), depth=US.length(depth), face=face
        )
        for name, face in (("box-1", None), ("box-2", WallFace.FAR))
    )
    found = result(FLAT, US.wall((0, 9), (120, 9), boxes=(near, far)))
    assert [b.blocked_by for b in found.boxes] == [None, blocked_by]
    same = result(FLAT, US.wall((0, 9), (120, 9), boxes=(near, _on_a(far))))
    assert same.boxes[1].blocked_by == "B/box-1"


def _on_a(box: Box) -> Box:
    return msgspec.structs.replace(box, face=WallFace.A)
