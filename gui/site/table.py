"""The rows of a walk as a table that Qt can show, read aloud and tick."""

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from core.wording import Wording
from gui.site.rows import Heading, PieceRow, Row

CUT, NAILED, LABEL, LONG, SHORT, WHAT = range(6)
"""The columns; a heading's text stands in the first and goes over all of them."""

_HEADS = ("walk.cut", "walk.nailed", "walk.piece", "walk.long", "walk.short", "walk.what")

Index = QModelIndex | QPersistentModelIndex

_NOWHERE = QModelIndex()


class WalkTable(QAbstractTableModel):
    """The pieces; a tick is handed to `tick_cut` or `tick_nailed` with the piece's key."""

    def __init__(
        self,
        wording: Wording,
        tick_cut: Callable[[str], None],
        tick_nailed: Callable[[str], None],
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._wording = wording
        self._ticks = {CUT: tick_cut, NAILED: tick_nailed}
        self.rows: tuple[Row, ...] = ()

    def show_rows(self, rows: tuple[Row, ...]) -> bool:
        """Shows these rows; True if the table was made anew instead of only its ticks."""
        if _places(rows) == _places(self.rows):
            self.rows = rows
            if rows:
                self.dataChanged.emit(self.index(0, 0), self.index(len(rows) - 1, WHAT))
            return False
        self.beginResetModel()
        self.rows = rows
        self.endResetModel()
        return True

    def piece(self, row: int) -> PieceRow | None:
        """The piece in a row; None for a heading, or for no row."""
        found = self.rows[row] if 0 <= row < len(self.rows) else None
        return found if isinstance(found, PieceRow) else None

    def row_of(self, key: str | None) -> int | None:
        """The row of a piece."""
        keys = (r.key if isinstance(r, PieceRow) else None for r in self.rows)
        return next((n for n, k in enumerate(keys) if k is not None and k == key), None)

    def tick(self, row: int, column: int) -> None:
        """Ticks a piece off as cut or nailed, whichever the column is for."""
        piece = self.piece(row)
        if piece is not None and column in self._ticks:
            self._ticks[column](piece.key)

    def rowCount(self, parent: Index = _NOWHERE) -> int:  # noqa: N802
        """How many rows there are."""
        return 0 if parent.isValid() else len(self.rows)

    def columnCount(self, parent: Index = _NOWHERE) -> int:  # noqa: N802
        """How many columns there are."""
        return 0 if parent.isValid() else len(_HEADS)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """The text or the tick of a cell."""
        row = self.rows[index.row()]
        if isinstance(row, Heading):
            shown = role == Qt.ItemDataRole.DisplayRole and index.column() == 0
            return row.text if shown else None
        if role == Qt.ItemDataRole.DisplayRole:
            return _text(row, index.column())
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return self._aloud(row, index.column())
        if role == Qt.ItemDataRole.CheckStateRole and index.column() in self._ticks:
            return _tick(row, index.column())
        return None

    def setData(self, index: Index, value: Any, role: int = Qt.ItemDataRole.EditRole) -> bool:  # noqa: N802, ARG002
        """A tick set by the view, or by what reads the screen aloud."""
        if role != Qt.ItemDataRole.CheckStateRole:
            return False
        self.tick(index.row(), index.column())
        return True

    def flags(self, index: Index) -> Qt.ItemFlag:
        """A heading can only be read."""
        if isinstance(self.rows[index.row()], Heading):
            return Qt.ItemFlag.ItemIsEnabled
        plain = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
        return plain | Qt.ItemFlag.ItemIsUserCheckable if index.column() in self._ticks else plain

    def headerData(  # noqa: N802
        self,
        section: int,
        orientation: Qt.Orientation,
        role: int = Qt.ItemDataRole.DisplayRole,
    ) -> Any:
        """The heads of the columns."""
        across = orientation is Qt.Orientation.Horizontal
        if across and role == Qt.ItemDataRole.DisplayRole:
            return self._wording.word(_HEADS[section])
        return None

    def _aloud(self, row: PieceRow, column: int) -> str:
        if column not in self._ticks:
            return _text(row, column)
        return f"{row.label} {self._wording.word(_HEADS[column])}"


def _text(row: PieceRow, column: int) -> str:
    what = f"{row.what}\n{row.stale}" if row.stale else row.what
    return {LABEL: row.label, LONG: row.long, SHORT: row.short, WHAT: what}.get(column, "")


def _tick(row: PieceRow, column: int) -> Qt.CheckState:
    ticked = row.cut if column == CUT else row.nailed
    if ticked and column == CUT and row.stale:
        return Qt.CheckState.PartiallyChecked
    return Qt.CheckState.Checked if ticked else Qt.CheckState.Unchecked


def _places(rows: tuple[Row, ...]) -> list[str]:
    """Which piece or heading stands in which row."""
    return [row.text if isinstance(row, Heading) else f"/{row.key}" for row in rows]
