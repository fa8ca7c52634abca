"""Outlines of rough openings that reach over the roof, by hand; mm."""

from __future__ import annotations

import msgspec
import pytest

from core.drawing.elements import XY
from core.drawing.opening_outline import drawn_outline
from core.framing import Fit, PlacedOpening
from core.roof import RoofLine, Segment
from walls import UK

# Up by 1 in 2 from 1000 to 2000 at x = 2000, then level.
LINE = RoofLine((Segment(0, 2000, 1000, 0.5, 0), Segment(2000, 4000, 2000, 0, 0)))


def placed(
    left: float, width: float, head: float, sill: float = 0.0, fits: bool = False, rake: float = 0.0
) -> PlacedOpening:
    opening = UK.opening("door-1", left, width, head, sill=sill)
    return PlacedOpening("B/door-1", opening, Fit(fits, ()), rake)


@pytest.mark.parametrize(
    ("opening", "corners"),
    [
        # What fits is drawn whole, with its raked head.
        (placed(500, 800, 900, fits=True), ((500, 0), (1300, 0), (1300, 900), (500, 900))),
        (
            placed(500, 800, 900, fits=True, rake=0.5),
            ((500, 0), (1300, 0), (1300, 1300), (500, 900)),
        ),
        # Under the roof all along though it does not fit: as it is.
        (placed(2200, 800, 1900), ((2200, 0), (3000, 0), (3000, 1900), (2200, 1900))),
        # The roof is 1250 high over 500 and 1400 over 800, where it meets the head.
        (
            placed(500, 800, 1400),
            ((500, 0), (1300, 0), (1300, 1400), (800, 1400), (500, 1250)),
        ),
        # Over the break, all along the roof: 1750 over 1500, 2000 from there on.
        (
            placed(1500, 1000, 2500),
            ((1500, 0), (2500, 0), (2500, 2000), (2000, 2000), (1500, 1750)),
        ),
        # A raked head a foot over the roof is drawn on the roof.
        (placed(500, 800, 1550, rake=0.5), ((500, 0), (1300, 0), (1300, 1650), (500, 1250))),
        # Past the wall's left end the roof is thought to go on: 900 over -200.
        (placed(-200, 800, 1400), ((-200, 0), (600, 0), (600, 1300), (-200, 900))),
        # A sill over the roof leaves nothing of it to be drawn under the roof.
        (
            placed(0, 800, 2000, sill=1200),
            ((0, 1200), (800, 1200), (800, 2000), (0, 2000)),
        ),
    ],
)  # fmt: skip
def test_outlines(opening: PlacedOpening, corners: tuple[XY, ...]) -> None:
    found = drawn_outline(opening, LINE)
    assert [msgspec.to_builtins(c) for c in found] == [pytest.approx(c) for c in corners]
