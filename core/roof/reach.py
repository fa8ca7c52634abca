"""Which stretch of a line in plan lies in a part's outline."""

from itertools import pairwise

from core.roof.plane import Part, Plan

_ASIDE = 0.1
"""How far outside an outline a line still counts as in it, mm: more than any step into timber."""

Stretch = tuple[float, float]
"""Two places along a line, mm, the nearer one first."""


def reach(part: Part, start: Plan, direction: Plan, length: float) -> Stretch | None:
    """The stretch of a line in a part's outline, or a little outside it; None if it keeps out.

    The line begins at `start` and goes `length` mm in a direction of length one. A part without an
    outline reaches along all of it.
    """
    if part.outline is None:
        return 0.0, length
    outline = part.outline
    turn = 1.0 if _area(outline) > 0 else -1.0
    low, high = 0.0, length
    for (x0, y0), (x1, y1) in pairwise((*outline, outline[0])):
        size = ((x1 - x0) ** 2 + (y1 - y0) ** 2) ** 0.5
        inward = (-turn * (y1 - y0) / size, turn * (x1 - x0) / size)
        depth = inward[0] * (start[0] - x0) + inward[1] * (start[1] - y0) + _ASIDE
        deeper = inward[0] * direction[0] + inward[1] * direction[1]
        if abs(deeper) < 1e-12:
            if depth < 0:
                return None
        elif deeper > 0:
            low = max(low, -depth / deeper)
        else:
            high = min(high, -depth / deeper)
    return (low, high) if low <= high else None


def _area(outline: tuple[Plan, ...]) -> float:
    """Twice the area, positive where the outline goes round against the clock."""
    pairs = pairwise((*outline, outline[0]))
    return sum(x0 * y1 - x1 * y0 for (x0, y0), (x1, y1) in pairs)
