"""What lies under a point of the wall, and the outlines of things; model mm, no Qt."""

import math
from collections.abc import Iterable

from core.checks import zone_rect
from core.framing import PlacedOpening
from core.job import WallResult
from core.model import Fixture
from gui.sketcher.camera import XY
from gui.things import Kind, thing_of

Outline = tuple[XY, ...]

_Named = tuple[str, Outline]


def hit(result: WallResult, point: XY, reach: float) -> str | None:
    """The key of what lies under a point, `reach` mm being near enough; None on bare paper.

    Boxes lie over openings, openings over timber. What is struck squarely comes before what is
    merely near, and of that the nearest.
    """
    boxes = [(p.key, rectangle(p.left, p.bottom, p.right, p.top)) for p in result.boxes]
    openings = [(p.key, p.outline) for p in _openings(result)]
    timber = _timber(result)
    for things in (boxes, openings, timber):
        found = _nearest(things, point, 0.0)
        if found is not None:
            return found
    zones = [(f"{result.wall.letter}/{z.id}", zone_rect(z)) for z in result.wall.kept_clear]
    areas = [(key, rectangle(*rect)) for key, rect in zones]
    near = _nearest(boxes, point, reach) or _nearest((*timber, *openings), point, reach)
    # Timber behind a zone can still be taken hold of; between it, the zone is.
    return near or _nearest(areas, point, reach)


def outline(result: WallResult, key: str) -> Outline | None:
    """The outline of the thing with this key, mm; None if the wall shows no such thing."""
    for box in result.boxes:
        if box.key == key:
            return rectangle(box.left, box.bottom, box.right, box.top)
    for placed in _openings(result):
        if placed.key == key:
            return placed.outline
    for fixture in result.wall.fixtures:
        if f"{result.wall.letter}/{fixture.id}" == key:
            return fixture_outline(fixture)
    for zone in result.wall.kept_clear:
        if f"{result.wall.letter}/{zone.id}" == key:
            return rectangle(*zone_rect(zone))
    member = result.frame.member(key) if result.frame else None
    return member.near if member else None


def kin(result: WallResult, key: str) -> tuple[str, ...]:
    """The keys of all that moves together with this one: an opening and the timber around it."""
    thing = thing_of(result.wall, key)
    if thing is not None and thing.kind is Kind.CRIPPLE:
        # The cripples over and under a window stand at one place of the layout.
        alike = (k for k, _ in result.labels if k.endswith(f"/{thing.id}"))
        return tuple(k for k in alike if thing_of(result.wall, k) == thing) or (key,)
    if thing is None or thing.kind not in (Kind.OPENING, Kind.FIXTURE):
        return (key,)
    whole = f"{result.wall.letter}/{thing.id}"
    pieces = (k for k, _ in result.labels if k.startswith(f"{whole}/"))
    around = tuple(k for k in pieces if thing_of(result.wall, k) == thing)
    stands = any(p.key == whole for p in _openings(result))
    return (*((whole,) if stands else ()), *around) or (key,)


def rectangle(left: float, bottom: float, right: float, top: float) -> Outline:
    """The corners of an upright rectangle, from the lower left one counter-clockwise."""
    return (left, bottom), (right, bottom), (right, top), (left, top)


def fixture_outline(fixture: Fixture) -> Outline:
    """The corners of the stretch of wall that gets backing."""
    left, middle = fixture.left.mm, fixture.height.mm
    half = fixture.timber.width.mm / 2
    return rectangle(left, middle - half, left + fixture.width.mm, middle + half)


def bounds(shape: Outline) -> tuple[float, float, float, float]:
    """left, bottom, right and top of an outline, mm."""
    xs, ys = [x for x, _ in shape], [y for _, y in shape]
    return min(xs), min(ys), max(xs), max(ys)


def distance(shape: Outline, point: XY) -> float:
    """How far a point lies from an outline's area, mm; 0 within it and on its edge."""
    sides = list(zip(shape, (*shape[1:], *shape[:1]), strict=True))
    if _within(sides, point):
        return 0.0
    return min(_to_side(a, b, point) for a, b in sides)


def _nearest(things: Iterable[_Named], point: XY, reach: float) -> str | None:
    """The key of the nearest thing within reach; of equals the last, which is drawn on top."""
    best: tuple[float, str] | None = None
    for key, shape in things:
        away = distance(shape, point) if _close(shape, point, reach) else math.inf
        if away <= reach and (best is None or away <= best[0]):
            best = (away, key)
    return best[1] if best else None


def _close(shape: Outline, point: XY, reach: float) -> bool:
    """Whether the point is near the rectangle around a shape: quick, and most are not."""
    x, y = point
    xs, ys = [p[0] for p in shape], [p[1] for p in shape]
    beside = x < min(xs) - reach or x > max(xs) + reach
    return not beside and min(ys) - reach <= y <= max(ys) + reach


def _openings(result: WallResult) -> tuple[PlacedOpening, ...]:
    return result.frame.openings if result.frame else ()


def _timber(result: WallResult) -> list[_Named]:
    """The outlines of all timber, plates first, as they are drawn."""
    members = result.frame.members if result.frame else ()
    standing_last = sorted((m for m in members if m.near), key=lambda m: not m.lies)
    return [(m.key, m.near) for m in standing_last]


def _within(sides: list[tuple[XY, XY]], point: XY) -> bool:
    """Whether a ray to the right crosses the sides an odd number of times."""
    x, y = point
    crossings = 0
    for (x0, y0), (x1, y1) in sides:
        if (y0 > y) != (y1 > y) and x < x0 + (y - y0) / (y1 - y0) * (x1 - x0):
            crossings += 1
    return crossings % 2 == 1


def _to_side(a: XY, b: XY, point: XY) -> float:
    """How far a point lies from a side, mm."""
    dx, dy = b[0] - a[0], b[1] - a[1]
    squared = dx * dx + dy * dy
    along = ((point[0] - a[0]) * dx + (point[1] - a[1]) * dy) / squared if squared else 0.0
    share = min(max(along, 0.0), 1.0)
    return math.dist(point, (a[0] + share * dx, a[1] + share * dy))
