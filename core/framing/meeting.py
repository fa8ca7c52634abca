"""Where walls meet: found from the plan, and the studs that a wall gets there."""

import msgspec

from core.framing import keys
from core.framing.cuts import stud_facet
from core.framing.layout import CLEAR
from core.framing.member import Member, Role
from core.framing.openings import Over
from core.framing.sticks import standing
from core.model import MeetingKind, Side, Timber, Wall, WallFace
from core.roof import RoofLine

REACH = 30.0
"""How far (mm) the end of a wall may be off another's face and still meet it: hung board."""

NAIL = 12.7
"""The least of a stud (mm) that has to show beside the other wall for a board's edge."""

_STEEP = 0.34
"""The sine of the least angle, 20 degrees, at which a wall ends against another."""

Span = tuple[float, float]


class Meeting(msgspec.Struct, frozen=True):
    """The end of another wall against this one: which wall, which of its ends, on which face.

    Its timber takes up this wall from `left` to `right`, mm.
    """

    other: str
    end: Side
    face: WallFace
    left: float
    right: float


class Footprint(msgspec.Struct, frozen=True):
    """Where a wall stands in plan, mm: its left end, its direction and that away from face A."""

    letter: str
    start: Span
    along: Span
    away: Span
    run: float
    width: float

    @classmethod
    def of(cls, wall: Wall) -> "Footprint | None":
        """The footprint of a wall; None for one without length."""
        (u0, v0), (u1, v1) = wall.chalk
        run = wall.run
        if run <= 0.0:
            return None
        along = ((u1 - u0) / run, (v1 - v0) / run)
        away = (-along[1], along[0])
        return cls(wall.letter, (u0, v0), along, away, run, wall.stud.width.mm)


def footprints(walls: tuple[Wall, ...]) -> tuple[Footprint, ...]:
    """The footprints of all walls that have a length."""
    return tuple(found for wall in walls if (found := Footprint.of(wall)) is not None)


def meetings(wall: Wall, plan: tuple[Footprint, ...]) -> tuple[Meeting, ...]:
    """Every end of another wall that stands against a face of this one, from left to right."""
    own = Footprint.of(wall)
    if own is None:
        return ()
    found = [
        met
        for other in plan
        if other.letter != wall.letter
        for end in Side
        if (met := _met(own, other, end)) is not None
    ]
    return tuple(sorted(found, key=lambda met: met.left))


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
            made.append(
                standing(key, Role.STUD, wall.stud, left, wall.sole_plate.thickness.mm, over)
            )
            taken.append((left, left + wall.stud.thickness.mm))
    return tuple(member for member in made if member is not None)


def _met(wall: Footprint, other: Footprint, end: Side) -> Meeting | None:
    """Where the end of another wall stands against a face of this one, if it does.

    Both long sides of the other wall are followed to the face, so that a wall at an angle takes up
    what it covers there; one corner of its end has to be at the face.
    """
    first = _corner(wall, other, end, 0.0)
    if not -other.width - REACH <= first[1] <= wall.width + other.width + REACH:
        return None
    turn = 1.0 if end is Side.LEFT else -1.0
    lean = turn * _dot(other.along, wall.away)
    if abs(lean) < _STEEP:
        return None
    face, surface = (WallFace.FAR, wall.width) if lean > 0 else (WallFace.A, 0.0)
    corners = (first, _corner(wall, other, end, other.width))
    if all(abs(surface - depth) > REACH for _, depth in corners):
        return None
    aside = turn * _dot(other.along, wall.along) / lean
    left, right = sorted(x + (surface - depth) * aside for x, depth in corners)
    if min(right, wall.run) - max(left, 0.0) < NAIL:
        return None
    return Meeting(other.letter, end, face, left, right)


def _corner(wall: Footprint, other: Footprint, end: Side, aside: float) -> Span:
    """A corner of the other wall's end, along this wall and away from its face A."""
    at = other.run if end is Side.RIGHT else 0.0
    u = other.start[0] + other.along[0] * at + other.away[0] * aside - wall.start[0]
    v = other.start[1] + other.along[1] * at + other.away[1] * aside - wall.start[1]
    return _dot((u, v), wall.along), _dot((u, v), wall.away)


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
    foot = wall.sole_plate.thickness.mm
    member = standing(key, Role.STUD, turned, left, foot, lines)
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


def _dot(a: Span, b: Span) -> float:
    return a[0] * b[0] + a[1] * b[1]
