"""The line at the foot that tells what is being made, and stops it."""

from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QProgressBar, QPushButton

from core.wording import Wording
from gui.sizes import scaled
from gui.waiting import Beside


class WaitingBar(QFrame):
    """Seen only while something takes longer than a moment; the work itself goes on meanwhile."""

    def __init__(self, beside: Beside, wording: Wording) -> None:
        super().__init__()
        self.setObjectName("waiting")
        self.text = QLabel()
        self.progress = QProgressBar()
        # How long it takes is not known, only that it goes on.
        self.progress.setRange(0, 0)
        self.progress.setTextVisible(False)
        self.progress.setFixedWidth(scaled(160, self))
        self.stop = QPushButton(wording.word("waiting.stop"))
        self.stop.clicked.connect(beside.stop)
        row = QHBoxLayout(self)
        row.setContentsMargins(14, 6, 14, 6)
        row.setSpacing(10)
        row.addWidget(self.text)
        row.addWidget(self.progress)
        row.addStretch(1)
        row.addWidget(self.stop)
        beside.began.connect(self._show)
        beside.ended.connect(self.hide)
        self.hide()

    def _show(self, what: str) -> None:
        self.text.setText(what)
        self.progress.setAccessibleName(what)
        self.setAccessibleName(what)
        self.show()
