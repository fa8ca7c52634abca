"""The page of a new room: questions on the left, the room drawn on the right, then it begins."""

from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from core.lengths import System
from core.model import Project, SiteRecord
from core.storage import Document
from gui.desk import Desk
from gui.edits.new import new_project
from gui.fields import Field
from gui.newroom.glimpse import Glimpse
from gui.newroom.questions import Questions, Units
from gui.section.section import SectionView
from gui.sizes import scaled
from gui.theme import Theme
from gui.wordings import wording_of

WIDTH = 424
"""The width of the questions, px."""


class NewRoom(QWidget):
    """Asks what a room is like on a desk of its own; nothing of the work at hand is touched.

    `begun` hands out the room that was answered, `left` says that the person went back. What is
    told at the foot comes by `said`.
    """

    begun = Signal(object)
    left = Signal()
    said = Signal(str)

    def __init__(self, system: System, name: str, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self.desk = Desk(Document(new_project(system, name), SiteRecord()), self)
        self.desk.said.connect(self.said)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._built: QWidget | None = None
        self._build()
        self.desk.changed.connect(self._on_changed)
        self._undoing()

    def set_theme(self, theme: Theme) -> None:
        """Draws by day or by night."""
        self._theme = theme
        self.section.set_theme(theme)
        self.plan.set_theme(theme)

    def start(self) -> None:
        """Gives the keys to the first question."""
        self._to(self.questions.across)

    def begin(self) -> None:
        """Hands out the room, or goes to the answer that could not be taken."""
        # A text that is still being typed is an answer as well.
        self.go.setFocus(Qt.FocusReason.OtherFocusReason)
        wrong = self.questions.unanswered()
        if wrong is not None:
            self._to(wrong)
            return
        self.begun.emit(self.desk.project)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        """Enter goes on to the next question, and from the last one begins; Escape goes back.

        Where something was answered Escape only goes to the button that gives it up.
        """
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._next()
        elif event.key() == Qt.Key.Key_Escape and self.desk.is_clean:
            self.left.emit()
        elif event.key() == Qt.Key.Key_Escape:
            self._to(self.back)
            self.said.emit(self.desk.wording.word("question.give-up"))
        else:
            super().keyPressEvent(event)

    def _build(self) -> None:
        """Makes all that has words in it, in the words of the room's system."""
        words = self.desk.wording
        self._system = self.desk.project.system
        self.questions, self.units = Questions(self.desk, words), Units(self.desk, words)
        self.section = SectionView(self.desk, self._theme)
        self.plan = Glimpse(self.desk, self._theme)
        self.go = QPushButton(words.word("question.begin"))
        self.go.setObjectName("begin")
        self.back = QPushButton(words.word("question.back"))
        self.go.clicked.connect(self.begin)
        self.back.clicked.connect(self.left)
        for system, button in self.units.buttons.items():
            button.clicked.connect(partial(self._pick, system))
        old, self._built = self._built, QWidget()
        line = QHBoxLayout(self._built)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(0)
        self.parts = (self._asking(), self._drawings())
        line.addWidget(self.parts[0])
        line.addWidget(self.parts[1], 1)
        self._column.addWidget(self._built)
        if old is not None:
            self._column.removeWidget(old)
            old.deleteLater()
        self.questions.refresh()

    def _asking(self) -> QWidget:
        """The left side: units, questions, and what to press in the end."""
        words, side = self.desk.wording, QWidget()
        side.setObjectName("panel")
        side.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        side.setFixedWidth(scaled(WIDTH, self))
        column = QVBoxLayout(side)
        column.setContentsMargins(20, 14, 16, 14)
        column.setSpacing(10)
        head = QHBoxLayout()
        title = QLabel(words.word("question.title"))
        title.setObjectName("title")
        head.addWidget(title, 1)
        head.addWidget(self.units)
        column.addLayout(head)
        column.addWidget(_scrolled(self.questions), 1)
        foot = QHBoxLayout()
        foot.addWidget(self.back)
        foot.addStretch(1)
        foot.addWidget(self.go)
        column.addLayout(foot)
        return side

    def _drawings(self) -> QWidget:
        """The right side: the section over the plan."""
        split = QSplitter(Qt.Orientation.Vertical)
        split.setChildrenCollapsible(False)
        split.setHandleWidth(1)
        split.addWidget(self.section)
        split.addWidget(self.plan)
        split.setSizes([10_000, 10_000])
        return split

    def _next(self) -> None:
        """To what is asked after the one that has the keys; a refused answer keeps them."""
        here = self.focusWidget()
        if isinstance(here, QPushButton):
            here.click()
            return
        if isinstance(here, Field) and here.refused:
            here.selectAll()
            return
        asked = [*self.questions.asked, self.go]
        at = asked.index(here) if here in asked else -1
        self._to(asked[at + 1])

    def _to(self, widget: QWidget) -> None:
        widget.setFocus(Qt.FocusReason.TabFocusReason)
        if isinstance(widget, Field):
            widget.selectAll()

    def _pick(self, system: System) -> None:
        if system is self.desk.project.system:
            return
        project: Project = self.units.picked(system)
        words = wording_of(project)
        self.desk.commit(words.word(f"question.{system.value}"), project)
        self.units.buttons[system].setFocus()

    def _on_changed(self) -> None:
        if self.desk.project.system is not self._system:
            self._build()
        self.questions.refresh()

    def _undoing(self) -> None:
        key = QKeySequence.StandardKey
        for keys, do in ((key.Undo, self.desk.undo), (key.Redo, self.desk.redo)):
            shortcut = QShortcut(self)
            shortcut.setKeys(keys)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(do)


def _scrolled(inside: QWidget) -> QScrollArea:
    """The questions, which scroll where the window is low."""
    area = QScrollArea()
    inside.setObjectName("panel")
    area.setWidget(inside)
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    return area
