"""Where an opening fits: under the plates, between the end studs, clear of other openings."""

from collections.abc import Iterator

import msgspec

from core.framing.heads import Over, header_rise, plumb_rise, straight
from core.framing.layout import CLEAR
from core.framing.sharing import Range, beside_another, beside_ends
from core.model import Opening, Wall
from core.roof import RoofLine, Segment


class Fit(msgspec.Struct, frozen=True):
    """Whether an opening fits where it is, and all the ranges of its left edge where it does."""

    fits: bool
    ranges: tuple[Range, ...]

    def nearest(self, left: float) -> float | None:
        """The place nearest to `left` where the opening fits, mm; None if it fits nowhere."""
        places = [min(max(left, low), high) for low, high in self.ranges]
        return min(places, key=lambda place: abs(place - left), default=None)


def framed_width(wall: Wall, opening: Opening) -> Range:
    """The outer faces of an opening's king studs, mm, with one trimmer and one king a side."""
    beside = 2 * wall.stud.thickness.mm
    return opening.left.mm - beside, opening.left.mm + opening.width.mm + beside


def fit(wall: Wall, opening: Opening, over: Over, others: tuple[Opening, ...]) -> Fit:
    """Where `opening` fits in `wall` under the plates' undersides `over` (face A and far face).

    The header, one trimmer longer than the opening on each side, has to pass under the plates
    over its whole length, and without a header so have the trimmers; kings have to stand clear of
    the end studs and of the kings and trimmers of the `others`, or be shared with them where the
    wall's rules say so: that is a range of one place.
    """
    ranges = under_plates(wall, opening, over)
    ranges = _overlaps(ranges, beside_ends(wall, opening))
    for other in others:
        ranges = _overlaps(ranges, beside_another(wall, opening, other))
    fits = any(a - CLEAR <= opening.left.mm <= b + CLEAR for a, b in ranges)
    return Fit(fits, ranges)


def under_plates(wall: Wall, opening: Opening, over: Over) -> tuple[Range, ...]:
    """The ranges of its left edge, mm, where an opening with its header passes under the plates.

    A raked head does under one straight slope, its trimmers with it.
    """
    if opening.is_raked:
        return tuple(_raked(wall, opening, over))
    need = opening.head.mm + header_rise(opening.header)
    bearing = wall.stud.thickness.mm
    near, far = (_high_enough(line, need) for line in over)
    stretches = [(max(a, c), min(b, d)) for a, b in near for c, d in far if max(a, c) <= min(b, d)]
    lefts = [(a + bearing, b - bearing - opening.width.mm) for a, b in stretches]
    return tuple((a, b) for a, b in lefts if a <= b + CLEAR)


def _raked(wall: Wall, opening: Opening, over: Over) -> Iterator[Range]:
    """Under one slope after the other: header and plates are parallel, so one place tells all."""
    bearing, width = wall.stud.thickness.mm, opening.width.mm
    for slope in straight(over):
        need = opening.head.mm + plumb_rise(opening.header, slope.along)
        high_enough = _stretch(slope, need)
        if high_enough is not None:
            # The head's stated height is at its lower side: its left one where the slope rises.
            low, high = (x - (width if slope.along < 0 else 0.0) for x in high_enough)
            low, high = max(low, slope.left + bearing), min(high, slope.right - bearing - width)
            if low <= high + CLEAR:
                yield low, high


def _high_enough(line: RoofLine, need: float) -> tuple[Range, ...]:
    """The stretches of the wall where the line is at least `need` high."""
    stretches: list[Range] = []
    for segment in line.segments:
        stretch = _stretch(segment, need)
        if stretch is None:
            continue
        if stretches and abs(stretches[-1][1] - stretch[0]) <= CLEAR:
            stretches[-1] = (stretches[-1][0], stretch[1])
        else:
            stretches.append(stretch)
    return tuple(stretches)


def _stretch(segment: Segment, need: float) -> Range | None:
    low, high = segment.left, segment.right
    if abs(segment.along) < 1e-12:
        return (low, high) if segment.height >= need - CLEAR else None
    crossing = (need - segment.height) / segment.along
    if segment.along > 0:
        low = max(low, crossing)
    else:
        high = min(high, crossing)
    return (low, high) if low <= high + CLEAR else None


def _overlaps(ranges: tuple[Range, ...], others: tuple[Range, ...]) -> tuple[Range, ...]:
    both = [(a if a > c else c, b if b < d else d) for a, b in ranges for c, d in others]
    return tuple([(low, high) for low, high in both if low <= high + CLEAR])
