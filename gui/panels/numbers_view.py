"""The numbers of what is held, large; each opens its working right below it."""

import html
from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QLabel, QVBoxLayout, QWidget

from core.framing import Printed
from core.wording import Wording
from gui.figure import Figure, Numbers
from gui.panels.number_button import NumberButton
from gui.panels.working_view import WorkingView
from gui.sizes import points

Asked = tuple[str, str]
"""What tells one number of a thing from another: its kind and the plate that it is on."""

_LONG = 11
"""A large number with more letters than this has a row of its own."""


class NumbersView(QWidget):
    """The name of a thing over its figures: the heroes large, the rest in rows.

    `explain` gives the working of a figure. One is open at a time, and stays open while things of
    the same kind are held one after the other.
    """

    def __init__(self, wording: Wording, explain: Callable[[Figure], tuple[Printed, ...]]) -> None:
        super().__init__()
        self._explain = explain
        self._open: Asked | None = None
        self._laid: tuple[tuple[int, int], ...] = ()
        self._name = QLabel()
        self._name.setObjectName("name")
        self._name.setTextFormat(Qt.TextFormat.RichText)
        self._name.setWordWrap(True)
        self.buttons: list[NumberButton] = []
        self.working = WorkingView(wording)
        self.working.hide()
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(10)
        self._grid.setVerticalSpacing(4)
        self._grid.setColumnStretch(0, 1)
        self._grid.setColumnStretch(1, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addWidget(self._name)
        column.addLayout(self._grid)

    @property
    def shown(self) -> list[NumberButton]:
        """The numbers that are shown, in their order."""
        return [button for button in self.buttons if not button.isHidden()]

    def show_numbers(self, numbers: Numbers) -> None:
        """Shows a thing's numbers, and the working that is open if it has such a one."""
        name, what = html.escape(numbers.name), html.escape(numbers.what)
        large = f"font-size:{points(20)}; font-weight:700"
        self._name.setText(f'<span style="{large}">{name}</span> {what}')
        figures = sorted(numbers.figures, key=lambda figure: not figure.large)
        while len(self.buttons) < len(figures):
            self.buttons.append(self._made(len(self.buttons)))
        for index, button in enumerate(self.buttons):
            button.setVisible(index < len(figures))
            if index < len(figures):
                button.show_figure(figures[index])
        self._lay_out(figures)
        self._refresh()
        self.setAccessibleName(f"{numbers.name} {numbers.what}")
        said = [f"{figure.caption} {figure.text}" for figure in numbers.figures]
        self.setAccessibleDescription("; ".join(said))

    def _made(self, index: int) -> NumberButton:
        button = NumberButton()
        # Without a parent it would show as a window of its own, which takes the keys away.
        button.setParent(self)
        button.clicked.connect(lambda: self._press(index))
        return button

    def _press(self, index: int) -> None:
        """Opens the working of a number, or closes it."""
        figure = self.buttons[index].figure
        if figure is None or figure.number is None:
            return
        asked = _asked(figure)
        self._open = None if asked == self._open else asked
        self._refresh()

    def _refresh(self) -> None:
        """Shows the working of the number that is open under its row."""
        opened = None
        for button in self.shown:
            is_open = button.figure is not None and self._open == _asked(button.figure)
            button.setChecked(is_open)
            opened = button if is_open else opened
            button.update()
        workings = self._explain(opened.figure) if opened and opened.figure else ()
        if opened is None or not workings:
            self.working.hide()
            return
        self.working.show_workings(workings)
        row = self._laid[self.buttons.index(opened)][0]
        if self._grid.indexOf(self.working) >= 0:
            self._grid.removeWidget(self.working)
        self._grid.addWidget(self.working, row + 1, 0, 1, 2)
        self.working.show()

    def _lay_out(self, figures: list[Figure]) -> None:
        """Large figures two beside each other, small ones one a row; free rows for the working."""
        places = _places(figures)
        if places == self._laid:
            return
        self._laid = places
        for button in self.buttons:
            self._grid.removeWidget(button)
        for index, (row, column) in enumerate(places):
            wide = 1 if (row, 1 - column) in places else 2
            self._grid.addWidget(self.buttons[index], row, column, 1, wide)
        for before, after in zip(self.shown, self.shown[1:], strict=False):
            QWidget.setTabOrder(before, after)


def _asked(figure: Figure) -> Asked | None:
    return None if figure.number is None else (figure.number.value, figure.plate)


def _places(figures: list[Figure]) -> tuple[tuple[int, int], ...]:
    """The row and the column of every figure; every other row is left for a working."""
    places: list[tuple[int, int]] = []
    row, half = 0, False
    for index, figure in enumerate(figures):
        following = figures[index + 1] if index + 1 < len(figures) else None
        pairs = following is not None and _is_short(figure) and _is_short(following)
        if half:
            places.append((row, 1))
            row, half = row + 2, False
        elif pairs:
            places.append((row, 0))
            half = True
        else:
            places.append((row, 0))
            row += 2
    return tuple(places)


def _is_short(figure: Figure) -> bool:
    return figure.large and len(figure.text) <= _LONG
