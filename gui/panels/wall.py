"""The fields of a wall."""

from typing import Any

import msgspec

from core.lengths import Length
from core.model import Point, Project, Side, StandsOn, Wall
from core.wording import Wording, message
from gui.desk import Desk
from gui.edits import set_wall
from gui.fields import LengthField, TextField
from gui.panels.form import Form
from gui.panels.timber import timber_row

_ENDS = tuple((side, f"end.{side.value}") for side in Side)
_COUNTS = tuple((count, f"count.{count}") for count in (0, 1, 2))
_STANDS = (
    (None, "stands.floor"),
    (StandsOn.RAFTERS, "stands.rafters"),
    (StandsOn.BESIDE_RAFTERS, "stands.beside-rafters"),
)


class WallForm(Form):
    """Name, ends, layout and timber of the wall that is shown."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self.name = TextField(wording.word("field.name"))
        self.name.stated.connect(lambda name: self.apply(self.name, lambda: self._set(name=name)))
        self.shows(lambda: self.name.show_text(self.wall.name))
        self.row("field.name", self.name)
        self._ends()
        self._layout()
        self._timber()

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

    def _ends(self) -> None:
        for end in ("left_end", "right_end"):
            for axis in ("across", "along"):
                self._coordinate(end, axis)
        self.sentence("field.ends-explained")

    def _coordinate(self, end: str, axis: str) -> None:
        message_id = f"field.{end.replace('_', '-')}-{axis}"

        def edit(length: Length) -> Project:
            point: Point = getattr(self.wall, end)
            return self._set(**{end: msgspec.structs.replace(point, **{axis: length})})

        field = self.length(message_id, lambda: getattr(getattr(self.wall, end), axis), edit)
        self.row(message_id, field)

    def _layout(self) -> None:
        self.heading("heading.layout")
        self.spacing = self.length(
            "field.spacing",
            lambda: self.wall.layout.spacing,
            lambda length: self._set_layout(spacing=length),
        )
        self.row("field.spacing", self.spacing)
        start = self.choice(
            "field.start",
            _ENDS,
            lambda: self.wall.layout.start,
            lambda start: self._set_layout(start=start),
        )
        self.row("field.start", start)
        hung = self.length(
            "field.hung-board",
            lambda: self.wall.layout.hung_board,
            lambda length: self._set_layout(hung_board=length),
        )
        self.row("field.hung-board", hung)
        # Hung board does not move a layout that stands in line with a point.
        self.shows(lambda: hung.setEnabled(self.wall.layout.origin is None))

    def _timber(self) -> None:
        self.heading("heading.timber")
        timber_row(self, "field.stud", lambda: self.wall.stud, lambda t: self._set(stud=t))
        sole = timber_row(
            self, "field.sole", lambda: self.wall.sole_plate, lambda t: self._set(sole_plate=t)
        )
        top = timber_row(
            self, "field.top", lambda: self.wall.top_plate.timber, lambda t: self._top(timber=t)
        )
        count = self.choice(
            "field.top-count",
            _COUNTS,
            lambda: self.wall.top_plate.count,
            lambda count: self._top(count=count),
        )
        self.row("field.top-count", count)
        stands = self.choice(
            "field.stands-on",
            _STANDS,
            lambda: self.wall.stands_on,
            lambda on: self._set(stands_on=on),
        )
        self.row("field.stands-on", stands)
        # Timber that is not there cannot be stated.
        self.shows(lambda: _enable(sole, self.wall.stands_on is None))
        self.shows(lambda: _enable(top, self.wall.top_plate.count > 0))

    def _set(self, **changes: Any) -> Project:
        return set_wall(self.desk.project, self.wall.letter, **changes)

    def _set_layout(self, **changes: Any) -> Project:
        return self._set(layout=msgspec.structs.replace(self.wall.layout, **changes))

    def _top(self, **changes: Any) -> Project:
        return self._set(top_plate=msgspec.structs.replace(self.wall.top_plate, **changes))


def _enable(fields: tuple[LengthField, ...], there: bool) -> None:
    for field in fields:
        field.setEnabled(there)
