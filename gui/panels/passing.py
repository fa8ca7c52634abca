"""How the wall shown passes each purlin that it meets."""

from typing import Any

from PySide6.QtWidgets import QLabel

from core.drawing.passing_notes import purlin_notes
from core.framing import spoken
from core.model import Passing, Project
from core.roof import purlins_met
from core.wording import Wording, message
from gui.desk import Desk
from gui.edits.passing import set_passing
from gui.edits.rules import set_rules
from gui.fields import Choice, PercentField
from gui.panels.form import Form

_WAYS: tuple[tuple[Passing | None, str], ...] = (
    (None, "passing.as-all"),
    *((passing, f"passing.{passing.value}") for passing in Passing),
)


class PassingForm(Form):
    """A choice for one purlin after the other; nothing where the wall meets none."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self.heading("heading.passing")
        self.which = Choice(wording.word("field.passed-purlin"), ())
        self.which.chosen.connect(lambda _: self.refresh())
        self.row("field.passed-purlin", self.which)
        self.shows(self._offer)
        self.way = self.choice("field.this-wall", _WAYS, self._own, self._set)
        self.row("field.this-wall", self.way)
        self.least = PercentField(wording.word("field.least-left"))
        self.least.stated.connect(
            lambda least: self.apply(self.least, lambda: self._set_least(least))
        )
        self.shows(lambda: self.least.show_text(self._least()))
        self.row("field.least-left", self.least)
        self.told = QLabel()
        self.told.setWordWrap(True)
        self.wide(self.told)
        self.shows(self._tell)

    @property
    def meets_any(self) -> bool:
        """Whether there is a purlin to choose for."""
        return bool(self._met())

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        thing = spoken(self._purlin() or "")
        return self.words.say(message("undo.field", field=field, thing=thing))

    def _met(self) -> tuple[str, ...]:
        wall = self.desk.wall
        return () if wall is None else purlins_met(self.desk.project.room, wall)

    def _purlin(self) -> str | None:
        met = self._met()
        return met[min(max(self.which.currentIndex(), 0), len(met) - 1)] if met else None

    def _offer(self) -> None:
        """Offers the purlins there are, keeping the one that was chosen."""
        met, chosen = self._met(), max(self.which.currentIndex(), 0)
        self.which.offer(tuple((purlin, spoken(purlin)) for purlin in met))
        self.which.setCurrentIndex(min(chosen, len(met) - 1))

    def _own(self) -> Any:
        wall, purlin = self.desk.wall, self._purlin()
        passes = wall.passes if wall is not None else ()
        return next((p.passing for p in passes if p.purlin == purlin), None)

    def _tell(self) -> None:
        result, purlin = self.desk.result, self._purlin()
        said = purlin_notes(result, purlin, self.desk.wording) if result and purlin else ()
        self.told.setText("\n".join(said))
        self.told.setVisible(bool(said))

    def _least(self) -> str:
        wall = self.desk.wall
        least = wall.goes_by.least_left if wall is not None else None
        return "" if least is None else str(least)

    def _set_least(self, least: int | None) -> Project:
        return set_rules(self.desk.project, self.desk.letter or "", least_left=least)

    def _set(self, passing: Any) -> Project:
        purlin = self._purlin()
        if purlin is None:
            return self.desk.project
        return set_passing(self.desk.project, self.desk.letter or "", purlin, passing)
