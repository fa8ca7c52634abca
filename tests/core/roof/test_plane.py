"""Planes, parts and roofs: heights over plan points."""

from __future__ import annotations

import math

import pytest

from core.roof import Part, Plan, Plane, Roof

LEFT = Plane(0.75, 0.0, 12.0)
"""Rises from 12 at u = 0: 0.75 u + 12."""
RIGHT = Plane(-0.75, 0.0, 210.0)
"""Falls to 12 at u = 264: 12 + 0.75 x 264 = 210 at u = 0."""


@pytest.mark.parametrize(
    ("point", "height"),
    [((0, 0), 12), ((48, 7), 48), ((132, -5), 111), ((264, 0), 210)],
)
def test_height_of_a_plane(point: Plan, height: float) -> None:
    assert LEFT.at(point) == height


@pytest.mark.parametrize(
    ("direction", "slope"),
    [
        ((1, 0), 0.75),
        ((-1, 0), -0.75),
        ((0, 1), 0.0),
        ((0.6, 0.8), 0.45),  # 0.75 x 0.6
    ],
)
def test_slope_toward_a_direction(direction: Plan, slope: float) -> None:
    assert LEFT.toward(direction) == pytest.approx(slope)


@pytest.mark.parametrize(
    ("point", "height"), [((0, 0), 12), ((131, 0), 110.25), ((132, 0), 111), ((264, 0), 12)]
)
def test_a_gable_is_its_lowest_plane(point: Plan, height: float) -> None:
    assert Part((LEFT, RIGHT)).lowest(point).at(point) == height


SQUARE = ((0.0, 0.0), (10.0, 0.0), (10.0, 20.0), (0.0, 20.0))


@pytest.mark.parametrize("outline", [SQUARE, SQUARE[::-1]], ids=["one way", "the other way round"])
@pytest.mark.parametrize(
    ("point", "covered"),
    [
        ((5, 5), True),
        ((0, 0), True),  # a corner
        ((10, 7), True),  # an edge
        ((10.0005, 7), True),  # within a thousandth of a mm
        ((10.01, 7), False),
        ((5, -1), False),
        ((5, 21), False),
    ],
)
def test_a_part_covers_its_outline(outline: tuple[Plan, ...], point: Plan, covered: bool) -> None:
    assert Part((LEFT,), outline).covers(point) is covered


def test_a_part_without_outline_covers_everything() -> None:
    assert Part((LEFT,)).covers((1e6, -1e6))


# A gable of 10 in 12 with a shed dormer of 3 in 12 over v = 0 to 120 on its right side.
MAIN = Part((Plane(10 / 12, 0.0, 14.0), Plane(-10 / 12, 0.0, 234.0)))
DORMER = Part(
    (Plane(-0.25, 0.0, 157.0),), ((132.0, 0.0), (264.0, 0.0), (264.0, 120.0), (132.0, 120.0))
)


@pytest.mark.parametrize(
    ("point", "height"),
    [
        ((60, 60), 64),  # left of the ridge: 14 + 50
        ((132, 60), 124),  # the ridge
        ((240, 60), 97),  # the dormer: 157 - 60
        ((240, 200), 34),  # beside the dormer the main roof: 234 - 200
    ],
)
def test_the_highest_part_counts(point: Plan, height: float) -> None:
    assert Roof((MAIN, DORMER)).height(point) == pytest.approx(height)


@pytest.mark.parametrize(("u", "height"), [(60, 64), (96, 94), (132, 94), (250, 25.6667)])
def test_ceilings_are_taken_last_as_lowest(u: float, height: float) -> None:
    # 14 + 96 x 10/12 = 94 is where the flat ceiling begins.
    roof = Roof((MAIN,), ceilings=(Part((Plane(0.0, 0.0, 94.0),)),))
    assert roof.height((u, 200)) == pytest.approx(height, abs=1e-4)


def test_nothing_overhead() -> None:
    roof = Roof((DORMER,))
    assert roof.plane((0, 0)) is None
    assert roof.height((0, 0)) == -math.inf


def test_a_ceiling_alone_is_no_roof() -> None:
    roof = Roof((DORMER,), ceilings=(Part((Plane(0.0, 0.0, 94.0),)),))
    assert roof.plane((0, 0)) is None
