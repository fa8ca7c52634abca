"""The fields of a box."""

from typing import Any

from core.framing import spoken
from core.model import Box, BoxHeight, Project, Side, WallFace
from core.wording import Wording, message
from gui.desk import Desk
from gui.edits import set_box
from gui.panels.form import Form
from gui.things import thing_of

_SIDES = tuple((side, f"side.{side.value}") for side in Side)
_FACES = tuple((face, f"wall-face.{face.value.lower()}") for face in WallFace)
_HEIGHTS = tuple((to, f"height.{to.value}") for to in BoxHeight)


class BoxForm(Form):
    """Height, stud and size of the box that is held."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self.box_height = self.length(
            "field.height", lambda: self.box.height, lambda length: self._set(height=length)
        )
        self.row("field.height", self.box_height)
        to = self.choice("field.to", _HEIGHTS, lambda: self.box.to, lambda to: self._set(to=to))
        self.row("field.to", to)
        side = self.choice(
            "field.side", _SIDES, lambda: self.box.side, lambda side: self._set(side=side)
        )
        self.row("field.side", side)
        face = self.choice(
            "field.box-face",
            _FACES,
            lambda: self.box.face or WallFace.A,
            lambda face: self._set(face=None if face is WallFace.A else face),
        )
        self.row("field.box-face", face)
        sizes = (("field.box-width", "width"), ("field.box-tall", "tall"), ("field.depth", "depth"))
        for message_id, name in sizes:
            self._size(message_id, name)

    @property
    def box(self) -> Box:
        """The box held."""
        wall = self.desk.wall
        thing = thing_of(wall, self.desk.held or "") if wall else None
        if wall is None or thing is None:
            raise LookupError("no box is held")
        return wall.box(thing.id)

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        return self.words.say(message("undo.field", field=field, thing=spoken(self.box.id)))

    def _size(self, message_id: str, name: str) -> None:
        field = self.length(
            message_id,
            lambda: getattr(self.box, name),
            lambda length: self._set(**{name: length}),
        )
        self.row(message_id, field)

    def _set(self, **changes: Any) -> Project:
        return set_box(self.desk.project, self.desk.letter or "", self.box.id, **changes)
