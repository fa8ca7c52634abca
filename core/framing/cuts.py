"""End cuts: the angle between a member and the plane that ends it, as a saw is set."""

import math

from core.framing.member import Facet
from core.roof import Segment

Direction = tuple[float, float, float]
"""A direction in the wall: along it, up, and away from face A."""


def stud_facet(overhead: Segment) -> Facet:
    """The facet of a standing member's top under a plane with the given slopes.

    With the slope `along` the wall and `across` it (rise over run) the saw swings
    mitre = atan(across) and tilts bevel = atan(along * cos mitre): a wall up the slope needs a
    bevel alone, a wall along the ridge a mitre alone.

    >>> round(math.degrees(stud_facet(Segment(0, 1, 0, 0.75, 0.0)).bevel), 2)
    36.87
    """
    mitre = math.atan(overhead.across)
    bevel = math.atan(overhead.along * math.cos(mitre))
    return Facet(bevel, mitre, _stud_face_up(bevel))


def foot_facet(below: Segment) -> Facet:
    """The facet of a standing member's foot on a plane with the given slopes.

    The saw is set as for a top under the same plane; the long point is at the other face.

    >>> foot_facet(Segment(0, 1, 0, 0.75, 0.0)).face_up
    'left'
    """
    facet = stud_facet(below)
    return Facet(facet.bevel, facet.mitre, _stud_face_up(-facet.bevel))


def plate_facet(plate: Segment, up: Direction, back: Direction) -> Facet:
    """The facet of a top plate's end in the plane of two directions of the wall (x, y, away).

    `up` leads from the underside to the top of the plate, `back` from face A to the far face; with
    both plumb and square to the wall it is the plumb cut. The plate's faces follow the plane
    `plate`, so a plate under a slope across the wall comes out as a compound cut.
    """
    run = math.hypot(1.0, plate.along)
    axis = (1.0 / run, plate.along / run, 0.0)
    square = (-plate.along / plate.secant, 1.0 / plate.secant, -plate.across / plate.secant)
    broad = _cross(axis, square)
    normal = _cross(up, back)
    size = math.sqrt(_dot(normal, normal))
    on_axis, on_square, on_broad = (_dot(normal, v) / size for v in (axis, square, broad))
    mitre = math.atan2(-on_broad, on_axis)
    bevel = -math.asin(max(-1.0, min(1.0, on_square)))
    return Facet(bevel + 0.0, mitre + 0.0, "top" if bevel >= 0 else "underside")


def _stud_face_up(bevel: float) -> str:
    """The wide face that lies up: the one with the long point, so that its mark is in sight."""
    if abs(bevel) < 1e-9:
        return "any"
    return "right" if bevel > 0 else "left"


def _dot(a: Direction, b: Direction) -> float:
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def _cross(a: Direction, b: Direction) -> Direction:
    return (a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])
