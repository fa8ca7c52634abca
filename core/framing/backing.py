"""Backing on edge in the bays: behind fixtures, and behind walls that end against this one."""

import math

import msgspec

from core.framing import keys
from core.framing.bays import Bay, timber_between
from core.framing.layout import CLEAR
from core.framing.meeting import Meeting
from core.framing.member import Member, Role
from core.framing.sticks import lying
from core.model import Fixture, MeetingKind, Wall

MOST_APART = 24 * 25.4
"""Blocks behind a wall that meets this one: 24 in. apart or less (common practice, no source)."""


class Unbacked(msgspec.Struct, frozen=True):
    """A stretch behind a fixture that has no backing, mm.

    `height` is that of the fixture nearest to the stated one at which the bays there take the
    backing; None where no height helps.
    """

    fixture: str
    left: float
    right: float
    height: float | None


def fixture_backing(wall: Wall, bays: tuple[Bay, ...]) -> tuple[Member, ...]:
    """The backing of every fixture, bay by bay; one stated later goes where there is room left."""
    made: list[Member] = []
    for fixture in wall.fixtures:
        left, right = _stretch(fixture)
        for bay in (b for b in bays if b.touches(left, right)):
            key = keys.backing(wall.letter, fixture.id, bay.cause)
            made += _on_edge(key, bay, _bottom(fixture), fixture, made)
    return tuple(made)


def meeting_backing(
    wall: Wall, met: Meeting, bays: tuple[Bay, ...], made: tuple[Member, ...]
) -> tuple[Member, ...]:
    """The flat blocks behind a wall that ends against this one, from the floor up to the plates.

    They fill every bay that the other wall and a stud's thickness on either side reach into.
    """
    if wall.meeting is not MeetingKind.BLOCKS:
        return ()
    beside, rise = wall.stud.thickness.mm, wall.stud.width.mm
    found: list[Member] = []
    for bay in (b for b in bays if b.touches(met.left - beside, met.right + beside)):
        for number, bottom in enumerate(_evenly(bay.foot, bay.low - rise, MOST_APART), start=1):
            part = f"{bay.cause}/{number}"
            key = keys.meeting(wall.letter, met.other, met.end, part)
            taken = [m for m in made if bay.touches(m.left, m.right)]
            if all(bottom + rise <= m.bottom + CLEAR or bottom >= m.top - CLEAR for m in taken):
                found.append(lying(key, Role.BACKING, wall.stud, bay.left, bay.right, bottom, rise))
    return tuple(found)


def unbacked(
    wall: Wall, bays: tuple[Bay, ...], members: tuple[Member, ...]
) -> tuple[Unbacked, ...]:
    """The stretches behind fixtures where there is neither backing nor other timber."""
    found = []
    for fixture in wall.fixtures:
        bottom = _bottom(fixture)
        solid = timber_between(members, bottom, bottom + fixture.timber.width.mm)
        low, right = _stretch(fixture)
        for a, b in (*sorted(solid), (right, right)):
            until = min(a, right)
            if until - low > wall.stud.thickness.mm:
                height = _nearest(
                    fixture, [x for x in bays if x.touches(low, until) and x.foot <= bottom]
                )
                found.append(Unbacked(fixture.id, low, until, height))
            low = max(low, b)
    return tuple(found)


def _on_edge(
    key: str, bay: Bay, bottom: float, fixture: Fixture, made: list[Member]
) -> list[Member]:
    """The piece in one bay, if it has room there."""
    rise = fixture.timber.width.mm
    fits = bottom >= bay.foot - CLEAR and bottom + rise <= bay.low + CLEAR
    there = (m for m in made if bay.touches(m.left, m.right))
    if not fits or any(bottom < m.top - CLEAR and bottom + rise > m.bottom + CLEAR for m in there):
        return []
    return [lying(key, Role.BACKING, fixture.timber, bay.left, bay.right, bottom, rise)]


def _nearest(fixture: Fixture, bays: list[Bay]) -> float | None:
    """The height nearest to the fixture's at which all of these bays take its backing, mm."""
    half = fixture.timber.width.mm / 2
    low = max((bay.foot + half for bay in bays), default=math.inf)
    high = min((bay.low - half for bay in bays), default=-math.inf)
    height = min(max(fixture.height.mm, low), high)
    return height if low <= high and abs(height - fixture.height.mm) > CLEAR else None


def _evenly(low: float, high: float, most: float) -> tuple[float, ...]:
    """Places from `low` to `high`, both included, evenly and at most so far apart."""
    if high < low - CLEAR:
        return ()
    parts = max(1, math.ceil((high - low) / most - CLEAR))
    return tuple(low + n * (high - low) / parts for n in range(parts + 1)) if high > low else (low,)


def _stretch(fixture: Fixture) -> tuple[float, float]:
    return fixture.left.mm, fixture.left.mm + fixture.width.mm


def _bottom(fixture: Fixture) -> float:
    return fixture.height.mm - fixture.timber.width.mm / 2
