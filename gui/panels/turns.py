"""The order in which the walls of the job go up, each with why then."""

from PySide6.QtWidgets import QLabel

from core.job import raising_order
from core.lengths import unbroken
from core.site import in_turn
from core.wording import Wording
from gui.desk import Desk
from gui.panels.form import Form


class TurnsForm(Form):
    """Nothing is typed here: the order follows from walls, roof and room."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self.order = QLabel()
        self.order.setWordWrap(True)
        self.wide(self.order)
        self.sentence("turns.explained")
        self.shows(self._show)

    def _show(self) -> None:
        words = self.desk.wording
        told = [words.say(line) for line in in_turn(raising_order(self.desk.results))]
        self.order.setText(unbroken("\n".join(told)) or words.word("turns.none"))
