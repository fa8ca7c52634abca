"""The camera that shows a whole wall with all its figures."""

from core.drawing import Drawing
from core.drawing.elevation import elevation
from core.job import WallResult
from core.kept import Kept
from core.wording import Wording
from gui.sketcher.camera import Camera, Margins, Rect, fit
from gui.sketcher.extent import extent, union

SOFT = 22.0
"""Bare paper kept around the drawing, px."""


def wall_rect(result: WallResult) -> Rect:
    """The rectangle from the floor to the highest point of the wall's roof line, mm."""
    line = result.inputs.near
    highest = max(y for _, y in line.points()) if line else result.wall.run / 4
    return Rect(0.0, 0.0, max(result.wall.run, 1.0), max(highest, 1.0))


def fitted(
    result: WallResult,
    wording: Wording,
    size: tuple[float, float],
    density: float,
    kept: Kept | None = None,
) -> Camera:
    """The camera that shows the wall as large as its figures allow in a window of `size` px.

    Figures keep their size on screen, so how far they reach past the wall hardly depends on the
    scale: they are laid out at a first guess, measured, and the wall is fitted in what they leave.
    What is `kept` of one drawing serves the next; the outcome is the same.
    """
    kept = kept or Kept()
    rect = wall_rect(result)
    camera = fit(rect, *size, Margins(SOFT, SOFT, SOFT, SOFT))
    for _ in range(2):
        drawing = elevation(result, camera.view(density), wording, kept)
        margins = _reach(rect, drawing, camera, density)
        camera = fit(rect, *size, margins)
    return camera


def _reach(rect: Rect, drawing: Drawing, camera: Camera, density: float) -> Margins:
    """How far the drawing's ink reaches past the wall on each side, and bare paper, px."""
    if not drawing:
        return Margins(SOFT, SOFT, SOFT, SOFT)
    ink = union(extent(element, camera, density) for element in drawing)
    left, bottom = camera.to_screen((rect.left, rect.low))
    right, top = camera.to_screen((rect.right, rect.high))
    past = (left - ink.left, top - ink.low, ink.right - right, ink.high - bottom)
    return Margins(*(max(reach, 0.0) + SOFT for reach in past))
