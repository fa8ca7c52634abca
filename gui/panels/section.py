"""A form under a heading that folds it away."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QToolButton, QVBoxLayout, QWidget

from gui.panels.form import Form


class Section(QWidget):
    """A heading to press, and the form under it when it is unfolded.

    A `lazy` one, whose values take time to work out, is brought up to date only while unfolded.
    """

    def __init__(self, text: str, form: Form, *, lazy: bool = False) -> None:
        super().__init__()
        self._form, self._lazy = form, lazy
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
        column.addWidget(form)
        form.setVisible(False)

    def refresh(self) -> None:
        """Shows the values of the project on the desk."""
        if self.button.isChecked() or not self._lazy:
            self._form.refresh()

    def _unfold(self, unfolded: bool) -> None:
        arrow = Qt.ArrowType.DownArrow if unfolded else Qt.ArrowType.RightArrow
        self.button.setArrowType(arrow)
        # A section that is not shown holds nothing to show the values of.
        if unfolded and self._lazy and not self.isHidden():
            self._form.refresh()
        self._form.setVisible(unfolded)
