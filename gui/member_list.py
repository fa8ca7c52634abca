"""The list of a wall's members below its sheet: it follows what is held, and can be copied."""

from PySide6.QtCore import QItemSelection, QItemSelectionModel, QMimeData
from PySide6.QtGui import QGuiApplication, QKeyEvent, QKeySequence, QShowEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from core.drawing.member_list import Order, Row, RowMaker, as_html, tab_separated
from gui.desk import Desk
from gui.fields import Choice
from gui.member_model import MemberModel
from gui.pace import Pace
from gui.sizes import scaled

PAUSE_MS = 100
"""Between two refreshings while something is dragged: ten a second at most."""

_LEAST = 130
"""The least height of the list, px on a plain screen."""


class MemberList(QWidget):
    """The members in a table. Choosing rows takes hold of the pieces, and the other way about."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk, self._maker = desk, RowMaker()
        self._order, self._following = Order.LABEL, False
        self.setObjectName("panel")
        words = desk.wording
        orders = tuple((order, words.word(f"list.order-{order.value}")) for order in Order)
        self.order = Choice(words.word("list.order"), orders)
        self.order.chosen.connect(self._sort)
        self.copy = QPushButton(words.word("list.copy"))
        self.copy.clicked.connect(self.copy_table)
        self.model = MemberModel(words)
        self.table = _Table()
        self.table.setModel(self.model)
        self.table.setAccessibleName(words.word("list.title"))
        self.table.selectionModel().selectionChanged.connect(self._chosen)
        self._fill(words.word("list.title"))
        self._pace = Pace(self._refresh_shown, PAUSE_MS, self)
        desk.changed.connect(self._pace.ask)
        desk.held_changed.connect(self._follow)

    def _fill(self, title: str) -> None:
        heading = QLabel(title)
        heading.setObjectName("heading")
        # The largest texts leave it no row of its own.
        heading.setWordWrap(True)
        head = QHBoxLayout()
        head.addWidget(heading, 1)
        head.addWidget(self.order)
        head.addWidget(self.copy)
        column = QVBoxLayout(self)
        column.setContentsMargins(10, 4, 10, 8)
        column.setSpacing(6)
        column.addLayout(head)
        column.addWidget(self.table, 1)
        self.setMinimumHeight(scaled(_LEAST, self))

    def showEvent(self, event: QShowEvent) -> None:  # noqa: N802
        """What changed while it was hidden is shown."""
        super().showEvent(event)
        self.refresh()

    def refresh(self) -> None:
        """Shows the members of the wall on the desk."""
        result = self._desk.result
        rows: tuple[Row, ...] = ()
        if result is not None:
            rows = self._maker.rows(result, self._desk.wording, self._order)
        self._following = True
        others = self.model.show_rows(rows)
        self._following = False
        if others:
            self.table.fit_columns()
            self._follow()

    def copy_table(self) -> None:
        """Puts the rows chosen on the clipboard as text and in HTML; all of them for one or none.

        Cells are parted by tabs, so that a spreadsheet takes them as they are.
        """
        chosen = self._chosen_rows()
        rows = [self.model.rows[n] for n in chosen] if len(chosen) > 1 else self.model.rows
        data = QMimeData()
        data.setText(tab_separated(self.model.heads, rows))
        data.setHtml(as_html(self.model.heads, rows))
        QGuiApplication.clipboard().setMimeData(data)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        """The platform's key for copying copies the table."""
        if event.matches(QKeySequence.StandardKey.Copy):
            self.copy_table()
        else:
            super().keyPressEvent(event)

    def _refresh_shown(self) -> None:
        if self.isVisible():
            self.refresh()

    def _sort(self, order: Order) -> None:
        self._order = order
        self.refresh()

    def _chosen_rows(self) -> list[int]:
        return sorted(index.row() for index in self.table.selectionModel().selectedRows())

    def _chosen(self) -> None:
        """Takes hold of the pieces chosen; the one that the keys are on is the chief of them."""
        if self._following:
            return
        keys = [self.model.rows[n].key for n in self._chosen_rows()]
        current = self.table.currentIndex().row()
        chief = self.model.rows[current].key if 0 <= current < len(self.model.rows) else None
        if chief not in keys:
            chief = keys[0] if keys else None
        self._desk.hold(chief, keys)

    def _follow(self) -> None:
        """Chooses the rows of what is held."""
        if not self.isVisible():
            return
        rows = [row for key in self._desk.holding if (row := self.model.row_of(key)) is not None]
        if sorted(rows) == self._chosen_rows():
            return
        self._following = True
        self.table.choose(rows)
        self._following = False


class _Table(QTableView):
    """A table whose rows are chosen whole; Tab leaves it."""

    def __init__(self) -> None:
        super().__init__()
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setTabKeyNavigation(False)
        self.setShowGrid(False)
        self.setWordWrap(False)
        self.setCornerButtonEnabled(False)
        self.verticalHeader().hide()
        self.verticalHeader().setDefaultSectionSize(scaled(24, self))
        # The last column is as wide as its marks are long, and is scrolled to.
        self.horizontalHeader().setStretchLastSection(False)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.horizontalHeader().setHighlightSections(False)
        self.horizontalHeader().setSectionsClickable(False)

    def fit_columns(self) -> None:
        """Makes every column as wide as what is in it."""
        self.resizeColumnsToContents()

    def choose(self, rows: list[int]) -> None:
        """Chooses these rows, the first of them with the keys on it, and brings it into sight."""
        model, chosen = self.model(), QItemSelection()
        last = model.columnCount() - 1
        for row in rows:
            chosen.select(model.index(row, 0), model.index(row, last))
        flags = QItemSelectionModel.SelectionFlag
        self.selectionModel().select(chosen, flags.ClearAndSelect)
        if rows:
            first = model.index(rows[0], 0)
            self.selectionModel().setCurrentIndex(first, flags.NoUpdate)
            self.scrollTo(first)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        """Copying is the list's; all else is as in any table."""
        if event.matches(QKeySequence.StandardKey.Copy):
            event.ignore()
        else:
            super().keyPressEvent(event)
