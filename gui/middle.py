"""The middle of the window: the sheet of one wall, its walk, or the room with its plan."""

from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QSplitter, QStackedWidget, QVBoxLayout, QWidget

from gui.desk import Desk
from gui.plan.bar import PlanPage
from gui.plan.plan import Plan
from gui.section.section import SectionView
from gui.site.walk import Walk
from gui.sketcher.ghosts import Part
from gui.sketcher.sheet import Sheet
from gui.theme import Theme
from gui.tray import Tray


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


class WallView(QWidget):
    """One wall: the tray of parts, and under it the sheet that they are dragged onto."""

    def __init__(self, desk: Desk, theme: Theme, sheet: Sheet) -> None:
        super().__init__()
        self.sheet = sheet
        self.tray = Tray(desk, theme)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.tray)
        column.addWidget(sheet, 1)
        self.tray.chosen.connect(sheet.take_part)
        self.tray.pulled.connect(self._carry)
        self.tray.dropped.connect(self._set_down)

    def set_theme(self, theme: Theme) -> None:
        """Draws by day or by night."""
        self.tray.set_theme(theme)
        self.sheet.set_theme(theme)

    def _carry(self, part: Part, at: QPoint) -> None:
        """A part is dragged from the tray: over the sheet its ghost shows."""
        pos = self.sheet.mapFromGlobal(at)
        if not self.sheet.rect().contains(pos):
            self.sheet.leave_part()
            return
        if self.sheet.placing.part is not part:
            self.sheet.take_part(part)
        self.sheet.carry((float(pos.x()), float(pos.y())))

    def _set_down(self, at: QPoint) -> None:
        """A part is let go: over the sheet it is set down if it can stand there, else put back."""
        if self.sheet.rect().contains(self.sheet.mapFromGlobal(at)):
            self.sheet.set_down()
        self.sheet.leave_part()


class Middle(QStackedWidget):
    """Shows what the desk looks at, and passes on how near it is looked at."""

    def __init__(self, desk: Desk, theme: Theme) -> None:
        super().__init__()
        self._desk = desk
        self.sheet = Sheet(desk, theme)
        self.wall = WallView(desk, theme, self.sheet)
        self.room = RoomView(desk, theme)
        self.walk = Walk(desk, theme)
        self.walking = False
        for page in (self.wall, self.room, self.walk):
            self.addWidget(page)
        self.refresh()

    @property
    def paper(self) -> Sheet | Plan:
        """The paper that is drawn on: the wall's sheet, or the room's plan."""
        return self.sheet if self.currentWidget() is self.wall else self.room.plan

    def refresh(self) -> None:
        """Shows what the desk looks at; the keys go with it if the paper had them."""
        page: QWidget = self.walk if self.walking else self.wall
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
        self.wall.set_theme(theme)
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
