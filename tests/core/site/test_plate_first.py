"""Two top plates, the upper one nailed up before the wall is tilted up under it; in inches."""

from __future__ import annotations

import pytest

from core.site import Laid
from raising import raised
from walls import US, in_12

GABLE = US.room(264, (12, in_12(9)), (12, in_12(9)))


def test_under_a_level_plate() -> None:
    # Roof at 96, plates of 1 1/2: the lower one's top is at 94 1/2. Its far corner turns with the
    # radius sqrt(94.5^2 + 3.5^2) = 94.5648 and comes under the plate as it is highest: 0.0648 too
    # high. It passes at sqrt(94.5^2 - 3.5^2) = 94.4352.
    room = US.room(264, (96, in_12(0)))
    up = raised(room, US.wall((48, 100), (216, 100), plates=2))
    assert up.beneath is not None
    for swing in up.beneath:
        assert US.of(swing.clearance) == pytest.approx(-0.0648, abs=1e-4)
        assert swing.needed is not None
        assert US.of(swing.needed) == pytest.approx(94.5 - 94.4352, abs=2e-4)


def test_a_single_plate_is_not_up_first() -> None:
    assert raised(GABLE, US.wall((48, 100), (216, 100))).beneath is None


def test_a_knee_wall_still_goes_up_from_the_room() -> None:
    # The lower plate's top is 48 - 1.5 * 1.25 = 46.125 at face A, 43.5 at the far face. Leaning
    # into the room the far corner sinks away from the plate over it: 0.75 * 43.5 > 3.5.
    up = raised(GABLE, US.wall((48, 100), (48, 300), plates=2))
    assert up.beneath is not None
    near, far = up.beneath
    assert near.laid is Laid.FACE_A
    assert near.passes
    assert not far.passes


def test_up_the_slope_the_lower_plate_needs_more_than_both() -> None:
    # At the low end the lower plate's top is 46.125: 46.125 - sqrt(46.125^2 - 3.5^2) = 0.1330,
    # where both plates together need 0.1278 (see test_swing).
    up = raised(GABLE, US.wall((48, 100), (132, 100), plates=2))
    assert up.beneath is not None
    needed = up.beneath[0].needed
    assert needed is not None
    assert US.of(needed) == pytest.approx(0.1330, abs=1e-3)
