"""From the room as stated to planes, ridge and ceilings."""

from __future__ import annotations

import pytest

from core.model import Room
from core.roof import ridge, roof_of
from walls import UK, US, at_degrees, in_12

GABLE = US.room(264, (12, in_12(9)), (12, in_12(9)))
SALTBOX = US.room(264, (14, in_12(10)), (91, in_12(3)))
SHED = US.room(120, left=(60, in_12(4)))
SHED_TO_THE_LEFT = US.room(120, right=(60, in_12(4)))


def heights(room: Room, *across: float) -> list[float]:
    """Heights overhead at places across the room, in inches."""
    roof = roof_of(room)
    return [US.of(roof.height((US.length(u).mm, 1000.0))) for u in across]


@pytest.mark.parametrize(
    ("room", "expected"),
    [
        (GABLE, (12, 48, 111, 48, 12)),  # 12 + 48 x 0.75 = 48; 12 + 132 x 0.75 = 111
        (SALTBOX, (14, 54, 124, 103, 91)),  # 14 + 40 = 54; 124 - 84 / 4 = 103
    ],
)
def test_two_slopes(room: Room, expected: tuple[float, ...]) -> None:
    assert heights(room, 0, 48, 132, 216, 264) == pytest.approx(expected)


@pytest.mark.parametrize(
    ("room", "expected"), [(SHED, (60, 70, 100)), (SHED_TO_THE_LEFT, (100, 90, 60))]
)
def test_one_slope(room: Room, expected: tuple[float, ...]) -> None:
    # A rise of 4 in 12: 30 in. give 10, 120 give 40.
    assert heights(room, 0, 30, 120) == pytest.approx(expected)


@pytest.mark.parametrize(
    ("room", "across", "height"),
    [
        (GABLE, 132, 111),
        (SALTBOX, 132, 124),
        # Unequal eaves: 40 + u = 10 + 200 - u gives 85.
        (US.room(200, (40, in_12(12)), (10, in_12(12))), 85, 125),
        # One side flat: 24 + u / 2 = 96 at u = 144.
        (US.room(264, (24, in_12(6)), (96, in_12(0))), 144, 96),
    ],
)
def test_ridge(room: Room, across: float, height: float) -> None:
    found = ridge(room)
    assert found is not None
    assert (US.of(found[0]), US.of(found[1])) == pytest.approx((across, height))


@pytest.mark.parametrize(
    "room", [SHED, SHED_TO_THE_LEFT, US.room(200, (96, in_12(0)), (90, in_12(0)))]
)
def test_no_ridge(room: Room) -> None:
    assert ridge(room) is None


def test_a_room_without_slopes_has_no_roof() -> None:
    with pytest.raises(ValueError, match="at least one roof slope"):
        roof_of(US.room(264))


def test_flat_ceiling_under_ties() -> None:
    # 12 + 0.75 u = 84 at u = 96.
    room = US.room(264, (12, in_12(9)), (12, in_12(9)), flat=84)
    assert heights(room, 90, 96, 132, 168, 174) == pytest.approx((79.5, 84, 84, 84, 79.5))


def test_ridge_beam_is_a_step() -> None:
    # A beam 3 1/2 in. wide under the ridge, its underside at 100: from 130.25 to 133.75.
    room = US.room(264, (12, in_12(9)), (12, in_12(9)), beam=(3.5, 100))
    expected = (109.6125, 100, 100, 100, 109.6125)
    assert heights(room, 130.15, 130.35, 132, 133.65, 133.85) == pytest.approx(expected)


def test_a_beam_above_the_rafters_makes_no_step() -> None:
    # Its underside at 110.5 is met by the rafters at 132 -+ 2/3, within its half width 1 3/4.
    room = US.room(264, (12, in_12(9)), (12, in_12(9)), beam=(3.5, 110.5))
    assert heights(room, 130.26, 131, 132) == pytest.approx((109.695, 110.25, 110.5))


def test_a_shed_has_no_ridge_beam() -> None:
    room = US.room(120, left=(60, in_12(4)), beam=(3.5, 70))
    assert roof_of(room).ceilings == ()


def test_metric_degrees() -> None:
    # tan 40 = 0.83910; 1150 x 0.83910 = 965.0.
    room = UK.room(6400, (0, at_degrees(40)), (0, at_degrees(40)), flat=2300)
    roof = roof_of(room)
    places = [round(roof.height((u, 0.0)), 1) for u in (1150.0, 2741.0, 3200.0, 5250.0)]
    assert places == [965.0, 2300.0, 2300.0, 965.0]
