"""Rows of blocks between studs: at stated heights, at most so far apart, and against fire."""

import math
from collections import Counter
from collections.abc import Iterator

import msgspec

from core.framing import keys
from core.framing.bays import Bay
from core.framing.layout import CLEAR
from core.framing.member import Member, Role
from core.framing.sticks import lying
from core.model import Blocking, Wall
from core.roof import PurlinThrough

Taken = tuple[tuple[float, float], ...]
"""Heights between which a bay has backing already, as (bottom, top)."""


class Row(msgspec.Struct, frozen=True):
    """A block wanted in a bay: what row it belongs to, and the height of its middle, mm."""

    cause: str
    middle: float


def blocking(
    wall: Wall,
    bays: tuple[Bay, ...],
    backed: tuple[Member, ...],
    purlins: tuple[PurlinThrough, ...] = (),
) -> tuple[Member, ...]:
    """The blocks of a wall's rows, bay by bay; they step aside for backing and for purlins."""
    stated = wall.blocking
    if stated is None:
        return ()
    made: list[Member] = []
    for odd, bay in _by_turns(bays):
        made += _in_bay(wall, stated, bay, _taken(bay, backed, purlins), raised=odd)
    return tuple(made)


def _by_turns(bays: tuple[Bay, ...]) -> Iterator[tuple[bool, Bay]]:
    """Every bay, and whether it is an odd one of those that stand on the same timber."""
    counted: Counter[float] = Counter()
    for bay in bays:
        yield counted[bay.datum] % 2 == 1, bay
        counted[bay.datum] += 1


def _in_bay(wall: Wall, stated: Blocking, bay: Bay, taken: Taken, *, raised: bool) -> list[Member]:
    """The blocks of one bay; in a staggered one each is raised where there is room over it."""
    thickness = wall.stud.thickness.mm
    ceiling, made = bay.low, []
    for row in reversed(rows(stated, bay, thickness, taken)):
        bottom = row.middle - thickness / 2
        lifted = bottom + thickness
        over = lifted + thickness <= ceiling + CLEAR
        free = all(lifted + thickness <= low + CLEAR or lifted >= top - CLEAR for low, top in taken)
        if stated.staggered and raised and over and free:
            bottom = lifted
        ceiling = bottom
        key = keys.block(wall.letter, row.cause, bay.cause)
        made.append(lying(key, Role.BLOCKING, wall.stud, bay.left, bay.right, bottom, thickness))
    return made


def rows(stated: Blocking, bay: Bay, thickness: float, taken: Taken = ()) -> tuple[Row, ...]:
    """The rows that have a block in this bay, from the floor up.

    A stated row has one where it fits under the plate. The others are added where the clear height
    is more than what is stated: `limit` after `limit` over the row below, evenly between two
    stated rows, and under a plate that lies lower than that close below it.
    """
    found = [
        Row(f"row-{n}", middle)
        for n, height in enumerate(stated.heights, start=1)
        if (middle := _settled(bay, height.mm, thickness, taken)) is not None
    ]
    for name, limit in (("most", stated.at_most), ("fire", stated.fire)):
        if limit is not None:
            added = _added(bay, found, limit.mm, thickness, taken)
            found += [Row(f"{name}-{n}", middle) for n, middle in enumerate(added, start=1)]
    return tuple(_apart(sorted(found, key=lambda row: row.middle), thickness))


def highest_row(bays: tuple[Bay, ...], thickness: float) -> float | None:
    """The greatest height of a row's middle that has a block anywhere, mm."""
    return max((bay.low - thickness / 2 for bay in bays), default=None)


def _added(bay: Bay, found: list[Row], limit: float, thickness: float, taken: Taken) -> list[float]:
    """The middles of further blocks, so that no clear height in the bay is more than `limit`."""
    added: list[float] = []
    middle, clear = bay.datum, bay.foot
    for row in sorted(found, key=lambda row: row.middle):
        if row.middle - thickness / 2 - clear > limit + CLEAR:
            parts = math.ceil((row.middle - middle) / limit - CLEAR)
            step = (row.middle - middle) / parts
            for part in range(1, parts):
                at = _settled(bay, middle + part * step, thickness, taken)
                added += [] if at is None else [at]
        middle, clear = row.middle, row.middle + thickness / 2
    while bay.high - clear > limit + CLEAR:
        wanted = min(middle + limit, bay.low - thickness / 2)
        at = _settled(bay, wanted, thickness, taken)
        if at is None or at - thickness / 2 < clear - CLEAR:
            break
        added.append(at)
        middle, clear = at, at + thickness / 2
    return added


def _settled(bay: Bay, wanted: float, thickness: float, taken: Taken) -> float | None:
    """The middle that a block gets: as wanted, or below or above the backing in its way."""
    half = thickness / 2
    places = [
        wanted,
        *(low - half for low, _ in reversed(taken)),
        *(top + half for _, top in taken),
    ]
    free = [
        at
        for at in places
        if at - half >= bay.foot - CLEAR
        and at + half <= bay.low + CLEAR
        and all(at + half <= low + CLEAR or at - half >= top - CLEAR for low, top in taken)
    ]
    in_bay = bay.foot - CLEAR <= wanted - half and wanted + half <= bay.low + CLEAR
    return min(free, key=lambda at: abs(at - wanted), default=None) if in_bay else None


def _apart(found: list[Row], thickness: float) -> list[Row]:
    """Rows that do not lie in one another; of two that would, the lower one stays."""
    kept: list[Row] = []
    for row in found:
        if not kept or row.middle - kept[-1].middle >= thickness - CLEAR:
            kept.append(row)
    return kept


def _taken(bay: Bay, backed: tuple[Member, ...], purlins: tuple[PurlinThrough, ...]) -> Taken:
    there = (m for m in backed if bay.touches(m.left, m.right))
    through = (p for p in purlins if bay.touches(p.left, p.right))
    spans = [(m.bottom, m.top) for m in there]
    spans += [(p.bottom - p.gap, p.top + p.gap) for p in through]
    return tuple(sorted(spans))
