"""Fields that are typed into: they read what people write and say why they cannot."""

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QEvent, QPointF, Qt, Signal
from PySide6.QtGui import (
    QKeyEvent,
    QKeySequence,
    QPainter,
    QPaintEvent,
    QPalette,
    QPen,
    QWheelEvent,
)
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QLabel,
    QLineEdit,
    QStyle,
    QStyleOptionButton,
    QWidget,
)

from core.lengths import Length, Pitch, Tape, parse, parse_pitch, write
from gui.desk import Desk

_SHORT = 14
"""A length that takes more characters than this to write out is shown as on the tape."""


def shown(length: Length, tape: Tape) -> str:
    """A stated length as it was written; one that no one would write so is rounded to the tape.

    1613 mm shows as ``1613 mm``, and 1612.9321712 mm as ``63 1/2"`` on a tape in inches.
    """
    text = write(length)
    return text if len(text) <= _SHORT else tape.text_with_unit(length.mm)


Reader = Callable[[str], Any]
"""From a text to the value it states; ValueError with one sentence to show."""


class Field(QLineEdit):
    """A line that states one value, and the sentence under it when it cannot be taken.

    Enter or leaving the field states the value; Escape brings back the last good text. A text that
    was refused stays, with its sentence, until it is mended or the value changes elsewhere.
    """

    stated = Signal(object)

    def __init__(self, name: str, reader: Reader, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._reader = reader
        self._good = ""
        self.note = QLabel()
        self.note.setObjectName("refusal")
        self.note.setWordWrap(True)
        self.note.hide()
        self.setAccessibleName(name)
        self.editingFinished.connect(self._state)

    @property
    def refused(self) -> bool:
        """Whether the text in it could not be taken."""
        return not self.note.isHidden()

    def show_text(self, text: str) -> None:
        """Shows the text of the value there is, unless the person is at work on another."""
        busy = self.refused or (self.hasFocus() and self.isModified())
        if text == self._good and busy:
            return
        self._good = text
        self.accept()
        if text != self.text():
            self.setText(text)
            self.setCursorPosition(0)

    def accept(self) -> None:
        """Takes the sentence away: the value was taken."""
        self.note.hide()
        self.note.clear()
        self.setModified(False)
        self._mark(False)

    def refuse(self, sentence: str) -> None:
        """Shows why the text cannot be taken; the value stays what it was."""
        self.note.setText(sentence)
        self.note.show()
        self._mark(True)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        """Escape brings back the last good text."""
        if event.key() == Qt.Key.Key_Escape and (self.refused or self.text() != self._good):
            self.setText(self._good)
            self.accept()
            self.selectAll()
            return
        super().keyPressEvent(event)

    def event(self, event: QEvent) -> bool:
        """Leaves undo and redo to the window, unless the person is at work on the text."""
        if event.type() is QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent):
            key = QKeySequence.StandardKey
            undoing = event.matches(key.Undo) or event.matches(key.Redo)
            if undoing and not self.isModified():
                event.ignore()
                return False
        return super().event(event)

    def _state(self) -> None:
        if self.text() == self._good:
            self.accept()
            return
        try:
            value = self._reader(self.text())
        except ValueError as error:
            self.refuse(str(error))
            return
        self.accept()
        self.stated.emit(value)

    def _mark(self, refused: bool) -> None:
        """Lets the style sheet see that the field is refused."""
        if self.property("refused") != refused:
            self.setProperty("refused", refused)
            self.style().unpolish(self)
            self.style().polish(self)


class LengthField(Field):
    """A field for a length, in the project's unit where none is written."""

    def __init__(self, name: str, desk: Desk, parent: QWidget | None = None) -> None:
        def read(text: str) -> Length:
            return parse(text, desk.project.system.bare_unit)

        super().__init__(name, read, parent)
        self.setAlignment(Qt.AlignmentFlag.AlignRight)


