"""Labels that stay in sight: of what is seen in part while what is written on it is not."""

import msgspec
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter

from core.drawing import Drawing, Pen, Text
from core.drawing.typeface import text_width
from core.framing import spoken
from core.job import WallResult
from core.wording import Wording
from gui.sketcher.camera import TEXT_MM, XY, Camera, Rect
from gui.sketcher.extent import marker_corners, pixels
from gui.sketcher.fitting import wall_rect
from gui.sketcher.fonts import font
from gui.sketcher.hit import Outline, bounds
from gui.sketcher.paint import Ink

_PAD = 4.0
"""Paper around a label, px."""

_LEAST = 30.0
"""How much of a thing has to be seen for it to be named, px."""

_NAMES = frozenset({Pen.LABEL, Pen.OPENING})


class Label(msgspec.Struct, frozen=True):
    """A text and the slip of paper it stands on, px."""

    text: str
    slip: Rect


def staying(
    result: WallResult,
    drawing: Drawing,
    camera: Camera,
    window: XY,
    density: float,
    wording: Wording,
) -> tuple[Label, ...]:
    """The labels of uprights and openings that reach into a window while their own are out of it.

    They stand at the lower end of what is seen; none over another, and none if all is in sight.
    """
    frame = result.frame
    if frame is None or _all_in(result, camera, window):
        return ()
    told = _told(drawing, camera, window, density)
    size = pixels(TEXT_MM, density)
    laid: list[Label] = []
    labels = result.label_of
    for placed in frame.openings:
        if placed.key not in told:
            texts = (spoken(placed.opening.id),)
            _lay(laid, texts, placed.outline, camera, window, size)
    for member in frame.members:
        if not member.lies and member.near and member.key not in told:
            label, length = labels[member.key], wording.length(member.long_point)
            _lay(laid, (f"{label}  {length}", label), member.near, camera, window, size)
    return tuple(laid)


def paint_staying(painter: QPainter, labels: tuple[Label, ...], ink: Ink) -> None:
    """The labels, each on paper that what is behind shines through."""
    paper = QColor(ink.theme.paper)
    paper.setAlphaF(0.88)
    painter.setFont(font(pixels(TEXT_MM, ink.density)))
    for label in labels:
        left, low, right, high = label.slip
        rect = QRectF(left, low, right - left, high - low)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(paper)
        painter.drawRoundedRect(rect, 3.0, 3.0)
        painter.setPen(ink.theme.ink)
        painter.drawText(rect, Qt.AlignmentFlag.AlignCenter, label.text)


def _all_in(result: WallResult, camera: Camera, window: XY) -> bool:
    rect = wall_rect(result)
    left, floor = camera.to_screen((rect.left, rect.low))
    right, top = camera.to_screen((rect.right, rect.high))
    return left >= 0 and top >= 0 and right <= window[0] and floor <= window[1]


def _told(drawing: Drawing, camera: Camera, window: XY, density: float) -> frozenset[str]:
    """The keys of what has its label in sight."""
    told = set()
    for element in drawing:
        if isinstance(element, Text) and element.pen in _NAMES:
            corners = marker_corners(element, camera, density)
            if all(0 <= x <= window[0] and 0 <= y <= window[1] for x, y in corners):
                told.add(element.key)
    return frozenset(told)


def _lay(
    laid: list[Label],
    texts: tuple[str, ...],
    shape: Outline,
    camera: Camera,
    window: XY,
    size: int,
) -> None:
    """Adds the first of the texts that has room at the lower end of what is seen of a shape."""
    left, bottom, right, top = bounds(shape)
    (x0, y1), (x1, y0) = camera.to_screen((left, bottom)), camera.to_screen((right, top))
    x0, x1 = max(x0, 0.0), min(x1, window[0])
    y0, y1 = max(y0, 0.0), min(y1, window[1])
    if x1 <= x0 or y1 - y0 < _LEAST:
        return
    middle, foot, high = (x0 + x1) / 2, y1 - 2 * _PAD, size + 2 * _PAD
    for text in texts:
        half = text_width(text, float(size)) / 2 + _PAD
        slip = Rect(middle - half, foot - high, middle + half, foot)
        within = slip.left >= 0 and slip.right <= window[0]
        if within and not any(_overlap(slip, other.slip) for other in laid):
            laid.append(Label(text, slip))
            return


def _overlap(a: Rect, b: Rect) -> bool:
    beside = a.right <= b.left or a.left >= b.right
    return not beside and a.low < b.high and a.high > b.low
