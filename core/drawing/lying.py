"""Labels of the timber that lies: headers, sills and plates, the sole plate's at its tape."""

import math
from itertools import product

import msgspec

from core.drawing.course import BAND, OFF
from core.drawing.elements import XY, Align, Drawing, Element, Text
from core.drawing.leaders import GAP
from core.drawing.pen import Pen
from core.drawing.placing import Ground, Rect
from core.drawing.sliding import first_free, in_the_way
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


class _Bed(msgspec.Struct, frozen=True, cache_hash=True):
    """What a label along a member lies on, mm: where it begins, its length and its direction.

    The label stands `drop` off the underside: within the member if that is thick enough on paper.
    """

    start: XY
    length: float
    angle: float
    drop: float
    inside: bool


def _along(
    member: Member, label: str, view: View, ground: Ground, *, covered: bool = False
) -> Drawing:
    """A label along a lying member, as near to its middle as it finds room; narrow, or nowhere.

    It stands in the member if that is thick enough on paper, else close under it, unless another
    plate has it `covered` from below.
    """
    kept = ground.kept
    bed = kept.of(_bed, member, view)
    if covered and not bed.inside:
        return ()
    widths = kept.of(_widths, label, view)
    # Most find their place close to the middle: what stands farther off is not asked for then.
    parts = sorted({min(3 * widths[0], bed.length), bed.length})
    near: dict[float, tuple[Rect, ...]] = {}
    for (narrow, width), part in product(zip((False, True), widths, strict=True), parts):
        if part not in near:
            around = _rect(bed, part + widths[0], bed.length / 2, view)
            near[part] = ground.writing_near(around) if bed.inside else ground.near(around)
        along = kept.of(_from_the_middle, bed, width, part, view, near[part])
        if along is not None:
            ground.add_writing(_rect(bed, width, along, view))
            return kept.of(_written, member.key, label, bed, (along, narrow), view)
    return ()


def _bed(member: Member, view: View) -> _Bed:
    """What a label along a member lies on."""
    (x0, y0), *_, (x1, y1) = underside(member)
    (*_, (_, y2)) = topside(member)
    angle = math.atan2(y1 - y0, x1 - x0)
    thick = (y2 - y1) * math.cos(angle)
    inside = thick >= view.model(cap_height(view.size) + 0.6)
    drop = -thick / 2 if inside else view.model(GAP + cap_height(view.size) / 2)
    return _Bed((x0, y0), math.hypot(x1 - x0, y1 - y0), angle, drop, inside)


def _widths(label: str, view: View) -> tuple[float, float]:
    """The widths of a label in model mm, wide and narrow."""
    wide, narrow = (view.model(text_width(label, view.size, narrow=n)) for n in (False, True))
    return wide, narrow


def _place(bed: _Bed, along: float) -> XY:
    """The middle of a label so far along a member."""
    cos, sin = math.cos(bed.angle), math.sin(bed.angle)
    return bed.start[0] + along * cos + bed.drop * sin, bed.start[1] + along * sin - bed.drop * cos


def _rect(bed: _Bed, width: float, along: float, view: View) -> Rect:
    """What a label takes up, with a gap to its left and right.

    Over and under it the member sets the room.
    """
    cos, sin = abs(math.cos(bed.angle)), abs(math.sin(bed.angle))
    height, (x, y) = view.model(cap_height(view.size)), _place(bed, along)
    wide = (width * cos + height * sin) / 2 + view.model(GAP)
    high = (width * sin + height * cos) / 2
    return x - wide, y - high, x + wide, y + high


def _from_the_middle(
    bed: _Bed, width: float, part: float, view: View, near: tuple[Rect, ...]
) -> float | None:
    """Where along a member a label is free, nearest to its middle on either side; None nowhere.

    Only places within the middle `part` of its length are looked at, clear of its ends.
    """
    way = (math.cos(bed.angle), math.sin(bed.angle))
    shut = in_the_way(_rect(bed, width, 0.0, view), way, near)
    middle, step, half = bed.length / 2, view.model(_STEP), width / 2 + view.model(GAP)
    count = math.floor(min(part / 2, middle - half) / step) + 1
    free = [
        (n, by) for by in (step, -step) if (n := first_free(middle, by, count, shut)) is not None
    ]
    n, by = min(free, key=lambda found: found[0], default=(None, step))
    return None if n is None else middle + n * by


def _written(key: str, label: str, bed: _Bed, seat: tuple[float, bool], view: View) -> Drawing:
    along, narrow = seat
    at = _place(bed, along)
    text = Text(label, at, view.size, Pen.LABEL, key, Align.MIDDLE, bed.angle, narrow=narrow)
    return (msgspec.structs.replace(text, middle=True),)
