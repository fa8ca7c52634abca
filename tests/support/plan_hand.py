"""A hand on the plan, for tests: real mouse and key events at places of the room, in inches."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from gui.plan.plan import Plan

INCH = 25.4
LEFT = Qt.MouseButton.LeftButton
NONE = Qt.KeyboardModifier.NoModifier
SHIFT = Qt.KeyboardModifier.ShiftModifier
CTRL = Qt.KeyboardModifier.ControlModifier

Place = tuple[float, float]


class PlanHand:
    """Presses, moves and lets go on one plan."""

    def __init__(self, plan: Plan) -> None:
        self.plan, self.desk = plan, plan.desk

    def px(self, at: Place) -> QPoint:
        """The px nearest to a place of the room."""
        right, down = self.plan.camera.to_screen((at[0] * INCH, at[1] * INCH))
        return QPoint(round(right), round(down))

    def press(self, at: Place, modifier: Qt.KeyboardModifier = NONE) -> None:
        QTest.mousePress(self.plan, LEFT, modifier, self.px(at))

    def move(self, at: Place, modifier: Qt.KeyboardModifier = NONE) -> None:
        """Move to a place; QTest's own mouseMove knows no modifiers and no buttons."""
        spot = self.px(at)
        event = QMouseEvent(
            QEvent.Type.MouseMove,
            QPointF(spot),
            QPointF(self.plan.mapToGlobal(spot)),
            Qt.MouseButton.NoButton,
            QApplication.mouseButtons(),
            modifier,
        )
        QApplication.sendEvent(self.plan, event)

    def release(self, at: Place) -> None:
        QTest.mouseRelease(self.plan, LEFT, NONE, self.px(at))

    def click(self, at: Place) -> None:
        self.press(at)
        self.release(at)

    def pull(self, start: Place, end: Place, modifier: Qt.KeyboardModifier = NONE) -> None:
        """Press and move, the button still down."""
        self.press(start, modifier)
        for share in (0.4, 0.8, 1.0):
            at = tuple(a + (b - a) * share for a, b in zip(start, end, strict=True))
            self.move((at[0], at[1]), modifier)

    def drag(self, start: Place, end: Place, modifier: Qt.KeyboardModifier = NONE) -> None:
        self.pull(start, end, modifier)
        self.release(end)

    def key(self, key: Qt.Key, modifier: Qt.KeyboardModifier = NONE, times: int = 1) -> None:
        for _ in range(times):
            QTest.keyClick(self.plan, key, modifier)

    def type(self, text: str) -> None:
        """Digits on the plan: the first opens the field, the rest go into it."""
        QTest.keyClicks(self.plan, text[:1])
        field = self.plan.measuring.field
        QTest.keyClicks(field, text[1:])
        QTest.keyClick(field, Qt.Key.Key_Return)

    def chalk(self, letter: str) -> list[Place]:
        """The chalk line of a wall, inches to a thousandth."""
        ends = self.desk.project.wall(letter).chalk
        return [(round(u / INCH, 3) + 0.0, round(v / INCH, 3) + 0.0) for u, v in ends]

    @property
    def letters(self) -> list[str]:
        return [wall.letter for wall in self.desk.project.walls]
