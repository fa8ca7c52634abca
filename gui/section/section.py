"""The section of the room: it shows the room cut across and lets the person shape it."""

from itertools import pairwise

from PySide6.QtCore import QEvent, QPointF, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QMouseEvent, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from core.wording import message
from gui import sizes
from gui.desk import Desk
from gui.edits.shaping import remove_part
from gui.section.gestures import Shaping, undo_text
from gui.section.handles import Ways, handles
from gui.section.numbers import is_missing, told
from gui.section.sight import SectionSight
from gui.section.spot import Spot
from gui.section.typing_over import TypingOver
from gui.section.under import handle_under, number_under, numbers
from gui.sizes import scaled
from gui.sketcher.camera import XY, Camera
from gui.sketcher.paint import Ink, paint
from gui.sketcher.pulls import grip_of
from gui.sketcher.wheel import place
from gui.theme import Theme

LEAST = 230
"""The least height at which the figures of a usual roof find their room, px."""

START_PX = 3.0
"""A press becomes a pull only when the pointer has gone this far."""

_SHAPES = {
    Ways.UP: Qt.CursorShape.SizeVerCursor,
    Ways.ACROSS: Qt.CursorShape.SizeHorCursor,
    Ways.BOTH: Qt.CursorShape.SizeAllCursor,
}


