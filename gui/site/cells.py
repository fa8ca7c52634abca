"""How the cells of a walk are painted: large type, large ticks, what is done in grey."""

from PySide6.QtCore import (
    QAbstractItemModel,
    QEvent,
    QModelIndex,
    QPersistentModelIndex,
    QPointF,
    QRect,
    QRectF,
    QSize,
    Qt,
)
from PySide6.QtGui import QColor, QMouseEvent, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from gui.site.rows import Heading, PieceRow
from gui.site.table import CUT, LABEL, LONG, NAILED, WHAT, WalkTable
from gui.sizes import scaled
from gui.sketcher.fonts import font
from gui.theme import Theme

Index = QModelIndex | QPersistentModelIndex

_TICK = 26
"""The side of the square that is ticked, px."""

_SIZES = {LABEL: 22, LONG: 26}
_PLAIN, _SMALL = 18, 14


class Cells(QStyledItemDelegate):
    """Paints the cells of one table by day or by night."""

    def __init__(self, theme: Theme, table: WalkTable, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme, self._table, self._on = theme, table, parent

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:  # noqa: N802
        """The height of a row: a thumb's breadth."""
        row = self._table.rows[index.row()]
        high = 34 if isinstance(row, Heading) else 72 if row.stale else 50
        return QSize(super().sizeHint(option, index).width(), self._px(high))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Paints one cell."""
        row = self._table.rows[index.row()]
        rect = QRect(option.rect)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if isinstance(row, Heading):
            self._heading(painter, rect, row)
        else:
            chosen = bool(option.state & QStyle.StateFlag.State_Selected)
            painter.fillRect(rect, self._theme.panel if chosen else self._theme.paper)
            self._cell(painter, rect, row, index.column())
            if chosen and index.column() == 0:
                painter.fillRect(rect.x(), rect.y(), self._px(4), rect.height(), self._theme.chalk)
        painter.restore()

    def editorEvent(  # noqa: N802
        self,
        event: QEvent,
        model: QAbstractItemModel,
        option: QStyleOptionViewItem,
        index: Index,
    ) -> bool:
        """A press anywhere in the cell ticks it: gloves are no fine pointer."""
        if index.column() in (CUT, NAILED) and isinstance(event, QMouseEvent):
            released = event.type() is QEvent.Type.MouseButtonRelease
            if released and event.button() is Qt.MouseButton.LeftButton:
                self._table.tick(index.row(), index.column())
            return released
        return super().editorEvent(event, model, option, index)

    def _heading(self, painter: QPainter, rect: QRect, row: Heading) -> None:
        painter.fillRect(rect, self._theme.paper)
        painter.setPen(self._theme.faint)
        painter.setFont(font(self._px(_SMALL + 1), bold=True))
        inside = rect.adjusted(self._px(12), 0, -self._px(8), -self._px(4))
        painter.drawText(
            inside, Qt.AlignmentFlag.AlignBottom | Qt.AlignmentFlag.AlignLeft, row.text
        )
        painter.setPen(QPen(self._theme.edge, 1))
        painter.drawLine(rect.bottomLeft(), rect.bottomRight())

    def _cell(self, painter: QPainter, rect: QRect, row: PieceRow, column: int) -> None:
        if column in (CUT, NAILED):
            ticked = row.cut if column == CUT else row.nailed
            self._box(painter, rect, ticked=ticked, stale=bool(row.stale) and column == CUT)
            return
        done = row.cut and not row.stale
        painter.setPen(self._theme.faint if done else self._theme.ink)
        size = self._px(_SIZES.get(column, _PLAIN))
        painter.setFont(font(size, bold=column in _SIZES))
        inside = rect.adjusted(self._px(8), 0, -self._px(4), 0)
        flags = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
        if column == WHAT and row.stale:
            self._stale(painter, inside, row)
        else:
            text = self._table.index(self._table.rows.index(row), column).data()
            # A long name goes on in a second line where the list is narrow.
            painter.drawText(inside, int(flags) | int(Qt.TextFlag.TextWordWrap), text)

    def _stale(self, painter: QPainter, inside: QRect, row: PieceRow) -> None:
        """What the piece is, and below it why it no longer serves as it was cut."""
        top = inside.adjusted(0, self._px(6), 0, 0)
        painter.drawText(top, Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft, row.what)
        painter.setFont(font(self._px(_SMALL)))
        painter.setPen(self._theme.warning)
        below = inside.adjusted(0, self._px(28), 0, 0)
        flags = Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft
        painter.drawText(below, int(flags) | int(Qt.TextFlag.TextWordWrap), row.stale)

    def _box(self, painter: QPainter, rect: QRect, *, ticked: bool, stale: bool) -> None:
        """A square, with a tick in it; one that is stale is struck out instead."""
        side = self._px(_TICK)
        left = rect.x() + (rect.width() - side) / 2
        top = rect.y() + (rect.height() - side) / 2
        square = QRectF(left, top, side, side)
        colour = (
            self._theme.warning if stale else self._theme.chalk if ticked else self._theme.faint
        )
        painter.setPen(QPen(colour, self._px(2)))
        painter.setBrush(self._theme.field)
        painter.drawRoundedRect(square, 3, 3)
        if ticked:
            self._stroke(painter, square, colour, _STRUCK if stale else _TICKED)

    def _stroke(
        self,
        painter: QPainter,
        square: QRectF,
        colour: QColor,
        way: tuple[tuple[float, float], ...],
    ) -> None:
        pen = QPen(colour, self._px(3.5))
        pen.setCapStyle(Qt.PenCapStyle.RoundCap)
        pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        points = (
            QPointF(square.x() + x * square.width(), square.y() + y * square.height())
            for x, y in way
        )
        painter.drawPolyline(QPolygonF(list(points)))

    def _px(self, px: float) -> int:
        return scaled(px, self._on)


_TICKED = ((0.22, 0.52), (0.42, 0.74), (0.80, 0.26))
_STRUCK = ((0.25, 0.25), (0.75, 0.75))
