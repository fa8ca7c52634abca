"""The studs that a wall gets where another ends against it."""

import msgspec

from core.framing import keys
from core.framing.cuts import stud_facet
from core.framing.ground import foot
from core.framing.heads import Over
from core.framing.layout import CLEAR
from core.framing.meeting import NAIL, Meeting, Span
from core.framing.member import Member, Role
from core.framing.sticks import standing
from core.model import MeetingKind, Side, Timber, Wall, WallFace
from core.roof import RoofLine


def meeting_studs(
    wall: Wall, met: Meeting, over: Over, members: tuple[Member, ...]
) -> tuple[Member, ...]:
    """The studs that a wall gets for one meeting, beside those that stand there anyway.

    A stud that shows enough for a board's edge serves, and none is set beside it; one that does
    not has the new one nailed to its outer side.
    """
    if wall.meeting not in (MeetingKind.TWO_STUDS, MeetingKind.THREE_STUDS):
        return ()
    taken = [(m.left, m.right) for m in members if not m.lies]
    made: list[Member | None] = []
    flat = _flat(wall, met, taken) if wall.meeting is MeetingKind.THREE_STUDS else None
    if flat is not None:
        key = keys.meeting(wall.letter, met.other, met.end, "flat")
        made.append(_turned(key, wall, flat, met.face, over))
        taken.append((flat, flat + wall.stud.width.mm))
    for side in Side:
        left = _beside(wall, met, side, flat, taken)
        if left is not None:
            key = keys.meeting(wall.letter, met.other, met.end, side.value)
            made.append(standing(key, Role.STUD, wall.stud, left, foot(wall), over))
            taken.append((left, left + wall.stud.thickness.mm))
    return tuple(member for member in made if member is not None)


def _flat(wall: Wall, met: Meeting, taken: list[Span]) -> float | None:
    """The left edge of the stud turned flat behind the other wall, as near its middle as it goes.

    It stands clear of what is there and behind half of the other wall or more, or not at all.
    """
    wide, half = wall.stud.width.mm, (met.right - met.left) / 2
    wanted = (met.left + met.right - wide) / 2
    places = [wanted, *(a - wide for a, _ in taken), *(b for _, b in taken)]
    good = [
        left
        for left in places
        if left >= -CLEAR
        and left + wide <= wall.run + CLEAR
        and _free((left, left + wide), taken)
        and min(left + wide, met.right) - max(left, met.left) >= half - CLEAR
    ]
    return min(good, key=lambda left: abs(left - wanted), default=None)


def _beside(
    wall: Wall, met: Meeting, side: Side, flat: float | None, taken: list[Span]
) -> float | None:
    """The left edge of the stud on one side of the other wall; None where none is needed."""
    thick, edge = wall.stud.thickness.mm, met.left if side is Side.LEFT else met.right
    outward = -1.0 if side is Side.LEFT else 1.0
    room = edge if side is Side.LEFT else wall.run - edge
    if room < NAIL or _serves(edge, outward, taken):
        return None
    left = edge - thick / 2
    if flat is not None:
        left = flat - thick if side is Side.LEFT else flat + wall.stud.width.mm
    elif wall.meeting is MeetingKind.THREE_STUDS:
        left = edge - thick if side is Side.LEFT else edge
    for a, b in sorted(taken, key=lambda span: outward * span[0]):
        if left < b - CLEAR and left + thick > a + CLEAR:
            left = a - thick if side is Side.LEFT else b
    inside = left >= -CLEAR and left + thick <= wall.run + CLEAR
    return left if inside and _free((left, left + thick), taken) else None


def _serves(edge: float, outward: float, taken: list[Span]) -> bool:
    """Whether a stud at this edge of the other wall shows enough beside it."""
    for a, b in taken:
        near, far = (b, a) if outward < 0 else (a, b)
        if outward * (far - edge) >= NAIL - CLEAR and outward * (near - edge) <= NAIL + CLEAR:
            return True
    return False


def _turned(key: str, wall: Wall, left: float, face: WallFace, over: Over) -> Member | None:
    """A stud turned flat: its wide face flush with a face of the wall, its thickness inward.

    What is a bevel for a stud on edge is a mitre for this one, and the other way about.
    """
    deep = wall.stud.thickness.mm
    lines = (over[0], _aside(over[0], deep))
    if face is WallFace.FAR:
        lines = (_aside(over[1], -deep), over[1])
    turned = Timber(wall.stud.width, wall.stud.thickness)
    member = standing(key, Role.STUD, turned, left, foot(wall), lines)
    if member is None:
        return None
    overhead = over[0].between(left, left + wall.stud.width.mm)
    cut = tuple(
        msgspec.structs.replace(
            stud_facet(msgspec.structs.replace(s, along=s.across, across=s.along)), face_up="any"
        )
        for s in overhead
    )
    return msgspec.structs.replace(
        member, thickness=wall.stud.thickness.mm, width=wall.stud.width.mm, last_cut=cut
    )


def _aside(line: RoofLine, away: float) -> RoofLine:
    """The line carried through the wall under the same planes, mm away from its own face."""
    return RoofLine(
        tuple(msgspec.structs.replace(s, height=s.height + s.across * away) for s in line.segments)
    )


def _free(span: Span, taken: list[Span]) -> bool:
    return all(span[1] <= a + CLEAR or span[0] >= b - CLEAR for a, b in taken)
