"""Where a thing may go while it is being moved: snapping and limits, for drags and arrow keys."""

import math

import msgspec

from core.framing import keys
from core.framing.boxes import box_bottom
from core.framing.fit import fit, framed_width
from core.framing.frame import Frame
from core.framing.layout import CLEAR, layout_lefts
from core.framing.member import Member, Role
from core.framing.openings import lowest_sill
from core.framing.snapping import Grip, Moved, Snap, Targets, settle
from core.framing.stopping import Stop, highest_sill, opening_stop
from core.model import Box, BoxHeight, Opening, Side, Wall

__all__ = [
    "UPRIGHT",
    "Grip",
    "Moved",
    "MovedBox",
    "Snap",
    "box_move",
    "movable",
    "opening_move",
    "sill_move",
    "stud_move",
]

UPRIGHT = frozenset({Role.STUD, Role.KING, Role.TRIMMER, Role.CRIPPLE, Role.BLOCK})
_CARRIES_A_BOX = frozenset({Role.STUD, Role.KING, Role.TRIMMER})


class MovedBox(msgspec.Struct, frozen=True):
    """The stud, the side of it and the stated height (mm) that a moved box gets."""

    stud: str
    side: Side
    height: float
    snap: Snap = Snap.STEP
    other: str = ""


def movable(member: Member) -> bool:
    """Whether a member itself can be moved: no stud at an end, where walls meet, or doubling."""
    fixed = member.key.split("/")[1] in ("end", "meets") or keys.is_double(member.key)
    return member.role in (Role.STUD, Role.CRIPPLE, Role.BLOCK) and not fixed


def stud_move(wall: Wall, frame: Frame, key: str, wanted: float, grip: Grip) -> Moved:
    """Where a stud or cripple goes when its left edge is wanted at `wanted`, mm.

    It snaps to layout places, to the faces of its neighbours and to tape steps, in this order, and
    stays clear of other members. KeyError if there is no such member, ValueError if it is fixed.
    """
    member = frame.member(key)
    if member is None:
        raise KeyError(key)
    if not movable(member):
        raise ValueError(f"{key} does not move")
    thickness, others = wall.stud.thickness.mm, _others(frame, member)
    faces = [(m.right, m.key) for m in others]
    faces += [(m.left - thickness, m.key) for m in others]
    layout = [(left, "") for _, left in layout_lefts(wall)]
    middle = [((wall.run - thickness) / 2, "")]
    targets = ((Snap.LAYOUT, layout), (Snap.FACE, faces), (Snap.MIDDLE, middle))
    moved = settle(wanted, _room_for(wall, frame, member), targets, grip)
    if moved.snap is not Snap.LIMIT:
        return moved
    return _at_limit(moved, wanted, thickness, _spans(wall, frame, others))


def opening_move(wall: Wall, frame: Frame, opening_id: str, wanted: float, grip: Grip) -> Moved:
    """Where an opening goes when its left edge is wanted at `wanted`, mm.

    It snaps so that a king stands at a layout place, against other openings, to the wall's middle,
    or to tape steps, and stays where it fits; where it fits nowhere it stays put. KeyError if there
    is no such opening.
    """
    opening, others = wall.opening(opening_id), _other_openings(frame, opening_id)
    ranges = fit(wall, opening, (frame.near, frame.far), others).ranges
    if not ranges:
        stop = opening_stop(wall, opening, (frame.near, frame.far), others, opening.left.mm)
        return Moved(opening.left.mm, Snap.LIMIT, _key_of(wall, stop[1]), stop[0])
    moved = settle(wanted, ranges, _opening_targets(wall, opening, others, ranges), grip)
    if moved.snap is not Snap.LIMIT:
        return moved
    past = moved.left + math.copysign(_PAST, wanted - moved.left)
    stop = opening_stop(wall, opening, (frame.near, frame.far), others, past)
    return msgspec.structs.replace(moved, other=_key_of(wall, stop[1]), stop=stop[0])


