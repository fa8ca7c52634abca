"""The right side of the window: what is held, its numbers and fields; else the wall and room."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from gui.desk import Desk
from gui.numbers import numbers_of
from gui.panels.box import BoxForm
from gui.panels.cautions import Cautions, grave_first
from gui.panels.form import Form
from gui.panels.habits import HabitsForm
from gui.panels.numbers_view import NumbersView
from gui.panels.opening import OpeningForm
from gui.panels.plate_rules import PlateRulesForm
from gui.panels.plates import PlatesForm
from gui.panels.room import RoomForm
from gui.panels.saw import SawForm
from gui.panels.section import Section
from gui.panels.stud import StudForm
from gui.panels.wall import WallForm
from gui.sizes import scaled
from gui.things import Kind, thing_of

WIDTH = 360

_FORM_OF = {
    Kind.OPENING: "opening",
    Kind.BOX: "box",
    Kind.STUD: "stud",
    Kind.CRIPPLE: "stud",
    Kind.END: "fixed",
    Kind.PLATE: "fixed",
}

_WALL_FORMS = ("wall", "plates", "room", "habits", "plate-rules", "saw")


class Held(QScrollArea):
    """Numbers, cautions and fields of the thing held, or of wall, room and habits."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        words = desk.wording
        self.numbers = NumbersView()
        self.cautions = Cautions(desk)
        self.standing = Cautions(desk, "severity.standing")
        fixed = Form(desk, words)
        fixed.sentence("held.goes-with-wall")
        self.opening, self.box = OpeningForm(desk, words), BoxForm(desk, words)
        self.stud, self.wall = StudForm(desk, words), WallForm(desk, words)
        self.room, self.habits = RoomForm(desk, words), HabitsForm(desk, words)
        self.plates, self.saw = PlatesForm(desk, words), SawForm(desk, words)
        self.plate_rules = PlateRulesForm(desk, words)
        self._forms: dict[str, QWidget] = {
            "opening": self.opening,
            "box": self.box,
            "stud": self.stud,
            "fixed": fixed,
            "wall": self.wall,
            "plates": Section(words.word("heading.plates"), self.plates),
            "room": Section(words.word("heading.room"), self.room),
            "habits": Section(words.word("heading.habits"), self.habits),
            "plate-rules": Section(words.word("heading.plate-rules"), self.plate_rules),
            "saw": Section(words.word("heading.saw"), self.saw),
        }
        self._fill()
        desk.held_changed.connect(self.refresh)
        self.refresh()

    def _fill(self) -> None:
        inside = QWidget()
        inside.setObjectName("panel")
        column = QVBoxLayout(inside)
        column.setContentsMargins(16, 14, 16, 16)
        column.setSpacing(12)
        parts = (self.numbers, self.cautions, *self._forms.values(), self.standing)
        for part in parts:
            column.addWidget(part)
        column.addStretch(1)
        self.setWidget(inside)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setMinimumWidth(scaled(WIDTH, self))

    def refresh(self) -> None:
        """Shows the project on the desk and what is held of it."""
        result = self._desk.result
        shown = self._shown()
        for name, widget in self._forms.items():
            widget.setVisible(name in shown)
        for name in shown:
            form = self._forms[name]
            if isinstance(form, Form | Section):
                form.refresh()
        self.numbers.setVisible(result is not None)
        if result is not None:
            self.numbers.show_numbers(numbers_of(result, self._desk.held, self._desk.wording))
        self.cautions.show_cautions(grave_first(result.cautions) if result else ())
        held = self._desk.held is not None
        self.standing.show_cautions(() if held else self._desk.results.cautions)

    def _shown(self) -> tuple[str, ...]:
        """The names of the forms that stand to what is held."""
        wall, held = self._desk.wall, self._desk.held
        if wall is None:
            return "room", "habits", "plate-rules", "saw"
        thing = thing_of(wall, held) if held is not None else None
        return (_FORM_OF[thing.kind],) if thing is not None else _WALL_FORMS
