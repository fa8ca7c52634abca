"""The field in which a dimension on the sheet is typed over, in its place."""

from collections.abc import Callable

from PySide6.QtCore import QEvent, QRect, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent
from PySide6.QtWidgets import QLineEdit, QWidget

from core.wording import message
from gui.desk import Desk
from gui.edits import Refusal

_LEAST_WIDE = 92
"""The least width of the field, px: room for a length in feet and inches."""

Take = Callable[[str], None]
"""Takes what was typed; Refusal if it cannot be, ValueError if it says nothing of the kind."""


class Typed(QLineEdit):
    """A line that opens over a figure: Enter sets, Escape takes back, Tab sets and goes on."""

    went_on = Signal(int)
    closed = Signal()

    def __init__(self, desk: Desk, parent: QWidget) -> None:
        super().__init__(parent)
        self._sheet = parent
        self._desk = desk
        self._take: Take | None = None
        self._first = ""
        self.setObjectName("typed")
        self.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        self.hide()

    def open(self, over: QRect, name: str, text: str, take: Take) -> None:
        """Opens over a figure that reads `text`; `name` is what a screen reader calls it."""
        self._take, self._first = take, text
        self.setAccessibleName(name)
        self.setText(text)
        self._mark(refused=False)
        wide = max(over.width() + 20, _LEAST_WIDE)
        rect = QRect(0, 0, wide, self.sizeHint().height())
        rect.moveCenter(over.center())
        room = self._sheet.rect().adjusted(2, 2, -2, -2)
        rect.moveLeft(min(max(rect.left(), room.left()), room.right() - wide))
        self.setGeometry(rect)
        self.show()
        self.raise_()
        self.setFocus()
        self.selectAll()

    def begin(self, text: str) -> None:
        """Begins with what was typed on the sheet instead of what the figure reads."""
        self.setText(text)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        """Enter sets, Escape takes back."""
        if event.key() == Qt.Key.Key_Escape:
            self._desk.said.emit("")
            self._close()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            if self._set():
                self._close()
        else:
            super().keyPressEvent(event)

    def event(self, event: QEvent) -> bool:
        """Tab sets and goes on to the next figure, Shift+Tab to the one before."""
        if event.type() is QEvent.Type.KeyPress and isinstance(event, QKeyEvent):
            ways = {Qt.Key.Key_Tab: 1, Qt.Key.Key_Backtab: -1}
            way = ways.get(Qt.Key(event.key()))
            if way is not None:
                if self._set():
                    self.went_on.emit(way)
                return True
        return super().event(event)

    def focusOutEvent(self, event: QFocusEvent) -> None:  # noqa: N802
        """Leaving sets what can be set."""
        super().focusOutEvent(event)
        if self.isVisible() and event.reason() is not Qt.FocusReason.PopupFocusReason:
            self._set()
            self._close()

    def _set(self) -> bool:
        """Whether what was typed is now so, or was so before."""
        if self.text() == self._first or self._take is None:
            return True
        try:
            self._take(self.text())
        except Refusal as refusal:
            self._refuse(self._desk.wording.say(refusal.message))
            return False
        except ValueError as error:
            self._refuse(str(error))
            return False
        self._first = self.text()
        self._desk.said.emit("")
        return True

    def _refuse(self, sentence: str) -> None:
        self._desk.said.emit(sentence)
        self._mark(refused=True)
        self.selectAll()

    def _close(self) -> None:
        self._take = None
        had = self.hasFocus()
        self.hide()
        if had:
            self._sheet.setFocus()
        self.closed.emit()

    def _mark(self, *, refused: bool) -> None:
        if self.property("refused") != refused:
            self.setProperty("refused", refused)
            self.style().unpolish(self)
            self.style().polish(self)


def figure_name(desk: Desk, what: str, ruler: str) -> str:
    """What a screen reader calls a figure: the thing and where the dimension is taken from."""
    where = message(f"measure.{ruler}")
    return desk.wording.say(message("measure.name", what=what, where=where))
