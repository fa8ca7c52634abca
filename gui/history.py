"""The undo stack: earlier projects with a line of text each, as many as the memory holds."""

import msgspec

from core.model import Project


class _Step(msgspec.Struct, frozen=True):
    """What was done, and the project before and after it."""

    text: str
    before: Project
    after: Project


class History:
    """The project at hand, the steps that led to it and those that were taken back.

    Going back and forth hands out the very projects that were recorded, so undo is exact.
    """

    def __init__(self, project: Project) -> None:
        self._done: list[_Step] = []
        self._undone: list[_Step] = []
        self._saved = project
        self.project = project

    def record(self, text: str, project: Project) -> bool:
        """Makes `project` the one at hand; no step, and False, if it equals the last."""
        if project == self.project:
            return False
        self._done.append(_Step(text, self.project, project))
        self._undone.clear()
        self.project = project
        return True

    def undo(self) -> bool:
        """Goes one step back; False if there is none."""
        if not self._done:
            return False
        step = self._done.pop()
        self._undone.append(step)
        self.project = step.before
        return True

    def redo(self) -> bool:
        """Goes one step forth again; False if there is none."""
        if not self._undone:
            return False
        step = self._undone.pop()
        self._done.append(step)
        self.project = step.after
        return True

    @property
    def undo_text(self) -> str | None:
        """What undo would take back."""
        return self._done[-1].text if self._done else None

    @property
    def redo_text(self) -> str | None:
        """What redo would do again."""
        return self._undone[-1].text if self._undone else None

    @property
    def is_clean(self) -> bool:
        """Whether the project at hand is the one last saved."""
        return self.project == self._saved

    def saved(self) -> None:
        """Notes that the project at hand is the one on disk."""
        self._saved = self.project
