"""What a wall is put up among: roof, room, and the other walls."""

import math

import msgspec

from core.model import Room, Wall
from core.roof import Plan, Roof, RoofLine, roof_line

SAME = 1e-6
"""Heights nearer than this (mm) count as equal."""


class Surroundings(msgspec.Struct, frozen=True):
    """The wall to be put up, the roof line it was framed to, and what stands around it."""

    roof: Roof
    room: Room
    wall: Wall
    line: RoofLine
    others: tuple[Wall, ...] = ()

    @property
    def along(self) -> Plan:
        """The direction of the wall from left to right, length one."""
        (u0, v0), (u1, v1) = self.wall.chalk
        return ((u1 - u0) / self.wall.run, (v1 - v0) / self.wall.run)

    @property
    def away(self) -> Plan:
        """The direction from face A through the wall, length one."""
        along = self.along
        return (-along[1], along[0])

    @property
    def depth(self) -> float:
        """From face A to the far face, mm."""
        return self.wall.stud.width.mm

    @property
    def convex(self) -> bool:
        """Whether the space under the roof is convex: then edges pass where their corners do."""
        bounded = any(part.outline for part in (*self.roof.parts, *self.roof.ceilings))
        return len(self.roof.parts) == 1 and not bounded

    def plan(self, x: float, aside: float) -> Plan:
        """The plan point at `x` along the wall and `aside` mm away from face A."""
        (u, v), along, away = self.wall.chalk[0], self.along, self.away
        return (u + x * along[0] + aside * away[0], v + x * along[1] + aside * away[1])

    def local(self, point: Plan) -> Plan:
        """A plan point as (x along the wall, mm away from face A)."""
        (u, v), along, away = self.wall.chalk[0], self.along, self.away
        du, dv = point[0] - u, point[1] - v
        return (du * along[0] + dv * along[1], du * away[0] + dv * away[1])

    def offsets(self, places: tuple[float, ...]) -> tuple[float, ...]:
        """How much higher than the stated roof the line lies that the wall was framed to, mm.

        A line measured on site replaces the heights along the wall; the slopes across it stay those
        of the stated planes, so what the line differs by at an x goes for the whole swing there.
        """
        try:
            planned = roof_line(self.roof, *self.wall.chalk)
        except ValueError:
            return (0.0,) * len(places)
        differ = [self.line.height(x) - planned.height(x) for x in places]
        return tuple(d if math.isfinite(d) and abs(d) > SAME else 0.0 for d in differ)
