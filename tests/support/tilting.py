"""Tilting a wall up by brute force: points turned about an axis in small steps under plain planes.

Slow and plain, to check the program's closed forms against. The wall's top is filled up to the
surfaces of `solids`, and every point is turned by Rodrigues' formula; nothing here is taken from
the rooms under test but the x of the roof line's corners, so as to look there too.
"""

from __future__ import annotations

import math
from typing import NamedTuple

import solids
from core.model import Room, Wall
from solids import Vector

COARSE = math.radians(0.5)
FINE = math.radians(0.004)


class Brute(NamedTuple):
    """The least gap found (mm) and the angle of the wall there, radians from lying."""

    least: float
    angle: float


def brute(room: Room, wall: Wall, xs: list[float], far: bool, lower: float = 0.0) -> Brute:
    """The least gap between the wall's top and the roof over its whole swing.

    `far` lays it down behind its far face instead of before face A; `lower` builds it less high.
    """
    where, depth = solids.stand(wall), wall.stud.width.mm
    surfaces = solids.surfaces(room)
    pivot = where.plan(0.0, depth if far else 0.0)
    found = Brute(math.inf, 0.0)
    for x in xs:
        for d in (0.0, depth):
            u, v = where.plan(x, d)
            point = (u, v, _height(surfaces, u, v) - lower)
            found = min(found, _least(surfaces, where.along, pivot, point, far))
    return found


def _height(surfaces: tuple[solids.Surface, ...], u: float, v: float) -> float:
    return min(s.height(u, v) for s in surfaces if s.strip is None or s.strip[0] <= u <= s.strip[1])


def _least(
    surfaces: tuple[solids.Surface, ...],
    along: tuple[float, float],
    pivot: tuple[float, float],
    point: Vector,
    far: bool,
) -> Brute:
    def gap(angle: float) -> Brute:
        # Upright is a right angle; turning about the wall's own direction leans it toward face A.
        lean = (math.pi / 2 - angle) * (-1.0 if far else 1.0)
        u, v, z = _turned(point, (*pivot, 0.0), (*along, 0.0), lean)
        return Brute(_height(surfaces, u, v) - z, angle)

    steps = round(math.pi / 2 / COARSE)
    coarse = min(gap(n * COARSE) for n in range(steps + 1))
    reach = round(COARSE / FINE)
    near = (coarse.angle + n * FINE for n in range(-reach, reach + 1))
    return min(coarse, *(gap(min(max(a, 0.0), math.pi / 2)) for a in near))


def _turned(point: Vector, pivot: Vector, axis: Vector, angle: float) -> Vector:
    """A point turned about an axis of length one through `pivot` (Rodrigues)."""
    p = (point[0] - pivot[0], point[1] - pivot[1], point[2] - pivot[2])
    cos, sin = math.cos(angle), math.sin(angle)
    cross, along = solids.cross(axis, p), solids.dot(axis, p) * (1.0 - cos)
    turned = [p[i] * cos + cross[i] * sin + axis[i] * along + pivot[i] for i in range(3)]
    return turned[0], turned[1], turned[2]
