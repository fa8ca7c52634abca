"""The room cut across, looking along the ridge: what is there, and what is stated of it.

Model mm: x across from the left eave wall's framing face, y up from the subfloor. Figures carry the
key of what they state: "width", "eave/left", "pitch/left/0", "break/left/1", "run/left", "ridge",
"ceiling".
"""

from itertools import pairwise

from core.drawing.elements import XY, Align, Drawing, Element, Fill, Stroke, Text
from core.drawing.pen import Pen
from core.drawing.section_figures import section_figures
from core.drawing.view import View
from core.model import Dormer, KeptClear, Purlin, Room, Wall, Wing
from core.roof import (
    Roof,
    RoofLine,
    RoomSection,
    below,
    purlin_across,
    roof_line,
    roof_of,
    section_of,
    underside,
)
from core.wording import Wording

EAVE_WALL = 120.0
"""How thick the eave walls are drawn; nobody states it, mm."""

TAIL = 200.0
"""How far rafters are drawn past the eave walls; nobody states it, mm."""

_ALONG = 0.2
"""A wall that goes less than this across for each mm along is seen from its end."""


def section(room: Room, view: View, wording: Wording, walls: tuple[Wall, ...] = ()) -> Drawing:
    """The section with its figures; `walls` are seen in it faintly."""
    cut = section_of(room)
    return (
        *_beyond(room, cut, walls, view),
        *_aside(room, cut),
        *_eave_walls(cut),
        *_rafters(room, cut),
        *_beam(room, cut),
        *(part for purlin in room.purlins for part in _purlin(room, purlin)),
        *_overhead(cut),
        *section_figures(room, cut, view, wording, EAVE_WALL + TAIL),
    )


def outer(cut: RoomSection) -> tuple[float, float]:
    """How far the rafters' tails reach to the left and to the right, mm."""
    return -EAVE_WALL - TAIL, cut.width + EAVE_WALL + TAIL


def _beyond(room: Room, cut: RoomSection, walls: tuple[Wall, ...], view: View) -> Drawing:
    """Walls and chimneys behind the cut, up to what is overhead; walls seen endwise lettered."""
    drawn: list[Element] = []
    for wall in sorted(walls, key=_from_end):
        left, right = _reach(wall, cut)
        if right > left:
            drawn += _upright(cut, left, right)
            drawn += _letter(wall, left, right, view) if _from_end(wall) else ()
    for kept in room.kept_clear:
        drawn += _kept_clear(cut, kept)
    return tuple(drawn)


def _aside(room: Room, cut: RoomSection) -> Drawing:
    """Dormers and wings behind the cut: roofs and fronts, where they stand over the room's."""
    roof = Roof(roof_of(room).parts)
    parts: tuple[Dormer | Wing, ...] = (*room.dormers, *room.wings)
    drawn: list[Element] = []
    for part in parts:
        middle = part.start.mm + part.width.mm / 2
        line = roof_line(roof, (0.0, middle), (cut.width, middle))
        for low in below(cut.rafters, line):
            tops = [
                (x, over.at(x))
                for over in line.segments
                if max(low.left, over.left) < min(low.right, over.right)
                for x in (max(low.left, over.left), min(low.right, over.right))
            ]
            ends = ((low.left, low.at(low.left)), (low.right, low.at(low.right)))
            drawn.append(Stroke((ends[0], *tops, ends[1]), Pen.BEYOND))
    return tuple(drawn)


def _from_end(wall: Wall) -> bool:
    (u0, v0), (u1, v1) = wall.chalk
    return abs(u1 - u0) <= _ALONG * abs(v1 - v0)


def _reach(wall: Wall, cut: RoomSection) -> tuple[float, float]:
    """How far across a wall reaches, its thickness included, as far as it is in the room, mm."""
    (u0, v0), (u1, v1) = wall.chalk
    aside = -(v1 - v0) / wall.run * wall.stud.width.mm if wall.run else 0.0
    across = (u0, u1, u0 + aside, u1 + aside)
    return max(0.0, min(across)), min(cut.width, max(across))


def _kept_clear(cut: RoomSection, kept: KeptClear) -> Drawing:
    """A chimney or duct up to the roof over it; one that leans as it leans."""
    left, right = kept.across.mm, kept.across.mm + kept.wide.mm
    if kept.up_to is None:
        return _upright(cut, max(0.0, left), min(cut.width, right))
    tops = []
    for aside in (0.0, kept.wide.mm):
        high = cut.over.height(left + aside)
        for _ in range(50):
            high = cut.over.height(kept.corner_at(high)[0] + aside)
        tops.append((kept.corner_at(high)[0] + aside, high))
    outline = ((left, 0.0), *tops, (right, 0.0))
    return Fill(outline, Pen.BEYOND), Stroke(outline, Pen.BEYOND)


