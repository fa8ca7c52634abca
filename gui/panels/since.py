"""Since the last print: what of the wall shown is no longer as its sheet has it."""

from PySide6.QtWidgets import QLabel

from core.job import changes_since_print, since_print
from core.model import PrintedWall
from core.wording import Wording, message
from gui.desk import Desk
from gui.panels.form import Form

_MOST = 8
"""So many changes are told one by one."""


class SinceForm(Form):
    """The date of the wall's last sheet and what changed since; nothing before the first print."""

    def __init__(self, desk: Desk, words: Wording) -> None:
        super().__init__(desk, words)
        self.title, self.text = QLabel(), QLabel()
        self.title.setObjectName("heading")
        self.text.setWordWrap(True)
        self.wide(self.title)
        self.wide(self.text)

    @property
    def stands(self) -> bool:
        """Whether the wall shown was ever printed."""
        return self._sheet() is not None

    def refresh(self) -> None:
        """Compares the wall with its last sheet."""
        sheet, result = self._sheet(), self.desk.result
        if sheet is None or result is None:
            return
        changes = changes_since_print(sheet, result)
        lines = [self.words.say(since_print(change)) for change in changes[:_MOST]]
        if len(changes) > _MOST:
            lines.append(self.words.say(message("since.more", count=len(changes) - _MOST)))
        self.title.setText(self.words.say(message("since.sheet-of", date=sheet.date)))
        self.text.setText("\n".join(lines) or self.words.word("since.nothing"))
        self.text.setObjectName("warning" if changes else "faint")
        self.text.style().polish(self.text)

    def _sheet(self) -> PrintedWall | None:
        sheets = self.desk.site.sheets
        return next((sheet for sheet in sheets if sheet.letter == self.desk.letter), None)
