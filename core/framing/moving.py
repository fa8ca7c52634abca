"""Where a thing may go while it is being moved: snapping and limits, for drags and arrow keys."""

import enum

import msgspec

from core.framing.fit import fit, framed_width
from core.framing.frame import Frame
from core.framing.layout import CLEAR, layout_lefts
from core.framing.member import Member, Role
from core.model import Box, BoxHeight, Side, Wall

UPRIGHT = frozenset({Role.STUD, Role.KING, Role.TRIMMER, Role.CRIPPLE})
_CARRIES_A_BOX = frozenset({Role.STUD, Role.KING, Role.TRIMMER})


class Snap(enum.Enum):
    """What a moved thing came to rest at."""

    LAYOUT = "layout"
    FACE = "face"
    STEP = "step"
    FREE = "free"
    LIMIT = "limit"


class Grip(msgspec.Struct, frozen=True):
    """How a thing is held: tape step and reach of the snapping, mm; `free` snaps to nothing."""

    step: float
    reach: float
    free: bool = False


class Moved(msgspec.Struct, frozen=True):
    """The left edge a moved thing gets, mm, and what it came to rest at."""

    left: float
    snap: Snap


class MovedBox(msgspec.Struct, frozen=True):
    """The stud, the side of it and the stated height (mm) that a moved box gets."""

    stud: str
    side: Side
    height: float


def movable(member: Member) -> bool:
    """Whether a member itself can be moved: studs and cripples, but not the end studs."""
    is_end = member.key.split("/")[1] == "end"
    return member.role in (Role.STUD, Role.CRIPPLE) and not is_end


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
    room = _room_for(wall, frame, member)
    thickness = wall.stud.thickness.mm
    faces = [m.right for m in _others(frame, member)]
    faces += [m.left - thickness for m in _others(frame, member)]
    layout = [left for _, left in layout_lefts(wall)]
    return _settle(wanted, room, ((Snap.LAYOUT, layout), (Snap.FACE, faces)), grip)


def opening_move(wall: Wall, frame: Frame, opening_id: str, wanted: float, grip: Grip) -> Moved:
    """Where an opening goes when its left edge is wanted at `wanted`, mm.

    It snaps so that a king stands at a layout place, or to tape steps, and stays where it fits;
    where it fits nowhere it stays put. KeyError if there is no such opening.
    """
    opening = wall.opening(opening_id)
    others = [p.opening for p in frame.openings if p.opening.id != opening_id and p.fit.fits]
    ranges = fit(wall, opening, (frame.near, frame.far), tuple(others)).ranges
    if not ranges:
        return Moved(opening.left.mm, Snap.LIMIT)
    beside = 2 * wall.stud.thickness.mm
    lefts = [left for _, left in layout_lefts(wall)]
    kings = [left + beside for left in lefts]
    kings += [left - beside + wall.stud.thickness.mm - opening.width.mm for left in lefts]
    faces = [framed_width(wall, o)[1] + beside for o in others]
    return _settle(wanted, ranges, ((Snap.LAYOUT, kings), (Snap.FACE, faces)), grip)


def box_move(
    wall: Wall, frame: Frame, box_id: str, wanted: tuple[float, float], grip: Grip
) -> MovedBox:
    """Where a box goes when its lower left corner is wanted at a point (x, y), mm.

    It jumps to the nearest free side of a stud; its height goes by tape steps, within the stud.
    """
    box = wall.box(box_id)
    middle = wanted[0] + box.width.mm / 2
    sides = [s for s in _sides(wall, frame, box) if s[0].top - s[0].bottom >= box.tall.mm]
    if not sides:
        return MovedBox(box.stud, box.side, box.height.mm)
    stud, side, _ = min(sides, key=lambda s: abs(s[2] - middle))
    foot, reach = stud.span(side)
    above = {BoxHeight.BOTTOM: 0.0, BoxHeight.CENTRE: box.tall.mm / 2, BoxHeight.TOP: box.tall.mm}
    height = wanted[1] + above[box.to]
    height = height if grip.free else _stepped(height, grip.step)
    low, high = foot, max(reach - box.tall.mm, foot)
    return MovedBox(stud.key, side, min(max(height, low + above[box.to]), high + above[box.to]))


def _settle(
    wanted: float,
    room: tuple[tuple[float, float], ...],
    targets: tuple[tuple[Snap, list[float]], ...],
    grip: Grip,
) -> Moved:
    """The wanted place pulled to the nearest target in reach, then into the room there is."""
    left, snap = wanted, Snap.FREE
    if not grip.free:
        left, snap = _stepped(wanted, grip.step), Snap.STEP
        for kind, places in targets:
            near = [p for p in places if abs(p - wanted) <= grip.reach and _inside(p, room)]
            if near:
                left, snap = min(near, key=lambda p: abs(p - wanted)), kind
                break
    if _inside(left, room) or not room:
        return Moved(left, snap)
    limits = [min(max(left, low), high) for low, high in room]
    return Moved(min(limits, key=lambda p: abs(p - left)), Snap.LIMIT)


def _inside(left: float, room: tuple[tuple[float, float], ...]) -> bool:
    return any(low - CLEAR <= left <= high + CLEAR for low, high in room)


def _stepped(mm: float, step: float) -> float:
    return round(mm / step) * step


def _others(frame: Frame, member: Member) -> list[Member]:
    """The other uprights at the height of this member."""
    return [
        m
        for m in frame.members
        if m.role in UPRIGHT
        and m.key != member.key
        and m.bottom < member.top - CLEAR
        and m.top > member.bottom + CLEAR
    ]


def _room_for(wall: Wall, frame: Frame, member: Member) -> tuple[tuple[float, float], ...]:
    """The ranges of left edges in which the member stands clear of all others at its height."""
    thickness = wall.stud.thickness.mm
    low, high = 0.0, wall.run
    taken = [(m.left, m.right) for m in _others(frame, member)]
    if member.role is Role.CRIPPLE:
        low, high = _between_kings(frame, member)
    else:
        taken += [framed_width(wall, p.opening) for p in frame.openings if p.fit.fits]
    taken = [(left, right) for left, right in taken if left < high and right > low]
    ranges = []
    for left, right in (*sorted(taken), (high, high)):
        if left - thickness >= low - CLEAR:
            ranges.append((low, left - thickness))
        low = max(low, right)
    return tuple(ranges)


def _between_kings(frame: Frame, member: Member) -> tuple[float, float]:
    """The inner faces that a cripple stays between: those of its own header or sill."""
    under = [m for m in frame.members if m.key.split("/")[:2] == member.key.split("/")[:2]]
    role = Role.HEADER if "/above/" in member.key else Role.SILL
    carrier = next(m for m in under if m.role is role)
    return carrier.left, carrier.right


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
