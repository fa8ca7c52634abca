"""The row over the plan: what can be drawn in it, plainly to be seen, and how."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from gui.desk import Desk
from gui.plan.plan import Plan
from gui.theme import Theme


class PlanPage(QWidget):
    """The plan under the row of what can be drawn."""

    def __init__(self, desk: Desk, theme: Theme) -> None:
        super().__init__()
        words = desk.wording
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.plan = Plan(desk, theme)
        self.wall = QPushButton(words.word("plan.draw-wall"))
        self.wall.setCheckable(True)
        self.wall.setToolTip(words.word("plan.draw-here"))
        self.wall.clicked.connect(lambda on: self.plan.arm(on=on))
        self.plan.armed_changed.connect(self.wall.setChecked)
        hint = QLabel(words.word("plan.hint"))
        hint.setObjectName("faint")
        # A long line must not widen the window.
        hint.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        row = QHBoxLayout()
        row.setContentsMargins(12, 7, 12, 7)
        row.setSpacing(10)
        row.addWidget(self.wall)
        row.addWidget(hint, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(row)
        column.addWidget(self.plan, 1)
