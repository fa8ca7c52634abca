"""The dimensions of the wall at hand, in chalk on the plan: drawn, struck, and typed over."""

import math
from collections.abc import Callable
from functools import partial

import msgspec
from PySide6.QtCore import QPointF, QRect, QRectF
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QWidget

from core.drawing.typeface import text_width
from core.lengths import parse
from core.model import Project
from core.wording import Mm, message
from gui.desk import Desk
from gui.plan.measures import Measure, Ruler, measures, restate
from gui.sketcher.camera import XY, Camera, Rect
from gui.sketcher.extent import pixels
from gui.sketcher.figures import SIZE_MM
from gui.sketcher.fonts import font
from gui.sketcher.paint import Ink
from gui.sketcher.slips import paint_slip
from gui.sketcher.typed import Typed, figure_name

_OFF_PX = 22.0
"""How far behind the wall its length is shown, px."""

_ROOM = 26.0
"""Line to be seen beside a slip that stands on it, px: room for a handle."""

_PAD, _TICK = 6.0, 4.0
"""Paper beside a figure, and half a tick, px."""


class Figure(msgspec.Struct, frozen=True):
    """A dimension on screen: the ends of its line and the slip its figure is on, px."""

    measure: Measure
    text: str
    start: XY
    end: XY
    slip: Rect

    def holds(self, pos: XY) -> bool:
        """Whether a px lies on the slip."""
        across = self.slip.left <= pos[0] <= self.slip.right
        return across and self.slip.low <= pos[1] <= self.slip.high


