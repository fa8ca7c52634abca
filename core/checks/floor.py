"""The cautions that the floor gives rise to: a stair's opening, a wall that is there already."""

from collections.abc import Iterator

from core.checks.caution import Caution, Severity
from core.framing import Footprint, existing_footprint, spoken, stair_footprint
from core.model import ExistingWall, StairOpening, Wall
from core.wording import Mm, message

Plan = tuple[float, float]

_TOUCH = 1.0
"""How far (mm) a wall may reach into another's outline: numbers that were rounded."""


def floor_cautions(
    wall: Wall, stairs: tuple[StairOpening, ...], existing: tuple[ExistingWall, ...]
) -> Iterator[Caution]:
    """Each stair opening that the wall stands across, and each existing wall that it runs into."""
    own = Footprint.of(wall)
    if own is None:
        return
    for stair in stairs:
        by = _into(own, stair_footprint(stair))
        if by > _TOUCH:
            text = message("floor.stair", letter=wall.letter, stair=spoken(stair.id), by=Mm(by))
            yield Caution(Severity.WARNING, wall.letter, text)
    for other in existing:
        ground = existing_footprint(other)
        by = _into(own, ground) if ground is not None else 0.0
        if by > _TOUCH:
            text = message("floor.existing", letter=wall.letter, other=spoken(other.id), by=Mm(by))
            yield Caution(Severity.WARNING, wall.letter, text)


def _into(a: Footprint, b: Footprint) -> float:
    """How far two rectangles in plan reach into each other, mm; 0 where they are apart.

    It is the least way that one has to go for them to be apart.
    """
    corners = _corners(a), _corners(b)
    least = float("inf")
    for way in (a.along, a.away, b.along, b.away):
        on_a, on_b = ([way[0] * u + way[1] * v for u, v in outline] for outline in corners)
        least = min(least, max(on_a) - min(on_b), max(on_b) - min(on_a))
    return max(least, 0.0)


def _corners(ground: Footprint) -> tuple[Plan, ...]:
    (u, v), (du, dv), (au, av) = ground.start, ground.along, ground.away
    places = ((0.0, 0.0), (ground.run, 0.0), (ground.run, ground.width), (0.0, ground.width))
    return tuple((u + du * x + au * y, v + dv * x + av * y) for x, y in places)
