"""The row over the plan: what can be drawn in it, plainly to be seen, and how."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from gui.desk import Desk
from gui.plan.drawing import Tool
from gui.plan.plan import Plan
from gui.theme import Theme


class PlanPage(QWidget):
    """The plan under the row of what can be drawn."""

    def __init__(self, desk: Desk, theme: Theme) -> None:
        super().__init__()
        self.desk, words = desk, desk.wording
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.plan = Plan(desk, theme)
        self.buttons: dict[Tool, QPushButton] = {}
        row = QHBoxLayout()
        row.setContentsMargins(12, 7, 12, 7)
        row.setSpacing(8)
        row.addWidget(QLabel(words.word("plan.draw")))
        for tool in Tool:
            button = QPushButton(words.word(f"plan.draw-{tool.value}"))
            button.setCheckable(True)
            button.setToolTip(words.word(f"plan.draw-{tool.value}-here"))
            button.setAccessibleName(f"{words.word('plan.draw')} {button.text()}")
            button.clicked.connect(lambda on, tool=tool: self._arm(tool, on=on))
            row.addWidget(button)
            self.buttons[tool] = button
        self._hint = QLabel(words.word("plan.hint"))
        self._hint.setObjectName("faint")
        # A long line must not widen the window.
        self._hint.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        row.addWidget(self._hint, 1)
        self.plan.armed_changed.connect(self._mark)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(row)
        column.addWidget(self.plan, 1)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802
        """Leaves the hint out where it would be cut off."""
        super().resizeEvent(event)
        last = self.buttons[Tool.EXISTING].geometry().right()
        text = self.desk.wording.word("plan.hint")
        wanted = self._hint.fontMetrics().horizontalAdvance(text)
        self._hint.setText(text if last + wanted + 24 < self.width() else "")

    def _arm(self, tool: Tool, *, on: bool) -> None:
        self.plan.arm(tool if on else None)

    def _mark(self, armed: object) -> None:
        """Shows which of them is begun with the next press."""
        for tool, button in self.buttons.items():
            button.setChecked(tool is armed)
