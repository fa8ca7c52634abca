"""The schedule of nails, each row to be changed, with the nails of the wall that is shown."""

from collections.abc import Callable
from typing import Any

from PySide6.QtWidgets import QLabel

from core.lengths import Length, parse
from core.model import Joint, Project
from core.site import NailLine, is_spaced, nails
from core.wording import Wording, message
from gui.desk import Desk
from gui.edits import set_nailing
from gui.fields import Field, TextField, shown
from gui.panels.form import Form


class NailsForm(Form):
    """For each joint: how many nails in a place, which, how far apart, and how many that makes."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self._lines: dict[Joint, NailLine] = {}
        self.shows(self._count)
        self.sentence("nail.intro")
        self.totals = {joint: self._joint(joint) for joint in Joint}

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        thing = self.words.word("undo.job")
        return self.words.say(message("undo.field", field=field, thing=thing))

    def _count(self) -> None:
        wall, project = self.desk.wall, self.desk.project
        frame = self.desk.results.wall(wall.letter).frame if wall else None
        found = nails(wall, frame, project.nailing) if wall and frame else ()
        self._lines = {line.joint: line for line in found}

    def _joint(self, joint: Joint) -> QLabel:
        count = Field(self._name(joint, "nail.count"), self._whole)
        name = TextField(self._name(joint, "nail.name"))
        self._states(joint, count, "count", lambda line: str(line.count))
        self._states(joint, name, "nail", lambda line: self.words.say(line.nail))
        self.row(_word(joint), count)
        # Beside its number a nail's name has no room.
        self.row("nail.name", name)
        if is_spaced(joint):
            every = Field(self._name(joint, "nail.every"), self._length)
            self._states(joint, every, "every", self._spacing)
            self.row("nail.every", every)
        total = QLabel()
        total.setObjectName("faint")
        total.setWordWrap(True)
        self.shows(lambda: total.setText(self._said(joint)))
        self.wide(total)
        return total

    def _states(
        self, joint: Joint, field: Field, part: str, text: Callable[[NailLine], str]
    ) -> None:
        """A field that states a part of a joint's nailing; emptied it is as usual again."""

        def edit(value: Any) -> Project:
            changes = {part: None if value == "" else value}
            return set_nailing(self.desk.project, joint, **changes)

        def show() -> None:
            line = self._lines.get(joint)
            field.setEnabled(line is not None)
            field.show_text("" if line is None else text(line))

        field.stated.connect(lambda value: self.apply(field, lambda: edit(value)))
        self.shows(show)

    def _said(self, joint: Joint) -> str:
        line = self._lines.get(joint)
        if line is None:
            return ""
        source = message(f"nail.source-{line.source.value}")
        said = message("nail.line", total=line.total, places=line.places, source=source)
        return self.words.say(said)

    def _spacing(self, line: NailLine) -> str:
        own = next((n for n in self.desk.project.nailing if n.joint is line.joint), None)
        if own is not None and own.every is not None:
            return shown(own.every, self.desk.wording.tape)
        return self.desk.wording.tape.text_with_unit(line.every or 0.0)

    def _whole(self, text: str) -> int | str:
        """A whole number of nails, or nothing."""
        stripped = text.strip()
        if stripped and not (stripped.isascii() and stripped.isdigit() and len(stripped) < 4):
            raise ValueError(self.words.say(message("nail.bad-count", text=stripped)))
        return int(stripped) if stripped else ""

    def _length(self, text: str) -> Length | str:
        return parse(text, self.desk.project.system.bare_unit) if text.strip() else ""

    def _name(self, joint: Joint, part: str) -> str:
        return f"{self.words.word(_word(joint))}, {self.words.word(part)}"


def _word(joint: Joint) -> str:
    """The message id of a joint's name."""
    return f"joint.{joint.value.replace(' ', '-')}"
