"""The fields of what was measured at a wall: roof, floor, level line, and the fit of its studs."""

from typing import Any

from PySide6.QtWidgets import QLabel, QPushButton

from core.drawing.measured import studs, summary
from core.lengths import Length
from core.model import Project, Wall
from core.wording import Wording, message
from gui.desk import Desk
from gui.edits import Line, forget_gone, gone_studs, set_wall
from gui.edits.usual import length as usual_length
from gui.fields import Tick, shown
from gui.panels.form import Form
from gui.panels.stations import Stations


class MeasuredForm(Form):
    """Points of the roof and of the floor with their differences, and what follows from them."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self.sentence("measured.explained")
        self.heading("heading.roof-points")
        self.roof = Stations(self, Line.ROOF, "heading.roof-points")
        self.wide(self.roof)
        self.heading("heading.floor-points")
        self.floor = Stations(self, Line.FLOOR, "heading.floor-points")
        self.wide(self.floor)
        self._level_line()
        fit = self.shown_length("field.fit", self._fit_text, self._set_fit)
        self.row("field.fit", fit)
        self.sentence("field.fit-explained")
        self.said = QLabel()
        self.said.setWordWrap(True)
        self.wide(self.said)
        self.shows(self._say)
        self.forget = QPushButton(wording.word("action.forget-gone"))
        self.forget.setAccessibleName(self.forget.text())
        self.forget.clicked.connect(lambda: self.apply(self.forget, self._forget))
        self.shows(lambda: self.forget.setVisible(bool(gone_studs(desk.project, self.wall.letter))))
        self.wide(self.forget)

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

    def _level_line(self) -> None:
        tick = Tick(self.words.word("field.level-line"))
        tick.chosen.connect(lambda on: self.apply(tick, lambda: self._put_level(on)))
        self.shows(lambda: tick.setChecked(self.wall.level_line is not None))
        self.wide(tick)
        field = self.shown_length(
            "field.level-height",
            lambda: self._text(self.wall.level_line),
            lambda length: self._set(level_line=length),
        )
        self.row("field.level-height", field)
        self.shows(lambda: field.setEnabled(self.wall.level_line is not None))

    def _put_level(self, on: bool) -> Project:
        zero = usual_length(self.desk.project.system, "0")
        return self._set(level_line=zero if on else None)

    def _fit_text(self) -> str:
        return self._text(self.wall.fit or usual_length(self.desk.project.system, "0"))

    def _set_fit(self, length: Length) -> Project:
        return self._set(fit=length if length.mm else None)

    def _text(self, length: Length | None) -> str:
        return "" if length is None else shown(length, self.desk.wording.tape)

    def _forget(self) -> Project:
        return forget_gone(self.desk.project, self.wall.letter)

    def _say(self) -> None:
        """What follows from the points, as on the sheet."""
        result, words = self.desk.result, self.desk.wording
        lines = [*summary(result, words), *studs(result, words)] if result else []
        self.said.setText("\n".join(lines))
        self.said.setVisible(bool(lines))

    def _set(self, **changes: Any) -> Project:
        return set_wall(self.desk.project, self.wall.letter, **changes)
