"""The system's dialogs are asked in the person's words, and their answers understood."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QFileDialog, QMessageBox, QWidget
from pytestqt.qtbot import QtBot

from gui.asking import Dialogs, Leave
from gui.wordings import plain_wording

WORDS = plain_wording()


@pytest.fixture
def dialogs(qtbot: QtBot) -> Iterator[Dialogs]:
    parent = QWidget()
    qtbot.addWidget(parent)
    yield Dialogs(parent)
    # Named once more, so that the parent lives until here.
    parent.close()


@pytest.mark.parametrize(
    ("button", "answer"),
    [("&Save", Leave.SAVE), ("&Discard", Leave.DISCARD), ("Cancel", Leave.CANCEL)],
)
def test_each_button_is_its_answer(
    dialogs: Dialogs, monkeypatch: pytest.MonkeyPatch, button: str, answer: Leave
) -> None:
    texts: list[str] = []

    def press(box: QMessageBox) -> int:
        texts.append(box.text())
        next(b for b in box.buttons() if b.text() == button).click()
        return 0

    monkeypatch.setattr(QMessageBox, "exec", press)
    assert dialogs.leave("loft.eave", WORDS) is answer
    assert texts == ["loft.eave has changes that no file holds yet."]


def test_a_dialog_closed_without_an_answer_keeps_the_work(
    dialogs: Dialogs, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(QMessageBox, "exec", lambda _: 0)
    assert dialogs.leave("loft.eave", WORDS) is Leave.CANCEL


@pytest.mark.parametrize(("chosen", "path"), [("/a/b.eave", Path("/a/b.eave")), ("", None)])
def test_a_file_to_open(
    dialogs: Dialogs, monkeypatch: pytest.MonkeyPatch, chosen: str, path: Path | None
) -> None:
    asked: list[str] = []

    def choose(_: QWidget, title: str, folder: str, names: str) -> tuple[str, str]:
        asked.extend((title, folder, names))
        return chosen, names

    monkeypatch.setattr(QFileDialog, "getOpenFileName", choose)
    assert dialogs.open_path(Path("/a"), WORDS) == path
    assert asked == ["Open a project", "/a", "Eavewright projects (*.eave)"]


@pytest.mark.parametrize("accepted", [True, False])
def test_a_file_to_save_to(
    dialogs: Dialogs, monkeypatch: pytest.MonkeyPatch, tmp_path: Path, accepted: bool
) -> None:
    suffixes: list[str] = []

    def accept(dialog: QFileDialog) -> bool:
        suffixes.append(dialog.defaultSuffix())
        return accepted

    monkeypatch.setattr(QFileDialog, "exec", accept)
    found = dialogs.save_path(tmp_path / "loft.pdf", "filter.pdf", WORDS)
    assert found == (tmp_path / "loft.pdf" if accepted else None)
    assert suffixes == ["pdf"]


def test_what_went_wrong_is_told(dialogs: Dialogs, monkeypatch: pytest.MonkeyPatch) -> None:
    texts: list[str] = []
    monkeypatch.setattr(QMessageBox, "exec", lambda box: texts.append(box.text()))
    dialogs.tell("The disk is full.", WORDS)
    assert texts == ["The disk is full."]
