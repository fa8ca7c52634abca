"""Waiting until the window has done what it was asked for."""

from __future__ import annotations

from PySide6.QtTest import QTest

from gui.window import Window

_MOST_MS, _STEP_MS = 60_000, 10


def settle(window: Window) -> None:
    """Lets the window go on until nothing is being made beside it."""
    for _ in range(_MOST_MS // _STEP_MS):
        if not window.beside.busy:
            return
        QTest.qWait(_STEP_MS)
    raise AssertionError("still busy")
