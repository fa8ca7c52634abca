"""The working of a number, right below it: terms, a line, and what they come to."""

import html

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication, QKeyEvent, QKeySequence
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QVBoxLayout

from core.framing import Printed
from core.wording import Wording

_ROW = '<tr><td>{}</td><td align="right" style="padding-left:10px">{}</td></tr>'
_RULE = "border-top:1px solid #8a8070"
"""The line above the result, in a tone that is seen by day and by night."""

_RESULT = (
    f'<tr><td style="{_RULE}"></td>'
    f'<td align="right" style="{_RULE}; padding-left:10px"><b>{{}}</b></td></tr>'
)


class WorkingView(QFrame):
    """Shows one working or several, as text that can be marked and copied."""

    def __init__(self, wording: Wording) -> None:
        super().__init__()
        self._printed: tuple[Printed, ...] = ()
        self.setObjectName("working")
        self.text = QLabel()
        self.text.setTextFormat(Qt.TextFormat.RichText)
        self.text.setWordWrap(True)
        flags = Qt.TextInteractionFlag
        self.text.setTextInteractionFlags(
            flags.TextSelectableByMouse | flags.TextSelectableByKeyboard
        )
        self.text.setAccessibleName(wording.word("working.name"))
        self.copy = QPushButton(wording.word("working.copy"))
        self.copy.setObjectName("small")
        self.copy.clicked.connect(self.copy_all)
        column = QVBoxLayout(self)
        column.setContentsMargins(10, 8, 10, 8)
        column.setSpacing(6)
        column.addWidget(self.text)
        row = QHBoxLayout()
        row.addStretch(1)
        row.addWidget(self.copy)
        column.addLayout(row)

    def show_workings(self, workings: tuple[Printed, ...]) -> None:
        """Shows these, one under the other."""
        if workings == self._printed:
            return
        self._printed = workings
        self.text.setText("".join(_table(working) for working in workings))
        self.text.setAccessibleDescription(self.plain)

    @property
    def plain(self) -> str:
        """All that is shown as plain text, a line each."""
        return "\n\n".join(working.text for working in self._printed)

    def copy_all(self) -> None:
        """Puts all of it on the clipboard."""
        QGuiApplication.clipboard().setText(self.plain)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        """Copies what is marked, or all of it where nothing is."""
        if event.matches(QKeySequence.StandardKey.Copy) and not self.text.hasSelectedText():
            self.copy_all()
        else:
            super().keyPressEvent(event)


def _table(working: Printed) -> str:
    """A working as a table: names on the left, numbers in a column on the right."""
    rows = [_ROW.format(_name(line.name), _kept(line.text)) for line in working.lines]
    rows.append(_RESULT.format(_kept(working.result)))
    title = f'<div style="margin-bottom:2px"><b>{html.escape(working.title)}</b></div>'
    return f'{title}<table width="100%" cellspacing="0" cellpadding="1">{"".join(rows)}</table>'


def _name(name: str) -> str:
    """A name whose formula, what follows its last comma, is not broken over lines."""
    first, comma, formula = name.rpartition(", ")
    return html.escape(first + comma) + _kept(formula)


def _kept(text: str) -> str:
    """A number that is not broken over lines."""
    return html.escape(text).replace(" ", "&nbsp;")
