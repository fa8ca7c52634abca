"""The work at hand: project, site record, results, undo, and what is held."""

from collections.abc import Callable, Iterable

from PySide6.QtCore import QObject, Signal

from core.job import Change, Memo, Results, WallResult, work_out
from core.model import AddedStud, Box, ClearZone, Fixture, Opening, Project, SiteRecord, Wall
from core.storage import Document
from gui.edits.floor import plan_keys
from gui.history import History
from gui.showing import differing
from gui.site.guard import Doubt, spoilt
from gui.things import Kind, thing_of
from gui.wordings import wording_of


class Desk(QObject):
    """The one place that the window's parts read from and write to; Qt only for its signals.

    `project` is what is shown: the committed one, or the one previewed by a drag. `letter` is the
    wall that is looked at; None while it is the room as a whole, in which walls are held by their
    letters.
    """

    changed = Signal()
    held_changed = Signal()
    said = Signal(str)
    doubted = Signal()

    def __init__(self, document: Document, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._memo = Memo()
        self.letter: str | None = None
        self.held: str | None = None
        self.also: tuple[str, ...] = ()
        self.doubt: Doubt | None = None
        self._begin(document)

    def _begin(self, document: Document) -> None:
        self._history = History(document.project)
        self._saved_site = self.site = document.site
        self.letter = document.project.walls[0].letter if document.project.walls else None
        self.held, self.also, self.doubt = None, (), None
        self._show(document.project)

    def start(self, document: Document) -> None:
        """Puts another document on the desk; nothing of it is unsaved yet."""
        self._begin(document)
        self.changed.emit()
        self.held_changed.emit()
        self.doubted.emit()

    @property
    def result(self) -> WallResult | None:
        """The result of the wall shown."""
        return self.results.wall(self.letter) if self.letter is not None else None

    @property
    def wall(self) -> Wall | None:
        """The wall shown, as stated."""
        return self.project.wall(self.letter) if self.letter is not None else None

    @property
    def document(self) -> Document:
        """What a file would hold: the committed project and the site record."""
        return Document(self._history.project, self.site)

    def show_wall(self, letter: str) -> None:
        """Shows another wall; nothing of it is held."""
        self.project.wall(letter)
        self._look_at(letter)

    def show_room(self) -> None:
        """Shows the room as a whole; the wall that was shown is held in it."""
        shown = self.letter
        self._look_at(None)
        self.hold(shown)

    def _look_at(self, letter: str | None) -> None:
        if letter == self.letter:
            return
        before = self.holding
        self._turn_to(letter)
        self._tell(before)

    @property
    def holding(self) -> tuple[str, ...]:
        """The keys of all that is held, the chief thing first."""
        return () if self.held is None else (self.held, *self.also)

    def hold(self, key: str | None, also: Iterable[str] = ()) -> None:
        """Takes hold of the thing with this key in the wall shown and of others; None lets go."""
        before = self.holding
        self.held = key if key is not None and self._holdable(key) else None
        others = (k for k in dict.fromkeys(also) if k != self.held and self._holdable(k))
        self.also = tuple(others) if self.held is not None else ()
        if self.holding != before:
            self.held_changed.emit()

    def preview(self, project: Project) -> None:
        """Shows a project while something is dragged; undo knows nothing of it."""
        self._show(project)
        self.changed.emit()

    def drop_preview(self) -> None:
        """Goes back to the committed project."""
        if self.project is not self._history.project:
            self._after(self._history.project)

    def commit(self, text: str, project: Project) -> None:
        """Makes a project the one at hand, as one step of undo; equal projects make none.

        A step that would spoil cut pieces is not made but doubted, until the person has chosen.
        """
        self.let_be()
        changes = spoilt(self.site, self._history.project, project)
        if changes:
            self._doubt(changes, lambda: self._commit(text, project))
        else:
            self._commit(text, project)

    def _commit(self, text: str, project: Project) -> None:
        recorded = self._history.record(text, project)
        if recorded or self.project is not self._history.project:
            self._after(self._history.project)

    def undo(self) -> None:
        """Goes one step back, and shows the wall or the room that it changes."""
        self._step(self._history.undo, self._history.redo)

    def redo(self) -> None:
        """Goes one step forth again, and shows the wall or the room that it changes."""
        self._step(self._history.redo, self._history.undo)

    def _step(self, go: Callable[[], bool], back: Callable[[], bool]) -> None:
        """Goes one step back or forth, unless that would spoil cut pieces: then it is doubted."""
        self.let_be()
        before = self._history.project
        if not go():
            return
        after = self._history.project
        changes = spoilt(self.site, before, after)
        if changes:
            back()
            self._doubt(changes, lambda: self._take(go))
        else:
            self._follow(after)

    def _take(self, go: Callable[[], bool]) -> None:
        if go():
            self._follow(self._history.project)

    def go_on(self) -> None:
        """Makes the step that is in doubt."""
        doubt = self.doubt
        self.let_be()
        if doubt is not None:
            doubt.go_on()

    def let_be(self) -> None:
        """Leaves the step that is in doubt unmade."""
        if self.doubt is not None:
            self.doubt = None
            self.doubted.emit()

    def _doubt(self, changes: tuple[Change, ...], go_on: Callable[[], None]) -> None:
        """Leaves a step unmade until the person has chosen."""
        self.doubt = Doubt(changes, go_on)
        self.drop_preview()
        self.doubted.emit()

    @property
    def undo_text(self) -> str | None:
        """What undo would take back."""
        return self._history.undo_text

    @property
    def redo_text(self) -> str | None:
        """What redo would do again."""
        return self._history.redo_text

    @property
    def is_clean(self) -> bool:
        """Whether a file holds the committed project and the site record as they are."""
        return self._history.is_clean and self.site == self._saved_site

    def saved(self) -> None:
        """Notes that a file now holds what is at hand."""
        self._history.saved()
        self._saved_site = self.site
        self.changed.emit()

    def record(self, site: SiteRecord) -> None:
        """Puts down what happened on site; undo never takes it back."""
        self.site = site
        self._after(self.project)

    def _follow(self, project: Project) -> None:
        """Shows a project, and of it what differs."""
        before = self.holding
        letter = differing(self.project, project, self.letter)
        if letter != self.letter:
            self._turn_to(letter)
        self._after(project, before)

    def _after(self, project: Project, before: tuple[str, ...] | None = None) -> None:
        """Shows a project, and lets go of what it no longer has."""
        before = self.holding if before is None else before
        holding = self.holding
        self._show(project)
        still = [key for key in map(self._still, holding) if key is not None]
        self.held = still[0] if still else None
        self.also = tuple(dict.fromkeys(still[1:]))
        self._tell(before)

    def _turn_to(self, letter: str | None) -> None:
        """Turns to another wall or to the room; nothing of it is held."""
        self.letter, self.held, self.also = letter, None, ()

    def _tell(self, before: tuple[str, ...]) -> None:
        """Tells of a change only when all of it is made."""
        self.changed.emit()
        if self.holding != before:
            self.held_changed.emit()

    def _show(self, project: Project) -> None:
        if self.letter not in [wall.letter for wall in project.walls]:
            self.letter = None
        self.project = project
        self.wording = wording_of(project)
        self.results: Results = work_out(project, self.site, self._memo)

    def _holdable(self, key: str) -> bool:
        """Whether the wall shown has such a thing, framed or not, or the room such a wall."""
        result = self.result
        if result is None:
            return key in plan_keys(self.project)
        stated = [f"{result.wall.letter}/{x.id}" for x in _stated(result.wall)]
        keys = [key for key, _ in result.labels]
        frame = result.frame
        lacking = (*frame.no_room, *frame.too_low) if frame else ()
        return key in stated or key in keys or key in lacking

    def _still(self, key: str) -> str | None:
        """The key, or that of its opening or fixture where the piece is gone; None if both are."""
        if self._holdable(key):
            return key
        thing = thing_of(self.wall, key) if self.wall else None
        whole = thing is not None and thing.kind in (Kind.OPENING, Kind.FIXTURE)
        return f"{self.letter}/{thing.id}" if thing and whole else None


def _stated(wall: Wall) -> tuple[Opening | Box | AddedStud | Fixture | ClearZone, ...]:
    return (*wall.openings, *wall.boxes, *wall.added, *wall.fixtures, *wall.kept_clear)
