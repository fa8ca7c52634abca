"""One neutral drawing of the results, which screen, PDF and DXF only translate."""

from core.drawing.elements import Align, Dimension, Drawing, Element, Fill, Stroke, Text
from core.drawing.pen import Pen
from core.drawing.view import Show, View

__all__ = [
    "Align",
    "Dimension",
    "Drawing",
    "Element",
    "Fill",
    "Pen",
    "Show",
    "Stroke",
    "Text",
    "View",
]
