"""What lies under a point of the wall, and what moves together."""

from __future__ import annotations

import math

import pytest

from core.job import WallResult, work_out
from core.model import SiteRecord
from gui.sketcher.hit import distance, hit, kin, outline, rectangle
from loft import BOX, CRIPPLE, DOOR, INCH, STUD, loft, with_window

REACH = 0.5 * INCH


@pytest.fixture(scope="module")
def result() -> WallResult:
    return work_out(loft(), SiteRecord()).walls[0]


@pytest.mark.parametrize(
    ("x", "y", "key"),
    [
        # Squarely on timber: studs are 1 1/2 in. wide.
        (32.0, 40.0, STUD),
        (0.75, 40.0, "B/end/left"),
        (119.0, 40.0, "B/end/right"),
        (5.0, 0.5, "B/sole"),
        # The roof line at x = 30 is 60 + 30 = 90; the plate is 2.1 in. deep there.
        (30.0, 89.0, "B/top/1/1"),
        (70.0, 107.0, "B/top/2/1"),
        # Around the door: king 57, trimmer 58 1/2, opening from 60, header 80 to 81 1/2 high.
        (57.5, 40.0, "B/door-1/king/left"),
        (59.0, 40.0, "B/door-1/trimmer/left"),
        (92.0, 40.0, "B/door-1/king/right"),
        (75.0, 81.0, "B/door-1/header/1"),
        (64.0, 90.0, CRIPPLE),
        # The opening lies over the sole plate that runs through it.
        (75.0, 40.0, DOOR),
        (75.0, 0.5, DOOR),
        # The box is 2 in. wide and 4 high, beside the stud from 32 3/4, centred at 14.
        (33.5, 14.0, BOX),
        (34.7, 15.9, BOX),
        # Near but not on it: the nearest within half an inch.
        (34.9, 14.0, BOX),
        (31.0, 40.0, STUD),
        (33.1, 40.0, STUD),
        # Between trimmer and king lies no gap; the nearer edge wins just beyond the king.
        (56.8, 40.0, "B/door-1/king/left"),
        # Bare paper.
        (40.0, 40.0, None),
        (30.0, 120.0, None),
        (-5.0, 40.0, None),
        (60.0, -3.0, None),
    ],
)
def test_hit(result: WallResult, x: float, y: float, key: str | None) -> None:
    assert hit(result, (x * INCH, y * INCH), REACH) == key


def test_the_stud_beside_a_box_is_struck_squarely(result: WallResult) -> None:
    assert hit(result, (32.7 * INCH, 14.0 * INCH), REACH) == STUD


def test_without_reach_near_is_not_enough(result: WallResult) -> None:
    assert hit(result, (33.1 * INCH, 40.0 * INCH), 0.0) is None


@pytest.mark.parametrize(
    ("key", "corners"),
    [
        (DOOR, ((60, 0), (90, 0), (90, 80), (60, 80))),
        (BOX, ((32.75, 12), (34.75, 12), (34.75, 16), (32.75, 16))),
        ("B/door-1/header/1", ((58.5, 80), (91.5, 80), (91.5, 81.5), (58.5, 81.5))),
    ],
)
def test_outline(result: WallResult, key: str, corners: tuple[tuple[float, float], ...]) -> None:
    found = outline(result, key)
    assert found is not None
    assert [(x / INCH, y / INCH) for x, y in found] == [pytest.approx(c) for c in corners]


def test_what_is_not_there_has_no_outline(result: WallResult) -> None:
    assert outline(result, "B/layout/99") is None


@pytest.mark.parametrize(
    ("key", "together"),
    [
        (STUD, {STUD}),
        (CRIPPLE, {CRIPPLE}),
        ("B/sole", {"B/sole"}),
        (BOX, {BOX}),
        *[
            (
                key,
                {
                    DOOR,
                    "B/door-1/king/left",
                    "B/door-1/king/right",
                    "B/door-1/trimmer/left",
                    "B/door-1/trimmer/right",
                    "B/door-1/header/1",
                },
            )
            for key in (DOOR, "B/door-1/header/1")
        ],
    ],
)
def test_kin(result: WallResult, key: str, together: set[str]) -> None:
    assert set(kin(result, key)) == together


@pytest.mark.parametrize(
    ("point", "away"),
    [
        ((5.0, 5.0), 0.0),
        ((0.0, 5.0), 0.0),
        ((10.0, 10.0), 0.0),
        ((13.0, 5.0), 3.0),
        ((5.0, -2.0), 2.0),
        # Past a corner: 3 right and 4 up are 5 away.
        ((13.0, 14.0), 5.0),
        ((-1.0, -1.0), math.sqrt(2)),
    ],
)
def test_distance(point: tuple[float, float], away: float) -> None:
    assert distance(rectangle(0, 0, 10, 10), point) == pytest.approx(away)


def test_the_cripples_over_and_under_a_window_go_together() -> None:
    result = work_out(with_window(), SiteRecord()).walls[0]
    both = ("B/window-1/above/4", "B/window-1/below/4")
    assert sorted(kin(result, both[0])) == sorted(both)
    assert both[0] not in kin(result, "B/window-1")
