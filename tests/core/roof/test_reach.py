"""The stretch of a line that lies in an outline, a tenth of a millimetre outside counted in."""

from __future__ import annotations

import math

import pytest

from core.roof import Part, Plane
from core.roof.reach import reach

SQUARE = ((0.0, 0.0), (1000.0, 0.0), (1000.0, 1000.0), (0.0, 1000.0))
ALONG, ASLANT = (1.0, 0.0), (math.sqrt(0.5), math.sqrt(0.5))


@pytest.mark.parametrize(
    ("start", "direction", "length", "expected"),
    [
        pytest.param((-500, 500), ALONG, 2000, (499.9, 1500.1), id="through"),
        pytest.param((200, 500), ALONG, 300, (0, 300), id="inside"),
        pytest.param((-500, 500), ALONG, 400, None, id="short of it"),
        pytest.param((-500, 1000.05), ALONG, 2000, (499.9, 1500.1), id="along its edge"),
        pytest.param((-500, 1000.2), ALONG, 2000, None, id="beside it"),
        pytest.param((-100, 0), ASLANT, 2000, (141.2799, 1414.3549), id="aslant"),
    ],
)
def test_stretch(
    start: tuple[float, float],
    direction: tuple[float, float],
    length: float,
    expected: tuple[float, float] | None,
) -> None:
    for outline in (SQUARE, tuple(reversed(SQUARE))):
        found = reach(Part((Plane(0, 0, 1),), outline), start, direction, length)
        assert found == (None if expected is None else pytest.approx(expected, abs=1e-3))


def test_a_part_without_end_reaches_along_all_of_it() -> None:
    assert reach(Part((Plane(0, 0, 1),)), (7, 7), ALONG, 300) == (0, 300)
