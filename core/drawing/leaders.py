"""Labels that stand away from a crowded member, with a leader to a dot on it."""

import math
from bisect import bisect_left, bisect_right
from collections.abc import Iterable, Iterator

import msgspec

from core.drawing.elements import XY, Align, Element, Stroke, Text
from core.drawing.pen import Pen
from core.drawing.placing import Ground, Rect
from core.drawing.sliding import in_the_way, is_free
from core.drawing.typeface import cap_height, text_width
from core.drawing.view import View
from core.framing import Member
from core.roof import RoofLine

_TOUCH = 1e-6

GAP = 0.7
"""Between a text and what stands beside it, mm on paper."""

PAST_END = 5.0
"""How far past the wall's ends a label may stand, mm on paper: clear of the heights there."""

_AWAY = (0.0, 0.3, 0.6, 1.0, 1.5, *(float(mm) for mm in range(2, 15)))
"""Distances of a label from its member that are tried, mm on paper; a longer leader is a maze."""

_SHARES = (0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9)
"""Where on a member's height its dot is tried."""


class _Side(msgspec.Struct, frozen=True):
    """One side of a member: the way out from its edge, and what stands there."""

    way: float
    edge: float
    near: tuple[Rect, ...]
    writing: tuple[Rect, ...]


class _Seat(msgspec.Struct, frozen=True):
    """The place found for a label, where its leader meets it, and when it was tried."""

    rect: Rect
    end: XY
    away: float
    share: int


class Uprights:
    """The standing timber of a wall, all of which is on the ground, to be asked for neighbours."""

    def __init__(self, members: Iterable[Member]) -> None:
        """The members in any order."""
        self._members = sorted(members, key=lambda m: m.left)
        self._lefts = [m.left for m in self._members]

    def near(self, member: Member, reach: float) -> tuple[Member, ...]:
        """The members that begin no farther than `reach` from a member, from left to right."""
        first = bisect_left(self._lefts, member.left - reach)
        return tuple(self._members[first : bisect_right(self._lefts, member.right + reach)])


def led_text(
    member: Member, label: str, line: RoofLine, view: View, ground: Ground, uprights: Uprights
) -> tuple[Element, ...]:
    """A label away from its member, with a leader to a dot on it that crosses no writing.

    It stands on the ground from then on; empty where there is no room near the member.
    """
    kept = ground.kept
    width = kept.of(_width, label, view)
    reach = view.model(_AWAY[-1]) + width
    if kept.of(_hemmed, member, width, view, uprights.near(member, reach)):
        return ()
    right, left = _sides(member, reach, ground)
    # Each side by itself: a change on one leaves what was found on the other.
    seats = [kept.of(_seat, member, width, line, view, side) for side in (right, left)]
    seat = min((s for s in seats if s), key=lambda s: (s.away, s.share), default=None)
    if seat is None:
        return ()
    ground.add_writing(seat.rect)
    ground.add_writing(_band(seat.end[0], _middle(member), seat.end[1], view))
    return kept.of(_led, member, label, seat, view)


def _led(member: Member, label: str, seat: _Seat, view: View) -> tuple[Element, ...]:
    """The label in its place, its leader and its dot."""
    middle, (end, foot) = _middle(member), seat.end
    at = ((seat.rect[0] + seat.rect[2]) / 2, foot)
    text = Text(label, at, view.size, Pen.LABEL, member.key, Align.MIDDLE, narrow=True, middle=True)
    leader = Stroke(((end, foot), (middle, foot)), Pen.LABEL, member.key)
    return text, leader, *_dot(middle, foot, view.model(0.4), member.key)


def _width(label: str, view: View) -> float:
    """The width that a label asks for, mm."""
    return view.model(text_width(label, view.size, narrow=True) + 2 * GAP)


def _middle(member: Member) -> float:
    return (member.left + member.right) / 2


