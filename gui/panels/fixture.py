"""The fields of a fixture that is to be backed."""

from typing import Any

from core.framing import spoken
from core.model import Fixture, FixtureKind, Project, WallFace
from core.wording import Wording, message
from gui.desk import Desk
from gui.edits import set_fixture
from gui.panels.form import Form
from gui.panels.timber import timber_row
from gui.things import thing_of

_KINDS = tuple((kind, f"fixture.{kind.value.replace(' ', '-')}") for kind in FixtureKind)
_FACES = tuple((face, f"wall-face.{face.value.lower()}") for face in WallFace)


class FixtureForm(Form):
    """What hangs there, where, and the timber that backs it."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self.kind = self.choice(
            "field.fixture", _KINDS, lambda: self.fixture.kind, lambda kind: self._set(kind=kind)
        )
        self.row("field.fixture", self.kind)
        self._length("field.fixture-height", "height")
        self._length("field.left", "left")
        self._length("field.width", "width")
        timber_row(
            self,
            "field.backing",
            lambda: self.fixture.timber,
            lambda timber: self._set(timber=timber),
        )
        self.face = self.choice(
            "field.flush", _FACES, lambda: self.fixture.face, lambda face: self._set(face=face)
        )
        self.row("field.flush", self.face)
        self.sentence("field.fixture-explained")

    @property
    def fixture(self) -> Fixture:
        """The fixture held."""
        wall = self.desk.wall
        thing = thing_of(wall, self.desk.held or "") if wall else None
        if wall is None or thing is None:
            raise LookupError("no fixture is held")
        return next(f for f in wall.fixtures if f.id == thing.id)

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        return self.words.say(message("undo.field", field=field, thing=spoken(self.fixture.id)))

    def _length(self, message_id: str, name: str) -> None:
        field = self.length(
            message_id,
            lambda: getattr(self.fixture, name),
            lambda length: self._set(**{name: length}),
        )
        self.row(message_id, field)

    def _set(self, **changes: Any) -> Project:
        return set_fixture(self.desk.project, self.desk.letter or "", self.fixture.id, **changes)
