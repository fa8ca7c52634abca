"""Walking the site: one wall's pieces in cutting order, in large type, to be ticked off."""

from PySide6.QtCore import QModelIndex, Qt, Signal
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QPushButton,
    QSplitter,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from core.wording import message
from gui.desk import Desk
from gui.site.cells import Cells
from gui.site.done_view import DoneView
from gui.site.rows import Heading, counts, rows_of
from gui.site.table import CUT, LABEL, LONG, NAILED, SHORT, WHAT, WalkTable
from gui.site.ticks import tick_cut, tick_nailed
from gui.sizes import scaled
from gui.theme import Theme

_WIDTHS = {CUT: 58, NAILED: 72, LABEL: 72, LONG: 136, SHORT: 106}
_LIST = 590
"""The width of the list that shows all columns, px."""

_HEAD = 32


class List(QTableView):
    """The table of pieces; Space ticks as cut, N as nailed, wherever the keys are."""

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        """Ticks the piece of the current row; other keys move about as in any table."""
        column = {Qt.Key.Key_Space: CUT, Qt.Key.Key_N: NAILED}.get(Qt.Key(event.key()))
        table = self.model()
        if column is not None and isinstance(table, WalkTable):
            table.tick(self.currentIndex().row(), column)
        else:
            super().keyPressEvent(event)


class Walk(QWidget):
    """The list on the left, the wall beside it with what is done in grey."""

    left = Signal()
    """The person is done walking."""

    def __init__(self, desk: Desk, theme: Theme) -> None:
        super().__init__()
        self._desk = desk
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.table = WalkTable(desk.wording, self._tick_cut, self._tick_nailed, self)
        self.list = List()
        self.view = DoneView(desk, theme)
        self.name, self.count = QLabel(), QLabel()
        self._split = QSplitter(Qt.Orientation.Horizontal)
        self.back = QPushButton(desk.wording.word("walk.back"))
        self._fill()
        self.set_theme(theme)
        self.back.clicked.connect(self.left)
        self.view.pressed.connect(self._choose)
        self.list.selectionModel().currentRowChanged.connect(self._row_chosen)
        desk.held_changed.connect(self._held_changed)

    def set_theme(self, theme: Theme) -> None:
        """Paints by day or by night."""
        self.list.setItemDelegate(Cells(theme, self.table, self.list))
        self.view.set_theme(theme)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802
        """The list keeps its columns as long as there is room; the wall gets the rest."""
        super().resizeEvent(event)
        wide = scaled(_LIST, self)
        self._split.setSizes([wide, max(self.width() - wide, 1)])

    def refresh(self) -> None:
        """Shows the wall on the desk and what of it is done."""
        result, words = self._desk.result, self._desk.wording
        if result is None:
            return
        rows = rows_of(result, self._desk.site, words)
        if self.table.show_rows(rows):
            self._span()
        self.list.resizeRowsToContents()
        wall = result.wall
        self.name.setText(words.say(message("walk.wall", letter=wall.letter, name=wall.name)))
        whole, cut, nailed = counts(rows)
        said = message("walk.count", whole=whole, cut=cut, nailed=nailed)
        self.count.setText(words.say(said))
        self._held_changed()
        self.view.refresh()

    def _fill(self) -> None:
        words = self._desk.wording
        self.name.setObjectName("walk-name")
        self.list.setModel(self.table)
        self.list.setAccessibleName(words.word("walk.list"))
        self.list.verticalHeader().hide()
        self.list.setShowGrid(False)
        # Arrow keys go from piece to piece; Tab leaves the list.
        self.list.setTabKeyNavigation(False)
        self.list.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.list.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.list.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        heads = self.list.horizontalHeader()
        heads.setSectionsClickable(False)
        heads.setHighlightSections(False)
        heads.setFixedHeight(scaled(_HEAD, self))
        heads.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        for column, width in _WIDTHS.items():
            self.list.setColumnWidth(column, scaled(width, self))
        heads.setSectionResizeMode(WHAT, QHeaderView.ResizeMode.Stretch)
        top = QHBoxLayout()
        top.addWidget(self.name)
        top.addSpacing(16)
        top.addWidget(self.count, 1)
        top.addWidget(self.back)
        split = self._split
        split.setHandleWidth(1)
        split.setChildrenCollapsible(False)
        split.addWidget(self.list)
        split.addWidget(self.view)
        how = QLabel(words.word("walk.how"))
        how.setObjectName("faint")
        how.setWordWrap(True)
        page = QVBoxLayout(self)
        page.setContentsMargins(16, 12, 16, 10)
        page.setSpacing(8)
        page.addLayout(top)
        page.addWidget(split, 1)
        page.addWidget(how)

    def _span(self) -> None:
        """Headings go over all columns."""
        self.list.clearSpans()
        for number, row in enumerate(self.table.rows):
            if isinstance(row, Heading):
                self.list.setSpan(number, 0, 1, WHAT + 1)

    def _tick_cut(self, key: str) -> None:
        if self._desk.result is not None:
            self._desk.record(tick_cut(self._desk.site, self._desk.result, key))

    def _tick_nailed(self, key: str) -> None:
        if self._desk.result is not None:
            self._desk.record(tick_nailed(self._desk.site, self._desk.result, key))

    def _choose(self, key: str) -> None:
        if self.table.row_of(key) is not None:
            self._desk.hold(key)

    def _row_chosen(self, current: QModelIndex) -> None:
        piece = self.table.piece(current.row())
        if piece is not None:
            self._desk.hold(piece.key)

    def _held_changed(self) -> None:
        """The row follows what is held, and the wall shows it."""
        row = self.table.row_of(self._desk.held)
        if row is None:
            self.list.clearSelection()
        elif row != self.list.currentIndex().row() or not self.list.selectedIndexes():
            self.list.selectRow(row)
        self.view.update()
