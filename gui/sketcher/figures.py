"""Where the figures of the held thing's dimensions stand on screen, so that each can be struck."""

from collections.abc import Iterable

import msgspec

from core.drawing.typeface import text_width
from core.wording import Wording
from gui.sketcher.camera import XY, Camera, Rect
from gui.sketcher.measures import Measure, Ruler

SIZE_MM = 3.9
"""The size of these figures, mm as on paper: a little larger than what is written on the sheet."""

_PAD = 6.0
"""Paper left at either side of a figure, px."""

_GAP = 4.0
"""Between two figures, px."""

_ROWS = {Ruler.LEFT_NEIGHBOUR: 1, Ruler.RIGHT_NEIGHBOUR: 1, Ruler.AGAIN: 2}
"""How many rows over the dimensions to the ends others stand."""


class Figure(msgspec.Struct, frozen=True):
    """A dimension on screen: the ends of its line and the slip of paper its figure is on, px."""

    measure: Measure
    text: str
    start: XY
    end: XY
    slip: Rect

    def holds(self, pos: XY) -> bool:
        """Whether a px lies on the slip."""
        return self.slip.left <= pos[0] <= self.slip.right and self.slip.low <= pos[1] <= (
            self.slip.high
        )


def figures(
    measures: Iterable[Measure],
    camera: Camera,
    wording: Wording,
    size: int,
    window: XY,
    count: int = 1,
) -> tuple[Figure, ...]:
    """The dimensions laid out in a window of `window` px, with figures `size` px high.

    `count` is how many copies stand that far apart, beside a distance between copies.

    A figure stands in the middle of what can be seen of its line, in a row of its own where another
    stands there already, and never outside the window.
    """
    laid: list[Figure] = []
    for measure in measures:
        start, end = camera.to_screen(measure.start), camera.to_screen(measure.end)
        rise = _ROWS.get(measure.ruler, 0) * (_high(size) + _GAP)
        start, end = (start[0], start[1] - rise), (end[0], end[1] - rise)
        text = wording.length(measure.reads)
        if measure.ruler is Ruler.AGAIN:
            text = f"{text} × {count}"
        wide = text_width(text, float(size), bold=True) + 2 * _PAD
        slip = _slip(measure, start, end, (wide, _high(size)), window)
        slip = _free(slip, [f.slip for f in laid], window)
        laid.append(Figure(measure, text, start, end, slip))
    return tuple(laid)


def _high(size: int) -> float:
    return float(size) + 7.0


def _slip(measure: Measure, start: XY, end: XY, size: XY, window: XY) -> Rect:
    """The slip in the middle of the line, as far as that can be seen; beside one that is short."""
    x, y = (_seen_middle(start[n], end[n], window[n]) for n in (0, 1))
    wide, high = size
    if measure.ruler.upright and abs(end[1] - start[1]) < high + 2 * _GAP:
        # Beside a line that it would hide.
        x += wide / 2 + _GAP
    x = min(max(x, wide / 2 + _GAP), max(window[0] - wide / 2 - _GAP, wide / 2 + _GAP))
    y = min(max(y, high / 2 + _GAP), max(window[1] - high / 2 - _GAP, high / 2 + _GAP))
    return Rect(x - wide / 2, y - high / 2, x + wide / 2, y + high / 2)


def _seen_middle(a: float, b: float, most: float) -> float:
    low, high = min(a, b), max(a, b)
    seen = max(low, 0.0), min(high, most)
    return sum(seen) / 2 if seen[0] < seen[1] else min(max((low + high) / 2, 0.0), most)


def _free(slip: Rect, taken: list[Rect], window: XY) -> Rect:
    """The slip moved up, row by row, to where no other is; down if there is no more room above."""
    step = slip.high - slip.low + _GAP
    for n in (0, -1, 1, -2, 2, -3, 3, -4, 4):
        moved = Rect(slip.left, slip.low + n * step, slip.right, slip.high + n * step)
        within = moved.low >= 0 and moved.high <= window[1]
        if within and not any(_overlap(moved, other) for other in taken):
            return moved
    return slip


def _overlap(a: Rect, b: Rect) -> bool:
    beside = a.right + _GAP <= b.left or a.left >= b.right + _GAP
    return not beside and a.low < b.high + _GAP and a.high > b.low - _GAP
