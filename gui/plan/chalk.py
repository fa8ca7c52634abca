"""What is drawn over the plan in chalk: the wall held, and what to do in an empty room."""

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from core.drawing.plan_roof import outline
from core.drawing.plan_walls import wall_corners
from core.framing import Footprint
from core.model import Project, Room
from core.wording import Wording
from gui.sketcher.camera import TEXT_MM
from gui.sketcher.extent import pixels
from gui.sketcher.fonts import font
from gui.sketcher.layers import Scene
from gui.sketcher.paint import polygon


def paint_held(painter: QPainter, project: Project, letter: str, scene: Scene) -> None:
    """The held wall outlined and washed with chalk."""
    ground = Footprint.of(project.wall(letter))
    if ground is None:
        return
    chalk = scene.ink.theme.chalk
    wash = QColor(chalk)
    wash.setAlphaF(0.24)
    painter.setPen(QPen(chalk, 2.0, j=Qt.PenJoinStyle.MiterJoin))
    painter.setBrush(wash)
    painter.drawPolygon(polygon(wall_corners(ground), scene.camera))


def paint_advice(painter: QPainter, room: Room, wording: Wording, scene: Scene) -> None:
    """What to do next, written in the middle of an empty room."""
    rect: QRectF = polygon(outline(room), scene.camera).boundingRect()
    size = pixels(TEXT_MM * 1.2, scene.ink.density)
    painter.setPen(scene.ink.theme.faint)
    painter.setFont(font(size))
    inside = rect.adjusted(size, size, -size, -size)
    flags = Qt.AlignmentFlag.AlignCenter.value | Qt.TextFlag.TextWordWrap.value
    painter.drawText(inside, flags, wording.word("plan.empty"))
