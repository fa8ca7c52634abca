"""How the section is looked at, and its drawing for that look. No Qt but the desk's."""

from core.drawing import Drawing, View
from core.drawing.section import outer, section
from core.model import Project
from core.roof import section_of
from core.wording import Wording
from gui.desk import Desk
from gui.sketcher.camera import XY, Camera, Margins, Rect, fit
from gui.sketcher.extent import extent, union

SOFT = 14.0
"""Bare paper kept around the drawing, px."""


class SectionSight:
    """The camera, fitted to the section whenever nothing is being pulled."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk
        self._laid: tuple[Project, View, Wording, Drawing] | None = None
        self._seen: tuple[Rect, XY, float] | None = None
        self.camera = Camera(1.0, 0.0, 0.0)

    def follow(self, size: XY, density: float) -> None:
        """Fits the section into a paper of `size` px, where either has changed."""
        seen = (self._rect(), size, density)
        if seen != self._seen and min(size) >= 1:
            self._seen = seen
            self._fit(size, density)

    def drawing(self, density: float) -> Drawing:
        """The section for this look; the very same until something changes."""
        project, words = self._desk.project, self._desk.wording
        view = self.camera.view(density)
        laid = self._laid
        if laid is None or laid[0] is not project or laid[1] != view or laid[2] is not words:
            drawn = section(project.room, view, words, project.walls)
            laid = self._laid = (project, view, words, drawn)
        return laid[3]

    def _fit(self, size: XY, density: float) -> None:
        rect = self._rect()
        self.camera = fit(rect, *size, Margins(SOFT, SOFT, SOFT, SOFT))
        for _ in range(3):
            self.camera = fit(rect, *size, self._margins(rect, density))

    def _rect(self) -> Rect:
        cut = section_of(self._desk.project.room)
        left, right = outer(cut)
        return Rect(left, 0.0, right, cut.highest)

    def _margins(self, rect: Rect, density: float) -> Margins:
        """How far the drawing's ink reaches past the room on each side, and bare paper, px."""
        camera = self.camera
        ink = union(extent(element, camera, density) for element in self.drawing(density))
        left, bottom = camera.to_screen((rect.left, rect.low))
        right, top = camera.to_screen((rect.right, rect.high))
        past = (left - ink.left, top - ink.low, ink.right - right, ink.high - bottom)
        return Margins(*(max(reach, 0.0) + SOFT for reach in past))
