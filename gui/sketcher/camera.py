"""From the wall to the window and back: the one place where y is turned over."""

from typing import NamedTuple

import msgspec

from core.drawing import View

XY = tuple[float, float]

CLOSEST = 8.0
"""The most px on screen for each mm of the wall."""

FARTHEST = 0.01
"""The fewest px on screen for each mm of the wall."""

TEXT_MM = 3.5
"""The size of text on screen, in mm as on paper, at any zoom."""


class Rect(NamedTuple):
    """A rectangle by its least and greatest x and y, in the unit of its points."""

    left: float
    low: float
    right: float
    high: float


class Margins(NamedTuple):
    """Room kept free around what is fitted in, px."""

    left: float
    top: float
    right: float
    bottom: float


class Camera(msgspec.Struct, frozen=True):
    """A view of the wall: `scale` px for each model mm, model (0, 0) at px (`x`, `y`).

    Pixels count right and down from the window's upper left corner, model mm right and up.
    """

    scale: float
    x: float
    y: float

    def to_screen(self, point: XY) -> XY:
        """Where a model point (mm) lands, px."""
        return self.x + self.scale * point[0], self.y - self.scale * point[1]

    def to_model(self, pixel: XY) -> XY:
        """The model point (mm) under a pixel."""
        return (pixel[0] - self.x) / self.scale, (self.y - pixel[1]) / self.scale

    def zoomed(self, factor: float, about: XY) -> "Camera":
        """The camera `factor` times nearer, with the model point under px `about` kept there."""
        scale = min(max(self.scale * factor, FARTHEST), CLOSEST)
        grown = scale / self.scale
        return Camera(
            scale, about[0] + (self.x - about[0]) * grown, about[1] + (self.y - about[1]) * grown
        )

    def panned(self, right: float, down: float) -> "Camera":
        """The camera with the paper shoved by so many px."""
        return Camera(self.scale, self.x + right, self.y + down)

    def view(self, density: float) -> View:
        """The steady view for the drawing; `density` is px for each paper mm: text keeps its size.

        Text is a whole number of px high, since the screen's font has no sizes between.
        """
        size = max(1, round(TEXT_MM * density)) / density
        return View(scale=self.scale / density, size=size, steady=True)


def fit(rect: Rect, width: float, height: float, margins: Margins) -> Camera:
    """The camera that shows a model rectangle (mm) centred in a window of so many px.

    What the margins leave is never taken as less than a px, so a tiny window still gets a camera.
    """
    across = max(width - margins.left - margins.right, 1.0)
    down = max(height - margins.top - margins.bottom, 1.0)
    wide = max(rect.right - rect.left, 1e-6)
    tall = max(rect.high - rect.low, 1e-6)
    scale = min(max(min(across / wide, down / tall), FARTHEST), CLOSEST)
    middle = ((rect.left + rect.right) / 2, (rect.low + rect.high) / 2)
    return Camera(
        scale,
        margins.left + across / 2 - scale * middle[0],
        margins.top + down / 2 + scale * middle[1],
    )
