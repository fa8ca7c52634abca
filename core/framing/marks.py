"""Running marks on the plates: where each stud's line is drawn, and on which side it lies."""

import math

import msgspec

from core.framing.bending import height_on, length_along, topside, underside
from core.framing.fitted import crown, foot_of, reaches_plates
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
    lying = _Lying.of(frame)
    made: list[Mark] = []
    for member in frame.members:
        if (role := _LETTERED.get(member.role)) is not None:
            letter = getattr(letters, role)
            edge = _uphill(member) if line_edge is LineEdge.UPHILL else None
            made += _sole_marks(wall, lying, member, letter, edge)
            made += _top_marks(wall, lying, member, letter, edge)
            made += _header_marks(wall, lying, member, letter, edge)
    order = {key: n for n, key in enumerate(lying.in_order)}
    return tuple(sorted(made, key=lambda m: (order[m.plate], m.along)))


class _Lying(msgspec.Struct, frozen=True):
    """What marks are made on, gathered once for all members, and the undersides of the plates.

    Of `tops` the lowest comes first.
    """

    near: RoofLine
    soles: tuple[Member, ...]
    tops: tuple[tuple[Member, tuple[XY, ...]], ...]
    headers: tuple[Member, ...]
    in_order: tuple[str, ...]

    @classmethod
    def of(cls, frame: Frame) -> "_Lying":
        soles, tops, headers = (
            [m for m in frame.members if m.role is role]
            for role in (Role.SOLE_PLATE, Role.TOP_PLATE, Role.HEADER)
        )
        courses = tuple((m, underside(m)) for m in sorted(tops, key=lambda m: m.bottom))
        in_order = tuple(m.key for m in (*soles, *tops, *headers))
        return cls(frame.near, tuple(soles), courses, tuple(headers), in_order)


def _sole_marks(
    wall: Wall, lying: _Lying, member: Member, letter: str, uphill: Side | None
) -> list[Mark]:
    sole = next((m for m in lying.soles if _stands_on(member, m)), None)
    if sole is None:
        return []
    origin = wall.layout.start
    edge = uphill or origin
    x = _foot_x(member, edge)
    if member.lean:
        # Against a surface that leans out it stands a hair past the plate's end.
        x = min(max(x, sole.left), sole.right)
    along = x if origin is Side.LEFT else wall.run - x
    return [Mark(member.key, sole.key, letter, origin, edge, along, None, x)]


def _top_marks(
    wall: Wall, lying: _Lying, member: Member, letter: str, uphill: Side | None
) -> list[Mark]:
    """The mark on the plate it is nailed to, the one over its middle if it is astride a break.

    The mark runs along the plate's underside. A stud astride a break shows one edge on each plate:
    the one on the marked plate is lined.
    """
    segment = _touched(member, lying.near, wall.layout.start) if reaches_plates(member) else None
    found = _plate_over(lying, segment) if segment else None
    if found is None:
        return []
    plate, course = found
    origin = origin_of(wall, course)
    edge = uphill or origin
    if not course[0][0] - TOUCH <= _top_x(member, edge) <= course[-1][0] + TOUCH:
        edge = edge.other
    x = _top_x(member, edge)
    along_sole, along_top = x - course[0][0], length_along(course, x)
    if origin is Side.RIGHT:
        along_sole = course[-1][0] - x
        along_top = length_along(course, course[-1][0]) - along_top
    return [Mark(member.key, plate.key, letter, origin, edge, along_sole, along_top, x)]


def _header_marks(
    wall: Wall, lying: _Lying, member: Member, letter: str, uphill: Side | None
) -> list[Mark]:
    """A cripple's mark on the header it stands on.

    It runs along the header from the end where layout starts, along a raked one from the low end.
    """
    if member.role not in (Role.CRIPPLE, Role.BLOCK):
        return []
    for header in (m for m in lying.headers if _stands_on(member, m)):
        course = topside(header)
        origin = origin_of(wall, course)
        edge = (uphill if _slopes(course) else None) or origin
        x = _edge_x(member, edge)
        along_sole, along_top = x - header.left, length_along(course, x)
        if origin is Side.RIGHT:
            along_sole = header.right - x
            along_top = length_along(course, header.right) - along_top
        return [Mark(member.key, header.key, letter, origin, edge, along_sole, along_top, x)]
    return []