def sill_move(wall: Wall, frame: Frame, opening_id: str, wanted: float, grip: Grip) -> Moved:
    """Where the sill of an opening goes when it is wanted at `wanted`, mm, its head going along.

    It snaps to its own height, in line with the sills and heads of other openings, or to tape
    steps, and stays between the sole plate and the plates above. KeyError if there is none.
    """
    opening = wall.opening(opening_id)
    others = _other_openings(frame, opening_id)
    tall = opening.head.mm - opening.sill.mm
    lowest = lowest_sill(wall, opening)
    highest = highest_sill(wall, opening, (frame.near, frame.far))
    if highest < lowest:
        return Moved(opening.sill.mm, Snap.LIMIT, stop=Stop.SLOPE)
    lines = [(o.sill.mm, _key_of(wall, o.id)) for o in others if o.sill.mm > 0]
    lines += [(o.head.mm - tall, _key_of(wall, o.id)) for o in others]
    targets = ((Snap.OWN, [(opening.sill.mm, "")]), (Snap.LINE, lines))
    moved = settle(wanted, ((lowest, highest),), targets, grip)
    if moved.snap is not Snap.LIMIT:
        return moved
    why = Stop.SLOPE if wanted > moved.left else Stop.FLOOR
    return msgspec.structs.replace(moved, stop=why)


def box_move(
    wall: Wall, frame: Frame, box_id: str, wanted: tuple[float, float], grip: Grip
) -> MovedBox:
    """Where a box goes when its lower left corner is wanted at a point (x, y), mm.

    It jumps to the nearest free side of a stud; its height goes in line with other boxes or by
    tape steps, within the stud.
    """
    box = wall.box(box_id)
    middle = wanted[0] + box.width.mm / 2
    sides = [s for s in _sides(wall, frame, box) if s[0].top - s[0].bottom >= box.tall.mm]
    if not sides:
        return MovedBox(box.stud, box.side, box.height.mm, Snap.LIMIT)
    stud, side, _ = min(sides, key=lambda s: abs(s[2] - middle))
    foot, reach = stud.span(side)
    above = _above(box)
    low, high = foot + above, max(reach - box.tall.mm, foot) + above
    others = (b for b in wall.boxes if b.id != box_id)
    lines = [(box_bottom(b) + _above(b, box.to), _key_of(wall, b.id)) for b in others]
    moved = settle(wanted[1] + above, ((low, high),), ((Snap.LINE, lines),), grip)
    return MovedBox(stud.key, side, moved.left, moved.snap, moved.other)


_PAST = 1.0
"""How far past its last place an opening is tried to see what stops it, mm."""


def _above(box: Box, to: BoxHeight | None = None) -> float:
    """How far over its foot the part of a box is that heights are taken to, mm."""
    shares = {BoxHeight.BOTTOM: 0.0, BoxHeight.CENTRE: 0.5, BoxHeight.TOP: 1.0}
    return shares[to or box.to] * box.tall.mm


def _key_of(wall: Wall, thing: str) -> str:
    return f"{wall.letter}/{thing}" if thing else ""


def _other_openings(frame: Frame, opening_id: str) -> tuple[Opening, ...]:
    """The other openings that are framed."""
    return tuple(p.opening for p in frame.openings if p.opening.id != opening_id and p.fit.fits)


def _opening_targets(
    wall: Wall,
    opening: Opening,
    others: tuple[Opening, ...],
    ranges: tuple[tuple[float, float], ...],
) -> Targets:
    """The places that an opening is drawn to."""
    beside, thickness = 2 * wall.stud.thickness.mm, wall.stud.thickness.mm
    lefts = [left for _, left in layout_lefts(wall)]
    kings = [(left + beside, "") for left in lefts]
    kings += [(left - beside + thickness - opening.width.mm, "") for left in lefts]
    faces = []
    for other in others:
        low, high = framed_width(wall, other)
        key = _key_of(wall, other.id)
        faces += [(high + beside, key), (low - beside - opening.width.mm, key)]
    # A place of its own, beside a shared king or an end stud, is found like a face.
    faces += [(low, "") for low, high in ranges if high - low <= CLEAR]
    middle = [((wall.run - opening.width.mm) / 2, "")]
    return (Snap.LAYOUT, kings), (Snap.FACE, faces), (Snap.MIDDLE, middle)


