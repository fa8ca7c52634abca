"""The stops of the person's saw."""

import msgspec

from core.lengths import Pitch, parse_pitch, write_pitch
from core.model import USUAL_SAW, Project, Saw
from core.wording import Wording, message
from gui.desk import Desk
from gui.edits import set_habits
from gui.fields import Field
from gui.panels.form import Form


class SawForm(Form):
    """How far the saw tilts and swings; cuts past it are told with how to make them."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self.bevel = self._stop("field.saw-bevel", "bevel")
        self.mitre = self._stop("field.saw-mitre", "mitre")
        self.sentence("saw.explained")

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        return self.words.say(message("undo.habit", field=field))

    def _read(self, text: str) -> Pitch:
        """The angle that a text states; a number alone is of degrees."""
        written = text.strip().removesuffix("°").strip()
        try:
            return parse_pitch(f"{written}°", self.desk.project.system.bare_unit)
        except ValueError:
            sentence = self.desk.wording.say(message("saw.no-angle", text=text.strip()))
            raise ValueError(sentence) from None

    @property
    def _saw(self) -> Saw:
        return self.desk.project.habits.saw or USUAL_SAW

    def _stop(self, message_id: str, name: str) -> Field:
        def edit(pitch: Pitch) -> Project:
            return set_habits(
                self.desk.project, saw=msgspec.structs.replace(self._saw, **{name: pitch})
            )

        field = Field(self.words.word(message_id), self._read)
        field.stated.connect(lambda pitch: self.apply(field, lambda: edit(pitch)))
        self.shows(lambda: field.show_text(write_pitch(getattr(self._saw, name))))
        self.row(message_id, field)
        return field
