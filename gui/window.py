"""The window: room and walls on the left, one of them in the middle, what is held on the right."""

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QCloseEvent, QDragEnterEvent, QDropEvent, QKeyEvent
from PySide6.QtWidgets import (
    QApplication,
    QHBoxLayout,
    QMainWindow,
    QMessageBox,
    QSplitter,
    QStackedWidget,
    QVBoxLayout,
    QWhatsThis,
    QWidget,
)

from core import __version__
from core.lengths import System
from core.model import Project
from core.wording import message
from gui import held, walls
from gui.asking import Ask, Dialogs
from gui.card import Card
from gui.desk import Desk
from gui.files import Files
from gui.foot import Foot
from gui.held import Held
from gui.help_page import HelpPage
from gui.keeping import Kept
from gui.looks import Looks
from gui.menus import Menus
from gui.middle import Middle
from gui.pace import Pace
from gui.plan.drawing import Tool
from gui.reading_order import first_of_next, give_keys, next_in_order
from gui.recent_menu import RecentMenu
from gui.site.doubt_bar import DoubtBar
from gui.sizes import scaled, text_scale
from gui.strip import Strip
from gui.style import palette, style_sheet
from gui.theme import Theme
from gui.tips import answer
from gui.waiting import Beside
from gui.waiting_bar import WaitingBar
from gui.walls import Walls
from gui.whereabouts import Whereabouts
from gui.wordings import said_in

if TYPE_CHECKING:
    from gui.newroom.page import NewRoom

_PAUSE_MS = 80
"""Between two refreshings of the right side while something is dragged."""


