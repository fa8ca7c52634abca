"""Shaping the section by pulling or pushing a handle: each is one thing with one way out.

While it lasts the desk only previews; it ends by `release` (one step of undo, if anything has
changed) or by `drop` (everything as it was).
"""

from collections.abc import Callable

from core.framing.moving import Grip
from core.wording import message
from gui.desk import Desk
from gui.edits.beyond import Beyond
from gui.section.numbers import name_of
from gui.section.pulls import Shaped, Taken, nudge, pull, take
from gui.sketcher.camera import XY


class Shaping:
    """A handle of the section being pulled with the pointer, or pushed with the arrow keys."""

    def __init__(self, desk: Desk, key: str) -> None:
        self._desk = desk
        self._shown = self._start = desk.project
        self._taken: Taken | None = None
        self.key = key

    def pull(self, by: XY, grip: Grip) -> None:
        """Show the handle pulled by (x, y) mm from where it stood; the first pull sets the way."""
        if self._taken is None:
            self._taken = take(self._start, self.key, across=abs(by[0]) > abs(by[1]))
        taken = self._taken
        if by == (0.0, 0.0):
            self._preview(Shaped(self._start, message("shape.as-it-was")))
        else:
            self._try(lambda: pull(taken, by, grip))

    def push(self, way: int, *, across: bool, large: bool) -> None:
        """Push the handle one step on from where it stands now."""
        taken = self._taken = take(self._shown, self.key, across=across)
        if taken.across is across:
            self._try(lambda: nudge(taken, way, large=large))

    def release(self) -> None:
        """Let go: one edit, if anything has changed."""
        key = self._taken.key if self._taken is not None else self.key
        self._desk.commit(undo_text(self._desk, key), self._shown)

    def drop(self) -> None:
        """Take it all back: nothing has happened."""
        self._desk.drop_preview()
        self._desk.said.emit("")

    def _try(self, make: Callable[[], Shaped]) -> None:
        """Show what is made; what does not fit is told, and the nearest that does is shown."""
        try:
            self._preview(make())
        except Beyond as beyond:
            self._preview(Shaped(beyond.nearest, beyond.message))

    def _preview(self, shaped: Shaped) -> None:
        if shaped.project != self._shown:
            self._shown = shaped.project
            self._desk.preview(shaped.project)
        self._desk.said.emit(self._desk.wording.say(shaped.said))


def undo_text(desk: Desk, key: str) -> str:
    """What undo says of a change of the number with this key."""
    words = desk.wording
    return words.say(message("undo.field", field=name_of(key), thing=message("undo.room")))
