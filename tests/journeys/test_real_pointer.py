"""One run of the program under a real X server, with a real pointer and real keys.

The program is started as a person starts it. Where its door stands on the screen is read off a
window of the same size that this test opens offscreen.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint
from pytestqt.qtbot import QtBot

import gui
from asked import Asked
from core.storage import Document, load
from gui.commands import main
from gui.desk import Desk
from gui.keeping import Kept
from gui.theme import Theme
from gui.window import Window

ROOT = Path(str(gui.__file__)).parent.parent
INCH = 25.4
PATIENCE = 30.0
"""Seconds that a slow machine may take for what is otherwise there at once."""

pytestmark = pytest.mark.slow


@pytest.fixture
def display() -> Iterator[str]:
    """An X server of our own, on a number that it finds free."""
    for tool in ("Xvfb", "xdotool"):
        assert shutil.which(tool), f"{tool} is missing; the check's set-up installs it"
    read, write = os.pipe()
    command = ["Xvfb", "-displayfd", str(write), "-screen", "0", "1400x860x24", "-dpi", "96"]
    with subprocess.Popen(
        [*command, "-nolisten", "tcp"], pass_fds=(write,), stderr=subprocess.DEVNULL
    ) as server:
        os.close(write)
        with os.fdopen(read) as numbers:
            number = numbers.readline().strip()
        assert number, "the X server did not start"
        yield f":{number}"
        server.terminate()


class Hand:
    """A pointer and a keyboard at the program's window."""

    def __init__(self, display: str) -> None:
        self.environment = {**os.environ, "DISPLAY": display}

    def do(self, *command: object) -> str:
        done = subprocess.run(
            ["xdotool", *(str(word) for word in command)],
            env=self.environment,
            capture_output=True,
            text=True,
            timeout=PATIENCE,
            check=True,
        )
        return done.stdout.strip()

    def find(self, title: str) -> str:
        """The window with this in its title, brought into the focus."""
        window = self.do("search", "--sync", "--onlyvisible", "--name", title).splitlines()[0]
        self.do("windowfocus", "--sync", window)
        return window

    def drag(self, start: QPoint, by: int) -> None:
        self.do("mousemove", start.x(), start.y(), "mousedown", 1)
        for step in range(1, 11):
            self.do("mousemove", start.x() + by * step // 10, start.y())
        self.do("mouseup", 1)


def until(there: Callable[[], bool], what: str) -> None:
    end = time.monotonic() + PATIENCE
    while not there():
        assert time.monotonic() < end, f"waited in vain: {what}"
        time.sleep(0.05)


def door_on_screen(document: Document, qtbot: QtBot) -> tuple[QPoint, float]:
    """The middle of the first wall's first opening, px, and the px for each mm."""
    window = Window(Desk(document), Theme.day(), Path("demo.eave"), Asked())
    qtbot.addWidget(window)
    window.resize(1400, 860)
    with qtbot.waitExposed(window):
        window.show()
    opening = document.project.walls[0].openings[0]
    across, up = opening.left.mm + opening.width.mm / 2, opening.head.mm / 2
    x, y = window.sheet.camera.to_screen((across, up))
    place = window.sheet.mapTo(window, QPoint(round(x), round(y)))
    scale = window.sheet.camera.scale
    window.close()
    return place, scale


def settled(folder: Path) -> Path:
    """A folder of settings of somebody who has put the first card away: none of the tester's."""
    settings = folder / "settings"
    kept = Kept.in_file(settings / "eavewright" / "eavewright.conf")
    kept.put_card_away()
    kept.sync()
    return settings


def test_a_door_is_dragged_saved_and_put_back(display: str, tmp_path: Path, qtbot: QtBot) -> None:
    path = tmp_path / "demo.eave"
    assert main(["demo", "--out", str(path)]) == 0
    before = load(path)
    place, scale = door_on_screen(before, qtbot)

    def left() -> float:
        return load(path).project.walls[0].openings[0].left.mm

    start = left()
    hand = Hand(display)
    environment = {
        **hand.environment,
        "QT_QPA_PLATFORM": "xcb",
        "PYTHONPATH": str(ROOT),
        "XDG_CONFIG_HOME": str(settled(tmp_path)),
    }
    with subprocess.Popen(
        [sys.executable, "-m", "gui", str(path)], cwd=tmp_path, env=environment
    ) as program:
        try:
            hand.find("demo.eave")
            hand.drag(place, 40)
            hand.do("key", "ctrl+s")
            until(lambda: left() != start, "the moved door in the file")
            # 40 px to the right, give or take what it snaps to: 7 px.
            assert (left() - start) * scale == pytest.approx(40, abs=8)
            hand.do("key", "ctrl+z")
            hand.do("key", "ctrl+s")
            until(lambda: load(path) == before, "the door where it was")
            hand.do("key", "ctrl+q")
            assert program.wait(PATIENCE) == 0
        finally:
            program.kill()
