"""The fields of a kept-clear zone."""

from typing import Any

from core.framing import spoken
from core.model import ClearZone, Project
from core.wording import Wording, message
from gui.desk import Desk
from gui.edits import set_zone
from gui.panels.form import Form
from gui.things import thing_of


class ZoneForm(Form):
    """Where the zone is and how large."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self._length("field.left", "left")
        self._length("field.zone-bottom", "bottom")
        self._length("field.width", "width")
        self._length("field.zone-height", "height")
        self.sentence("field.zone-explained")

    @property
    def zone(self) -> ClearZone:
        """The zone held."""
        wall = self.desk.wall
        thing = thing_of(wall, self.desk.held or "") if wall else None
        if wall is None or thing is None:
            raise LookupError("no zone is held")
        return next(z for z in wall.kept_clear if z.id == thing.id)

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        return self.words.say(message("undo.field", field=field, thing=spoken(self.zone.id)))

    def _length(self, message_id: str, name: str) -> None:
        field = self.length(
            message_id,
            lambda: getattr(self.zone, name),
            lambda length: self._set(**{name: length}),
        )
        self.row(message_id, field)

    def _set(self, **changes: Any) -> Project:
        return set_zone(self.desk.project, self.desk.letter or "", self.zone.id, **changes)
