"""The questions of a new room: what is asked, how it is measured, and the edit of each answer."""

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QLabel, QPushButton, QWidget

from core.checks import answered_cautions
from core.lengths import Length, System, write_pitch
from core.model import Project, Room, Slope
from core.wording import Wording
from gui.desk import Desk
from gui.edits import set_room
from gui.edits.new import in_system, set_rafters
from gui.edits.shaping import set_eaves, set_pitches
from gui.fields import Choice, Field, LengthField, PitchField, shown
from gui.panels.form import Form
from gui.panels.room import FLOOR_SEEN, ROOF_BUILT
from gui.sizes import scaled

FIELD = 124
"""The width of a field, px."""


class Questions(Form):
    """Width, length, eave height, pitch and rafters; then what the cautions go by."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self._grid.setVerticalSpacing(2)
        self._grid.setColumnStretch(1, 0)
        self._grid.setColumnStretch(3, 0)
        self._grid.setColumnStretch(0, 1)
        self.asked: list[QWidget] = []
        self._lengths()
        self._rafters()
        self.roof = self._choice("roof", ROOF_BUILT, "roof_built")
        self.floor = self._choice("floor", FLOOR_SEEN, "floor_seen")
        self._cautions()

    def edit_text(self, field: str) -> str:
        """What undo says of an answer."""
        return field

    def unanswered(self) -> Field | None:
        """The first field whose text could not be taken."""
        fields = (w for w in self.asked if isinstance(w, Field))
        return next((field for field in fields if field.refused), None)

    def _lengths(self) -> None:
        self.across = self._length(
            "width", lambda: self._room.width, lambda x: set_room(self.desk.project, width=x)
        )
        self.along = self._length(
            "length", lambda: self._room.length, lambda x: set_room(self.desk.project, length=x)
        )
        self.eave = self._length(
            "eave", lambda: self._slope.eave_height, lambda x: set_eaves(self.desk.project, x)
        )
        self.pitch = PitchField(self.words.word("question.pitch"), self.desk)
        self.pitch.stated.connect(
            lambda pitch: self.apply(self.pitch, lambda: set_pitches(self.desk.project, pitch))
        )
        self.shows(lambda: self.pitch.show_text(write_pitch(self._slope.pitch)))
        self._ask("pitch", self.pitch)

    def _rafters(self) -> None:
        self.deep = self.length(
            "question.depth",
            lambda: self._room.rafter.timber.width,
            lambda x: set_rafters(self.desk.project, depth=x),
        )
        self.apart = self.length(
            "question.apart",
            lambda: self._room.rafter.spacing,
            lambda x: set_rafters(self.desk.project, apart=x),
        )
        self._ask("rafters", self.deep, self.apart)

    def _length(
        self, name: str, value: Callable[[], Length], edit: Callable[[Length], Project]
    ) -> LengthField:
        tape = self.desk.wording.tape
        field = self.shown_length(f"question.{name}", lambda: shown(value(), tape), edit)
        self._ask(name, field)
        return field

    def _ask(self, name: str, *fields: Field) -> None:
        """A question, its fields at the right edge, and under it how to measure it."""
        row = self._grid.rowCount()
        label = QLabel(self.words.word(f"question.{name}"))
        label.setObjectName("question")
        label.setBuddy(fields[0])
        self._grid.addWidget(label, row, 0)
        line = QHBoxLayout()
        line.setSpacing(8)
        for number, field in enumerate(fields):
            field.setFixedWidth(scaled(FIELD if len(fields) == 1 else FIELD * 0.62, self))
            if number:
                line.addWidget(QLabel(self.words.word("question.at")))
            line.addWidget(field)
        self._grid.addLayout(line, row, 1, 1, 3, Qt.AlignmentFlag.AlignRight)
        self.sentence(f"question.{name}-how")
        for field in fields:
            self._grid.addWidget(field.note, self._grid.rowCount(), 0, 1, 4)
            self._describe(field, name)
        self._gap()

    def _gap(self) -> None:
        """Room before the next question."""
        row = self._grid.rowCount()
        self._grid.setRowMinimumHeight(row, scaled(9, self))
        self._grid.addWidget(QWidget(), row, 0)

    def _choice(self, name: str, values: Any, field: str) -> Choice:
        row = self._grid.rowCount()
        label = QLabel(self.words.word(f"question.{name}"))
        label.setObjectName("question")
        choice = self.choice(
            f"question.{name}",
            values,
            lambda: getattr(self._room, field),
            lambda value: set_room(self.desk.project, **{field: value}),
        )
        label.setBuddy(choice)
        self._grid.addWidget(label, row, 0, 1, 4)
        self.wide(choice)
        self._gap()
        self._describe(choice, name)
        return choice

    def _describe(self, widget: QWidget, name: str) -> None:
        """Lets a screen reader say how to measure it, and Enter come to it in its turn."""
        known = f"question.{name}-how"
        if not isinstance(widget, Choice):
            widget.setAccessibleDescription(self.words.word(known))
        self.asked.append(widget)

    def _cautions(self) -> None:
        """The cautions that follow from the two answers."""
        note = QLabel()
        note.setObjectName("standing")
        note.setWordWrap(True)
        self.wide(note)

        def show() -> None:
            found = answered_cautions(self._room)
            said = (self.desk.wording.say(caution.message) for caution in found)
            note.setText("\n".join(said))
            note.setVisible(bool(found))

        self.shows(show)
        # What is left of the height stays below.
        self._grid.setRowStretch(self._grid.rowCount(), 1)

    @property
    def _room(self) -> Room:
        return self.desk.project.room

    @property
    def _slope(self) -> Slope:
        slope = self._room.left or self._room.right
        if slope is None:
            raise LookupError("a room has at least one slope")
        return slope


class Units(QWidget):
    """Two buttons, of which one is down: inches or millimeters."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__()
        self._desk = desk
        self.group = QButtonGroup(self)
        line = QHBoxLayout(self)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(0)
        self.buttons: dict[System, QPushButton] = {}
        for system in System:
            button = QPushButton(wording.word(f"question.{system.value}"))
            button.setObjectName("pick")
            button.setCheckable(True)
            button.setChecked(desk.project.system is system)
            self.group.addButton(button)
            line.addWidget(button)
            self.buttons[system] = button

    def picked(self, system: System) -> Project:
        """The room of the desk in this system."""
        return in_system(self._desk.project, system)
