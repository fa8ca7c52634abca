"""Gestures: each is one thing with one way out, which commits one edit or none.

While it lasts the desk only previews. It ends by `release` (one step of undo, if anything has
changed) or by `drop` (everything as it was).
"""

from collections.abc import Callable

from core.framing.moving import Grip
from core.model import Project
from core.wording import message
from gui.desk import Desk
from gui.edits import Refusal
from gui.sketcher.camera import XY
from gui.sketcher.pulls import Hold, Pulled, beside, pull
from gui.sketcher.several import Several, named, pull_held, push, take_all
from gui.things import Kind


class Gesture:
    """What a drag and a run of arrow keys have in common: a start, previews, and one end."""

    def __init__(self, desk: Desk, hold: Hold | Several) -> None:
        """`why` comes to tell what the thing has come to rest at; "" while it is nothing."""
        self._desk = desk
        self._hold = hold
        self._shown = hold.project
        self.why = ""

    @property
    def _keys(self) -> tuple[str, ...]:
        holds = (self._hold,) if isinstance(self._hold, Hold) else self._hold.holds
        return tuple(hold.key for hold in holds)

    @property
    def key(self) -> str:
        """The key of what is moved."""
        return self._hold.key

    def release(self) -> None:
        """Let go: one edit, if anything has changed."""
        text = self._desk.wording.say(message("drag.edit", what=named(self._hold)))
        self._desk.commit(text, self._shown)

    def drop(self) -> None:
        """Take it all back: nothing has happened."""
        self._desk.drop_preview()
        self._desk.said.emit("")

    def _try(self, make: Callable[[], Pulled]) -> None:
        """Show what is made; a place that is refused is said and not shown."""
        try:
            pulled = make()
        except Refusal as refusal:
            self.why = self._desk.wording.say(refusal.message)
            self._desk.said.emit(self.why)
            return
        self.why = self._desk.wording.say(pulled.why) if pulled.why else ""
        self._preview(pulled.project)
        self._desk.said.emit(self._desk.wording.say(pulled.said))

    def _preview(self, project: Project) -> None:
        if project != self._shown:
            self._shown = project
            self._desk.preview(project)


class Drag(Gesture):
    """A thing being pulled along the wall with the pointer, always reckoned from its start."""

    @classmethod
    def of(cls, desk: Desk, key: str) -> "Drag | None":
        """A drag of the thing with this key in the wall shown, and of all held with it.

        None if it stays where it is.
        """
        keys = (key, *desk.holding) if key in desk.holding else (key,)
        hold = take_all(desk.project, desk.result, keys) if desk.result else None
        return cls(desk, hold) if hold else None

    def pull(self, by: XY, grip: Grip) -> None:
        """Show the thing pulled by (x, y) mm from where it stood; by nothing, exactly there."""
        if by == (0.0, 0.0):
            self._preview(self._hold.project)
        else:
            self._try(lambda: pull_held(self._hold, by, grip))


class Nudge(Gesture):
    """The held thing being pushed with the arrow keys; a run of presses is one edit."""

    @classmethod
    def of(cls, desk: Desk) -> "Nudge | None":
        """A nudge of what is held; None if nothing is, or it stays where it is."""
        if desk.held is None or desk.result is None:
            return None
        hold = take_all(desk.project, desk.result, desk.holding)
        return cls(desk, hold) if hold else None

    def push(self, right: int, up: int, step: float) -> None:
        """Push by so many steps (mm) from where it stands now; a box goes from stud to stud."""
        result = self._desk.result
        hold = take_all(self._shown, result, self._keys) if result else None
        if hold is None:
            return
        if isinstance(hold, Several):
            self._try(lambda: push(hold, (right * step, up * step)))
        elif hold.thing.kind is Kind.BOX and right:
            self._try(lambda: beside(hold, right))
        elif hold.thing.kind is Kind.BOX or right:
            grip = Grip(self._desk.project.habits.tape.step_mm, 0.0)
            self._try(lambda: pull(hold, (right * step, up * step), grip))
