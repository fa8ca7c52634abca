"""From the start of the program to its demo painted and ready, beside a bare window of Qt.

Run as a script: python tests/bench/bench_start.py [--times N]. It judges nothing. Each start is a
process of its own, by turns the bare window and the program, so that both meet the same machine;
told are the least and the median time by the clock and of the processor.
"""

from __future__ import annotations

import argparse
import os
import statistics
import subprocess
import sys
import tempfile
from pathlib import Path
from time import perf_counter

ROOT = Path(__file__).resolve().parents[2]

BARE = """
import sys
from PySide6.QtWidgets import QApplication, QMainWindow
app = QApplication(sys.argv[:1])
app.setStyle("Fusion")
window = QMainWindow()
window.resize(1400, 860)
window.show()
app.processEvents()
"""

PROGRAM = """
import sys
from pathlib import Path
from PySide6.QtWidgets import QApplication
QApplication.exec = staticmethod(QApplication.processEvents)
from gui.commands import main
main([sys.argv[1]])
"""

Took = tuple[float, float]
"""Milliseconds by the clock, and of the processor."""


def start(code: str, *arguments: str) -> Took:
    """What a process takes from its start until its window is painted and events are handled."""
    before, begun = os.times(), perf_counter()
    environment = {"QT_QPA_PLATFORM": "offscreen", **os.environ}
    # As installed: compiled once, at the first start.
    environment.pop("PYTHONDONTWRITEBYTECODE", None)
    # Ended at once when it is painted: what an interpreter tidies up belongs to no start.
    command = [sys.executable, "-c", f"{code}\nimport os\nos._exit(0)", *arguments]
    subprocess.run(command, cwd=ROOT, env=environment, check=True)
    after = os.times()
    busy = after.children_user + after.children_system
    busy -= before.children_user + before.children_system
    return (perf_counter() - begun) * 1000, busy * 1000


def measure(times: int) -> None:
    """Start both by turns, the first of each uncounted, and print what they took."""
    with tempfile.TemporaryDirectory() as folder:
        demo = str(Path(folder) / "demo.eave")
        command = [sys.executable, "-m", "gui", "demo", "--out", demo]
        subprocess.run(command, cwd=ROOT, check=True, stdout=subprocess.DEVNULL)
        pairs = [(start(BARE), start(PROGRAM, demo)) for _ in range(times + 1)][1:]
    bare, program = zip(*pairs, strict=True)
    print(f"load of the last minute {os.getloadavg()[0]:.1f} on {os.cpu_count()} processors")
    print(f"{'':24}{'clock: least  median':>24}{'busy: least  median':>24}")
    _print("bare window", bare)
    _print("program with its demo", program)
    for name, n in (("by the clock", 0), ("by the processor", 1)):
        ratio = min(p[n] for p in program) / min(b[n] for b in bare)
        print(f"least to least {name}: {ratio:.2f} times")


def _print(what: str, took: tuple[Took, ...]) -> None:
    columns = [f"{min(t):.0f} {statistics.median(t):8.0f}" for t in zip(*took, strict=True)]
    print(f"{what:24}{columns[0]:>24}{columns[1]:>24}")


def main() -> None:
    """Measure, offscreen unless QT_QPA_PLATFORM says otherwise."""
    parser = argparse.ArgumentParser(description="Milliseconds from start to a painted window.")
    parser.add_argument("--times", type=int, default=10)
    measure(parser.parse_args().times)


if __name__ == "__main__":
    main()
