"""A small drawing in a panel: the wall from its end, swinging up."""

from PySide6.QtGui import QPainter, QPaintEvent, QPalette
from PySide6.QtWidgets import QWidget

from core.drawing import Drawing, Stroke
from gui.sizes import scaled
from gui.sketcher.camera import Camera
from gui.sketcher.paint import Ink, paint
from gui.theme import Theme

HEIGHT = 190
"""Its height, px on a plain screen."""

DENSITY = 3.78
"""Pixels for each mm on paper, on a plain screen."""

MARGIN = 8.0
"""Kept free around the drawing, px."""


class SwingView(QWidget):
    """Shows a drawing as large as there is room for it."""

    def __init__(self) -> None:
        super().__init__()
        self._drawing: Drawing = ()
        self.setFixedHeight(scaled(HEIGHT, self))

    def show_drawing(self, drawing: Drawing) -> None:
        """Shows this drawing; nothing where it is empty."""
        self._drawing = drawing
        self.setVisible(bool(drawing))
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802
        """Paints it on paper, by day or by night as the window is."""
        super().paintEvent(event)
        dark = self.window().palette().color(QPalette.ColorRole.Window).lightness() < 128
        theme = Theme.night() if dark else Theme.day()
        painter = QPainter(self)
        painter.fillRect(self.rect(), theme.paper)
        if self._drawing:
            ink = Ink(theme, scaled(1000, self) / 1000 * DENSITY)
            paint(painter, self._drawing, self.camera(), ink)
        painter.end()

    def camera(self) -> Camera:
        """The camera that shows all lines of the drawing."""
        lines = [p for e in self._drawing if isinstance(e, Stroke) for p in e.points]
        xs, ys = [x for x, _ in lines], [y for _, y in lines]
        wide, high = max(xs) - min(xs), max(ys) - min(ys)
        room = (self.width() - 2 * MARGIN, self.height() - 2 * MARGIN)
        scale = min(room[0] / max(wide, 1.0), room[1] / max(high, 1.0))
        x = self.width() / 2 - scale * (max(xs) + min(xs)) / 2
        return Camera(scale, x, self.height() / 2 + scale * (max(ys) + min(ys)) / 2)
