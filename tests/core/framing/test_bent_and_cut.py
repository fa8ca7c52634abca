"""Plates that bend along a measured line, are cut by a purlin and made of pieces; millimetres.

The roof rises 30 degrees; measured, it sags by 12, 20 and 14 on the way, so that one plate bends
along four straight stretches.
"""

from __future__ import annotations

import math
from itertools import pairwise

import msgspec
import pytest

from core.framing import Frame, underside
from core.job import WallResult, work_out
from core.lengths import System, Tape
from core.model import Habits, LineEdge, Passing, PlateRules, Project, Purlin, SiteRecord
from walls import UK, at_degrees, stations

SLOPE = math.tan(math.radians(30))
PLAIN = UK.room(6000, (1400, at_degrees(30)), None, length=8000)
SAGS = ((0, 0), (800, 12), (1500, 20), (2200, 14), (3000, 0))


def height(x: float) -> float:
    return 1400 + (1000 + x) * SLOPE


WALL = msgspec.structs.replace(
    UK.wall((1000, 3000), (4000, 3000), plates=2),
    roof_points=stations(UK, *((x, height(x) - sag) for x, sag in SAGS)),
)


def made(left: float | None, way: Passing, rules: PlateRules | None) -> WallResult:
    """The wall with a purlin 75 by 175 whose left face is at `left` along it, or with none."""
    purlins: tuple[Purlin, ...] = ()
    if left is not None:
        size = UK.length(1000 + left), UK.timber((75, 175)), UK.length(height(left) - 160)
        purlins = (Purlin("purlin-1", *size, way, UK.length(5)),)
    habits = Habits(Tape.usual(System.METRIC), LineEdge.NEAR, plates=rules)
    room = msgspec.structs.replace(PLAIN, purlins=purlins)
    return work_out(Project("test", System.METRIC, room, (WALL,), habits), SiteRecord()).walls[0]


def frame(result: WallResult) -> Frame:
    assert result.frame is not None
    return result.frame


def layer(result: WallResult, number: int) -> list[tuple[float, float]]:
    """The corners of the underside of all pieces of a layer, from left to right."""
    found = [m for m in frame(result).members if m.key.startswith(f"B/top/1/{number}")]
    return [point for piece in found for point in underside(piece)]


@pytest.mark.parametrize("left", [800, 1200, 2000])
@pytest.mark.parametrize("way", [Passing.THROUGH, Passing.STOPPED, Passing.NOTCHED])
def test_pieces_lie_along_the_whole_plate_but_for_the_purlins_gap(
    left: float, way: Passing
) -> None:
    whole, cut = made(None, way, None), made(left, way, PlateRules(UK.length(1500)))
    for number in (1, 2):
        (plate,) = (m for m in frame(whole).members if m.key == f"B/top/1/{number}")
        pieces = [m for m in frame(cut).members if m.key.startswith(plate.key)]
        assert len(pieces) >= 3
        assert all(piece.overall <= 1500 + 1e-6 for piece in pieces)
        (_, gap) = next(c for c in _cuts(cut))
        ends = [(p.near[0][0], underside(p)[-1][0]) for p in pieces]
        # They butt, but for the purlin: its 75 and 5 on either side.
        spaces = [b[0] - a[1] for a, b in pairwise(ends)]
        assert sorted(spaces)[:-1] == pytest.approx([0] * (len(spaces) - 1), abs=1e-6)
        assert max(spaces) == pytest.approx(85)
        total = sum(_along(underside(p)) for p in pieces)
        assert total + gap == pytest.approx(_along(underside(plate)), abs=0.05)


def _cuts(result: WallResult) -> list[tuple[str, float]]:
    """What each purlin leaves out along the plates, as it is told."""
    found = [c.message for c in result.cautions if c.message.id == "purlin.cuts-plate"]
    return [(m.id, dict(m.values)["gap"].mm) for m in found]  # type: ignore[union-attr]


def _along(course: tuple[tuple[float, float], ...]) -> float:
    return sum(math.dist(a, b) for a, b in pairwise(course))


@pytest.mark.parametrize("left", [800, 1200, 2000])
def test_marks_run_on_over_the_pieces_from_the_purlin(left: float) -> None:
    cut = made(left, Passing.STOPPED, PlateRules(UK.length(1500)))
    course = layer(cut, 2)
    for mark in (m for m in cut.marks if m.along_top is not None):
        past = mark.x > left
        start = left + 80 if past else 0.0
        between = [(x, y) for x, y in course if start - 1e-6 <= x <= mark.x + 1e-6]
        assert mark.along == pytest.approx(_to(between, course, mark.x), abs=0.02)


def _to(between: list[tuple[float, float]], course: list[tuple[float, float]], x: float) -> float:
    """The length of a course from its first point here up to x."""
    last = between[-1]
    following = next((p for p in course if p[0] > last[0] + 1e-6), None)
    rest = 0.0
    if following is not None and x > last[0]:
        rest = math.dist(last, following) * (x - last[0]) / (following[0] - last[0])
    return _along(tuple(between)) + rest
