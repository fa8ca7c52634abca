"""The slip of paper that a figure to be typed over stands on, in chalk."""

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from gui.sketcher.camera import Rect
from gui.sketcher.paint import Ink

_ROUND = 3.0


def paint_slip(painter: QPainter, slip: Rect, text: str, ink: Ink, *, struck: bool) -> None:
    """A slip (px) with its figure; the one under the pointer is chalk with the figure left out."""
    chalk, paper = ink.theme.chalk, ink.theme.paper
    left, low, right, high = slip
    rect = QRectF(left, low, right - left, high - low)
    painter.setPen(QPen(chalk, 1.0))
    painter.setBrush(chalk if struck else paper)
    painter.drawRoundedRect(rect, _ROUND, _ROUND)
    painter.setPen(paper if struck else chalk)
    painter.drawText(rect, Qt.AlignmentFlag.AlignCenter, text)
