"""Where a wall or the like stands in plan: its points, its corners, the ground it takes."""

import math

from core.drawing.elements import XY
from core.drawing.placing import Taken, bounds
from core.framing import Footprint

_PIECE = 300.0
"""The length of the pieces (mm) in which a wall takes its ground."""


def at(ground: Footprint, along: float, away: float) -> XY:
    """The plan point so far along a wall from its left end and away from its face A, mm."""
    (u, v), (du, dv), (au, av) = ground.start, ground.along, ground.away
    return u + du * along + au * away, v + dv * along + av * away


def corners(ground: Footprint) -> tuple[XY, ...]:
    """A wall's corners in plan: along face A from left to right, back along the far face, mm."""
    return (
        at(ground, 0.0, 0.0),
        at(ground, ground.run, 0.0),
        at(ground, ground.run, ground.width),
        at(ground, 0.0, ground.width),
    )


def take(ground: Footprint, taken: Taken) -> None:
    """Takes a wall's ground in pieces, so that one askew takes little more than it covers."""
    pieces = max(1, math.ceil(ground.run / _PIECE))
    for n in range(pieces):
        low, high = ground.run * n / pieces, ground.run * (n + 1) / pieces
        taken.add(bounds(at(ground, x, y) for x in (low, high) for y in (0.0, ground.width)))
