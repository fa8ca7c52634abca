"""What the keys do on the plan: draw a wall, push the one held, hold the next, go to it."""

from typing import Protocol

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent

from core.chalk import Grip, guides, next_along
from core.drawing.plan_ground import at
from core.framing import footprints
from core.model import Project
from core.wording import message
from gui.desk import Desk
from gui.doing import Doing
from gui.edits.floor import ground_of, plan_keys
from gui.plan.drawing import Draw, Tool, begun, inside
from gui.plan.gestures import Gesture, Move
from gui.plan.grip import larger_step
from gui.plan.told import on_told
from gui.sketcher.camera import XY
from gui.sketcher.wheel import ZOOM

Key = Qt.Key

_ARROWS = {
    int(Key.Key_Left): (-1, 0),
    int(Key.Key_Right): (1, 0),
    int(Key.Key_Up): (0, 1),
    int(Key.Key_Down): (0, -1),
}

_TOOLS = {
    int(Key.Key_W): Tool.WALL,
    int(Key.Key_O): Tool.STAIR,
    int(Key.Key_E): Tool.EXISTING,
}

_SHOVE_PX = 40.0
"""How far an arrow key shoves the paper when nothing is held."""

_NEAR = 1.0
"""How near (mm) to a line the cross counts as on it."""


class Board(Protocol):
    """What the keys work on."""

    desk: Desk
    armed: Tool | None
    gesture: Gesture | None

    def arm(self, tool: Tool | None) -> None:
        """Begin what the tool draws with the next press, or leave it."""

    def end(self, *, keep: bool) -> None:
        """End what is under way: kept, or taken back."""

    def fit(self) -> None:
        """Show the whole room."""

    def zoom(self, factor: float) -> None:
        """Look nearer or from farther away."""

    def shove(self, right: float, down: float) -> None:
        """Shove the paper, px."""


class PlanKeys:
    """The keys' state: the cross that draws, and a run of arrow keys that pushes."""

    def __init__(self, board: Board) -> None:
        self._board = board
        self._pushed: XY = (0.0, 0.0)
        self.pushing = False
        self.cross: XY | None = None

    def press(self, event: QKeyEvent) -> bool:
        """Do what the key stands for; False if it stands for nothing here."""
        key, board = event.key(), self._board
        if key in _ARROWS:
            self._arrow(_ARROWS[key], event.modifiers())
        elif key in _TOOLS:
            self.settle()
            board.arm(_TOOLS[key])
            self.begin_cross()
        elif key in (Key.Key_Return, Key.Key_Enter):
            self._enter()
        elif key in (Key.Key_PageDown, Key.Key_PageUp):
            self.settle()
            self._hold_next(1 if key == Key.Key_PageDown else -1)
        elif key in (Key.Key_Delete, Key.Key_Backspace):
            self.settle()
            Doing(board.desk).delete()
        elif key == Key.Key_F:
            board.fit()
        elif key in (Key.Key_Plus, Key.Key_Equal, Key.Key_Minus):
            board.zoom(1 / ZOOM if key == Key.Key_Minus else ZOOM)
        else:
            return False
        return True

    def release(self, event: QKeyEvent) -> None:
        """A key is up: a run of arrow keys is over."""
        if event.key() in _ARROWS and not event.isAutoRepeat():
            self.settle()

    def settle(self) -> None:
        """Make a run of arrow keys one edit."""
        if self.pushing:
            self.pushing = False
            self._board.end(keep=True)

    def begin_cross(self) -> None:
        """Put the cross where a wall may begin: at the held wall's end, or at the left eave."""
        desk = self._board.desk
        ground = ground_of(desk.project, desk.held) if desk.held is not None else None
        if ground is not None:
            self.cross = at(ground, ground.run, 0.0)
        else:
            self.cross = (0.0, desk.project.habits.tape.round(desk.project.room.length.mm / 2))
        desk.said.emit(desk.wording.word("plan.cross"))

    def drop_cross(self) -> None:
        """Take the cross away."""
        self.cross = None

    def _enter(self) -> None:
        """Begin or end the wall at the cross; else go to the wall held."""
        board, desk = self._board, self._board.desk
        if self.cross is None:
            if board.gesture is None and Doing(desk).wall_letter is not None:
                desk.show_wall(Doing(desk).wall_letter or "")
        elif board.gesture is None:
            tool = board.armed or Tool.WALL
            board.gesture = begun(tool, desk, self.cross, self._exact(), desk.held)
            desk.said.emit(desk.wording.word("plan.cross-end"))
        else:
            board.end(keep=True)

    def _arrow(self, way: XY, modifiers: Qt.KeyboardModifier) -> None:
        board, desk = self._board, self._board.desk
        large = bool(modifiers & Qt.KeyboardModifier.ControlModifier)
        tape = desk.project.habits.tape
        step = larger_step(tape) if large else tape.step_mm
        if self.cross is not None:
            hop = bool(modifiers & Qt.KeyboardModifier.ShiftModifier)
            self._move_cross(way, step if not hop else 0.0)
        elif desk.held is not None:
            self._push((way[0] * step, way[1] * step))
        else:
            board.shove(-way[0] * _SHOVE_PX, way[1] * _SHOVE_PX)

    def _push(self, by: XY) -> None:
        """Push the held wall on from where it stands now."""
        board, desk = self._board, self._board.desk
        if board.gesture is None and desk.held is not None:
            board.gesture, self._pushed = Move(desk, desk.held, (0.0, 0.0)), (0.0, 0.0)
            self.pushing = True
        if isinstance(board.gesture, Move) and self.pushing:
            self._pushed = (self._pushed[0] + by[0], self._pushed[1] + by[1])
            exact = Grip(desk.project.habits.tape.step_mm, 0.0, free=True)
            board.gesture.shift(self._pushed, exact)

    def _move_cross(self, way: XY, step: float) -> None:
        """Move the cross a step, or with none to the next line in its way."""
        board, desk = self._board, self._board.desk
        if self.cross is None:
            return
        lines = guides(desk.project.room, footprints(desk.project.walls))
        on = next_along(self.cross, way, lines) if step == 0.0 else None
        if step == 0.0 and on is None:
            return
        wanted = on.point if on else (self.cross[0] + way[0] * step, self.cross[1] + way[1] * step)
        self.cross = inside(desk.project, wanted)
        if isinstance(board.gesture, Draw):
            board.gesture.pull(self.cross, self._exact())
        else:
            self._say_cross(desk.project, on_told(on.on, desk.wording) if on else "")

    def _say_cross(self, project: Project, on: str) -> None:
        """Where the cross is: from the left eave wall and from the start of the room."""
        if self.cross is None:
            return
        desk, tape = self._board.desk, project.habits.tape
        across, along = (tape.text_with_unit(mm) for mm in self.cross)
        said = desk.wording.say(message("plan.cross-at", across=across, along=along))
        desk.said.emit(f"{said}, {on}" if on else said)

    def _exact(self) -> Grip:
        return Grip(self._board.desk.project.habits.tape.step_mm, _NEAR)

    def _hold_next(self, way: int) -> None:
        """Hold the next wall in the order of the list, then what is there already."""
        desk = self._board.desk
        letters = plan_keys(desk.project)
        if letters:
            at = letters.index(desk.held or "") if desk.held in letters else -1 if way > 0 else 0
            desk.hold(letters[(at + way) % len(letters)])
