"""The line that stands over the paper when a step would spoil what is cut already."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton

from gui.desk import Desk


class DoubtBar(QFrame):
    """Says what would no longer serve, and leaves the choice to the person; nothing is blocked."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self.setObjectName("doubt")
        words = desk.wording
        self.text = QLabel()
        self.text.setWordWrap(True)
        self.go_on = QPushButton(words.word("doubt.go-on"))
        self.leave = QPushButton(words.word("doubt.leave"))
        self.go_on.clicked.connect(desk.go_on)
        self.leave.clicked.connect(desk.let_be)
        row = QHBoxLayout(self)
        row.setContentsMargins(14, 8, 14, 8)
        row.setSpacing(10)
        row.addWidget(self.text, 1)
        row.addWidget(self.leave)
        row.addWidget(self.go_on)
        desk.doubted.connect(self.refresh)
        self.refresh()

    def refresh(self) -> None:
        """Shows the doubt there is; none, and the bar is gone."""
        doubt = self._desk.doubt
        if doubt is not None:
            sentence = doubt.sentence(self._desk.wording)
            self.text.setText(sentence)
            self.setAccessibleName(sentence)
        shown = doubt is not None
        if shown and self.isHidden():
            self.setVisible(True)
            self.leave.setFocus(Qt.FocusReason.OtherFocusReason)
        self.setVisible(shown)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        """Escape leaves what is cut as it is."""
        if event.key() == Qt.Key.Key_Escape:
            self._desk.let_be()
        else:
            super().keyPressEvent(event)
