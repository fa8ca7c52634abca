"""A part on its way from the tray to the wall: carried by pointer or keys, set down or left."""

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPen

from core.framing.moving import Grip
from core.wording import message
from gui.desk import Desk
from gui.sketcher.camera import XY, Camera
from gui.sketcher.ghosts import Ghost, Part, ghost_at, start_of
from gui.sketcher.paint import Ink, polygon
from gui.sketcher.pulls import grip_of, step_of

_ARROWS = {
    int(Qt.Key.Key_Left): (-1, 0),
    int(Qt.Key.Key_Right): (1, 0),
    int(Qt.Key.Key_Up): (0, 1),
    int(Qt.Key.Key_Down): (0, -1),
}

_LARGER = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier

_BAR = 5.0
"""How high the bar is that shows where on the floor an opening can go, px."""


class Placing:
    """The part that is carried, and its ghost where it is now."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk
        self._at: XY = (0.0, 0.0)
        self.part: Part | None = None
        self.ghost: Ghost | None = None

    @property
    def active(self) -> bool:
        """Whether a part is being carried."""
        return self.part is not None

    def begin(self, part: Part) -> None:
        """Takes a part from the tray; it shows in the middle of the wall until it is moved."""
        desk = self._desk
        if desk.result is None:
            return
        if desk.result.frame is None:
            letter = desk.result.wall.letter
            desk.said.emit(desk.wording.say(message("ghost.no-frame", letter=letter)))
            return
        desk.hold(None)
        self.part = part
        self._at = start_of(desk.project, desk.result, part)
        self._show(Grip(desk.project.habits.tape.step_mm, 0.0))
        what = message(f"part.{part.value}")
        desk.said.emit(desk.wording.say(message("ghost.carry", what=what)))

    def move(self, pos: XY, camera: Camera, *, free: bool) -> None:
        """The pointer carries it here, px."""
        self._at = camera.to_model(pos)
        self._show(grip_of(self._desk.project.habits.tape, camera.scale, free=free))
        self._say()

    def press(self, event: QKeyEvent) -> bool:
        """Arrow keys move it, Enter sets it down, Escape leaves it; no other key does anything."""
        key = event.key()
        if key in _ARROWS:
            large = bool(event.modifiers() & _LARGER)
            self._push(_ARROWS[key], large=large)
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.set_down()
        elif key == Qt.Key.Key_Escape:
            self.leave()
            self._desk.said.emit("")
        return True

    def set_down(self) -> bool:
        """Sets it down as one edit and holds it; where it cannot stand it is still carried."""
        ghost, desk = self.ghost, self._desk
        if ghost is None or self.part is None or ghost.project is None:
            self._say()
            return False
        text = desk.wording.word(f"undo.add-{self.part.value}")
        self.leave()
        desk.commit(text, ghost.project)
        if desk.project != ghost.project:
            # The step would spoil what is cut: the person is asked, and may make it all the same.
            return False
        desk.hold(ghost.key)
        desk.said.emit(desk.wording.say(ghost.said))
        return True

    def leave(self) -> None:
        """Puts it back into the tray."""
        self.part = self.ghost = None

    def follow(self) -> None:
        """The wall has changed: what is carried is shown against it as it is now."""
        result = self._desk.result
        if result is None or result.frame is None:
            self.leave()
        elif self.part is not None:
            self._show(Grip(self._desk.project.habits.tape.step_mm, 0.0, free=True))

    def paint(self, painter: QPainter, camera: Camera, ink: Ink) -> None:
        """The part at its true size: in chalk where it can stand, as a warning where it cannot."""
        if self.ghost is None:
            return
        theme = ink.theme
        self._room(painter, camera, theme.chalk)
        tone = theme.chalk if self.ghost.project is not None else theme.warning
        line = QPen(tone, 2.0)
        line.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        if self.ghost.project is None:
            line.setDashPattern([4.0, 2.0])
        wash = QColor(tone)
        wash.setAlphaF(0.22)
        painter.setPen(line)
        painter.setBrush(wash)
        painter.drawPolygon(polygon(self.ghost.outline, camera))

    def _room(self, painter: QPainter, camera: Camera, chalk: QColor) -> None:
        """Bars on the floor that tell where an opening can go."""
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(chalk)
        for low, high in self.ghost.room if self.ghost else ():
            left, floor = camera.to_screen((low, 0.0))
            right, _ = camera.to_screen((high, 0.0))
            painter.drawRect(QRectF(QPointF(left, floor), QPointF(right, floor + _BAR)))

    def _push(self, way: tuple[int, int], *, large: bool) -> None:
        tape = self._desk.project.habits.tape
        step = step_of(tape, large=large)
        self._at = self._at[0] + way[0] * step, self._at[1] + way[1] * step
        self._show(Grip(tape.step_mm, 0.0, free=True))
        self._say()

    def _show(self, grip: Grip) -> None:
        desk = self._desk
        if self.part is not None and desk.result is not None:
            self.ghost = ghost_at(desk.project, desk.result, self.part, self._at, grip)

    def _say(self) -> None:
        if self.ghost is not None:
            self._desk.said.emit(self._desk.wording.say(self.ghost.said))
