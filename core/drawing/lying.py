"""Labels of the timber that lies: headers, sills and plates, the sole plate's at its tape."""

import math
from collections.abc import Iterator

import msgspec

from core.drawing.arrange import moved
from core.drawing.elements import Align, Drawing, Element, Text
from core.drawing.extent import text_corners
from core.drawing.leaders import GAP
from core.drawing.pen import Pen
from core.drawing.placing import Ground, Rect, bounds
from core.drawing.tapes import BAND, OFF
from core.drawing.typeface import cap_height, text_width
from core.drawing.view import View
from core.framing import Frame, Member, Role, keys, topside, underside

_BEAMS = frozenset({Role.HEADER, Role.SILL, Role.BLOCKING, Role.BACKING})

_STEP = 0.5
"""Between two places along a member where its label is tried, mm on paper."""


def beam_texts(frame: Frame, labels: dict[str, str], view: View, ground: Ground) -> Drawing:
    """The labels of headers, sills and blocks along them; one without room is left out.

    They stand on the ground from then on.
    """
    beams = [m for m in frame.members if m.role in _BEAMS and "/rafters/" not in m.key]
    return tuple(text for m in beams for text in _along(m, labels[m.key], view, ground))


def plate_texts(frame: Frame, labels: dict[str, str], view: View, ground: Ground) -> Drawing:
    """The labels of top plates along the lowest of each stack, and the sole plate's at its tape.

    They stand on the ground from then on; one without room is left out.
    """
    drawing: list[Element] = []
    soles = [m for m in frame.members if m.role is Role.SOLE_PLATE]
    for member in frame.members:
        if soles and member is soles[0]:
            at = (-view.model(1.5), -view.model(OFF + BAND / 2))
            names = " ".join(labels[m.key] for m in soles)
            text = Text(names, at, view.size, Pen.LABEL, member.key, Align.END)
            drawing.append(msgspec.structs.replace(text, middle=True))
        elif member.role is Role.TOP_PLATE and (stack := _stack(member, frame)):
            names = " ".join(labels[m.key] for m in stack)
            together = _along(member, names, view, ground)
            alone = stack if not together and len(stack) > 1 else []
            drawing += together
            for one in alone:
                covered = one is not member
                drawing += _along(one, labels[one.key], view, ground, covered=covered)
    return tuple(drawing)


def _stack(plate: Member, frame: Frame) -> list[Member]:
    """The plates over each other whose lowest is `plate`, from the roof down; empty for others.

    Of a plate in pieces each upper one is named with the lowest one that is under its middle.
    """
    run = keys.plate_run(plate.key)
    plates = [m for m in frame.members if m.role is Role.TOP_PLATE]
    stack = [m for m in plates if keys.plate_run(m.key) == run]
    if keys.layer(plate.key) != keys.layer(stack[-1].key):
        return []
    lowest = [m for m in stack if keys.layer(m.key) == keys.layer(plate.key)]
    upper = [m for m in stack if m not in lowest]
    return [*(m for m in upper if _nearest(m, lowest) is plate), plate]


def _nearest(upper: Member, lowest: list[Member]) -> Member:
    """The piece of the lowest plate that is under the middle of an upper one, or nearest to it."""
    middle = sum(_ends(upper)) / 2

    def off(plate: Member) -> float:
        left, right = _ends(plate)
        return max(left - middle, middle - right, 0.0)

    return min(lowest, key=off)


def _ends(plate: Member) -> tuple[float, float]:
    """Where a plate's underside begins and ends, mm from the wall's left end."""
    course = underside(plate)
    return course[0][0], course[-1][0]


def _along(
    member: Member, label: str, view: View, ground: Ground, *, covered: bool = False
) -> Drawing:
    """A label along a lying member, as near to its middle as it finds room; narrow, or nowhere.

    It stands in the member if that is thick enough on paper, else close under it, unless another
    plate has it `covered` from below.
    """
    (x0, y0), *_, (x1, y1) = underside(member)
    (*_, (_, y2)) = topside(member)
    angle = math.atan2(y1 - y0, x1 - x0)
    thick = (y2 - y1) * math.cos(angle)
    inside = thick >= view.model(cap_height(view.size) + 0.6)
    if covered and not inside:
        return ()
    drop = -thick / 2 if inside else view.model(GAP + cap_height(view.size) / 2)
    origin = (x0 + drop * math.sin(angle), y0 - drop * math.cos(angle))
    length = math.hypot(x1 - x0, y1 - y0)
    text = Text(label, origin, view.size, Pen.LABEL, member.key, Align.MIDDLE, angle)
    for narrow in (False, True):
        text = msgspec.structs.replace(text, narrow=narrow, middle=True)
        rect = _with_gap(bounds(text_corners(text, view.scale)), view.model(GAP))
        half = view.model(text_width(label, view.size, narrow=narrow) / 2 + GAP)
        for along in _from_the_middle(length, half, view.model(_STEP)):
            by = (along * math.cos(angle), along * math.sin(angle))
            there = (rect[0] + by[0], rect[1] + by[1], rect[2] + by[0], rect[3] + by[1])
            if ground.passable(there) if inside else ground.free(there):
                ground.add_writing(there)
                return moved((text,), by)
    return ()


def _from_the_middle(length: float, half: float, step: float) -> Iterator[float]:
    """Places on a member, by turns to either side of its middle, `half` or more from its ends."""
    for n in range(math.floor((length / 2 - half) / step) + 1):
        yield length / 2 + n * step
        yield length / 2 - n * step


def _with_gap(rect: Rect, gap: float) -> Rect:
    """The rectangle widened to its left and right: over and under it the member sets the room."""
    return rect[0] - gap, rect[1], rect[2] + gap, rect[3]
