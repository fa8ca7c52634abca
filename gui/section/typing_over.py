"""A field over a number of the section: it states the number anew, in place."""

from collections.abc import Callable

from PySide6.QtCore import QPoint, QRect, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QWidget

from core.lengths import Length, Pitch
from core.model import Project
from gui.desk import Desk
from gui.edits import Refusal
from gui.fields import Field, LengthField, PitchField
from gui.section.gestures import undo_text
from gui.section.numbers import is_pitch, name_of, state, text_of
from gui.sizes import scaled

_PADDING = 12
"""What the frame of the sentence takes up beside its lines, px."""

WIDTH = 112
"""The width of the field, px."""


class TypingOver(QWidget):
    """The field and under it the sentence of a refusal; it goes when the number is stated."""

    done = Signal()

    def __init__(self, desk: Desk, key: str, parent: QWidget) -> None:
        super().__init__(parent)
        self._desk, self.key, self._paper = desk, key, parent
        name = desk.wording.say(name_of(key))
        self.field: Field = (PitchField if is_pitch(key) else LengthField)(name, desk, self)
        self.field.setParent(self)
        self.field.note.setObjectName("refusal-over")
        self.field.note.setParent(parent)
        self.field.show_text(text_of(desk.project.room, key, desk.wording))
        self.field.stated.connect(self._state)
        self.field.editingFinished.connect(self._finish)
        self.field.resize(scaled(WIDTH, self), self.field.sizeHint().height())
        self.resize(self.field.size())

    def open(self, over: QRect, text: str) -> None:
        """Opens over a number, wholly within the paper, its text selected or begun anew."""
        parent = self._paper
        at = over.center() - QPoint(self.width() // 2, self.height() // 2)
        x = min(max(at.x(), 2), parent.width() - self.width() - 2)
        y = min(max(at.y(), 2), parent.height() - self.height() - 2)
        self.move(x, y)
        self.show()
        self.raise_()
        self.field.setFocus(Qt.FocusReason.OtherFocusReason)
        self.field.selectAll()
        if text:
            self.field.insert(text)

    def close_field(self) -> None:
        """Takes the field away, and its sentence."""
        self.field.note.deleteLater()
        self.hide()
        self.deleteLater()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        """Escape that the field did not want closes it; other keys go no farther."""
        if event.key() == Qt.Key.Key_Escape:
            self.done.emit()

    def _state(self, value: Length | Pitch) -> None:
        self._apply(lambda: state(self._desk.project, self.key, value))

    def _apply(self, edit: Callable[[], Project]) -> None:
        try:
            project = edit()
        except Refusal as refusal:
            sentence = self._desk.wording.say(refusal.message)
            self.field.refuse(sentence)
            self._desk.said.emit(sentence)
            return
        self._desk.said.emit("")
        self._desk.commit(undo_text(self._desk, self.key), project)

    def _finish(self) -> None:
        """Goes where the value was taken; stays, with its sentence, where it was not."""
        if not self.field.refused:
            self.done.emit()
            return
        note, parent = self.field.note, self._paper
        wide = min(scaled(300, self), parent.width() - 8)
        note.ensurePolished()
        note.setFixedSize(wide, note.heightForWidth(wide) + _PADDING)
        x = min(max(self.x(), 4), parent.width() - note.width() - 4)
        below = self.y() + self.height() + 4
        y = below if below + note.height() < parent.height() else self.y() - note.height() - 4
        note.move(x, max(4, y))
        note.show()
        note.raise_()
