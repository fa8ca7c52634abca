"""The menu of the files that were opened last, and of the demos."""

from collections.abc import Callable
from functools import partial
from pathlib import Path

from PySide6.QtWidgets import QMenu

from core.wording import Wording
from gui.keeping import Kept


class RecentMenu:
    """Filled anew whenever it is about to be shown, so that it is never stale."""

    def __init__(
        self, menu: QMenu, kept: Kept, open_path: Callable[[Path], object], words: Wording
    ) -> None:
        self._menu, self._kept, self._open, self._words = menu, kept, open_path, words
        menu.aboutToShow.connect(self.fill)
        self.fill()

    def fill(self) -> None:
        """Lists the files that are still there, the latest first."""
        self._menu.clear()
        for number, path in enumerate(self._kept.recent, start=1):
            # An ampersand in a file's name is no shortcut.
            action = self._menu.addAction(f"&{number}  {path.name.replace('&', '&&')}")
            action.setToolTip(str(path))
            action.triggered.connect(partial(self._reopen, path))
        if self._menu.isEmpty():
            self._menu.addAction(self._words.word("recent.none")).setEnabled(False)
            return
        self._menu.addSeparator()
        forget = self._menu.addAction(self._words.word("recent.forget"))
        forget.triggered.connect(self._kept.forget_recent)

    def _reopen(self, path: Path, *_: object) -> None:
        self._open(path)
