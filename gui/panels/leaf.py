"""The fields of what hangs in an opening: leaf and allowances as a sum, hinges and swing."""

from typing import Any

import msgspec
from PySide6.QtWidgets import QLabel

from core.lengths import Length
from core.model import Hanging, Opening, Project, Side, Swing
from core.wording import Wording, message
from gui.desk import Desk
from gui.edits import set_opening
from gui.edits.leaf import leaf_within, sized_by
from gui.edits.openings import LEAFLESS
from gui.numbers_of_stated import sums_text
from gui.panels.form import Form
from gui.panels.optional import length_row, tick_row
from gui.things import thing_of

_SIDES = tuple((side, f"hinges.{side.value}") for side in Side)
_SWINGS = ((Swing.TOWARD, "swing.toward"), (Swing.AWAY, "swing.away"))
_HANGS = Hanging(Side.LEFT, Swing.TOWARD)


class LeafForm(Form):
    """Leaf or unit, what its frame adds, and how it opens."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self.stated = tick_row(
            self, "field.leaf", lambda: self.opening.leaf is not None, self._set_stated
        )
        self.width_field = self._part("field.leaf-width", "width")
        self.wider = self._part("field.wider", "wider")
        self.height_field = self._part("field.leaf-height", "height")
        self.higher = self._part("field.higher", "higher")
        self.sums = QLabel()
        self.sums.setWordWrap(True)
        self.wide(self.sums)
        self.shows(lambda: self.sums.setText(sums_text(self.opening.leaf, self.words)))
        self._hanging()

    @property
    def opening(self) -> Opening:
        """The opening held."""
        wall = self.desk.wall
        thing = thing_of(wall, self.desk.held or "") if wall else None
        if wall is None or thing is None:
            raise LookupError("no opening is held")
        return wall.opening(thing.id)

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        name = self.opening.id.replace("-", " ")
        return self.words.say(message("undo.field", field=field, thing=name))

    def _part(self, message_id: str, name: str) -> Any:
        def edit(length: Length) -> Project:
            leaf = self.opening.leaf or leaf_within(self.desk.project, self.opening)
            changed = msgspec.structs.replace(leaf, **{name: length})
            return self._set(**sized_by(self.desk.project, self.opening, changed))

        return length_row(self, message_id, lambda: getattr(self.opening.leaf, name, None), edit)

    def _hanging(self) -> None:
        self.hinged = tick_row(
            self,
            "field.hinged",
            lambda: self.opening.hung is not None,
            lambda on: self._set(hung=_HANGS if on else None),
        )
        self.shows(lambda: self.hinged.setEnabled(self.opening.kind not in LEAFLESS))
        parts = (("field.hinges", _SIDES, "hinges"), ("field.swing", _SWINGS, "swing"))
        for message_id, values, name in parts:
            self._hung(message_id, values, name)

    def _hung(self, message_id: str, values: Any, name: str) -> None:
        choice = self.choice(
            message_id,
            values,
            lambda: getattr(self.opening.hung, name, None),
            lambda value: self._set_hung(**{name: value}),
        )
        self.row(message_id, choice)
        self.shows(lambda: choice.setEnabled(self.opening.hung is not None))

    def _set_stated(self, on: bool) -> Project:
        if not on:
            return self._set(leaf=None)
        return self._set(leaf=leaf_within(self.desk.project, self.opening))

    def _set_hung(self, **changes: Any) -> Project:
        return self._set(hung=msgspec.structs.replace(self.opening.hung or _HANGS, **changes))

    def _set(self, **changes: Any) -> Project:
        return set_opening(self.desk.project, self.desk.letter or "", self.opening.id, **changes)
