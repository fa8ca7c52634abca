"""A form: rows of labelled fields with room under each for the sentence of a refusal."""

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QLabel, QSizePolicy, QWidget

from core.lengths import Length, unbroken
from core.model import Project
from core.wording import Wording
from gui.desk import Desk
from gui.edits import Refusal
from gui.fields import Choice, Field, LengthField, shown
from gui.sizes import scaled

_LABEL_WIDTH = 132


class Form(QWidget):
    """Rows of fields that each make one edit of the project on the desk."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__()
        self.desk = desk
        self.words = wording
        self._shows: list[Callable[[], None]] = []
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(8)
        self._grid.setVerticalSpacing(5)
        self._grid.setColumnStretch(1, 1)
        self._grid.setColumnStretch(3, 1)

    def refresh(self) -> None:
        """Shows the values of the project on the desk."""
        for show in self._shows:
            show()

    def heading(self, message_id: str) -> None:
        """Adds a heading over the rows that follow."""
        label = QLabel(self.words.word(message_id))
        label.setObjectName("heading")
        self._grid.addWidget(label, self._grid.rowCount(), 0, 1, 4)

    def sentence(self, message_id: str) -> None:
        """Adds a line of plain words."""
        label = QLabel(unbroken(self.words.word(message_id)))
        label.setObjectName("faint")
        label.setWordWrap(True)
        self._grid.addWidget(label, self._grid.rowCount(), 0, 1, 4)

    def wide(self, widget: QWidget) -> None:
        """Adds a widget over the whole width."""
        self._grid.addWidget(widget, self._grid.rowCount(), 0, 1, 4)

    def long_choice(self, message_id: str, choice: Choice) -> None:
        """Adds a choice with long texts: its label above it, and the whole width for itself."""
        # A text that is not chosen need not have room: it would widen the panel.
        choice.setSizeAdjustPolicy(choice.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.sentence(message_id)
        self.wide(choice)

    def row(
        self, message_id: str, first: QWidget, between: str = "", second: QWidget | None = None
    ) -> None:
        """Adds a labelled row of one widget, or of two with a sign or word between."""
        row = self._grid.rowCount()
        label = QLabel(self.words.word(message_id))
        label.setWordWrap(True)
        label.setFixedWidth(scaled(_LABEL_WIDTH, self))
        label.setBuddy(first)
        self._grid.addWidget(label, row, 0)
        if second is not None:
            self._grid.addWidget(first, row, 1)
            self._grid.addWidget(QLabel(between), row, 2, Qt.AlignmentFlag.AlignCenter)
            self._grid.addWidget(second, row, 3)
        else:
            self._grid.addWidget(first, row, 1, 1, 3)
        for widget in (first, second):
            if isinstance(widget, Field):
                below = self._grid.rowCount()
                self._grid.addWidget(widget.note, below, 0, 1, 4)
        first.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def length(
        self, message_id: str, value: Callable[[], Length], edit: Callable[[Length], Project]
    ) -> LengthField:
        """A field for a stated length: how to read it off the project, and the edit it makes."""
        return self.shown_length(message_id, lambda: shown(value(), self.desk.wording.tape), edit)

    def shown_length(
        self, message_id: str, text: Callable[[], str], edit: Callable[[Length], Project]
    ) -> LengthField:
        """A field for a length that is shown as a text of its own."""
        field = LengthField(self.words.word(message_id), self.desk)
        field.stated.connect(lambda length: self.apply(field, lambda: edit(length)))
        self.shows(lambda: field.show_text(text()))
        return field

    def choice(
        self,
        message_id: str,
        values: tuple[tuple[object, str], ...],
        value: Callable[[], object],
        edit: Callable[[object], Project],
    ) -> Choice:
        """A choice between values, each with the id of its word."""
        worded = tuple((v, self.words.word(word)) for v, word in values)
        choice = Choice(self.words.word(message_id), worded)
        choice.chosen.connect(lambda chosen: self.apply(choice, lambda: edit(chosen)))
        self.shows(lambda: choice.show_value(value()))
        return choice

    def shows(self, show: Callable[[], None]) -> None:
        """Adds something to be done whenever the form is refreshed."""
        self._shows.append(show)

    def apply(self, widget: QWidget, edit: Callable[[], Project]) -> None:
        """Makes one edit, or says under the field why it cannot be made."""
        try:
            project = edit()
        except Refusal as refusal:
            sentence = self.desk.wording.say(refusal.message)
            if isinstance(widget, Field):
                widget.refuse(sentence)
            self.desk.said.emit(sentence)
            self.refresh()
            return
        self.desk.said.emit("")
        self.desk.commit(self.edit_text(widget.accessibleName()), project)
        self.refresh()

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        return field
