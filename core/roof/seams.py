"""Where the roof turns or steps, and where it has a given height: lines in plan."""

import math
from collections.abc import Callable, Iterator
from itertools import combinations, pairwise

from core.roof.plane import Plan, Plane, Roof

Line = tuple[Plan, Plan]
"""A straight line in plan between two points, mm."""

_ASIDE = 1.0
"""How far (mm) to either side of a line the roof is looked at."""

_SAME = 1e-6
_STEP = 0.5
_FAR = 1e7


def seams(roof: Roof, ground: tuple[tuple[Plan, ...], ...]) -> tuple[Line, ...]:
    """Ridges, hips, valleys, changes of pitch and cheeks over a `ground` of convex outlines, mm.

    Ceilings are not looked at. Lines come in no order, each once.
    """
    planes = sorted({plane for part in roof.parts for plane in part.planes}, key=_sorting)
    found: list[Line] = []
    for p, q in combinations(planes, 2):
        rise = (p.across - q.across, p.along - q.along, p.height - q.height)
        found += _kept(_line(*rise), roof, ground, lambda m, n: _turns(roof, m, n))
    for part in roof.parts:
        outline = part.outline or ()
        for a, b in pairwise((*outline, *outline[:1])):
            found += _kept((a, b), roof, ground, lambda m, n: _steps(roof, m, n))
    return tuple(dict.fromkeys(found))


def contour(roof: Roof, height: float, ground: tuple[tuple[Plan, ...], ...]) -> tuple[Line, ...]:
    """Where the underside of the roof is `height` mm up, over a ground of convex outlines, mm.

    Ceilings are not looked at; a level plane just at the height has no line.
    """
    planes = sorted({plane for part in roof.parts for plane in part.planes}, key=_sorting)

    def there(middle: Plan, aside: Plan) -> bool:  # noqa: ARG001
        return abs(_height(roof, middle) - height) <= 1e-3

    found: list[Line] = []
    for p in planes:
        found += _kept(_line(p.across, p.along, p.height - height), roof, ground, there)
    return tuple(dict.fromkeys(found))


def _kept(
    line: Line | None,
    roof: Roof,
    ground: tuple[tuple[Plan, ...], ...],
    wanted: Callable[[Plan, Plan], bool],
) -> Iterator[Line]:
    """The stretches of a line over the ground that are wanted, asked for at their middles.

    A stretch ends where the line crosses an outline or where two planes are equally high, since
    only there can the answer change.
    """
    if line is None or math.dist(*line) <= _ASIDE:
        return
    (x0, y0), (x1, y1) = line
    size = math.dist(*line)
    along = ((x1 - x0) / size, (y1 - y0) / size)

    def at(place: float) -> Plan:
        return x0 + along[0] * place, y0 + along[1] * place

    aside = (-along[1] * _ASIDE, along[0] * _ASIDE)
    start: float | None = None
    last = 0.0
    for low, high in pairwise(_breaks(line, along, size, roof, ground)):
        middle = at((low + high) / 2)
        keep = any(_within(outline, middle) for outline in ground) and wanted(middle, aside)
        if keep and start is None:
            start = low
        if not keep and start is not None:
            yield _rounded(at(start)), _rounded(at(last))
            start = None
        last = high
    if start is not None:
        yield _rounded(at(start)), _rounded(at(last))


def _breaks(
    line: Line,
    along: Plan,
    size: float,
    roof: Roof,
    ground: tuple[tuple[Plan, ...], ...],
) -> list[float]:
    """The places along a line at which what is overhead may change, mm from its start."""
    (x0, y0) = line[0]
    places = {0.0, size}
    for outline in (*ground, *(part.outline for part in roof.parts if part.outline)):
        for (ax, ay), (bx, by) in pairwise((*outline, outline[0])):
            deeper = along[0] * (by - ay) - along[1] * (bx - ax)
            if abs(deeper) > _SAME:
                places.add(((ax - x0) * (by - ay) - (ay - y0) * (bx - ax)) / deeper)
    planes = {plane for part in roof.parts for plane in part.planes}
    for p, q in combinations(planes, 2):
        closing = p.toward(along) - q.toward(along)
        if abs(closing) > _SAME:
            places.add((q.at(line[0]) - p.at(line[0])) / closing)
    ordered = sorted(place for place in places if 0.0 <= place <= size)
    return [a for a, b in pairwise(ordered) if b - a > 1e-3] + [size]


def _turns(roof: Roof, middle: Plan, aside: Plan) -> bool:
    """Whether the roof turns at a point without a step: other planes on either side."""
    one, other = _beside(middle, aside)
    first, second = _over(roof, one), _over(roof, other)
    if first is None or second is None or first == second:
        return False
    return abs(first.at(middle) - second.at(middle)) <= 1e-3


def _steps(roof: Roof, middle: Plan, aside: Plan) -> bool:
    """Whether the roof is higher on one side of a point than on the other."""
    one, other = _beside(middle, aside)
    first, second = _over(roof, one), _over(roof, other)
    if first is None or second is None:
        return False
    return abs(first.at(middle) - second.at(middle)) > _STEP


def _beside(middle: Plan, aside: Plan) -> tuple[Plan, Plan]:
    return (
        (middle[0] + aside[0], middle[1] + aside[1]),
        (middle[0] - aside[0], middle[1] - aside[1]),
    )


def _over(roof: Roof, point: Plan) -> Plane | None:
    """The plane of the roof itself over a point, no ceiling."""
    return Roof(roof.parts).plane(point)


def _height(roof: Roof, point: Plan) -> float:
    return Roof(roof.parts).height(point)


def _line(across: float, along: float, height: float) -> Line | None:
    """The points where across*u + along*v + height is 0, as a very long line; None without."""
    size = math.hypot(across, along)
    if size <= _SAME:
        return None
    foot = (-height * across / size**2, -height * along / size**2)
    way = (-along / size, across / size)
    return (
        (foot[0] - way[0] * _FAR, foot[1] - way[1] * _FAR),
        (foot[0] + way[0] * _FAR, foot[1] + way[1] * _FAR),
    )


def _within(outline: tuple[Plan, ...], point: Plan) -> bool:
    """Whether a point lies in a convex outline, edges included."""
    turns = [
        (bx - ax) * (point[1] - ay) - (by - ay) * (point[0] - ax)
        for (ax, ay), (bx, by) in pairwise((*outline, outline[0]))
    ]
    return all(t >= -_SAME for t in turns) or all(t <= _SAME for t in turns)


def _rounded(point: Plan) -> Plan:
    """A point without the last digits of reckoning, so that the same one is told once."""
    return round(point[0], 4) + 0.0, round(point[1], 4) + 0.0


def _sorting(plane: Plane) -> tuple[float, float, float]:
    return plane.across, plane.along, plane.height
