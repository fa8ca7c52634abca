"""A roof line with a beam hanging under it: what was measured of the one does not move the other.

The tape tells where the rafters are beside a purlin; the purlin is where it is stated to be, unless
a point was measured under the purlin itself.
"""

from itertools import pairwise

import msgspec

from core.roof.line import TOUCH, RoofLine, Segment, append
from core.roof.measured import Point, corrected, differences
from core.roof.purlins import PurlinThrough

Lines = tuple[RoofLine, RoofLine]
"""The lines over face A and over the far face."""


def measured_beneath(
    bare: Lines, beams: tuple[PurlinThrough, ...], points: tuple[Point, ...]
) -> Lines:
    """The `bare` lines moved through the points beside the beams, and the beams under them.

    A beam with points under it is so much higher or lower than stated as they are on the average.
    """
    beside = tuple(p for p in points if not any(_under(p, beam) for beam in beams))
    found = differences(bare[0], beside)
    near, far = corrected(bare[0], found), corrected(bare[1], found)
    for beam in beams:
        heights = [y for x, y in points if _under((x, y), beam)]
        height = sum(heights) / len(heights) if heights else beam.bottom
        near, far = beneath(near, beam.near, height), beneath(far, beam.far, height)
    return near, far


def beneath(line: RoofLine, stretch: tuple[float, float], height: float) -> RoofLine:
    """The lower of a line and a level beam from one place to another, at a height, mm."""
    left, right = stretch
    found: list[Segment] = []
    for segment in line.segments:
        places = {segment.left, segment.right}
        meet = _level_at(segment, height)
        inside = (left, right, *((meet,) if meet is not None else ()))
        places.update(x for x in inside if segment.left + TOUCH < x < segment.right - TOUCH)
        for a, b in pairwise(sorted(places)):
            middle = (a + b) / 2
            lower = left < middle < right and height < segment.at(middle)
            beam = Segment(a, b, height, 0.0, 0.0)
            append(found, beam if lower else msgspec.structs.replace(segment, left=a, right=b))
    return RoofLine(tuple(found))


def _level_at(segment: Segment, height: float) -> float | None:
    """Where a segment is at a height, mm; None for a level one."""
    return None if abs(segment.along) < 1e-12 else (height - segment.height) / segment.along


def _under(point: Point, beam: PurlinThrough) -> bool:
    return beam.near[0] - TOUCH <= point[0] <= beam.near[1] + TOUCH
