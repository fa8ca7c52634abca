"""One call that makes everything ready: Python's version, system libraries, the environment."""

from __future__ import annotations

import os
import sys
from pathlib import Path
from typing import NamedTuple

import system_needs
from environment import ready_environment
from plain import ROOT, require_python


class Prepared(NamedTuple):
    """The environment's Python, and a sentence on what the system still lacks ("" if nothing)."""

    python: Path
    lacking: str


def prepare(
    needs: tuple[system_needs.Need, ...],
    extras: frozenset[str] = frozenset(),
    root: Path = ROOT,
) -> Prepared:
    """Returns what the scripts need to go on; refuses in one sentence if it cannot be had."""
    require_python(tuple(sys.version_info[:3]))
    lacking = system_needs.provide(needs, root / "build")
    return Prepared(ready_environment(root, extras), lacking)


def has_screen() -> bool:
    """Returns whether a window can be opened here."""
    return sys.platform in ("win32", "darwin") or bool(
        os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY")
    )


def window_needs() -> tuple[system_needs.Need, ...]:
    """Returns the system libraries that a window on this screen needs."""
    if os.environ.get("WAYLAND_DISPLAY"):
        return system_needs.QT + system_needs.WAYLAND
    return system_needs.QT + system_needs.X11
