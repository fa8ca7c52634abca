"""Sizes in px that grow with the screen's letters, and with how large the person wants texts."""

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QWidget

_PLAIN_DPI = 96.0
"""The dots per inch that sizes in px are meant for."""

_MM_PER_INCH = 25.4

TEXT_SCALES = (0.85, 1.0, 1.15, 1.3, 1.5)
"""The sizes of text that can be chosen, as shares of the usual one."""

USUAL = TEXT_SCALES.index(1.0)

_PROPERTY = "textScale"


def text_scale() -> float:
    """How large texts are, as a share of the usual size."""
    app = QCoreApplication.instance()
    found = app.property(_PROPERTY) if app is not None else None
    return found if isinstance(found, float) else 1.0


def set_text_step(step: int) -> int:
    """Makes all texts so many steps larger than usual; the nearest step there is comes back."""
    index = min(max(USUAL + step, 0), len(TEXT_SCALES) - 1)
    app = QCoreApplication.instance()
    if app is not None:
        app.setProperty(_PROPERTY, TEXT_SCALES[index])
    return index - USUAL


def scaled(px: float, widget: QWidget) -> int:
    """So many px of a plain screen with the usual texts, in px as they are here."""
    return round(px * widget.logicalDpiX() / _PLAIN_DPI * text_scale())


def points(size: float) -> str:
    """A size of text in points, as a style writes it.

    >>> points(10.5)
    '10.5pt'
    """
    return f"{size * text_scale():g}pt"


def density(widget: QWidget) -> float:
    """The px that a drawing takes for each mm on paper."""
    return widget.logicalDpiX() / _MM_PER_INCH * text_scale()