class SectionView(QWidget):
    """The room cut across on one sheet of paper; what is done with it goes to the desk."""

    def __init__(self, desk: Desk, theme: Theme) -> None:
        super().__init__()
        self.desk, self.theme = desk, theme
        self._ink = Ink(theme, self.density)
        self._sight = SectionSight(desk)
        self._spots: dict[str, Spot] = {}
        self._down: XY | None = None
        self._hover: str | None = None
        self._number: str | None = None
        self.shaping: Shaping | None = None
        self.typing: TypingOver | None = None
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self.setAccessibleName(desk.wording.word("section.name"))
        desk.changed.connect(self._on_changed)
        self._on_changed()

    @property
    def density(self) -> float:
        """px for each mm on paper."""
        return sizes.density(self)

    @property
    def camera(self) -> Camera:
        """How the section is looked at."""
        return self._sight.camera

    @property
    def lively(self) -> str | None:
        """The key of the handle under the pointer, or being pulled or pushed."""
        return self.shaping.key if self.shaping else self._hover

    @property
    def busy(self) -> bool:
        """Whether a handle is being pulled or pushed."""
        return self.shaping is not None

    def spot(self, key: str) -> Spot:
        """The handle with this key; KeyError where the section has none."""
        return self._spots[key]

    def place_of(self, key: str) -> QPointF:
        """Where a handle stands, px."""
        handle = next(h for h in handles(self.desk.project.room) if h.key == key)
        return QPointF(*self.camera.to_screen(handle.at))

    def number_rect(self, key: str) -> QRect:
        """Where a number is written, px; an empty rectangle where it is not."""
        drawing = self._sight.drawing(self.density)
        return numbers(drawing, self.camera, self.density).get(key, QRect())

    def set_theme(self, theme: Theme) -> None:
        """Draws by day or by night."""
        self.theme, self._ink = theme, Ink(theme, self.density)
        self.update()

    def push(self, key: str, way: int, *, across: bool, large: bool) -> None:
        """Pushes a handle one step; a run of pushes is one edit."""
        if self.shaping is None or self.shaping.key != key:
            self.settle()
            self.shaping = Shaping(self.desk, key)
        self.shaping.push(way, across=across, large=large)
        self.update()

    def settle(self) -> None:
        """Makes what was pulled or pushed one edit."""
        shaping, self.shaping, self._down = self.shaping, None, None
        if shaping is not None:
            shaping.release()
            self._on_changed()

    def take_back(self) -> bool:
        """Takes back what is being pulled or pushed; False if nothing is."""
        shaping, self.shaping, self._down = self.shaping, None, None
        if shaping is None:
            return False
        shaping.drop()
        self._on_changed()
        return True

    def remove(self, key: str) -> bool:
        """Takes a flat ceiling or a change of pitch away; False for what cannot go."""
        self.settle()
        project = remove_part(self.desk.project, key)
        if project is not None:
            self.desk.commit(undo_text(self.desk, key), project)
        return project is not None

    def type_over(self, key: str, text: str = "") -> None:
        """Opens a field over the number with this key."""
        self.settle()
        self._close_typing()
        rect = self.number_rect(key)
        if rect.isEmpty():
            rect = self._spots[key].geometry()
        self.typing = TypingOver(self.desk, key, self)
        self.typing.done.connect(self._typed)
        self.typing.open(rect, text)

    def sizeHint(self) -> QSize:  # noqa: N802
        return QSize(960, 640)

    def minimumSizeHint(self) -> QSize:  # noqa: N802
        return QSize(240, scaled(LEAST, self))

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802, ARG002
        painter = QPainter(self)
        painter.fillRect(self.rect(), self.theme.paper)
        paint(painter, self._sight.drawing(self.density), self.camera, self._ink)
        if self._number is not None:
            self._underline(painter, self.number_rect(self._number))
        painter.end()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802
        super().resizeEvent(event)
        self._close_typing()
        self._on_changed()

    def mousePressEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        if event.button() is not Qt.MouseButton.LeftButton:
            return
        self.settle()
        at = place(event.position())
        self._look_under(at)
        if self._hover is not None:
            self._spots[self._hover].setFocus(Qt.FocusReason.MouseFocusReason)
            self._down = at
        elif self._number is not None:
            self.type_over(self._number)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        at = place(event.position())
        if self._down is None or self._hover is None:
            self._look_under(at)
            return
        by = (at[0] - self._down[0], at[1] - self._down[1])
        if self.shaping is None and max(abs(by[0]), abs(by[1])) < START_PX:
            return
        self.shaping = self.shaping or Shaping(self.desk, self._hover)
        free = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        scale = self.camera.scale
        grip = grip_of(self.desk.project.habits.tape, scale, free=free)
        self.shaping.pull((by[0] / scale, -by[1] / scale), grip)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        if event.button() is Qt.MouseButton.LeftButton:
            self.settle()
            self._down = None

    def leaveEvent(self, event: QEvent) -> None:  # noqa: N802
        super().leaveEvent(event)
        if self._down is None:
            self._hover = self._number = None
            self.update()

    def _look_under(self, at: XY) -> None:
        """Notes what lies under the pointer, and gives the pointer the shape of what it can do."""
        before = (self._hover, self._number)
        handle = handle_under(self.desk.project.room, self.camera, at)
        drawing = self._sight.drawing(self.density)
        under = number_under(drawing, self.camera, self.density, at)
        self._hover = handle.key if handle else None
        self._number = under if handle is None else None
        if before == (self._hover, self._number):
            return
        plain = Qt.CursorShape.IBeamCursor if self._number else Qt.CursorShape.ArrowCursor
        self.setCursor(_SHAPES[handle.ways] if handle else plain)
        self.setToolTip(self._tip())
        self.update()

    def _tip(self) -> str:
        """What can be done with what lies under the pointer."""
        words, key = self.desk.wording, self._hover or self._number
        if key is None:
            return ""
        at = told(self.desk.project.room, key)
        if is_missing(self.desk.project.room, key):
            return words.say(message("section.put-in", at=at))
        return words.say(message("section.pull" if self._hover else "section.type", at=at))

    def _underline(self, painter: QPainter, rect: QRect) -> None:
        """A breath of chalk behind the number under the pointer."""
        wash = QRectF(rect)
        colour = self.theme.chalk
        painter.setOpacity(0.16)
        painter.fillRect(wash, colour)
        painter.setOpacity(1.0)

    def _typed(self) -> None:
        key = self.typing.key if self.typing else ""
        self._close_typing()
        if key in self._spots:
            self._spots[key].setFocus(Qt.FocusReason.OtherFocusReason)

    def _close_typing(self) -> None:
        typing, self.typing = self.typing, None
        if typing is not None:
            typing.done.disconnect(self._typed)
            typing.close_field()

    def _on_changed(self) -> None:
        if self.shaping is None:
            self._sight.follow((float(self.width()), float(self.height())), self.density)
        self._sight_spots()

    def _sight_spots(self) -> None:
        """Puts every handle where it stands now, and has the section painted."""
        room, words = self.desk.project.room, self.desk.wording
        found = handles(room)
        keys = [handle.key for handle in found]
        if keys != list(self._spots):
            self._renew(keys)
        for handle in found:
            at = QPointF(*self.camera.to_screen(handle.at))
            self._spots[handle.key].show_handle(handle, at, words.say(told(room, handle.key)))
        self.update()

    def _renew(self, keys: list[str]) -> None:
        """Makes the handles that the section has now, in the order in which Tab comes to them."""
        old = self._spots
        self._spots = {key: old.pop(key) if key in old else self._new_spot(key) for key in keys}
        for gone in old.values():
            gone.hide()
            gone.deleteLater()
        for before, after in pairwise(self._spots.values()):
            QWidget.setTabOrder(before, after)

    def _new_spot(self, key: str) -> Spot:
        spot = Spot(self, key, self)
        spot.clicked.connect(lambda: self.type_over(key))
        spot.setAccessibleDescription(self.desk.wording.word("section.keys"))
        spot.show()
        return spot
