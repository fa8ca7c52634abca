"""The little pictures in the tray, drawn with the pens of the sheet on a field of 40 by 30."""

from collections.abc import Callable

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPen, QPolygonF

from core.drawing import Pen
from gui.sketcher.ghosts import Part
from gui.theme import Theme

WIDE, HIGH = 40.0, 30.0


class _Drawer:
    """A painter that knows the pens of a theme."""

    def __init__(self, painter: QPainter, theme: Theme) -> None:
        self._painter, self._theme = painter, theme

    def timber(self, pen: Pen, *rects: tuple[float, float, float, float]) -> None:
        """Pieces of timber as left, top, right, bottom."""
        look = self._theme.looks[pen]
        self._set(look.line, 1.0, look.fill)
        for left, top, right, bottom in rects:
            self._painter.drawRect(QRectF(QPointF(left, top), QPointF(right, bottom)))

    def outline(self, left: float, top: float, right: float, bottom: float) -> None:
        """A heavy outline, as of a rough opening."""
        self._set(self._theme.ink, 1.4, self._theme.looks[Pen.OPENING].fill)
        self._painter.drawRect(QRectF(QPointF(left, top), QPointF(right, bottom)))

    def dashed(self, left: float, top: float, right: float, bottom: float) -> None:
        """A dashed outline."""
        pen = QPen(self._theme.ink, 1.2)
        pen.setDashPattern([3.0, 2.0])
        self._painter.setPen(pen)
        self._painter.setBrush(Qt.BrushStyle.NoBrush)
        self._painter.drawRect(QRectF(QPointF(left, top), QPointF(right, bottom)))

    def line(self, *points: tuple[float, float], weight: float = 1.0) -> None:
        """A thin line of ink."""
        self._painter.setPen(QPen(self._theme.ink, weight))
        self._painter.setBrush(Qt.BrushStyle.NoBrush)
        self._painter.drawPolyline(QPolygonF([QPointF(*point) for point in points]))

    def box(self, left: float, top: float, right: float, bottom: float) -> None:
        """An electrical box."""
        self._set(self._theme.ink, 1.2, self._theme.looks[Pen.BOX].fill)
        self._painter.drawRect(QRectF(QPointF(left, top), QPointF(right, bottom)))

    def _set(self, line: QColor, weight: float, fill: QColor) -> None:
        pen = QPen(line, weight)
        pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        self._painter.setPen(pen)
        self._painter.setBrush(QBrush(fill))


def draw(painter: QPainter, part: Part, theme: Theme) -> None:
    """The picture of a part; the painter counts in the field of the pictures."""
    _PICTURES[part](_Drawer(painter, theme))


def _stud(draw: _Drawer) -> None:
    draw.timber(Pen.TOP_PLATE, (6, 2, 34, 5))
    draw.timber(Pen.SOLE_PLATE, (6, 25, 34, 28))
    draw.timber(Pen.STUD, (18, 5, 22, 25))


def _door(draw: _Drawer) -> None:
    draw.timber(Pen.TRIMMER, (10, 2, 13, 28), (27, 2, 30, 28))
    draw.timber(Pen.HEADER, (10, 2, 30, 6))
    draw.outline(13, 6, 27, 28)
    draw.line((27, 28), (20, 20), (13, 28))


def _access_door(draw: _Drawer) -> None:
    draw.timber(Pen.TRIMMER, (9, 10, 12, 28), (28, 10, 31, 28))
    draw.timber(Pen.HEADER, (9, 10, 31, 14))
    draw.outline(12, 14, 28, 28)
    draw.line((24, 20), (24, 23), weight=1.6)


def _window(draw: _Drawer) -> None:
    draw.timber(Pen.TRIMMER, (8, 2, 11, 28), (29, 2, 32, 28))
    draw.timber(Pen.HEADER, (8, 2, 32, 5))
    draw.timber(Pen.SILL, (11, 20, 29, 23))
    draw.outline(11, 5, 29, 20)
    draw.line((20, 5), (20, 20))
    draw.line((11, 12.5), (29, 12.5))


def _box(draw: _Drawer) -> None:
    draw.timber(Pen.STUD, (10, 2, 14, 28))
    draw.box(14, 13, 25, 25)
    draw.line((18, 17), (18, 21), weight=1.6)
    draw.line((21, 17), (21, 21), weight=1.6)


def _switch(draw: _Drawer) -> None:
    draw.timber(Pen.STUD, (10, 2, 14, 28))
    draw.box(14, 5, 25, 17)
    draw.line((19.5, 13), (22.5, 8.5), weight=1.8)


def _blocking(draw: _Drawer) -> None:
    draw.timber(Pen.STUD, (6, 2, 9, 28), (18.5, 2, 21.5, 28), (31, 2, 34, 28))
    draw.timber(Pen.BLOCKING, (9, 13.5, 18.5, 16.5), (21.5, 13.5, 31, 16.5))


def _backing(draw: _Drawer) -> None:
    draw.timber(Pen.STUD, (6, 2, 9, 28), (31, 2, 34, 28))
    draw.timber(Pen.BACKING, (9, 10, 31, 20))
    draw.line((13, 15), (27, 15), weight=1.6)


def _kept_clear(draw: _Drawer) -> None:
    draw.timber(Pen.STUD, (4, 2, 7, 28), (33, 2, 36, 28))
    draw.dashed(11, 5, 29, 25)
    draw.line((11, 5), (15, 9.5))
    draw.line((29, 25), (25, 20.5))
    draw.line((29, 5), (25, 9.5))
    draw.line((11, 25), (15, 20.5))


_PICTURES: dict[Part, Callable[[_Drawer], None]] = {
    Part.STUD: _stud,
    Part.DOOR: _door,
    Part.ACCESS_DOOR: _access_door,
    Part.WINDOW: _window,
    Part.BOX: _box,
    Part.SWITCH: _switch,
    Part.BLOCKING: _blocking,
    Part.BACKING: _backing,
    Part.KEPT_CLEAR: _kept_clear,
}
