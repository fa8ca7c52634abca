"""The field of a doubled stud: on which side its second stands, if on any."""

from core.framing import keys
from core.model import Project, Side
from core.wording import Wording, message
from gui.desk import Desk
from gui.edits.rules import set_doubled
from gui.panels.form import Form

_SIDES = ((None, "doubled.none"), (Side.LEFT, "doubled.left"), (Side.RIGHT, "doubled.right"))


class DoubledForm(Form):
    """Whether the stud that is held, or whose second one is, stands double."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self.side = self.choice("field.doubled", _SIDES, self._side, self._set)
        self.row("field.doubled", self.side)

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        result = self.desk.result
        label = result.label_of.get(self._stud, self._stud) if result else self._stud
        return self.words.say(message("undo.field", field=field, thing=label))

    @property
    def _stud(self) -> str:
        """The key of the stud itself."""
        held = self.desk.held or ""
        return held.rpartition("/")[0] if keys.is_double(held) else held

    def _side(self) -> Side | None:
        doubled = self.desk.wall.doubled if self.desk.wall else ()
        return {d.stud: d.side for d in doubled}.get(self._stud)

    def _set(self, side: object) -> Project:
        wanted = side if isinstance(side, Side) else None
        return set_doubled(self.desk.project, self.desk.letter or "", self._stud, wanted)
