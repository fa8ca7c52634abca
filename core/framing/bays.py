"""Bays: the clear room between two neighbouring uprights, where blocking and backing go."""

from collections.abc import Iterator
from itertools import pairwise

import msgspec

from core.framing import keys
from core.framing.bending import height_on, topside, underside
from core.framing.heads import Over
from core.framing.layout import CLEAR
from core.framing.member import Member, Role
from core.roof import RoofLine

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


def bays(members: tuple[Member, ...], over: Over, narrowest: float) -> tuple[Bay, ...]:
    """The bays of a wall from left to right, those under sills and over headers with them.

    A bay narrower than `narrowest` is none, nor is a doorway.
    """
    found = [*_over_floor(members, over), *_over_headers(members, over)]
    wide = (bay for bay in found if bay.right - bay.left >= narrowest - CLEAR)
    return tuple(sorted(wide, key=lambda bay: (bay.left, bay.foot)))


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


def _over_floor(members: tuple[Member, ...], over: Over) -> Iterator[Bay]:
    """Bays that stand on the sole plate: up to the plates, or to the sill over them."""
    standing = [m for m in members if _on_floor(m)]
    sills = [m for m in members if m.role is Role.SILL]
    heads = [m for m in members if m.role is Role.HEADER]
    for a, b in pairwise(sorted(standing, key=lambda m: m.left)):
        foot = max(a.bottom, b.bottom)
        sill = next((s.bottom for s in sills if _over(s, a.right, b.left)), None)
        if sill is not None:
            yield Bay(_path(a), a.right, b.left, foot, sill, sill, 0.0)
        elif not _doorway(a, b, heads):
            yield _up_to(_to_plates(_path(a), (a.right, b.left), foot, 0.0, over), (a, b))


def _over_headers(members: tuple[Member, ...], over: Over) -> Iterator[Bay]:
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
        for a, b in pairwise(beside):
            foot = max(height_on(course, x) for x in (a.right, b.left))
            bay = _to_plates(_path(a), (a.right, b.left), foot, foot - sole, over)
            bay = _up_to(bay, (a, b))
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


def _to_plates(
    cause: str, sides: tuple[float, float], foot: float, datum: float, over: Over
) -> Bay:
    """A bay that the plates close; `low` is the least height on either face."""
    left, right = sides
    low = min(line.lowest(left, right) for line in over)
    high = max(_highest(line, left, right) for line in over)
    return Bay(cause, left, right, foot, low, high, datum)


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
