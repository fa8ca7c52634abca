"""The rows of the list of members, for Qt's table; only what changed is told."""

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, Qt

from core.drawing.member_list import HEADS, Row
from core.wording import Wording

_NUMBERS = (3, 4)
"""The columns that are set to the right, as numbers are."""

Index = QModelIndex | QPersistentModelIndex


class MemberModel(QAbstractTableModel):
    """Rows of texts under the heads of the list."""

    def __init__(self, wording: Wording) -> None:
        super().__init__()
        self.heads = tuple(wording.word(head) for head in HEADS)
        self.rows: tuple[Row, ...] = ()

    def show_rows(self, rows: tuple[Row, ...]) -> bool:
        """Shows these rows; gives whether other members are listed, or in another order."""
        before, self_keys = self.rows, [row.key for row in self.rows]
        if self_keys != [row.key for row in rows]:
            self.beginResetModel()
            self.rows = rows
            self.endResetModel()
            return True
        self.rows = rows
        last = len(HEADS) - 1
        for number, (old, new) in enumerate(zip(before, rows, strict=True)):
            if old != new:
                self.dataChanged.emit(self.index(number, 0), self.index(number, last))
        return False

    def row_of(self, key: str) -> int | None:
        """The number of the row of the member with this key."""
        return next((n for n, row in enumerate(self.rows) if row.key == key), None)

    def rowCount(self, parent: Index | None = None) -> int:  # noqa: N802
        """How many members there are."""
        return 0 if parent is not None and parent.isValid() else len(self.rows)

    def columnCount(self, parent: Index | None = None) -> int:  # noqa: N802
        """How many columns there are."""
        return 0 if parent is not None and parent.isValid() else len(HEADS)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """A cell's text, and how it is set."""
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole):
            return self.rows[index.row()].cells[index.column()]
        if role == Qt.ItemDataRole.TextAlignmentRole:
            right = index.column() in _NUMBERS
            way = Qt.AlignmentFlag.AlignRight if right else Qt.AlignmentFlag.AlignLeft
            return way | Qt.AlignmentFlag.AlignVCenter
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return f"{self.heads[index.column()]} {self.rows[index.row()].cells[index.column()]}"
        return None

    def headerData(  # noqa: N802
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> object:
        """A column's head, set as its cells are."""
        if orientation is not Qt.Orientation.Horizontal:
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            return self.heads[section]
        if role == Qt.ItemDataRole.TextAlignmentRole:
            right = section in _NUMBERS
            way = Qt.AlignmentFlag.AlignRight if right else Qt.AlignmentFlag.AlignLeft
            return way | Qt.AlignmentFlag.AlignVCenter
        return None
