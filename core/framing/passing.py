"""Purlins that pass through a wall: its plates cut at them, and the members they run into."""

import msgspec

from core.framing import keys
from core.framing.bending import courses, height_on, length_along, stretch_at, underside
from core.framing.cut_short import meets
from core.framing.cuts import plate_facet
from core.framing.dividing import divided, piece_of
from core.framing.ending import Line, ended
from core.framing.fitted import reaches_plates
from core.framing.frame import Frame
from core.framing.layout import CLEAR
from core.framing.marks import Mark
from core.framing.member import XY, Facet, Member, Role
from core.framing.notching import lines_lost, notch_for, notched
from core.model import Passing, Side, Wall
from core.roof import PurlinThrough, Segment

Course = tuple[XY, ...]
"""The corners of one edge of a plate from left to right."""

_LEVEL = (1.0, 0.0)
"""The way along the floor: a plumb cut is square to it."""


class Clash(msgspec.Struct, frozen=True):
    """A member, by key, that a purlin runs into.

    `edges` are the purlin's, with its gap, along the wall. `places` are the nearest left edges (mm)
    on either side at which it would stand clear of the purlin, of other studs and of the wall's
    ends.
    """

    key: str
    purlin: str
    left: float
    edges: tuple[float, float]
    places: tuple[float, ...]


class Passed(msgspec.Struct, frozen=True):
    """A frame and its marks with the plates cut at the purlins, and what the purlins run into.

    `cut` names each purlin that cuts a plate, with the distance along the plate that is left out.
    """

    frame: Frame
    marks: tuple[Mark, ...]
    clashes: tuple[Clash, ...] = ()
    cut: tuple[tuple[str, float], ...] = ()


def pass_purlins(
    wall: Wall, frame: Frame, marks: tuple[Mark, ...], crossings: tuple[PurlinThrough, ...]
) -> Passed:
    """The frame with every top plate stopped at the purlins that it would run into.

    A plate ends plumb at the purlin's faces, its gap away, and goes on as another piece beyond.
    Standing members stay where they are; those to be notched round a purlin are notched, and the
    others that it runs into are told as clashes. Where a notch takes the edge that was lined, the
    marks stand for the other edge.
    """
    if not crossings:
        return Passed(frame, marks)
    frame = _notched(frame, crossings)
    marks = tuple(_other_edge(mark, frame) for mark in marks)
    pieces: dict[str, list[Member]] = {}
    cut: dict[str, float] = {}
    for member in (m for m in frame.members if m.role is Role.TOP_PLATE):
        pieces[member.key] = [member]
        for crossing in crossings:
            *before, last = pieces[member.key]
            if _meets(last, crossing):
                parts = _parts(wall, last, crossing, keys.past(member.key, crossing.id))
                pieces[member.key] = [*before, *parts]
                course = underside(member)
                ends = [length_along(course, x) for x in (crossing.left, crossing.right)]
                cut[crossing.id] = ends[1] - ends[0]
    moved = tuple(_on_piece(mark, pieces) for mark in marks)
    clashes = tuple(_clashes(wall, frame, crossings))
    return Passed(divided(frame, pieces), moved, clashes, tuple(cut.items()))


def _notched(frame: Frame, crossings: tuple[PurlinThrough, ...]) -> Frame:
    """The frame with its studs notched round the purlins that ask for it."""
    around = tuple(c for c in crossings if c.passing is Passing.NOTCHED)
    if not around:
        return frame
    made = []
    for member in frame.members:
        upright = reaches_plates(member) and not member.lean
        met = [c for c in around if upright and meets(member, c)]
        notches = tuple(n for c in met if (n := notch_for(member, c)) is not None)
        made.append(notched(member, notches) if notches else member)
    return msgspec.structs.replace(frame, members=tuple(made))


def _other_edge(mark: Mark, frame: Frame) -> Mark:
    """The mark of the stud's other edge, if the lined one ends in a notch."""
    member, plate = frame.member(mark.member), frame.member(mark.plate)
    if member is None or plate is None or lines_lost(member.notches) != {mark.edge}:
        return mark
    edge = mark.edge.other
    x = member.left if edge is Side.LEFT else member.right
    ahead = 1.0 if mark.origin is Side.LEFT else -1.0
    along_sole = mark.along_sole + ahead * (x - mark.x)
    along_top = mark.along_top
    if along_top is not None:
        course = underside(plate)
        along_top += ahead * (length_along(course, x) - length_along(course, mark.x))
    return msgspec.structs.replace(mark, edge=edge, x=x, along_sole=along_sole, along_top=along_top)


