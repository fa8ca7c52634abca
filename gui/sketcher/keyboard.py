"""What the keys do on the sheet: push what is held, take back, delete, fit, zoom."""

from typing import Protocol

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent

from core.framing import Role
from core.job import WallResult
from core.wording import message
from gui.desk import Desk
from gui.edits import Refusal, delete
from gui.sketcher.choosing import once
from gui.sketcher.gestures import Nudge
from gui.sketcher.pointing import told_in_line
from gui.sketcher.pulls import step_of
from gui.sketcher.wheel import ZOOM
from gui.things import name_of

Key = Qt.Key

_ARROWS = {
    int(Key.Key_Left): (-1, 0),
    int(Key.Key_Right): (1, 0),
    int(Key.Key_Up): (0, 1),
    int(Key.Key_Down): (0, -1),
}

_LARGER = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
"""With one of these an arrow key takes a larger step."""

_SHOVE_PX = 40.0
"""How far an arrow key shoves the paper when nothing is held."""


class Board(Protocol):
    """What the keys work on."""

    desk: Desk

    def fit(self) -> None:
        """Show the whole wall."""

    def zoom(self, factor: float) -> None:
        """Look nearer or from farther away."""

    def shove(self, right: float, down: float) -> None:
        """Shove the paper, px."""


class Keys:
    """The keys' state: a run of arrow keys between the first press and the last release."""

    def __init__(self, board: Board) -> None:
        self._board = board
        self.nudge: Nudge | None = None

    def press(self, event: QKeyEvent) -> bool:
        """Do what the key stands for; False if it stands for nothing here."""
        key = event.key()
        if key in _ARROWS:
            self._arrow(_ARROWS[key], large=bool(event.modifiers() & _LARGER))
        elif key == Key.Key_F:
            self._board.fit()
        elif key in (Key.Key_Plus, Key.Key_Equal):
            self._board.zoom(ZOOM)
        elif key == Key.Key_Minus:
            self._board.zoom(1 / ZOOM)
        elif key in (Key.Key_Delete, Key.Key_Backspace):
            self.settle()
            delete_held(self._board.desk)
        elif key in (Key.Key_PageDown, Key.Key_PageUp):
            self.settle()
            way = 1 if key == Key.Key_PageDown else -1
            more = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
            hold_next(self._board.desk, way, more=more)
        else:
            return False
        return True

    def release(self, event: QKeyEvent) -> None:
        """A key is up: a run of arrow keys is over."""
        if event.key() in _ARROWS and not event.isAutoRepeat():
            self.settle()

    def settle(self) -> None:
        """Make the run of arrow keys one edit."""
        nudge, self.nudge = self.nudge, None
        if nudge is not None:
            nudge.release()

    def escape(self) -> bool:
        """Take back the run of arrow keys; False if there is none."""
        nudge, self.nudge = self.nudge, None
        if nudge is not None:
            nudge.drop()
        return nudge is not None

    def _arrow(self, way: tuple[int, int], *, large: bool) -> None:
        desk = self._board.desk
        if desk.held is None:
            self._board.shove(-way[0] * _SHOVE_PX, way[1] * _SHOVE_PX)
            return
        self.nudge = self.nudge or Nudge.of(desk)
        if self.nudge is None:
            desk.said.emit(desk.wording.say(message("drag.stays")))
        else:
            self.nudge.push(*way, step_of(desk.project.habits.tape, large=large))


def delete_held(desk: Desk) -> None:
    """Delete what is held, as one edit; what goes only with its wall is refused."""
    result = desk.result
    if result is None or desk.held is None:
        return
    project, keys = desk.project, once(result, desk.holding)
    try:
        for key in keys:
            project = delete(project, result.wall.letter, key)
    except Refusal as refusal:
        desk.said.emit(desk.wording.say(refusal.message))
        return
    several = message("held.several", count=len(keys))
    what = name_of(result, keys[0]) if len(keys) == 1 else several
    desk.commit(desk.wording.say(message("drag.delete", what=what)), project)


def hold_next(desk: Desk, direction: int, *, more: bool = False) -> None:
    """Take hold of the next thing to the right (1) or left (-1); from nothing, of the first.

    With `more` it is held besides what was, and goes on from what was held last.
    """
    result = desk.result
    keys = _in_order(result) if result else []
    if result is None or not keys:
        return
    last = desk.holding[-1] if desk.holding else None
    at = keys.index(last) if last in keys else -1 if direction > 0 else 0
    key = keys[(at + direction) % len(keys)]
    if more and desk.held is not None:
        desk.hold(desk.held, (*desk.also, key))
        several = message("held.several", count=len(desk.holding))
        desk.said.emit(desk.wording.say(message("held.several-held", what=several)))
        return
    desk.hold(key)
    desk.said.emit(told_in_line(result, key, desk.wording))


def _in_order(result: WallResult) -> list[str]:
    """The keys of what stands in the wall, from left to right."""
    members = result.frame.members if result.frame else ()
    places = [(m.left, m.bottom, m.key) for m in members if not m.lies or m.role is Role.BACKING]
    places += [(box.left, box.bottom, box.key) for box in result.boxes] if result.frame else []
    return [key for _, _, key in sorted(places)]
