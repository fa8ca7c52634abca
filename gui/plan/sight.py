"""How the room is looked at from above, and its drawing for that look. No Qt but the desk's."""

from core.drawing import Drawing, View
from core.drawing.plan import plan
from core.drawing.plan_roof import outline
from core.job import Results
from core.wording import Wording
from gui.desk import Desk
from gui.sketcher.camera import XY, Camera, Margins, Rect, fit
from gui.sketcher.extent import extent, union

SOFT = 22.0
"""Bare paper kept around the drawing, px."""


class PlanSight:
    """The camera, and whether it was fitted to the room or chosen by the person.

    A fitted camera follows the room's size and the window's; a chosen one stays.
    """

    def __init__(self, desk: Desk) -> None:
        self._desk = desk
        self._fitted = True
        self._seen: Rect | None = None
        self._laid: tuple[Results, View, Wording, Drawing] | None = None
        self.camera = Camera(1.0, 0.0, 0.0)

    def look(self, camera: Camera) -> None:
        """Look as the person chooses."""
        self.camera = camera
        self._fitted = False

    def fit(self, size: XY, density: float) -> None:
        """Show the whole room in a window of `size` px, and go on doing so."""
        self._fitted = True
        self._seen = self._rect()
        camera = fit(self._seen, *size, Margins(SOFT, SOFT, SOFT, SOFT))
        for _ in range(2):
            drawing = plan(self._desk.results, camera.view(density), self._desk.wording)
            camera = fit(self._seen, *size, self._reach(drawing, camera, density))
        self.camera = camera

    def follow(self, size: XY, density: float, *, resized: bool = False) -> None:
        """Fit again if a fitted room or its window changed size."""
        if self._seen is None or (self._fitted and (resized or self._rect() != self._seen)):
            self.fit(size, density)

    def drawing(self, density: float) -> Drawing:
        """The plan for this look; the very same until something changes."""
        results, words = self._desk.results, self._desk.wording
        view, laid = self.camera.view(density), self._laid
        same = laid and laid[0] is results and laid[1] == view and laid[2] is words
        if laid is None or not same:
            laid = self._laid = (results, view, words, plan(results, view, words))
        return laid[3]

    def _rect(self) -> Rect:
        xs, ys = zip(*outline(self._desk.project.room), strict=True)
        return Rect(min(xs), min(ys), max(xs), max(ys))

    def _reach(self, drawing: Drawing, camera: Camera, density: float) -> Margins:
        """How far the drawing's ink reaches past the room on each side, and bare paper, px."""
        rect = self._rect()
        ink = union(extent(element, camera, density) for element in drawing)
        left, bottom = camera.to_screen((rect.left, rect.low))
        right, top = camera.to_screen((rect.right, rect.high))
        past = (left - ink.left, top - ink.low, ink.right - right, ink.high - bottom)
        return Margins(*(max(reach, 0.0) + SOFT for reach in past))
