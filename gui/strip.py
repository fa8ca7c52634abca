"""The live strip at the foot of the window: studs and cautions of the wall shown and of the job."""

import html

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QSizePolicy

from core.job import Totals, job_totals, wall_totals
from core.wording import Message, Wording, message
from gui.desk import Desk
from gui.pace import Pace
from gui.theme import Theme

PAUSE_MS = 100
"""Between two refreshings while something is dragged: ten a second at most."""

_APART = "&nbsp;&nbsp;·&nbsp;&nbsp;"


class Strip(QLabel):
    """Says the totals; what cannot be built is in the warning tone.

    A tip is the working of the job's studs, wall by wall.
    """

    def __init__(self, desk: Desk, theme: Theme) -> None:
        super().__init__()
        self._desk, self._theme = desk, theme
        self.setObjectName("strip")
        self.setTextFormat(Qt.TextFormat.RichText)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Preferred)
        self.setAccessibleName(desk.wording.word("strip.name"))
        self._pace = Pace(self.refresh, PAUSE_MS, self)
        desk.changed.connect(self._pace.ask)
        self.refresh()

    def set_theme(self, theme: Theme) -> None:
        """Writes by day or by night."""
        self._theme = theme
        self.refresh()

    def refresh(self) -> None:
        """Shows the totals of the project on the desk."""
        words, found = self._desk.wording, self._totals()
        self.setText(_APART.join(self._html(head, totals, words) for head, totals in found))
        said = (f"{words.say(head)}, {cautions(totals, words)}" for head, totals in found)
        self.setAccessibleDescription("; ".join(said))
        self.setToolTip(self._sum())

    def _totals(self) -> list[tuple[Message, Totals]]:
        """What is told, each with the words that it begins with."""
        result, job = self._desk.result, job_totals(self._desk.results)
        found = [(message("strip.job", studs=job.studs), job)]
        if result is not None:
            wall = wall_totals(result)
            head = message("strip.wall", letter=result.wall.letter, studs=wall.studs)
            found.insert(0, (head, wall))
        return found

    def _html(self, head: Message, totals: Totals, words: Wording) -> str:
        said = html.escape(cautions(totals, words))
        if totals.unbuildable:
            said = f'<span style="color:{self._theme.warning.name()}">{said}</span>'
        return f"{html.escape(words.say(head))}, {said}"

    def _sum(self) -> str:
        terms = [(r.wall.letter, wall_totals(r).studs) for r in self._desk.results.walls]
        whole = sum(studs for _, studs in terms)
        return f"{' + '.join(f'{letter} {n}' for letter, n in terms)} = {whole}" if terms else ""


def cautions(totals: Totals, wording: Wording) -> str:
    """How many cautions there are, and how much of it cannot be built, in words."""
    if not totals.cautions:
        return wording.word("strip.no-cautions")
    count = totals.cautions
    one = wording.word("strip.caution")
    said = one if count == 1 else wording.say(message("strip.cautions", count=count))
    if not totals.unbuildable:
        return said
    return said + wording.say(message("strip.unbuildable", count=totals.unbuildable))
