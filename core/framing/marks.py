"""Running marks on the plates: where each stud's line is drawn, and on which side it lies."""

import math

import msgspec

from core.framing.bending import height_on, length_along, topside, underside
from core.framing.fitted import crown, reaches_plates
from core.framing.frame import Frame
from core.framing.member import SQUARE_WITHIN, XY, Member, Role
from core.model import Letters, LineEdge, Side, Wall
from core.roof import RoofLine, Segment
from core.roof.line import TOUCH

LEVEL = math.tan(SQUARE_WITHIN)
"""A slope less than this, rise over run, counts as level: its end cuts are square."""


class Mark(msgspec.Struct, frozen=True):
    """A line across a plate, mm.

    `member` and `plate` are keys. The tape hooks on the plate's `origin` end; the line stands for
    the stud's `edge`, and its letter is written on the `x_side` of the line. `along_top` runs
    along the plate's underside (for a header, along the header) and is None on the sole plate;
    `along_sole` is the same line's distance along the floor from below the same end. `x` is the
    line's place from the wall's left end. A plate that a purlin cuts goes on beyond it, and
    `begins` is how far along the whole of it that begins; pieces that meet over studs are laid
    out end to end, and the marks run on over them.
    """

    member: str
    plate: str
    letter: str
    origin: Side
    edge: Side
    along_sole: float
    along_top: float | None
    x: float
    begins: float = 0.0

    @property
    def x_side(self) -> Side:
        """The side of the line on which the stud lies and its letter is written."""
        return self.edge.other

    @property
    def along(self) -> float:
        """The running distance on the plate itself, mm, from its end or from the purlin."""
        return self.along_sole if self.along_top is None else self.along_top - self.begins


_LETTERED = {
    Role.STUD: "stud",
    Role.KING: "king",
    Role.TRIMMER: "trimmer",
    Role.CRIPPLE: "cripple",
    Role.BLOCK: "cripple",
}


def marks(wall: Wall, frame: Frame, line_edge: LineEdge, letters: Letters) -> tuple[Mark, ...]:
    """All marks of a wall: the sole plate's, then each top plate's, then each header's.

    The sole plate's tape hooks on the end where layout starts. A sloping plate's hooks on its low
    end, a level one's on the end where layout starts.
    """
    upright = [m for m in frame.members if m.role in _LETTERED]
    made: list[Mark] = []
    for member in upright:
        letter = getattr(letters, _LETTERED[member.role])
        edge = _uphill(member) if line_edge is LineEdge.UPHILL else None
        made += _sole_marks(wall, frame, member, letter, edge)
        made += _top_marks(wall, frame, member, letter, edge)
        made += _header_marks(wall, frame, member, letter)
    order = {key: n for n, key in enumerate(_plates_in_order(frame))}
    return tuple(sorted(made, key=lambda m: (order[m.plate], m.along)))


def _plates_in_order(frame: Frame) -> list[str]:
    roles = (Role.SOLE_PLATE, Role.TOP_PLATE, Role.HEADER)
    return [m.key for role in roles for m in frame.members if m.role is role]


def _sole_marks(
    wall: Wall, frame: Frame, member: Member, letter: str, uphill: Side | None
) -> list[Mark]:
    soles = (m for m in frame.members if m.role is Role.SOLE_PLATE)
    sole = next((m for m in soles if _stands_on(member, m)), None)
    if sole is None:
        return []
    origin = wall.layout.start
    edge = uphill or origin
    x = _edge_x(member, edge)
    along = x if origin is Side.LEFT else wall.run - x
    return [Mark(member.key, sole.key, letter, origin, edge, along, None, x)]