def stands_clear(wall: Wall, left: float, span: XY, crossings: tuple[PurlinThrough, ...]) -> bool:
    """Whether a stud with this left edge, between the heights of `span`, is clear of purlins."""
    right = left + wall.stud.thickness.mm
    return all(
        right <= c.left + CLEAR
        or left >= c.right - CLEAR
        or span[1] <= c.bottom - c.gap + CLEAR
        or span[0] >= c.top + c.gap - CLEAR
        for c in crossings
    )


def _meets(plate: Member, crossing: PurlinThrough) -> bool:
    """Whether the plate runs through the purlin, which may hang above or below it."""
    left, right = max(plate.left, crossing.left), min(plate.right, crossing.right)
    if left >= right:
        return False
    under, over = courses(plate.near)
    low = min(height_on(under, x) for x in (left, right))
    high = max(height_on(over, x) for x in (left, right))
    return low < crossing.top - CLEAR and high > crossing.bottom + CLEAR


def _parts(wall: Wall, plate: Member, crossing: PurlinThrough, key: str) -> list[Member]:
    """The pieces of a plate before and after a purlin, if there is room; the latter gets `key`."""
    before = (crossing.near[0] - crossing.gap, crossing.far[0] - crossing.gap)
    after = (crossing.near[1] + crossing.gap, crossing.far[1] + crossing.gap)
    found = []
    if min(before) > plate.left + CLEAR:
        found.append(_ended(wall, plate, before, Side.RIGHT))
    if max(after) < plate.right - CLEAR:
        piece = _ended(wall, plate, after, Side.LEFT)
        found.append(msgspec.structs.replace(piece, key=key))
    return found


def _ended(wall: Wall, plate: Member, at: tuple[float, float], side: Side) -> Member:
    """The plate ended plumb on one side, at these places on face A and on the far face."""
    under, behind = underside(plate), courses(plate.far)[0]
    here, there = (height_on(course, x) for course, x in zip((under, behind), at, strict=True))
    slope = _slope_at(under, at[0])
    across = (there - here - slope * (at[1] - at[0])) / wall.stud.width.mm
    facet = _plumb(Segment(0.0, 0.0, 0.0, slope, across), at[1] - at[0], wall.stud.width.mm)
    lines = Line((at[0], here), _LEVEL), Line((at[1], there), _LEVEL)
    return ended(plate, lines, side, facet)


def _plumb(lies: Segment, skew: float, away: float) -> Facet:
    facet = plate_facet(lies, (0.0, 1.0, 0.0), (skew, 0.0, away))
    return msgspec.structs.replace(facet, face_up="any") if facet.is_square else facet


def _slope_at(course: Course, x: float) -> float:
    """Rise over run of a course at x; its ends go on straight."""
    (x0, y0), (x1, y1) = stretch_at(course, x)
    return (y1 - y0) / (x1 - x0)


def _on_piece(mark: Mark, pieces: dict[str, list[Member]]) -> Mark:
    """The mark named by the piece of plate that it is on, and how far on that piece begins."""
    parts = pieces.get(mark.plate)
    if not parts or mark.along_top is None:
        return mark
    piece = piece_of(mark, parts)
    course = underside(piece)
    end = course[0 if mark.origin is Side.LEFT else -1][0]
    begins = mark.along_top - abs(length_along(course, mark.x) - length_along(course, end))
    begins = 0.0 if abs(begins) < CLEAR else begins
    return msgspec.structs.replace(mark, plate=piece.key, begins=begins)


def _clashes(wall: Wall, frame: Frame, crossings: tuple[PurlinThrough, ...]) -> list[Clash]:
    found = []
    for member in (m for m in frame.members if m.role is not Role.TOP_PLATE):
        passed = {notch.purlin for notch in member.notches}
        for crossing in crossings:
            if crossing.id not in passed and meets(member, crossing):
                places = _places(wall, frame, member, crossing, crossings)
                edges = (crossing.left, crossing.right)
                found.append(Clash(member.key, crossing.id, member.left, edges, places))
    return found


def _places(
    wall: Wall,
    frame: Frame,
    member: Member,
    crossing: PurlinThrough,
    crossings: tuple[PurlinThrough, ...],
) -> tuple[float, ...]:
    """The left edges on either side of a purlin at which a member would stand clear."""
    wide = member.right - member.left
    others = [m for m in frame.members if m.key != member.key and not m.lies]
    found = []
    for left in (crossing.left - wide, crossing.right):
        inside = left >= -CLEAR and left + wide <= wall.run + CLEAR
        free = all(
            m.right <= left + CLEAR
            or m.left >= left + wide - CLEAR
            or m.top <= member.bottom + CLEAR
            or m.bottom >= member.top - CLEAR
            for m in others
        )
        span = (member.bottom, member.top)
        if inside and free and stands_clear(wall, left, span, crossings):
            found.append(left)
    return tuple(found)
