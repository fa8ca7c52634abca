"""How the window looks to this person: by day or by night, and how large its texts are."""

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QGuiApplication

from gui.keeping import Kept
from gui.sizes import set_text_step
from gui.theme import Theme


class Looks(QObject):
    """Day or night as the person chose, else as the system has it; and the size of texts."""

    recoloured = Signal()
    resized = Signal()

    def __init__(self, kept: Kept, theme: Theme | None = None) -> None:
        """`theme` is shown until the person or the system turns to another."""
        super().__init__()
        self._kept = kept
        self.theme = theme or self._chosen()
        kept.text_step = set_text_step(kept.text_step)
        hints = QGuiApplication.styleHints()
        hints.colorSchemeChanged.connect(self._follow)

    @property
    def follows_system(self) -> bool:
        """Whether day and night are left to the system."""
        return self._kept.night is None

    def turn(self) -> None:
        """From day to night or back; the choice stays."""
        self._kept.night = not self.theme.dark
        self._recolour()

    def follow_system(self) -> None:
        """Leaves day and night to the system from now on."""
        self._kept.night = None
        self._recolour()

    def larger(self) -> None:
        """Makes texts a step larger."""
        self._resize(1)

    def smaller(self) -> None:
        """Makes texts a step smaller."""
        self._resize(-1)

    def _resize(self, by: int) -> None:
        before = self._kept.text_step
        self._kept.text_step = set_text_step(before + by)
        if self._kept.text_step != before:
            self.resized.emit()

    def _follow(self) -> None:
        if self.follows_system:
            self._recolour()

    def _recolour(self) -> None:
        self.theme = self._chosen()
        self.recoloured.emit()

    def _chosen(self) -> Theme:
        night = self._kept.night
        if night is None:
            night = QGuiApplication.styleHints().colorScheme() is Qt.ColorScheme.Dark
        return Theme.night() if night else Theme.day()
