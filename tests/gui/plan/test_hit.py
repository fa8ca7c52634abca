"""What lies under a point of the plan."""

from __future__ import annotations

import pytest
from msgspec.structs import replace

from gui.plan.hit import thing_under
from loft import INCH, loft
from walls import US

# From (12, 100) to (132, 100), its timber from 100 to 103 1/2 along the room.
WALL = US.wall((12.0, 100.0), (132.0, 100.0))


@pytest.mark.parametrize(
    ("point", "found"),
    [
        ((72, 101), "B"),
        ((72, 98.5), "B"),
        ((72, 97.5), None),
        ((72, 105.4), "B"),
        ((10.5, 101), "B"),
        ((133.9, 101), "B"),
        # Two along and two away from the corner is more than two.
        ((134, 105.5), None),
    ],
)
def test_a_wall_is_found_on_it_and_near_it(point: tuple[float, float], found: str | None) -> None:
    at = (point[0] * INCH, point[1] * INCH)
    assert thing_under(replace(loft(), walls=(WALL,)), at, 2 * INCH) == found


def test_a_wall_without_length_is_nowhere() -> None:
    project = replace(loft(), walls=(US.wall((5.0, 5.0), (5.0, 5.0)),))
    assert thing_under(project, (5 * INCH, 5 * INCH), INCH) is None
