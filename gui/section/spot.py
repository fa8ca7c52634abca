"""A handle of the section as the keys and a screen reader find it: a disc of chalk to be pulled."""

from typing import Protocol

from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QColor, QFocusEvent, QKeyEvent, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QAbstractButton, QWidget

from gui.section.handles import Handle, Ways
from gui.sizes import scaled
from gui.theme import Theme

SIZE = 30
"""The side of the square that a handle is drawn in, px."""

_DISC = 5.0
"""The radius of the disc, px."""

_ARROW = 4.5
"""Half the foot of an arrowhead, px."""

_ARROWS = {
    int(Qt.Key.Key_Up): (1, False),
    int(Qt.Key.Key_Down): (-1, False),
    int(Qt.Key.Key_Right): (1, True),
    int(Qt.Key.Key_Left): (-1, True),
}
_REMOVES = (Qt.Key.Key_Delete, Qt.Key.Key_Backspace)
_STATES = (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space, Qt.Key.Key_F2)


class Board(Protocol):
    """What handles are on."""

    @property
    def theme(self) -> Theme:
        """The colours of day or night."""

    @property
    def lively(self) -> str | None:
        """The key of the handle under the pointer, or being pulled."""

    @property
    def busy(self) -> bool:
        """Whether a handle is being pulled or pushed."""

    def remove(self, key: str) -> bool:
        """Take away what a handle stands for; False where it cannot go."""

    def push(self, key: str, way: int, *, across: bool, large: bool) -> None:
        """Push a handle one step."""

    def settle(self) -> None:
        """Make what was pushed one edit."""

    def take_back(self) -> bool:
        """Take back what is being pulled or pushed; False if nothing is."""

    def type_over(self, key: str, text: str = "") -> None:
        """Let the number of a handle be typed."""


class Spot(QAbstractButton):
    """One handle; the pointer goes through it to the paper, which knows what lies under it."""

    def __init__(self, board: Board, key: str, parent: QWidget) -> None:
        super().__init__(parent)
        self._board, self.key = board, key
        self._ways, self._missing = Ways.UP, False
        side = scaled(SIZE, self)
        self.resize(side, side)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)

    def show_handle(self, handle: Handle, at: QPointF, name: str) -> None:
        """Stands where the handle is, under its name and value."""
        self._ways, self._missing = handle.ways, handle.missing
        self.move(round(at.x() - self.width() / 2), round(at.y() - self.height() / 2))
        self.setAccessibleName(name)
        self.update()

    def event(self, event: QEvent) -> bool:
        """Keeps Delete, and in the middle of a pull all keys: undo would take the room from it."""
        if (
            event.type() is QEvent.Type.ShortcutOverride
            and isinstance(event, QKeyEvent)
            and (self._board.busy or event.key() in _REMOVES)
        ):
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        """Arrow keys push; Enter, or a digit, types the number over; Escape takes a push back."""
        key = event.key()
        if key in _ARROWS:
            way, across = _ARROWS[key]
            large = bool(event.modifiers() & Qt.KeyboardModifier.ControlModifier)
            self._board.push(self.key, way, across=across, large=large)
        elif key in _STATES:
            self._board.type_over(self.key)
        elif event.text() and event.text() in "0123456789.":
            self._board.type_over(self.key, event.text())
        elif key in _REMOVES and self._board.remove(self.key):
            return
        elif key != Qt.Key.Key_Escape or not self._board.take_back():
            event.ignore()

    def keyReleaseEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        """A run of arrow keys is one edit."""
        if event.key() in _ARROWS and not event.isAutoRepeat():
            self._board.settle()

    def focusOutEvent(self, event: QFocusEvent) -> None:  # noqa: N802
        """What was pushed stays."""
        super().focusOutEvent(event)
        self._board.settle()

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802, ARG002
        """A disc, hollow where there is nothing yet; arrowheads where pointer or keys are."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        theme, middle = self._board.theme, QPointF(self.width() / 2, self.height() / 2)
        each = self.width() / SIZE
        lively = self._board.lively == self.key or self.hasFocus()
        if lively:
            halo = QColor(theme.chalk)
            halo.setAlphaF(0.20)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(halo)
            painter.drawEllipse(middle, 9.0 * each, 9.0 * each)
        ring, disc = (theme.chalk, theme.paper) if self._missing else (theme.paper, theme.chalk)
        painter.setPen(QPen(ring, 1.5 * each))
        painter.setBrush(disc)
        painter.drawEllipse(middle, _DISC * each, _DISC * each)
        if lively:
            painter.setPen(Qt.PenStyle.NoPen)
            for dx, dy in self._heads():
                painter.drawPolygon(_head(middle, dx, dy, each))
        painter.end()

    def _heads(self) -> list[tuple[float, float]]:
        up, across = [(0.0, -1.0), (0.0, 1.0)], [(-1.0, 0.0), (1.0, 0.0)]
        return {Ways.UP: up, Ways.ACROSS: across, Ways.BOTH: up + across}[self._ways]


def _head(middle: QPointF, dx: float, dy: float, each: float) -> QPolygonF:
    """An arrowhead pointing away from the middle."""
    near, far, half = 9.0 * each, 14.0 * each, _ARROW * each
    x, y = middle.x(), middle.y()
    points = (
        (x + dx * far, y + dy * far),
        (x + dx * near - dy * half, y + dy * near + dx * half),
        (x + dx * near + dy * half, y + dy * near - dx * half),
    )
    return QPolygonF([QPointF(*point) for point in points])