class Window(QMainWindow):
    """One project on one desk."""

    def __init__(
        self,
        desk: Desk,
        theme: Theme | None = None,
        path: Path | None = None,
        ask: Ask | None = None,
        kept: Kept | None = None,
    ) -> None:
        """`kept` is what is remembered of the person; without it nothing is."""
        super().__init__()
        self.kept = kept or Kept.nothing()
        self.looks = Looks(self.kept, theme)
        self.desk, self.theme = desk, self.looks.theme
        self.beside = Beside(self)
        self.files = Files(desk, ask or Dialogs(self), path, self.beside)
        self.foot = Foot()
        self.page: NewRoom | None
        self._pace = Pace(lambda: self.held.refresh(), _PAUSE_MS, self)
        self._build()
        self.set_theme(self.theme)
        self.setAcceptDrops(True)
        self.looks.recoloured.connect(lambda: self.set_theme(self.looks.theme))
        self.looks.resized.connect(self._rebuild)
        desk.changed.connect(self._on_changed)
        desk.held_changed.connect(self._on_held)
        desk.said.connect(self._say)
        self.files.changed.connect(self._title)
        self.files.changed.connect(self._leave_page)
        self.files.changed.connect(self._note_file)
        self._note_file()

    def _build(self) -> None:
        """Makes all that has words in it, in the words of the project."""
        self._said_in = said_in(self.desk.project)
        self.walls = Walls(self.desk, self.theme)
        self.middle = Middle(self.desk, self.theme)
        self.sheet = self.middle.sheet
        self.held = Held(self.desk)
        split = QSplitter(Qt.Orientation.Horizontal)
        for part in (self.walls, self.middle, self.held):
            split.addWidget(part)
            split.setCollapsible(split.count() - 1, False)
        split.setStretchFactor(1, 1)
        split.setHandleWidth(1)
        sides = (scaled(walls.WIDTH, self), scaled(held.WIDTH, self))
        split.setSizes([sides[0], self.width(), sides[1]])
        whole = QWidget()
        column = QVBoxLayout(whole)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        self.pages, self.page = QStackedWidget(), None
        self.pages.addWidget(split)
        column.addWidget(self.pages, 1)
        self.waiting = WaitingBar(self.beside, self.desk.wording)
        column.addWidget(self.waiting)
        column.addLayout(self._foot_row())
        self.setCentralWidget(whole)
        more: dict[str, Callable[[], object]] = {
            "new-inch": partial(self.new_room, System.INCH),
            "new-metric": partial(self.new_room, System.METRIC),
            "quit": self.close,
            "night": self.looks.turn,
            "as-system": self.looks.follow_system,
            "larger": self.looks.larger,
            "smaller": self.looks.smaller,
            "help": self.help,
            "what-is-this": QWhatsThis.enterWhatsThisMode,
            "card": lambda: self.card.setVisible(True),
            "about": self.about,
            "walk": self._turn_walking,
            "list": self._turn_list,
            "next-part": partial(self._to_part, forward=True),
            "previous-part": partial(self._to_part, forward=False),
        }
        self.menus = Menus(self.menuBar(), self.desk, self.files, self.middle, more)
        self.middle.walk_left.connect(self.menus.actions["action.walk"].trigger)
        self.doubt = DoubtBar(self.desk)
        column.insertWidget(0, self.doubt)
        self.walls.add.clicked.connect(self._draw_wall)
        self.card = Card(self.desk.wording, self.kept)
        self.card.demo.connect(lambda: self.files.open_demo(metric=False))
        column.insertWidget(0, self.card)
        self.recent = RecentMenu(self.menus.recent, self.kept, self._reopen, self.desk.wording)
        self._show_list()
        self._title()

    def _foot_row(self) -> QHBoxLayout:
        """What was said last on the left, the totals on the right."""
        self.strip = Strip(self.desk, self.theme)
        row = QHBoxLayout()
        row.setSpacing(0)
        row.addWidget(self.foot, 1)
        row.addWidget(self.strip)
        self.foot.aside = self.strip
        return row

    def sizeHint(self) -> QSize:  # noqa: N802
        return QSize(1400, 860)

    def set_theme(self, theme: Theme) -> None:
        """Shows everything by day or by night."""
        self.theme = theme
        self.setPalette(palette(theme))
        self.setStyleSheet(style_sheet(theme, text_scale()))
        self.middle.set_theme(theme)
        self.walls.set_theme(theme)
        if self.page is not None:
            self.page.set_theme(theme)
        self.strip.set_theme(theme)
        self.menus.actions["action.night"].setChecked(theme.dark)
        self.menus.actions["action.as-system"].setChecked(self.looks.follows_system)

    def new_room(self, system: System) -> None:
        """Asks for a new room; the work at hand stays until that one begins."""
        self._leave_page()
        name = self.desk.wording.word("new.project")
        # Only who begins a room needs its page.
        from gui.newroom.page import NewRoom

        page = self.page = NewRoom(system, name, self.theme)
        page.begun.connect(self._begin)
        page.left.connect(self._leave_page)
        page.said.connect(self._say)
        self.pages.addWidget(page)
        self.pages.setCurrentWidget(page)
        self.menus.rest(True)
        page.start()

    def about(self) -> None:
        """Says what this is, and that it judges no structure."""
        words = self.desk.wording
        box = QMessageBox(self)
        box.setWindowTitle(words.word("action.about"))
        box.setText(words.say(message("about.name", version=__version__)))
        standing = (words.say(caution.message) for caution in self.desk.results.cautions)
        box.setInformativeText("\n\n".join((words.word("about.text"), *standing)))
        box.addButton(words.word("ask.ok"), QMessageBox.ButtonRole.AcceptRole)
        box.exec()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        """Escape that nobody else wants lets go, and gives the keys back to the paper."""
        if event.key() == Qt.Key.Key_Escape:
            self.desk.hold(None)
            self.middle.paper.setFocus()
        else:
            super().keyPressEvent(event)

    def focusNextPrevChild(self, forward: bool) -> bool:  # noqa: N802
        """Tab goes through the window as it is read, whatever was made first."""
        found = next_in_order(self, self.focusWidget(), forward=forward)
        if found is not None:
            give_keys(found, forward=forward)
        return found is not None

    def _to_part(self, *, forward: bool) -> None:
        """Goes to the next part of the window: the list, the paper, what is held."""
        shown = self.page.parts if self.page else (self.walls, self.middle, self.held)
        parts = (self.card, self.doubt, *shown)
        found = first_of_next(parts, self.focusWidget(), forward=forward)
        if found is not None:
            here = self.middle.isAncestorOf(found)
            give_keys(self.middle.chief if here else found, forward=forward)

    def closeEvent(self, event: QCloseEvent) -> None:  # noqa: N802
        """Asks before unsaved work is lost, and waits for what is being made."""
        if self.beside.busy:
            self._say(self.desk.wording.word("files.busy"))
            event.ignore()
            return
        asked = None if self.page is None or self.page.desk.is_clean else self.page.desk
        given_up = asked is None or self.files.may_give_up(asked.project)
        if given_up and self.files.may_leave():
            self.kept.frame = self.saveGeometry()
            event.accept()
        else:
            event.ignore()

    def _draw_wall(self) -> None:
        """Shows the room, in which the next press begins a wall."""
        self.desk.show_room()
        self.middle.room.plan.arm(Tool.WALL)

    def _begin(self, project: Project) -> None:
        """Begins with a room whose questions were answered, at its plan."""
        if self.files.begin(project):
            self.desk.show_room()
            self.middle.paper.setFocus()

    def _leave_page(self) -> None:
        """Goes back from the questions to the work at hand."""
        page, self.page = self.page, None
        if page is not None:
            self.pages.removeWidget(page)
            page.deleteLater()
            self._say("")
            self.menus.rest(False)
            if said_in(self.desk.project) != self._said_in:
                self._rebuild()
            self.middle.paper.setFocus()

    def event(self, event: QEvent) -> bool:
        """Answers what a word is, wherever in the window it is asked."""
        return answer(event, self, self.desk.wording) or super().event(event)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:  # noqa: N802
        """A file may be dropped on the window."""
        if event.mimeData().hasUrls():
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:  # noqa: N802
        """Opens the file that is dropped."""
        self.files.drop([Path(url.toLocalFile()) for url in event.mimeData().urls()])

    def help(self) -> None:
        """Shows the page of help beside the work."""
        self.help_page = HelpPage(self.desk.wording, self)
        self.help_page.show()

    def _note_file(self) -> None:
        if self.files.path is not None:
            self.kept.note(self.files.path)

    def _reopen(self, path: Path) -> None:
        if self.files.may_leave():
            self.files.open_path(path)

    def _rebuild(self) -> None:
        """Makes everything anew, in other words or other sizes; answers half given stay."""
        where = Whereabouts.of(self.held)
        if self.page is None:
            walking = self.middle.walking
            self._build()
            if walking:
                self._turn_walking()
        self.set_theme(self.theme)
        where.bring_back(self.held)

    def _turn_list(self) -> None:
        self.kept.lists_members = not self.kept.lists_members
        self._show_list()

    def _show_list(self) -> None:
        self.menus.actions["action.list"].setChecked(self.kept.lists_members)
        self.middle.list_members(self.kept.lists_members)

    def _turn_walking(self) -> None:
        self.middle.walking = not self.middle.walking
        self.menus.actions["action.walk"].setChecked(self.middle.walking)
        self._show_middle()

    def _show_middle(self) -> None:
        """Shows what is looked at; what is held needs no forms while the site is walked."""
        self.middle.refresh()
        self.held.setVisible(not self.middle.walks)

    def _on_changed(self) -> None:
        if said_in(self.desk.project) != self._said_in:
            self._rebuild()
        # What can be pressed next has to be right at once; the rest may come a little later.
        self.menus.refresh()
        self._show_middle()
        self.walls.refresh()
        self.setWindowModified(not self.desk.is_clean)
        self._pace.ask()

    def _on_held(self) -> None:
        self.menus.refresh()

    def _say(self, sentence: str) -> None:
        self.foot.say(sentence)

    def _title(self) -> None:
        name = self.files.name
        self.setWindowTitle(self.desk.wording.say(message("window.title", name=name)))
        self.menus.refresh()


def application(argv: list[str]) -> QApplication:
    """The one application object; a fresh one if there is none."""
    found = QApplication.instance()
    if isinstance(found, QApplication):
        return found
    app = QApplication(argv)
    app.setApplicationName("Eavewright")
    app.setDesktopFileName("eavewright")
    app.setStyle("Fusion")
    return app
