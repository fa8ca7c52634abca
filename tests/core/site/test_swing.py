"""The swing of a wall's top under the roof, worked by hand in inches."""

from __future__ import annotations

import math

import pytest

from core.model import Room, Wall
from core.site import Laid
from raising import swing
from walls import US, in_12

FLAT = in_12(0)
GABLE = US.room(264, (12, in_12(9)), (12, in_12(9)))
"""NEEDS project 1: 12 at the eaves, 111 at the ridge at 132."""


def inches(mm: float) -> float:
    return US.of(mm)


@pytest.mark.parametrize(
    ("height", "stud", "needs"),
    # FACTS 9, CALC, no published source was found: a wall of this height and thickness needs
    # sqrt(h^2 + t^2) to turn up in.
    [(96, 3.5, 96.064), (93, 5.5, 93.162), (96, 5.5, 96.157)],
)
def test_under_a_level_roof_the_diagonal_has_to_pass(
    height: float, stud: float, needs: float
) -> None:
    room = US.room(264, (height, FLAT))
    wall = US.wall((48, 100), (216, 100), stud=(1.5, stud))
    for laid in Laid:
        found = swing(room, wall, laid)
        assert height - inches(found.clearance) == pytest.approx(needs, abs=6e-4)
        assert inches(found.there) == pytest.approx(0, abs=1e-6)
        assert not found.passes


def test_a_wall_up_the_slope_sticks_at_its_low_end() -> None:
    # From the knee face at 48, where the roof is 48, to the ridge: the lower a point, the more its
    # diagonal is longer than itself. 48 - sqrt(48^2 + 3.5^2) = -0.1274; the wall turns at
    # atan(48 / 3.5) = 85.83 degrees. It passes once its top is at sqrt(48^2 - 3.5^2) = 47.8722,
    # so with a gap of 0.1278.
    found = swing(GABLE, US.wall((48, 100), (132, 100)), Laid.FACE_A)
    assert inches(found.clearance) == pytest.approx(-0.12744, abs=1e-4)
    assert math.degrees(found.angle) == pytest.approx(85.83, abs=0.01)
    assert found.needed is not None
    assert inches(found.needed) == pytest.approx(0.12778, abs=1e-3)
    assert found.worst.x == 0.0


def test_a_knee_wall_goes_up_from_the_room_though_its_plate_is_tight() -> None:
    # Face A at 48, 48 high, looks to the ridge; the far top corner is at 48 - 3.5 * 0.75 = 45.375.
    # As it leans into the room the roof rises faster (0.75 * 45.375 = 34) than the corner (3.5).
    found = swing(GABLE, knee(48), Laid.FACE_A)
    assert found.passes
    assert found.needed == pytest.approx(0, abs=1e-6)


def test_a_knee_wall_does_not_go_up_from_the_eave() -> None:
    # Pivot at the far face, 44.5 from the eave. The near top corner, back = 3.5, is at
    # away = 3.5 - 3.5 sin + 48 cos, up = 48 sin + 3.5 cos, under 48 - 0.75 away:
    # gap = 45.375 - 45.375 sin - 39.5 cos, least 45.375 - hypot(45.375, 39.5) = -14.7849
    # at atan(45.375 / 39.5) = 48.96 degrees.
    found = swing(GABLE, knee(48), Laid.FAR_FACE)
    assert inches(found.clearance) == pytest.approx(-14.7849, abs=1e-3)
    assert math.degrees(found.angle) == pytest.approx(48.96, abs=0.01)


def test_a_low_knee_wall_under_a_low_slope_sticks_from_the_room_too() -> None:
    # 3 in 12, 10 high at face A at 40, far corner 10 - 0.875 = 9.125. Laid into the room:
    # gap = 10 - 0.25 * 3.5 sin + 0.25 * 9.125 cos - 9.125 sin - 3.5 cos
    #     = 10 - 10 sin - 1.21875 cos, least 10 - hypot(10, 1.21875) = -0.0740.
    room = US.room(264, (0, in_12(3)))
    found = swing(room, knee(40), Laid.FACE_A)
    assert inches(found.clearance) == pytest.approx(-0.0740, abs=1e-4)
    assert found.worst.d == pytest.approx(3.5 * 25.4)


def test_a_plate_wider_than_the_wall_stands_proud_and_counts() -> None:
    # A 2x6 lying at 9 in 12 covers 5.5 * 0.8 = 4.4, so 0.45 beyond each face of a 2x4 wall.
    wall = knee(48, plate=(1.5, 5.5))
    found = swing(GABLE, wall, Laid.FAR_FACE)
    # The outer corner stands at d = -0.45, 48.3375 up: back = 3.95.
    # gap = 45.375 - 0.75 * (-3.95 sin + 48.3375 cos) - 48.3375 sin - 3.95 cos
    #     = 45.375 - 45.375 sin - 40.203 cos, least 45.375 - 60.6227 = -15.2477.
    assert inches(found.clearance) == pytest.approx(-15.248, abs=2e-3)
    assert inches(found.worst.d) == pytest.approx(-0.45, abs=1e-6)


def test_a_wall_beside_the_ridge_beam_hits_it_from_across() -> None:
    # Slopes of 9 in 12 from 30 high eaves, a ceiling at 96, and a beam 6 wide under the ridge with
    # its underside at 90: u = 129 to 135. Face A at u = 160 looks to the beam. Laid down on that
    # side, its top lies at u = 64; the far corner comes up in an arc about u = 160 with radius
    # sqrt(96^2 + 3.5^2) = 96.064 and leaves the beam at u = 135, 25 from the pivot, at
    # sqrt(96.064^2 - 25^2) = 92.754: 2.754 too high.
    room = US.room(264, (30, in_12(9)), (30, in_12(9)), flat=96, beam=(6, 90))
    found = swing(room, US.wall((160, 300), (160, 100)), Laid.FACE_A)
    assert inches(found.clearance) == pytest.approx(-2.754, abs=2e-3)


def knee(across: float, plate: tuple[float, float] = (1.5, 3.5)) -> Wall:
    """A wall along the ridge with face A toward it: the far side is the eave's."""
    return US.wall((across, 100), (across, 300), plate=plate)


def test_the_far_side_of_a_knee_wall_is_the_eave_side() -> None:
    # Walking from (48, 100) to (48, 300) the left hand points to lower u: away from face A.
    room: Room = GABLE
    assert swing(room, knee(48), Laid.FAR_FACE).clearance < swing(room, knee(48), Laid.FACE_A).there
