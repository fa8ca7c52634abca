"""The right side of the window: what is held, its numbers and fields; else the wall or the room."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QLabel, QPushButton, QScrollArea, QVBoxLayout, QWidget

from core.framing import Printed
from core.wording import message
from gui.desk import Desk
from gui.figure import Figure
from gui.numbers import numbers_of, workings_of
from gui.panels.box import BoxForm
from gui.panels.cautions import Cautions, grave_first
from gui.panels.cut_view import CutView
from gui.panels.doubled import DoubledForm
from gui.panels.fixture import FixtureForm
from gui.panels.form import Form
from gui.panels.habits import HabitsForm
from gui.panels.leaf import LeafForm
from gui.panels.leaning import LeaningForm
from gui.panels.measured import MeasuredForm
from gui.panels.measured_stud import MeasuredStudForm
from gui.panels.nailed import NailedForm
from gui.panels.nails import NailsForm
from gui.panels.numbers_view import NumbersView
from gui.panels.opening import OpeningForm
from gui.panels.passing import PassingForm
from gui.panels.plate_rules import PlateRulesForm
from gui.panels.plates import PlatesForm
from gui.panels.raising import RaisingForm
from gui.panels.roof_parts import RoofPartsForm
from gui.panels.room import RoomForm
from gui.panels.rules import RulesForm
from gui.panels.saw import SawForm
from gui.panels.section import Section
from gui.panels.since import SinceForm
from gui.panels.stud import StudForm
from gui.panels.turns import TurnsForm
from gui.panels.wall import WallForm
from gui.panels.zone import ZoneForm
from gui.sizes import scaled
from gui.things import Kind, name_of, thing_of

WIDTH = 360

_FORMS_OF = {
    Kind.OPENING: ("opening", "leaf"),
    Kind.BOX: ("box",),
    Kind.FIXTURE: ("fixture",),
    Kind.ZONE: ("zone",),
    Kind.STUD: ("stud", "doubled"),
    Kind.CRIPPLE: ("stud",),
    Kind.DOUBLE: ("doubled",),
    Kind.END: ("fixed", "doubled"),
    Kind.PLATE: ("fixed",),
    Kind.BLOCK: ("fixed",),
}

_OF_THE_WALL = (
    "since",
    "passing",
    "wall",
    "rules",
    "measured",
    "leaning",
    "nailed",
    "raising",
    "turns",
    "nails",
    "plates",
    "to-room",
)

_OF_THE_ROOM = ("room", "roof-parts", "turns", "habits", "plate-rules", "saw")


class Held(QScrollArea):
    """Numbers, cautions and fields of the thing held, or of the wall or room shown."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        words = desk.wording
        self.numbers = NumbersView(words, self._explained)
        self.cut = CutView(desk)
        self.cautions = Cautions(desk)
        self.standing = Cautions(desk, "severity.standing")
        fixed = Form(desk, words)
        fixed.sentence("held.goes-with-wall")
        self.opening, self.box = OpeningForm(desk, words), BoxForm(desk, words)
        self.leaf = LeafForm(desk, words)
        self.stud, self.wall = StudForm(desk, words), WallForm(desk, words)
        self.zone = ZoneForm(desk, words)
        self.nailed, self.fixture = NailedForm(desk, words), FixtureForm(desk, words)
        self.rules, self.doubled = RulesForm(desk, words), DoubledForm(desk, words)
        self.room, self.habits = RoomForm(desk, words), HabitsForm(desk, words)
        self.since = SinceForm(desk, words)
        self.measured = MeasuredForm(desk, words)
        self.measured_stud = MeasuredStudForm(desk, words)
        self.raising, self.nails = RaisingForm(desk, words), NailsForm(desk, words)
        self.turns = TurnsForm(desk, words)
        self.roof_parts = RoofPartsForm(desk, words)
        self.plates, self.saw = PlatesForm(desk, words), SawForm(desk, words)
        self.plate_rules = PlateRulesForm(desk, words)
        self.to_room = QPushButton(words.word("held.to-room"))
        self.to_room.clicked.connect(desk.show_room)
        self.passing, self.leaning = PassingForm(desk, words), LeaningForm(desk, words)
        self._forms: dict[str, QWidget] = {
            "passing": self.passing,
            "opening": self.opening,
            "leaf": Section(words.word("heading.leaf"), self.leaf),
            "box": self.box,
            "stud": self.stud,
            "measured-stud": self.measured_stud,
            "fixed": fixed,
            "doubled": self.doubled,
            "since": self.since,
            "wall": self.wall,
            "leaning": Section(words.word("heading.leaning"), self.leaning),
            "measured": Section(words.word("heading.measured"), self.measured),
            "fixture": self.fixture,
            "zone": self.zone,
            "nailed": Section(words.word("heading.nailed"), self.nailed),
            "raising": Section(words.word("heading.up"), self.raising, lazy=True),
            "turns": Section(words.word("heading.turns"), self.turns, lazy=True),
            "nails": Section(words.word("heading.nails"), self.nails, lazy=True),
            "rules": Section(words.word("heading.rules"), self.rules),
            "plates": Section(words.word("heading.plates"), self.plates),
            "to-room": self.to_room,
            "room": self.room,
            "roof-parts": Section(words.word("heading.roof-parts"), self.roof_parts),
            "habits": Section(words.word("heading.habits"), self.habits),
            "plate-rules": Section(words.word("heading.plate-rules"), self.plate_rules),
            "saw": Section(words.word("heading.saw"), self.saw),
        }
        self.together = QLabel()
        self.together.setObjectName("faint")
        self.together.setWordWrap(True)
        self._fill()
        desk.held_changed.connect(self.refresh)
        self.refresh()

    def _fill(self) -> None:
        inside = QWidget()
        inside.setObjectName("panel")
        column = QVBoxLayout(inside)
        column.setContentsMargins(16, 14, 16, 16)
        column.setSpacing(12)
        parts = (
            self.together,
            self.numbers,
            self.cut,
            self.cautions,
            *self._forms.values(),
            self.standing,
        )
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
        self._tell_together()
        self.numbers.setVisible(result is not None)
        if result is not None:
            self.numbers.show_numbers(numbers_of(result, self._desk.held, self._desk.wording))
        self.cut.refresh()
        self.cautions.show_cautions(grave_first(result.cautions) if result else ())
        held = self._desk.held is not None
        self.standing.show_cautions(() if held else self._desk.results.cautions)

    def _tell_together(self) -> None:
        """Says that several things are held, and that the fields are those of one of them."""
        desk, result = self._desk, self._desk.result
        several = result is not None and bool(desk.also) and desk.held is not None
        self.together.setVisible(several)
        if several and result is not None and desk.held is not None:
            count, chief = len(desk.holding), name_of(result, desk.held)
            self.together.setText(
                desk.wording.say(message("held.together", count=count, chief=chief))
            )

    def _explained(self, figure: Figure) -> tuple[Printed, ...]:
        """The working of a number of what is held, or of the wall."""
        desk = self._desk
        if desk.letter is None:
            return ()
        return workings_of(desk.results, desk.letter, desk.held, figure, desk.wording)

    def _shown(self) -> tuple[str, ...]:
        """The names of the forms that stand to what is held."""
        wall, held = self._desk.wall, self._desk.held
        if wall is None:
            return _OF_THE_ROOM
        thing = thing_of(wall, held) if held is not None else None
        if thing is None:
            hidden = self._not_of_this_wall()
            return tuple(name for name in _OF_THE_WALL if name not in hidden)
        also = ("measured-stud",) if self.measured_stud.shows_held else ()
        return (*_FORMS_OF[thing.kind], *also)

    def _not_of_this_wall(self) -> set[str]:
        """The forms that have nothing to say of the wall shown."""
        speak = {"passing": self.passing.meets_any, "since": self.since.stands}
        return {name for name, has in speak.items() if not has}
