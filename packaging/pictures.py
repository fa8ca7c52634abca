"""Takes pictures of the window and of the demo's sheets into build/pictures/, with no screen."""

from __future__ import annotations

import subprocess
from pathlib import Path

import system_needs
from plain import ROOT, Refusal, leave_with
from prepare import prepare

OUT = ROOT / "build" / "pictures"


def main(arguments: list[str]) -> int:
    """Returns the exit code of the first program that fails, or 0."""
    if arguments:
        raise Refusal("This script takes no arguments; it writes into build/pictures/.")
    ready = prepare(system_needs.QT)
    OUT.mkdir(parents=True, exist_ok=True)
    code = subprocess.call([str(ready.python), "-P", "-m", "gui.pictures", str(OUT)])
    return code or _sheets(ready.python)


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
