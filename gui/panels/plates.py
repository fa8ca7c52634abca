"""How the top plates lie under a roof that slopes through the wall, with a cross-section."""

import msgspec
from PySide6.QtWidgets import QLabel

from core.drawing.plate_detail import section_notes, section_picture, steepest
from core.framing import PlateSection
from core.model import PlateLie, Project
from core.wording import Wording, message
from gui.desk import Desk
from gui.edits import set_wall
from gui.panels.form import Form
from gui.panels.picture import Picture

_LIES: tuple[tuple[PlateLie | None, str], ...] = (
    (None, "lie.tilted"),
    *((lie, f"lie.{lie.value}") for lie in PlateLie),
)
_SCALE = 1 / 5
"""Of the cross-section on a plain screen."""


class PlatesForm(Form):
    """The lie of the top plates, seen in section; nothing to choose where the roof is level."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self.lie = self.choice("field.lie", _LIES, self._lie, self._set)
        self.row("field.lie", self.lie)
        self.picture = Picture(wording.word("plates.title"), _SCALE)
        self.wide(self.picture)
        self.notes = QLabel()
        self.notes.setWordWrap(True)
        self.wide(self.notes)
        self.shows(self._show)

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        thing = self.words.say(message("undo.wall", letter=self.desk.letter or ""))
        return self.words.say(message("undo.field", field=field, thing=thing))

    def _lie(self) -> PlateLie | None:
        return self.desk.wall.top_plate.lie if self.desk.wall else None

    def _set(self, lie: object) -> Project:
        wall = self.desk.project.wall(self.desk.letter or "")
        top_plate = msgspec.structs.replace(wall.top_plate, lie=lie)
        return set_wall(self.desk.project, wall.letter, top_plate=top_plate)

    def _show(self) -> None:
        section = self._section()
        self.lie.setEnabled(section is not None)
        if section is None:
            self.picture.show_drawing(())
            self.notes.setText(self.words.word("plates.no-slope"))
            return
        wording = self.desk.wording
        self.picture.show_drawing(section_picture(section, self.picture.view, wording))
        self.notes.setText("\n".join(section_notes(section, wording)))

    def _section(self) -> PlateSection | None:
        result = self.desk.result
        return steepest(result.frame) if result else None
