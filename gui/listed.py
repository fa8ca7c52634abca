"""The sheet of a wall over the list of its members, where that is wanted."""

from functools import cached_property
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QSplitter, QWidget

from gui.desk import Desk

if TYPE_CHECKING:
    from gui.member_list import MemberList


class Listed(QSplitter):
    """What is drawn above, what is listed below; the line between them can be pulled.

    The list is made when it is first wanted: the start does without it.
    """

    def __init__(self, desk: Desk, drawn: QWidget) -> None:
        super().__init__(Qt.Orientation.Vertical)
        self._desk, self._made = desk, False
        self.setChildrenCollapsible(False)
        self.setHandleWidth(1)
        self.addWidget(drawn)

    @cached_property
    def list(self) -> "MemberList":
        """The list of members."""
        from gui.member_list import MemberList

        self._made = True
        return MemberList(self._desk)

    def show_list(self, shown: bool) -> bool:
        """Shows the list, at first as a third of the height, or hides it.

        Gives whether the keys were in it when it was hidden.
        """
        if not shown and not self._made:
            return False
        had = self.list.table.hasFocus() and not shown
        if self.count() == 1:
            self.addWidget(self.list)
            self.setStretchFactor(0, 2)
            self.setStretchFactor(1, 1)
            high = self.height()
            self.setSizes([high - high // 3, high // 3])
        self.list.setVisible(shown)
        return had
