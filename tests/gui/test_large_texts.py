"""The largest texts, dense screens: all words show whole, the drawing keeps its room."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

import clipping
from asked import Asked
from clipping import all_clipped, larger, states
from core.lengths import System
from core.model import TradeWords
from gui.asking import Leave
from gui.edits import set_habits, set_system
from gui.sizes import TEXT_SCALES, USUAL, set_text_step
from gui.theme import Theme
from gui.window import Window
from loft import desk_of

MOST = len(TEXT_SCALES) - 1 - USUAL
ROOT = Path(__file__).parents[2]


@pytest.fixture
def window(qtbot: QtBot) -> Iterator[Window]:
    window = Window(desk_of(), Theme.day(), ask=Asked(leaves=Leave.DISCARD))
    qtbot.addWidget(window)
    window.resize(1400, 860)
    with qtbot.waitExposed(window):
        window.show()
    yield window
    set_text_step(0)


@pytest.mark.parametrize("steps", [-1, 0, MOST], ids=["smallest", "usual", "largest"])
def test_all_words_show_whole(window: Window, steps: int) -> None:
    larger(window, steps)
    assert all_clipped(window) == {}


def test_all_words_show_whole_in_metric(window: Window) -> None:
    metric = set_system(window.desk.project, System.METRIC)
    window.desk.commit("metric", set_habits(metric, words=TradeWords.METRIC))
    larger(window, MOST)
    assert all_clipped(window) == {}


def test_the_largest_texts_leave_a_third_of_the_window_to_the_drawing(window: Window) -> None:
    larger(window, MOST)
    for state in states(window):
        if not state.startswith("new room"):
            QTest.qWait(100)
            assert window.width() == 1400, state
            assert window.middle.width() * 3 >= 1400, state


def test_at_double_density_all_words_show_whole() -> None:
    paths = os.pathsep.join((str(ROOT), str(ROOT / "tests" / "support")))
    more = {"QT_SCALE_FACTOR": "2", "QT_QPA_PLATFORM": "offscreen", "PYTHONPATH": paths}
    command = [sys.executable, str(clipping.__file__)]
    ran = subprocess.run(command, env={**os.environ, **more}, capture_output=True, check=True)
    assert json.loads(ran.stdout) == [2.0, {}]
