"""The timber, openings and boxes of a wall, and the roof above and the floor below them."""

import math
from itertools import pairwise

from core.drawing.elements import XY, Drawing, Element, Fill, Stroke
from core.drawing.opening_outline import drawn_outline
from core.drawing.pen import Pen
from core.drawing.placing import Rect, bounds
from core.drawing.view import View
from core.framing import Member, PlacedBox, PlacedOpening, Role
from core.kept import Kept
from core.roof import PurlinThrough, RoofLine, Segment

APART = 60.0
"""Between points on a sloping edge, mm: what stands in the way of texts is kept as rectangles."""

PEN_OF_ROLE = {role: Pen(role.value) for role in Role}


def members(wanted: tuple[Member, ...], kept: Kept) -> Drawing:
    """Every member's outline on face A, filled by its role, what lies farther back first."""
    return tuple(element for member in wanted for element in kept.of(_member, member))


def _member(member: Member) -> Drawing:
    pen = PEN_OF_ROLE[member.role]
    stroke = Stroke(member.near, pen, member.key, closed=True)
    return Fill(member.near, pen, member.key), stroke


def opening(placed: PlacedOpening, line: RoofLine) -> Drawing:
    """The outline of a rough opening; filled as well where it cannot be built."""
    outline = drawn_outline(placed, line)
    pen = Pen.OPENING if placed.fit.fits else Pen.UNBUILDABLE
    drawing: list[Element] = [] if placed.fit.fits else [Fill(outline, pen, placed.key)]
    drawing.append(Stroke(outline, pen, placed.key, closed=True))
    return tuple(drawing)


def edges(placed: PlacedOpening, line: RoofLine) -> tuple[Rect, ...]:
    """The edges of a rough opening as rectangles; a sloping edge as many small ones."""
    outline = drawn_outline(placed, line)
    sides = pairwise((*outline, outline[0]))
    return tuple(bounds(pair) for a, b in sides for pair in pairwise(_along(a, b)))


def covered(member: Member) -> tuple[Rect, ...]:
    """The rectangles that a member takes up on face A; a raked header many small ones."""
    if member.role is not Role.HEADER or member.near[0][1] == member.near[1][1]:
        return ((member.left, member.bottom, member.right, member.top),)
    a, b, c, d = member.near
    under, over = _along(a, b), _along(d, c)
    pieces = zip(pairwise(under), pairwise(over), strict=True)
    return tuple(bounds((*low, *high)) for low, high in pieces)


def _along(a: XY, b: XY) -> list[XY]:
    """The ends of an edge, and points at most `APART` between them if it slopes."""
    slopes = a[0] != b[0] and a[1] != b[1]
    count = max(1, math.ceil(math.dist(a, b) / APART)) if slopes else 1
    shares = [n / count for n in range(count)]
    return [*((a[0] + s * (b[0] - a[0]), a[1] + s * (b[1] - a[1])) for s in shares), b]


def box(placed: PlacedBox) -> Drawing:
    """A box as a rectangle with an arrowhead that points to the stud it is fixed to.

    One that opens on the far face is seen through: its dashed outline alone.
    """
    corners = _corners(placed.left, placed.bottom, placed.right, placed.top)
    ok = placed.stud is not None and placed.blocked_by is None
    sound = Pen.FAR_BOX if placed.box.on_far_face else Pen.BOX
    pen = sound if ok else Pen.UNBUILDABLE
    middle = (placed.bottom + placed.top) / 2
    quarter = (placed.top - placed.bottom) / 4
    to_left = placed.box.side.value == "right"
    tip, tail = (placed.left, placed.right) if to_left else (placed.right, placed.left)
    waist = (tip + tail) / 2
    arrow = ((waist, middle + quarter), (tip, middle), (waist, middle - quarter))
    back: tuple[Element, ...] = (Fill(corners, pen, placed.key),) if pen is not Pen.FAR_BOX else ()
    return (
        *back,
        Stroke(corners, pen, placed.key, closed=True),
        Stroke(arrow, pen, placed.key),
    )


def roof(line: RoofLine, view: View) -> Drawing:
    """The roof line, and short strokes above it that tell which side is roof."""
    strokes: list[Element] = [Stroke(line.points(), Pen.ROOF)]
    spacing, reach = view.model(2.4), view.model(1.6)
    for segment in line.segments:
        run = (segment.right - segment.left) * math.hypot(1.0, segment.along)
        count = max(1, int(run / spacing))
        for n in range(count):
            x = segment.left + (n + 0.5) / count * (segment.right - segment.left)
            start = (x, segment.at(x))
            angle = segment.angle + math.pi / 4
            end = (start[0] + reach * math.cos(angle), start[1] + reach * math.sin(angle))
            strokes.append(Stroke((start, end), Pen.ABOVE_ROOF))
    return tuple(strokes)


def floor(run: float, view: View) -> Drawing:
    """The floor line, a little longer than the wall."""
    past = view.model(4.0)
    return (Stroke(((-past, 0.0), (run + past, 0.0)), Pen.FLOOR),)


def rafters(foot: tuple[Segment, ...]) -> Drawing:
    """The line that a wall on rafters stands on, as far as it lies under the roof."""
    ends = (((s.left, s.at(s.left)), (s.right, s.at(s.right))) for s in foot)
    return tuple(Stroke(points, Pen.ROOF) for points in ends)


def purlins(crossings: tuple[PurlinThrough, ...]) -> Drawing:
    """The purlins that pass through a wall, on face A, each with a cross from corner to corner."""
    drawing: list[Element] = []
    for crossing in crossings:
        (left, right), bottom, top = crossing.near, crossing.bottom, crossing.top
        outline = _corners(left, bottom, right, top)
        drawing.append(Fill(outline, Pen.PURLIN))
        drawing.append(Stroke(outline, Pen.PURLIN, closed=True))
        drawing.append(Stroke(((left, bottom), (right, top)), Pen.PURLIN))
        drawing.append(Stroke(((left, top), (right, bottom)), Pen.PURLIN))
    return tuple(drawing)


def _corners(left: float, bottom: float, right: float, top: float) -> tuple[XY, ...]:
    return ((left, bottom), (right, bottom), (right, top), (left, top))
