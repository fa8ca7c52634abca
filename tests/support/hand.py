"""A hand on the sheet, for tests: real mouse and key events at places of the wall, in inches."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent, QPointingDevice, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from gui.sketcher.sheet import Sheet
from loft import INCH

LEFT = Qt.MouseButton.LeftButton
MIDDLE = Qt.MouseButton.MiddleButton
NONE = Qt.KeyboardModifier.NoModifier
SHIFT = Qt.KeyboardModifier.ShiftModifier
CTRL = Qt.KeyboardModifier.ControlModifier


class Hand:
    """Presses, moves and lets go on one sheet."""

    def __init__(self, sheet: Sheet) -> None:
        self.sheet = sheet

    def px(self, x: float, y: float) -> QPoint:
        """The px nearest to a place of the wall."""
        right, down = self.sheet.camera.to_screen((x * INCH, y * INCH))
        return QPoint(round(right), round(down))

    def click(self, x: float, y: float, modifier: Qt.KeyboardModifier = NONE) -> None:
        QTest.mouseClick(self.sheet, LEFT, modifier, self.px(x, y))

    def press(self, x: float, y: float, button: Qt.MouseButton = LEFT) -> None:
        QTest.mousePress(self.sheet, button, NONE, self.px(x, y))

    def move(self, x: float, y: float, modifier: Qt.KeyboardModifier = NONE) -> None:
        """Move to a place of the wall, in two steps as a hand would."""
        self.move_px(self.px(x, y), modifier)

    def move_px(self, to: QPoint, modifier: Qt.KeyboardModifier = NONE) -> None:
        """Move to a px; QTest's own mouseMove knows no modifiers and no buttons."""
        buttons = QApplication.mouseButtons()
        for spot in (to + QPoint(1, 0), to):
            place = QPointF(spot)
            event = QMouseEvent(
                QEvent.Type.MouseMove,
                place,
                QPointF(self.sheet.mapToGlobal(spot)),
                Qt.MouseButton.NoButton,
                buttons,
                modifier,
            )
            QApplication.sendEvent(self.sheet, event)

    def release(self, x: float, y: float, button: Qt.MouseButton = LEFT) -> None:
        QTest.mouseRelease(self.sheet, button, NONE, self.px(x, y))

    def drag(self, start: tuple[float, float], end: tuple[float, float]) -> None:
        """Press, move and let go."""
        self.press(*start)
        self.move(*end)
        self.release(*end)

    def key(self, key: Qt.Key, modifier: Qt.KeyboardModifier = NONE, times: int = 1) -> None:
        for _ in range(times):
            QTest.keyClick(self.sheet, key, modifier)

    def wheel(self, x: float, y: float, notches: float) -> None:
        """Turn the mouse wheel by notches."""
        place = self.px(x, y)
        device = QPointingDevice.primaryPointingDevice()
        event = QWheelEvent(
            QPointF(place),
            QPointF(self.sheet.mapToGlobal(place)),
            QPoint(),
            QPoint(0, round(notches * 120)),
            Qt.MouseButton.NoButton,
            NONE,
            Qt.ScrollPhase.NoScrollPhase,
            False,
            Qt.MouseEventSource.MouseEventNotSynthesized,
            device,
        )
        QApplication.sendEvent(self.sheet, event)
