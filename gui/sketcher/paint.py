"""Elements of the neutral drawing, painted with Qt."""

import math
from collections.abc import Iterable
from functools import lru_cache
from itertools import pairwise

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QBrush, QPainter, QPen, QPolygonF, QStaticText

from core.drawing import Align, Element, Fill, Pen, Stroke, Text
from core.drawing.dimension import dimension_parts
from core.drawing.typeface import ascent, cap_height
from gui.sketcher.camera import XY, Camera
from gui.sketcher.extent import pixels
from gui.sketcher.fonts import font
from gui.theme import Look, Theme


class Ink:
    """A theme's pens and brushes at `density` px for each mm on paper."""

    def __init__(self, theme: Theme, density: float) -> None:
        self.theme = theme
        self.density = density
        self.lines = {pen: _line(theme.looks[pen], density) for pen in Pen}
        self.outlines = {pen: _outline(line) for pen, line in self.lines.items()}
        self.fills = {pen: QBrush(theme.looks[pen].fill) for pen in Pen}
        self.texts = {pen: QPen(theme.looks[pen].text) for pen in Pen}


def paint(painter: QPainter, elements: Iterable[Element], camera: Camera, ink: Ink) -> None:
    """Paint elements in their order; the painter counts px as the camera does."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for element in elements:
        if isinstance(element, Stroke):
            _stroke(painter, element, camera, ink)
        elif isinstance(element, Fill):
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(ink.fills[element.pen])
            painter.drawPolygon(polygon(element.outline, camera))
        elif isinstance(element, Text):
            _text(painter, element, camera, ink)
        else:
            paint(painter, dimension_parts(element, camera.scale / ink.density), camera, ink)


def polygon(points: Iterable[XY], camera: Camera) -> QPolygonF:
    """Model points as a polygon in px."""
    x, y, scale = camera.x, camera.y, camera.scale
    return QPolygonF([QPointF(x + scale * a, y - scale * b) for a, b in points])


def _stroke(painter: QPainter, stroke: Stroke, camera: Camera, ink: Ink) -> None:
    """A line, corner by corner where it can be: that costs a tenth of a path as a whole."""
    line = ink.lines[stroke.pen]
    points = [QPointF(*camera.to_screen(point)) for point in stroke.points]
    if len(points) == 2:
        painter.setPen(line)
        painter.drawLine(*points)
    elif not stroke.closed:
        painter.setPen(line)
        painter.drawPolyline(points)
    elif line.style() is Qt.PenStyle.SolidLine:
        painter.setPen(ink.outlines[stroke.pen])
        for start, end in pairwise((*points, points[0])):
            painter.drawLine(start, end)
    else:
        painter.setPen(line)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPolygon(points)


def _text(painter: QPainter, text: Text, camera: Camera, ink: Ink) -> None:
    size = pixels(text.size, ink.density)
    laid, width = _laid(text.text, size, text.bold, text.narrow)
    left = {Align.START: 0.0, Align.MIDDLE: -width / 2, Align.END: -width}[text.align]
    top = cap_height(float(size)) / 2 if text.middle else 0.0
    x, y = camera.to_screen(text.at)
    painter.setPen(ink.texts[text.pen])
    painter.setFont(font(size, bold=text.bold, narrow=text.narrow))
    corner = QPointF(left, top - _baseline(size))
    if text.angle == 0.0:
        painter.drawStaticText(corner + QPointF(x, y), laid)
        return
    painter.save()
    painter.translate(x, y)
    painter.rotate(-math.degrees(text.angle))
    painter.drawStaticText(corner, laid)
    painter.restore()


@lru_cache(maxsize=4096)
def _laid(text: str, size: int, bold: bool, narrow: bool) -> tuple[QStaticText, float]:
    """A line of text laid out once, and its width in px."""
    made = QStaticText(text)
    made.setTextFormat(Qt.TextFormat.PlainText)
    made.setPerformanceHint(QStaticText.PerformanceHint.AggressiveCaching)
    made.prepare(font=font(size, bold=bold, narrow=narrow))
    return made, made.size().width()


@lru_cache(maxsize=64)
def _baseline(size: int) -> float:
    """How far under the upper edge of a laid-out line its letters stand, px."""
    return ascent(float(size))


def _line(look: Look, density: float) -> QPen:
    """The pen for lines: cut off at their ends, so that ticks are as long as they say."""
    line = QPen(look.line, look.weight * density)
    line.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    line.setCapStyle(Qt.PenCapStyle.FlatCap)
    if look.dash:
        line.setDashPattern(list(look.dash))
    return line


def _outline(line: QPen) -> QPen:
    """The same pen reaching half its weight past the ends, so that sides close at the corners."""
    closing = QPen(line)
    closing.setCapStyle(Qt.PenCapStyle.SquareCap)
    return closing
