"""Studs that end under a purlin or beam in their way, and go on over it where there is room.

The rule: a stud, king or cripple that reaches the plates, and that a purlin meets anywhere over its
thickness, is cut square the purlin's gap below it. Where at least its own thickness is left between
the purlin, its gap above it, and the plates, another piece stands there. Where a wall notches its
studs round the purlin, only those are stopped that would have nothing left on one side: that stand
behind the purlin, or are split by it.
"""

import msgspec

from core.framing import keys
from core.framing.fitted import crown, foot_of, reaches_plates
from core.framing.layout import CLEAR
from core.framing.member import SQUARE, XY, Member
from core.framing.notching import notch_for
from core.model import Passing
from core.roof import PurlinThrough

STOPS = frozenset({Passing.STOPPED, Passing.NOTCHED})
"""The ways of passing a purlin that cut studs short."""


def stopped(
    members: tuple[Member, ...], purlins: tuple[PurlinThrough, ...]
) -> tuple[tuple[Member, ...], tuple[tuple[str, str], ...]]:
    """The members with those that a purlin stops cut short, and the pieces over it.

    Then the keys of the studs that there is no room for below it, each with the purlin's id.
    """
    pieces, gone = list(members), []
    for purlin in (p for p in purlins if p.passing in STOPS):
        made: list[Member] = []
        for member in pieces:
            if not is_stopped(member, purlin):
                made.append(member)
                continue
            low, high = _below(member, purlin), _over(member, purlin)
            gone += [] if low else [(member.key, purlin.id)]
            made += [piece for piece in (low, high) if piece is not None]
        pieces = made
    return tuple(pieces), tuple(gone)


def meets(member: Member, purlin: PurlinThrough) -> bool:
    """Whether a standing member reaches into what a purlin with its gap takes up."""
    heights = [y for _, y in (*member.near, *member.far)]
    across = member.left < purlin.right - CLEAR and member.right > purlin.left + CLEAR
    high = max(heights) > purlin.bottom - purlin.gap + CLEAR
    return across and high and min(heights) < purlin.top + purlin.gap - CLEAR


def is_stopped(member: Member, purlin: PurlinThrough) -> bool:
    """Whether a purlin stops a member, instead of being left to be moved or notched round it.

    An end stud that leans is left as it is, and told of.
    """
    stays = purlin.passing not in STOPS or not reaches_plates(member) or member.lean != 0.0
    if stays or not meets(member, purlin):
        return False
    return purlin.passing is Passing.STOPPED or notch_for(member, purlin) is None


def _below(member: Member, purlin: PurlinThrough) -> Member | None:
    """What is left of a member below a purlin; None where that is no longer than it is thick."""
    top = purlin.bottom - purlin.gap
    flat = ((member.right, top), (member.left, top))
    feet = foot_of(member.near), foot_of(member.far)
    low = _piece(member, feet, (flat, flat))
    if low is None:
        return None
    return msgspec.structs.replace(low, last_cut=SQUARE, stops=True)


def _over(member: Member, purlin: PurlinThrough) -> Member | None:
    """The piece over a purlin; None where there is not its own thickness of room for it."""
    foot = purlin.top + purlin.gap
    flat = ((member.left, foot), (member.right, foot))
    high = _piece(member, (flat, flat), (crown(member.near), crown(member.far)))
    if high is None:
        return None
    return msgspec.structs.replace(high, key=keys.over(member.key, purlin.id), first_cut=SQUARE)


def _piece(
    member: Member, feet: tuple[tuple[XY, ...], ...], tops: tuple[tuple[XY, ...], ...]
) -> Member | None:
    """A member between new feet (left to right) and tops (right to left) on face A and far face."""
    heights = [
        (top[-1][1] - foot[0][1], top[0][1] - foot[-1][1])
        for foot, top in zip(feet, tops, strict=True)
    ]
    # A cut of several facets has its long or short point between the edges.
    between = [
        min(y for _, y in top) - max(y for _, y in foot)
        for foot, top in zip(feet, tops, strict=True)
    ]
    highest = [
        max(y for _, y in top) - min(y for _, y in foot)
        for foot, top in zip(feet, tops, strict=True)
    ]
    edges = (heights[0][0], heights[0][1], heights[1][0], heights[1][1])
    plain = all(len(end) == 2 for end in (*feet, *tops))
    short = min(edges) if plain else min(between)
    if short < member.thickness - CLEAR:
        return None
    near, far = ((*foot, *top) for foot, top in zip(feet, tops, strict=True))
    ys = [y for _, y in (*near, *far)]
    return msgspec.structs.replace(
        member,
        near=near,
        far=far,
        edges=edges,
        long_point=max(edges) if plain else max(highest),
        short_point=short,
        overall=max(ys) - min(ys),
    )