def _hemmed(member: Member, width: float, view: View, near: tuple[Member, ...]) -> bool:
    """Whether members at least as high stand so close on either side that no label goes between.

    Most crowded ones are: seen at a glance, it spares the search.
    """
    height = view.model(cap_height(view.size) + 2 * GAP)
    span = max(member.edges[:2]) - height
    low, high = member.bottom + min(_SHARES) * span, member.bottom + max(_SHARES) * span + height
    walls = [m for m in near if m.bottom <= low and m.top >= high]
    right = [(m.left - member.right, m.right - member.right) for m in walls]
    left = [(member.left - m.right, member.left - m.left) for m in reversed(walls)]
    return all(_closed(side, width, view.model(_AWAY[-1])) for side in (right, left))


def _closed(walls: list[tuple[float, float]], width: float, most: float) -> bool:
    """Whether no gap that begins at most so far off has the width; walls from near to far."""
    clear = 0.0
    for start, end in walls:
        if start >= 0.0:
            if start - clear >= width - 1e-6:
                return False
            clear = max(clear, end)
    return clear > most


def _sides(member: Member, reach: float, ground: Ground) -> tuple[_Side, _Side]:
    """What stands to the right and to the left of a member, and over and under it."""
    top = member.bottom + max(member.edges[:2])
    around = (member.left - reach, member.bottom, member.right + reach, top)
    near, writing, middle = ground.near(around), ground.writing_near(around), _middle(member)
    beyond = [
        (tuple(r for r in near if r[2] > middle), tuple(r for r in writing if r[2] > middle)),
        (tuple(r for r in near if r[0] < middle), tuple(r for r in writing if r[0] < middle)),
    ]
    return _Side(1.0, member.right, *beyond[0]), _Side(-1.0, member.left, *beyond[1])


def _seat(member: Member, width: float, line: RoofLine, view: View, side: _Side) -> _Seat | None:
    """The nearest free place for a label; of places as near, that whose dot is tried first."""
    height, past = view.model(cap_height(view.size) + 2 * GAP), view.model(PAST_END)
    low, high = line.segments[0].left - past, line.segments[-1].right + past
    aways = [view.model(away) for away in _AWAY]
    span, found = max(member.edges[:2]) - height, None
    for number, share in enumerate(_SHARES):
        bottom = member.bottom + share * span
        for away in _free(side, (bottom, bottom + height), width, aways, view):
            edge = side.edge + side.way * away
            left = edge if side.way > 0 else edge - width
            roof = line.lowest(left, left + width)
            if low <= left and left + width <= high and bottom + height < roof:
                rect = (left, bottom, left + width, bottom + height)
                found = _Seat(rect, (edge, bottom + height / 2), away, number)
                aways = aways[: aways.index(away)]
                break
    return found


def _free(
    side: _Side, heights: tuple[float, float], width: float, aways: list[float], view: View
) -> Iterator[float]:
    """How far from a member a label and its leader are free, nearest first."""
    bottom, top = heights
    left = side.edge if side.way > 0 else side.edge - width
    _, low, _, high = _band(side.edge, side.edge, (bottom + top) / 2, view)
    ends = [r[0] if side.way > 0 else r[2] for r in side.writing if low < r[3] and high > r[1]]
    most = min((side.way * (end - side.edge) for end in ends), default=math.inf)
    # Writing in the leader's way is in that of the label beyond its end as well.
    most -= width
    if most < -_TOUCH:
        return
    shut = in_the_way((left, bottom, left + width, top), (side.way, 0.0), side.near)
    shut.sort()
    for away in aways:
        if away > most + _TOUCH:
            return
        # What ends before this place ends before all farther ones.
        while shut and shut[0][1] <= away:
            shut.pop(0)
        if is_free(away, shut):
            yield away


def _band(one: float, other: float, y: float, view: View) -> Rect:
    """All that a leader between two places takes up."""
    half = view.model(GAP / 2)
    return min(one, other), y - half, max(one, other), y + half


def _dot(x: float, y: float, half: float, key: str) -> tuple[Stroke, Stroke]:
    """A dot as strokes, so that it is as dark as its leader: a diamond, and a line through it."""
    diamond = ((x - half, y), (x, y - half), (x + half, y), (x, y + half))
    through = ((x, y - half), (x, y + half))
    return Stroke(diamond, Pen.LABEL, key, closed=True), Stroke(through, Pen.LABEL, key)
