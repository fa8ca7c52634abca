"""The room's edge from above and what is overhead: rafters, ridge, heights, flat ceiling."""

import math
from functools import lru_cache
from itertools import pairwise

from core.drawing.elements import XY, Align, Drawing, Stroke, Text
from core.drawing.extent import text_corners
from core.drawing.pen import Pen
from core.drawing.placing import Rect, Taken, bounds
from core.drawing.typeface import cap_height, text_width
from core.drawing.view import View
from core.framing import rafter_places
from core.lengths import System
from core.model import Room, Side, Wing
from core.roof import contour, ridge, roof_of, seams
from core.roof.seams import Line
from core.wording import Message, Mm, Wording, message

FOOT = 304.8

_OFF, _AIR = 1.0, 0.7
"""From a line to the feet of its words, and what is kept free around them, mm on paper."""

_COLUMN, _PIECE = 1000.0, 100.0
"""The width of the columns that ground is kept by, and the length of a line's pieces, mm."""

HEIGHTS = {System.INCH: (5 * FOOT, 7 * FOOT), System.METRIC: (1500.0, 2000.0)}
"""The heights (mm) that are drawn as lines in the floor.

5 and 7 ft are those of IRC R304 and R305: floor under 5 ft of a sloping ceiling does not count
toward a room's least area, and half of it has to have 7 ft. 1.5 m and 2 m are common practice.
"""


def outline(room: Room) -> tuple[XY, ...]:
    """The room at the framing faces of its eave walls and gables, wings and all, mm."""
    width, length = room.width.mm, room.length.mm
    right = [p for wing in _wings(room, Side.RIGHT) for p in _bump(width, 1.0, wing)]
    left = [p for wing in _wings(room, Side.LEFT) for p in _bump(0.0, -1.0, wing)]
    corners = ((0.0, 0.0), (width, 0.0), *right, (width, length), (0.0, length), *reversed(left))
    return tuple(dict.fromkeys(corners))


def floors(room: Room) -> tuple[tuple[XY, ...], ...]:
    """The rectangles that the room is made up of, its own first, then its wings, mm."""
    width, length = room.width.mm, room.length.mm
    own = ((0.0, 0.0), (width, 0.0), (width, length), (0.0, length))
    wings = [_bump(0.0, -1.0, wing) for wing in _wings(room, Side.LEFT)]
    wings += [_bump(width, 1.0, wing) for wing in _wings(room, Side.RIGHT)]
    return (own, *wings)


def floor_edge(room: Room) -> Drawing:
    """The room's edge, heavy."""
    return (Stroke(outline(room), Pen.FLOOR, closed=True),)


def overhead(room: Room) -> Drawing:
    """Rafters, lines of a height, the edges of the flat ceiling, then ridge, hips and valleys."""
    over = _overhead(room)
    return (
        *(Stroke(line, Pen.ABOVE_ROOF) for line in over.rafters),
        *(Stroke(line, Pen.CEILING) for line in over.ceiling),
        *(Stroke(line, Pen.HEADROOM) for _, lines in over.heights for line in lines),
        *(Stroke(line, Pen.SEAM) for line in over.seams),
    )


def words(room: Room, view: View, wording: Wording, taken: Taken) -> Drawing:
    """What the lines are, written beside them where there is room.

    They keep off one another's lines; one that cannot is written once all the same.
    """
    over = _overhead(room)
    told: list[tuple[Message, Line]] = []
    across = ridge(room)
    if across is not None:
        at = across[0]
        told += [(message("plan.ridge"), s) for s in over.seams if _runs_at(s, at)][:1]
    for height, lines in over.heights:
        told += [(message("plan.high", height=Mm(height)), line) for line in lines]
    if room.flat_ceiling is not None:
        text = message("plan.ceiling", height=Mm(room.flat_ceiling.mm))
        told += [(text, line) for line in over.ceiling]
    placed: list[Text] = []
    for said, line in ((wording.say(tells), line) for tells, line in told):
        once = any(said == other.text for other in placed)
        made = _beside(said, line, view, taken, over.ground) or (
            None if once else _beside(said, line, view, taken, Taken(_COLUMN))
        )
        if made is not None:
            taken.add(_around(made, view))
            placed.append(made)
    return tuple(placed)


