"""Work that takes its time: done beside the window, which stays alive and can stop it."""

import threading
from collections.abc import Callable
from typing import Protocol

from PySide6.QtCore import QObject, Qt, Signal

Wanted = Callable[[], bool]
"""Whether anybody still waits for the work; to be asked before anything is written."""

Work = Callable[[Wanted], None]

Outcome = Callable[[], None]
"""Called when the work is done; raises what the work raised."""

SOON = 0.3
"""What is done within so many seconds needs no word about it."""


class Runner(Protocol):
    """Does a piece of work, then says how it went."""

    def run(self, what: str, work: Work, then: Callable[[Outcome], None]) -> bool:
        """Begins; False if another piece of work is still being done."""


class AtOnce:
    """Does the work on the spot."""

    def run(self, what: str, work: Work, then: Callable[[Outcome], None]) -> bool:  # noqa: ARG002
        """Does it all before it returns."""
        then(lambda: work(lambda: True))
        return True


class Beside(QObject):
    """Does one piece of work at a time in a thread of its own.

    `began` tells what is being done, once it has taken more than a moment; `ended` that it is over.
    Work that is stopped runs out by itself, and whatever comes of it is dropped: so the work must
    touch nothing that the window shows.
    """

    began = Signal(str)
    ended = Signal()
    _over = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._task: _Task | None = None
        self._over.connect(self._finish, Qt.ConnectionType.QueuedConnection)

    def run(self, what: str, work: Work, then: Callable[[Outcome], None]) -> bool:
        """Begins; waits a moment itself, since most work is done by then."""
        if self._task is not None:
            return False
        task = self._task = _Task(work, then)
        thread = threading.Thread(target=task.run, args=(self._over.emit,), daemon=True)
        thread.start()
        thread.join(SOON)
        if thread.is_alive():
            self.began.emit(what)
        else:
            self._finish(task)
        return True

    @property
    def busy(self) -> bool:
        """Whether something is being done."""
        return self._task is not None

    def stop(self) -> None:
        """Drops the work that is being done."""
        if self._task is not None:
            self._task.stopped.set()
            self._task = None
            self.ended.emit()

    def _finish(self, task: "_Task") -> None:
        if task is not self._task:
            # Stopped, or finished within the moment and told already.
            return
        self._task = None
        self.ended.emit()
        task.then(task.outcome)


class _Task:
    """A piece of work, and what became of it."""

    def __init__(self, work: Work, then: Callable[[Outcome], None]) -> None:
        self._work, self.then = work, then
        self._raised: Exception | None = None
        self.stopped = threading.Event()

    def _wanted(self) -> bool:
        return not self.stopped.is_set()

    def run(self, over: Callable[[object], None]) -> None:
        """Does the work in its thread."""
        try:
            self._work(self._wanted)
        except Exception as error:
            self._raised = error
        over(self)

    def outcome(self) -> None:
        """Raises what the work raised."""
        if self._raised is not None:
            raise self._raised
