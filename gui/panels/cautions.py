"""The cautions of the wall shown, in plain words; one can be clicked to hold what it is about."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget

from core.checks import Caution, Severity
from core.lengths import unbroken
from gui.desk import Desk


class CautionRow(QLabel):
    """One caution; pressing it takes hold of the thing."""

    def __init__(self, desk: Desk, caution: Caution) -> None:
        super().__init__()
        self._desk, self._key = desk, caution.key
        word = desk.wording.word(f"severity.{caution.severity.value}")
        said = unbroken(desk.wording.say(caution.message))
        self.setText(said if caution.severity is Severity.STANDING else f"{word}: {said}")
        self.setWordWrap(True)
        self.setObjectName(caution.severity.value)
        if "/" in caution.key:
            self.setCursor(Qt.CursorShape.PointingHandCursor)
            self.setFocusPolicy(Qt.FocusPolicy.TabFocus)

    def mousePressEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        """Takes hold of the thing."""
        super().mousePressEvent(event)
        self._hold()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        """Enter and space press it as well."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            self._hold()
        else:
            super().keyPressEvent(event)

    def _hold(self) -> None:
        if "/" in self._key:
            self._desk.hold(self._key)


class Cautions(QWidget):
    """A column of cautions, made anew only when they differ."""

    def __init__(self, desk: Desk, heading_id: str = "") -> None:
        super().__init__()
        self._desk = desk
        self._shown: tuple[str, ...] | None = None
        self._rows: list[CautionRow] = []
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(4)
        if heading_id:
            heading = QLabel(desk.wording.word(heading_id))
            heading.setObjectName("heading")
            self._column.addWidget(heading)

    def show_cautions(self, cautions: tuple[Caution, ...]) -> None:
        """Shows these cautions, the gravest first."""
        texts = tuple(self._desk.wording.say(caution.message) for caution in cautions)
        if texts == self._shown:
            return
        self._shown = texts
        for row in self._rows:
            self._column.removeWidget(row)
            row.deleteLater()
        self._rows = [CautionRow(self._desk, c) for c in cautions]
        for row in self._rows:
            self._column.addWidget(row)
        self.setVisible(bool(self._rows))


def grave_first(cautions: tuple[Caution, ...]) -> tuple[Caution, ...]:
    """The cautions in the order of their severity."""
    order = list(Severity)
    return tuple(sorted(cautions, key=lambda caution: order.index(caution.severity)))
