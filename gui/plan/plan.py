"""The plan of the room: it shows the room from above and lets the person draw and hold walls."""

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import (
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
)

from core.wording import message
from gui.desk import Desk
from gui.pace import Pace
from gui.plan import chalk
from gui.plan.drawing import Draw, Tool
from gui.plan.gestures import Gesture
from gui.plan.keyboard import PlanKeys
from gui.plan.measuring import PlanMeasuring
from gui.plan.pointer import PlanPointer
from gui.plan.sight import PlanSight
from gui.sketcher.layers import Layers, Scene
from gui.sketcher.paper_view import PaperView
from gui.sketcher.wheel import place
from gui.theme import Theme

_PAUSE_MS = 120
"""Between two times that the rest of the window hears of what is being dragged."""


class Plan(PaperView):
    """The room on one sheet of paper; what is done with it goes to the desk."""

    armed_changed = Signal(object)

    def __init__(self, desk: Desk, theme: Theme) -> None:
        self._sight = PlanSight(desk)
        super().__init__(theme, self._sight)
        self.desk = desk
        self.armed: Tool | None = None
        self.gesture: Gesture | None = None
        self._layers = Layers()
        self._pointer = PlanPointer(self)
        self._keys = PlanKeys(self)
        self._pace = Pace(self._preview, _PAUSE_MS, self)
        self._space = False
        self.measuring = PlanMeasuring(desk, self, self.density)
        self.measuring.field.closed.connect(self._typed)
        desk.changed.connect(self._on_changed)
        desk.held_changed.connect(self.update)
        self._on_changed()

    @property
    def busy(self) -> bool:
        """Whether something is under way, so that an Escape would take it back."""
        return self.gesture is not None or self.armed is not None

    def arm(self, tool: Tool | None) -> None:
        """Begin what the tool draws with the next press wherever it is, or leave it."""
        if tool is None:
            self._keys.drop_cross()
        if self.armed is not tool:
            self.armed = tool
            self.armed_changed.emit(tool)
        if tool is not None:
            self.setFocus()
            self.desk.said.emit(self.desk.wording.word(f"plan.draw-{tool.value}-here"))
        self.update()

    def end(self, *, keep: bool) -> None:
        """End what is under way: kept as one edit, or taken back."""
        gesture, self.gesture = self.gesture, None
        self.arm(None)
        if gesture is not None and keep:
            gesture.release()
        elif gesture is not None:
            gesture.drop()
        self._refresh()

    def scene(self) -> Scene:
        """What the plan shows, without the chalk."""
        project = self.gesture.project if self.gesture else self.desk.project
        drawing = self._sight.drawing(project, self.density)
        return Scene(drawing, self.camera, self._ink, self.size(), self.devicePixelRatioF())

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802, ARG002
        painter = QPainter(self)
        scene = self.scene()
        self._layers.paint(painter, scene, live=self.gesture is not None)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._chalk(painter, scene)
        painter.end()

    def mousePressEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        if self._pointer.pressed:
            return
        self._keys.settle()
        self._lay()
        pos, left = place(event.position()), event.button() is Qt.MouseButton.LeftButton
        free = left and not self._space and not self.busy
        if free and not self._pointer.on_handle(pos) and self.measuring.press(pos):
            return
        if self._keys.cross is not None:
            self._take_over()
        if event.button() is Qt.MouseButton.MiddleButton or (left and self._space):
            self._pointer.press_paper(pos)
        elif left:
            copy = bool(event.modifiers() & Qt.KeyboardModifier.ControlModifier)
            self._pointer.press(pos, copy=copy)
        self._refresh()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        pos = place(event.position())
        if self.measuring.field.isVisible():
            return
        free = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        idle = not self._pointer.pressed and not self.busy
        other = idle and self.measuring.point(pos)
        before = self._pointer.hover
        self._pointer.move(pos, free=free)
        if self.gesture is not None:
            self._pace.ask()
        if other or self.gesture is not None or before != self._pointer.hover:
            self.update()
        self._point()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        if event.buttons() & (Qt.MouseButton.LeftButton | Qt.MouseButton.MiddleButton):
            return
        self._pointer.release()
        if self.gesture is not None and not self.measuring.field.isVisible():
            self.end(keep=True)
        self._refresh()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        key = self._pointer.thing_at(place(event.position()))
        if key is not None and key[:1].isupper() and not self.busy:
            self._pointer.release()
            self.desk.show_wall(key)

    def leaveEvent(self, event: QEvent) -> None:  # noqa: N802
        super().leaveEvent(event)
        self._pointer.leave()
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:  # noqa: N802
        super().focusOutEvent(event)
        self._space = False
        self._keys.settle()
        self.update()

    def event(self, event: QEvent) -> bool:
        if event.type() is QEvent.Type.ShortcutOverride and (self.busy or self._pointer.pressed):
            # An undo in the middle of a drag would pull the wall from under it.
            event.accept()
            return True
        if event.type() is QEvent.Type.KeyPress and isinstance(event, QKeyEvent):
            tab = event.key() == Qt.Key.Key_Tab and not self.busy
            self._lay()
            # Tab goes to the figures of the wall held before it leaves the plan.
            if tab and self.desk.held is not None and self.measuring.begin():
                return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        digit = (
            event.text().isdecimal() and not event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
        )
        if event.key() == Qt.Key.Key_Escape:
            self._escape()
        elif (digit and self._type(event.text())) or self._pointer.pressed:
            return
        elif event.key() == Qt.Key.Key_Space:
            self._space = True
        elif not self._keys.press(event):
            super().keyPressEvent(event)
        self._refresh()

    def keyReleaseEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        if event.key() == Qt.Key.Key_Space and not event.isAutoRepeat():
            self._space = False
        self._keys.release(event)
        self._refresh()

    def _escape(self) -> None:
        """Take back what is being done; else let go of what is held."""
        was = self.busy or self._pointer.pressed
        self._pointer.release()
        if self.busy:
            self.end(keep=False)
        elif not was:
            self.desk.hold(None)

    def _take_over(self) -> None:
        """The pointer draws on instead of the cross."""
        tool = self.armed
        if self.gesture is not None:
            self.end(keep=False)
        self._keys.drop_cross()
        self.arm(tool)

    def _type(self, text: str) -> bool:
        """A digit begins a length: of the wall being drawn, or of the one held."""
        draw = self.gesture
        self._lay()
        if draw is None:
            return self.armed is None and self.measuring.begin(text)
        if not isinstance(draw, Draw) or not self.measuring.figures:
            return False
        self.measuring.open(self.measuring.figures[0], lambda to: self._finish(draw, to))
        self.measuring.field.begin(text)
        return True

    def _finish(self, draw: Draw, to: float) -> None:
        """The wall being drawn gets the length that was typed, and is done."""
        draw.set_length(to)
        if self.gesture is draw:
            self.end(keep=True)

    def _typed(self) -> None:
        """The field is closed: a wall that was being drawn by the pointer is let go of."""
        if self.gesture is not None and self._keys.cross is None:
            self.end(keep=False)

    def _preview(self) -> None:
        """Lets the list of walls and the cautions follow what is dragged."""
        if self.gesture is not None and self.gesture.project != self.desk.project:
            self.desk.preview(self.gesture.project)

    def _on_changed(self) -> None:
        words = self.desk.wording
        if not self.busy:
            self._sight.follow(self._size(), self.density)
        self.setAccessibleName(words.say(message("plan.name", count=len(self.desk.project.walls))))
        self.update()

    def _refresh(self) -> None:
        self._point()
        self.update()

    def _point(self) -> None:
        """Give the pointer the shape of what it can do here."""
        shape = Qt.CursorShape.CrossCursor
        if self._pointer.panning:
            shape = Qt.CursorShape.ClosedHandCursor
        elif self._space:
            shape = Qt.CursorShape.OpenHandCursor
        elif self.measuring.over is not None and not self.busy:
            shape = Qt.CursorShape.IBeamCursor
        elif self._pointer.hover is not None and not self.armed:
            shape = Qt.CursorShape.SizeAllCursor
        self.setCursor(shape)

    def _lay(self) -> None:
        """Settles which wall's figures stand where."""
        gesture = self.gesture
        project = gesture.project if gesture else self.desk.project
        self.measuring.look(project, gesture.key if gesture else self.desk.held, self.camera)

    def _chalk(self, painter: QPainter, scene: Scene) -> None:
        gesture, held, hover = self.gesture, self.desk.held, self._pointer.hover
        project = gesture.project if gesture else self.desk.project
        key = gesture.key if gesture else held
        if hover is not None and hover != key:
            chalk.paint_wall(painter, project, hover, scene, 0.10)
        if key is not None:
            chalk.paint_wall(painter, project, key, scene, 0.24)
            chalk.paint_handles(painter, self._pointer.handles(), scene)
        self._lay()
        self.measuring.paint(painter, self._ink)
        if self._keys.cross is not None:
            chalk.paint_cross(painter, self._keys.cross, scene)
        if not project.walls and not self.busy:
            chalk.paint_advice(painter, project.room, self.desk.wording, scene)
