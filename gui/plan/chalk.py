"""What is drawn over the plan in chalk: the wall at hand, its handles, the cross, advice."""

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from core.drawing.plan_ground import corners
from core.drawing.plan_roof import outline
from core.model import Project, Room
from core.wording import Wording
from gui.edits.floor import ground_of
from gui.plan.handles import Grasp, Handle
from gui.sketcher.camera import TEXT_MM, XY
from gui.sketcher.extent import pixels
from gui.sketcher.fonts import font
from gui.sketcher.layers import Scene
from gui.sketcher.paint import polygon

_HANDLE = 4.5
"""Half the size of a handle, px."""

_SLIP = 20.0
"""The least width of the slip with advice, in heights of its letters."""

_CROSS = 11.0
"""Half the size of the cross, px."""


def paint_wall(painter: QPainter, project: Project, letter: str, scene: Scene, wash: float) -> None:
    """What stands under a key outlined, and washed with chalk as strongly as `wash` says."""
    ground = ground_of(project, letter)
    if ground is None:
        return
    chalk = scene.ink.theme.chalk
    thin = QColor(chalk)
    thin.setAlphaF(wash)
    painter.setPen(QPen(chalk, 2.0, j=Qt.PenJoinStyle.MiterJoin))
    painter.setBrush(thin)
    painter.drawPolygon(polygon(corners(ground), scene.camera))


def paint_handles(painter: QPainter, found: tuple[Handle, ...], scene: Scene) -> None:
    """Squares that lengthen, round knobs that turn."""
    painter.setPen(QPen(scene.ink.theme.paper, 1.5))
    painter.setBrush(scene.ink.theme.chalk)
    for handle in found:
        (x, y), half = handle.pos, _HANDLE
        rect = QRectF(x - half, y - half, 2 * half, 2 * half)
        if handle.grasp is Grasp.LENGTHEN:
            painter.drawRect(rect)
        else:
            painter.drawEllipse(rect)


def paint_cross(painter: QPainter, at: XY, scene: Scene) -> None:
    """The cross at a plan point (mm): where a wall begins or ends next."""
    x, y = scene.camera.to_screen(at)
    painter.setPen(QPen(scene.ink.theme.chalk, 2.0))
    painter.drawLine(QPointF(x - _CROSS, y), QPointF(x + _CROSS, y))
    painter.drawLine(QPointF(x, y - _CROSS), QPointF(x, y + _CROSS))


def paint_advice(painter: QPainter, room: Room, wording: Wording, scene: Scene) -> None:
    """What to do next, written in the middle of an empty room."""
    size = pixels(TEXT_MM * 1.15, scene.ink.density)
    painter.setFont(font(size))
    # A small room is narrower than what is to be said of it; the paper never is.
    floor: QRectF = polygon(outline(room), scene.camera).boundingRect()
    paper = QRectF(0.0, 0.0, float(scene.size.width()), float(scene.size.height()))
    rect = QRectF(0.0, 0.0, max(floor.width(), _SLIP * size), paper.height())
    rect.moveCenter(floor.center())
    inside = (rect & paper).adjusted(size, size, -size, -size)
    flags = Qt.AlignmentFlag.AlignCenter.value | Qt.TextFlag.TextWordWrap.value
    text = wording.word("plan.empty")
    slip = painter.boundingRect(inside, flags, text).adjusted(-size, -size / 2, size, size / 2)
    painter.setPen(QPen(scene.ink.theme.chalk, 1.0))
    painter.setBrush(scene.ink.theme.paper)
    painter.drawRoundedRect(slip, 3.0, 3.0)
    painter.setPen(scene.ink.theme.ink)
    painter.drawText(inside, flags, text)
