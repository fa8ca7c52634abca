"""The rules of framing of a wall: layout near kings and ends, board edges, shared kings."""

from collections.abc import Callable
from typing import Any

from PySide6.QtWidgets import QLabel

from core.checks import bare_messages
from core.lengths import Length
from core.model import Near, Project, Wall, usual_board
from core.wording import Wording, message
from gui.desk import Desk
from gui.edits.rules import line_up, merges, set_origin, set_rules
from gui.fields import TextField
from gui.panels.form import Form
from gui.panels.optional import length_row, tick_row

_RULES = tuple((near, f"near.{near.value}") for near in Near)


class RulesForm(Form):
    """What layout studs do near other timber, and the marks that carry no stud."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self._origin()
        self._near()
        self._boards()
        self._openings()
        self.heading("heading.bare-marks")
        self.bare = QLabel()
        self.bare.setWordWrap(True)
        self.wide(self.bare)
        self.shows(lambda: self.bare.setText(self._bare_text()))

    @property
    def wall(self) -> Wall:
        """The wall shown."""
        wall = self.desk.wall
        if wall is None:
            raise LookupError("no wall is shown")
        return wall

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        thing = self.words.say(message("undo.wall", letter=self.wall.letter))
        return self.words.say(message("undo.field", field=field, thing=thing))

    def _origin(self) -> None:
        self.through = tick_row(
            self,
            "field.through-point",
            lambda: self.wall.layout.origin is not None,
            lambda on: self._set_origin(self.wall.layout.spacing if on else None),
        )
        self.origin = length_row(
            self, "field.point", lambda: self.wall.layout.origin, self._set_origin
        )
        self.lined = TextField(self.words.word("field.line-up"))
        self.lined.stated.connect(
            lambda other: self.apply(self.lined, lambda: self._line_up(other))
        )
        self.shows(lambda: self.lined.show_text(""))
        self.row("field.line-up", self.lined)
        self.sentence("field.through-explained")

    def _near(self) -> None:
        self.heading("heading.near")
        self.kings = self._rule("field.near-kings", "near_kings")
        self.ends = self._rule("field.near-ends", "near_ends")
        self.closer = length_row(
            self,
            "field.closer-than",
            lambda: self.wall.goes_by.closer_than if merges(self.wall.goes_by) else None,
            lambda length: self._set(closer_than=length),
        )

    def _rule(self, message_id: str, name: str) -> Any:
        choice = self.choice(
            message_id,
            _RULES,
            lambda: getattr(self.wall.goes_by, name),
            lambda near: self._set(**{name: near}),
        )
        self.row(message_id, choice)
        return choice

    def _boards(self) -> None:
        self.board = self.length(
            "field.board",
            lambda: self.wall.goes_by.board or usual_board(self.wall.layout.spacing),
            lambda length: self._set(board=length),
        )
        self.row("field.board", self.board)

    def _openings(self) -> None:
        self.heading("heading.opening-rules")
        self.share = self._tick("field.share-kings", "share_kings")
        self.end_king = self._tick("field.end-as-king", "end_as_king")
        self.sole = self._tick("field.cut-sole-first", "cut_sole_first")

    def _tick(self, message_id: str, name: str) -> Any:
        value: Callable[[], bool] = lambda: getattr(self.wall.goes_by, name)  # noqa: E731
        return tick_row(self, message_id, value, lambda on: self._set(**{name: on}))

    def _bare_text(self) -> str:
        result = self.desk.result
        if result is None or result.frame is None:
            return ""
        bare = bare_messages(result.wall, result.frame, result.label_of)
        said = [self.words.say(text) for _, text in bare]
        return "\n".join(said) or self.words.word("held.no-bare-marks")

    def _set(self, **changes: Any) -> Project:
        return set_rules(self.desk.project, self.wall.letter, **changes)

    def _line_up(self, other: str) -> Project:
        return line_up(self.desk.project, self.wall.letter, other.upper())

    def _set_origin(self, origin: Length | None) -> Project:
        return set_origin(self.desk.project, self.wall.letter, origin)
