"""Planes over the floor plan, and the parts that a roof is made of."""

import math

import msgspec

Plan = tuple[float, float]
"""A point or direction in plan: (u across, v along), mm."""


class Plane(msgspec.Struct, frozen=True):
    """The plane z = `across`*u + `along`*v + `height`: two slopes (rise over run) and mm."""

    across: float
    along: float
    height: float

    def at(self, point: Plan) -> float:
        """The height of the plane at a plan point, mm."""
        return self.across * point[0] + self.along * point[1] + self.height

    def toward(self, direction: Plan) -> float:
        """The slope (rise over run) in a plan direction of length one."""
        return self.across * direction[0] + self.along * direction[1]


class Part(msgspec.Struct, frozen=True):
    """Planes over an outline in plan; the height of a part at a point is its lowest plane there.

    `outline` is a convex polygon, mm; None stands for a part without end.
    """

    planes: tuple[Plane, ...]
    outline: tuple[Plan, ...] | None = None

    def covers(self, point: Plan) -> bool:
        """Whether the point lies in the outline or on its edge (within a thousandth of a mm)."""
        if self.outline is None:
            return True
        turns = [
            _turn(a, b, point)
            for a, b in zip(self.outline, (*self.outline[1:], self.outline[0]), strict=True)
        ]
        return all(t >= -1e-3 for t in turns) or all(t <= 1e-3 for t in turns)

    def lowest(self, point: Plan) -> Plane:
        """The plane that makes the height of this part at the point."""
        return min(self.planes, key=lambda plane: plane.at(point))


class Roof(msgspec.Struct, frozen=True):
    """Roof parts and the ceilings under them.

    The height of the roof at a point is the highest of the parts that cover it; `ceilings` (a flat
    ceiling on ties, the underside of a ridge beam) are taken last, as lowest.
    """

    parts: tuple[Part, ...]
    ceilings: tuple[Part, ...] = ()

    def plane(self, point: Plan) -> Plane | None:
        """The plane overhead at a plan point, or None where no part covers it."""
        over = [part.lowest(point) for part in self.parts if part.covers(point)]
        if not over:
            return None
        highest = max(over, key=lambda plane: plane.at(point))
        below = [part.lowest(point) for part in self.ceilings if part.covers(point)]
        return min((highest, *below), key=lambda plane: plane.at(point))

    def height(self, point: Plan) -> float:
        """The height overhead at a plan point, mm; minus infinity where nothing is overhead."""
        plane = self.plane(point)
        return -math.inf if plane is None else plane.at(point)


def _turn(a: Plan, b: Plan, p: Plan) -> float:
    """The signed distance of `p` from the line a to b, mm; positive to its left."""
    length = math.dist(a, b)
    return ((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])) / length
