"""Takes pictures of the window and of the demo's sheets into build/gallery/, with no screen.

The window is taken at one dot a pixel and at two.
"""

from __future__ import annotations

import subprocess
from pathlib import Path

import system_needs
from plain import ROOT, Refusal, leave_with
from prepare import prepare
from streaming import environment

OUT = ROOT / "build" / "gallery"
SCALES = (1, 2)


def main(arguments: list[str]) -> int:
    """Returns the exit code of the first program that fails, or 0."""
    if arguments:
        raise Refusal("This script takes no arguments; it writes into build/gallery/.")
    ready = prepare(system_needs.QT)
    OUT.mkdir(parents=True, exist_ok=True)
    for scale in SCALES:
        code = _window(ready.python, scale)
        if code:
            return code
    return _sheets(ready.python)


def _window(python: Path, scale: int) -> int:
    env = environment({"QT_SCALE_FACTOR": str(scale)})
    program = [str(python), "-P", "-m", "gui.gallery", str(OUT / f"{scale}x")]
    return subprocess.call(program, env=dict(env))


def _sheets(python: Path) -> int:
    for name, option in (("sail-loft", ()), ("kite-loft", ("--metric",))):
        file, pdf = OUT / f"{name}.eave", OUT / f"{name}.pdf"
        file.unlink(missing_ok=True)
        program = [str(python), "-P", "-m", "gui"]
        code = (
            subprocess.call([*program, "demo", *option, "--out", str(file)])
            or subprocess.call([*program, "sheets", str(file), "--out", str(pdf)])
            or subprocess.call(["pdftoppm", "-r", "100", "-png", str(pdf), str(OUT / name)])
        )
        if code:
            return code
    return 0


if __name__ == "__main__":
    leave_with(main)
