"""The dimensions of what is held, in chalk on the sheet: drawn, struck, and typed over."""

from PySide6.QtCore import QPointF, QRect, QRectF
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QWidget

from core.job import WallResult
from core.lengths import parse
from core.wording import Mm, message
from gui.desk import Desk
from gui.sketcher.camera import XY, Camera
from gui.sketcher.extent import pixels
from gui.sketcher.figures import SIZE_MM, Figure, figures
from gui.sketcher.fonts import font
from gui.sketcher.measures import LEVEL, Measure, Ruler, measures, whole_bounds
from gui.sketcher.paint import Ink
from gui.sketcher.pulls import Hold, take
from gui.sketcher.repeating import Made, Repeating
from gui.sketcher.restating import restate
from gui.sketcher.slips import paint_slip
from gui.sketcher.typed import Typed, figure_name

_TICK = 4.0
"""Half the length of the tick at either end of a dimension, px."""

_Key = tuple[WallResult, str | None, Camera, XY]


class Measuring:
    """The figures of the held thing on one sheet, and the field in which they are typed over."""

    def __init__(self, desk: Desk, sheet: QWidget, density: float) -> None:
        self._desk = desk
        self.repeating = Repeating(desk)
        self._size = pixels(SIZE_MM, density)
        self._laid: tuple[_Key, Hold | None, tuple[Figure, ...]] | None = None
        self._ruler = Ruler.LEFT_END
        self._camera = Camera(1.0, 0.0, 0.0)
        self._window: XY = (1.0, 1.0)
        self.over: Ruler | None = None
        self.field = Typed(desk, sheet)
        self.field.went_on.connect(self._go_on)
        self.field.closed.connect(sheet.update)

    def look(self, camera: Camera, window: XY) -> None:
        """How the wall is looked at from now on, and the size of the sheet, px."""
        self._camera, self._window = camera, window

    def figures(self) -> tuple[Figure, ...]:
        """The figures of what is held; none where nothing is, or it stays where it is."""
        return self._lay()[1]

    def at(self, pos: XY) -> Figure | None:
        """The figure whose slip of paper lies under a px."""
        return next((f for f in reversed(self.figures()) if f.holds(pos)), None)

    def point(self, pos: XY) -> bool:
        """Notes what figure the pointer is over; whether that is another than before."""
        before, figure = self.over, self.at(pos)
        self.over = figure.measure.ruler if figure else None
        return self.over is not before

    def press(self, pos: XY) -> bool:
        """Opens the figure under a px; False if there is none."""
        figure = self.at(pos)
        if figure is not None:
            self._open(figure)
        return figure is not None

    def begin(self, text: str = "") -> bool:
        """Opens the distance of fresh copies, else the figure last typed over, else the first.

        False if there is none.
        """
        found = self.figures()
        if not found:
            return False
        wanted = (Ruler.AGAIN, self._ruler)
        by_ruler = {f.measure.ruler: f for f in found}
        self._open(next((by_ruler[r] for r in wanted if r in by_ruler), found[0]))
        if text:
            self.field.begin(text)
        return True

    def paint(self, painter: QPainter, ink: Ink) -> None:
        """The dimension lines, then the figures over them."""
        laid = self.figures()
        for figure in laid:
            _line(painter, figure, ink)
        painter.setFont(font(self._size, bold=True))
        for figure in laid:
            struck = figure.measure.ruler is self.over
            paint_slip(painter, figure.slip, figure.text, ink, struck=struck)

    def _lay(self) -> tuple[Hold | None, tuple[Figure, ...]]:
        desk, result = self._desk, self._desk.result
        made = self.repeating.made
        if result is None or desk.held is None or (desk.also and made is None):
            return None, ()
        key = (result, desk.held, self._camera, self._window)
        old = self._laid
        if old is None or old[0][0] is not result or old[0][1:] != key[1:]:
            hold = take(desk.project, result, desk.held)
            found = measures(hold) if hold and not desk.also else ()
            found += _again(hold, made) if hold and made else ()
            count = made.count if made else 1
            laid = figures(found, self._camera, desk.wording, self._size, self._window, count)
            old = self._laid = (key, hold, laid)
        return old[1], old[2]

    def _open(self, figure: Figure) -> None:
        hold = self._lay()[0]
        if hold is None:
            return
        ruler = self._ruler = figure.measure.ruler
        name = figure_name(self._desk, hold.named, ruler.value)
        rect = QRectF(QPointF(*figure.slip[:2]), QPointF(*figure.slip[2:])).toAlignedRect()
        text = self._desk.wording.tape.text_with_unit(figure.measure.reads)
        if ruler is Ruler.AGAIN:
            self.field.open(QRect(rect), name, figure.text, self.repeating.state)
            return
        self.field.open(QRect(rect), name, text, lambda typed: self._state(ruler, typed))

    def _state(self, ruler: Ruler, typed: str) -> None:
        """Makes a dimension read what was typed, as one edit; ValueError if it is no length."""
        to = parse(typed, self._desk.project.system.bare_unit)
        hold, laid = self._lay()
        figure = next((f for f in laid if f.measure.ruler is ruler), None)
        if hold is None or figure is None:
            return
        project = restate(hold, figure.measure, to)
        where = message(f"measure.{ruler.value}")
        text = message("measure.edit", what=hold.named, to=Mm(to.mm), where=where)
        self._desk.commit(self._desk.wording.say(text), project)

    def _go_on(self, way: int) -> None:
        """Opens the next figure, or the one before."""
        found = self.figures()
        rulers = [f.measure.ruler for f in found]
        if found:
            at = rulers.index(self._ruler) if self._ruler in rulers else 0
            self._open(found[(at + way) % len(found)])


def _again(hold: Hold, made: Made) -> tuple[Measure, ...]:
    """The distance from what was copied to the first copy; from the copies held to it, if alike."""
    around = whole_bounds(hold)
    if around is None:
        return ()
    left, bottom, _, top = around
    level = bottom + (top - bottom) * LEVEL
    return (Measure(Ruler.AGAIN, (left - made.apart, level), (left, level)),)


def _line(painter: QPainter, figure: Figure, ink: Ink) -> None:
    """A dimension's line with a tick at either end."""
    painter.setPen(QPen(ink.theme.chalk, 1.2))
    (x0, y0), (x1, y1) = figure.start, figure.end
    painter.drawLine(QPointF(x0, y0), QPointF(x1, y1))
    dx, dy = (_TICK, 0.0) if figure.measure.ruler.upright else (0.0, _TICK)
    for x, y in (figure.start, figure.end):
        painter.drawLine(QPointF(x - dx, y - dy), QPointF(x + dx, y + dy))
