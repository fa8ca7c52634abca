"""Opening, saving and printing: the desk's document and the file it came from."""

import datetime
from collections.abc import Callable
from pathlib import Path
from typing import NamedTuple

from PySide6.QtCore import QObject, Signal

from core.drawing.paper import Paper
from core.lengths import System
from core.model import Project, SiteRecord
from core.storage import Document, StorageError, load, read_document, save
from core.wording import Wording, message
from gui.asking import Ask, Leave
from gui.desk import Desk
from gui.edits import new_project
from gui.outputs import (
    NothingToShow,
    OutputError,
    demo_bytes,
    drawing_bytes,
    save_output,
    sheets_bytes,
)
from gui.site.prints import printed
from gui.waiting import AtOnce, Outcome, Runner, Wanted
from gui.wordings import wording_of


class Files(QObject):
    """Where the document on the desk is kept, and what is made of it."""

    changed = Signal()

    def __init__(
        self, desk: Desk, ask: Ask, path: Path | None = None, runner: Runner | None = None
    ) -> None:
        """`runner` does what may take longer than a moment."""
        super().__init__()
        self._runner = runner or AtOnce()
        self._desk, self._ask = desk, ask
        self.path = path
        self.paper: Paper | None = None

    @property
    def name(self) -> str:
        """What the document is called: its file, or the project before there is one."""
        return self.path.name if self.path else self._desk.project.name

    def begin(self, project: Project) -> bool:
        """Begins with the room of a new project, unless unsaved work is in the way.

        What was answered of it is not in a file yet, and undo would take it back.
        """
        if not self.may_leave():
            return False
        words = wording_of(project)
        self.path, self.paper = None, None
        self._desk.start(new_document(project.system, words))
        self._desk.commit(words.word("undo.set-up"), project)
        self.changed.emit()
        return True

    def may_give_up(self, project: Project) -> bool:
        """Whether a room that was answered but has not begun may be left: saved, or given up."""
        answer = self._ask.leave(project.name, wording_of(project))
        if answer is Leave.SAVE:
            return self.begin(project) and self.save()
        return answer is Leave.DISCARD

    def open(self) -> bool:
        """Asks for a file and opens it."""
        if not self.may_leave():
            return False
        path = self._ask.open_path(self._folder(), self._desk.wording)
        return path is not None and self.open_path(path)

    def open_path(self, path: Path) -> bool:
        """Opens a file; if it cannot be opened, all stays as it was."""
        try:
            document = load(path)
        except StorageError as error:
            self._ask.tell(str(error), self._desk.wording)
            return False
        self.path, self.paper = path, None
        self._desk.start(document)
        self.changed.emit()
        self._say("files.opened", path)
        return True

    def open_demo(self, *, metric: bool) -> bool:
        """Opens a demo as a document with no file yet, so that the demo stays as it is."""
        if not self.may_leave():
            return False
        self.path, self.paper = None, None
        name = "kite-loft.eave" if metric else "sail-loft.eave"
        self._desk.start(read_document(demo_bytes(metric=metric), name))
        self.changed.emit()
        self._desk.said.emit(self._desk.wording.word("files.demo"))
        return True

    def drop(self, paths: list[Path]) -> bool:
        """Opens the file that was dropped, if it is one and may be a project."""
        if len(paths) != 1 or paths[0].suffix != ".eave":
            self._desk.said.emit(self._desk.wording.word("files.one-file"))
            return False
        return self.may_leave() and self.open_path(paths[0])

    def save(self) -> bool:
        """Saves to the file it came from, or asks for one."""
        return self._save_to(self.path) if self.path else self.save_as()

    def save_as(self) -> bool:
        """Asks for a file and saves to it."""
        path = self._ask.save_path(self._suggested(".eave"), "filter.eave", self._desk.wording)
        return path is not None and self._save_to(path)

    def may_leave(self) -> bool:
        """Whether the document may be left: saved, or given up by the person."""
        if self._desk.is_clean:
            return True
        answer = self._ask.leave(self.name, self._desk.wording)
        return answer is Leave.DISCARD or (answer is Leave.SAVE and self.save())

    def print_sheets(self) -> bool:
        """Asks for a file and prints the sheets to it; printed labels then stay for good.

        What is printed is the work as it is now, whatever is done to it while the sheets are made.
        """
        desk = self._desk
        desk.drop_preview()
        results, words, paper, date = desk.results, desk.wording, self.paper_used, _today()
        return self._export(
            _PRINT,
            lambda: sheets_bytes(results, words, paper, date),
            lambda: desk.record(printed(desk.site, results, date)),
        )

    def save_drawing(self) -> bool:
        """Asks for a file and saves the line drawing to it."""
        self._desk.drop_preview()
        results, words = self._desk.results, self._desk.wording
        return self._export(_DRAW, lambda: drawing_bytes(results, words))

    @property
    def paper_used(self) -> Paper:
        """The paper that sheets are printed on."""
        return self.paper or Paper.usual(self._desk.project.system)

    def _save_to(self, path: Path) -> bool:
        try:
            save(path, self._desk.document)
        except StorageError as error:
            self._ask.tell(str(error), self._desk.wording)
            return False
        self.path = path
        self._desk.saved()
        self.changed.emit()
        self._say("files.saved", path)
        return True

    def _export(
        self, kind: "_Export", make: Callable[[], bytes], then: Callable[[], None] = lambda: None
    ) -> bool:
        """Asks where to, and begins; True once it is written, or still being made."""
        words = self._desk.wording
        path = self._ask.save_path(self._suggested(kind.suffix), kind.filter_id, words)
        if path is None:
            return False
        source = self.path

        def work(wanted: Wanted) -> None:
            data = make()
            if wanted():
                save_output(path, data, source)

        failed: list[bool] = []

        def over(outcome: Outcome) -> None:
            if self._written(outcome):
                then()
                self._say(kind.said, path)
            else:
                failed.append(True)

        if not self._runner.run(words.word(kind.doing), work, over):
            self._desk.said.emit(words.word("files.busy"))
            return False
        return not failed

    def _written(self, outcome: Outcome) -> bool:
        """Whether a file was written; if not, says why."""
        words = self._desk.wording
        try:
            outcome()
        except StorageError as error:
            self._ask.tell(str(error), words)
        except OutputError as error:
            self._ask.tell(words.say(error.message), words)
        except NothingToShow:
            self._ask.tell(words.word("files.nothing"), words)
        else:
            return True
        return False

    def _folder(self) -> Path:
        return self.path.parent if self.path else Path.home()

    def _suggested(self, suffix: str) -> Path:
        if self.path:
            return self.path.with_suffix(suffix)
        kept = (c if c.isalnum() or c in "-_" else "-" for c in self._desk.project.name.lower())
        return self._folder() / f"{''.join(kept).strip('-') or 'room'}{suffix}"

    def _say(self, message_id: str, path: Path) -> None:
        self._desk.said.emit(self._desk.wording.say(message(message_id, file=str(path))))


class _Export(NamedTuple):
    """A kind of file that leaves the program: how it ends, and its message ids."""

    suffix: str
    filter_id: str
    doing: str
    said: str


_PRINT = _Export(".pdf", "filter.pdf", "files.printing", "files.printed")
_DRAW = _Export(".dxf", "filter.dxf", "files.drawing", "files.drawn")


def new_document(system: System, words: Wording) -> Document:
    """A document to begin with."""
    return Document(new_project(system, words.word("new.project")), SiteRecord())


def _today() -> str:
    return datetime.date.today().isoformat()
