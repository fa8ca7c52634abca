"""Purlins from above; millimetres."""

from __future__ import annotations

import msgspec
import pytest

from core.drawing.elements import Stroke
from core.drawing.plan_purlins import purlins
from core.model import Passing, Purlin
from walls import UK, Pair, at_degrees

ROOM = UK.room(6000, (500, at_degrees(45)), None, length=8000)


@pytest.mark.parametrize(
    ("ends", "turned", "corners"),
    [
        pytest.param((None, None), None, [(2000, 0), (2000, 8000), (2050, 8000)], id="whole"),
        pytest.param((1000, 3000), None, [(2000, 1000), (2000, 3000), (2050, 3000)], id="short"),
        pytest.param((0, 2000), 3500, [(2000, 0), (3500, 2000), (3540, 1970)], id="turned"),
    ],
)
def test_outline(
    ends: tuple[float | None, float | None], turned: float | None, corners: list[Pair]
) -> None:
    start, end, last = (None if at is None else UK.length(at) for at in (*ends, turned))
    timber = UK.timber((50, 100))
    left, under, gap = (UK.length(x) for x in (2000, 2000, 0))
    made = Purlin("purlin-1", left, timber, under, Passing.UNDER, gap, start, end, last)
    (stroke,) = purlins(msgspec.structs.replace(ROOM, purlins=(made,)))
    assert isinstance(stroke, Stroke)
    assert stroke.closed
    for found, wanted in zip(stroke.points, corners, strict=False):
        assert found == pytest.approx(wanted)
