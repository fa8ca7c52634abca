"""Answers to the window's questions, given beforehand."""

from __future__ import annotations

from pathlib import Path

from core.wording import Wording
from gui.asking import Leave


class Asked:
    """Gives the answers it was told and keeps what it was asked and told."""

    def __init__(
        self, *, opens: Path | None = None, saves: Path | None = None, leaves: Leave = Leave.CANCEL
    ) -> None:
        self.opens, self.saves, self.leaves = opens, saves, leaves
        self.questions: list[str] = []
        self.told: list[str] = []
        self.suggested: list[Path] = []

    def open_path(self, folder: Path, words: Wording) -> Path | None:
        self.questions.append("open")
        assert words.word("ask.open")
        assert folder.is_absolute()
        return self.opens

    def save_path(self, suggested: Path, filter_id: str, words: Wording) -> Path | None:
        self.questions.append(filter_id)
        self.suggested.append(suggested)
        assert suggested.suffix[1:] in words.word(filter_id)
        return self.saves

    def leave(self, name: str, words: Wording) -> Leave:
        self.questions.append(f"leave {name}")
        assert words.word("ask.discard")
        return self.leaves

    def tell(self, sentence: str, words: Wording) -> None:
        assert words.word("ask.ok")
        self.told.append(sentence)
