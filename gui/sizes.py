"""Sizes in px that grow with the text where the screen has larger letters."""

from PySide6.QtWidgets import QWidget

_PLAIN_DPI = 96.0
"""The dots per inch that sizes in px are meant for."""


def scaled(px: float, widget: QWidget) -> int:
    """So many px of a plain screen, in px of the screen that the widget is on."""
    return round(px * widget.logicalDpiX() / _PLAIN_DPI)
