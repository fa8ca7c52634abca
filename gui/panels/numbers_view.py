"""The numbers of what is held, large."""

import html

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget

from gui.numbers import Figure, Numbers

_CAPTION = '<span style="font-size:9pt">{}</span>'
_PAD = ' style="padding-top:5px"'
_LARGE = '<span style="font-size:17pt; font-weight:700">{}</span>'


class NumbersView(QWidget):
    """The name of a thing over its figures: the heroes large, the rest in rows."""

    def __init__(self) -> None:
        super().__init__()
        self._name = QLabel()
        self._name.setObjectName("name")
        self._name.setTextFormat(Qt.TextFormat.RichText)
        self._name.setWordWrap(True)
        self._figures = QLabel()
        self._figures.setTextFormat(Qt.TextFormat.RichText)
        self._figures.setWordWrap(True)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addWidget(self._name)
        column.addWidget(self._figures)

    def show_numbers(self, numbers: Numbers) -> None:
        """Shows a thing's numbers."""
        name, what = html.escape(numbers.name), html.escape(numbers.what)
        self._name.setText(f'<span style="font-size:20pt; font-weight:700">{name}</span> {what}')
        self._figures.setText(_table(numbers.figures))
        self._figures.setVisible(bool(numbers.figures))
        said = [f"{figure.caption} {figure.text}" for figure in numbers.figures]
        self.setAccessibleName(f"{numbers.name} {numbers.what}")
        self.setAccessibleDescription("; ".join(said))


def _table(figures: tuple[Figure, ...]) -> str:
    """The figures as a table: large ones two beside each other, small ones one a row."""
    large = [figure for figure in figures if figure.large]
    small = [figure for figure in figures if not figure.large]
    rows = []
    while large:
        count = 1 if len(large) == 1 or _is_long(large[0]) or _is_long(large[1]) else 2
        span = "" if count == 2 else ' colspan="2"'
        cells = "".join(f"<td{span}{_PAD}>{_cell(figure)}</td>" for figure in large[:count])
        rows.append(f"<tr>{cells}</tr>")
        del large[:count]
    for figure in small:
        text = html.escape(figure.text).replace("\n", "<br>")
        rows.append(f'<tr><td colspan="2"{_PAD}>{_CAPTION.format(html.escape(figure.caption))}<br>')
        rows.append(f"{text}</td></tr>")
    return f'<table width="100%" cellspacing="0" cellpadding="0">{"".join(rows)}</table>'


def _cell(figure: Figure) -> str:
    caption = _CAPTION.format(html.escape(figure.caption))
    return f"{caption}<br>{_LARGE.format(html.escape(figure.text))}"


def _is_long(figure: Figure) -> bool:
    return len(figure.text) > 11
