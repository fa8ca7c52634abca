"""A small drawing in a panel, in the colours of day or night."""

from PySide6.QtCore import QSize
from PySide6.QtGui import QPainter, QPaintEvent, QPalette
from PySide6.QtWidgets import QWidget

from core.drawing import Drawing, View
from core.drawing.extent import extent
from gui.sizes import density
from gui.sketcher.camera import TEXT_MM, Camera
from gui.sketcher.paint import Ink, paint
from gui.theme import Theme


class Picture(QWidget):
    """A drawing made for the view that it is painted at, in the middle of its own width.

    One that is not `centred` stands at the left.
    """

    def __init__(self, name: str, scale: float, *, centred: bool = True) -> None:
        super().__init__()
        self._scale, self._centred = scale, centred
        self._drawing: Drawing = ()
        self.setAccessibleName(name)

    @property
    def view(self) -> View:
        """The view that the drawing is made for."""
        return View(self._scale, TEXT_MM)

    def show_drawing(self, drawing: Drawing) -> None:
        """Shows a drawing made for `view`; an empty one hides the picture."""
        self._drawing = drawing
        self.setVisible(bool(drawing))
        self.setFixedHeight(self.sizeHint().height())
        self.update()

    def sizeHint(self) -> QSize:  # noqa: N802
        """The size of the drawing."""
        if not self._drawing:
            return QSize(0, 0)
        left, bottom, right, top = extent(self._drawing, self._scale)
        each = self._scale * self._density
        return QSize(round((right - left) * each) + 4, round((top - bottom) * each) + 4)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802
        """Paints the drawing in its place."""
        super().paintEvent(event)
        if not self._drawing:
            return
        left, bottom, right, top = extent(self._drawing, self._scale)
        each = self._scale * self._density
        x = self.width() / 2 - each * (left + right) / 2 if self._centred else 2 - each * left
        y = self.height() / 2 + each * (bottom + top) / 2
        painter = QPainter(self)
        paint(painter, self._drawing, Camera(each, x, y), Ink(self._theme, self._density))
        painter.end()

    @property
    def _density(self) -> float:
        return density(self)

    @property
    def _theme(self) -> Theme:
        # The style sheet gives every widget the ink of day or night, and its own ground to few.
        dark = self.palette().color(QPalette.ColorRole.WindowText).lightness() > 128
        return Theme.night() if dark else Theme.day()
