"""A dimension taken apart into the lines and the figure it is drawn with, alike for every output.

Extension lines stop short of the object and run past the dimension line, ticks stand at 45 degrees,
the figure stands above its line and is read from below or from the right: the drafting of building
work (common practice, no source).
"""

import math

import msgspec

from core.drawing.elements import XY, Align, Dimension, Stroke, Text
from core.drawing.typeface import text_width

GAP = 25.4 / 16
"""How far extension lines stay off the object, mm on paper (1/16 in.)."""

PAST = 25.4 / 8
"""How far extension lines run past the dimension line, mm on paper (1/8 in.)."""

TICK = 25.4 / 8
"""The length of a tick, mm on paper (common practice, no source)."""

LIFT = 1.0
"""How far the figure's feet stand above the dimension line, mm on paper."""

ROOM = 1.25
"""The least room between the figure and an extension line, clear of the tick, mm on paper."""

_TOUCH = 1e-6


def dimension_parts(dimension: Dimension, scale: float) -> tuple[Stroke | Text, ...]:
    """The dimension line, extension lines and ticks, then the figure; places in model mm.

    `scale` is mm on paper for each mm of the model. The dimension line runs from start to end,
    unless the figure is too wide for it: then the figure is written narrow, and where that is too
    wide too it stands beyond the end, over the line carried on. A dimension that lies on what it
    measures has no extension lines. Empty where start and end are the same point.
    """
    if math.dist(dimension.start, dimension.end) <= _TOUCH:
        return ()
    frame = _Frame.of(dimension, scale)
    figure, reach = _figure(dimension, frame)
    lines = (
        (frame.first, frame.reading(frame.last, reach)),
        *_extensions(dimension, frame),
        *(_tick(frame, point) for point in (frame.first, frame.last)),
    )
    strokes = (Stroke(line, dimension.pen, dimension.key) for line in lines)
    return (*strokes, *((figure,) if figure.text else ()))


def dimension_line(dimension: Dimension) -> tuple[XY, XY]:
    """The ends of the line that shows a dimension, beside its start and its end, model mm."""
    run = math.dist(dimension.start, dimension.end)
    if run <= _TOUCH:
        return dimension.start, dimension.end
    left = _left(dimension.start, dimension.end, run)
    return (
        _off(dimension.start, left, dimension.aside),
        _off(dimension.end, left, dimension.aside),
    )


class _Frame(msgspec.Struct, frozen=True):
    """The dimension line as it is read, and how paper sizes become model sizes.

    `first` and `last` are its ends in the direction of reading, `along` that direction, `up` the
    way up from the line; `left` is the way that `aside` counts.
    """

    first: XY
    last: XY
    along: XY
    up: XY
    left: XY
    angle: float
    scale: float

    @classmethod
    def of(cls, dimension: Dimension, scale: float) -> "_Frame":
        """The frame of a dimension that has a length."""
        start, end = dimension.start, dimension.end
        left = _left(start, end, math.dist(start, end))
        first, last = dimension_line(dimension)
        up = left
        # Upright figures are read from the right, so straight down is turned and straight up not.
        if up[1] < -_TOUCH or (abs(up[1]) <= _TOUCH and up[0] > 0):
            up, first, last = (-up[0], -up[1]), last, first
        along = (up[1], -up[0])
        angle = math.atan2(along[1], along[0]) + 0.0
        return cls(first, last, along, up, left, angle, scale)

    def reading(self, point: XY, paper_mm: float) -> XY:
        """The point moved on in the direction of reading."""
        return _off(point, self.along, paper_mm / self.scale)

    def over(self, point: XY, paper_mm: float) -> XY:
        """The point moved up from the line."""
        return _off(point, self.up, paper_mm / self.scale)


def _figure(dimension: Dimension, frame: _Frame) -> tuple[Text, float]:
    """The figure, and how far the dimension line is carried on beyond its end for it, paper mm."""
    wide, narrow = (
        text_width(dimension.text, dimension.size, narrow=narrow) + 2 * ROOM
        for narrow in (False, True)
    )
    room = math.dist(frame.first, frame.last) * frame.scale
    beyond = narrow > room and bool(dimension.text)
    at = frame.last if beyond else _middle(frame.first, frame.last)
    figure = Text(
        dimension.text,
        frame.over(frame.reading(at, ROOM) if beyond else at, LIFT),
        dimension.size,
        dimension.pen,
        dimension.key,
        align=Align.START if beyond else Align.MIDDLE,
        angle=frame.angle,
        narrow=wide > room,
    )
    return figure, narrow if beyond else 0.0


def _extensions(dimension: Dimension, frame: _Frame) -> tuple[tuple[XY, XY], ...]:
    if dimension.aside == 0:
        return ()
    side = math.copysign(1.0, dimension.aside) / frame.scale
    from_object, past = side * GAP, dimension.aside + side * PAST
    return tuple(
        (_off(point, frame.left, from_object), _off(point, frame.left, past))
        for point in (dimension.start, dimension.end)
    )


def _tick(frame: _Frame, point: XY) -> tuple[XY, XY]:
    """A tick through the point, rising to the right as the figure is read."""
    half = TICK / 2 / math.sqrt(2)
    low, high = (frame.over(frame.reading(point, d), d) for d in (-half, half))
    return low, high


def _left(start: XY, end: XY, run: float) -> XY:
    """The direction to the left of start to end, of length one."""
    return -(end[1] - start[1]) / run, (end[0] - start[0]) / run


def _off(point: XY, direction: XY, distance: float) -> XY:
    return point[0] + direction[0] * distance, point[1] + direction[1] * distance


def _middle(a: XY, b: XY) -> XY:
    return (a[0] + b[0]) / 2, (a[1] + b[1]) / 2
