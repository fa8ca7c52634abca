"""A small table of measured points: where, how high, how far from stated, and a further one."""

from collections.abc import Callable

import msgspec
from PySide6.QtWidgets import QGridLayout, QLabel, QToolButton, QWidget

from core.drawing.measured import signed
from core.lengths import Length
from core.model import Project, Station
from core.roof import Reading
from core.wording import message
from gui.edits import Line, add_station, remove_station, set_station
from gui.fields import LengthField, shown
from gui.panels.form import Form


class _Row(msgspec.Struct):
    """The widgets of one point."""

    at: LengthField
    height: LengthField
    off: QLabel
    remove: QToolButton

    @property
    def widgets(self) -> tuple[QWidget, ...]:
        """All of them, without the sentences of refusals."""
        return self.at, self.height, self.off, self.remove


class Stations(QWidget):
    """The points of one measured line; the last row adds one."""

    def __init__(self, form: Form, line: Line, heading_id: str) -> None:
        super().__init__()
        self._form, self._line, self._heading = form, line, form.words.word(heading_id)
        self._rows: list[_Row] = []
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(6)
        self._grid.setVerticalSpacing(4)
        self._grid.setColumnStretch(1, 1)
        self._grid.setColumnStretch(2, 1)
        self.new = LengthField(
            f"{self._heading}, {form.words.word('field.station-new')}", form.desk
        )
        self.new.stated.connect(self._add)
        self._label = QLabel(form.words.word("field.station-new"))
        self._label.setBuddy(self.new)
        form.shows(self._show)

    @property
    def rows(self) -> tuple[_Row, ...]:
        """The rows of the points there are."""
        return tuple(self._rows[: len(self._points())])

    def _points(self) -> tuple[Station, ...]:
        wall = self._form.desk.wall
        found: tuple[Station, ...] = getattr(wall, self._line.value) if wall else ()
        return found

    def _readings(self) -> dict[float, Reading]:
        result = self._form.desk.result
        survey = result.survey if result else None
        if survey is None:
            return {}
        return {r.at: r for r in (survey.roof if self._line is Line.ROOF else survey.floor)}

    def _show(self) -> None:
        """Shows the points of the wall, and the row for a further one under them."""
        points, readings = self._points(), self._readings()
        while len(self._rows) < len(points):
            self._rows.append(self._made(len(self._rows)))
        tape = self._form.desk.wording.tape
        for row in self._rows[len(points) :]:
            for widget in (*row.widgets, row.at.note, row.height.note):
                widget.hide()
        for row, point in zip(self._rows, points, strict=False):
            row.at.show_text(shown(point.at, tape))
            row.height.show_text(shown(point.height, tape))
            self._tell(row.off, readings.get(point.at.mm))
            for widget in row.widgets:
                widget.show()
        self._place_new(2 * len(self._rows))
        self.new.show_text("")

    def _tell(self, off: QLabel, reading: Reading | None) -> None:
        """Shows a difference from what is stated, in the warning tone where it looks mistyped."""
        off.setText(signed(reading.difference, self._form.desk.wording) if reading else "")
        off.setObjectName("warning" if reading and reading.expected is not None else "faint")
        off.style().unpolish(off)
        off.style().polish(off)

    def _place_new(self, row: int) -> None:
        self._grid.addWidget(self._label, row, 0, 1, 2)
        self._grid.addWidget(self.new, row, 2)
        self._grid.addWidget(self.new.note, row + 1, 0, 1, 5)

    def _made(self, index: int) -> _Row:
        words = self._form.words
        at = self._field(index, "field.station-at")
        at.stated.connect(lambda length: self._set(at, index, at=length))
        height = self._field(index, "field.station-height")
        height.stated.connect(lambda length: self._set(height, index, height=length))
        off, remove = QLabel(), QToolButton()
        off.setToolTip(words.say(message("measured.against", off="+/−")))
        remove.setText("×")
        remove.setToolTip(words.word("action.remove-station"))
        remove.setAccessibleName(f"{words.word('action.remove-station')} {index + 1}")
        remove.clicked.connect(lambda: self._remove(index))
        row = _Row(at, height, off, remove)
        for column, widget in enumerate(row.widgets, start=1):
            self._grid.addWidget(widget, 2 * index, column)
        for column, field in ((1, at), (2, height)):
            self._grid.addWidget(field.note, 2 * index + 1, column, 1, 5 - column)
        return row

    def _field(self, index: int, message_id: str) -> LengthField:
        words = self._form.words
        name = f"{self._heading} {index + 1}, {words.word(message_id)}"
        return LengthField(name, self._form.desk)

    def _add(self, at: Length) -> None:
        self._apply(self.new, lambda p, letter: add_station(p, letter, self._line, at))

    def _set(self, field: LengthField, index: int, **changes: Length) -> None:
        self._apply(field, lambda p, letter: set_station(p, letter, self._line, index, **changes))

    def _remove(self, index: int) -> None:
        self._apply(
            self._rows[index].remove, lambda p, letter: remove_station(p, letter, self._line, index)
        )

    def _apply(self, widget: QWidget, edit: Callable[[Project, str], Project]) -> None:
        desk = self._form.desk
        self._form.apply(widget, lambda: edit(desk.project, desk.letter or ""))
