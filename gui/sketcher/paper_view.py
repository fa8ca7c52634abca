"""Paper in a window: looked at nearer or from farther away, shoved, and fitted to its window."""

from typing import Protocol

from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QNativeGestureEvent, QResizeEvent, QWheelEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from gui import sizes
from gui.sketcher.camera import XY, Camera
from gui.sketcher.paint import Ink
from gui.sketcher.wheel import ZOOM, pinched, wheeled
from gui.theme import Theme


class Look(Protocol):
    """How what is drawn on the paper is looked at."""

    @property
    def camera(self) -> Camera:
        """Where the paper lies, and how large."""

    def look(self, camera: Camera) -> None:
        """Look as the person chooses."""

    def fit(self, size: XY, density: float) -> None:
        """Show all of it in a window of `size` px, and go on doing so."""

    def follow(self, size: XY, density: float, *, resized: bool = False) -> None:
        """Fit again if what is drawn, or its window, is another."""


class PaperView(QWidget):
    """What the sheet of a wall and the plan of the room share: ink, and a camera that is moved."""

    def __init__(self, theme: Theme, sight: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = sight
        self._ink = Ink(theme, self.density)
        self.setMouseTracking(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        # The paper covers every px, so Qt need not wipe first.
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)

    @property
    def density(self) -> float:
        """px for each mm on paper."""
        return sizes.density(self)

    @property
    def camera(self) -> Camera:
        """How the paper is looked at."""
        return self._look.camera

    def set_theme(self, theme: Theme) -> None:
        """Draw by day or by night."""
        self._ink = Ink(theme, self.density)
        self.update()

    def look(self, camera: Camera) -> None:
        """Look at the paper another way."""
        self._look.look(camera)
        self.update()

    def fit(self) -> None:
        """Show all that is drawn, and go on doing so."""
        self._look.fit(self._size(), self.density)
        self.update()

    def zoom(self, factor: float) -> None:
        """Look nearer or from farther away, about the middle."""
        self.look(self.camera.zoomed(factor, (self.width() / 2, self.height() / 2)))

    def zoom_in(self) -> None:
        """Look one step nearer."""
        self.zoom(ZOOM)

    def zoom_out(self) -> None:
        """Look from one step farther away."""
        self.zoom(1 / ZOOM)

    def shove(self, right: float, down: float) -> None:
        """Shove the paper, px."""
        self.look(self.camera.panned(right, down))

    def sizeHint(self) -> QSize:  # noqa: N802
        return QSize(960, 640)

    def minimumSizeHint(self) -> QSize:  # noqa: N802
        return QSize(240, 160)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802
        super().resizeEvent(event)
        self._look.follow(self._size(), self.density, resized=True)

    def wheelEvent(self, event: QWheelEvent) -> None:  # noqa: N802
        self.look(wheeled(self.camera, event))
        event.accept()

    def event(self, event: QEvent) -> bool:
        if isinstance(event, QNativeGestureEvent):
            self.look(pinched(self.camera, event))
            return True
        return super().event(event)

    def _size(self) -> XY:
        return float(self.width()), float(self.height())
