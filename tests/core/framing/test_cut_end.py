"""The shapes of cut ends, in inches: corners across and out of the end, and lengths at them."""

from __future__ import annotations

import pytest

from core.framing import CutEnd, cut_ends
from core.model import Room, Side, Wall
from walls import US, frame_of, in_12, member

GABLE = US.room(264, (30, in_12(9)), (30, in_12(9)))
RAKE = US.wall((36, 96), (228, 96))
KNEE = US.wall((36, 240), (36, 96), plate=(1.5, 5.5))


def ends(room: Room, wall: Wall, cause: str) -> tuple[CutEnd, ...]:
    return cut_ends(member(frame_of(room, wall), cause))


def inches(corners: tuple[tuple[float, float], ...]) -> list[tuple[float, float]]:
    return [(US.of(a), US.of(out)) for a, out in corners]


def test_a_bevel_slants_over_the_thickness() -> None:
    # 1.5 x 0.75 = 1.125; the foot is square.
    (end,) = ends(GABLE, RAKE, "layout/1")
    assert end.side is Side.RIGHT
    assert inches(end.near) == [pytest.approx((0, 0)), pytest.approx((1.5, 1.125))]
    assert end.far == end.near
    assert (US.of(end.wide), US.of(end.deep)) == pytest.approx((1.5, 3.5))
    assert end.face_up == "right"


def test_a_mitre_slants_over_the_width() -> None:
    # 3.5 x 0.75 = 2.625 higher on the far face.
    (end,) = ends(GABLE, KNEE, "layout/2")
    assert inches(end.near) == [pytest.approx((0, 0)), pytest.approx((1.5, 0))]
    assert inches(end.far) == [pytest.approx((0, 2.625)), pytest.approx((1.5, 2.625))]
    assert end.face_up == "any"


def test_a_stud_under_the_ridge_has_a_peak() -> None:
    # Its middle is at 96, under the ridge: half of 1.5 x 0.75 up on either side.
    (end,) = ends(GABLE, RAKE, "layout/6")
    assert inches(end.near) == [
        pytest.approx((0, 0)),
        pytest.approx((0.75, 0.5625)),
        pytest.approx((1.5, 0)),
    ]
    ridge = member(frame_of(GABLE, RAKE), "layout/6")
    assert end.lengths[0] == pytest.approx((ridge.edges[0], ridge.long_point, ridge.edges[1]))


def test_a_plates_ends_are_one_where_they_are_alike() -> None:
    # Plumb at the foot, plumb at the ridge: the plate's square thickness makes 1.5 x 0.75 of it.
    (end,) = ends(GABLE, RAKE, "top/1/1")
    assert end.both
    assert inches(end.near) == [pytest.approx((0, 0)), pytest.approx((1.5, 1.125))]


def test_a_plates_ends_are_two_where_they_differ() -> None:
    # Under a flat ceiling the plates share the angle, and the top reaches 1.5 x tan 18.43 = 1/2
    # further; at the plumb left end it is the underside, by 1.5 x 0.75.
    room = US.room(264, (30, in_12(9)), (30, in_12(9)), flat=90)
    right, left = ends(room, RAKE, "top/1/1")
    assert (right.side, left.side) == (Side.RIGHT, Side.LEFT)
    assert inches(right.near) == [pytest.approx((0, 0)), pytest.approx((1.5, 0.5))]
    assert inches(left.near) == [pytest.approx((0, 1.125)), pytest.approx((1.5, 0))]
    plate = member(frame_of(room, RAKE), "top/1/1")
    assert right.lengths == ((plate.edges[0], plate.edges[1]), (plate.edges[2], plate.edges[3]))


def test_what_is_square_has_none() -> None:
    assert ends(GABLE, RAKE, "sole") == ()
