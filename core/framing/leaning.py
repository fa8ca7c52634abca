"""Ends of a wall against surfaces out of plumb: where the end stud stands, and how plates end.

The rule: the sole plate goes by the floor, from end to end of the chalk line; the top plates reach
the surface where they are, cut along it. An end stud that stands plumb is set in so far that it
clears a surface which leans in; one that leans stands against the surface over its whole length.
"""

import math

import msgspec

from core.framing.bending import courses, height_on, stretch_at
from core.framing.cuts import foot_facet, plate_facet, stud_facet
from core.framing.ending import Line, ended
from core.framing.member import XY, Member, Role
from core.framing.sticks import NO_ROOM, flat_line
from core.model import EndStud, Side, Timber, Wall
from core.roof import RoofLine, Segment

STEEPEST = 0.25
"""The most that a surface leans for its height, mm for each mm."""

_SETTLED = 1e-12
"""A place found again within this, mm, is where two lines meet."""


class Lean(msgspec.Struct, frozen=True):
    """The surface at one end of a wall: at height y it is at `foot` + `slope` * y along it, mm.

    `offset` is how much farther out it is at the roof, mm.
    """

    side: Side
    foot: float
    slope: float
    offset: float
    stud: EndStud

    def at(self, y: float) -> float:
        """Where the surface is along the wall at a height, mm."""
        return self.foot + self.slope * y

    @property
    def angle(self) -> float:
        """How far it leans to the right from plumb, radians."""
        return math.atan(self.slope)


def leans_of(wall: Wall, near: RoofLine) -> tuple[Lean, ...]:
    """The surfaces out of plumb that a wall under this roof line ends against.

    Where the roof comes down to the sole plate, or so low that the surface would lean more than
    `STEEPEST`, there is nothing for a stud to stand against.
    """
    found = []
    stated = ((Side.LEFT, wall.left_lean, 0.0, -1.0), (Side.RIGHT, wall.right_lean, wall.run, 1.0))
    for side, lean, foot, outward in stated:
        high = near.height(foot)
        if lean is None or wall.stands_on is not None or high <= wall.sole_plate.thickness.mm:
            continue
        offset = lean.offset.mm
        if abs(offset) > STEEPEST * high:
            continue
        found.append(Lean(side, foot, outward * offset / high, offset, lean.stud))
    return tuple(found)


def reached(line: RoofLine, leans: tuple[Lean, ...]) -> RoofLine:
    """The line from surface to surface; breaks past a surface that leans in are gone."""
    segments = list(line.segments)
    for lean in leans:
        end = meeting(lean, line)
        if lean.side is Side.LEFT:
            segments = [s for s in segments if s.right > end] or segments[-1:]
            segments[0] = msgspec.structs.replace(segments[0], left=end)
        else:
            segments = [s for s in segments if s.left < end] or segments[:1]
            segments[-1] = msgspec.structs.replace(segments[-1], right=end)
    return RoofLine(tuple(segments))


def meeting(lean: Lean, line: RoofLine, aside: float = 0.0) -> float:
    """Where along the wall a surface meets a line over it, mm; `aside` of it to the right."""
    x = lean.foot + aside
    for _ in range(100):
        new = lean.at(line.height(x)) + aside
        if abs(new - x) <= _SETTLED:
            break
        x = new
    return new


def leaning_stud(
    key: str,
    timber: Timber,
    lean: Lean,
    foot: float | tuple[RoofLine, RoofLine],
    over: tuple[RoofLine, RoofLine],
) -> Member | None:
    """The end stud that leans against a surface; None where there is no room for it.

    Its cuts are set from square to the stud itself, and its lengths are along it.
    """
    across = timber.thickness.mm * math.hypot(1.0, lean.slope)
    asides = (0.0, across) if lean.side is Side.LEFT else (-across, 0.0)
    on = foot if isinstance(foot, tuple) else (flat_line(foot, 1.0),) * 2
    feet = [tuple(_corner(lean, line, aside) for aside in asides) for line in on]
    tops = [tuple(_corner(lean, line, aside) for aside in asides) for line in over]
    if min(y for top in tops for _, y in top) - max(y for low in feet for _, y in low) <= NO_ROOM:
        return None
    pairs = [
        pair for low, top in zip(feet, tops, strict=True) for pair in zip(low, top, strict=True)
    ]
    lengths = [math.dist(a, b) for a, b in pairs]
    near, far = ((*low, *top[::-1]) for low, top in zip(feet, tops, strict=True))
    reach = [x * math.sin(lean.angle) + y * math.cos(lean.angle) for x, y in (*near, *far)]
    return Member(
        key=key,
        role=Role.STUD,
        thickness=timber.thickness.mm,
        width=timber.width.mm,
        near=near,
        far=far,
        edges=(lengths[0], lengths[1], lengths[2], lengths[3]),
        long_point=max(lengths),
        short_point=min(lengths),
        overall=max(reach) - min(reach),
        first_cut=(foot_facet(_turned(_plane(on[0], feet[0]), lean)),),
        last_cut=(stud_facet(_turned(_plane(over[0], tops[0]), lean)),),
        lean=lean.angle,
    )


def _corner(lean: Lean, line: RoofLine, aside: float) -> XY:
    """Where a line beside a surface, `aside` to the right of it, meets a line under or over it."""
    x = meeting(lean, line, aside)
    return x, line.height(x)


def _plane(line: RoofLine, end: tuple[XY, ...]) -> Segment:
    """The plane that an end is cut to, straight from edge to edge; its slope across the line's."""
    (x0, y0), (x1, y1) = end
    middle = (x0 + x1) / 2
    over = next((s for s in line.segments if middle <= s.right), line.segments[-1])
    return Segment(x0, x1, y0, (y1 - y0) / (x1 - x0), over.across)


def _turned(plane: Segment, lean: Lean) -> Segment:
    """A plane as it lies to a leaning stud set upright: its slope along and across it."""
    sin, cos = math.sin(lean.angle), math.cos(lean.angle)
    down = cos - plane.along * sin
    along, across = (plane.along * cos + sin) / down, plane.across / down
    return msgspec.structs.replace(plane, along=along, across=across)


def against(wall: Wall, plates: tuple[Member, ...], leans: tuple[Lean, ...]) -> tuple[Member, ...]:
    """The top plates, those at a surface out of plumb cut along it."""
    made = list(plates)
    for lean in leans:
        for index, plate in enumerate(made):
            under = courses(plate.near)[0]
            tip = under[0 if lean.side is Side.LEFT else -1]
            if abs(tip[0] - lean.at(tip[1])) < wall.top_plate.timber.thickness.mm:
                made[index] = _ended(wall, plate, lean)
    return tuple(made)


def _ended(wall: Wall, plate: Member, lean: Lean) -> Member:
    """A plate that ends along a surface."""
    long = math.hypot(1.0, lean.slope)
    line = Line((lean.foot, 0.0), (1.0 / long, -lean.slope / long))
    under, behind = courses(plate.near)[0], courses(plate.far)[0]
    x = under[0 if lean.side is Side.LEFT else -1][0]
    (x0, y0), (x1, y1) = stretch_at(under, x)
    slope = (y1 - y0) / (x1 - x0)
    across = (height_on(behind, x) - height_on(under, x)) / wall.stud.width.mm
    lies = Segment(0.0, 0.0, 0.0, slope, across)
    facet = plate_facet(lies, (lean.slope, 1.0, 0.0), (0.0, 0.0, 1.0))
    facet = msgspec.structs.replace(facet, face_up="any") if facet.is_square else facet
    return ended(plate, (line, line), lean.side, facet)
