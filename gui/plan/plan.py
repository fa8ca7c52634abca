"""The plan of the room: it shows the room from above and lets the person take hold of walls."""

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QResizeEvent, QWheelEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from core.wording import message
from gui.desk import Desk
from gui.plan.chalk import paint_advice, paint_held
from gui.plan.hit import wall_under
from gui.plan.sight import PlanSight
from gui.sketcher.camera import XY, Camera
from gui.sketcher.layers import Layers, Scene
from gui.sketcher.paint import Ink
from gui.sketcher.wheel import ZOOM, place, wheeled
from gui.theme import Theme

PICK_PX = 6.0
"""How near to a wall the pointer has to be."""


class Plan(QWidget):
    """The room on one sheet of paper; what is done with it goes to the desk."""

    def __init__(self, desk: Desk, theme: Theme) -> None:
        super().__init__()
        self.desk = desk
        self._ink = Ink(theme, self.density)
        self._sight = PlanSight(desk)
        self._layers = Layers()
        self.setMouseTracking(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        desk.changed.connect(self._on_changed)
        desk.held_changed.connect(self.update)
        self._on_changed()

    @property
    def density(self) -> float:
        """px for each mm on paper."""
        return self.logicalDpiX() / 25.4

    @property
    def camera(self) -> Camera:
        """How the room is looked at."""
        return self._sight.camera

    def set_theme(self, theme: Theme) -> None:
        """Draw by day or by night."""
        self._ink = Ink(theme, self.density)
        self.update()

    def look(self, camera: Camera) -> None:
        """Look at the room another way."""
        self._sight.look(camera)
        self.update()

    def fit(self) -> None:
        """Show the whole room, and go on doing so."""
        self._sight.fit(self._size(), self.density)
        self.update()

    def zoom_in(self) -> None:
        """Look one step nearer."""
        self._zoom(ZOOM)

    def zoom_out(self) -> None:
        """Look from one step farther away."""
        self._zoom(1 / ZOOM)

    def scene(self) -> Scene:
        """What the plan shows, without the chalk."""
        drawing = self._sight.drawing(self.density)
        return Scene(drawing, self.camera, self._ink, self.size(), self.devicePixelRatioF())

    def sizeHint(self) -> QSize:  # noqa: N802
        return QSize(960, 640)

    def minimumSizeHint(self) -> QSize:  # noqa: N802
        return QSize(240, 160)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802, ARG002
        painter = QPainter(self)
        scene = self.scene()
        self._layers.paint(painter, scene, live=False)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self.desk.held is not None:
            paint_held(painter, self.desk.project, self.desk.held, scene)
        if not self.desk.project.walls:
            paint_advice(painter, self.desk.project.room, self.desk.wording, scene)
        painter.end()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802
        super().resizeEvent(event)
        self._sight.follow(self._size(), self.density, resized=True)

    def mousePressEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        if event.button() is Qt.MouseButton.LeftButton:
            self.desk.hold(self._under(place(event.position())))

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        letter = self._under(place(event.position()))
        if letter is not None:
            self.desk.show_wall(letter)

    def wheelEvent(self, event: QWheelEvent) -> None:  # noqa: N802
        self.look(wheeled(self.camera, event))
        event.accept()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        held = self.desk.held
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and held is not None:
            self.desk.show_wall(held)
        else:
            super().keyPressEvent(event)

    def _under(self, pos: XY) -> str | None:
        point, reach = self.camera.to_model(pos), PICK_PX / self.camera.scale
        return wall_under(self.desk.project.walls, point, reach)

    def _zoom(self, factor: float) -> None:
        self.look(self.camera.zoomed(factor, (self.width() / 2, self.height() / 2)))

    def _on_changed(self) -> None:
        words = self.desk.wording
        self._sight.follow(self._size(), self.density)
        self.setAccessibleName(words.say(message("plan.name", count=len(self.desk.project.walls))))
        self.update()

    def _size(self) -> XY:
        return float(self.width()), float(self.height())
