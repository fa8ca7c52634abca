"""What the window asks the person: files, and what to do with unsaved work."""

import enum
from pathlib import Path
from typing import Protocol

from PySide6.QtWidgets import QFileDialog, QMessageBox, QWidget

from core.wording import Wording, message


class Leave(enum.Enum):
    """What to do with unsaved work before it is left."""

    SAVE = "save"
    DISCARD = "discard"
    CANCEL = "cancel"


class Ask(Protocol):
    """Questions to the person; answers are injected in tests."""

    def open_path(self, folder: Path, words: Wording) -> Path | None:
        """The project to open; None if the person thinks better of it."""

    def save_path(self, suggested: Path, filter_id: str, words: Wording) -> Path | None:
        """Where to save; None if the person thinks better of it."""

    def leave(self, name: str, words: Wording) -> Leave:
        """What to do with unsaved work."""

    def tell(self, sentence: str, words: Wording) -> None:
        """Says what went wrong with a file."""


class Dialogs:
    """The system's own dialogs."""

    def __init__(self, parent: QWidget) -> None:
        self._parent = parent

    def open_path(self, folder: Path, words: Wording) -> Path | None:
        """The project to open."""
        chosen, _ = QFileDialog.getOpenFileName(
            self._parent, words.word("ask.open"), str(folder), words.word("filter.eave")
        )
        return Path(chosen) if chosen else None

    def save_path(self, suggested: Path, filter_id: str, words: Wording) -> Path | None:
        """Where to save; the dialog itself asks before it writes over a file."""
        dialog = QFileDialog(self._parent, words.word("ask.save"), str(suggested.parent))
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setNameFilter(words.word(filter_id))
        dialog.setDefaultSuffix(suggested.suffix[1:])
        dialog.selectFile(suggested.name)
        return Path(dialog.selectedFiles()[0]) if dialog.exec() else None

    def leave(self, name: str, words: Wording) -> Leave:
        """Save, discard or cancel."""
        box = QMessageBox(self._parent)
        box.setIcon(QMessageBox.Icon.Warning)
        box.setText(words.say(message("ask.unsaved", name=name)))
        box.setInformativeText(words.word("ask.unsaved-more"))
        save = box.addButton(words.word("ask.save-it"), QMessageBox.ButtonRole.AcceptRole)
        discard = box.addButton(words.word("ask.discard"), QMessageBox.ButtonRole.DestructiveRole)
        cancel = box.addButton(words.word("ask.cancel"), QMessageBox.ButtonRole.RejectRole)
        box.setDefaultButton(save)
        box.setEscapeButton(cancel)
        box.exec()
        answers = {save: Leave.SAVE, discard: Leave.DISCARD}
        return next((a for b, a in answers.items() if b is box.clickedButton()), Leave.CANCEL)

    def tell(self, sentence: str, words: Wording) -> None:
        """Says what went wrong with a file."""
        box = QMessageBox(self._parent)
        box.setIcon(QMessageBox.Icon.Warning)
        box.setText(sentence)
        box.addButton(words.word("ask.ok"), QMessageBox.ButtonRole.AcceptRole)
        box.exec()
