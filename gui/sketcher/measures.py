"""The dimensions that matter to what is held, and stating one of them anew. No Qt.

Each is a stretch between a fixed thing (an end of the wall, a neighbour, the floor, the plates)
and the thing held; to type over it moves what is held, and nothing else.
"""

import enum

import msgspec

from core.framing import Member, keys
from core.framing.layout import CLEAR
from core.framing.moving import UPRIGHT
from gui.sketcher.camera import XY
from gui.sketcher.hit import bounds, outline
from gui.sketcher.pulls import Hold
from gui.things import Kind


class Ruler(enum.Enum):
    """What a dimension is taken from; the value names its words in the catalogue."""

    LEFT_END = "left-end"
    LEFT_NEIGHBOUR = "left-neighbour"
    RIGHT_NEIGHBOUR = "right-neighbour"
    RIGHT_END = "right-end"
    FLOOR = "floor"
    HEAD = "head"
    SLOPE = "slope"
    AGAIN = "again"

    @property
    def upright(self) -> bool:
        """Whether it is taken up and down."""
        return self in (Ruler.FLOOR, Ruler.HEAD, Ruler.SLOPE)


class Measure(msgspec.Struct, frozen=True):
    """A stretch of the wall from `start`, which stands, to `end` at what is held; model mm."""

    ruler: Ruler
    start: XY
    end: XY

    @property
    def reads(self) -> float:
        """What a tape would read, mm."""
        axis = int(self.ruler.upright)
        return abs(self.end[axis] - self.start[axis])


_Box = tuple[float, float, float, float]
"""left, bottom, right, top in mm."""

LEVEL = 0.62
"""How far up a thing its dimensions along the wall stand: figures are written from its foot."""


def measures(hold: Hold) -> tuple[Measure, ...]:
    """The dimensions of what is held, from left to right and then from the floor up."""
    around = whole_bounds(hold)
    if around is None:
        return ()
    left, bottom, right, top = around
    level = bottom + (top - bottom) * LEVEL
    run = hold.result.wall.run
    found = [Measure(Ruler.LEFT_END, (0.0, level), (left, level))]
    before, after = _neighbours(hold, around)
    if before is not None and CLEAR < before < left - CLEAR:
        found.append(Measure(Ruler.LEFT_NEIGHBOUR, (before, level), (left, level)))
    if after is not None and right + CLEAR < after < run - CLEAR:
        found.append(Measure(Ruler.RIGHT_NEIGHBOUR, (after, level), (right, level)))
    found.append(Measure(Ruler.RIGHT_END, (run, level), (right, level)))
    return (*found, *_upright(hold, around))


def whole_bounds(hold: Hold) -> _Box | None:
    """The rectangle of what is held; of an opening the rough opening, whatever piece is held.

    That of a raked opening reaches up to its head's lower side, whose height is stated.
    """
    shape = outline(hold.result, whole_key(hold))
    if shape is not None and hold.thing.kind is Kind.OPENING:
        return *shape[0], shape[2][0], min(y for _, y in shape[2:])
    return bounds(shape) if shape else None


def whole_key(hold: Hold) -> str:
    """The key of the whole of which a piece is held: an opening, a box, a fixture; else its own."""
    if hold.thing.kind in (Kind.OPENING, Kind.BOX, Kind.FIXTURE, Kind.ZONE):
        return f"{hold.letter}/{hold.thing.id}"
    return hold.key


def _upright(hold: Hold, around: _Box) -> list[Measure]:
    """The dimensions up from the floor and down from the plates."""
    left, bottom, right, top = around
    middle = (left + right) / 2
    tight, under = _lowest(hold, left, right)
    slope = Measure(Ruler.SLOPE, (tight, under), (tight, top))
    match hold.thing.kind:
        case Kind.OPENING if bottom > CLEAR:
            return [Measure(Ruler.FLOOR, (middle, 0.0), (middle, bottom)), slope]
        case Kind.OPENING:
            at = tight if hold.result.wall.opening(hold.thing.id).is_raked else middle
            return [Measure(Ruler.HEAD, (at, 0.0), (at, top)), slope]
        case Kind.BOX:
            stated = hold.result.wall.box(hold.thing.id).height.mm
            return [Measure(Ruler.FLOOR, (middle, 0.0), (middle, stated)), slope]
        case Kind.ZONE:
            return [Measure(Ruler.FLOOR, (middle, 0.0), (middle, bottom)), slope]
        case Kind.FIXTURE:
            height = (bottom + top) / 2
            return [Measure(Ruler.FLOOR, (middle, 0.0), (middle, height))]
    return []


def _lowest(hold: Hold, left: float, right: float) -> XY:
    """Where the plates' underside is lowest over a stretch, as a point of it, mm."""
    near = hold.frame.near
    inner = (x for x, _ in near.points() if left < x < right)
    return min(((x, near.height(x)) for x in (left, right, *inner)), key=lambda p: p[1])


def _neighbours(hold: Hold, around: _Box) -> tuple[float | None, float | None]:
    """The right edge of what stands next on the left, the left edge of that on the right, mm."""
    spans = [b for b in _beside(hold) if b[1] < around[3] - CLEAR and b[3] > around[1] + CLEAR]
    before = (right for _, _, right, _ in spans if right <= around[0] + CLEAR)
    after = (left for left, *_ in spans if left >= around[2] - CLEAR)
    return max(before, default=None), min(after, default=None)


def _beside(hold: Hold) -> list[_Box]:
    """What may be a neighbour: for timber the other timber, for the rest openings and boxes."""
    frame, result = hold.frame, hold.result
    if hold.thing.kind in (Kind.STUD, Kind.CRIPPLE):
        own = (hold.key, keys.double(hold.key))
        return [_rect(m) for m in frame.members if m.role in UPRIGHT and m.key not in own]
    found = [bounds(p.outline) for p in frame.openings if p.opening.id != hold.thing.id]
    if hold.thing.kind is Kind.BOX:
        found += [
            (b.left, b.bottom, b.right, b.top) for b in result.boxes if b.box.id != hold.thing.id
        ]
    return found


def _rect(member: Member) -> _Box:
    return member.left, member.bottom, member.right, member.top
