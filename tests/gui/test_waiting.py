"""Work beside the window: told after a moment, stopped on demand, its outcome never lost."""

from __future__ import annotations

import threading
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

import gui.files
from asked import Asked
from core.model import SiteRecord
from core.storage import Document
from gui.asking import Leave
from gui.desk import Desk
from gui.theme import Theme
from gui.waiting import AtOnce, Beside, Outcome, Wanted
from gui.window import Window
from loft import loft


class Slow:
    """Work that goes on until it is let go."""

    def __init__(self) -> None:
        self.go = threading.Event()
        self.wanted: bool | None = None
        self.outcomes: list[Outcome] = []

    def work(self, wanted: Wanted) -> None:
        self.go.wait(30)
        self.wanted = wanted()


def test_quick_work_is_done_before_run_returns(qtbot: QtBot) -> None:
    beside = Beside()
    done: list[str] = []
    with qtbot.assertNotEmitted(beside.began):
        beside.run("quick", lambda _: done.append("work"), lambda _: done.append("then"))
    assert done == ["work", "then"]


def test_slow_work_is_told_and_ends_later(qtbot: QtBot) -> None:
    beside, slow = Beside(), Slow()
    with qtbot.waitSignal(beside.began) as told:
        assert beside.run("slow", slow.work, slow.outcomes.append)
    assert told.args == ["slow"]
    assert slow.outcomes == []
    with qtbot.waitSignal(beside.ended):
        slow.go.set()
    (outcome,) = slow.outcomes
    outcome()
    assert slow.wanted is True


def test_one_piece_of_work_at_a_time(qtbot: QtBot) -> None:
    beside, slow = Beside(), Slow()
    beside.run("slow", slow.work, slow.outcomes.append)
    assert not beside.run("another", slow.work, slow.outcomes.append)
    with qtbot.waitSignal(beside.ended):
        slow.go.set()
    assert len(slow.outcomes) == 1


def test_what_is_stopped_is_no_longer_wanted_and_tells_nothing(qtbot: QtBot) -> None:
    beside, slow = Beside(), Slow()
    beside.run("slow", slow.work, slow.outcomes.append)
    with qtbot.waitSignal(beside.ended):
        beside.stop()
    slow.go.set()
    qtbot.waitUntil(lambda: slow.wanted is not None)
    qtbot.wait(20)
    assert slow.wanted is False
    assert slow.outcomes == []
    # The next work is not held up.
    assert beside.run("next", lambda _: None, slow.outcomes.append)
    assert len(slow.outcomes) == 1


def _fail(_: Wanted) -> None:
    raise ValueError("no room")


def test_what_the_work_raises_is_raised_to_whoever_asks() -> None:
    outcomes: list[Outcome] = []
    for runner in (AtOnce(), Beside()):
        runner.run("failing", _fail, outcomes.append)
    for outcome in outcomes:
        with pytest.raises(ValueError, match="no room"):
            outcome()
    assert len(outcomes) == 2


@pytest.fixture
def window(qtbot: QtBot, tmp_path: Path) -> Window:
    asked = Asked(saves=tmp_path / "loft.pdf", leaves=Leave.DISCARD)
    window = Window(Desk(Document(loft(), SiteRecord())), Theme.day(), ask=asked)
    qtbot.addWidget(window)
    window.show()
    return window


def test_slow_sheets_leave_the_window_alive_and_are_recorded(
    window: Window, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    go = threading.Event()
    made = gui.files.sheets_bytes  # type: ignore[attr-defined]

    def slowly(*args: object) -> bytes:
        go.wait(30)
        return made(*args)  # type: ignore[arg-type]

    monkeypatch.setattr(gui.files, "sheets_bytes", slowly)
    assert window.files.print_sheets()
    assert window.waiting.isVisible()
    assert window.waiting.text.text() == "Making the sheets"
    assert not window.files.save_drawing()
    assert "still being made" in window.foot.text()
    assert not window.close()
    assert not window.desk.site.sheets
    go.set()
    qtbot.waitUntil(lambda: not window.waiting.isVisible())
    assert (tmp_path / "loft.pdf").read_bytes().startswith(b"%PDF")
    assert [sheet.letter for sheet in window.desk.site.sheets] == ["B"]


def test_stopped_sheets_are_neither_written_nor_recorded(
    window: Window, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    go, ran_out = threading.Event(), threading.Event()

    def slowly(*_: object) -> bytes:
        go.wait(30)
        ran_out.set()
        return b"%PDF"

    monkeypatch.setattr(gui.files, "sheets_bytes", slowly)
    window.files.print_sheets()
    QTest.mouseClick(window.waiting.stop, Qt.MouseButton.LeftButton)
    assert not window.waiting.isVisible()
    go.set()
    qtbot.waitUntil(ran_out.is_set)
    qtbot.wait(50)
    assert not (tmp_path / "loft.pdf").exists()
    assert window.desk.site.sheets == ()
