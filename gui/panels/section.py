"""A form under a heading that folds it away."""

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QToolButton, QVBoxLayout, QWidget

from gui.panels.form import Form


class Section(QWidget):
    """A heading to press, and the form under it when it is unfolded.

    The form is made when it is first unfolded, and brought up to date only while it is.
    """

    def __init__(self, text: str, make: Callable[[], QWidget]) -> None:
        super().__init__()
        self._make = make
        self._form: QWidget | None = None
        self.button = QToolButton()
        self.button.setText(text)
        self.button.setObjectName("fold")
        self.button.setCheckable(True)
        self.button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        self.button.setArrowType(Qt.ArrowType.RightArrow)
        self.button.toggled.connect(self._unfold)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addWidget(self.button)
        self._column = column

    def refresh(self) -> None:
        """Shows the values of the project on the desk."""
        if self.button.isChecked() and isinstance(self._form, Form):
            self._form.refresh()

    def _unfold(self, unfolded: bool) -> None:
        arrow = Qt.ArrowType.DownArrow if unfolded else Qt.ArrowType.RightArrow
        self.button.setArrowType(arrow)
        if self._form is None:
            self._form = self._make()
            self._column.addWidget(self._form)
        # A section that is not shown holds nothing to show the values of.
        if not self.isHidden():
            self.refresh()
        self._form.setVisible(unfolded)
