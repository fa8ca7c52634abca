"""What was said last, at the foot of the window: never cut off within a number."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QFrame, QLabel, QSizePolicy, QWidget

_AIR = 24
"""What is kept free around a sentence, px."""


class Foot(QLabel):
    """A line of words; what stands beside it makes way for a sentence that needs the place.

    A sentence that is too long for the whole window ends in dots; all of it is its tip.
    """

    def __init__(self) -> None:
        super().__init__()
        self.aside: QWidget | None = None
        self.setObjectName("foot")
        # A long line must not widen the window.
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.setMinimumHeight(30)

    def say(self, sentence: str) -> None:
        """Shows a sentence; one that begins with the name of a thing begins large all the same."""
        self.setText(sentence[:1].upper() + sentence[1:])
        self.setToolTip(self.text())
        self._share()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802
        """Shares the window's width anew."""
        super().resizeEvent(event)
        self._share()

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802
        """Paints the sentence, with dots at its end where it is too long."""
        place, dots = self.contentsRect(), Qt.TextElideMode.ElideRight
        shown = self.fontMetrics().elidedText(self.text(), dots, place.width())
        if shown == self.text():
            super().paintEvent(event)
            return
        QFrame.paintEvent(self, event)
        painter = QPainter(self)
        self.style().drawItemText(
            painter, place, int(self.alignment()), self.palette(), self.isEnabled(), shown,
            self.foregroundRole(),
        )  # fmt: skip
        painter.end()

    def _share(self) -> None:
        """Hides what stands beside the sentence while both do not fit."""
        aside, whole = self.aside, self.parentWidget()
        if aside is None or whole is None or aside.parentWidget() is not whole:
            return
        wanted = self.fontMetrics().horizontalAdvance(self.text()) + _AIR
        fits = not self.text() or wanted + aside.sizeHint().width() <= whole.width()
        if aside.isHidden() is fits:
            aside.setVisible(fits)
