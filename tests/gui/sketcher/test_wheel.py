"""Wheel, touch pad and pinch."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QInputDevice, QNativeGestureEvent, QPointingDevice, QWheelEvent

from gui.sketcher.camera import Camera
from gui.sketcher.wheel import pinched, wheeled

CAMERA = Camera(0.5, 100.0, 400.0)
SPOT = QPointF(200.0, 300.0)
NONE, CTRL = Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.ControlModifier

pytestmark = pytest.mark.usefixtures("qapp")


def device(kind: QInputDevice.DeviceType) -> QPointingDevice:
    return QPointingDevice(
        "test",
        1,
        kind,
        QPointingDevice.PointerType.Generic,
        QInputDevice.Capability.Position,
        1,
        3,
    )


def wheel(
    kind: QInputDevice.DeviceType,
    angle: QPoint,
    pixel: QPoint | None = None,
    modifier: Qt.KeyboardModifier = NONE,
) -> Camera:
    made = device(kind)
    event = QWheelEvent(
        SPOT,
        SPOT,
        pixel or QPoint(),
        angle,
        Qt.MouseButton.NoButton,
        modifier,
        Qt.ScrollPhase.NoScrollPhase,
        False,
        Qt.MouseEventSource.MouseEventNotSynthesized,
        made,
    )
    return wheeled(CAMERA, event)


MOUSE, PAD = QInputDevice.DeviceType.Mouse, QInputDevice.DeviceType.TouchPad


@pytest.mark.parametrize(
    ("kind", "angle", "pixel", "modifier", "after"),
    [
        # One notch toward the screen: 1.25 times nearer about (200, 300).
        # x: 200 + (100 - 200) * 1.25 = 75; y: 300 + (400 - 300) * 1.25 = 425.
        (MOUSE, QPoint(0, 120), None, NONE, Camera(0.625, 75.0, 425.0)),
        (MOUSE, QPoint(0, 0), None, NONE, CAMERA),
        # Two fingers shove: by px where the pad tells them, else by a quarter of its unit.
        (PAD, QPoint(40, -80), QPoint(12, -24), NONE, Camera(0.5, 112.0, 376.0)),
        (PAD, QPoint(40, -80), None, NONE, Camera(0.5, 110.0, 380.0)),
        # With Ctrl they zoom.
        (PAD, QPoint(0, 120), QPoint(0, 30), CTRL, Camera(0.625, 75.0, 425.0)),
    ],
)
def test_wheel(
    kind: QInputDevice.DeviceType,
    angle: QPoint,
    pixel: QPoint | None,
    modifier: Qt.KeyboardModifier,
    after: Camera,
) -> None:
    camera = wheel(kind, angle, pixel, modifier)
    assert (camera.scale, camera.x, camera.y) == pytest.approx((after.scale, after.x, after.y))


@pytest.mark.parametrize(
    ("gesture", "value", "scale"),
    [
        (Qt.NativeGestureType.ZoomNativeGesture, 0.1, 0.55),
        (Qt.NativeGestureType.ZoomNativeGesture, -0.95, 0.1),
        (Qt.NativeGestureType.RotateNativeGesture, 0.5, 0.5),
    ],
)
def test_pinch(gesture: Qt.NativeGestureType, value: float, scale: float) -> None:
    made = device(PAD)
    event = QNativeGestureEvent(gesture, made, 2, SPOT, SPOT, SPOT, value, QPointF())
    assert event.type() is QEvent.Type.NativeGesture
    camera = pinched(CAMERA, event)
    assert camera.scale == pytest.approx(scale)
    spot = (SPOT.x(), SPOT.y())
    assert camera.to_model(spot) == pytest.approx(CAMERA.to_model(spot))
