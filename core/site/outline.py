"""The points of a wall's top that may touch the roof while the wall swings."""

import math

from core.framing import Frame, Member, Role
from core.site.swing import Place

APART = 150.0
"""Points along an edge stand no farther apart than this, mm: a beam may meet an edge anywhere."""


def top_places(
    frame: Frame, depth: float, sampled: bool, also: tuple[float, ...] = ()
) -> tuple[Place, ...]:
    """Points along the top of a wall, left to right: of its top plates, or of studs without any.

    Corners are exact; where `sampled`, there are points along the edges between them too, those at
    the x of `also` among them. A plate
    that is wider than the wall's `depth` (mm) stands proud of both faces by the same amount, along
    its own slope.
    """
    plates = [m for m in frame.members if m.role is Role.TOP_PLATE and m.near and m.far]
    if plates:
        found = [p for m in plates for p in _plate(m, depth, sampled, also)]
    else:
        upright = [m for m in frame.members if not m.lies and m.near and m.far]
        found = [p for m in upright for p in _stud(m, depth)]
    return tuple(sorted(set(found), key=lambda p: (p.x, p.d, p.y)))


def _plate(plate: Member, depth: float, sampled: bool, also: tuple[float, ...]) -> list[Place]:
    """The upper edges of a plate on both of its long sides."""
    near, far = (_upper(plate.near), _upper(plate.far))
    rise = (far[0][1] - near[0][1]) / depth
    proud = max(0.0, (plate.width / math.hypot(1.0, rise) - depth) / 2)
    sides = ((near, 0.0, -proud), (far, depth, depth + proud))
    places = []
    for (start, end), at, d in sides:
        run = end[0] - start[0]
        count = max(1, math.ceil(run / APART)) if sampled else 1
        between = [(x - start[0]) / run for x in also if start[0] < x < end[0]]
        for share in (*(n / count for n in range(count + 1)), *between):
            x = start[0] + share * (end[0] - start[0])
            y = start[1] + share * (end[1] - start[1])
            places.append(Place(x, y + rise * (d - at), d))
    return places


def _upper(outline: tuple[tuple[float, float], ...]) -> tuple[tuple[float, float], ...]:
    """The left and the right end of a plate's upper edge; outlines go round from its underside."""
    return outline[-1], outline[2]


def _stud(stud: Member, depth: float) -> list[Place]:
    """The corners of a stud's top on both faces: all but the two it stands on."""
    faces = ((stud.near, 0.0), (stud.far, depth))
    return [Place(x, y, d) for outline, d in faces for x, y in outline[2:]]
