"""The roof over a room as heights alone: walked up from the eaves, with no planes, no outlines.

Slow and plain, to check the program's roof against; nothing is taken from the rooms under test.
What stands on a side takes that side's place; the highest of all that is there counts, and then the
lowest of the ceilings.
"""

from __future__ import annotations

import math

from core.model import DormerKind, Passing, Room, Side, Slope


def height(room: Room, u: float, v: float) -> float:
    """The height of the roof over a plan point, mm."""
    far_u = room.width.mm - u
    own = _own(room, u, v)
    found = [min(own.values())]
    for d in room.dormers:
        inward, along = (u if d.side is Side.LEFT else far_u), v - d.start.mm
        if inward >= d.face.mm - d.front.mm and 0 <= along <= d.width.mm:
            aside = min(along, d.width.mm - along)
            run = aside if d.kind is DormerKind.GABLE else inward - d.face.mm
            over = d.height.mm + d.pitch.tangent * run
            found.append(min({**own, d.side.value: over}.values()))
    for w in room.wings:
        inward, along = (u if w.side is Side.LEFT else far_u), v - w.start.mm
        if inward >= -w.reach.mm and 0 <= along <= w.width.mm:
            over = min(_up(w.first, along), _up(w.last, w.width.mm - along))
            found.append(min({**own, w.side.value: over}.values()))
    return min([max(found), *_ceilings(room, u)])


def rafters(room: Room, u: float, v: float) -> float:
    """The height of the room's own slopes and hips over a plan point, mm."""
    return min(_own(room, u, v).values())


def ridge(room: Room) -> float | None:
    """How far across the two slopes meet, mm, by halving; None where they do not."""
    low, high = -1e5, 1e5

    def over(u: float) -> float:
        return _up(room.left, u) - _up(room.right, room.width.mm - u)

    if room.left is None or room.right is None or over(low) > 0 or over(high) < 0:
        return None
    for _ in range(70):
        middle = (low + high) / 2
        low, high = (low, middle) if over(middle) > 0 else (middle, high)
    return low


def _own(room: Room, u: float, v: float) -> dict[str, float]:
    return {
        "left": _up(room.left, u),
        "right": _up(room.right, room.width.mm - u),
        "start": _up(room.start_hip, v),
        "end": _up(room.end_hip, room.length.mm - v),
    }


def _up(slope: Slope | None, run: float) -> float:
    """How high a slope is after a run in from its eave, change of pitch by change."""
    if slope is None:
        return math.inf
    reached, rise, begun = slope.eave_height.mm, slope.pitch.tangent, 0.0
    for at in slope.breaks:
        if run <= at.run.mm:
            break
        reached, rise, begun = reached + rise * (at.run.mm - begun), at.pitch.tangent, at.run.mm
    return reached + rise * (run - begun)


def _ceilings(room: Room, u: float) -> list[float]:
    found = [] if room.flat_ceiling is None else [room.flat_ceiling.mm]
    for p in room.purlins:
        if p.passing is Passing.UNDER and 0 <= u - p.left.mm <= p.timber.thickness.mm:
            found.append(p.underside.mm)
    top = ridge(room) if room.ridge_beam else None
    if room.ridge_beam and top is not None and abs(u - top) <= room.ridge_beam.width.mm / 2:
        found.append(room.ridge_beam.underside.mm)
    return found
