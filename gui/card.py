"""The card for the first start: what is where, in a few lines, put away with one press."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QGridLayout, QHBoxLayout, QLabel, QPushButton, QVBoxLayout

from core.lengths import unbroken
from core.wording import Wording
from gui.keeping import Kept
from gui.sizes import scaled

_STEPS = 4


class Card(QFrame):
    """Four steps side by side, the demo to try them on, and a button to put the card away."""

    demo = Signal()

    def __init__(self, wording: Wording, kept: Kept) -> None:
        super().__init__()
        self._kept = kept
        self.setVisible(not kept.welcomed)
        self.setObjectName("card")
        self.setAccessibleName(wording.word("card.title"))
        title = QLabel(wording.word("card.title"))
        title.setObjectName("card-title")
        steps = QGridLayout()
        steps.setHorizontalSpacing(scaled(24, self))
        steps.setVerticalSpacing(scaled(2, self))
        for number in range(1, _STEPS + 1):
            head = QLabel(wording.word(f"card.step-{number}"))
            head.setObjectName("card-step")
            more = QLabel(unbroken(wording.word(f"card.more-{number}")))
            more.setWordWrap(True)
            more.setAlignment(Qt.AlignmentFlag.AlignTop)
            steps.addWidget(head, 0, number - 1)
            steps.addWidget(more, 1, number - 1)
            steps.setColumnStretch(number - 1, 1)
        self.open_demo = QPushButton(wording.word("card.demo"))
        self.done = QPushButton(wording.word("card.done"))
        self.open_demo.clicked.connect(self.demo)
        self.done.clicked.connect(self._put_away)
        top = QHBoxLayout()
        top.addWidget(title, 1)
        top.addWidget(self.open_demo)
        top.addWidget(self.done)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 12, 16, 14)
        column.setSpacing(8)
        column.addLayout(top)
        column.addLayout(steps)

    def _put_away(self) -> None:
        """The card comes again only when it is asked for."""
        self._kept.put_card_away()
        self.setVisible(False)
