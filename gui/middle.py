"""The middle of the window: the sheet of one wall, its walk, or the room with its plan."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QSplitter, QStackedWidget, QWidget

from gui.desk import Desk
from gui.plan.bar import PlanPage
from gui.plan.plan import Plan
from gui.section.section import SectionView
from gui.site.walk import Walk
from gui.sketcher.sheet import Sheet
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


class Middle(QStackedWidget):
    """Shows what the desk looks at, and passes on how near it is looked at."""

    def __init__(self, desk: Desk, theme: Theme) -> None:
        super().__init__()
        self._desk = desk
        self.sheet = Sheet(desk, theme)
        self.room = RoomView(desk, theme)
        self.walk = Walk(desk, theme)
        self.walking = False
        for page in (self.sheet, self.room, self.walk):
            self.addWidget(page)
        self.refresh()

    @property
    def paper(self) -> Sheet | Plan:
        """The paper that is drawn on: the wall's sheet, or the room's plan."""
        return self.sheet if self.currentWidget() is self.sheet else self.room.plan

    def refresh(self) -> None:
        """Shows what the desk looks at; the keys go with it if the paper had them."""
        page: QWidget = self.walk if self.walking else self.sheet
        wanted = self.room if self._desk.letter is None else page
        if wanted is self.walk:
            self.walk.refresh()
        if wanted is self.currentWidget():
            return
        had = self.paper.hasFocus()
        self.setCurrentWidget(wanted)
        if had:
            self.paper.setFocus()

    def set_theme(self, theme: Theme) -> None:
        """Draws by day or by night."""
        self.sheet.set_theme(theme)
        self.room.set_theme(theme)
        self.walk.set_theme(theme)

    @property
    def walks(self) -> bool:
        """Whether a wall is shown as it is walked."""
        return self.currentWidget() is self.walk

    def fit(self) -> None:
        """Shows the whole of the wall or room."""
        self.paper.fit()

    def zoom_in(self) -> None:
        """Looks one step nearer."""
        self.paper.zoom_in()

    def zoom_out(self) -> None:
        """Looks from one step farther away."""
        self.paper.zoom_out()