class PlanMeasuring:
    """The figures of one wall, and the field in which they are typed over."""

    def __init__(self, desk: Desk, sheet: QWidget, density: float) -> None:
        self._desk, self._sheet = desk, sheet
        self._size = pixels(SIZE_MM, density)
        self._ruler = Ruler.LENGTH
        self._figures: tuple[Figure, ...] = ()
        self._letter = ""
        self.over: Ruler | None = None
        self.field = Typed(desk, sheet)
        self.field.went_on.connect(self._go_on)
        self.field.closed.connect(sheet.update)

    def look(self, project: Project, letter: str | None, camera: Camera) -> None:
        """The wall whose dimensions are shown, and how it is looked at; None shows none."""
        if letter is None:
            self._figures = ()
            return
        self._letter = letter
        found = measures(project, letter, _OFF_PX / camera.scale)
        self._figures = self._laid(found, camera)

    @property
    def figures(self) -> tuple[Figure, ...]:
        """What is shown, the length first."""
        return self._figures

    def at(self, pos: XY) -> Figure | None:
        """The figure whose slip lies under a px."""
        return next((f for f in self._figures if f.holds(pos)), None)

    def point(self, pos: XY) -> bool:
        """Notes what figure the pointer is over; whether that is another than before."""
        before, figure = self.over, self.at(pos)
        self.over = figure.measure.ruler if figure else None
        return self.over is not before

    def press(self, pos: XY) -> bool:
        """Opens the figure under a px; False if there is none."""
        figure = self.at(pos)
        if figure is not None:
            self.open(figure)
        return figure is not None

    def begin(self, text: str = "") -> bool:
        """Opens the length; False if nothing is shown."""
        if not self._figures:
            return False
        self.open(self._figures[0])
        if text:
            self.field.begin(text)
        return True

    def open(self, figure: Figure, take: Callable[[float], None] | None = None) -> None:
        """Opens a figure; the mm that are typed go to `take`, or are made so of the wall held."""
        ruler = self._ruler = figure.measure.ruler
        name = figure_name(self._desk, self._letter, ruler.value)
        rect = QRectF(QPointF(*figure.slip[:2]), QPointF(*figure.slip[2:])).toAlignedRect()
        text = self._desk.wording.tape.text_with_unit(figure.measure.reads)
        made = take or partial(self._state, ruler)
        self.field.open(QRect(rect), name, text, lambda typed: made(self._read(typed)))

    def paint(self, painter: QPainter, ink: Ink) -> None:
        """The dimension lines, then the figures over them."""
        for figure in self._figures:
            _line(painter, figure, ink)
        painter.setFont(font(self._size, bold=True))
        for figure in self._figures:
            struck = figure.measure.ruler is self.over
            paint_slip(painter, figure.slip, figure.text, ink, struck=struck)

    def _read(self, typed: str) -> float:
        """The mm that a text states; ValueError if it states no length."""
        return parse(typed, self._desk.project.system.bare_unit).mm

    def _state(self, ruler: Ruler, to: float) -> None:
        """Makes a dimension read what was typed, as one edit."""
        figure = next((f for f in self._figures if f.measure.ruler is ruler), None)
        if figure is None:
            return
        project = restate(self._desk.project, self._letter, figure.measure, to)
        where = message(f"measure.{ruler.value}")
        text = message("measure.edit", what=self._letter, to=Mm(to), where=where)
        self._desk.commit(self._desk.wording.say(text), project)

    def _go_on(self, way: int) -> None:
        """Opens the next figure, or the one before; past the last the keys leave the plan."""
        rulers = [f.measure.ruler for f in self._figures]
        at = rulers.index(self._ruler) + way if self._ruler in rulers else 0
        if 0 <= at < len(rulers):
            self.open(self._figures[at])
            return
        self._sheet.setFocus()
        if way > 0:
            self._sheet.focusNextPrevChild(True)

    def _laid(self, found: tuple[Measure, ...], camera: Camera) -> tuple[Figure, ...]:
        laid: list[Figure] = []
        for measure in found:
            start, end = camera.to_screen(measure.start), camera.to_screen(measure.end)
            text = self._desk.wording.length(measure.reads)
            wide = text_width(text, float(self._size), bold=True) + 2 * _PAD
            slip = self._place(start, end, (wide, self._size + 7.0), [f.slip for f in laid])
            laid.append(Figure(measure, text, start, end, slip))
        return tuple(laid)

    def _place(self, start: XY, end: XY, size: XY, taken: list[Rect]) -> Rect:
        """A slip on its line where none is yet, past a short one, never outside the sheet."""
        wide, high = size
        run = max(math.dist(start, end), 1e-6)
        needs = (abs(end[0] - start[0]) * wide + abs(end[1] - start[1]) * high) / run
        past = 1.0 + (needs / 2 + _PAD) / run
        on = (0.5, 0.3, 0.7, 0.1, 0.9, 0.5)
        step = (needs + _PAD) / run
        beside = (past, 1.0 - past, past + step, 1.0 - past - step, past + 2 * step)
        for share in beside if run < needs + _ROOM else on:
            x, y = (a + (b - a) * share for a, b in zip(start, end, strict=True))
            x = min(max(x, wide / 2 + 4), max(self._sheet.width() - wide / 2 - 4, wide / 2))
            y = min(max(y, high / 2 + 4), max(self._sheet.height() - high / 2 - 4, high / 2))
            slip = Rect(x - wide / 2, y - high / 2, x + wide / 2, y + high / 2)
            if not any(_overlap(slip, other) for other in taken):
                return slip
        return slip


def _overlap(a: Rect, b: Rect) -> bool:
    return (
        a.left < b.right + 3
        and a.right > b.left - 3
        and a.low < b.high + 3
        and (a.high > b.low - 3)
    )


def _line(painter: QPainter, figure: Figure, ink: Ink) -> None:
    """A dimension's line with a tick across either end."""
    painter.setPen(QPen(ink.theme.chalk, 1.2))
    (x0, y0), (x1, y1) = figure.start, figure.end
    painter.drawLine(QPointF(x0, y0), QPointF(x1, y1))
    size = max(((x1 - x0) ** 2 + (y1 - y0) ** 2) ** 0.5, 1.0)
    dx, dy = -(y1 - y0) / size * _TICK, (x1 - x0) / size * _TICK
    for x, y in (figure.start, figure.end):
        painter.drawLine(QPointF(x - dx, y - dy), QPointF(x + dx, y + dy))
