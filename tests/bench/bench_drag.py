"""Milliseconds a frame while a thing is dragged, beside an empty repaint of the same window.

Run as a script: python tests/bench/bench_drag.py [--frames N]. It judges nothing. Each figure
stands twice: as the clock has it, and as the processor was busy with it, since on a machine that
is shared with others only the second tells of the program.
"""

from __future__ import annotations

import argparse
import gc
import os
import statistics
import sys
from collections.abc import Callable
from functools import partial
from pathlib import Path
from time import perf_counter, process_time

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

SIZES = ((1400, 860), (820, 730))
"""A sheet as large as the window, px, and as large as it is in it beside lists and fields."""

Took = tuple[float, float]
"""Milliseconds by the clock, and of the processor."""


class Empty(QWidget):
    """The paper and nothing on it."""

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802, ARG002
        painter = QPainter(self)
        painter.fillRect(self.rect(), Theme.day().paper)
        painter.end()


def heavy_project() -> Project:
    """A wall up and down a slope, 60 places for studs on 12 in. centres, 6 doors and 6 windows."""
    doors = tuple(US.opening(f"door-{n}", 20 + 120 * n, 34, 82.5) for n in range(6))
    windows = tuple(US.opening(f"window-{n}", 80 + 120 * n, 30, 72, sill=36) for n in range(6))
    room = US.room(760.0, (90.0, in_12(4)), (90.0, in_12(4)), flat=150.0)
    openings = (*doors, *windows)
    wall = US.wall((20, 100), (740, 100), spacing=12.0, openings=openings, plate=(1.5, 3.5))
    return Project("bench", System.INCH, room, (wall,))


def measure(size: tuple[int, int], frames: int) -> None:
    """Drag a stud, a door and a window on a sheet of so many px, and print what each frame took."""
    desk = Desk(Document(heavy_project(), SiteRecord()))
    sheet, empty = Sheet(desk, Theme.day()), Empty()
    for widget in (sheet, empty):
        widget.resize(*size)
        widget.show()
    QApplication.processEvents()
    gc.freeze()  # as the program does when its window is open
    assert desk.result is not None
    assert desk.result.frame is not None
    frame, drawn = desk.result.frame, len(sheet.scene().drawing)
    framed = sum(placed.fit.fits for placed in frame.openings)
    wide, high = size
    print(f"{wide} by {high}: {len(frame.members)} members, {framed} openings, {drawn} elements")
    print(f"load of the last minute {os.getloadavg()[0]:.1f} on {os.cpu_count()} processors")
    print(f"{'':34}{'clock: median   p95':>22}{'busy: median   p95':>24}")
    _print("empty repaint", [_timed(empty.repaint) for _ in range(frames)])
    _print("repaint, nothing changed", [_timed(sheet.repaint) for _ in range(frames)])
    _print("repaint afresh", [_timed(lambda: _afresh(sheet)) for _ in range(frames)])
    studs = [m for m in frame.members if movable(m)]
    for key in (studs[len(studs) // 2].key, "B/door-1", "B/window-2"):
        _drag(desk, sheet, key, frames)


def _drag(desk: Desk, sheet: Sheet, key: str, frames: int) -> None:
    pointer: Pointer = sheet._pointer
    desk.hold(key)
    pointer.drag = drag = Drag.of(desk, key)
    assert drag is not None
    grip = grip_of(desk.project.habits.tape, sheet.camera.scale, free=True)
    worked, drawn, painted = [], [], []
    for n in range(frames):
        by = (3.0 * (n % 100 + 1), 0.0)
        worked.append(_timed(partial(drag.pull, by, grip)))
        drawn.append(_timed(sheet.scene))
        painted.append(_timed(sheet.repaint))
    pointer.escape()
    sheet.repaint()
    _print(f"{key}: recompute", worked)
    _print(f"{key}: draw", drawn)
    _print(f"{key}: paint", painted)
    whole = [
        (a[0] + b[0] + c[0], a[1] + b[1] + c[1])
        for a, b, c in zip(worked, drawn, painted, strict=True)
    ]
    _print(f"{key}: whole frame", whole)


def _afresh(sheet: Sheet) -> None:
    sheet.set_theme(Theme.day())
    sheet.repaint()


def _timed(work: Callable[[], object]) -> Took:
    busy, start = process_time(), perf_counter()
    work()
    return (perf_counter() - start) * 1000, (process_time() - busy) * 1000


def _print(what: str, took: list[Took]) -> None:
    by_clock, busy = zip(*took, strict=True)
    print(f"{what:34}{_middle_and_late(by_clock):>22}{_middle_and_late(busy):>24}")


def _middle_and_late(times: tuple[float, ...]) -> str:
    late = sorted(times)[int(len(times) * 0.95)]
    return f"{statistics.median(times):.2f} {late:7.2f}"


def main() -> None:
    """Measure, offscreen unless QT_QPA_PLATFORM says otherwise."""
    parser = argparse.ArgumentParser(description="Milliseconds a frame while dragging.")
    parser.add_argument("--frames", type=int, default=100)
    frames = parser.parse_args().frames
    app = QApplication([])
    for size in SIZES:
        measure(size, frames)
    app.quit()


if __name__ == "__main__":
    main()
