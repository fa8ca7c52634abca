"""The form of the wall that is held in the room: where it stands, and what can be done to it."""

import math
from collections.abc import Callable

import msgspec
from PySide6.QtWidgets import QGridLayout, QPushButton, QWidget

from core.lengths import Length
from core.model import Point, Project, Side, Wall
from core.wording import Wording, message
from gui.desk import Desk
from gui.doing import Doing
from gui.edits import lengthen_wall, set_wall
from gui.edits.stating import stated
from gui.fields import TextField, shown
from gui.panels.form import Form
from gui.plan.acts import Acts


class PlanWallForm(Form):
    """Name, length and ends of the wall held, and the acts on it as buttons."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self.heading("heading.plan-wall")
        self.name = TextField(wording.word("field.name"))
        self.name.stated.connect(lambda name: self.apply(self.name, lambda: self._set(name=name)))
        self.shows(lambda: self.name.show_text(self.wall.name))
        self.row("field.name", self.name)
        self.run = self.shown_length(
            "field.wall-length",
            lambda: shown(stated(desk.project, self.wall.run), desk.wording.tape),
            self._lengthen,
        )
        self.row("field.wall-length", self.run)
        for end in ("left_end", "right_end"):
            for axis in ("across", "along"):
                self._coordinate(end, axis)
        self._buttons()

    @property
    def wall(self) -> Wall:
        """The wall held."""
        return self.desk.project.wall(self.desk.held or "")

    @property
    def stands(self) -> bool:
        """Whether a wall is held in the room."""
        held = self.desk.held
        there = any(wall.letter == held for wall in self.desk.project.walls)
        return self.desk.letter is None and there

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        thing = self.words.say(message("undo.wall", letter=self.wall.letter))
        return self.words.say(message("undo.field", field=field, thing=thing))

    def _coordinate(self, end: str, axis: str) -> None:
        message_id = f"field.{end.replace('_', '-')}-{axis}"

        def edit(length: Length) -> Project:
            point: Point = getattr(self.wall, end)
            return self._set(**{end: msgspec.structs.replace(point, **{axis: length})})

        field = self.length(message_id, lambda: getattr(getattr(self.wall, end), axis), edit)
        self.row(message_id, field)

    def _buttons(self) -> None:
        acts, doing = Acts(self.desk), Doing(self.desk)
        made = QWidget()
        grid = QGridLayout(made)
        grid.setContentsMargins(0, 4, 0, 4)
        grid.setSpacing(6)
        buttons: tuple[tuple[str, Callable[[], None]], ...] = (
            ("plan.to-drawing", self._to_drawing),
            ("plan.copy", acts.copy),
            ("plan.mirror", acts.mirror),
            ("plan.quarter-turn", acts.turn),
            ("plan.turn-face", acts.turn_face),
            ("plan.delete", doing.delete),
        )
        self.buttons: dict[str, QPushButton] = {}
        for number, (word, do) in enumerate(buttons):
            button = QPushButton(self.words.word(word))
            button.clicked.connect(lambda *_, act=do: act())
            self.buttons[word] = button
            grid.addWidget(button, number // 2, number % 2)
        self.wide(made)

    def _to_drawing(self) -> None:
        self.desk.show_wall(self.wall.letter)

    def _lengthen(self, run: Length) -> Project:
        """The right end drawn out or in; what stands in the wall stays."""
        (u0, v0), (u1, v1) = self.wall.chalk
        turn = math.atan2(v1 - v0, u1 - u0)
        end = (u0 + math.cos(turn) * run.mm, v0 + math.sin(turn) * run.mm)
        return lengthen_wall(self.desk.project, self.wall.letter, Side.RIGHT, end)

    def _set(self, **changes: object) -> Project:
        return set_wall(self.desk.project, self.wall.letter, **changes)