def _uphill(member: Member) -> Side | None:
    """The uphill edge: the side that holds the long point; None under a level or broken top."""
    # What a leaning stud's cut has for its own lean is no slope of the roof.
    slopes = [f.bevel - member.lean for f in member.last_cut]
    bevels = {math.copysign(1.0, slope) for slope in slopes if abs(slope) > LEVEL}
    if len(bevels) != 1:
        return None
    return Side.RIGHT if bevels == {1.0} else Side.LEFT


def origin_of(wall: Wall, course: tuple[XY, ...]) -> Side:
    """The end the tape hooks on: the low end of a slope, else where layout starts."""
    if not _slopes(course):
        return wall.layout.start
    return Side.LEFT if course[-1][1] > course[0][1] else Side.RIGHT


def _slopes(course: tuple[XY, ...]) -> bool:
    """Whether a plate or a header slopes from end to end."""
    (x0, y0), (x1, y1) = course[0], course[-1]
    return abs(y1 - y0) >= LEVEL * (x1 - x0)


def _stands_on(member: Member, lying: Member) -> bool:
    """Whether a member's foot is on this sole plate, or on this piece of it, or on this header."""
    x, y = member.near[0]
    # Most are far from each other: that is asked first.
    if y > lying.top + 1e-6 or member.left > lying.right or member.right < lying.left:
        return False
    left, right = (_foot_x(member, side) for side in (Side.LEFT, Side.RIGHT))
    if member.lean:
        left, right = max(left, lying.left), min(right, lying.right)
    if lying.left - 1e-6 > left or right > lying.right + 1e-6:
        return False
    return abs(y - height_on(topside(lying), x)) < 1e-6


def _touched(member: Member, line: RoofLine, start: Side) -> Segment | None:
    """The segment that the member's top is cut to, nearest to its middle.

    With its middle under a break it is the one toward the layout's start. The gap under it is the
    stud's fit. Astride a step a stud is cut to the lower side alone.
    """
    left, right = member.left + TOUCH, member.right - TOUCH
    over = [s for s in line.segments if s.left < right and s.right > left]
    if len(over) == 1 and over[0].left <= member.left and member.right <= over[0].right:
        return over[0]
    middle, top = (member.left + member.right) / 2, crown(member.near)
    gaps = [
        (s.at(x) - y, s) for s in over for x, y in top if s.left - TOUCH <= x <= s.right + TOUCH
    ]
    least = min((gap for gap, _ in gaps), default=0.0)
    met = [s for gap, s in gaps if gap <= least + TOUCH]
    if start is Side.RIGHT:
        met.reverse()
    return min(met, key=lambda s: max(s.left - middle, middle - s.right, TOUCH), default=None)


def _edge_x(member: Member, edge: Side) -> float:
    return member.left if edge is Side.LEFT else member.right


def _foot_x(member: Member, edge: Side) -> float:
    """Where an edge of a member stands; it is elsewhere at the top of one that leans."""
    if not member.lean:
        return _edge_x(member, edge)
    return foot_of(member.near)[0 if edge is Side.LEFT else -1][0]


def _top_x(member: Member, edge: Side) -> float:
    if not member.lean:
        return _edge_x(member, edge)
    return crown(member.near)[-1 if edge is Side.LEFT else 0][0]


def _plate_over(lying: _Lying, segment: Segment) -> tuple[Member, tuple[XY, ...]] | None:
    """The lowest layer of top plate whose underside holds this segment, and that underside."""
    middle = (segment.left + segment.right) / 2
    over = (p for p in lying.tops if p[1][0][0] - 1e-6 <= middle <= p[1][-1][0] + 1e-6)
    return next(over, None)
