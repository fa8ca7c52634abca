"""What lies under the pointer on the section: a handle, or a number that can be typed over; px."""

import math

from PySide6.QtCore import QPointF, QRect, QRectF

from core.drawing import Dimension, Drawing, Element, Text
from core.drawing.dimension import dimension_parts
from core.model import Room
from gui.section.handles import Handle, handles
from gui.sketcher.camera import XY, Camera
from gui.sketcher.extent import extent

PICK_PX = 10.0
"""How near to a handle the pointer has to be."""


def handle_under(room: Room, camera: Camera, at: XY) -> Handle | None:
    """The nearest handle within reach of the pointer."""
    found = [(math.dist(camera.to_screen(h.at), at), n, h) for n, h in enumerate(handles(room))]
    away, _, handle = min(found)
    return handle if away <= PICK_PX else None


def numbers(drawing: Drawing, camera: Camera, density: float) -> dict[str, QRect]:
    """Where each number that can be typed over is written, by its key."""
    texts = [t for e in drawing for t in _texts(e, camera.scale / density)]
    return {t.key: _rect(t, camera, density) for t in texts}


def number_under(drawing: Drawing, camera: Camera, density: float, at: XY) -> str | None:
    """The key of the number under the pointer."""
    point = QPointF(*at).toPoint()
    found = numbers(drawing, camera, density).items()
    return next((key for key, rect in found if rect.contains(point)), None)


def _rect(text: Text, camera: Camera, density: float) -> QRect:
    left, low, right, high = extent(text, camera, density)
    return QRectF(left, low, right - left, high - low).toAlignedRect()


def _texts(element: Element, scale: float) -> list[Text]:
    """The texts of an element that state a number."""
    if isinstance(element, Dimension):
        parts = dimension_parts(element, scale)
        return [p for p in parts if isinstance(p, Text) and p.key]
    if isinstance(element, Text) and element.key and element.key != "headroom":
        return [element]
    return []
