"""Starts Eavewright from a fresh checkout: the demo in a window, or its sheets with no screen.

Arguments are passed on to the program: ``python3 packaging/run.py check my-room.eave``.
"""

from __future__ import annotations

import subprocess
from pathlib import Path

from plain import ROOT, Refusal, leave_with
from prepare import has_screen, prepare, window_needs

DEMO = ROOT / "build" / "demo"
METRIC = {"sail-loft": False, "kite-loft": True}


def main(arguments: list[str]) -> int:
    """Returns the program's exit code."""
    screen = has_screen()
    # Without a screen nothing of Qt is loaded, so nothing of the system is needed.
    ready = prepare(window_needs() if screen else ())
    if ready.lacking and not arguments:
        raise Refusal(ready.lacking)
    if arguments:
        return _program(ready.python, *arguments)
    return _open_demo(ready.python) if screen else _write_demos(ready.python)


def _open_demo(python: Path) -> int:
    return _demo(python, "sail-loft") or _program(python, str(DEMO / "sail-loft.eave"))


def _write_demos(python: Path) -> int:
    for name in METRIC:
        file, sheets, drawing = (str(DEMO / f"{name}.{kind}") for kind in ("eave", "pdf", "dxf"))
        code = (
            _demo(python, name)
            or _program(python, "sheets", file, "--out", sheets)
            or _program(python, "drawing", file, "--out", drawing)
        )
        if code:
            return code
    print("No screen here, so no window opens. Written instead:")
    for path in sorted(DEMO.iterdir()):
        print(f"  {path}")
    return 0


def _demo(python: Path, name: str) -> int:
    """Writes a demo project, unless it is there: it may hold the person's own changes."""
    file = DEMO / f"{name}.eave"
    if file.exists():
        return 0
    DEMO.mkdir(parents=True, exist_ok=True)
    metric = ("--metric",) if METRIC[name] else ()
    return _program(python, "demo", *metric, "--out", str(file))


def _program(python: Path, *arguments: str) -> int:
    # -P: the folder the person stands in must not lend its files to the program's imports.
    return subprocess.call([str(python), "-P", "-m", "gui", *arguments])


if __name__ == "__main__":
    leave_with(main)
