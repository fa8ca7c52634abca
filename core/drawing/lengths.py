"""Labels and lengths written up each stud, where there is room for them."""

import math

import msgspec

from core.drawing.elements import XY, Drawing, Element, Text
from core.drawing.leaders import GAP, Uprights, led_text
from core.drawing.pen import Pen
from core.drawing.placing import Ground, Rect
from core.drawing.sliding import first_free, in_the_way
from core.drawing.typeface import cap_height, text_width
from core.drawing.view import Show, View
from core.framing import Frame, Member, Role
from core.roof import RoofLine

_UP = math.pi / 2

MOST_LED = 40
"""In a steady view, the most members whose labels are led away from them."""

_UPWARD = (0.0, 1.0)
"""The way of a slide straight up."""

Line = tuple[tuple[tuple[str, Pen], ...], bool]
"""Texts with their pens that are written after each other, and whether they are narrow."""


class Seat(msgspec.Struct, frozen=True):
    """Where texts stand: which of the choices found room, the foot of the first, what is taken."""

    choice: int
    at: XY
    taken: Rect


def upright_texts(
    frame: Frame, labels: dict[str, str], length_of: dict[str, str], view: View, ground: Ground
) -> Drawing:
    """The label and the length of each standing member, written up beside it.

    Where both have no room the label stands alone; where even that has none it stands in the next
    free space with a leader to a dot on its member. The list of members has every length.
    """
    drawing: list[Element] = []
    crowded: list[Member] = []
    for member in frame.members:
        if not member.lies:
            label, length = labels[member.key], length_of[member.key]
            texts = _texts(member, (label, length), frame.near, view, ground)
            crowded += [] if texts else [member]
            drawing += texts
    # A few leaders among a hundred bare studs help nobody: there the person looks nearer.
    maze = view.steady and len(crowded) > MOST_LED
    if Show.LABELS in view.shows and not maze:
        uprights = Uprights(m for m in frame.members if not m.lies)
        for member in crowded:
            drawing += led_text(member, labels[member.key], frame.near, view, ground, uprights)
    return tuple(drawing)


def _texts(
    member: Member, said: tuple[str, str], line: RoofLine, view: View, ground: Ground
) -> tuple[Element, ...]:
    """The first choice that finds room, beside its member and clear of what stands near."""
    kept = ground.kept
    choices, widths = kept.of(_choices, *said, view)
    near = ground.near(_around(member, view))
    # A label of another number is as wide, so only the search for its room is kept by its width.
    seat = kept.of(_seat, member, widths, line, view, near)
    if seat is None:
        return ()
    ground.add_writing(seat.taken)
    return kept.of(_written, member.key, choices[seat.choice], seat.at, view)


def _choices(label: str, length: str, view: View) -> tuple[tuple[Line, ...], tuple[float, ...]]:
    """What may be written, each with its width: label and length, the same narrow, the label."""
    labelled = ((label, Pen.LABEL),) if Show.LABELS in view.shows else ()
    both = (*labelled, (length, Pen.LENGTH)) if Show.LENGTHS in view.shows else labelled
    choices = tuple(
        (texts, narrow) for texts in (both, labelled) for narrow in (False, True) if texts
    )
    return choices, tuple(
        sum(_width(text, pen, view, narrow) for text, pen in texts) for texts, narrow in choices
    )


def _width(text: str, pen: Pen, view: View, narrow: bool) -> float:
    """The model width of a text with a space after it."""
    return view.model(text_width(text + "  ", view.size, pen is Pen.LENGTH, narrow=narrow))


def _written(key: str, line: Line, at: XY, view: View) -> tuple[Element, ...]:
    (x, y), (texts, narrow) = at, line
    elements: list[Element] = []
    for text, pen in texts:
        bold = pen is Pen.LENGTH
        elements.append(
            Text(text, (x, y), view.size, pen, key, angle=_UP, bold=bold, narrow=narrow)
        )
        y += _width(text, pen, view, narrow)
    return tuple(elements)


def _around(member: Member, view: View) -> Rect:
    """All of a member's two sides that texts up it may come to stand in."""
    beside = view.model(cap_height(view.size) + 1.5 * GAP)
    top = member.bottom + max(member.edges[:2])
    return member.left - beside, member.bottom, member.right + beside, top


def _seat(
    member: Member, widths: tuple[float, ...], line: RoofLine, view: View, near: tuple[Rect, ...]
) -> Seat | None:
    """The first free place up a member, from its foot up on either side, for the first choice.

    Nothing stands between the texts and their member, and a little room is left on their other
    side.
    """
    height, gap = view.model(cap_height(view.size)), view.model(GAP)
    sides = [
        (_band(member, left, height, gap), left + height, _room_up(member, left, height, line))
        for left in _lefts(member, height, gap)
    ]
    for choice, width in enumerate(widths):
        step, found = (width + gap) / 2, []
        for (low, high), foot, room in sides:
            shut = in_the_way((low, member.bottom, high, member.bottom + width), _UPWARD, near)
            count = math.floor((room - width - 3 * gap) / step) + 1
            if (n := first_free(2 * gap, step, count, shut)) is not None:
                found.append((n, foot, low, high))
        if found:
            n, foot, low, high = min(found, key=lambda place: place[0])
            bottom = member.bottom + 2 * gap + n * step
            return Seat(choice, (foot, bottom), (low, bottom, high, bottom + width))
    return None


def _lefts(member: Member, height: float, gap: float) -> tuple[float, float]:
    """The left edges of texts `height` high on either side, the side that comes first first."""
    left, right = member.left - gap - height, member.right + gap
    inward = member.role is Role.TRIMMER and member.key.endswith("/left")
    return (right, left) if inward else (left, right)


def _room_up(member: Member, left: float, height: float, line: RoofLine) -> float:
    """How far up from a member's foot texts may reach: its own edges, and the roof over them."""
    return min(max(member.edges[:2]), line.lowest(left, left + height) - member.bottom)


def _band(member: Member, left: float, height: float, gap: float) -> tuple[float, float]:
    """From the member to a little past the texts: all that has to be free."""
    if left < member.left:
        return left - gap / 2, member.left
    return member.right, left + height + gap / 2
