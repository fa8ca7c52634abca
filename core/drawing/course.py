"""The straight course that a tape lies on, and the lanes of its figures over it."""

import math
from functools import cached_property

import msgspec

from core.drawing.crowd import Quad, Shape, shape
from core.drawing.elements import XY
from core.drawing.typeface import cap_height, text_width
from core.drawing.view import View

OFF = 1.9
"""From the timber to the near edge of a tape, mm on paper."""

BAND = 3.0
"""The width of a tape, mm on paper."""

LEAD = 2.6
"""The length of the leader from a tape to its figure, mm on paper."""

FOOT = 0.8
"""From a leader to the figure it leads to, mm on paper."""


class Course(msgspec.Struct, frozen=True, cache_hash=True):
    """Where a tape lies, model mm: so long from `start` on the straight `way`, off it by `out`.

    Both are directions of length one; `outward` is the angle of `out`, away from the timber. Its
    figures stay between `low` and `high`, so that they keep off those of the next plate.
    """

    start: XY
    length: float
    way: XY
    out: XY
    outward: float
    low: float = -math.inf
    high: float = math.inf

    def bend(self, along: float, off: float) -> XY:
        """The model point at a place along the tape and a distance off the timber, mm."""
        (x, y), (right, up), (aside, over) = self.start, self.way, self.out
        return x + along * right + off * aside, y + along * up + off * over


class Lane(msgspec.Struct, frozen=True, dict=True):
    """What a mark's figure and its leader take up at a place of a tape; sizes in model mm."""

    course: Course
    place: float
    half: float
    thin: float
    far: float
    foot: float
    wide: float

    @classmethod
    def of(cls, course: Course, place: float, text: str, view: View) -> "Lane":
        """The lane of a figure with this text."""
        sizes = (
            cap_height(view.size) / 2,
            0.15,
            OFF + BAND,
            OFF + BAND + LEAD + FOOT,
            text_width(text, view.size, narrow=True),
        )
        return cls(course, place, *map(view.model, sizes))

    def shapes(self, lift: float) -> tuple[Shape, Shape]:
        """The rectangles of the figure and of its leader where it is lifted so far, mm."""
        return self._low if lift == 0.0 else self._lifted(lift)

    @cached_property
    def _low(self) -> tuple[Shape, Shape]:
        return self._lifted(0.0)

    def _lifted(self, lift: float) -> tuple[Shape, Shape]:
        foot = self.foot + lift
        figure = self._strip(self.half, foot, foot + self.wide)
        return shape(figure), shape(self._strip(self.thin, self.far, foot))

    def _strip(self, aside: float, low: float, high: float) -> Quad:
        left, right, bend = self.place - aside, self.place + aside, self.course.bend
        return bend(left, low), bend(right, low), bend(right, high), bend(left, high)
