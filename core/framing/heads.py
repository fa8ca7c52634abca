"""The head of an opening: level, or raked along the one slope of the plates over it."""

import math
from collections.abc import Iterator

from core.framing.near import CLEAR
from core.model import Header, HeaderKind, Opening
from core.roof import RoofLine, Segment

Over = tuple[RoofLine, RoofLine]
"""The undersides of the plates over face A and over the far face."""

ALIKE = 1e-9
"""Slopes this near to each other, rise over run, are one."""


def header_rise(header: Header) -> float:
    """The height a header takes up square to its length, above the rough opening, mm."""
    if header.kind is HeaderKind.NONE:
        return 0.0
    if header.kind is HeaderKind.ON_EDGE:
        return header.timber.width.mm
    return header.timber.thickness.mm * header.plies


def plumb_rise(header: Header, rake: float) -> float:
    """The height a header takes up plumb under a slope `rake`, rise over run; mm."""
    return header_rise(header) * math.hypot(1.0, rake)


def straight(over: Over) -> Iterator[Segment]:
    """The stretches over which one straight slope lies over both faces, with the lower of the two.

    Where the roof slopes through the wall, the header stays level through it, under the lower face.
    """
    near, far = over
    for a in near.segments:
        for b in far.segments:
            left, right = max(a.left, b.left), min(a.right, b.right)
            if left < right and abs(a.along - b.along) <= ALIKE:
                yield Segment(left, right, min(a.height, b.height), a.along, 0.0)


def rake_at(opening: Opening, bearing: float, over: Over) -> float | None:
    """The slope of an opening's head, rise over run; 0 of a level one.

    None where the slope over a raked head and its trimmers, `bearing` mm wide, is not one.
    """
    if not opening.is_raked:
        return 0.0
    # As near to a slope's end as an opening may be and still fit.
    off = 2 * CLEAR
    left, right = opening.left.mm - bearing + off, opening.left.mm + opening.width.mm + bearing
    slopes = (s.along for s in straight(over) if s.left <= left and right - off <= s.right)
    return next(slopes, None)


def highest_head(opening: Opening, bearing: float, over: Over) -> float:
    """The greatest height, mm, at which an opening's head passes under the plates where it is.

    That of a raked head is at its lower side; it and its header follow the slope from there.
    """
    rake = rake_at(opening, bearing, over)
    left, right = opening.left.mm, opening.left.mm + opening.width.mm
    if not rake:
        lowest = min(line.lowest(left - bearing, right + bearing) for line in over)
        return lowest - header_rise(opening.header)
    low = left if rake > 0 else right
    return min(line.lowest(low, low) for line in over) - plumb_rise(opening.header, rake)


def head_line(opening: Opening, rake: float, run: float, raised: float = 0.0) -> RoofLine:
    """The underside of the header over a wall `run` mm long, or the line `raised` mm over it.

    The stated height of the head is that at the lower side of the rough opening.
    """
    low = opening.left.mm if rake >= 0 else opening.left.mm + opening.width.mm
    height = opening.head.mm + raised - rake * low
    return RoofLine((Segment(0.0, run, height, rake, 0.0),))
