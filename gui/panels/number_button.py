"""A number under its caption that opens its working when it is pressed."""

import html
from functools import cache

from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPaintEvent, QPalette
from PySide6.QtWidgets import QAbstractButton, QLabel, QVBoxLayout

from gui.figure import Figure
from gui.sizes import points, scaled
from gui.theme import Theme

_CAPTION = '<span style="font-size:{}">{}</span><br>{}'
_LARGE = '<span style="font-size:{}; font-weight:700">{}</span>'

_SIGN = 14
"""The room at the right for the sign that it can be opened, px on a plain screen."""


class NumberButton(QAbstractButton):
    """A caption over a number; checked while its working stands below.

    The sign of equality beside it tells that it opens; a number without a working has none.
    """

    def __init__(self) -> None:
        super().__init__()
        self.figure: Figure | None = None
        self._said = QLabel()
        self._said.setTextFormat(Qt.TextFormat.RichText)
        self._said.setWordWrap(True)
        self._said.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 2, scaled(_SIGN, self), 2)
        column.addWidget(self._said)
        self.setCheckable(True)
        self.setAttribute(Qt.WidgetAttribute.WA_Hover)

    @property
    def _is_dark(self) -> bool:
        # The style sheet gives every widget the ink of day or night, and its own ground to few.
        return self.palette().color(QPalette.ColorRole.WindowText).lightness() > 128

    def show_figure(self, figure: Figure) -> None:
        """Shows another number in the same place."""
        if figure == self.figure:
            return
        self.figure = figure
        number = html.escape(figure.text).replace("\n", "<br>")
        number = _LARGE.format(points(17), number) if figure.large else number
        self._said.setText(_CAPTION.format(points(9), html.escape(figure.caption), number))
        self.setAccessibleName(f"{figure.caption}: {figure.text}")
        opens = figure.number is not None
        self.setCheckable(opens)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus if opens else Qt.FocusPolicy.NoFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor if opens else Qt.CursorShape.ArrowCursor)
        self.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        """Enter presses it as space does; Escape closes what it opened."""
        enter = event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
        if enter or (event.key() == Qt.Key.Key_Escape and self.isChecked()):
            self.click()
        else:
            super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802
        """The sign, and a ring or a line, in the colour of what can be taken hold of."""
        del event
        if self.figure is None or self.figure.number is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(_chalk(dark=self._is_dark))
        wide = scaled(_SIGN, self)
        sign = QRect(self.width() - wide, 0, wide - 2, self.height())
        painter.drawText(sign, Qt.AlignmentFlag.AlignCenter, "−" if self.isChecked() else "=")
        if self.hasFocus():
            painter.drawRoundedRect(self.rect().adjusted(0, 0, -1, -1), 3, 3)
        elif self.underMouse():
            painter.drawLine(0, self.height() - 1, self.width() - 1, self.height() - 1)
        painter.end()


@cache
def _chalk(*, dark: bool) -> QColor:
    """The colour of what can be taken hold of, by day or by night."""
    return (Theme.night() if dark else Theme.day()).chalk
