"""The right side of the window: what is held, its numbers and fields; else the wall or the room."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QLabel, QScrollArea, QVBoxLayout, QWidget

from core.framing import Printed
from core.job import WallResult
from core.wording import message
from gui.desk import Desk
from gui.figure import Figure, Numbers
from gui.forms import Forms
from gui.numbers import numbers_of, workings_of
from gui.panels.cautions import Cautions, grave_first
from gui.panels.cut_view import CutView
from gui.panels.form import Form
from gui.panels.numbers_view import NumbersView
from gui.panels.section import Section
from gui.sizes import scaled
from gui.things import Kind, name_of, thing_of

WIDTH = 372

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

_OF_THE_ROOM = ("room", "roof-parts", "floor", "turns", "habits", "plate-rules", "saw")


_IN_ORDER = (
    "passing",
    "opening",
    "leaf",
    "box",
    "stud",
    "measured-stud",
    "fixed",
    "doubled",
    "plan-wall",
    "room",
    "roof-parts",
    "floor",
    "since",
    "wall",
    "leaning",
    "measured",
    "fixture",
    "zone",
    "nailed",
    "raising",
    "turns",
    "nails",
    "rules",
    "plates",
    "to-room",
    "habits",
    "plate-rules",
    "saw",
)
"""All forms from top to bottom."""


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
        self.forms = Forms(desk)
        self._parts: dict[str, QWidget] = {}
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
        over = (self.together, self.numbers, self.cut, self.cautions)
        for part in (*over, self.standing):
            column.addWidget(part)
        self.column = column
        column.addStretch(1)
        self.setWidget(inside)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        # Smaller texts leave as much room around them.
        self.setMinimumWidth(max(scaled(WIDTH, self), WIDTH))
        self.setAccessibleName(self._desk.wording.word("held.side"))

    def refresh(self) -> None:
        """Shows the project on the desk and what is held of it."""
        result = self._desk.result
        shown = self._shown()
        parts = [self.part(name) for name in shown]
        for name, widget in self._parts.items():
            widget.setVisible(name in shown)
        for part in parts:
            if isinstance(part, Form | Section):
                part.refresh()
        self._tell_together()
        self.numbers.setVisible(result is not None)
        if result is not None:
            self.numbers.show_numbers(self._numbers(result))
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

    def part(self, name: str) -> QWidget:
        """A form as it stands in the column, put in its place there if it was not there yet."""
        if name not in self._parts:
            before = sum(other in self._parts for other in _IN_ORDER[: _IN_ORDER.index(name)])
            self._parts[name] = part = self.forms.part(name)
            over = self.column.indexOf(self.cautions) + 1
            self.column.insertWidget(over + before, part)
        return self._parts[name]

    @property
    def stands(self) -> tuple[str, ...]:
        """The names of the forms that are to be seen, from top to bottom."""
        there = (name for name in _IN_ORDER if name in self._parts)
        return tuple(name for name in there if not self._parts[name].isHidden())

    def _numbers(self, result: WallResult) -> Numbers:
        desk = self._desk
        return numbers_of(result, desk.held, desk.wording, desk.project.species)

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
            held_wall = ("plan-wall",) if self.forms.plan_wall.stands else ()
            return (*held_wall, *_OF_THE_ROOM)
        thing = thing_of(wall, held) if held is not None else None
        if thing is None:
            hidden = self._not_of_this_wall()
            return tuple(name for name in _OF_THE_WALL if name not in hidden)
        also = ("measured-stud",) if self.forms.measured_stud.shows_held else ()
        return (*_FORMS_OF[thing.kind], *also)

    def _not_of_this_wall(self) -> set[str]:
        """The forms that have nothing to say of the wall shown."""
        speak = {"passing": self.forms.passing.meets_any, "since": self.forms.since.stands}
        return {name for name, has in speak.items() if not has}
