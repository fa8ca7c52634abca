"""The fields of a stud or cripple."""

from core.framing import Member
from core.lengths import Length
from core.model import Project
from core.wording import Wording, message
from gui.desk import Desk
from gui.edits import move_stud
from gui.panels.form import Form
from gui.things import thing_of


class StudForm(Form):
    """Where the stud that is held stands, from either end of the wall."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self.left = self.shown_length("field.left", self._left, self._move)
        self.row("field.left", self.left)
        self.right = self.shown_length("field.from-right", self._right, self._move_right)
        self.row("field.from-right", self.right)

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        result, key = self.desk.result, self.desk.held or ""
        label = result.label_of.get(key, key) if result else key
        return self.words.say(message("undo.field", field=field, thing=label))

    def _member(self) -> Member | None:
        result = self.desk.result
        held = self.desk.held or ""
        return result.frame.member(held) if result and result.frame else None

    def _left(self) -> str:
        left = self._left_mm()
        return "" if left is None else self.desk.wording.tape.text_with_unit(left)

    def _right(self) -> str:
        left, wall = self._left_mm(), self.desk.wall
        if left is None or wall is None:
            return ""
        right = wall.run - left - wall.stud.thickness.mm
        return self.desk.wording.tape.text_with_unit(right)

    def _left_mm(self) -> float | None:
        """Where it stands, or where it is stated if it could not be framed; mm."""
        member, wall = self._member(), self.desk.wall
        if member is not None or wall is None:
            return member.left if member else None
        thing = thing_of(wall, self.desk.held or "")
        moved = {str(m.place): m.left.mm for m in wall.moved}
        added = {stud.id: stud.left.mm for stud in wall.added}
        return {**moved, **added}.get(thing.id) if thing else None

    def _move(self, left: Length | float) -> Project:
        return move_stud(self.desk.project, self.desk.letter or "", self.desk.held or "", left)

    def _move_right(self, length: Length) -> Project:
        """Places the right edge so far from the wall's right end."""
        wall = self.desk.wall
        if wall is None:
            return self.desk.project
        return self._move(wall.run - length.mm - wall.stud.thickness.mm)
