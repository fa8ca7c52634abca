"""How far a wall is from what stands around it, in inches."""

from __future__ import annotations

import pytest

from core.chalk import clearances
from core.framing import Footprint, footprints
from core.model import Wall
from walls import US

INCH = 25.4
EDGE = ((0.0, 0.0), (240 * INCH, 0.0), (240 * INCH, 400 * INCH), (0.0, 400 * INCH))


@pytest.mark.parametrize(
    ("wall", "others", "wanted"),
    [
        # Before face A 100 to the start, behind 400 - 103 1/2, 20 and 60 past its ends.
        (US.wall((20.0, 100.0), (180.0, 100.0)), (), (100, 296.5, 20, 60)),
        # From eave to eave there is nothing past its ends.
        (US.wall((0.0, 100.0), (240.0, 100.0)), (), (100, 296.5, None, None)),
        # Seen from the other side before and behind change places.
        (US.wall((180.0, 100.0), (20.0, 100.0)), (), (300, 96.5, 60, 20)),
        # Another wall in the way: its face A at 60, its far face at 63 1/2.
        (
            US.wall((20.0, 100.0), (180.0, 100.0)),
            (US.wall((0.0, 60.0), (240.0, 60.0)),),
            (36.5, 296.5, 20, 60),
        ),
    ],
)
def test_clear_distances(
    wall: Wall, others: tuple[Wall, ...], wanted: tuple[float | None, ...]
) -> None:
    ground = Footprint.of(wall)
    assert ground is not None
    found = clearances(ground, EDGE, footprints(others))
    assert [None if c is None else round(c.run / INCH, 6) for c in found] == list(wanted)


def test_beside_the_wall_a_third_of_the_way_along_counts() -> None:
    ground = Footprint.of(US.wall((30.0, 100.0), (120.0, 100.0)))
    assert ground is not None
    before = clearances(ground, EDGE, ())[0]
    assert before is not None
    assert (round(before.start[0] / INCH), round(before.end[1])) == (60, 0)
