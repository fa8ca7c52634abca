"""The tray of parts over the sheet: each is dragged onto the wall, or chosen with the keys."""

import math

from PySide6.QtCore import QPoint, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QAbstractButton, QHBoxLayout, QSizePolicy, QWidget

from core.wording import message
from gui.desk import Desk
from gui.sizes import scaled
from gui.sketcher.fonts import font
from gui.sketcher.ghosts import Part
from gui.theme import Theme
from gui.tray_pictures import HIGH, WIDE, draw

_START_PX = 4.0
"""A press becomes a drag only when the pointer has gone this far."""

_TEXT_PX = 13
"""The size of the words under the pictures, px."""


class Piece(QAbstractButton):
    """One part in the tray: its picture, and under it its word in one line or two."""

    pulled = Signal(QPoint)
    dropped = Signal(QPoint)

    def __init__(self, desk: Desk, theme: Theme, part: Part) -> None:
        super().__init__()
        self.part, self.theme = part, theme
        self._down: QPointF | None = None
        self._pulling = False
        word = desk.wording.word(f"part.{part.value}")
        self.setText(word)
        what = message("tray.part", what=word)
        self.setAccessibleName(word)
        self.setAccessibleDescription(desk.wording.say(what))
        self.setToolTip(desk.wording.say(what))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.setMinimumWidth(28)
        self.setCursor(Qt.CursorShape.OpenHandCursor)

    def sizeHint(self) -> QSize:  # noqa: N802
        return QSize(56, round(HIGH) + 2 * (_TEXT_PX + 2) + 12)

    def mousePressEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        super().mousePressEvent(event)
        if event.button() is Qt.MouseButton.LeftButton:
            self._down, self._pulling = event.position(), False

    def mouseMoveEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        if self._down is None:
            super().mouseMoveEvent(event)
            return
        way = event.position() - self._down
        self._pulling = self._pulling or math.hypot(way.x(), way.y()) >= _START_PX
        if self._pulling:
            self.setDown(False)
            self.pulled.emit(event.globalPosition().toPoint())

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        pulling, self._pulling, self._down = self._pulling, False, None
        if pulling:
            self.dropped.emit(event.globalPosition().toPoint())
        else:
            super().mouseReleaseEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        """Enter takes the part, as the space bar does."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.click()
        else:
            super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802, ARG002
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self.hasFocus() or self.underMouse():
            painter.setPen(QPen(self.theme.chalk, 1.0))
            painter.setBrush(self.theme.field)
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(1.5, 1.5, -1.5, -1.5), 3.0, 3.0)
        painter.save()
        painter.translate((self.width() - WIDE) / 2, 5.0)
        draw(painter, self.part, self.theme)
        painter.restore()
        painter.setPen(self.theme.ink)
        painter.setFont(font(_TEXT_PX, narrow=True))
        top = HIGH + 7.0
        under = QRectF(0.0, top, float(self.width()), self.height() - top - 2.0)
        flags = Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop | Qt.TextFlag.TextWordWrap
        painter.drawText(under, flags, self.text())
        painter.end()


class Tray(QWidget):
    """All parts side by side; what is taken is told by signals, places in px of the screen."""

    chosen = Signal(object)
    pulled = Signal(object, QPoint)
    dropped = Signal(QPoint)

    def __init__(self, desk: Desk, theme: Theme) -> None:
        super().__init__()
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setAccessibleName(desk.wording.word("tray.name"))
        row = QHBoxLayout(self)
        row.setContentsMargins(6, 0, 6, 0)
        row.setSpacing(0)
        self.pieces = {part: Piece(desk, theme, part) for part in Part}
        for part, piece in self.pieces.items():
            piece.setMaximumWidth(scaled(78, self))
            row.addWidget(piece, 1)
            piece.clicked.connect(lambda _=False, part=part: self.chosen.emit(part))
            piece.pulled.connect(lambda at, part=part: self.pulled.emit(part, at))
            piece.dropped.connect(self.dropped)
        row.addStretch(0)

    def set_theme(self, theme: Theme) -> None:
        """Draws by day or by night."""
        for piece in self.pieces.values():
            piece.theme = theme
            piece.update()