def _top_marks(
    wall: Wall, frame: Frame, member: Member, letter: str, uphill: Side | None
) -> list[Mark]:
    """The mark on the plate it is nailed to, the one over its middle if it is astride a break.

    The mark runs along the plate's underside. A stud astride a break shows one edge on each plate:
    the one on the marked plate is lined.
    """
    segment = _touched(member, frame.near) if reaches_plates(member) else None
    plate = _plate_over(frame, segment) if segment else None
    if plate is None:
        return []
    course = underside(plate)
    origin = _origin(wall, course)
    edge = uphill or origin
    if not course[0][0] <= _edge_x(member, edge) <= course[-1][0]:
        edge = edge.other
    x = _edge_x(member, edge)
    along_sole, along_top = x - course[0][0], length_along(course, x)
    if origin is Side.RIGHT:
        along_sole = course[-1][0] - x
        along_top = length_along(course, course[-1][0]) - along_top
    return [Mark(member.key, plate.key, letter, origin, edge, along_sole, along_top, x)]


def _header_marks(wall: Wall, frame: Frame, member: Member, letter: str) -> list[Mark]:
    """A cripple's mark on the header it stands on, from the header's end where layout starts."""
    if member.role not in (Role.CRIPPLE, Role.BLOCK):
        return []
    for header in frame.members:
        under = header.role is Role.HEADER and abs(header.top - member.bottom) < 1e-6
        if under and header.left <= member.left + 1e-6 and member.right <= header.right + 1e-6:
            edge = wall.layout.start
            x = _edge_x(member, edge)
            along = x - header.left if edge is Side.LEFT else header.right - x
            return [Mark(member.key, header.key, letter, edge, edge, along, along, x)]
    return []


def _uphill(member: Member) -> Side | None:
    """The uphill edge: the side that holds the long point; None under a level or broken top."""
    bevels = {math.copysign(1.0, f.bevel) for f in member.last_cut if abs(f.bevel) > LEVEL}
    if len(bevels) != 1:
        return None
    return Side.RIGHT if bevels == {1.0} else Side.LEFT


def _origin(wall: Wall, course: tuple[XY, ...]) -> Side:
    """The end the tape hooks on: the low end of a slope, else where layout starts."""
    (x0, y0), (x1, y1) = course[0], course[-1]
    if abs(y1 - y0) < LEVEL * (x1 - x0):
        return wall.layout.start
    return Side.LEFT if y1 > y0 else Side.RIGHT


def _stands_on(member: Member, sole: Member) -> bool:
    """Whether a member's foot is on this sole plate, or on this piece of it."""
    x, y = member.near[0]
    if not (sole.left - 1e-6 <= member.left and member.right <= sole.right + 1e-6):
        return False
    return abs(y - height_on(topside(sole), x)) < 1e-6


def _touched(member: Member, line: RoofLine) -> Segment | None:
    """The segment that the member's top is cut to, nearest to its middle.

    The gap under it is the stud's fit. Astride a step a stud is cut to the lower side alone.
    """
    middle = (member.left + member.right) / 2
    top = crown(member.near)
    left, right = member.left + TOUCH, member.right - TOUCH
    over = [s for s in line.segments if s.left < right and s.right > left]
    gaps = [
        (s.at(x) - y, s) for s in over for x, y in top if s.left - TOUCH <= x <= s.right + TOUCH
    ]
    least = min((gap for gap, _ in gaps), default=0.0)
    met = [s for gap, s in gaps if gap <= least + TOUCH]
    return min(met, key=lambda s: max(s.left - middle, middle - s.right, 0.0), default=None)


def _edge_x(member: Member, edge: Side) -> float:
    return member.left if edge is Side.LEFT else member.right


def _plate_over(frame: Frame, segment: Segment) -> Member | None:
    """The lowest layer of top plate whose underside holds this segment."""
    middle = (segment.left + segment.right) / 2
    plates = [m for m in frame.members if m.role is Role.TOP_PLATE]
    over = [p for p in plates if underside(p)[0][0] - 1e-6 <= middle <= underside(p)[-1][0] + 1e-6]
    return min(over, key=lambda p: p.bottom, default=None)
