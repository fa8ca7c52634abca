"""How the room is looked at from above, and its drawing for that look. No Qt but the desk's."""

import msgspec

from core.drawing import Drawing, View
from core.drawing.plan import plan
from core.drawing.plan_roof import outline
from core.drawing.plan_strings import FIRST, STRING
from core.drawing.view import Show
from core.model import Project
from core.wording import Wording
from gui.desk import Desk
from gui.sketcher.camera import XY, Camera, Margins, Rect, fit

SOFT = 22.0
"""Bare paper kept around the drawing, px."""

OVER = 5.0
"""How far the figures reach over the outer string, mm on paper.

Room for two strings is always kept, so that the room stays where it is when walls come.
"""


LOW = 250.0
"""A pane lower than this (px) shows no figures outside the room, which would leave it no place."""


class PlanSight:
    """The camera, and whether it was fitted to the room or chosen by the person.

    A fitted camera follows the room's size and the window's; a chosen one stays.
    """

    def __init__(self, desk: Desk) -> None:
        self._desk = desk
        self._fitted = True
        self._bare = False
        self._seen: Rect | None = None
        self._laid: tuple[Project, View, Wording, Drawing] | None = None
        self.camera = Camera(1.0, 0.0, 0.0)

    def look(self, camera: Camera) -> None:
        """Look as the person chooses."""
        self.camera = camera
        self._fitted = False

    def fit(self, size: XY, density: float) -> None:
        """Show the whole room in a window of `size` px, and go on doing so."""
        self._fitted = True
        self._seen = _rect(self._desk.project)
        self._bare = size[1] < LOW
        strings = SOFT if self._bare else (FIRST + STRING + OVER) * density + SOFT
        self.camera = fit(self._seen, *size, Margins(strings, strings, SOFT, SOFT))

    def follow(self, size: XY, density: float, *, resized: bool = False) -> None:
        """Fit again if a fitted room or its window changed size."""
        another = self._seen is None or _rect(self._desk.project) != self._seen
        if self._seen is None or (self._fitted and (resized or another)):
            self.fit(size, density)

    def drawing(self, project: Project, density: float) -> Drawing:
        """The plan of a project for this look; the very same until something changes."""
        view, words, laid = self.camera.view(density), self._desk.wording, self._laid
        if self._bare:
            view = msgspec.structs.replace(view, shows=view.shows - {Show.DIMENSIONS})
        same = laid and laid[0] is project and laid[1] == view and laid[2] is words
        if laid is None or not same:
            laid = self._laid = (project, view, words, plan(project, view, words))
        return laid[3]


def _rect(project: Project) -> Rect:
    xs, ys = zip(*outline(project.room), strict=True)
    return Rect(min(xs), min(ys), max(xs), max(ys))
