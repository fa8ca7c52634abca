"""The plan of a room to be looked at while its questions are answered."""

from PySide6.QtCore import QSize
from PySide6.QtGui import QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from core.wording import message
from gui.desk import Desk
from gui.plan.sight import PlanSight
from gui.sizes import density
from gui.sketcher.paint import Ink, paint
from gui.theme import Theme


class Glimpse(QWidget):
    """The room from above, as large as there is paper for it; nothing in it is taken hold of."""

    def __init__(self, desk: Desk, theme: Theme) -> None:
        super().__init__()
        self._desk, self._theme = desk, theme
        self._sight = PlanSight(desk)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        desk.changed.connect(self._on_changed)
        self._on_changed()

    def set_theme(self, theme: Theme) -> None:
        """Draws by day or by night."""
        self._theme = theme
        self.update()

    def sizeHint(self) -> QSize:  # noqa: N802
        return QSize(480, 320)

    def minimumSizeHint(self) -> QSize:  # noqa: N802
        return QSize(200, 120)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802, ARG002
        each = density(self)
        painter = QPainter(self)
        painter.fillRect(self.rect(), self._theme.paper)
        drawing = self._sight.drawing(self._desk.project, each)
        paint(painter, drawing, self._sight.camera, Ink(self._theme, each))
        painter.end()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802
        super().resizeEvent(event)
        self._on_changed()

    def _on_changed(self) -> None:
        words = self._desk.wording
        self._sight.fit((float(self.width()), float(self.height())), density(self))
        name = message("plan.name", count=len(self._desk.project.walls))
        self.setAccessibleName(words.say(name))
        self.update()
