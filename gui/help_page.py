"""The page of help: how it works and what the words mean, in a window beside the work."""

import importlib.resources

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QTextBrowser, QVBoxLayout, QWidget

import resources
from core.lengths import unbroken
from core.wording import Wording
from gui.sizes import scaled
from gui.tips import glossary


def help_text(wording: Wording) -> str:
    """The whole page as Markdown: the guide, then every word that is explained."""
    guide = (importlib.resources.files(resources) / _GUIDE).read_text(encoding="utf-8")
    words = "\n".join(f"- **{word}**: {means}" for word, means in glossary(wording))
    return f"{guide}\n## {wording.word('help.words')}\n\n{words}\n"


_GUIDE = "help/guide.md"


class HelpPage(QWidget):
    """A window of its own, so that it can stand beside the drawing; it asks for no network."""

    def __init__(self, wording: Wording, parent: QWidget) -> None:
        super().__init__(parent, Qt.WindowType.Window)
        self.setWindowTitle(wording.word("help.title"))
        self.page = QTextBrowser()
        self.page.setMarkdown(unbroken(help_text(wording)))
        self.page.setAccessibleName(wording.word("help.title"))
        self.page.document().setDocumentMargin(scaled(24, self))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.page)
        self.resize(scaled(720, self), scaled(760, self))
