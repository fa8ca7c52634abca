"""The room in the window: its plan, and under it the room cut across."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QSplitter

from gui.desk import Desk
from gui.plan.bar import PlanPage
from gui.section.section import SectionView
from gui.theme import Theme


class RoomView(QSplitter):
    """The room: its plan, and under it the room cut across."""

    def __init__(self, desk: Desk, theme: Theme) -> None:
        super().__init__(Qt.Orientation.Vertical)
        self.page, self.section = PlanPage(desk, theme), SectionView(desk, theme)
        self.plan = self.page.plan
        self.setChildrenCollapsible(False)
        self.setHandleWidth(1)
        self.addWidget(self.page)
        self.addWidget(self.section)
        # Walls are drawn in the plan, so it gets most of the room.
        self.setStretchFactor(0, 3)
        self.setStretchFactor(1, 2)

    def set_theme(self, theme: Theme) -> None:
        """Draws by day or by night."""
        self.plan.set_theme(theme)
        self.section.set_theme(theme)
