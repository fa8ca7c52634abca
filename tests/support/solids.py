"""Plane geometry in (u, v, z), slow and plain, to check the program's studs and cuts against.

Every roof surface is an upright normal and an offset; a plate lying flat to a surface has its
underside on the same surface moved down square by the plate's thickness. Nothing here is taken
from the rooms under test.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import NamedTuple

from core.model import Room, Wall

Vector = tuple[float, float, float]
Corner = tuple[float, float]
"""A place in the wall: x from its left end, d away from face A, mm."""


class Surface(NamedTuple):
    """The plane normal . point = offset; `normal` has length one and points up."""

    normal: Vector
    offset: float
    strip: tuple[float, float] | None = None
    """The stretch of u under which the surface lies; None for all."""

    def height(self, u: float, v: float, down: float = 0.0) -> float:
        """The z over a plan point once the surface is moved down square by `down`."""
        a, b, c = self.normal
        return (self.offset - down - a * u - b * v) / c


class Stand(NamedTuple):
    """Where a wall stands: its left end in plan, and its directions along and away from face A."""

    origin: tuple[float, float]
    along: tuple[float, float]
    away: tuple[float, float]
    run: float

    def plan(self, x: float, d: float) -> tuple[float, float]:
        """The plan point of a place in the wall."""
        u, v = self.origin
        return (
            u + x * self.along[0] + d * self.away[0],
            v + x * self.along[1] + d * self.away[1],
        )


def surfaces(room: Room) -> tuple[Surface, ...]:
    """The undersides of rafters, ceiling ties and ridge beam, by three points of each."""
    width = room.width.mm
    found = []
    if room.left is not None:
        eave = room.left.eave_height.mm
        found.append(_through((0, 0, eave), (1, 0, eave + room.left.pitch.tangent), (0, 1, eave)))
    if room.right is not None:
        eave = room.right.eave_height.mm
        inward = (width - 1, 0, eave + room.right.pitch.tangent)
        found.append(_through((width, 0, eave), inward, (width, 1, eave)))
    if room.flat_ceiling is not None:
        found.append(Surface((0.0, 0.0, 1.0), room.flat_ceiling.mm))
    if room.ridge_beam is not None:
        middle, half = _highest(found[0], found[1]), room.ridge_beam.width.mm / 2
        strip = (middle - half, middle + half)
        found.append(Surface((0.0, 0.0, 1.0), room.ridge_beam.underside.mm, strip))
    return tuple(found)


def stand(wall: Wall) -> Stand:
    """Where the wall stands. Seen from face A, left to right, the far side is to the left hand of
    a person walking from the left end to the right end on the floor plan."""
    (u0, v0), (u1, v1) = wall.chalk
    angle = math.atan2(v1 - v0, u1 - u0)
    along = (math.cos(angle), math.sin(angle))
    away = (math.cos(angle + math.pi / 2), math.sin(angle + math.pi / 2))
    return Stand((u0, v0), along, away, math.hypot(u1 - u0, v1 - v0))


def overhead(room: Room, where: Stand, d: float) -> tuple[Surface, ...]:
    """The surfaces that are lowest over some stretch of the wall's face at `d`: only those carry a
    plate. A surface is the lowest where it is under every other one, so its stretch is clipped by
    each in turn."""
    all_of_them = surfaces(room)
    return tuple(s for n, s in enumerate(all_of_them) if _stretch(n, all_of_them, where, d) > 1e-6)


def top(over: tuple[Surface, ...], where: Stand, at: Corner, down: float) -> float:
    """The height under the plates at a place in the wall: the lowest of the moved surfaces."""
    u, v = where.plan(*at)
    return min(s.height(u, v, down) for s in over)


def lowest_here(over: tuple[Surface, ...], where: Stand, at: Corner, down: float) -> Surface:
    """The surface whose plate is the lowest at a place in the wall."""
    u, v = where.plan(*at)
    return min(over, key=lambda s: s.height(u, v, down))


def saw(surface: Surface, where: Stand) -> tuple[float, float]:
    """How far a saw swings (mitre) and tilts (bevel) from square to cut a plumb stud along a
    surface, as (bevel, mitre) in radians.

    The stud lies on its wide face, which runs away from face A. The cut's trace on that face
    swings by the surface's slope that way. The blade is the surface itself; it leans out of
    square to the wide face by the angle between the surface's normal and that face.
    """
    a, b, c = surface.normal
    toward_away = a * where.away[0] + b * where.away[1]
    toward_along = a * where.along[0] + b * where.along[1]
    return math.asin(-toward_along), math.atan2(-toward_away, c)


def sawn(
    underside: Sequence[Corner], surface: Surface, where: Stand, setting: tuple[float, float]
) -> Vector:
    """The normal of the plane that a saw set to (bevel, mitre) cuts at a plate's end.

    From square to the plate, which runs along the `underside` corners on face A and lies flat
    under a surface, it swings over the broad face by the mitre, then tilts out of square to that
    face by the bevel.
    """
    (x0, y0), (x1, y1) = underside
    run = math.hypot(x1 - x0, y1 - y0)
    u, v = where.along
    axis = (u * (x1 - x0) / run, v * (x1 - x0) / run, (y1 - y0) / run)
    aside = cross(surface.normal, axis)
    return _turned(_turned(axis, aside, -setting[1]), surface.normal, -setting[0])


def crossing(one: Surface, other: Surface) -> Vector:
    """The direction of the line in which two surfaces meet, of length one."""
    return _unit(cross(one.normal, other.normal))


def bisector(one: Surface, other: Surface) -> Vector:
    """The normal of the plane that halves the angle under two surfaces: the joint of plates."""
    a, b = one.normal, other.normal
    return _unit((a[0] - b[0], a[1] - b[1], a[2] - b[2]))


def dot(a: Vector, b: Vector) -> float:
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def _turned(a: Vector, b: Vector, angle: float) -> Vector:
    """The direction `a` turned toward `b`, which is square to it."""
    cos, sin = math.cos(angle), math.sin(angle)
    return (cos * a[0] + sin * b[0], cos * a[1] + sin * b[1], cos * a[2] + sin * b[2])


def _through(p: Vector, q: Vector, r: Vector) -> Surface:
    normal = _unit(cross(_minus(q, p), _minus(r, p)))
    if normal[2] < 0:
        normal = (-normal[0], -normal[1], -normal[2])
    return Surface(normal, dot(normal, p))


def _highest(left: Surface, right: Surface) -> float:
    """The u at which two slopes along the room meet."""
    rise = left.height(1, 0) - left.height(0, 0)
    fall = right.height(0, 0) - right.height(1, 0)
    return (right.height(0, 0) - left.height(0, 0)) / (rise + fall)


def _stretch(number: int, all_of_them: tuple[Surface, ...], where: Stand, d: float) -> float:
    """The length of the wall over which a surface is the lowest; the first of equal ones counts."""
    one = all_of_them[number]
    low, high = 0.0, where.run
    if one.strip is not None:
        inside = _clip(where, d, one.strip)
        low, high = max(low, inside[0]), min(high, inside[1])
    for place, other in enumerate(all_of_them):
        if place == number or other.strip is not None:
            continue
        gap0, gap1 = (
            other.height(*where.plan(x, d)) - one.height(*where.plan(x, d)) for x in (0.0, 1.0)
        )
        slope = gap1 - gap0
        if abs(slope) < 1e-12:
            covered = gap0 < -1e-9 or (gap0 <= 1e-9 and place < number)
            high = low if covered else high
        elif slope > 0:
            low = max(low, -gap0 / slope)
        else:
            high = min(high, -gap0 / slope)
    return high - low


def _clip(where: Stand, d: float, strip: tuple[float, float]) -> tuple[float, float]:
    start = where.plan(0.0, d)[0]
    if abs(where.along[0]) < 1e-12:
        return (-math.inf, math.inf) if strip[0] <= start <= strip[1] else (0.0, 0.0)
    ends = sorted((u - start) / where.along[0] for u in strip)
    return ends[0], ends[1]


def _minus(a: Vector, b: Vector) -> Vector:
    return (a[0] - b[0], a[1] - b[1], a[2] - b[2])


def cross(a: Vector, b: Vector) -> Vector:
    return (a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])


def _unit(a: Vector) -> Vector:
    size = math.sqrt(dot(a, a))
    return (a[0] / size, a[1] / size, a[2] / size)
