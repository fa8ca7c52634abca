"""Sizes grow with the letters of the screen."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from gui.sizes import scaled


@pytest.mark.parametrize(("dpi", "px"), [(96, 360), (144, 540), (120, 450), (72, 270)])
def test_a_width_keeps_its_share(
    qtbot: QtBot, monkeypatch: pytest.MonkeyPatch, dpi: int, px: int
) -> None:
    widget = QWidget()
    qtbot.addWidget(widget)
    monkeypatch.setattr(QWidget, "logicalDpiX", lambda _: dpi)
    assert scaled(360, widget) == px