class _Overhead:
    """The lines of what is over a room, by what they show."""

    def __init__(self, room: Room) -> None:
        ground, roof = floors(room), roof_of(room)
        width, length = room.width.mm, room.length.mm
        middles = (v for v in rafter_places(room).middles if 0.0 <= v <= length)
        self.rafters: tuple[Line, ...] = tuple(((0.0, v), (width, v)) for v in middles)
        self.seams = seams(roof, ground)
        system = System.METRIC if room.width.unit.metric else System.INCH
        self.heights = tuple((h, contour(roof, h, ground)) for h in HEIGHTS[system])
        flat = room.flat_ceiling
        self.ceiling = () if flat is None else contour(roof, flat.mm, ground)
        self.ground = Taken(_COLUMN)
        """The ground of the lines that have words beside them; rafters are faint enough."""
        for line in (*self.seams, *self.ceiling, *(n for _, lines in self.heights for n in lines)):
            _take(line, self.ground)


@lru_cache(maxsize=4)
def _overhead(room: Room) -> _Overhead:
    """Kept: walls come and go on every frame of a drag, and the roof stays."""
    return _Overhead(room)


def _beside(text: str, line: Line, view: View, taken: Taken, lines: Taken) -> Text | None:
    """A text along a line, over it as it is read, else under it; None where nothing is free."""
    low, high = sorted(line, key=lambda p: (p[1], p[0]))
    angle = math.atan2(high[1] - low[1], high[0] - low[0])
    if angle > math.pi / 2 + 1e-9:
        angle -= math.pi
    size, long = view.size * 0.86, math.dist(low, high)
    wide = view.model(text_width(text, size)) / long if long else math.inf
    for off in (_OFF, -_OFF - cap_height(size)):
        up = (-math.sin(angle) * view.model(off), math.cos(angle) * view.model(off))
        for share in (0.5, 0.3, 0.7, 0.15, 0.85, 0.4, 0.6, 0.25, 0.75):
            if not wide / 2 <= share <= 1.0 - wide / 2:
                continue
            u, v = (a + (b - a) * share + d for a, b, d in zip(low, high, up, strict=True))
            made = Text(text, (u, v), size, Pen.NOTE, align=Align.MIDDLE, angle=angle)
            rect = _around(made, view)
            if taken.free(rect) and lines.free(rect):
                return made
    return None


def _around(text: Text, view: View) -> Rect:
    """The ground of a text with a little air, so that tails of letters touch nothing."""
    left, bottom, right, top = bounds(text_corners(text, view.scale))
    air = view.model(_AIR)
    return left - air, bottom - air, right + air, top + air


def _take(line: Line, ground: Taken) -> None:
    """Takes a line's ground in pieces, so that one askew takes little more than it covers."""
    (u0, v0), (u1, v1) = line
    pieces = 1 if u0 == u1 or v0 == v1 else max(1, math.ceil(math.dist(*line) / _PIECE))
    ends = [(u0 + (u1 - u0) * n / pieces, v0 + (v1 - v0) * n / pieces) for n in range(pieces + 1)]
    for pair in pairwise(ends):
        ground.add(bounds(pair))


def _runs_at(line: Line, across: float) -> bool:
    return all(abs(u - across) < 1.0 for u, _ in line)


def _wings(room: Room, side: Side) -> list[Wing]:
    return sorted((w for w in room.wings if w.side is side), key=lambda w: w.start.mm)


def _bump(foot: float, out: float, wing: Wing) -> tuple[XY, ...]:
    """The corners of a wing from its start on, seen from the eave wall at `foot` across."""
    first, last = wing.start.mm, wing.start.mm + wing.width.mm
    far = foot + out * wing.reach.mm
    return ((foot, first), (far, first), (far, last), (foot, last))
