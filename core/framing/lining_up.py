"""Bringing the layout of a wall in line with that of another one."""

import math

from core.framing.layout import layout_lefts
from core.model import Wall

PARALLEL = 1e-6
"""Two walls are parallel where the sine of the angle between them is no more than this."""


def origin_in_line(wall: Wall, other: Wall) -> float | None:
    """The place along `wall`, mm from its left end, straight across from a mark of `other`.

    A layout with that origin and the same spacing has its studs opposite those of the other wall.
    None where the walls are not parallel, or the other has no mark.
    """
    (u0, v0), (u1, v1) = wall.chalk
    (p0, q0), (p1, q1) = other.chalk
    along = ((u1 - u0) / wall.run, (v1 - v0) / wall.run)
    beside = ((p1 - p0) / other.run, (q1 - q0) / other.run)
    marks = layout_lefts(other)
    if abs(along[0] * beside[1] - along[1] * beside[0]) > PARALLEL or not marks:
        return None
    centre = marks[0][1] + other.stud.thickness.mm / 2
    mark = (p0 + centre * beside[0], q0 + centre * beside[1])
    place = (mark[0] - u0) * along[0] + (mark[1] - v0) * along[1]
    return math.fmod(place, wall.layout.spacing.mm) if place < 0 or place > wall.run else place
