"""What lies under a point of the plan; model mm, no Qt."""

from collections.abc import Iterable

from core.framing import Footprint, existing_footprints, footprints, stair_footprint
from core.model import Project
from gui.sketcher.camera import XY


def thing_under(project: Project, point: XY, reach: float) -> str | None:
    """The key of what is nearest to a point, `reach` mm being near enough; None on bare floor.

    Walls lie over existing walls, and those over stair openings.
    """
    old = existing_footprints(project.room)
    stairs = tuple(stair_footprint(stair) for stair in project.room.stair_openings)
    for grounds in (footprints(project.walls), old, stairs):
        found = _nearest(grounds, point, reach)
        if found is not None:
            return found
    return None


def _nearest(grounds: Iterable[Footprint], point: XY, reach: float) -> str | None:
    found = [(away, g.letter) for g in grounds if (away := distance(g, point)) <= reach]
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
