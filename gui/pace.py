"""A pace for what need not follow every frame of a drag."""

from collections.abc import Callable

from PySide6.QtCore import QObject, QTimer


class Pace(QObject):
    """Calls at once if the last call is long past, else once more at the end of the pause."""

    def __init__(self, call: Callable[[], None], pause_ms: int, parent: QObject) -> None:
        super().__init__(parent)
        self._call = call
        self._waiting = False
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(pause_ms)
        self._timer.timeout.connect(self._over)

    def ask(self) -> None:
        """Asks for a call."""
        if self._timer.isActive():
            self._waiting = True
            return
        self._run()

    def _over(self) -> None:
        if self._waiting:
            self._run()

    def _run(self) -> None:
        self._waiting = False
        self._call()
        self._timer.start()
