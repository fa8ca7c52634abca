"""The sheet of paper in the window: it shows a wall and lets the person take hold of it."""

from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import (
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
)
from PySide6.QtWidgets import QWidget

from core.wording import message
from gui.desk import Desk
from gui.sketcher import cursors
from gui.sketcher.camera import XY
from gui.sketcher.chalking import Over
from gui.sketcher.ghosts import Part
from gui.sketcher.keyboard import Keys
from gui.sketcher.layers import Layers, Scene
from gui.sketcher.measuring import Measuring
from gui.sketcher.overlay import paint_note
from gui.sketcher.paper_view import PaperView
from gui.sketcher.placing import Placing
from gui.sketcher.pointer import Pointer
from gui.sketcher.pointing import Rest, told_in_line
from gui.sketcher.sight import Sight
from gui.sketcher.wheel import place
from gui.sketcher.words import sheet_name, why_bare
from gui.theme import Theme

_NO_MODIFIER = Qt.KeyboardModifier.NoModifier

_MORE = Qt.KeyboardModifier.ShiftModifier | Qt.KeyboardModifier.ControlModifier
"""With one of these a click takes hold of one thing more, or lets go of one."""


class Sheet(PaperView):
    """One wall on one sheet of paper; what is done with it goes to the desk."""

    def __init__(self, desk: Desk, theme: Theme, parent: QWidget | None = None) -> None:
        self._sight = Sight(desk)
        super().__init__(theme, self._sight, parent)
        self.desk = desk
        self._layers = Layers()
        self._pointer = Pointer(self)
        self._keys = Keys(self)
        self.measuring = Measuring(desk, self, self.density)
        self.placing = Placing(desk)
        self.rest = Rest(self)
        self._over = Over(desk, self._pointer, self.measuring, self.placing, self.rest)
        self._space = self._struck = False
        desk.changed.connect(self._on_changed)
        desk.held_changed.connect(self._on_held)
        self.rest.rested.connect(self.update)
        self._on_changed()

    @property
    def busy(self) -> bool:
        """Whether something is being dragged or pushed, so that an Escape would take it back."""
        return self._pointer.drag is not None or self._keys.nudge is not None

    def take_part(self, part: Part) -> None:
        """Take a part from the tray: keys or pointer carry it over the wall."""
        self.placing.begin(part)
        self.setFocus()
        self._refresh()

    def carry(self, pos: XY, *, free: bool = False) -> None:
        """The pointer carries a part here, px."""
        self.placing.move(pos, self.camera, free=free)
        self.update()

    def set_down(self) -> None:
        """Set down the part that is carried, where it can stand."""
        self.placing.set_down()
        self._refresh()

    def leave_part(self) -> None:
        """Put the part that is carried back into the tray."""
        self.placing.leave()
        self._refresh()

    def scene(self) -> Scene:
        """What the sheet shows, without the chalk."""
        drawing = self._sight.drawing(self.density)
        ratio, under = self.devicePixelRatioF(), self._sight.under()
        return Scene(drawing, self.camera, self._ink, self.size(), ratio, under)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802, ARG002
        painter = QPainter(self)
        scene = self.scene()
        self._layers.paint(painter, scene, live=self.busy)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        result = self.desk.result
        if result is None or result.frame is None:
            paint_note(painter, self.rect(), why_bare(self.desk), self._ink)
        else:
            self._over.paint(painter, scene, result)
        painter.end()

    def mousePressEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        if self._pointer.pressed:
            return
        self._keys.settle()
        self.rest.move(None, (0.0, 0.0))
        if self.placing.active and event.button() is Qt.MouseButton.LeftButton:
            self.carry(place(event.position()), free=_free(event))
            self.set_down()
            return
        left = event.button() is Qt.MouseButton.LeftButton
        self._struck = left and not self._space and bool(self.measuring.at(place(event.position())))
        if self._struck:
            self._pointer.press_figure(place(event.position()))
            return
        middle = event.button() is Qt.MouseButton.MiddleButton
        if middle or (self._space and event.button() is Qt.MouseButton.LeftButton):
            self._pointer.press_paper(place(event.position()))
        elif event.button() is Qt.MouseButton.LeftButton:
            more = bool(event.modifiers() & _MORE)
            self._pointer.press(place(event.position()), more=more)
            self._tell_several()
        self._refresh()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        free = _free(event)
        if self.placing.active and not self._pointer.pressed:
            self.carry(place(event.position()), free=free)
            return
        before, pos = self._pointer.hover, place(event.position())
        self._pointer.move(pos, free=free)
        idle = not self._pointer.pressed
        other = idle and self.measuring.point(pos)
        if other or self._pointer.band or before != self._pointer.hover:
            self.update()
        self.rest.move(self._pointer.hover if idle and not self.measuring.over else None, pos)
        self._point()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        if event.buttons() & (Qt.MouseButton.LeftButton | Qt.MouseButton.MiddleButton):
            return
        struck, self._struck = self._struck and not self._pointer.pulling, False
        banding = self._pointer.band is not None
        self._pointer.release()
        if banding:
            self._tell_several()
        elif struck:
            self.measuring.press(place(event.position()))
        self._refresh()

    def leaveEvent(self, event: QEvent) -> None:  # noqa: N802
        super().leaveEvent(event)
        self._pointer.leave()
        self.rest.move(None, (0.0, 0.0))
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:  # noqa: N802
        super().focusOutEvent(event)
        self._space = False
        self._keys.settle()
        self.update()

    def event(self, event: QEvent) -> bool:
        if event.type() is QEvent.Type.ShortcutOverride and (
            self.busy or self._pointer.pressed or self.placing.active
        ):
            # An undo in the middle of a drag would pull the wall from under it.
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        if self.placing.active and not self._pointer.pressed:
            self.placing.press(event)
        elif event.key() == Qt.Key.Key_Escape:
            self._escape()
        elif self._pointer.pressed:
            return
        elif event.key() == Qt.Key.Key_Space:
            self._space = True
        elif self._types(event):
            return
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
        if not (self._pointer.escape() or self._keys.escape()):
            self.desk.hold(None)

    def _types(self, event: QKeyEvent) -> bool:
        """Whether a key opens a figure of what is held: Enter as it is, a digit with that digit."""
        plain = event.modifiers() in (_NO_MODIFIER, Qt.KeyboardModifier.KeypadModifier)
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            return self.measuring.begin()
        return plain and event.text().isdecimal() and self.measuring.begin(event.text())

    def _tell_several(self) -> None:
        """Say how many things are held, if it is more than one."""
        if self.desk.also:
            count = message("held.several", count=len(self.desk.holding))
            self.desk.said.emit(self.desk.wording.say(message("held.several-held", what=count)))

    def _on_held(self) -> None:
        """Say to screen readers what is held."""
        result, held = self.desk.result, self.desk.held
        line = told_in_line(result, held, self.desk.wording) if result and held else ""
        self.setAccessibleDescription(line)
        self.update()

    def _on_changed(self) -> None:
        self.placing.follow()
        if not self.busy:
            self._sight.follow(self._size(), self.density)
        self.setAccessibleName(sheet_name(self.desk))
        self.update()

    def _refresh(self) -> None:
        self._point()
        self.update()

    def _point(self) -> None:
        """Give the pointer the shape of what it can do here."""
        result, project = self.desk.result, self.desk.project
        drag = self._pointer.drag
        if self._pointer.panning:
            shape = Qt.CursorShape.ClosedHandCursor
        elif self._space:
            shape = Qt.CursorShape.OpenHandCursor
        elif self.placing.active:
            shape = Qt.CursorShape.ClosedHandCursor
        elif self.measuring.over and not drag:
            shape = Qt.CursorShape.IBeamCursor
        else:
            shape = cursors.over(project, result, drag.key if drag else self._pointer.hover)
        self.setCursor(shape)


def _free(event: QMouseEvent) -> bool:
    """Whether a move is to snap to nothing."""
    return bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