def _upright(cut: RoomSection, left: float, right: float) -> Drawing:
    """What stands on the floor from left to right, as high as the room is there."""
    if right <= left:
        return ()
    tops = [
        p
        for s in cut.over.between(left, right)
        for p in ((s.left, s.at(s.left)), (s.right, s.at(s.right)))
    ]
    outline = ((left, 0.0), *tops, (right, 0.0))
    return Fill(outline, Pen.BEYOND), Stroke(outline, Pen.BEYOND)


def _letter(wall: Wall, left: float, right: float, view: View) -> Drawing:
    at = ((left + right) / 2, -view.model(view.size * 1.0))
    return (Text(wall.letter, at, view.size, Pen.NOTE, align=Align.MIDDLE),)


def _eave_walls(cut: RoomSection) -> Drawing:
    """The two walls at the eaves, and the floor between."""
    first, last = cut.rafters.segments[0], cut.rafters.segments[-1]
    drawn: list[Element] = []
    for segment, face, outside in (
        (first, 0.0, -EAVE_WALL),
        (last, cut.width, cut.width + EAVE_WALL),
    ):
        if segment.at(face) > 0.0:
            ends = (face, outside)
            outline = ((face, 0.0), *((x, max(segment.at(x), 0.0)) for x in ends), (outside, 0.0))
            drawn += [Fill(outline, Pen.EXISTING), Stroke(outline, Pen.EXISTING, closed=True)]
    floor = ((-EAVE_WALL, 0.0), (cut.width + EAVE_WALL, 0.0))
    return (*drawn, Stroke(floor, Pen.FLOOR))


def _rafters(room: Room, cut: RoomSection) -> Drawing:
    """The rafters from the side, from tail to tail, with their cuts where they meet."""
    low = cut.rafters
    high = underside(low, -room.rafter.timber.width.mm)
    feet, tops = _with_tails(low, cut), _with_tails(high, cut)
    outline = (*feet, *reversed(tops))
    cuts = [] if len(feet) != len(tops) else list(zip(feet[1:-1], tops[1:-1], strict=True))
    return (
        Fill(outline, Pen.ROOF_TIMBER),
        Stroke(outline, Pen.ROOF_TIMBER, closed=True),
        *(Stroke(pair, Pen.ROOF_TIMBER) for pair in cuts),
    )


def _with_tails(line: RoofLine, cut: RoomSection) -> list[XY]:
    left, right = outer(cut)
    first, last = line.segments[0], line.segments[-1]
    breaks = [(a.right, a.at(a.right)) for a, _ in pairwise(line.segments)]
    return [(left, first.at(left)), *breaks, (right, last.at(right))]


def _beam(room: Room, cut: RoomSection) -> Drawing:
    """The beam under the ridge, up to the rafters."""
    if room.ridge_beam is None or cut.ridge is None:
        return ()
    half, foot = room.ridge_beam.width.mm / 2, room.ridge_beam.underside.mm
    ridge, top = cut.ridge
    sides = [(u, cut.rafters.height(u)) for u in (ridge + half, ridge - half)]
    if min(height for _, height in sides) <= foot:
        return ()
    outline = (
        (ridge - half, foot),
        (ridge + half, foot),
        sides[0],
        (ridge, top),
        sides[1],
    )
    return Fill(outline, Pen.ROOF_TIMBER), Stroke(outline, Pen.ROOF_TIMBER, closed=True)


def _purlin(room: Room, purlin: Purlin) -> Drawing:
    """A purlin where it is cut; nothing of one that does not reach the cut, or runs along it."""
    at = purlin_across(room, purlin, room.length.mm / 2)
    if at is None:
        return ()
    (left, right), low = at, purlin.underside.mm
    high = low + purlin.timber.width.mm
    outline = ((left, low), (right, low), (right, high), (left, high))
    return Fill(outline, Pen.PURLIN), Stroke(outline, Pen.PURLIN, closed=True)


def _overhead(cut: RoomSection) -> Drawing:
    """What is over the room, heavy: rafters' undersides, the flat ceiling, a beam's underside."""
    return (Stroke(cut.over.points(), Pen.ROOF),)
