"""The ends of the wall shown against surfaces out of plumb."""

from typing import Any

from PySide6.QtWidgets import QLabel

from core.drawing.lean_notes import lean_notes
from core.lengths import Length
from core.model import EndLean, EndStud, Project, Side
from core.wording import Wording, message
from gui.desk import Desk
from gui.edits import set_wall
from gui.fields import Choice, MaybeLengthField, shown
from gui.panels.form import Form

_STUDS = tuple((stud, f"end-stud.{stud.value}") for stud in EndStud)


class LeaningForm(Form):
    """For each end how far its surface leans from floor to roof, and how the end stud stands."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self.sentence("field.lean-explained")
        self.offsets: dict[Side, MaybeLengthField] = {}
        self.studs: dict[Side, Choice] = {}
        for side in Side:
            self._end(side)
        self.told = QLabel()
        self.told.setWordWrap(True)
        self.wide(self.told)
        self.shows(self._tell)

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        thing = self.words.say(message("undo.wall", letter=self.desk.letter or ""))
        return self.words.say(message("undo.field", field=field, thing=thing))

    def _end(self, side: Side) -> None:
        offset_id, stud_id = f"field.lean-{side.value}", f"field.end-stud-{side.value}"
        field = MaybeLengthField(self.words.word(offset_id), self.desk)
        field.stated.connect(lambda length: self.apply(field, lambda: self._lean(side, length)))
        self.shows(lambda: field.show_text(self._text(side)))
        self.shows(lambda: field.setEnabled(self._on_floor()))
        self.row(offset_id, field)
        stud = self.choice(
            stud_id, _STUDS, lambda: self._stud(side), lambda chosen: self._stand(side, chosen)
        )
        self.row(stud_id, stud)
        self.shows(lambda: stud.setEnabled(self._stated(side) is not None))
        self.offsets[side], self.studs[side] = field, stud

    def _stated(self, side: Side) -> EndLean | None:
        wall = self.desk.wall
        if wall is None:
            return None
        return wall.left_lean if side is Side.LEFT else wall.right_lean

    def _on_floor(self) -> bool:
        return self.desk.wall is not None and self.desk.wall.stands_on is None

    def _text(self, side: Side) -> str:
        lean = self._stated(side)
        return "" if lean is None else shown(lean.offset, self.desk.wording.tape)

    def _stud(self, side: Side) -> EndStud:
        lean = self._stated(side)
        return EndStud.PLUMB if lean is None else lean.stud

    def _lean(self, side: Side, offset: Length | None) -> Project:
        return self._set(side, None if offset is None else EndLean(offset, self._stud(side)))

    def _stand(self, side: Side, stud: Any) -> Project:
        lean = self._stated(side)
        return self.desk.project if lean is None else self._set(side, EndLean(lean.offset, stud))

    def _set(self, side: Side, lean: EndLean | None) -> Project:
        letter = self.desk.letter or ""
        return set_wall(self.desk.project, letter, **{f"{side.value}_lean": lean})

    def _tell(self) -> None:
        result = self.desk.result
        said = lean_notes(result, self.desk.wording) if result else ()
        self.told.setText("\n".join(said))
        self.told.setVisible(bool(said))
