"""What is drawn over the sheet in chalk: the thing under the pointer, and the thing held."""

from dataclasses import dataclass
from itertools import pairwise

from PySide6.QtCore import QLineF, QPointF, QRect, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from core.drawing import Drawing, Pen, Text
from core.framing import PlacedOpening
from core.job import WallResult
from gui.sketcher.camera import TEXT_MM, XY, Camera
from gui.sketcher.extent import marker_corners, pixels
from gui.sketcher.fonts import font
from gui.sketcher.hit import kin, outline
from gui.sketcher.paint import Ink, fill, polygon, shape, shape_of
from gui.things import Kind, thing_of

_NUMBERS = frozenset({Pen.MARK, Pen.LENGTH, Pen.LABEL})

_ARROW = 5.0
"""Half the height of a handle's arrowhead, px."""

_OFF = 4.0
"""Between a thing and its handle, px."""

_HIGH = 20.0
"""How far under the top of a stud or an opening the handles stand, px."""

_STATED = frozenset({Kind.OPENING, Kind.BOX})
"""Kinds that have an outline of their own, whatever piece around them is held."""


@dataclass(frozen=True)
class Chalk:
    """What the chalk is drawn over: the wall's result, its drawing, and how it is looked at."""

    result: WallResult
    drawing: Drawing
    camera: Camera
    ink: Ink

    @property
    def openings(self) -> tuple[PlacedOpening, ...]:
        """The wall's openings."""
        return self.result.frame.openings if self.result.frame else ()


def paint_hover(painter: QPainter, on: Chalk, key: str) -> None:
    """A breath of chalk over what lies under the pointer, and all that would move with it."""
    for own in kin(on.result, key):
        _wash(painter, on, own, 0.18 if own == key else 0.08, 1.5)


def paint_held(painter: QPainter, on: Chalk, key: str, *, movable: bool) -> None:
    """The held thing outlined, its numbers marked, and arrowheads where it can be moved to."""
    together = kin(on.result, key)
    for own in together:
        if own != key:
            _wash(painter, on, own, 0.10, 1.0)
    _wash(painter, on, key, _strength(on, key), 2.0)
    _numbers(painter, on, frozenset({key, *together}))
    if movable:
        _handles(painter, on, key)


def paint_band(painter: QPainter, corners: tuple[XY, XY], ink: Ink) -> None:
    """The rectangle that is pulled over bare paper."""
    line = QPen(ink.theme.chalk, 1.0)
    line.setDashPattern([4.0, 3.0])
    painter.setPen(line)
    painter.setBrush(_thin(ink.theme.chalk, 0.06))
    painter.drawRect(QRectF(QPointF(*corners[0]), QPointF(*corners[1])).normalized())


def paint_note(painter: QPainter, rect: QRect, text: str, ink: Ink) -> None:
    """A line of text on bare paper, where there is no wall to be drawn."""
    size = pixels(TEXT_MM * 1.2, ink.density)
    painter.setPen(ink.theme.faint)
    painter.setFont(font(size))
    inside = rect.adjusted(3 * size, 3 * size, -3 * size, -3 * size)
    painter.drawText(inside, Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap, text)


def _wash(painter: QPainter, on: Chalk, key: str, strength: float, weight: float) -> None:
    outlined = outline(on.result, key)
    if outlined is None:
        return
    chalk, corners = on.ink.theme.chalk, polygon(outlined, on.camera)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(_thin(chalk, strength))
    fill(painter, shape(outlined, on.camera))
    # Side by side: an outline as one path costs ten times as much, and this is done on each frame.
    painter.setPen(QPen(chalk, weight, c=Qt.PenCapStyle.SquareCap))
    points = corners.toList()
    painter.drawLines([QLineF(*side) for side in pairwise((*points, points[0]))])


def _strength(on: Chalk, key: str) -> float:
    """How strongly the held thing is washed: an opening is large, so it takes less."""
    return 0.12 if any(p.key == key for p in on.openings) else 0.24


def _numbers(painter: QPainter, on: Chalk, keys: frozenset[str]) -> None:
    """Chalk behind the figures that belong to the held thing, as with a marker."""
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(_thin(on.ink.theme.chalk, 0.22))
    for element in on.drawing:
        if element.key in keys and isinstance(element, Text) and element.pen in _NUMBERS:
            corners = marker_corners(element, on.camera, on.ink.density)
            fill(painter, shape_of(corners))


def _handles(painter: QPainter, on: Chalk, key: str) -> None:
    """Arrowheads at the thing's sides, for a box above and below it too.

    Those of an opening stand inside it, where no box can be in their way; all stand high up, since
    figures are written from the foot up.
    """
    thing = thing_of(on.result.wall, key)
    whole = f"{on.result.wall.letter}/{thing.id}" if thing and thing.kind in _STATED else key
    shape = outline(on.result, whole)
    if thing is None or shape is None:
        return
    corners = [on.camera.to_screen(p) for p in shape]
    xs, ys = [x for x, _ in corners], [y for _, y in corners]
    left, right, top, bottom = min(xs), max(xs), min(ys), max(ys)
    if thing.kind is Kind.OPENING:
        # Under the lower side of a raked head.
        top = max(y for _, y in corners[2:])
    off = -_OFF - _ARROW if thing.kind is Kind.OPENING else _OFF
    down = (bottom - top) / 2 if thing.kind is Kind.BOX else min((bottom - top) * 0.3, _HIGH)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(on.ink.theme.chalk)
    _arrow(painter, (left - off, top + down), (-1.0, 0.0))
    _arrow(painter, (right + off, top + down), (1.0, 0.0))
    if thing.kind is Kind.BOX:
        _arrow(painter, ((left + right) / 2, top - off), (0.0, -1.0))
        _arrow(painter, ((left + right) / 2, bottom + off), (0.0, 1.0))


def _arrow(painter: QPainter, foot: XY, way: XY) -> None:
    """An arrowhead standing at `foot` and pointing the given way."""
    (x, y), (dx, dy) = foot, way
    points = (
        (x + dx * _ARROW * 1.2, y + dy * _ARROW * 1.2),
        (x - dy * _ARROW, y + dx * _ARROW),
        (x + dy * _ARROW, y - dx * _ARROW),
    )
    painter.drawPolygon(QPolygonF([QPointF(*point) for point in points]))


def _thin(colour: QColor, strength: float) -> QColor:
    thin = QColor(colour)
    thin.setAlphaF(strength)
    return thin
