"""The left side of the window: the list of the room and its walls."""

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QSize, Qt
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import (
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QVBoxLayout,
    QWidget,
)

from core.checks import Severity
from core.framing import Role
from core.job import WallResult
from core.wording import Mm, Wording, message
from gui.desk import Desk
from gui.sizes import scaled
from gui.sketcher.fonts import font
from gui.theme import Theme

WIDTH = 220
_HEIGHT = 54
_LETTER, _DETAIL, _WRONG = (Qt.ItemDataRole.UserRole + n for n in range(3))


class Walls(QWidget):
    """The room first, then each wall's letter, name and studs, marked where it cannot be built."""

    def __init__(self, desk: Desk, theme: Theme) -> None:
        super().__init__()
        self._desk = desk
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.list = QListWidget()
        self.list.setAccessibleName(desk.wording.word("walls.title"))
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setItemDelegate(_Delegate(theme, self.list))
        self.list.currentItemChanged.connect(self._show)
        self.add = QPushButton(desk.wording.word("action.add-wall"))
        column = QVBoxLayout(self)
        column.setContentsMargins(10, 12, 10, 12)
        column.setSpacing(8)
        column.addWidget(self.list, 1)
        column.addWidget(self.add)
        self.setMinimumWidth(scaled(WIDTH, self))
        self.refresh()

    def set_theme(self, theme: Theme) -> None:
        """Paints by day or by night."""
        self.list.setItemDelegate(_Delegate(theme, self.list))

    def refresh(self) -> None:
        """Shows the room and the walls of the project on the desk."""
        blocked = self.list.blockSignals(True)
        results = self._desk.results.walls
        while self.list.count() > len(results) + 1:
            self.list.takeItem(self.list.count() - 1)
        while self.list.count() < len(results) + 1:
            self.list.addItem(QListWidgetItem())
        self._fill_room(self.list.item(0))
        for row, result in enumerate(results, start=1):
            self._fill(self.list.item(row), result)
        letters = [None, *(result.wall.letter for result in results)]
        self.list.setCurrentRow(letters.index(self._desk.letter))
        self.list.blockSignals(blocked)

    def _fill_room(self, item: QListWidgetItem) -> None:
        words, room = self._desk.wording, self._desk.project.room
        name = words.word("walls.room")
        size = message("walls.room-size", wide=Mm(room.width.mm), long=Mm(room.length.mm))
        detail = words.say(size)
        item.setText(name)
        for role, value in ((_LETTER, None), (_DETAIL, detail), (_WRONG, False)):
            item.setData(role, value)
        item.setToolTip(name)
        item.setData(Qt.ItemDataRole.AccessibleTextRole, f"{name}, {detail}")

    def _fill(self, item: QListWidgetItem, result: WallResult) -> None:
        wall, words = result.wall, self._desk.wording
        detail, wrong = detail_of(result, words), not buildable(result)
        item.setText(wall.name)
        item.setData(_LETTER, wall.letter)
        item.setData(_DETAIL, detail)
        item.setData(_WRONG, wrong)
        item.setToolTip(f"{wall.letter}  {wall.name}")
        spoken = f"{wall.letter}, {wall.name}, {detail}"
        item.setData(Qt.ItemDataRole.AccessibleTextRole, spoken)

    def _show(self, item: QListWidgetItem | None) -> None:
        if item is None:
            return
        letter = item.data(_LETTER)
        if letter is None:
            self._desk.show_room()
        else:
            self._desk.show_wall(letter)


def detail_of(result: WallResult, wording: Wording) -> str:
    """What the list says of a wall: how many studs, or that it cannot be built."""
    if not buildable(result):
        return wording.word("walls.cannot")
    studs = [m for m in result.frame.members if m.role is Role.STUD] if result.frame else []
    return wording.say(message("walls.studs", count=len(studs)))


def buildable(result: WallResult) -> bool:
    """Whether the wall can be built as stated."""
    return all(caution.severity is not Severity.UNBUILDABLE for caution in result.cautions)


class _Delegate(QStyledItemDelegate):
    """Paints a wall's letter large, its name and detail beside it, and the mark at the edge."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme = theme
        self._place = parent

    def sizeHint(  # noqa: N802
        self,
        option: QStyleOptionViewItem,  # noqa: ARG002
        index: QModelIndex | QPersistentModelIndex,  # noqa: ARG002
    ) -> QSize:
        return QSize(self._px(WIDTH - 40), self._px(_HEIGHT))

    def _px(self, px: float) -> int:
        return scaled(px, self._place)

    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        painter.save()
        theme, rect = self._theme, QRect(option.rect)
        state = option.state
        if state & QStyle.StateFlag.State_Selected:
            painter.fillRect(rect, theme.paper)
            painter.fillRect(rect.x(), rect.y(), self._px(3), rect.height(), theme.chalk)
        wrong = bool(index.data(_WRONG))
        painter.setPen(theme.warning if wrong else theme.ink)
        painter.setFont(font(self._px(22), bold=True))
        letter = QRect(rect.x() + self._px(10), rect.y(), self._px(34), rect.height())
        middle = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
        painter.drawText(letter, middle, index.data(_LETTER))
        beside = rect.adjusted(self._px(44), self._px(7), -self._px(4), -self._px(7))
        self._line(painter, beside, str(index.data(Qt.ItemDataRole.DisplayRole)), top=True)
        painter.setPen(theme.warning if wrong else theme.faint)
        self._line(painter, beside, str(index.data(_DETAIL)), top=False)
        painter.restore()

    def _line(self, painter: QPainter, rect: QRect, text: str, *, top: bool) -> None:
        painter.setFont(font(self._px(14 if top else 12)))
        if top:
            painter.setPen(self._theme.ink)
        flag = Qt.AlignmentFlag.AlignTop if top else Qt.AlignmentFlag.AlignBottom
        shown = painter.fontMetrics().elidedText(text, Qt.TextElideMode.ElideRight, rect.width())
        painter.drawText(rect, flag | Qt.AlignmentFlag.AlignLeft, shown)