class MaybeLengthField(Field):
    """A field for a length that may be left out: nothing typed is none."""

    def __init__(self, name: str, desk: Desk, parent: QWidget | None = None) -> None:
        def read(text: str) -> Length | None:
            return parse(text, desk.project.system.bare_unit) if text.strip() else None

        super().__init__(name, read, parent)
        self.setAlignment(Qt.AlignmentFlag.AlignRight)


class LengthsField(Field):
    """A field for any number of lengths with semicolons between."""

    def __init__(self, name: str, desk: Desk, parent: QWidget | None = None) -> None:
        def read(text: str) -> tuple[Length, ...]:
            parts = (part for part in text.split(";") if part.strip())
            return tuple(parse(part, desk.project.system.bare_unit) for part in parts)

        super().__init__(name, read, parent)
        self.setAlignment(Qt.AlignmentFlag.AlignRight)


class PitchField(Field):
    """A field for the pitch of a roof."""

    def __init__(self, name: str, desk: Desk, parent: QWidget | None = None) -> None:
        def read(text: str) -> Pitch:
            return parse_pitch(text, desk.project.system.bare_unit)

        super().__init__(name, read, parent)
        self.setAlignment(Qt.AlignmentFlag.AlignRight)


class PercentField(Field):
    """A field for a whole number of percent that may be left out: nothing typed is none."""

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(name, _percent, parent)
        self.setAlignment(Qt.AlignmentFlag.AlignRight)


def _percent(text: str) -> int | None:
    """The percent in a text, None in an empty one; ValueError for what is no whole number."""
    plain = text.strip().removesuffix("%").strip()
    if not plain:
        return None
    if not plain.isdecimal():
        raise ValueError(f"“{plain}” is no whole number; write one, as in 60.")
    return int(plain)


class TextField(Field):
    """A field for a name or a letter."""

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(name, str.strip, parent)


class Tick(QCheckBox):
    """A tick for what is there or not."""

    chosen = Signal(bool)

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(name, parent)
        self.setAccessibleName(name)
        self.clicked.connect(self.chosen)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802
        """Adds the mark, which a style sheet takes away."""
        super().paintEvent(event)
        if not self.isChecked():
            return
        option = QStyleOptionButton()
        self.initStyleOption(option)
        part = QStyle.SubElement.SE_CheckBoxIndicator
        rect = self.style().subElementRect(part, option, self).toRectF()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(self.palette().color(QPalette.ColorRole.HighlightedText), 2.0))
        shares = ((0.25, 0.52), (0.43, 0.7), (0.76, 0.3))
        painter.drawPolyline(
            [QPointF(rect.x() + rect.width() * x, rect.y() + rect.height() * y) for x, y in shares]
        )
        painter.end()


class Choice(QComboBox):
    """A choice between a few values; the wheel scrolls the panel and never changes it."""

    chosen = Signal(object)

    def __init__(
        self, name: str, values: tuple[tuple[Any, str], ...], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.offer(values)
        self.setAccessibleName(name)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.activated.connect(lambda index: self.chosen.emit(self._values[index]))

    def offer(self, values: tuple[tuple[Any, str], ...]) -> None:
        """Offers these values, each with its text, instead of those before."""
        self._values = tuple(value for value, _ in values)
        self.clear()
        self.addItems([text for _, text in values])

    def show_value(self, value: object) -> None:
        """Shows the value there is; one that is not offered shows as nothing."""
        self.setCurrentIndex(self._values.index(value) if value in self._values else -1)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802
        """Adds the arrow, which a style sheet takes away."""
        super().paintEvent(event)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self.palette().color(QPalette.ColorRole.Text))
        x, y = self.width() - 15.0, self.height() / 2 - 2.0
        painter.drawPolygon([QPointF(x, y), QPointF(x + 8, y), QPointF(x + 4, y + 5)])
        painter.end()

    def wheelEvent(self, event: QWheelEvent) -> None:  # noqa: N802
        """Leaves the wheel to the panel around it."""
        event.ignore()
