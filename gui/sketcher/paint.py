"""Elements of the neutral drawing, painted with Qt."""

import math
from collections.abc import Callable, Iterable, Sequence
from functools import lru_cache
from itertools import pairwise

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QPainter, QPen, QPolygonF, QStaticText, QTransform

from core.drawing import Align, Element, Fill, Pen, Stroke, Text
from core.drawing.dimension import dimension_parts
from core.drawing.typeface import ascent, cap_height
from gui.sketcher.camera import XY, Camera
from gui.sketcher.extent import pixels
from gui.sketcher.fonts import font
from gui.theme import Look, Theme

_HATCH = 0.42
"""How strong the lines of the hatching are, of 1."""


class Ink:
    """A theme's pens and brushes at `density` px for each mm on paper."""

    def __init__(self, theme: Theme, density: float) -> None:
        self.theme = theme
        self.density = density
        self.lines = {pen: _line(theme.looks[pen], density) for pen in Pen}
        self.outlines = {pen: _outline(line) for pen, line in self.lines.items()}
        self.fills = {pen: QBrush(theme.looks[pen].fill) for pen in Pen}
        self.fills[Pen.ABOVE_ROOF] = _hatch(theme)
        self.texts = {pen: QPen(theme.looks[pen].text) for pen in Pen}


_EVEN = 1e-6
"""Sides that lean by less than this, mm or px, count as along x or y."""

Ready = Callable[[QPainter], None]
"""An element turned into px, pens and brushes: it only has to be given to a painter."""


def paint(painter: QPainter, elements: Iterable[Element], camera: Camera, ink: Ink) -> None:
    """Paint elements in their order; the painter counts px as the camera does."""
    paint_ready(painter, (ready(element, camera, ink) for element in elements))


def paint_ready(painter: QPainter, elements: Iterable[Ready]) -> None:
    """Paint elements that were made ready, in their order."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for element in elements:
        element(painter)


def ready(element: Element, camera: Camera, ink: Ink) -> Ready:
    """An element as it is to be painted through this camera, to be painted any number of times."""
    if isinstance(element, Stroke):
        return _stroke(element, camera, ink)
    if isinstance(element, Fill):
        return _fill(ink.fills[element.pen], element.outline, camera)
    if isinstance(element, Text):
        return _text(element, camera, ink)
    parts = dimension_parts(element, camera.scale / ink.density)
    return _all([ready(part, camera, ink) for part in parts])


def polygon(points: Iterable[XY], camera: Camera) -> QPolygonF:
    """Model points as a polygon in px."""
    x, y, scale = camera.x, camera.y, camera.scale
    return QPolygonF([QPointF(x + scale * a, y - scale * b) for a, b in points])


def _all(parts: list[Ready]) -> Ready:
    def put(painter: QPainter) -> None:
        for part in parts:
            part(painter)

    return put


def shape(points: Sequence[XY], camera: Camera) -> QPolygonF | QRectF:
    """Model points as a shape in px to be filled: a rectangle where they are an upright one."""
    return shape_of([camera.to_screen(point) for point in points])


def shape_of(corners: Sequence[XY]) -> QPolygonF | QRectF:
    """A shape to be filled by its corners, px."""
    if len(corners) == 4 and _upright(corners):
        return QRectF(QPointF(*corners[0]), QPointF(*corners[2])).normalized()
    return QPolygonF([QPointF(*corner) for corner in corners])


def fill(painter: QPainter, shape: QPolygonF | QRectF) -> None:
    """Fill a shape with the painter's brush; a rectangle takes half the time of a polygon."""
    if isinstance(shape, QRectF):
        painter.drawRect(shape)
    else:
        painter.drawPolygon(shape)


def _upright(points: Sequence[XY]) -> bool:
    """Whether four corners in their order are those of a rectangle along x and y."""
    (a, b), (c, d), (e, f), (g, h) = points
    level, plumb = (b - d, c - e, f - h, g - a), (a - c, d - f, e - g, h - b)
    return any(max(map(abs, sides)) < _EVEN for sides in (level, plumb))


def _fill(brush: QBrush, corners: tuple[XY, ...], camera: Camera) -> Ready:
    inside = shape(corners, camera)

    def put(painter: QPainter) -> None:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(brush)
        fill(painter, inside)

    return put


def _stroke(stroke: Stroke, camera: Camera, ink: Ink) -> Ready:
    """A line, corner by corner where it can be: that costs a tenth of a path as a whole."""
    line, points = ink.lines[stroke.pen], stroke.points
    if stroke.closed and line.style() is not Qt.PenStyle.SolidLine:
        return _dashed(line, polygon(points, camera))
    if stroke.closed:
        return _lines(ink.outlines[stroke.pen], (*points, points[0]), camera)
    if len(points) == 2:
        return _lines(line, points, camera)
    return _open(line, polygon(points, camera))


def _lines(pen: QPen, points: tuple[XY, ...], camera: Camera) -> Ready:
    x, y, scale = camera.x, camera.y, camera.scale
    lines = [
        QLineF(x + scale * a, y - scale * b, x + scale * c, y - scale * d)
        for (a, b), (c, d) in pairwise(points)
    ]

    def put(painter: QPainter) -> None:
        painter.setPen(pen)
        painter.drawLines(lines)

    return put


def _open(pen: QPen, points: QPolygonF) -> Ready:
    def put(painter: QPainter) -> None:
        painter.setPen(pen)
        painter.drawPolyline(points)

    return put


def _dashed(pen: QPen, outline: QPolygonF) -> Ready:
    def put(painter: QPainter) -> None:
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPolygon(outline)

    return put


def _text(text: Text, camera: Camera, ink: Ink) -> Ready:
    size = pixels(text.size, ink.density)
    laid, width = _laid(text.text, size, text.bold, text.narrow)
    left = {Align.START: 0.0, Align.MIDDLE: -width / 2, Align.END: -width}[text.align]
    top = cap_height(float(size)) / 2 if text.middle else 0.0
    pen, face = ink.texts[text.pen], font(size, bold=text.bold, narrow=text.narrow)
    corner, at = QPointF(left, top - _baseline(size)), QPointF(*camera.to_screen(text.at))
    if text.angle == 0.0:
        return _words(pen, face, corner + at, laid)
    turned = QTransform().translate(at.x(), at.y()).rotate(-math.degrees(text.angle))
    return _turned(turned, _words(pen, face, corner, laid))


def _words(pen: QPen, face: QFont, corner: QPointF, laid: QStaticText) -> Ready:
    def put(painter: QPainter) -> None:
        painter.setPen(pen)
        painter.setFont(face)
        painter.drawStaticText(corner, laid)

    return put


def _turned(turned: QTransform, words: Ready) -> Ready:
    def put(painter: QPainter) -> None:
        before = painter.transform()
        painter.setTransform(turned, combine=True)
        words(painter)
        painter.setTransform(before)

    return put


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


def _hatch(theme: Theme) -> QBrush:
    """Thin slanting lines, as light as can still be seen under what is written on them."""
    tone = QColor(theme.edge)
    tone.setAlphaF(_HATCH)
    return QBrush(tone, Qt.BrushStyle.BDiagPattern)


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
