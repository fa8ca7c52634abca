"""Bays: the clear room between two neighbouring uprights, where blocking and backing go."""

from collections.abc import Callable, Iterator
from itertools import pairwise

import msgspec

from core.framing import keys
from core.framing.bending import height_on, topside, underside
from core.framing.heads import Over
from core.framing.layout import CLEAR
from core.framing.member import Member, Role
from core.kept import Kept
from core.roof import RoofLine

Pair = tuple[Member, Member]
"""Two neighbouring uprights, the left one first."""

Pairs = Callable[[list[Member]], Iterator[Pair]]
"""The neighbours among uprights from left to right that are far enough apart for a bay."""

_STANDS = frozenset({Role.STUD, Role.KING, Role.TRIMMER, Role.CRIPPLE})


class Bay(msgspec.Struct, frozen=True):
    """A bay, mm; `cause` is the key of the upright to its left, without the wall's letter.

    It is closed from `foot` to somewhere between `low` and `high`, for its top may slope. Heights
    up the bay are told from `datum`: the subfloor, or as far below a header's top as the subfloor
    is below that of the sole plate.
    """

    cause: str
    left: float
    right: float
    foot: float
    low: float
    high: float
    datum: float

    def touches(self, left: float, right: float) -> bool:
        """Whether a stretch of the wall reaches into the bay."""
        return self.left < right - CLEAR and self.right > left + CLEAR


def bays(members: tuple[Member, ...], over: Over, narrowest: float, kept: Kept) -> tuple[Bay, ...]:
    """The bays of a wall from left to right, those under sills and over headers with them.

    A bay narrower than `narrowest` is none, nor is a doorway. Bays between the same two uprights
    are taken from what is `kept`.
    """

    def pairs(standing: list[Member]) -> Iterator[Pair]:
        wide = narrowest - CLEAR
        return ((a, b) for a, b in pairwise(standing) if b.left - a.right >= wide)

    found = [*_over_floor(members, over, pairs, kept), *_over_headers(members, over, pairs, kept)]
    return tuple(sorted(found, key=lambda bay: (bay.left, bay.foot)))


def timber_between(
    members: tuple[Member, ...], bottom: float, top: float
) -> tuple[tuple[float, float], ...]:
    """Where timber stands or lies in the wall between two heights, as (left, right) in mm."""
    within = _STANDS | {Role.HEADER, Role.SILL, Role.BLOCKING, Role.BACKING}
    return tuple(
        _between(m, bottom, top)
        for m in members
        if m.role in within and m.bottom < top - CLEAR and m.top > bottom + CLEAR
    )


def _between(member: Member, bottom: float, top: float) -> tuple[float, float]:
    """The left and the right edge, mm, of what of a member is between two heights.

    Only a raked header slopes so much that it is not there over its whole length.
    """
    if member.role is not Role.HEADER:
        return member.left, member.right
    (left, low), (_, high) = underside(member)
    slope = (high - low) / (member.right - left)
    if abs(slope) < CLEAR:
        return member.left, member.right
    rise = topside(member)[0][1] - low
    places = sorted(left + (y - low) / slope for y in (bottom - rise, top))
    return max(member.left, places[0]), min(member.right, places[1])


def _over_floor(members: tuple[Member, ...], over: Over, pairs: Pairs, kept: Kept) -> Iterator[Bay]:
    """Bays that stand on the sole plate: up to the plates, or to the sill over them."""
    standing = [m for m in members if _on_floor(m)]
    sills = [m for m in members if m.role is Role.SILL]
    heads = [m for m in members if m.role is Role.HEADER]
    for a, b in pairs(sorted(standing, key=lambda m: m.left)):
        foot = max(a.bottom, b.bottom)
        sill = next((s.bottom for s in sills if _over(s, a.right, b.left)), None)
        if sill is not None:
            yield Bay(_path(a), a.right, b.left, foot, sill, sill, 0.0)
        elif not _doorway(a, b, heads):
            yield kept.of(_to_plates, a, b, foot, 0.0, over)


def _over_headers(
    members: tuple[Member, ...], over: Over, pairs: Pairs, kept: Kept
) -> Iterator[Bay]:
    """Bays that stand on headers, between kings and cripples."""
    heads = [m for m in members if m.role is Role.HEADER]
    tops = {_opening(h): h for h in sorted(heads, key=lambda h: h.top)}
    sole = next((m.top - m.bottom for m in members if m.role is Role.SOLE_PLATE), 0.0)
    studs = (m for m in members if m.role in _STANDS and not keys.is_over(m.key))
    standing = sorted(studs, key=lambda m: m.left)
    for header in tops.values():
        course = topside(header)
        beside = [
            m
            for m in standing
            if m.left <= header.right + CLEAR
            and m.right >= header.left - CLEAR
            and m.near[-1][1] > height_on(course, max(m.left, header.left)) + CLEAR
        ]
        for a, b in pairs(beside):
            foot = max(height_on(course, x) for x in (a.right, b.left))
            bay = kept.of(_to_plates, a, b, foot, foot - sole, over)
            if bay.high > bay.foot + CLEAR:
                yield bay


def _on_floor(member: Member) -> bool:
    """Whether a member stands in the wall's own bays, not over a header or a purlin."""
    stands = member.role in _STANDS and not keys.on_header(member.key)
    return stands and not keys.is_over(member.key)


def _up_to(bay: Bay, beside: tuple[Member, Member]) -> Bay:
    """The bay no higher than studs beside it that stop under a purlin."""
    tops = [member.top for member in beside if member.stops]
    if not tops:
        return bay
    low, high = min(bay.low, *tops), min(bay.high, *tops)
    return msgspec.structs.replace(bay, low=low, high=high)


def _to_plates(a: Member, b: Member, foot: float, datum: float, over: Over) -> Bay:
    """A bay between two uprights that the plates close; `low` is the least height on either face.

    It is no higher than an upright that stops under a purlin.
    """
    left, right = a.right, b.left
    low = min(line.lowest(left, right) for line in over)
    high = max(_highest(line, left, right) for line in over)
    return _up_to(Bay(_path(a), left, right, foot, low, high, datum), (a, b))


def _highest(line: RoofLine, left: float, right: float) -> float:
    return max(max(s.at(s.left), s.at(s.right)) for s in line.between(left, right))


def _doorway(a: Member, b: Member, headers: list[Member]) -> bool:
    """Whether two neighbours are the trimmers of an opening down to the floor."""
    if a.role is not Role.TRIMMER or b.role is not Role.TRIMMER:
        return False
    return _opening(a) == _opening(b) or any(_over(h, a.right, b.left) for h in headers)


def _over(lying: Member, left: float, right: float) -> bool:
    return lying.left < right - CLEAR and lying.right > left + CLEAR


def _opening(member: Member) -> str:
    """The opening that a member belongs to, as its key begins."""
    return "/".join(member.key.split("/")[:2])


def _path(member: Member) -> str:
    return member.key.partition("/")[2]
