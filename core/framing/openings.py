"""The timber around an opening: kings, trimmers, header, sill, and the cripples of the layout."""

import math

import msgspec

from core.framing import keys
from core.framing.fit import framed_width
from core.framing.ground import foot, foot_height
from core.framing.header_build import spacers
from core.framing.heads import Over, head_line, plumb_rise
from core.framing.layout import CLEAR, Place
from core.framing.member import Member, Role
from core.framing.placed import PlacedOpening
from core.framing.sticks import flat_line, lying, raking, standing
from core.kept import Kept
from core.model import Header, HeaderKind, Opening, Side, Wall
from core.roof import RoofLine

SHORTEST = 6.0
"""The shortest block that can be cut and fixed at all, mm; common practice, no source."""


class Framed(msgspec.Struct, frozen=True):
    """An opening that fits: its outer edges, its head, and what its cripples stand between; mm.

    `rake` is the slope of its head, and `header_top` the line over its header, if it has one.
    """

    opening: Opening
    left: float
    right: float
    rake: float
    header_top: RoofLine | None
    sill_bottom: float | None


def framed(wall: Wall, placed: PlacedOpening) -> Framed:
    """The extent of an opening's framing, kings included."""
    opening, rake = placed.opening, placed.rake
    left, right = framed_width(wall, opening)
    has_header = opening.header.kind is not HeaderKind.NONE
    rise = plumb_rise(opening.header, rake)
    return Framed(
        opening,
        left,
        right,
        rake,
        head_line(opening, rake, wall.run, rise) if has_header else None,
        opening.sill.mm - wall.stud.thickness.mm if _has_sill(wall, opening) else None,
    )


def doorways(frames: tuple[Framed, ...]) -> tuple[tuple[float, float], ...]:
    """The left and right edges, mm, of the openings that go down to the floor."""
    stated = (f.opening for f in frames if f.opening.sill.mm <= CLEAR)
    return tuple((o.left.mm, o.left.mm + o.width.mm) for o in stated)


def around(wall: Wall, frame: Framed, over: Over, kept: Kept) -> tuple[Member, ...]:
    """Kings, trimmers, header and sill of an opening that fits, from left to right."""
    sides = [_side(wall, frame, side, over, kept) for side in (Side.LEFT, Side.RIGHT)]
    return (*sides[0], *_header(wall, frame), *_sill(wall, frame.opening), *sides[1])


def cripples(wall: Wall, frame: Framed, place: Place, over: Over, kept: Kept) -> tuple[Member, ...]:
    """The cripples that keep the layout at a place within an opening: above it, and below a sill.

    One stands above the header where the header reaches under its whole thickness, one below the
    sill where it stands clear of both trimmers. A cripple shorter than it is thick would split when
    it is nailed as a stud is: it becomes a block. One shorter than `SHORTEST` is left out: there
    header and plate are nailed to each other.
    """
    thickness, opening = wall.stud.thickness.mm, frame.opening
    made = []
    if frame.header_top is not None and _within(
        place.left, thickness, frame.left + thickness, frame.right - thickness
    ):
        key = keys.cripple(wall.letter, opening.id, "above", place.cause)
        on = (frame.header_top, frame.header_top)
        made.append(kept.of(standing, key, Role.CRIPPLE, wall.stud, place.left, on, over))
    right = opening.left.mm + opening.width.mm
    if frame.sill_bottom is not None and _within(place.left, thickness, opening.left.mm, right):
        key = keys.cripple(wall.letter, opening.id, "below", place.cause)
        top = flat_line(frame.sill_bottom, wall.run)
        under = (top, top)
        made.append(kept.of(standing, key, Role.CRIPPLE, wall.stud, place.left, foot(wall), under))
    return tuple(_as_block(m, thickness) for m in made if m and m.short_point >= SHORTEST - CLEAR)


def _as_block(cripple: Member, thickness: float) -> Member:
    """The cripple itself, or a block of its shape where it is shorter than it is thick."""
    if cripple.short_point >= thickness - CLEAR:
        return cripple
    return msgspec.structs.replace(cripple, role=Role.BLOCK)


def _within(left: float, thickness: float, low: float, high: float) -> bool:
    return left >= low - CLEAR and left + thickness <= high + CLEAR


def _side(wall: Wall, frame: Framed, side: Side, over: Over, kept: Kept) -> tuple[Member, ...]:
    """The king and the trimmer of one side, the outer one first on the left, last on the right."""
    thickness, on, opening = wall.stud.thickness.mm, foot(wall), frame.opening
    edge = opening.left.mm if side is Side.LEFT else opening.left.mm + opening.width.mm
    outward = -1 if side is Side.LEFT else 1
    trimmer_left = edge - thickness if side is Side.LEFT else edge
    head = head_line(opening, frame.rake, wall.run)
    king_key = keys.beside(wall.letter, opening.id, "king", side)
    trimmer_key = keys.beside(wall.letter, opening.id, "trimmer", side)
    king_left = trimmer_left + outward * thickness
    king = kept.of(standing, king_key, Role.KING, wall.stud, king_left, on, over)
    trimmer = kept.of(
        standing, trimmer_key, Role.TRIMMER, wall.stud, trimmer_left, on, (head, head)
    )
    pair = (king, trimmer) if side is Side.LEFT else (trimmer, king)
    return tuple(member for member in pair if member is not None)


def _header(wall: Wall, frame: Framed) -> tuple[Member, ...]:
    """The header: flat plies lie on each other; plies on edge are one member that counts them."""
    opening, header, thickness = frame.opening, frame.opening.header, wall.stud.thickness.mm
    if header.kind is HeaderKind.NONE:
        return ()
    left = opening.left.mm - thickness
    right = opening.left.mm + opening.width.mm + thickness
    flat = header.kind is HeaderKind.FLAT
    rise = header.timber.thickness.mm if flat else header.timber.width.mm
    (under,) = head_line(opening, frame.rake, wall.run).segments
    made = []
    for layer in range(header.plies if flat else 1):
        key = keys.across(wall.letter, opening.id, "header", layer)
        line = under.raised(layer * rise * math.hypot(1.0, frame.rake))
        ply = raking(key, Role.HEADER, header.timber, left, right, line, rise)
        made.append(ply if flat else _built_up(ply, header))
    return tuple(made)


def _built_up(ply: Member, header: Header) -> Member:
    """The plies of a header on edge as one member, with what stands between them."""
    spacer = header.spacer.mm if header.spacer is not None and spacers(header) else 0.0
    return msgspec.structs.replace(ply, count=header.plies, spacer=spacer)


def lowest_sill(wall: Wall, opening: Opening) -> float:
    """The least height of a sill whose timber lies clear on the sole plate, mm."""
    left = opening.left.mm
    return foot_height(wall, left, left + opening.width.mm) + wall.stud.thickness.mm


def _has_sill(wall: Wall, opening: Opening) -> bool:
    return opening.sill.mm >= lowest_sill(wall, opening) - CLEAR


def _sill(wall: Wall, opening: Opening) -> tuple[Member, ...]:
    """The flat sill between the trimmers of a window."""
    if not _has_sill(wall, opening):
        return ()
    rise = wall.stud.thickness.mm
    key = keys.across(wall.letter, opening.id, "sill", 0)
    right = opening.left.mm + opening.width.mm
    return (lying(key, Role.SILL, wall.stud, opening.left.mm, right, opening.sill.mm - rise, rise),)
