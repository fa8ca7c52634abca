"""The pace of what need not follow every frame."""

from __future__ import annotations

from PySide6.QtCore import QObject
from pytestqt.qtbot import QtBot

from gui.pace import Pace


def test_the_first_call_is_made_at_once_and_many_become_one_more(qtbot: QtBot) -> None:
    owner, calls = QObject(), []
    pace = Pace(lambda: calls.append(1), 20, owner)
    pace.ask()
    assert len(calls) == 1
    for _ in range(50):
        pace.ask()
    assert len(calls) == 1
    qtbot.waitUntil(lambda: len(calls) == 2)
    qtbot.wait(60)
    assert len(calls) == 2
    pace.ask()
    assert len(calls) == 3
