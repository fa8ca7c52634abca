"""The pieces of a line that lie below another; millimetres."""

from __future__ import annotations

import pytest

from core.roof import RoofLine, Segment, below

# Rising 1 in 1 from 0; level at 400; level at 400 and then, from 500 on, at 900.
RISING = RoofLine((Segment(0, 1000, 0, 1, 0),))
LEVEL = RoofLine((Segment(0, 1000, 400, 0, 0),))
STEPPED = RoofLine((Segment(0, 500, 400, 0, 0), Segment(500, 1000, 900, 0, 0)))
HIGH = RoofLine((Segment(0, 500, 2000, 0, 0), Segment(500, 1000, 1900, 0.2, 0)))


@pytest.mark.parametrize(
    ("line", "over", "spans"),
    [
        pytest.param(RISING, LEVEL, [(0, 400)], id="until it meets the roof"),
        pytest.param(LEVEL, RISING, [(400, 1000)], id="from where it meets it"),
        pytest.param(RISING, STEPPED, [(0, 400), (500, 900)], id="twice under a step"),
        pytest.param(RISING, HIGH, [(0, 1000)], id="all of it, under two planes"),
        pytest.param(LEVEL, LEVEL, [], id="on it"),
    ],
)
def test_spans(line: RoofLine, over: RoofLine, spans: list[tuple[float, float]]) -> None:
    assert [(s.left, s.right) for s in below(line, over)] == spans
