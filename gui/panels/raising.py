"""How the wall that is shown goes up: the verdict, the swing drawn, gaps, weight and order."""

from PySide6.QtWidgets import QLabel

from core.drawing.swinging import swing_drawing
from core.job import raising_of, surroundings_of
from core.lengths import unbroken
from core.model import Species
from core.site import GoingUp, conditions, gaps, order, verdict, weighed, weights
from core.wording import Message, Wording, message
from gui.desk import Desk
from gui.edits import set_species
from gui.panels.form import Form
from gui.panels.swing_view import SwingView


def _word(species: Species) -> str:
    """The message id of a species' name."""
    return f"species.{species.name.lower().replace('_', '-')}"


_SPECIES = ((None, "species.none"), *((species, _word(species)) for species in Species))


class RaisingForm(Form):
    """Nothing here is typed but the species; the rest follows from wall, roof and room."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self.verdict, self.order = self._label("verdict"), self._label("faint")
        self.facts = self._label("")
        self.picture = SwingView()
        self.picture.setAccessibleName(wording.word("up.picture"))
        for widget in (self.verdict, self.picture, self.facts):
            self.wide(widget)
        species = self.choice(
            "field.species",
            _SPECIES,
            lambda: self.desk.project.species,
            lambda chosen: set_species(self.desk.project, chosen),  # type: ignore[arg-type]
        )
        self.long_choice("field.species", species)
        self.wide(self.order)
        self.shows(self._show)

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        thing = self.words.word("undo.job")
        return self.words.say(message("undo.field", field=field, thing=thing))

    def _label(self, name: str) -> QLabel:
        label = QLabel()
        label.setObjectName(name)
        label.setWordWrap(True)
        return label

    def _show(self) -> None:
        wall = self.desk.wall
        up = None if wall is None else raising_of(self.desk.results, wall.letter)
        if wall is None or up is None:
            self.verdict.setText(self.words.word("up.no-frame"))
            self.facts.setText("")
            self.order.setText("")
            self.picture.show_drawing(())
            return
        self._show_up(up, wall.letter)

    def _show_up(self, up: GoingUp, letter: str) -> None:
        words, result = self.desk.wording, self.desk.results.wall(letter)
        around, frame = surroundings_of(self.desk.results, letter), result.frame
        if around is None or frame is None:
            raise LookupError("a wall that goes up has a frame under a roof")
        step = words.tape.step_mm
        self.verdict.setText(self._lines((verdict(up), *conditions(up))))
        weight = weighed(weights(frame, self.desk.project.species), result.label_of)
        self.facts.setText(self._lines((*gaps(up, step), weight)))
        steps = [words.say(told) for told in order(up, result.label_of)]
        numbered = [f"{number}. {told}" for number, told in enumerate(steps, start=1)]
        self.order.setText("\n".join((words.word("up.order"), *numbered)))
        self.picture.show_drawing(swing_drawing(around, frame, up.best, step, words))

    def _lines(self, messages: tuple[Message, ...]) -> str:
        return unbroken("\n".join(self.desk.wording.say(m) for m in messages))
