"""Where the person is on the right side, found again when the window is made anew."""

from typing import NamedTuple

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget

from gui.held import Held
from gui.panels.section import Section


class Whereabouts(NamedTuple):
    """The forms that are unfolded, how far down one has scrolled, and the field with the keys.

    Told by names and counts, since words and sizes are others afterwards.
    """

    unfolded: tuple[str, ...]
    down: int
    field: tuple[str, int] | None

    @classmethod
    def of(cls, held: Held) -> "Whereabouts":
        """Where the person is now."""
        parts = [(name, held.part(name)) for name in held.stands]
        unfolded = (name for name, part in parts if _is_unfolded(part))
        field = next(
            (
                (name, at)
                for name, part in parts
                for at, widget in enumerate(_fields(part))
                if widget.hasFocus()
            ),
            None,
        )
        return cls(tuple(unfolded), held.verticalScrollBar().value(), field)

    def bring_back(self, held: Held) -> None:
        """Unfolds the same forms, and gives the keys to the same field if it is still there."""
        for name in self.unfolded:
            part = held.part(name)
            if isinstance(part, Section):
                part.button.setChecked(True)
        if self.field is not None and self.field[0] in held.stands:
            name, at = self.field
            fields = _fields(held.part(name))
            if at < len(fields):
                fields[at].setFocus(Qt.FocusReason.OtherFocusReason)
        held.verticalScrollBar().setValue(self.down)


def _is_unfolded(part: QWidget) -> bool:
    return isinstance(part, Section) and part.button.isChecked()


def _fields(part: QWidget) -> list[QWidget]:
    """What can have the keys in a form, in the order it was made."""
    inside = (part, *part.findChildren(QWidget))
    return [w for w in inside if w.focusPolicy() & Qt.FocusPolicy.TabFocus]
