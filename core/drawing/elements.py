"""The neutral drawing: a flat tuple of frozen elements that every output only translates.

Places are in model mm (x right, y up); sizes of text are in mm on paper.
"""

import enum

import msgspec

from core.drawing.pen import Pen

XY = tuple[float, float]

# Elements are looked up on every frame of a drag: each reckons its hash once. They hold numbers,
# texts and pens only, so the collector of cycles has no business with them.


class Align(enum.Enum):
    """Which point of a text stands at its place, along its line of writing."""

    START = "start"
    MIDDLE = "middle"
    END = "end"


class Stroke(msgspec.Struct, frozen=True, cache_hash=True, gc=False):
    """A line through points, closed to an outline or open."""

    points: tuple[XY, ...]
    pen: Pen
    key: str = ""
    closed: bool = False


class Fill(msgspec.Struct, frozen=True, cache_hash=True, gc=False):
    """A filled outline without an edge of its own."""

    outline: tuple[XY, ...]
    pen: Pen
    key: str = ""


class Text(msgspec.Struct, frozen=True, cache_hash=True, gc=False):
    """A line of text whose letters stand on the line through `at`.

    `size` is the font size in mm on paper, `angle` the direction of writing in radians from the
    x axis, counter-clockwise. `middle` sets the half height of the capitals at the place instead
    of their feet.
    """

    text: str
    at: XY
    size: float
    pen: Pen
    key: str = ""
    align: Align = Align.START
    angle: float = 0.0
    bold: bool = False
    narrow: bool = False
    middle: bool = False


class Dimension(msgspec.Struct, frozen=True, cache_hash=True, gc=False):
    """The distance from `start` to `end`, shown on a line `aside` mm (model) to its left.

    `text` is what is written; the measure itself is the exact distance between the points.
    """

    start: XY
    end: XY
    aside: float
    text: str
    size: float
    pen: Pen = Pen.DIMENSION
    key: str = ""


Element = Stroke | Fill | Text | Dimension
Drawing = tuple[Element, ...]
