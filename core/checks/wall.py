"""The cautions that a wall's frame gives rise to."""

from core.checks.caution import Caution, Severity
from core.checks.header import thick_headers
from core.checks.layout import edge_cautions
from core.framing import (
    Frame,
    PlacedBox,
    PlacedOpening,
    keys,
    lowest_sill,
    spoken,
    wanted_left,
)
from core.model import Wall
from core.roof import RoofLine
from core.wording import Message, Mm, message


def wall_cautions(
    wall: Wall, line: RoofLine, far: RoofLine, frame: Frame, boxes: tuple[PlacedBox, ...]
) -> tuple[Caution, ...]:
    """What cannot be built as stated in this wall, then what will trouble its builder."""
    found = [
        *(_opening(wall, placed) for placed in frame.openings if not placed.fit.fits),
        *(_not_framed(wall, key, "stud.no-room") for key in frame.no_room),
        *(_not_framed(wall, key, "stud.too-low") for key in frame.too_low),
        *(c for box in boxes for c in _box(wall, box)),
        *(_low_sill(wall, placed) for placed in frame.openings if _sill_too_low(wall, placed)),
        *_narrow_plate(wall, line),
        *_ridge_inside(wall, line, far),
        *thick_headers(wall, frame.openings),
        *edge_cautions(wall, frame),
    ]
    return tuple(sorted(found, key=lambda c: list(Severity).index(c.severity)))


def range_message(low: float, high: float) -> Message:
    """A range of places in mm in words; one that is a single place says just that."""
    if high - low <= 1e-3:
        return message("opening.only-at", at=Mm(low))
    return message("opening.range", low=Mm(low), high=Mm(high))


def fit_message(placed: PlacedOpening, letter: str) -> Message:
    """Why an opening does not fit where it is, with every range of places where it does."""
    name = spoken(placed.opening.id)
    if not placed.fit.ranges:
        return message("opening.fits-nowhere", opening=name, letter=letter)
    ranges = tuple(range_message(low, high) for low, high in placed.fit.ranges)
    left = Mm(placed.opening.left.mm)
    return message("opening.does-not-fit", opening=name, letter=letter, left=left, ranges=ranges)


def _opening(wall: Wall, placed: PlacedOpening) -> Caution:
    return Caution(Severity.UNBUILDABLE, placed.key, fit_message(placed, wall.letter))


def _not_framed(wall: Wall, key: str, message_id: str) -> Caution:
    """A stud that is wanted and cannot stand where it is wanted."""
    if keys.is_double(key):
        message_id, key = "stud.no-room-beside", key.rpartition("/")[0]
    at = Mm(wanted_left(wall, key) or 0.0)
    return Caution(Severity.UNBUILDABLE, key, message(message_id, at=at, letter=wall.letter))


def _box(wall: Wall, placed: PlacedBox) -> list[Caution]:
    found = []
    if placed.stud is None:
        text = message("box.no-stud", box=spoken(placed.box.id), letter=wall.letter)
        found.append(Caution(Severity.UNBUILDABLE, placed.key, text))
    elif placed.blocked_by is not None:
        text = message("box.blocked", box=spoken(placed.box.id), letter=wall.letter)
        found.append(Caution(Severity.UNBUILDABLE, placed.key, text))
    return found


def _sill_too_low(wall: Wall, placed: PlacedOpening) -> bool:
    return 0.0 < placed.opening.sill.mm < lowest_sill(wall, placed.opening) - 1e-6


def _low_sill(wall: Wall, placed: PlacedOpening) -> Caution:
    text = message(
        "opening.low-sill",
        opening=spoken(placed.opening.id),
        letter=wall.letter,
        need=Mm(lowest_sill(wall, placed.opening)),
    )
    return Caution(Severity.UNBUILDABLE, placed.key, text)


def _ridge_inside(wall: Wall, near: RoofLine, far: RoofLine) -> list[Caution]:
    """A wall along a ridge, with the ridge between its faces: no one cut fits its stud tops."""
    if len(near.segments) != 1 or len(far.segments) != 1:
        return []
    over, behind = near.segments[0], far.segments[0]
    reached = over.height + over.across * wall.stud.width.mm
    if abs(reached - behind.height) <= 1e-3:
        return []
    text = message("wall.ridge-inside", letter=wall.letter)
    return [Caution(Severity.UNBUILDABLE, wall.letter, text)]


def _narrow_plate(wall: Wall, line: RoofLine) -> list[Caution]:
    """A tilted top plate has to cover the mitred stud end: stud width over the cosine.

    For a 2x4 stud at 9 in 12 that is 3 1/2 / 0.8 = 4 3/8 in., so a 2x6.
    """
    have = wall.top_plate.timber.width.mm
    tilt = max(abs(s.across) for s in line.segments)
    need = wall.stud.width.mm * (1 + tilt**2) ** 0.5
    if tilt < 1e-9 or have >= need - 1e-6:
        return []
    text = message("plate.narrow", letter=wall.letter, need=Mm(need), have=Mm(have))
    return [Caution(Severity.WARNING, wall.letter, text)]
