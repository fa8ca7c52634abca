"""The bindings to Qt that are installed keep count of None, which release 6.12.0 did not.

It dropped a reference on nearly every call that returns nothing, and ended the program after some
thousands. From Python 3.12 on None is never counted, and there is nothing to lose.
"""

from __future__ import annotations

import sys

from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot


def test_calls_that_return_nothing_lose_no_reference(qtbot: QtBot) -> None:
    label = QLabel()
    qtbot.addWidget(label)
    before = sys.getrefcount(None)
    for number in range(400):
        label.setText(f"{number}")
        label.setEnabled(True)
    assert sys.getrefcount(None) > before - 100
