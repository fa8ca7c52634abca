"""The fields of the person's habits: units, words, tape, the line on the plate, its letters."""

from fractions import Fraction
from typing import Any

import msgspec

from core.lengths import Length, System
from core.model import Habits, LineEdge, Project, TradeWords
from core.wording import Wording, message
from gui.desk import Desk
from gui.edits import set_habits, set_system
from gui.fields import TextField, Tick
from gui.panels.form import Form

_STEPS = {
    System.INCH: tuple(
        (Length.of_inches(Fraction(1, parts)), f"step.{parts}") for parts in (8, 16, 32)
    ),
    System.METRIC: ((Length.of_mm(1.0), "step.1-mm"), (Length.of_mm(0.5), "step.half-mm")),
}
_EDGES = tuple((edge, f"edge.{edge.value}") for edge in LineEdge)
_SYSTEMS = tuple((system, f"units.{system.value}") for system in System)
_WORDS = ((None, "words.as-units"), *((words, f"words.{words.value}") for words in TradeWords))


class HabitsForm(Form):
    """How numbers are shown and how plates are marked."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self._units()
        steps = _STEPS[self.habits.tape.system]
        step = self.choice(
            "field.step",
            steps,
            lambda: self.habits.tape.step,
            lambda step: self._set_tape(step=step),
        )
        self.row("field.step", step)
        if self.habits.tape.system is System.INCH:
            self._feet()
        edge = self.choice(
            "field.line-edge",
            _EDGES,
            lambda: self.habits.line_edge,
            lambda edge: self._set(line_edge=edge),
        )
        self.row("field.line-edge", edge)
        for name in ("stud", "king", "trimmer", "cripple", "rafter"):
            self._letter(name)

    @property
    def habits(self) -> Habits:
        """The habits of the project on the desk."""
        return self.desk.project.habits

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        return self.words.say(message("undo.habit", field=field))

    def _units(self) -> None:
        units = self.choice(
            "field.units",
            _SYSTEMS,
            lambda: self.desk.project.system,
            lambda system: set_system(self.desk.project, System(system)),
        )
        self.row("field.units", units)
        self.sentence("field.units-explained")
        words = self.choice(
            "field.words",
            _WORDS,
            lambda: self.habits.words,
            lambda words: self._set(words=words),
        )
        self.row("field.words", words)

    def _feet(self) -> None:
        tick = Tick(self.words.word("field.feet"))
        tick.chosen.connect(lambda on: self.apply(tick, lambda: self._set_tape(feet=on)))
        self.shows(lambda: tick.setChecked(self.habits.tape.feet))
        self.wide(tick)

    def _letter(self, name: str) -> None:
        message_id = f"field.letter-{name}"

        def edit(letter: str) -> Project:
            letters = msgspec.structs.replace(self.habits.letters, **{name: letter})
            return self._set(letters=letters)

        field = TextField(self.words.word(message_id))
        field.stated.connect(lambda letter: self.apply(field, lambda: edit(letter)))
        shown = "of_rafters" if name == "rafter" else name
        self.shows(lambda: field.show_text(getattr(self.habits.letters, shown)))
        self.row(message_id, field)

    def _set(self, **changes: Any) -> Project:
        return set_habits(self.desk.project, **changes)

    def _set_tape(self, **changes: Any) -> Project:
        return self._set(tape=msgspec.structs.replace(self.habits.tape, **changes))
