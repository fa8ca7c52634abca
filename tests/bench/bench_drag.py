"""Milliseconds a frame while a thing is dragged, beside an empty repaint of the same window.

Run as a script: python tests/bench/bench_drag.py [--frames N]. It judges nothing.
"""

from __future__ import annotations

import argparse
import os
import statistics
import sys
from collections.abc import Callable
from functools import partial
from pathlib import Path
from time import perf_counter

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT), str(ROOT / "tests" / "support")]
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtGui import QPainter, QPaintEvent  # noqa: E402
from PySide6.QtWidgets import QApplication, QWidget  # noqa: E402

from core.framing.moving import movable  # noqa: E402
from core.lengths import System  # noqa: E402
from core.model import Project, SiteRecord  # noqa: E402
from core.storage import Document  # noqa: E402
from gui.desk import Desk  # noqa: E402
from gui.sketcher.gestures import Drag  # noqa: E402
from gui.sketcher.pointer import Pointer  # noqa: E402
from gui.sketcher.pulls import grip_of  # noqa: E402
from gui.sketcher.sheet import Sheet  # noqa: E402
from gui.theme import Theme  # noqa: E402
from walls import US, in_12  # noqa: E402

SIZE = (1400, 860)


class Empty(QWidget):
    """The paper and nothing on it."""

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802, ARG002
        painter = QPainter(self)
        painter.fillRect(self.rect(), Theme.day().paper)
        painter.end()


def heavy_project() -> Project:
    """A wall up and down a slope, 60 studs on 12 in. centres, with four doors and two windows."""
    doors = tuple(US.opening(f"door-{n}", 90 + 130 * n, 34, 82.5) for n in range(4))
    windows = tuple(US.opening(f"window-{n}", 160 + 260 * n, 30, 72, sill=36) for n in range(2))
    room = US.room(760.0, (48.0, in_12(4)), (48.0, in_12(4)), flat=150.0)
    openings = (*doors, *windows)
    wall = US.wall((20, 100), (740, 100), spacing=12.0, openings=openings, plate=(1.5, 3.5))
    return Project("bench", System.INCH, room, (wall,))


def measure(frames: int) -> None:
    """Drag a stud, then a door, and print what each frame took."""
    desk = Desk(Document(heavy_project(), SiteRecord()))
    sheet, empty = Sheet(desk, Theme.day()), Empty()
    for widget in (sheet, empty):
        widget.resize(*SIZE)
        widget.show()
    QApplication.processEvents()
    assert desk.result is not None
    assert desk.result.frame is not None
    members, drawn = len(desk.result.frame.members), len(sheet.scene().drawing)
    print(f"{members} members, {len(desk.result.frame.openings)} openings, {drawn} elements")
    _print("empty repaint", [_timed(empty.repaint) for _ in range(frames)])
    _print("repaint, nothing changed", [_timed(sheet.repaint) for _ in range(frames)])
    _print("repaint afresh", [_timed(lambda: _afresh(sheet)) for _ in range(frames)])
    studs = [m for m in desk.result.frame.members if movable(m)]
    for key in (studs[len(studs) // 2].key, "B/door-1"):
        _drag(desk, sheet, key, frames)


def _drag(desk: Desk, sheet: Sheet, key: str, frames: int) -> None:
    pointer: Pointer = sheet._pointer
    pointer.drag = drag = Drag.of(desk, key)
    assert drag is not None
    grip = grip_of(desk.project.habits.tape, sheet.camera.scale, free=True)
    worked, painted = [], []
    for n in range(frames):
        by = (3.0 * (n % 100 + 1), 0.0)
        worked.append(_timed(partial(drag.pull, by, grip)))
        painted.append(_timed(sheet.repaint))
    pointer.escape()
    sheet.repaint()
    _print(f"{key}: recompute", worked)
    _print(f"{key}: draw and paint", painted)
    _print(f"{key}: whole frame", [a + b for a, b in zip(worked, painted, strict=True)])


def _afresh(sheet: Sheet) -> None:
    sheet.set_theme(Theme.day())
    sheet.repaint()


def _timed(work: Callable[[], object]) -> float:
    start = perf_counter()
    work()
    return (perf_counter() - start) * 1000


def _print(what: str, times: list[float]) -> None:
    ordered = sorted(times)
    late = ordered[int(len(ordered) * 0.95)]
    print(f"{what:32} median {statistics.median(times):7.2f} ms   p95 {late:7.2f} ms")


def main() -> None:
    """Measure, offscreen unless QT_QPA_PLATFORM says otherwise."""
    parser = argparse.ArgumentParser(description="Milliseconds a frame while dragging.")
    parser.add_argument("--frames", type=int, default=100)
    frames = parser.parse_args().frames
    app = QApplication([])
    measure(frames)
    app.quit()


if __name__ == "__main__":
    main()
