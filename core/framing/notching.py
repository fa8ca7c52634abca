"""Studs notched round a purlin or beam that passes through their wall.

The rule: a stud that the purlin meets on one side of its thickness is notched there, square and
through its whole width; the notch keeps the purlin's gap below, above and beside it. Where the
purlin passes the wall aslant, the notch takes in what it takes up on both faces. What would stay
above a notch less high than the stud is thick would split off, and is cut away too. Lengths and end
cuts are those of the stud before it is notched.
"""

import msgspec

from core.framing.bending import height_on
from core.framing.fitted import crown, foot_of
from core.framing.layout import CLEAR
from core.framing.member import XY, Member, Notch
from core.model import Side
from core.roof import PurlinThrough


def notch_for(member: Member, purlin: PurlinThrough) -> Notch | None:
    """The notch that a standing member needs to go round a purlin which it meets.

    None where the purlin covers its whole thickness, or leaves something on either side of itself.
    """
    left, right = purlin.left - member.left, member.right - purlin.right
    if (left > CLEAR) == (right > CLEAR):
        return None
    side = Side.RIGHT if left > CLEAR else Side.LEFT
    depth = member.right - purlin.left if side is Side.RIGHT else purlin.right - member.left
    foot = _foot(member, side)
    low, high = purlin.bottom - purlin.gap, purlin.top + purlin.gap
    if low - foot < member.thickness - CLEAR:
        return None
    top = _lowest_over(member, side, depth)
    is_open = top - high < member.thickness - CLEAR
    return Notch(purlin.id, side, depth, low - foot, None if is_open else high - foot)


def notched(member: Member, notches: tuple[Notch, ...]) -> Member:
    """The member with notches cut into its sides."""
    near, far = (_cut(outline, member, notches) for outline in (member.near, member.far))
    return msgspec.structs.replace(member, near=near, far=far, notches=notches)


def before_notches(member: Member) -> tuple[tuple[XY, ...], tuple[XY, ...]]:
    """The outlines of a member as they are sawn, on face A and the far face: without its notches.

    What a notch took of its top goes on as straight as what is left.
    """
    if not member.notches:
        return member.near, member.far
    near, far = (_uncut(outline, member) for outline in (member.near, member.far))
    return near, far


def lines_lost(notches: tuple[Notch, ...]) -> frozenset[Side]:
    """The sides of a member that notches leave nothing of at its top."""
    return frozenset(notch.side for notch in notches if notch.top is None)


def _lowest_over(member: Member, side: Side, depth: float) -> float:
    """The least height on either face of a member's top over the depth of a notch, mm."""
    edge = _edge(member, side)
    tops = [crown(outline)[::-1] for outline in (member.near, member.far)]
    return min(height_on(top, x) for top in tops for x in (edge, _inner(member, side, depth)))


def _foot(member: Member, side: Side) -> float:
    """The height of a member's foot at one of its edges on face A, mm."""
    return height_on(foot_of(member.near), _edge(member, side))


def _edge(member: Member, side: Side) -> float:
    return member.left if side is Side.LEFT else member.right


def _inner(member: Member, side: Side, depth: float) -> float:
    """The x of what is left of a member beside a notch, mm."""
    return member.left + depth if side is Side.LEFT else member.right - depth


def _cut(outline: tuple[XY, ...], member: Member, notches: tuple[Notch, ...]) -> tuple[XY, ...]:
    """An outline with the notches cut out of it, from the left end of its foot round its right."""
    top = crown(outline)
    for notch in (n for n in notches if n.top is None):
        x = _inner(member, notch.side, notch.depth)
        at = (x, height_on(top[::-1], x))
        if notch.side is Side.RIGHT:
            top = (at, *(point for point in top if point[0] < x - CLEAR))
        else:
            top = (*(point for point in top if point[0] > x + CLEAR), at)
    right, left = (_corners(member, side, notches) for side in (Side.RIGHT, Side.LEFT))
    return (*foot_of(outline), *right, *top, *left[::-1])


def _uncut(outline: tuple[XY, ...], member: Member) -> tuple[XY, ...]:
    foot = foot_of(outline)
    right, left = (
        sum(2 if n.top is None else 4 for n in member.notches if n.side is side)
        for side in (Side.RIGHT, Side.LEFT)
    )
    top = outline[len(foot) + right : len(outline) - left]
    for side in lines_lost(member.notches):
        x = _edge(member, side)
        at = (x, height_on(top[:2][::-1] if side is Side.RIGHT else top[-2:][::-1], x))
        top = (at, *top[1:]) if side is Side.RIGHT else (*top[:-1], at)
    return (*foot, *top)


def _corners(member: Member, side: Side, notches: tuple[Notch, ...]) -> tuple[XY, ...]:
    """The corners of the notches in one side of a member, from its foot up."""
    edge, foot = _edge(member, side), _foot(member, side)
    found: list[XY] = []
    for notch in sorted((n for n in notches if n.side is side), key=lambda n: n.bottom):
        inner, low = _inner(member, side, notch.depth), foot + notch.bottom
        found += [(edge, low), (inner, low)]
        if notch.top is not None:
            found += [(inner, foot + notch.top), (edge, foot + notch.top)]
    return tuple(found)
