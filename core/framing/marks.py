"""Running marks on the plates: where each stud's line is drawn, and on which side it lies."""

import math

import msgspec

from core.framing.frame import Frame
from core.framing.member import XY, Member, Role
from core.model import Letters, LineEdge, Side, Wall
from core.roof import RoofLine, Segment
from core.roof.line import TOUCH


class Mark(msgspec.Struct, frozen=True):
    """A line across a plate, mm.

    `member` and `plate` are keys. The tape hooks on the plate's `origin` end; the line stands for
    the stud's `edge`, and its letter is written on the `x_side` of the line. `along_top` runs
    along the plate's underside (for a header, along the header) and is None on the sole plate; of
    a plate in pieces, laid out end to end, from the end of them all;
    `along_sole` is the same line's distance along the floor from below the same end. `x` is the
    line's place from the wall's left end.
    """

    member: str
    plate: str
    letter: str
    origin: Side
    edge: Side
    along_sole: float
    along_top: float | None
    x: float

    @property
    def x_side(self) -> Side:
        """The side of the line on which the stud lies and its letter is written."""
        return self.edge.other

    @property
    def along(self) -> float:
        """The running distance on this plate itself, mm."""
        return self.along_sole if self.along_top is None else self.along_top


_LETTERED = {
    Role.STUD: "stud",
    Role.KING: "king",
    Role.TRIMMER: "trimmer",
    Role.CRIPPLE: "cripple",
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
    soles = [m for m in frame.members if m.role is Role.SOLE_PLATE]
    if abs(member.bottom - soles[0].top) > 1e-6:
        return []
    origin = wall.layout.start
    edge = uphill or origin
    x = _edge_x(member, edge)
    sole = next(m for m in soles if x <= m.right + 1e-6)
    along = x if origin is Side.LEFT else wall.run - x
    return [Mark(member.key, sole.key, letter, origin, edge, along, None, x)]


def _top_marks(
    wall: Wall, frame: Frame, member: Member, letter: str, uphill: Side | None
) -> list[Mark]:
    """The mark on the plate it is nailed to, the one over its middle if it is astride a break.

    The mark runs along the plate's underside. A stud astride a break shows one edge on each plate:
    the one on the marked plate is lined.
    """
    segment = None if member.role is Role.TRIMMER else _touched(member, frame.near)
    if segment is None:
        return []
    origin = _origin(wall, segment)
    edge = uphill or origin
    if not segment.left <= _edge_x(member, edge) <= segment.right:
        edge = edge.other
    x = _edge_x(member, edge)
    along_sole = x - segment.left if origin is Side.LEFT else segment.right - x
    plate = _plate_over(frame, segment, x)
    if plate is None:
        return []
    along_top = along_sole * math.hypot(1.0, segment.along)
    return [Mark(member.key, plate.key, letter, origin, edge, along_sole, along_top, x)]


def _header_marks(wall: Wall, frame: Frame, member: Member, letter: str) -> list[Mark]:
    """A cripple's mark on the header it stands on, from the header's end where layout starts."""
    if member.role is not Role.CRIPPLE:
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
    bevels = {math.copysign(1.0, f.bevel) for f in member.last_cut if abs(f.bevel) > 1e-9}
    if len(bevels) != 1:
        return None
    return Side.RIGHT if bevels == {1.0} else Side.LEFT


def _origin(wall: Wall, segment: Segment) -> Side:
    """The end the tape hooks on: the low end of a slope, else where layout starts."""
    if abs(segment.along) < 1e-9:
        return wall.layout.start
    return Side.LEFT if segment.along > 0 else Side.RIGHT


def _touched(member: Member, line: RoofLine) -> Segment | None:
    """The segment that the member's top meets, nearest to its middle; None if it ends below.

    Astride a step a stud is cut to the lower side, and meets that one alone.
    """
    middle = (member.left + member.right) / 2
    met = [s for s in line.segments if any(_meets(corner, s) for corner in member.near[2:])]
    return min(met, key=lambda s: max(s.left - middle, middle - s.right, 0.0), default=None)


def _meets(corner: XY, segment: Segment) -> bool:
    inside = segment.left - TOUCH <= corner[0] <= segment.right + TOUCH
    return inside and abs(segment.at(corner[0]) - corner[1]) <= TOUCH


def _edge_x(member: Member, edge: Side) -> float:
    return member.left if edge is Side.LEFT else member.right


def _plate_over(frame: Frame, segment: Segment, x: float) -> Member | None:
    """The top plate whose underside lies on this segment; of its pieces the one over x."""
    plates = [m for m in frame.members if m.role is Role.TOP_PLATE]
    lowest = [p for p in plates if all(abs(segment.at(x) - y) <= TOUCH for x, y in p.near[:2])]
    return min(lowest, key=lambda p: max(p.near[0][0] - x, x - p.near[1][0], 0.0), default=None)
