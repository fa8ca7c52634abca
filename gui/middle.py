"""The middle of the window: the sheet of one wall, its walk, or the room with its plan."""

from functools import cached_property
from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint, QSize, Signal
from PySide6.QtWidgets import QStackedWidget, QVBoxLayout, QWidget

from gui.desk import Desk
from gui.listed import Listed
from gui.sketcher.ghosts import Part
from gui.sketcher.sheet import Sheet
from gui.theme import Theme
from gui.tray import Tray

if TYPE_CHECKING:
    from gui.plan.plan import Plan
    from gui.room_view import RoomView
    from gui.site.walk import Walk


class WallView(QWidget):
    """One wall: the tray of parts, under it the sheet that they are dragged onto, and the list."""

    def __init__(self, desk: Desk, theme: Theme, sheet: Sheet) -> None:
        super().__init__()
        self.sheet, self.listed = sheet, Listed(desk, sheet)
        self.tray = Tray(desk, theme)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.tray)
        column.addWidget(self.listed, 1)
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
    """Shows what the desk looks at, and passes on how near it is looked at.

    Only the wall's page is made at the start; the others are when they are first asked for.
    """

    walk_left = Signal()

    def __init__(self, desk: Desk, theme: Theme) -> None:
        super().__init__()
        self._desk, self._theme = desk, theme
        self.sheet = Sheet(desk, theme)
        self.wall = WallView(desk, theme, self.sheet)
        self.addWidget(self.wall)
        self.walking = False
        self.refresh()

    @cached_property
    def room(self) -> "RoomView":
        """The room, made when it is first looked at."""
        from gui.room_view import RoomView

        view = RoomView(self._desk, self._theme)
        self.addWidget(view)
        return view

    @cached_property
    def walk(self) -> "Walk":
        """The walk of a wall, made when it is first looked at."""
        from gui.site.walk import Walk

        walk = Walk(self._desk, self._theme)
        walk.left.connect(self.walk_left)
        self.addWidget(walk)
        return walk

    @property
    def paper(self) -> "Sheet | Plan":
        """The paper that is drawn on: the wall's sheet, or the room's plan."""
        return self.sheet if self.currentWidget() is self.wall else self.room.plan

    @property
    def chief(self) -> QWidget:
        """What has the keys in the middle before anything else: the paper, or the walk's list."""
        return self.walk.list if self.walks else self.paper

    def refresh(self) -> None:
        """Shows what the desk looks at; the keys go with it if the paper had them."""
        wanted = self._wanted()
        if self.walking and wanted is self.walk:
            self.walk.refresh()
        if wanted is self.currentWidget():
            return
        had = self.paper.hasFocus()
        self.setCurrentWidget(wanted)
        if had:
            self.paper.setFocus()

    def _wanted(self) -> QWidget:
        if self._desk.letter is None:
            return self.room
        return self.walk if self.walking else self.wall

    def minimumSizeHint(self) -> QSize:  # noqa: N802
        """What is shown decides; a page that waits behind it does not widen the window."""
        shown = self.currentWidget()
        return super().minimumSizeHint() if shown is None else shown.minimumSizeHint()

    def set_theme(self, theme: Theme) -> None:
        """Draws by day or by night."""
        self._theme = theme
        self.wall.set_theme(theme)
        for page in self._others():
            page.set_theme(theme)

    def _others(self) -> "tuple[RoomView | Walk, ...]":
        """The pages beside the wall's that have been made."""
        made = vars(self)
        return tuple(made[name] for name in ("room", "walk") if name in made)

    @property
    def walks(self) -> bool:
        """Whether a wall is shown as it is walked."""
        return self.walking and self.currentWidget() is self.walk

    def list_members(self, shown: bool) -> None:
        """Shows the list of members below the sheet, or hides it; the keys go to the sheet then."""
        if self.wall.listed.show_list(shown):
            self.sheet.setFocus()

    def fit(self) -> None:
        """Shows the whole of the wall or room."""
        self.paper.fit()

    def zoom_in(self) -> None:
        """Looks one step nearer."""
        self.paper.zoom_in()

    def zoom_out(self) -> None:
        """Looks from one step farther away."""
        self.paper.zoom_out()
