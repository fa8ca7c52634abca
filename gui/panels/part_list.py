"""A list of parts of the roof: which one is shown, its fields, adding and taking away."""

from collections.abc import Callable
from typing import Any

from PySide6.QtWidgets import QHBoxLayout, QPushButton, QWidget

from core.framing import spoken
from core.lengths import write_pitch
from core.model import Project
from core.wording import Wording, message
from gui.desk import Desk
from gui.edits.roof_parts import Path, add_part, parts, remove_part, set_part
from gui.edits.usual_roof import Part
from gui.fields import Choice, MaybeLengthField, PitchField, shown
from gui.panels.form import Form
from gui.panels.timber import timber_row

Row = tuple[str, str, Any]
"""The message id of a row, the path of its value (dots between), and what it is.

What it is: "length", "maybe" (a length that may be left out), "pitch", "timber", or a tuple of
(value, message id) to choose from.
"""


class PartForm(Form):
    """The fields of the part that is chosen from a list."""

    def __init__(
        self,
        desk: Desk,
        wording: Wording,
        where: Path,
        rows: tuple[Row, ...],
        index: Callable[[], int],
    ) -> None:
        super().__init__(desk, wording)
        self._where, self._index = where, index
        for row in rows:
            self._add(*row)

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        return self.words.say(message("undo.field", field=field, thing=self.thing))

    @property
    def thing(self) -> str:
        """What the part is called; a change of pitch goes by its number."""
        found = parts(self.desk.project, self._where)[self._index()]
        named = getattr(found, "id", None)
        if named is not None:
            return spoken(named)
        return self.words.say(message("part.change", number=self._index() + 1))

    def _add(self, message_id: str, path: str, what: Any) -> None:
        names = tuple(path.split("."))

        def value() -> Any:
            found: Any = parts(self.desk.project, self._where)[self._index()]
            for name in names:
                found = getattr(found, name)
            return found

        def edit(new: Any) -> Project:
            return set_part(self.desk.project, self._where, self._index(), names, new)

        if what == "timber":
            timber_row(self, message_id, value, edit)
        elif what == "length":
            tape = self.desk.wording.tape
            self.row(message_id, self.shown_length(message_id, lambda: shown(value(), tape), edit))
        elif what == "maybe":
            self._maybe(message_id, value, edit)
        elif what == "pitch":
            self._pitch(message_id, value, edit)
        else:
            self.row(message_id, self.choice(message_id, what, value, edit))

    def _maybe(
        self, message_id: str, value: Callable[[], Any], edit: Callable[[Any], Project]
    ) -> None:
        field = MaybeLengthField(self.words.word(message_id), self.desk)
        field.stated.connect(lambda length: self.apply(field, lambda: edit(length)))
        tape = self.desk.wording.tape
        self.shows(lambda: field.show_text(shown(value(), tape) if value() is not None else ""))
        self.row(message_id, field)

    def _pitch(
        self, message_id: str, value: Callable[[], Any], edit: Callable[[Any], Project]
    ) -> None:
        field = PitchField(self.words.word(message_id), self.desk)
        field.stated.connect(lambda pitch: self.apply(field, lambda: edit(pitch)))
        self.shows(lambda: field.show_text(write_pitch(value())))
        self.row(message_id, field)


class PartList(Form):
    """A heading, the parts to choose from, and the fields of the one chosen."""

    def __init__(
        self, desk: Desk, wording: Wording, heading: str, where: Path, rows: tuple[Row, ...]
    ) -> None:
        super().__init__(desk, wording)
        self._where = where
        self.heading(heading)
        name = wording.word(heading)
        self.which = Choice(name, ())
        self.add, self.remove = (
            QPushButton(wording.word(word)) for word in ("action.add-part", "action.remove-part")
        )
        for button in (self.add, self.remove):
            button.setAccessibleName(f"{button.text()}, {name}")
        self.body = PartForm(desk, wording, where, rows, self.index)
        self._fill()
        self.which.chosen.connect(lambda _: self.body.refresh())
        self.add.clicked.connect(self._add_part)
        self.remove.clicked.connect(self._remove_part)
        self.shows(self._show)

    def index(self) -> int:
        """The number of the part that is chosen, from 0."""
        return max(self.which.currentIndex(), 0)

    def edit_text(self, field: str) -> str:
        """What undo says of adding or taking away."""
        return field

    def _fill(self) -> None:
        line = QWidget()
        row = QHBoxLayout(line)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.which, 1)
        row.addWidget(self.add)
        row.addWidget(self.remove)
        self.wide(line)
        self.wide(self.body)

    def _show(self) -> None:
        """Shows how many there are, keeping the one that was chosen."""
        found, chosen = parts(self.desk.project, self._where), self.index()
        self.which.offer(tuple(enumerate(self._names(found))))
        self.which.setCurrentIndex(min(chosen, len(found) - 1))
        self.which.setVisible(bool(found))
        self.body.setVisible(bool(found))
        self.remove.setVisible(bool(found))
        if found:
            self.body.refresh()

    def _names(self, found: tuple[Part, ...]) -> list[str]:
        """What the parts are called; a change of pitch goes by its number."""
        changes = (message("part.change", number=n) for n in range(1, len(found) + 1))
        ids = (getattr(part, "id", None) for part in found)
        pairs = zip(ids, changes, strict=True)
        return [spoken(name) if name else self.words.say(change) for name, change in pairs]

    def _add_part(self) -> None:
        self.apply(self.add, lambda: add_part(self.desk.project, self._where))
        last = len(parts(self.desk.project, self._where)) - 1
        self.which.setCurrentIndex(last)
        self.refresh()

    def _remove_part(self) -> None:
        index = self.index()
        self.apply(self.remove, lambda: remove_part(self.desk.project, self._where, index))
