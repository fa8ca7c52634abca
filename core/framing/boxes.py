"""Electrical boxes in their places on the studs."""

import msgspec

from core.framing import keys
from core.framing.bending import height_on, topside, underside
from core.framing.frame import Frame
from core.framing.layout import CLEAR
from core.framing.member import LYING, Member
from core.model import Box, BoxHeight, Side, Wall


class PlacedBox(msgspec.Struct, frozen=True):
    """A box with its key and edges, mm; `blocked_by` is the key of what is in its way.

    `stud` is the key of the member that it is fixed to, None where there is none at that height.
    """

    key: str
    box: Box
    left: float
    right: float
    bottom: float
    top: float
    stud: str | None
    blocked_by: str | None


def place_boxes(wall: Wall, frame: Frame) -> tuple[PlacedBox, ...]:
    """The boxes of a wall; one whose stud is gone stands where it can be seen, at the left end.

    What is in a box's way may be a member, the box stated before it, or the end of the wall.
    """
    placed: list[PlacedBox] = []
    for box in wall.boxes:
        new = _place(wall, frame, box)
        if new.stud is not None and new.blocked_by is None:
            new = msgspec.structs.replace(new, blocked_by=_in_the_way(wall, new, placed))
        placed.append(new)
    return tuple(placed)


def _in_the_way(wall: Wall, box: PlacedBox, before: list[PlacedBox]) -> str | None:
    """The key of an earlier box in the same place, or of the wall where the box leaves it.

    Two boxes that open on opposite faces stand back to back if the wall is deep enough for both.
    """
    if box.left < -CLEAR or box.right > wall.run + CLEAR:
        return wall.letter
    for other in before:
        if _back_to_back(wall, box.box, other.box):
            continue
        beside = other.right <= box.left + CLEAR or other.left >= box.right - CLEAR
        if not beside and other.bottom < box.top - CLEAR and other.top > box.bottom + CLEAR:
            return other.key
    return None


def _back_to_back(wall: Wall, one: Box, other: Box) -> bool:
    deep = one.depth.mm + other.depth.mm <= wall.stud.width.mm + CLEAR
    return one.on_far_face is not other.on_far_face and deep


def box_bottom(box: Box) -> float:
    """The height of a box's lower edge, from the stated height and what it is taken to, mm."""
    below = {BoxHeight.BOTTOM: 0.0, BoxHeight.CENTRE: box.tall.mm / 2, BoxHeight.TOP: box.tall.mm}
    return box.height.mm - below[box.to]


def _place(wall: Wall, frame: Frame, box: Box) -> PlacedBox:
    stud = frame.member(box.stud)
    bottom = box_bottom(box)
    top = bottom + box.tall.mm
    left = 0.0
    if stud is not None:
        left = stud.right if box.side is Side.RIGHT else stud.left - box.width.mm
    right = left + box.width.mm
    held = stud is not None and _holds(stud, box.side, bottom, top)
    blocked = None
    if stud is not None:
        blocked = next((m.key for m in frame.members if _hits(m, left, right, bottom, top)), None)
    return PlacedBox(
        keys.box(wall.letter, box.id),
        box,
        left,
        right,
        bottom,
        top,
        box.stud if held else None,
        blocked,
    )


def _holds(stud: Member, side: Side, bottom: float, top: float) -> bool:
    """Whether this side of the stud reaches past the box above and below."""
    low, high = stud.span(side)
    return low <= bottom + CLEAR and high >= top - CLEAR


def _hits(member: Member, left: float, right: float, bottom: float, top: float) -> bool:
    """Whether a member stands in the box's rectangle; sloping plates are tested by their edge."""
    if member.role in LYING:
        beside = member.right <= left + CLEAR or member.left >= right - CLEAR
        return not beside and _lying_hits(member, left, right, bottom, top)
    apart = member.right <= left + CLEAR or member.left >= right - CLEAR
    return not apart and member.bottom < top - CLEAR and member.top > bottom + CLEAR


def _lying_hits(member: Member, left: float, right: float, bottom: float, top: float) -> bool:
    under, over = underside(member), topside(member)
    low = min(height_on(under, x) for x in (left, right))
    high = max(height_on(over, x) for x in (left, right))
    return low < top - CLEAR and high > bottom + CLEAR
