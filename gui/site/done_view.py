"""The wall beside the list of a walk: what is done in grey, the piece at hand in chalk."""

import msgspec
from PySide6.QtCore import QPoint, Qt, Signal
from PySide6.QtGui import QColor, QMouseEvent, QPainter, QPaintEvent, QPen, QPolygonF, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from core.drawing import Element, Show
from core.drawing.elevation import elevation
from gui import sizes
from gui.desk import Desk
from gui.sizes import scaled
from gui.sketcher.camera import Camera, Margins, fit
from gui.sketcher.fitting import SOFT, fitted, wall_rect
from gui.sketcher.hit import hit, outline
from gui.sketcher.layers import Scene, paint_scene
from gui.sketcher.overlay import paint_note
from gui.sketcher.paint import Ink, polygon
from gui.sketcher.words import why_bare
from gui.theme import Theme

_NARROW = 460
"""A view less wide than so many px has no room for figures."""

_REACH = 6.0
"""How near a press has to be, px."""

_CUT, _NAILED = 0.55, 0.85
"""How much of a piece the paper covers that is cut, and one that is nailed."""


class DoneView(QWidget):
    """One wall, to be looked at; pressing a piece takes hold of it."""

    pressed = Signal(str)

    def __init__(self, desk: Desk, theme: Theme) -> None:
        super().__init__()
        self._desk = desk
        self._camera, self._drawing = Camera(1.0, 0.0, 0.0), tuple[Element, ...]()
        self._ink = Ink(theme, self.density)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumWidth(120)

    @property
    def density(self) -> float:
        """px for each mm on paper."""
        return sizes.density(self)

    def set_theme(self, theme: Theme) -> None:
        """Draws by day or by night."""
        self._ink = Ink(theme, self.density)
        self.update()

    def refresh(self) -> None:
        """Shows the wall on the desk, and what of it is done."""
        self._lay()
        self.update()

    def _lay(self) -> None:
        """Lays the wall out in what room there is: where that is little, with no figures."""
        result, words = self._desk.result, self._desk.wording
        size = (float(self.width()), float(self.height()))
        if result is None or min(size) < 1:
            self._drawing = ()
            return
        if self.width() < scaled(_NARROW, self):
            self._camera = fit(wall_rect(result), *size, Margins(SOFT, SOFT, SOFT, SOFT))
            view = msgspec.structs.replace(self._camera.view(self.density), shows=frozenset[Show]())
        else:
            self._camera = fitted(result, words, size, self.density)
            view = self._camera.view(self.density)
        self._drawing = elevation(result, view, words)

    def middle_of(self, key: str) -> QPoint | None:
        """Where the middle of a piece is seen, px; None if the wall has no such piece."""
        shape = self._shape(key)
        return shape.boundingRect().center().toPoint() if shape is not None else None

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802
        """Shows the whole wall in the new size."""
        super().resizeEvent(event)
        self._lay()

    def mousePressEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        """Takes hold of the piece that is pressed."""
        result, camera = self._desk.result, self._camera
        if result is None:
            return
        place = camera.to_model((event.position().x(), event.position().y()))
        key = hit(result, place, _REACH / camera.scale)
        if key is not None:
            self.pressed.emit(key)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802, ARG002
        """Paints the wall, the grey over what is done, and chalk round what is held."""
        painter = QPainter(self)
        ratio = self.devicePixelRatioF()
        scene = Scene(self._drawing, self._camera, self._ink, self.size(), ratio)
        paint_scene(painter, scene)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        result = self._desk.result
        if result is None or result.frame is None:
            paint_note(painter, self.rect(), why_bare(self._desk), self._ink)
        else:
            self._done(painter)
            self._held(painter)
        painter.end()

    def _done(self, painter: QPainter) -> None:
        painter.setPen(Qt.PenStyle.NoPen)
        for done in self._desk.site.cut:
            shape = self._shape(done.piece.key)
            if shape is not None:
                paper = QColor(self._ink.theme.paper)
                paper.setAlphaF(_NAILED if done.nailed else _CUT)
                painter.setBrush(paper)
                painter.drawPolygon(shape)

    def _held(self, painter: QPainter) -> None:
        shape = self._shape(self._desk.held) if self._desk.held else None
        if shape is not None:
            chalk = self._ink.theme.chalk
            wash = QColor(chalk)
            wash.setAlphaF(0.24)
            painter.setPen(QPen(chalk, 2))
            painter.setBrush(wash)
            painter.drawPolygon(shape)

    def _shape(self, key: str) -> QPolygonF | None:
        result = self._desk.result
        corners = outline(result, key) if result is not None else None
        return polygon(corners, self._camera) if corners else None
