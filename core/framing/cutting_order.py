"""The order in which the pieces of a wall are cut: plates first, then by the saw's setting."""

import math

from core.framing.member import Facet, Member, Role

_PLATES = (Role.SOLE_PLATE, Role.TOP_PLATE)

Setting = tuple[tuple[float, float], ...]
"""The cuts of a piece as (bevel, mitre), degrees to two places, without the hand they are of."""


def cutting_order(members: tuple[Member, ...]) -> tuple[Member, ...]:
    """The members in the order they are cut.

    The plates come first, because the studs are marked on them. The rest goes by stock, and within
    a stock by the setting of the saw, square cuts first, so that it is changed as seldom as can be.
    Of one setting the longest comes first: a piece cut wrong can still become a shorter one.
    """
    return tuple(sorted(members, key=_place))


def saw_settings(member: Member) -> Setting:
    """Every setting that the member's ends need, the smallest first; () if both are square.

    A cut and its mirror image are one setting: the piece is turned over.
    """
    facets = (*member.first_cut, *member.last_cut)
    return tuple(sorted({_setting(f) for f in facets if not f.is_square}))


def _place(member: Member) -> tuple[bool, float, float, Setting, float]:
    stock = (member.width, member.thickness)
    return member.role not in _PLATES, *stock, saw_settings(member), -member.long_point


def _setting(facet: Facet) -> tuple[float, float]:
    bevel, mitre = (round(math.degrees(abs(angle)), 2) for angle in (facet.bevel, facet.mitre))
    return bevel, mitre
