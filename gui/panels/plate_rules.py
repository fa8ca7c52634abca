"""From what stock plates are made, and with what joints."""

from typing import Any

import msgspec

from core.lengths import Length, System
from core.model import PlateJoint, PlateRules, Project
from core.wording import Wording, message
from gui.desk import Desk
from gui.edits import set_habits, usual
from gui.fields import LengthField, Tick, shown
from gui.panels.form import Form

_JOINTS: tuple[tuple[PlateJoint | None, str], ...] = (
    (None, "joint.mitred"),
    *((joint, f"joint.{joint.value}") for joint in PlateJoint),
)
_BEGINNING = {
    System.INCH: {"longest": "16'", "lap": "24 in"},
    System.METRIC: {"longest": "4800 mm", "lap": "600 mm"},
}
"""What a rule begins with when it is ticked; the person states their own."""


class PlateRulesForm(Form):
    """The longest stock, the lap of two layers, and the joint where slopes meet."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self.longest_tick, self.longest = self._limit("longest")
        self.lap_tick, self.lap = self._limit("lap")
        self.joint = self.choice(
            "field.joint",
            _JOINTS,
            lambda: self._rules.joint,
            lambda joint: self._set(joint=joint),
        )
        self.row("field.joint", self.joint)
        self.sentence("plate-rules.explained")

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        return self.words.say(message("undo.habit", field=field))

    @property
    def _rules(self) -> PlateRules:
        return self.desk.project.habits.plates or PlateRules()

    def _limit(self, name: str) -> tuple[Tick, LengthField]:
        """A tick for whether there is this limit, and the length it is."""

        def stated() -> Length | None:
            found: Length | None = getattr(self._rules, name)
            return found

        def text() -> str:
            length = stated()
            return "" if length is None else shown(length, self.desk.wording.tape)

        system = self.desk.project.system
        begin = usual.length(system, _BEGINNING[system][name])
        tick = Tick(self.words.word(f"heading.{name}"))
        tick.chosen.connect(
            lambda on: self.apply(tick, lambda: self._set(**{name: begin if on else None}))
        )
        self.wide(tick)
        field = self.shown_length(f"field.{name}", text, lambda length: self._set(**{name: length}))
        self.row(f"field.{name}", field)
        self.shows(lambda: tick.setChecked(stated() is not None))
        self.shows(lambda: field.setEnabled(stated() is not None))
        return tick, field

    def _set(self, **changes: Any) -> Project:
        rules = msgspec.structs.replace(self._rules, **changes)
        return set_habits(self.desk.project, plates=rules)
