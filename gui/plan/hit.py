"""What lies under a point of the plan; model mm, no Qt."""

from collections.abc import Iterable

from core.framing import Footprint
from core.model import Wall
from gui.sketcher.camera import XY


def wall_under(walls: Iterable[Wall], point: XY, reach: float) -> str | None:
    """The letter of the wall nearest to a point, `reach` mm being near enough; None on floor."""
    found = [
        (away, wall.letter)
        for wall in walls
        if (ground := Footprint.of(wall)) is not None and (away := distance(ground, point)) <= reach
    ]
    return min(found)[1] if found else None


def distance(ground: Footprint, point: XY) -> float:
    """How far a point lies outside a wall, mm; 0 on or in it."""
    along, away = within(ground, point)
    x = max(-along, along - ground.run, 0.0)
    y = max(-away, away - ground.width, 0.0)
    return float((x * x + y * y) ** 0.5)


def within(ground: Footprint, point: XY) -> XY:
    """A plan point as (along the wall from its left end, away from its face A), mm."""
    u, v = point[0] - ground.start[0], point[1] - ground.start[1]
    (du, dv), (au, av) = ground.along, ground.away
    return u * du + v * dv, u * au + v * av
