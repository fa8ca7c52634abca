"""The cautions of what is kept clear: chimneys and ducts that a wall comes too near to."""

import math
from collections.abc import Iterator
from itertools import pairwise

from core.checks.apart import Solid, apart
from core.checks.caution import Caution, Severity
from core.framing import Frame, Member, Role, spoken
from core.model import KeptClear, Wall
from core.roof import RoofLine
from core.wording import Message, Mm, message

Plan = tuple[float, float]

_UPRIGHT = frozenset({Role.STUD, Role.KING, Role.TRIMMER, Role.CRIPPLE, Role.BLOCK})


def clear_cautions(
    wall: Wall, line: RoofLine, frame: Frame, kept: tuple[KeptClear, ...]
) -> Iterator[Caution]:
    """Each chimney or duct that the wall runs through, or comes nearer to than stated.

    The distance is the least there is anywhere between floor and roof, square to what leans. The
    studs that are too near are told one by one.
    """
    for item in kept:
        found = _distance(wall, line, item)
        what, gap = spoken(item.id), item.gap.mm
        if found <= 0.0:
            text = message("clear.through", letter=wall.letter, what=what, gap=Mm(gap))
            yield Caution(Severity.UNBUILDABLE, wall.letter, text)
        elif found < gap - 1e-6:
            values = {"found": Mm(found), "lacking": Mm(gap - found), "gap": Mm(gap)}
            text = message("clear.near", letter=wall.letter, what=what, **values)
            yield Caution(Severity.WARNING, wall.letter, text)
        if found < gap - 1e-6:
            yield from _studs(wall, line, frame, item)


def _studs(wall: Wall, line: RoofLine, frame: Frame, item: KeptClear) -> Iterator[Caution]:
    """The standing members of a wall that are in or too near to a chimney or duct."""
    gap, solid = item.gap.mm, _solid(item, _top(line))
    for member in (m for m in frame.members if m.role in _UPRIGHT and m.near):
        found = apart(_timber(wall, member), solid)
        if found < gap - 1e-6:
            yield Caution(*_stud(wall, item, member, found))


def _stud(
    wall: Wall, item: KeptClear, member: Member, found: float
) -> tuple[Severity, str, Message]:
    """A stud that stands in what is kept clear, or so far from it, mm."""
    gap = item.gap.mm
    values: dict[str, str | Mm] = {
        "letter": wall.letter,
        "what": spoken(item.id),
        "at": Mm(member.left),
        "gap": Mm(gap),
    }
    if found <= 0.0:
        return Severity.UNBUILDABLE, member.key, message("clear.stud-through", **values)
    text = message("clear.stud-near", found=Mm(found), lacking=Mm(gap - found), **values)
    return Severity.WARNING, member.key, text


def _distance(wall: Wall, line: RoofLine, item: KeptClear) -> float:
    """How far apart a wall's timber and a chimney or duct are at the least, mm.

    One that leans is first looked at as all the ground it leans over, which is quick to rule out.
    """
    footprint = _footprint(wall)
    if item.up_to is None:
        return _apart(footprint, _corners(item, 0.0))
    over = _apart(footprint, _ground(item, _top(line)))
    if over >= item.gap.mm:
        return over
    solid = _solid(item, _top(line))
    return min(apart(piece, solid) for piece in _pieces(wall, line))


def _pieces(wall: Wall, line: RoofLine) -> list[Solid]:
    """The wall from floor to roof, one solid under each of its roof's planes."""
    depth = wall.stud.width.mm
    found = []
    for s in line.segments:
        corners = ((s.left, 0.0), (s.right, 0.0), (s.right, depth), (s.left, depth))
        tops = (max(0.0, s.at(x) + s.across * d) for x, d in corners)
        low = [(*_plan(wall, x, d), 0.0) for x, d in corners]
        high = [(*_plan(wall, x, d), top) for (x, d), top in zip(corners, tops, strict=True)]
        found.append((*low, *high))
    return found


def _timber(wall: Wall, member: Member) -> Solid:
    """A standing member between its lowest and its highest points, square at both ends."""
    depth = wall.stud.width.mm
    corners = (
        (member.left, 0.0),
        (member.right, 0.0),
        (member.right, depth),
        (member.left, depth),
    )
    low = tuple((*_plan(wall, x, d), member.bottom) for x, d in corners)
    high = tuple((*_plan(wall, x, d), member.top) for x, d in corners)
    return (*low, *high)


def _solid(item: KeptClear, high: float) -> Solid:
    """A chimney or duct from the floor up to a height; it goes on as it leans."""
    low, top = _corners(item, 0.0), _corners(item, high)
    return (*((*p, 0.0) for p in low), *((*p, high) for p in top))


def _ground(item: KeptClear, high: float) -> tuple[Plan, ...]:
    """The rectangle in plan around all that a chimney or duct leans over."""
    points = (*_corners(item, 0.0), *_corners(item, high))
    (u0, v0), (u1, v1) = (tuple(f(p[n] for p in points) for n in (0, 1)) for f in (min, max))
    return (u0, v0), (u1, v0), (u1, v1), (u0, v1)


def _corners(item: KeptClear, height: float) -> tuple[Plan, ...]:
    """The corners in plan at a height, mm."""
    u0, v0 = item.corner_at(height)
    u1, v1 = u0 + item.wide.mm, v0 + item.deep.mm
    return (u0, v0), (u1, v0), (u1, v1), (u0, v1)


def _top(line: RoofLine) -> float:
    """The highest that a wall's roof is, on either of its faces and a little over, mm."""
    return max(y for _, y in line.points()) + 1000.0


def _plan(wall: Wall, x: float, d: float) -> Plan:
    """The plan point at x along a wall and d away from its face A."""
    (u0, v0), (u1, v1) = wall.chalk
    du, dv = (u1 - u0) / wall.run, (v1 - v0) / wall.run
    return u0 + x * du - d * dv, v0 + x * dv + d * du


def _footprint(wall: Wall) -> tuple[Plan, ...]:
    """The corners of the wall's timber in plan, mm."""
    run, depth = wall.run, wall.stud.width.mm
    return tuple(_plan(wall, x, d) for x, d in ((0.0, 0.0), (run, 0.0), (run, depth), (0.0, depth)))


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
