"""Stated beside measured: differences, best-fit pitch, worst point, points that look mistyped."""

from __future__ import annotations

import msgspec
import pytest

from core.lengths import Length
from core.model import Station, Wall
from core.roof import RoofLine, Segment, Survey, floor_line, roof_heights, survey
from core.roof.survey import astray, best_fit
from walls import US, stations

IN = 25.4
RAKE = Segment(0.0, 168 * IN, 48 * IN, 0.75, 0.0)
PLAIN = US.wall((48, 9), (216, 9))


def wall(
    roof: tuple[Station, ...] = (),
    floor: tuple[Station, ...] = (),
    level: float | None = None,
) -> Wall:
    line = None if level is None else Length.of_inches(level)
    return msgspec.structs.replace(PLAIN, roof_points=roof, floor_points=floor, level_line=line)


def surveyed(measured: Wall) -> Survey:
    found = survey(measured, RoofLine((RAKE,)))
    assert found is not None
    return found


def inches(points: tuple[tuple[float, float], ...]) -> list[tuple[float, float]]:
    return [(round(x / IN, 4), round(y / IN, 4)) for x, y in points]


def test_nothing_measured_is_no_survey() -> None:
    assert survey(PLAIN, RoofLine((RAKE,))) is None


def test_points_are_taken_from_left_to_right_in_whatever_order_they_were_typed() -> None:
    typed = stations(US, (168, 174), (0, 48), (84, 110.375))
    assert inches(roof_heights(wall(typed))) == [(0, 48), (84, 110.375), (168, 174)]


def test_heights_from_the_floor_under_each_point() -> None:
    # The floor falls 1 in. over 168: at 84 it is 1/2 low, so a reading of 111 is 110 1/2 up.
    found = roof_heights(wall(stations(US, (84, 111)), stations(US, (0, 0), (168, -1))))
    assert inches(found) == [(84, 110.5)]


def test_heights_from_a_level_line() -> None:
    # A line 48 up: the roof reads 63 above it, the floor 48 1/2 below it.
    measured = wall(stations(US, (84, 63)), stations(US, (0, 48), (168, 48.5)), level=48)
    assert inches(roof_heights(measured)) == [(84, 111)]
    assert inches(floor_line(measured).points()) == [(0, 0), (168, -0.5)]
    assert surveyed(measured).fall == pytest.approx(0.5 * IN)


def test_the_worst_point_is_the_sag() -> None:
    # 9 in 12 over 168: stated 48, 79.5, 111, 142.5, 174.
    found = surveyed(
        wall(stations(US, (0, 48), (42, 79.125), (84, 110.375), (126, 142.25), (168, 174)))
    )
    off = [round(r.difference / IN, 4) for r in found.roof]
    assert off == [0, -0.375, -0.625, -0.25, 0]
    assert found.worst is not None
    assert found.worst.at == pytest.approx(84 * IN)
    assert [r.expected for r in found.roof] == [None] * 5


def test_best_fit_pitch_by_least_squares() -> None:
    # x 0, 10, 20, 40 and y 1, 8, 17, 30: means 17.5 and 14; sums of products of the deviations
    # (-17.5)(-13) + (-7.5)(-6) + 2.5 x 3 + 22.5 x 16 = 227.5 + 45 + 7.5 + 360 = 640 over
    # 306.25 + 56.25 + 6.25 + 506.25 = 875: slope 0.73143.
    points = ((0.0, 1.0), (10.0, 8.0), (20.0, 17.0), (40.0, 30.0))
    fit = best_fit(Segment(0.0, 50.0, 0.0, 0.75, 0.0), points)
    assert fit is not None
    assert fit.stated == 0.75
    assert fit.fitted == pytest.approx(640 / 875)


def test_no_best_fit_below_two_points() -> None:
    assert best_fit(Segment(0.0, 50.0, 0.0, 0.75, 0.0), ((0.0, 1.0), (90.0, 9.0))) is None


@pytest.mark.parametrize(
    ("off", "doubted"),
    [
        pytest.param([0, -0.4, -0.6, -0.3, 0], {}, id="a sag"),
        # A foot misread in the middle: its neighbours at 1 and 3 lead to expect -0.35.
        pytest.param([0, -0.4, 11.4, -0.3, 0], {2: -0.35}, id="a foot too high"),
        # Straight on from -0.4 and -0.6 would be -0.2: nearer to 12 than -0.4 is.
        pytest.param([12, -0.4, -0.6, -0.3, 0], {0: -0.2}, id="at an end"),
        pytest.param([0, -2.5, -5, -7.5], {}, id="a flatter pitch than stated"),
        pytest.param([0, 6, 0, -0.3, 6], {1: 0, 4: -0.3}, id="two of them"),
        pytest.param([3, 3, 3.2, 3], {}, id="a roof that is all 3 in. higher than stated"),
        pytest.param([0, 6], {1: 0}, id="two points, one as stated"),
        pytest.param([6], {0: 0}, id="one point alone"),
        pytest.param([1.5], {}, id="one point, a little off"),
    ],
)
def test_points_that_look_mistyped(off: list[float], doubted: dict[int, float]) -> None:
    found = astray(tuple((n * 24 * IN, d * IN) for n, d in enumerate(off)))
    assert {round(x / IN / 24): round(d / IN, 4) for x, d in found} == doubted
