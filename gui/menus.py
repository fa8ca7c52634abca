"""The menus: everything that can be done, in words."""

from collections.abc import Callable, Mapping
from functools import partial

from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMenu, QMenuBar

from core.drawing.paper import Paper
from core.model import OpeningKind
from core.wording import message
from gui.desk import Desk
from gui.doing import Doing
from gui.files import Files
from gui.middle import Middle
from gui.plan.acts import Acts

Shortcut = QKeySequence.StandardKey | str | None


class Menus:
    """Fills a menu bar, and keeps what cannot be done greyed out."""

    def __init__(
        self,
        bar: QMenuBar,
        desk: Desk,
        files: Files,
        middle: Middle,
        more: Mapping[str, Callable[[], object]],
    ) -> None:
        """`more` holds what the window itself does: new rooms, quit, night, about."""
        self._bar, self._desk, self._files, self._middle = bar, desk, files, middle
        self._doing = Doing(desk)
        self._more = more
        self._resting = False
        self.actions: dict[str, QAction] = {}
        self.papers: dict[Paper, QAction] = {}
        bar.clear()
        self._file()
        self._edit()
        self._view()
        self._help()
        self.refresh()

    def refresh(self) -> None:
        """Follows the desk: what undo would take back, and what can be done."""
        if self._resting:
            return
        desk, words = self._desk, self._desk.wording
        for name, text in (("undo", desk.undo_text), ("redo", desk.redo_text)):
            action = self.actions[f"action.{name}"]
            action.setEnabled(text is not None)
            named = words.say(message(f"action.{name}-named", text=text or ""))
            action.setText(named if text else words.word(f"action.{name}"))
        for name in _NEEDS_WALL:
            self.actions[name].setEnabled(desk.letter is not None)
        for name in _NEEDS_WALL_AT_HAND:
            self.actions[name].setEnabled(self._doing.wall_letter is not None)
        self.actions["action.delete"].setEnabled(self._doing.can_delete)
        self.actions["action.duplicate"].setEnabled(self._doing.can_duplicate)
        self.actions["action.put-back"].setEnabled(self._doing.can_put_back)
        self.papers[self._files.paper_used].setChecked(True)

    def rest(self, resting: bool) -> None:
        """While the questions of a new room are asked, nothing can be done to the work at hand."""
        self._resting = resting
        for name, action in self.actions.items():
            action.setEnabled(not resting or name in _EVER)
        self.refresh()

    def _file(self) -> None:
        menu, files = self._menu("menu.file"), self._files
        key = QKeySequence.StandardKey
        self._action(menu, "action.new-inch", self._more["new-inch"], key.New)
        self._action(menu, "action.new-metric", self._more["new-metric"], "Ctrl+Shift+N")
        self._action(menu, "action.open", files.open, key.Open)
        self.recent = menu.addMenu(self._desk.wording.word("menu.recent"))
        demos = menu.addMenu(self._desk.wording.word("menu.demos"))
        self._action(demos, "action.demo-inch", lambda: files.open_demo(metric=False))
        self._action(demos, "action.demo-metric", lambda: files.open_demo(metric=True))
        menu.addSeparator()
        self._action(menu, "action.save", files.save, key.Save)
        self._action(menu, "action.save-as", files.save_as, "Ctrl+Shift+S")
        menu.addSeparator()
        self._action(menu, "action.print", files.print_sheets, key.Print)
        self._paper(menu)
        self._action(menu, "action.drawing", files.save_drawing)
        menu.addSeparator()
        self._action(menu, "action.quit", self._more["quit"], "Ctrl+Q")

    def _paper(self, menu: QMenu) -> None:
        words = self._desk.wording
        papers = menu.addMenu(words.word("menu.paper"))
        group = QActionGroup(papers)
        for paper in Paper:
            action = papers.addAction(words.word(f"paper.{paper.value}"))
            action.setCheckable(True)
            action.triggered.connect(partial(self._choose_paper, paper))
            group.addAction(action)
            self.papers[paper] = action

    def _choose_paper(self, paper: Paper) -> None:
        self._files.paper = paper

    def _edit(self) -> None:
        menu, doing = self._menu("menu.edit"), self._doing
        acts = Acts(self._desk)
        key = QKeySequence.StandardKey
        self._action(menu, "action.undo", self._desk.undo, key.Undo)
        self._action(menu, "action.redo", self._desk.redo, key.Redo)
        menu.addSeparator()
        self._action(menu, "action.hold-all", doing.hold_all, key.SelectAll)
        self._action(
            menu, "action.duplicate", self._middle.sheet.measuring.repeating.again, "Ctrl+D"
        )
        self._action(menu, "action.delete", doing.delete, key.Delete)
        menu.addSeparator()
        self._action(menu, "action.add-stud", doing.add_stud, "Ctrl+1")
        openings = (OpeningKind.DOOR, OpeningKind.ACCESS_DOOR, OpeningKind.WINDOW)
        for number, kind in enumerate(openings, start=2):
            name = f"action.add-{kind.value.replace(' ', '-')}"
            self._action(menu, name, partial(doing.add_opening, kind), f"Ctrl+{number}")
        for kind in (OpeningKind.PASS_THROUGH, OpeningKind.CASED):
            name = f"action.add-{kind.value.replace(' ', '-')}"
            self._action(menu, name, partial(doing.add_opening, kind))
        self._action(menu, "action.add-box", doing.add_box, "Ctrl+5")
        self._action(menu, "action.add-fixture", doing.add_fixture, "Ctrl+7")
        self._action(menu, "action.add-zone", doing.add_zone, "Ctrl+8")
        self._action(menu, "action.put-back", doing.put_back)
        menu.addSeparator()
        self._action(menu, "action.add-wall", doing.add_wall, "Ctrl+6")
        self._action(menu, "action.copy-wall", acts.copy)
        self._action(menu, "action.mirror-wall", acts.mirror)
        self._action(menu, "action.turn-wall", acts.turn)
        self._action(menu, "action.turn-face", acts.turn_face)
        self._action(menu, "action.delete-wall", doing.delete_wall)

    def _view(self) -> None:
        menu, middle = self._menu("menu.view"), self._middle
        key = QKeySequence.StandardKey
        self._action(menu, "action.show-room", self._desk.show_room, "Ctrl+R")
        menu.addSeparator()
        self._action(menu, "action.fit", middle.fit, "Ctrl+0")
        self._action(menu, "action.zoom-in", middle.zoom_in, key.ZoomIn)
        self._action(menu, "action.zoom-out", middle.zoom_out, key.ZoomOut)
        menu.addSeparator()
        self._action(menu, "action.list", self._more["list"], "Ctrl+L").setCheckable(True)
        self._action(menu, "action.walk", self._more["walk"], "Ctrl+T").setCheckable(True)
        menu.addSeparator()
        self._action(menu, "action.next-part", self._more["next-part"], "F6")
        self._action(menu, "action.previous-part", self._more["previous-part"], "Shift+F6")
        menu.addSeparator()
        self._action(menu, "action.night", self._more["night"], "Ctrl+Shift+D").setCheckable(True)
        self._action(menu, "action.as-system", self._more["as-system"]).setCheckable(True)
        self._action(menu, "action.larger", self._more["larger"], "Ctrl+Shift++")
        self._action(menu, "action.smaller", self._more["smaller"], "Ctrl+Shift+-")

    def _help(self) -> None:
        menu = self._menu("menu.help")
        self._action(menu, "action.help", self._more["help"], QKeySequence.StandardKey.HelpContents)
        self._action(menu, "action.what-is-this", self._more["what-is-this"], "Shift+F1")
        self._action(menu, "action.card", self._more["card"])
        menu.addSeparator()
        self._action(menu, "action.about", self._more["about"])

    def _menu(self, message_id: str) -> QMenu:
        return self._bar.addMenu(self._desk.wording.word(message_id))

    def _action(
        self, menu: QMenu, name: str, do: Callable[[], object], shortcut: Shortcut = None
    ) -> QAction:
        action = menu.addAction(self._desk.wording.word(name))
        # Whether it is checked is of no use to what it does.
        action.triggered.connect(lambda *_: do())
        if shortcut is not None:
            action.setShortcut(QKeySequence(shortcut))
        self.actions[name] = action
        return action


_EVER = (
    "action.new-inch",
    "action.new-metric",
    "action.open",
    "action.demo-inch",
    "action.demo-metric",
    "action.quit",
    "action.next-part",
    "action.previous-part",
    "action.night",
    "action.as-system",
    "action.help",
    "action.what-is-this",
    "action.card",
    "action.about",
)

_NEEDS_WALL_AT_HAND = (
    "action.copy-wall",
    "action.mirror-wall",
    "action.turn-wall",
    "action.turn-face",
    "action.delete-wall",
)
"""What is done to the wall shown, or to the one held in the room."""

_NEEDS_WALL = (
    "action.add-stud",
    "action.add-door",
    "action.add-access-door",
    "action.add-window",
    "action.add-pass-through",
    "action.add-cased-opening",
    "action.add-box",
    "action.add-fixture",
    "action.hold-all",
    "action.add-zone",
)
