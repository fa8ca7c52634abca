"""What is told of the thing that the pointer rests on or the keys come to: what it is, its cut."""

from PySide6.QtCore import QObject, QRectF, Qt, QTimer, Signal
from PySide6.QtGui import QFontMetricsF, QPainter, QPen

from core.job import WallResult
from core.wording import Wording
from gui.numbers import numbers_of
from gui.sketcher.camera import TEXT_MM, XY
from gui.sketcher.extent import pixels
from gui.sketcher.fonts import font
from gui.sketcher.paint import Ink

REST_MS = 450
"""How long the pointer rests before a thing is told of."""

_AWAY = (14.0, 18.0)
"""How far right and down of the pointer the note stands, px."""

_PAD = 7.0


def told(result: WallResult, key: str, wording: Wording) -> tuple[str, ...]:
    """Its name and what it is, then its chief figures and cuts, a line each."""
    numbers = numbers_of(result, key, wording)
    lines = (f"{f.caption}: {f.text}" for f in numbers.figures if f.large)
    return (f"{numbers.name}  {numbers.what}", *(line.replace("\n", ", ") for line in lines))


def told_in_line(result: WallResult, key: str, wording: Wording) -> str:
    """The same in one line, for the foot of the window and for screen readers."""
    return " · ".join(told(result, key, wording))


class Rest(QObject):
    """Waits until the pointer has rested a while on one thing."""

    rested = Signal()

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(REST_MS)
        self._timer.timeout.connect(self._over)
        self._at: tuple[str, XY] | None = None
        self.on: tuple[str, XY] | None = None

    def move(self, key: str | None, pos: XY) -> None:
        """The pointer has come here, over the thing with this key."""
        if self.on is not None and key == self.on[0]:
            return
        if self.on is not None:
            self.on = None
            self.rested.emit()
        self._at = (key, pos) if key is not None else None
        if self._at is None:
            self._timer.stop()
        else:
            self._timer.start()

    def _over(self) -> None:
        self.on = self._at
        self.rested.emit()


def paint_told(painter: QPainter, lines: tuple[str, ...], pos: XY, window: XY, ink: Ink) -> None:
    """A small slip of paper near the pointer, within the window."""
    size = pixels(TEXT_MM, ink.density)
    fonts = [font(size, bold=n == 0) for n in range(len(lines))]
    wide = max(
        QFontMetricsF(f).horizontalAdvance(text) for f, text in zip(fonts, lines, strict=True)
    )
    line = QFontMetricsF(fonts[0]).height() + 1.0
    rect = QRectF(0.0, 0.0, wide + 2 * _PAD, line * len(lines) + 2 * _PAD - 2.0)
    left = min(pos[0] + _AWAY[0], window[0] - rect.width() - 4.0)
    top = pos[1] + _AWAY[1]
    if top + rect.height() > window[1] - 4.0:
        top = pos[1] - _AWAY[1] / 2 - rect.height()
    rect.moveTo(max(left, 4.0), max(top, 4.0))
    painter.setPen(QPen(ink.theme.edge, 1.0))
    painter.setBrush(ink.theme.field)
    painter.drawRoundedRect(rect, 3.0, 3.0)
    painter.setPen(ink.theme.ink)
    for n, (text, face) in enumerate(zip(lines, fonts, strict=True)):
        painter.setFont(face)
        row = QRectF(rect.left() + _PAD, rect.top() + _PAD - 1.0 + n * line, wide + 2.0, line)
        painter.drawText(row, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, text)
