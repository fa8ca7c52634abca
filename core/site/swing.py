"""The swing: how near the roof a point of the wall comes while the wall is tilted up.

The wall lies on the floor beside its place and turns up on the lower edge of its sole plate that
is on that side. The angle is 0 lying down and a right angle upright. Every plan coordinate and
height of a point is then c + s*sin + k*cos of the angle, and so is its gap to a plane, whose least
value has a closed form. Where another plane comes to lie overhead, the path is cut in two.
"""

import enum
import math
from itertools import combinations, pairwise

import msgspec

from core.roof import Plan, Plane
from core.site.surroundings import Surroundings

UPRIGHT = math.pi / 2
"""The angle of a wall that stands."""

PASSES = 1e-3
"""A point that comes this far (mm) into the roof is not held up by it."""


class Laid(enum.Enum):
    """The side on which the wall lies before it is tilted up; its pivot edge is on that face."""

    FACE_A = "face A"
    FAR_FACE = "far face"


class Place(msgspec.Struct, frozen=True):
    """A point of the wall: x from its left end, y up from the floor, d away from face A; mm."""

    x: float
    y: float
    d: float


class Wave(msgspec.Struct, frozen=True):
    """A value over the angle: `still` + `sine`*sin + `cosine`*cos."""

    still: float
    sine: float
    cosine: float

    def at(self, angle: float) -> float:
        """The value at an angle in radians."""
        return self.still + self.sine * math.sin(angle) + self.cosine * math.cos(angle)

    def zeros(self) -> tuple[float, ...]:
        """The angles from lying to upright at which the value is zero."""
        size = math.hypot(self.sine, self.cosine)
        if size < 1e-12 or abs(self.still) > size:
            return ()
        middle, half = math.atan2(self.sine, self.cosine), math.acos(-self.still / size)
        return tuple(a for a in (middle - half, middle + half) if 0.0 < a < UPRIGHT)

    def least(self, low: float, high: float) -> tuple[float, float]:
        """The least value between two angles within a right angle, and the angle where it is."""
        lowest = math.atan2(self.sine, self.cosine) + math.pi
        angles = (low, high, *(a for a in (lowest, lowest - 2 * math.pi) if low < a < high))
        return min((self.at(angle), angle) for angle in angles)


class Path(msgspec.Struct, frozen=True):
    """The way of a point: how far away from face A it is, and how high, over the angle; mm."""

    x: float
    aside: Wave
    up: Wave


class Swing(msgspec.Struct, frozen=True):
    """How a wall swings up on one side.

    `there` is the least gap between the wall's top and the roof once it stands, and `needed` the
    gap with which it would just pass; None where even half its height less would not do. `worst`
    is the point that comes nearest to the roof, `clearance` how near (below zero: how far into
    it), `angle` that of the wall at that moment in radians.
    """

    laid: Laid
    there: float
    needed: float | None
    worst: Place
    clearance: float
    angle: float

    @property
    def passes(self) -> bool:
        """Whether the wall can be tilted up as it is drawn."""
        return self.clearance >= -PASSES

    @property
    def short(self) -> float:
        """How much less high the wall must be built to pass, mm; infinite where nothing helps."""
        if self.passes:
            return 0.0
        return math.inf if self.needed is None else max(0.0, self.needed - self.there)


def path(around: Surroundings, place: Place, laid: Laid) -> Path:
    """The way of a point of the wall from lying on that side to upright.

    On the side of face A: away = d*sin - y*cos, up = y*sin + d*cos, since the point is y along the
    wall and d above the floor while the wall lies. The far side is the mirror image.
    """
    if laid is Laid.FACE_A:
        return Path(place.x, Wave(0.0, place.d, -place.y), Wave(0.0, place.y, place.d))
    back = around.depth - place.d
    return Path(place.x, Wave(around.depth, -back, place.y), Wave(0.0, place.y, back))


def clearance(
    around: Surroundings, place: Place, laid: Laid, higher: float = 0.0
) -> tuple[float, float]:
    """The least gap (mm) between a point's path and the roof, and the angle there.

    `higher` is how much higher than stated the roof is along the wall's x. Minus where the point
    would go into the roof; infinite where no roof is over any of its way.
    """
    way = path(around, place, laid)
    least = (math.inf, UPRIGHT)
    for low, high in pairwise(_cuts(around, way)):
        middle = around.plan(way.x, way.aside.at((low + high) / 2))
        plane = around.roof.plane(middle)
        if plane is not None:
            least = min(least, _gap(around, way, plane, higher).least(low, high))
    return least


def _gap(around: Surroundings, way: Path, plane: Plane, higher: float) -> Wave:
    """The gap between a path and a plane over it."""
    over = _over(around, way, plane)
    return Wave(
        over.still + higher - way.up.still, over.sine - way.up.sine, over.cosine - way.up.cosine
    )


def _over(around: Surroundings, way: Path, plane: Plane) -> Wave:
    """The height of a plane over a path."""
    slope = plane.toward(around.away)
    return _along(way, plane.at(around.plan(way.x, 0.0)), slope)


def _along(way: Path, still: float, slope: float) -> Wave:
    """What is `still` at face A and changes by `slope` with each mm away from it."""
    aside = way.aside
    return Wave(still + slope * aside.still, slope * aside.sine, slope * aside.cosine)


def _cuts(around: Surroundings, way: Path) -> list[float]:
    """The angles between which one plane stays overhead, from lying to upright."""
    parts = (*around.roof.parts, *around.roof.ceilings)
    planes = {plane: _over(around, way, plane) for part in parts for plane in part.planes}
    angles = {0.0, UPRIGHT}
    for a, b in combinations(planes.values(), 2):
        angles.update(Wave(*(p - q for p, q in zip(_values(a), _values(b), strict=True))).zeros())
    for part in parts:
        outline = part.outline or ()
        for start, end in zip(outline, (*outline[1:], *outline[:1]), strict=True):
            angles.update(_edge(around, way, start, end).zeros())
    return sorted(angles)


def _values(wave: Wave) -> tuple[float, float, float]:
    return wave.still, wave.sine, wave.cosine


def _edge(around: Surroundings, way: Path, start: Plan, end: Plan) -> Wave:
    """A value that is zero where a path crosses the line through two plan points."""
    edge, at, away = (end[0] - start[0], end[1] - start[1]), around.plan(way.x, 0.0), around.away
    still = edge[0] * (at[1] - start[1]) - edge[1] * (at[0] - start[0])
    return _along(way, still, edge[0] * away[1] - edge[1] * away[0])
