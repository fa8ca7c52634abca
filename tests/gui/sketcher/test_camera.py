"""The camera: there and back, zoom about a point, fit."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gui.sketcher.camera import CLOSEST, FARTHEST, Camera, Margins, Rect, fit

NUMBERS = st.floats(-1e5, 1e5)
SCALES = st.floats(FARTHEST, CLOSEST)
CAMERAS = st.builds(Camera, SCALES, NUMBERS, NUMBERS)
POINTS = st.tuples(NUMBERS, NUMBERS)
NO_MARGINS = Margins(0, 0, 0, 0)


def test_the_wall_stands_up_on_screen() -> None:
    camera = Camera(scale=0.5, x=100.0, y=400.0)
    assert camera.to_screen((0.0, 0.0)) == (100.0, 400.0)
    # 200 mm up is 100 px up, which is fewer px from the top; 60 mm right is 30 px right.
    assert camera.to_screen((60.0, 200.0)) == (130.0, 300.0)


@given(CAMERAS, POINTS)
def test_there_and_back(camera: Camera, point: tuple[float, float]) -> None:
    back = camera.to_model(camera.to_screen(point))
    # A px position of about 1e6 has an error of 1e-10, which the scale of 0.01 makes 1e-8.
    assert math.dist(back, point) < 1e-6


@given(CAMERAS, st.floats(0.1, 10.0), st.tuples(st.floats(0, 4000), st.floats(0, 4000)))
def test_zoom_keeps_what_lies_under_the_pointer(
    camera: Camera, factor: float, about: tuple[float, float]
) -> None:
    zoomed = camera.zoomed(factor, about)
    kept = zoomed.to_screen(camera.to_model(about))
    assert math.dist(kept, about) < 1e-4
    assert FARTHEST <= zoomed.scale <= CLOSEST


def test_zoom_stops_at_its_limits() -> None:
    assert Camera(1.0, 0, 0).zoomed(1e6, (5, 5)).scale == CLOSEST
    assert Camera(1.0, 0, 0).zoomed(1e-6, (5, 5)).scale == FARTHEST


@given(CAMERAS, st.floats(-500, 500), st.floats(-500, 500), POINTS)
def test_panning_moves_every_point_alike(
    camera: Camera, right: float, down: float, point: tuple[float, float]
) -> None:
    x, y = camera.to_screen(point)
    moved = camera.panned(right, down).to_screen(point)
    assert math.dist(moved, (x + right, y + down)) < 1e-6


@pytest.mark.parametrize(
    ("rect", "width", "height", "margins", "scale", "corner"),
    [
        # 1000 by 500 mm in 1000 by 1000 px: width decides, the rest is halved above and below.
        (Rect(0, 0, 1000, 500), 1000, 1000, NO_MARGINS, 1.0, (0.0, 750.0)),
        # 400 by 1000 mm in the same: height decides.
        (Rect(0, 0, 400, 1000), 1000, 1000, NO_MARGINS, 1.0, (300.0, 1000.0)),
        # Margins 100 left, 50 top, 300 right, 150 bottom leave 600 by 800 px.
        (Rect(0, 0, 1200, 200), 1000, 1000, Margins(100, 50, 300, 150), 0.5, (100.0, 500.0)),
        # A rectangle that does not begin at (0, 0): its corner lands at the same place.
        (Rect(-500, 0, 500, 500), 1000, 1000, NO_MARGINS, 1.0, (0.0, 750.0)),
    ],
)
def test_fit(
    rect: Rect,
    width: float,
    height: float,
    margins: Margins,
    scale: float,
    corner: tuple[float, float],
) -> None:
    camera = fit(rect, width, height, margins)
    assert camera.scale == pytest.approx(scale)
    assert camera.to_screen((rect.left, rect.low)) == pytest.approx(corner)


@pytest.mark.parametrize(
    ("rect", "width", "height"),
    [(Rect(0, 0, 0, 0), 500, 500), (Rect(0, 0, 5000, 2000), 0, 0), (Rect(0, 0, 1e9, 1), 300, 300)],
)
def test_fit_stays_within_limits_whatever_it_gets(rect: Rect, width: float, height: float) -> None:
    camera = fit(rect, width, height, Margins(30, 30, 30, 30))
    assert FARTHEST <= camera.scale <= CLOSEST
    assert all(math.isfinite(v) for v in (camera.x, camera.y))


@pytest.mark.parametrize("scale", [0.02, 0.2, 3.0])
@pytest.mark.parametrize(
    ("density", "px"),
    # 3.5 mm at 96 dots an inch are 13.2 px, at 120 dots 16.5 px: whole px, the even one on a half.
    [(96 / 25.4, 13), (120 / 25.4, 17), (72 / 25.4, 10)],
)
def test_text_keeps_its_size_on_screen_at_any_zoom(scale: float, density: float, px: int) -> None:
    view = Camera(scale, 0, 0).view(density)
    assert view.size * density == pytest.approx(px)
    # What the drawing lays out for text of that size is as many px of the wall.
    assert view.model(view.size) * scale == pytest.approx(px)
