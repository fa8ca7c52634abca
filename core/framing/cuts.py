"""End cuts: the angle between a member and the plane that ends it, as a saw is set."""

import math

import msgspec

from core.framing.member import SQUARE_WITHIN, Facet
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


def top_facets(spans: tuple[tuple[Segment, ...], ...]) -> tuple[Facet, ...]:
    """The facets of a standing member's top, from left to right: one for each plane it meets.

    `spans` are what is overhead on each face. Where a break runs aslant over the member, a plane
    may be met on one face alone.
    """
    if all(len(span) == 1 and _same_slopes(span[0], spans[0][0]) for span in spans):
        return (stud_facet(spans[0][0]),)
    met: list[Segment] = []
    for segment in (s for span in spans for s in span):
        same = next((n for n, m in enumerate(met) if _same_slopes(m, segment)), None)
        if same is None:
            met.append(segment)
        else:
            left = min(met[same].left, segment.left)
            right = max(met[same].right, segment.right)
            met[same] = msgspec.structs.replace(met[same], left=left, right=right)
    # Planes that each cover one whole face: on the left of a ridge is the one that rises more.
    met.sort(key=lambda m: (round(m.left + m.right, 6), -m.along))
    return tuple(stud_facet(m) for m in met)


def _same_slopes(a: Segment, b: Segment) -> bool:
    return abs(a.along - b.along) < 1e-9 and abs(a.across - b.across) < 1e-9


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
    if abs(bevel) < SQUARE_WITHIN:
        return "any"
    return "right" if bevel > 0 else "left"


def _dot(a: Direction, b: Direction) -> float:
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def _cross(a: Direction, b: Direction) -> Direction:
    return (a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])
