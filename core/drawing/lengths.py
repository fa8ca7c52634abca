"""Labels and lengths written up each stud, where there is room for them."""

import math
from collections.abc import Iterator

from core.drawing.elements import XY, Drawing, Element, Text
from core.drawing.leaders import GAP, led_text
from core.drawing.pen import Pen
from core.drawing.placing import Ground, Rect
from core.drawing.typeface import cap_height, text_width
from core.drawing.view import Show, View
from core.framing import Frame, Member, Role
from core.roof import RoofLine

_UP = math.pi / 2


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
            texts = _texts(
                member, labels[member.key], length_of[member.key], frame.near, view, ground
            )
            crowded += [] if texts else [member]
            drawing += texts
    for member in crowded if Show.LABELS in view.shows else []:
        drawing += led_text(member, labels[member.key], frame.near, view, ground)
    return tuple(drawing)


def _texts(
    member: Member, label: str, length: str, line: RoofLine, view: View, ground: Ground
) -> tuple[Element, ...]:
    """The first of these that finds room: label and length, the same narrow, the label alone."""
    labelled = ((label, Pen.LABEL),) if Show.LABELS in view.shows else ()
    both = (*labelled, (length, Pen.LENGTH)) if Show.LENGTHS in view.shows else labelled
    for texts, narrow in ((both, False), (both, True), (labelled, False), (labelled, True)):
        widths = [_width(text, pen, view, narrow) for text, pen in texts]
        if widths and (place := _room(member, sum(widths), line, view, ground)):
            return _written(member, texts, widths, place, view, narrow)
    return ()


def _width(text: str, pen: Pen, view: View, narrow: bool) -> float:
    """The model width of a text with a space after it."""
    return view.model(text_width(text + "  ", view.size, pen is Pen.LENGTH, narrow=narrow))


def _written(
    member: Member,
    texts: tuple[tuple[str, Pen], ...],
    widths: list[float],
    place: XY,
    view: View,
    narrow: bool,
) -> tuple[Element, ...]:
    x, y = place
    elements: list[Element] = []
    for (text, pen), width in zip(texts, widths, strict=True):
        bold = pen is Pen.LENGTH
        elements.append(
            Text(text, (x, y), view.size, pen, member.key, angle=_UP, bold=bold, narrow=narrow)
        )
        y += width
    return tuple(elements)


def _room(member: Member, width: float, line: RoofLine, view: View, ground: Ground) -> XY | None:
    """The first free place for a text up one side of a member, from its foot up.

    Nothing stands between the text and its member, and a little room is left on its other side.
    """
    height, gap = view.model(cap_height(view.size)), view.model(GAP)
    for left, bottom in _places(member, (height, width), line, gap):
        on_left = left < member.left
        low = left - gap / 2 if on_left else member.right
        high = member.left if on_left else left + height + gap / 2
        rect: Rect = (low, bottom, high, bottom + width)
        if ground.free(rect):
            ground.add_writing(rect)
            return left + height, bottom
    return None


def _places(member: Member, size: XY, line: RoofLine, gap: float) -> Iterator[XY]:
    """Lower left corners to try for a text of a size (x, y), from the foot up, on either side."""
    across, up = size
    lefts = (member.left - gap - across, member.right + gap)
    if member.role is Role.TRIMMER and member.key.endswith("/left"):
        lefts = (lefts[1], lefts[0])
    under = [line.lowest(left, left + across) - member.bottom for left in lefts]
    sides = [
        (left, min(max(member.edges[:2]), roof) - up - gap)
        for left, roof in zip(lefts, under, strict=True)
    ]
    rise, highest = 2 * gap, max(most for _, most in sides)
    while rise <= highest:
        for left, most in sides:
            if rise <= most:
                yield left, member.bottom + rise
        rise += (up + gap) / 2
