"""Striking and typing over the chalk figures on a sheet, for tests: by real events."""

from __future__ import annotations

from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from gui.sketcher.figures import Figure
from gui.sketcher.measures import Ruler
from gui.sketcher.sheet import Sheet
from hand import LEFT, NONE

Key = Qt.Key


def figure(sheet: Sheet, ruler: Ruler) -> Figure:
    sheet.grab()
    return next(f for f in sheet.measuring.figures() if f.measure.ruler is ruler)


def middle(found: Figure) -> QPoint:
    left, low, right, high = found.slip
    return QPoint(round((left + right) / 2), round((low + high) / 2))


def strike(sheet: Sheet, ruler: Ruler) -> None:
    """Click the figure, as a person sees it."""
    QTest.mouseClick(sheet, LEFT, NONE, middle(figure(sheet, ruler)))


def write(sheet: Sheet, text: str, end: Qt.Key = Key.Key_Return) -> None:
    QTest.keyClicks(sheet.measuring.field, text)
    QTest.keyClick(sheet.measuring.field, end)
