"""Wheel and touch pad: the wheel zooms about the pointer, two fingers shove, a pinch zooms."""

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QInputDevice, QNativeGestureEvent, QWheelEvent

from gui.sketcher.camera import XY, Camera

ZOOM = 1.25
"""One step of zoom."""

_NOTCH = 120.0
"""One notch of a mouse wheel, in the unit of wheel events."""

_UNITS_PER_PX = 4.0
"""Units of two-finger movement for each px, where the touch pad does not tell px itself."""


def wheeled(camera: Camera, event: QWheelEvent) -> Camera:
    """The camera after a wheel event."""
    by = event.angleDelta()
    zooms = bool(event.modifiers() & Qt.KeyboardModifier.ControlModifier)
    if event.device().type() is QInputDevice.DeviceType.TouchPad and not zooms:
        px = event.pixelDelta()
        if px.isNull():
            return camera.panned(by.x() / _UNITS_PER_PX, by.y() / _UNITS_PER_PX)
        return camera.panned(px.x(), px.y())
    return camera.zoomed(ZOOM ** (by.y() / _NOTCH), place(event.position()))


def pinched(camera: Camera, event: QNativeGestureEvent) -> Camera:
    """The camera after a pinch; other gestures leave it as it is."""
    if event.gestureType() is not Qt.NativeGestureType.ZoomNativeGesture:
        return camera
    return camera.zoomed(max(0.2, 1.0 + event.value()), place(event.position()))


def place(point: QPointF) -> XY:
    """A place in the window, px."""
    return point.x(), point.y()
