"""Labels that stand away from a crowded member, with a leader to a dot on it."""

from collections.abc import Iterator

import msgspec

from core.drawing.elements import XY, Align, Element, Stroke, Text
from core.drawing.pen import Pen
from core.drawing.placing import Ground, Rect
from core.drawing.typeface import cap_height, text_width
from core.drawing.view import View
from core.framing import Member
from core.roof import RoofLine

GAP = 0.7
"""Between a text and what stands beside it, mm on paper."""

PAST_END = 5.0
"""How far past the wall's ends a label may stand, mm on paper: clear of the heights there."""

_AWAY = (0.0, 0.3, 0.6, 1.0, 1.5, *(float(mm) for mm in range(2, 15)))
"""Distances of a label from its member that are tried, mm on paper; a longer leader is a maze."""

_SHARES = (0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9)
"""Where on a member's height its dot is tried."""


def led_text(
    member: Member, label: str, line: RoofLine, view: View, ground: Ground
) -> tuple[Element, ...]:
    """A label away from its member, with a leader to a dot on it that crosses no writing.

    It stands on the ground from then on; empty where there is no room near the member.
    """
    width = view.model(text_width(label, view.size, narrow=True) + 2 * GAP)
    height = view.model(cap_height(view.size) + 2 * GAP)
    middle = (member.left + member.right) / 2
    past = view.model(PAST_END)
    low, high = line.segments[0].left - past, line.segments[-1].right + past
    for left, bottom in _aside(member, width, height, view):
        rect: Rect = (left, bottom, left + width, bottom + height)
        foot = bottom + height / 2
        near = left if left > middle else left + width
        leader = _band(min(near, middle), max(near, middle), foot, view.model(GAP / 2))
        inside = low <= left and left + width <= high
        free = inside and ground.free(rect) and ground.passable(leader)
        if free and bottom + height < line.lowest(left, left + width):
            ground.add_writing(rect)
            ground.add_writing(leader)
            text = Text(
                label, (left + width / 2, foot), view.size, Pen.LABEL, member.key, Align.MIDDLE
            )
            return (
                msgspec.structs.replace(text, narrow=True, middle=True),
                Stroke(((near, foot), (middle, foot)), Pen.LABEL, member.key),
                *_dot(middle, foot, view.model(0.4), member.key),
            )
    return ()


def _aside(member: Member, width: float, height: float, view: View) -> Iterator[XY]:
    """Lower left corners ever farther from a member, at heights from its middle outward."""
    span = max(member.edges[:2]) - height
    for away in map(view.model, _AWAY):
        for share in _SHARES:
            bottom = member.bottom + share * span
            yield member.right + away, bottom
            yield member.left - away - width, bottom


def _band(left: float, right: float, y: float, half: float) -> Rect:
    return left, y - half, right, y + half


def _dot(x: float, y: float, half: float, key: str) -> tuple[Stroke, Stroke]:
    """A dot as strokes, so that it is as dark as its leader: a diamond, and a line through it."""
    diamond = ((x - half, y), (x, y - half), (x + half, y), (x, y + half))
    through = ((x, y - half), (x, y + half))
    return Stroke(diamond, Pen.LABEL, key, closed=True), Stroke(through, Pen.LABEL, key)
