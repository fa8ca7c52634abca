"""Tilting points up together: the gap there is, the gap that is needed, and the worst point."""

import math

from core.site.surroundings import Surroundings
from core.site.swing import PASSES, UPRIGHT, Laid, Place, Swing, clearance, path

MOST = 0.5
"""The share of a point's height up to which it is tried whether less height would help."""

CLOSE = 1e-4
"""The needed gap is found to this, mm."""

Points = tuple[tuple[Place, float], ...]
"""Points of a wall, each with how much higher than stated the roof is there, mm."""


def points_of(around: Surroundings, places: tuple[Place, ...]) -> Points:
    """The places with what the roof differs by over each of them."""
    return tuple(zip(places, around.offsets(tuple(p.x for p in places)), strict=True))


def swing(around: Surroundings, points: Points, laid: Laid) -> Swing:
    """How these points swing up together on one side."""
    near = [(*clearance(around, p, laid, h), p) for p, h in points]
    least, angle, worst = min(near, key=lambda n: (n[0], -n[1]))
    there = max(0.0, min(_standing(around, p, h) for p, h in points))
    ordered = [points[n] for n in sorted(range(len(points)), key=lambda n: near[n][0])]
    lower = _least_lowering(around, ordered, laid, -there)
    needed = None if lower is None else there + lower
    return Swing(laid, there, needed, worst, least, angle)


def passes(around: Surroundings, place: Place, higher: float, laid: Laid, lower: float) -> bool:
    """Whether a point passes under the roof once the wall is built `lower` mm less high."""
    lowered = Place(place.x, place.y - lower, place.d)
    return clearance(around, lowered, laid, higher)[0] >= -PASSES


def _standing(around: Surroundings, place: Place, higher: float) -> float:
    """The gap over a point once the wall stands, mm."""
    way = path(around, place, Laid.FACE_A)
    over = around.roof.height(around.plan(place.x, way.aside.at(UPRIGHT)))
    return over + higher - place.y if math.isfinite(over) else math.inf


def _least_lowering(
    around: Surroundings, points: list[tuple[Place, float]], laid: Laid, least: float
) -> float | None:
    """The least lowering (mm) with which all points pass, none under `least`; None if none does.

    The points come worst first, so that few need a search of their own.
    """
    lower = least
    for _ in range(3):
        before = lower
        for place, higher in points:
            if not passes(around, place, higher, laid, lower):
                found = _search(around, place, higher, laid, lower)
                if found is None:
                    return None
                lower = found
        if lower == before:
            return lower
    return lower


def _search(
    around: Surroundings, place: Place, higher: float, laid: Laid, low: float
) -> float | None:
    """The lowering above `low` at which one point begins to pass."""
    high = max(low, 0.0) + 1.0
    while not passes(around, place, higher, laid, high):
        high *= 2.0
        if high > MOST * place.y:
            return None
    while high - low > CLOSE:
        middle = (low + high) / 2
        if passes(around, place, higher, laid, middle):
            high = middle
        else:
            low = middle
    return high
