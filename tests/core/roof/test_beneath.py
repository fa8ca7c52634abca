"""Measured rafters with a purlin under them: the one does not move the other; millimetres."""

from __future__ import annotations

import msgspec
import pytest

from core.job import WallResult
from core.model import Passing, Purlin
from core.roof import PurlinThrough, RoofLine, Segment, measured_beneath
from core.roof.beneath import beneath
from walls import UK, Pair, at_degrees, member, result, stations

LEVEL = RoofLine((Segment(0.0, 1000.0, 500.0, 0.0, 0.0),))
RISING = RoofLine((Segment(0.0, 1000.0, 400.0, 1.0, 0.0),))


@pytest.mark.parametrize(
    ("line", "stretch", "height", "points"),
    [
        pytest.param(LEVEL, (400, 450), 600, [(0, 500), (1000, 500)], id="over the line"),
        pytest.param(
            LEVEL,
            (400, 450),
            450,
            [(0, 500), (400, 500), (400, 450), (450, 450), (450, 500), (1000, 500)],
            id="under it",
        ),
        pytest.param(
            LEVEL,
            (-20, 30),
            450,
            [(0, 450), (30, 450), (30, 500), (1000, 500)],
            id="partly past the end",
        ),
        # It meets the line at 825 - 400 = 425: from there on it is the lower one.
        pytest.param(
            RISING,
            (400, 450),
            825,
            [(0, 400), (425, 825), (450, 825), (450, 850), (1000, 1400)],
            id="through it",
        ),
    ],
)
def test_the_lower_of_both(
    line: RoofLine, stretch: Pair, height: float, points: list[Pair]
) -> None:
    assert list(beneath(line, stretch, height).points()) == [pytest.approx(p) for p in points]


BEAM = PurlinThrough("purlin-1", (400, 450), (400, 450), 450, 600, 5, Passing.THROUGH)


@pytest.mark.parametrize(
    ("points", "beside", "under"),
    [
        pytest.param((), 500, 450, id="nothing measured"),
        pytest.param(((100, 510),), 510, 450, id="beside it"),
        pytest.param(((425, 440),), 500, 440, id="under it"),
        pytest.param(((100, 510), (410, 440), (440, 444)), 510, 442, id="both"),
    ],
)
def test_each_goes_by_its_own_points(points: tuple[Pair, ...], beside: float, under: float) -> None:
    near, far = measured_beneath((LEVEL, LEVEL), (BEAM,), points)
    for line in (near, far):
        assert (line.height(200), line.height(420)) == pytest.approx((beside, under))


# 45 degrees from 500 at the left eave wall; over the wall the rafters are 1500 + x high.
ROOM = msgspec.structs.replace(
    UK.room(6000, (500, at_degrees(45)), None, length=8000),
    purlins=(
        Purlin(
            "purlin-1",
            UK.length(2190),
            UK.timber((50, 100)),
            UK.length(2600),
            Passing.UNDER,
            UK.length(5),
        ),
    ),
)


def measured(*points: Pair) -> WallResult:
    wall = UK.wall((1000, 3000), (3000, 3000))
    return result(ROOM, msgspec.structs.replace(wall, roof_points=stations(UK, *points)))


def test_a_stud_under_the_purlin_is_cut_to_it_wherever_the_rafters_were_measured() -> None:
    # Rafters 10 higher than stated: the stud under the purlin still ends 38 below 2600; others are
    # 10 longer.
    plain, raised = measured(), measured((0, 1510), (2000, 3510))
    for made, more in ((plain, 0), (raised, 10)):
        assert made.frame is not None
        assert member(made.frame, "layout/3").top == pytest.approx(2562)
        assert member(made.frame, "layout/2").short_point == pytest.approx(
            1500 + 781 - 38 * 2**0.5 - 38 + more
        )


def test_what_was_measured_under_it_is_where_it_is() -> None:
    made = measured((0, 1500), (1215, 2590), (2000, 3500))
    assert made.frame is not None
    assert member(made.frame, "layout/3").top == pytest.approx(2552)
