"""The cautions that chimneys, ducts and rafters to stand on give rise to in a wall."""

import math
from collections.abc import Iterator
from itertools import pairwise

from core.checks.caution import Caution, Severity
from core.framing import keys, spoken
from core.model import KeptClear, Wall
from core.wording import Mm, message

Plan = tuple[float, float]


def clear_cautions(wall: Wall, kept: tuple[KeptClear, ...]) -> Iterator[Caution]:
    """Each chimney or duct that the wall runs through, or comes nearer to than stated."""
    for item in kept:
        found = _apart(_footprint(wall), _corners(item))
        what, gap = spoken(item.id), item.gap.mm
        if found <= 0.0:
            text = message("clear.through", letter=wall.letter, what=what, gap=Mm(gap))
            yield Caution(Severity.UNBUILDABLE, wall.letter, text)
        elif found < gap - 1e-6:
            values = {"found": Mm(found), "lacking": Mm(gap - found), "gap": Mm(gap)}
            text = message("clear.near", letter=wall.letter, what=what, **values)
            yield Caution(Severity.WARNING, wall.letter, text)


def rafter_cautions(wall: Wall) -> Iterator[Caution]:
    """Each opening of a wall that stands on rafters: none is framed in such a wall."""
    for opening in wall.openings if wall.stands_on is not None else ():
        text = message("opening.on-rafters", letter=wall.letter, opening=spoken(opening.id))
        yield Caution(Severity.UNBUILDABLE, keys.opening(wall.letter, opening.id), text)


def _footprint(wall: Wall) -> tuple[Plan, ...]:
    """The corners of the wall's timber in plan, mm."""
    (u0, v0), (u1, v1) = wall.chalk
    deep = wall.stud.width.mm / wall.run
    aside = (-(v1 - v0) * deep, (u1 - u0) * deep)
    return (
        (u0, v0),
        (u1, v1),
        (u1 + aside[0], v1 + aside[1]),
        (u0 + aside[0], v0 + aside[1]),
    )


def _corners(item: KeptClear) -> tuple[Plan, ...]:
    u0, v0 = item.across.mm, item.along.mm
    u1, v1 = u0 + item.wide.mm, v0 + item.deep.mm
    return (u0, v0), (u1, v0), (u1, v1), (u0, v1)


def _apart(a: tuple[Plan, ...], b: tuple[Plan, ...]) -> float:
    """The distance between two rectangles in plan, mm; zero or less where they overlap."""
    if not any(_parted(edge, a, b) for edge in (*_edges(a), *_edges(b))):
        return 0.0
    pairs = [(p, e) for p in a for e in _edges(b)] + [(p, e) for p in b for e in _edges(a)]
    return min(_to_edge(point, edge) for point, edge in pairs)


def _edges(corners: tuple[Plan, ...]) -> list[tuple[Plan, Plan]]:
    return list(pairwise((*corners, corners[0])))


def _parted(edge: tuple[Plan, Plan], a: tuple[Plan, ...], b: tuple[Plan, ...]) -> bool:
    """Whether a line square to this edge has the two rectangles on either side of a gap."""
    (x0, y0), (x1, y1) = edge
    across = (y0 - y1, x1 - x0)
    on_a, on_b = ([across[0] * x + across[1] * y for x, y in corners] for corners in (a, b))
    return max(on_a) < min(on_b) or max(on_b) < min(on_a)


def _to_edge(point: Plan, edge: tuple[Plan, Plan]) -> float:
    start, end = edge
    along = (end[0] - start[0], end[1] - start[1])
    size = along[0] ** 2 + along[1] ** 2
    share = ((point[0] - start[0]) * along[0] + (point[1] - start[1]) * along[1]) / size
    share = min(max(share, 0.0), 1.0)
    return math.dist(point, (start[0] + share * along[0], start[1] + share * along[1]))