def _at_limit(
    moved: Moved, wanted: float, thickness: float, spans: list[tuple[float, float, str]]
) -> Moved:
    """The moved stud with what stops it: what stands against it, else the end of the wall."""
    edge = moved.left + thickness if wanted > moved.left else moved.left
    touching = (
        key
        for left, right, key in spans
        if abs((left if wanted > moved.left else right) - edge) <= thickness + CLEAR
    )
    other = next(touching, "")
    return msgspec.structs.replace(moved, other=other, stop=Stop.THING if other else Stop.END)


def _spans(wall: Wall, frame: Frame, others: list[Member]) -> list[tuple[float, float, str]]:
    """What stands in a stud's way: left and right edge, mm, and key; openings whole."""
    spans = [(m.left, m.right, m.key) for m in others]
    for placed in frame.openings:
        if placed.fit.fits:
            spans.append((*framed_width(wall, placed.opening), placed.key))
    return spans


def _others(frame: Frame, member: Member) -> list[Member]:
    """The other uprights at the height of this member."""
    return [
        m
        for m in frame.members
        if m.role in UPRIGHT
        and m.key not in (member.key, keys.double(member.key))
        and m.bottom < member.top - CLEAR
        and m.top > member.bottom + CLEAR
    ]


def _room_for(wall: Wall, frame: Frame, member: Member) -> tuple[tuple[float, float], ...]:
    """The ranges of left edges in which the member stands clear of all others at its height."""
    thickness = wall.stud.thickness.mm
    before, after = _with_second(frame, member)
    low, high = 0.0, wall.run
    taken = [(m.left, m.right) for m in _others(frame, member)]
    if member.role in (Role.CRIPPLE, Role.BLOCK):
        low, high = _between_kings(frame, member)
    else:
        taken += [framed_width(wall, p.opening) for p in frame.openings if p.fit.fits]
    taken = [(left, right) for left, right in taken if left < high and right > low]
    ranges = []
    for left, right in (*sorted(taken), (high, high)):
        if left - thickness - after >= low + before - CLEAR:
            ranges.append((low + before, left - thickness - after))
        low = max(low, right)
    return tuple(ranges)


def _with_second(frame: Frame, member: Member) -> tuple[float, float]:
    """The room, mm, that a stud's second takes on its left and on its right: they move together."""
    second = frame.member(keys.double(member.key))
    if second is None:
        return 0.0, 0.0
    thickness = second.right - second.left
    return (thickness, 0.0) if second.left < member.left else (0.0, thickness)


def _between_kings(frame: Frame, member: Member) -> tuple[float, float]:
    """The inner faces that a cripple stays between: those of its own header or sill."""
    under = [m for m in frame.members if m.key.split("/")[:2] == member.key.split("/")[:2]]
    role = Role.HEADER if keys.on_header(member.key) else Role.SILL
    carriers = [m for m in under if m.role is role]
    return min(m.left for m in carriers), max(m.right for m in carriers)


def _in_doorway(member: Member, side: Side) -> bool:
    """Whether this side of a member faces into the opening that it trims."""
    return member.role is Role.TRIMMER and not member.key.endswith(f"/{side.value}")


def _sides(wall: Wall, frame: Frame, box: Box) -> list[tuple[Member, Side, float]]:
    """Each side of a stud with room in the wall for the box, and the middle the box would have."""
    studs = [m for m in frame.members if m.role in _CARRIES_A_BOX]
    sides = []
    for stud in studs:
        for side, edge in ((Side.LEFT, stud.left - box.width.mm), (Side.RIGHT, stud.right)):
            right = edge + box.width.mm
            others = (m for m in studs if m.key != stud.key)
            within = edge >= -CLEAR and right <= wall.run + CLEAR
            within = within and not _in_doorway(stud, side)
            if within and all(m.right <= edge + CLEAR or m.left >= right - CLEAR for m in others):
                sides.append((stud, side, (edge + right) / 2))
    return sides
