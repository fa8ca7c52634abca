"""The line over a plate that lies level through the wall under a roof that does not."""

from collections.abc import Callable
from itertools import pairwise

import msgspec

from core.roof.line import TOUCH, RoofLine, Segment, append, dropped


def level_line(near: RoofLine, far: RoofLine, beyond: float) -> RoofLine:
    """The highest line that a plate level through the wall may lie under, clear of the roof.

    That is the lower of the roof lines over both faces: under planes that fall away from a ridge
    the lowest place over the plate is one of its edges. A plate wider than the studs reaches
    `beyond` (mm) past the downhill face, and the line comes down by as much as the roof falls.
    """
    faces = (
        _brought_down(near, lambda s: max(s.across, 0.0) * beyond),
        _brought_down(far, lambda s: max(-s.across, 0.0) * beyond),
    )
    lowest: list[Segment] = []
    for left, right in pairwise(_places(*faces)):
        over = [_over(line, (left + right) / 2) for line in faces]
        low = min(over, key=lambda s: s.at((left + right) / 2))
        append(lowest, msgspec.structs.replace(low, left=left, right=right, across=0.0))
    return RoofLine(tuple(lowest))


def _brought_down(line: RoofLine, drop: Callable[[Segment], float]) -> RoofLine:
    return RoofLine(tuple(s for s in dropped(line, drop) if s is not None))


def _places(near: RoofLine, far: RoofLine) -> list[float]:
    """The ends, the breaks of both lines, and where the lines cross; from left to right."""
    segments = (*near.segments, *far.segments)
    places = {x for s in segments for x in (s.left, s.right)}
    for a in near.segments:
        for b in far.segments:
            if abs(a.along - b.along) > 1e-12:
                x = (b.height - a.height) / (a.along - b.along)
                if max(a.left, b.left) < x < min(a.right, b.right):
                    places.add(x)
    apart: list[float] = []
    for x in sorted(places):
        if not apart or x - apart[-1] > TOUCH:
            apart.append(x)
    return apart


def _over(line: RoofLine, x: float) -> Segment:
    return next((s for s in line.segments if s.left <= x <= s.right), line.segments[-1])
