"""The cautions that a wall's frame gives rise to."""

from core.checks.caution import Caution, Severity
from core.checks.header import thick_headers
from core.checks.layout import edge_cautions
from core.checks.plates import narrow_plate, too_long_plates
from core.checks.raked import raked_leaves
from core.checks.saw import saw_cautions
from core.checks.stock import long_pieces
from core.framing import (
    Frame,
    PlacedBox,
    PlacedOpening,
    keys,
    lowest_sill,
    spoken,
    wanted_left,
)
from core.model import USUAL_SAW, Habits, Wall
from core.roof import RoofLine
from core.wording import Message, Mm, message


def wall_cautions(
    wall: Wall,
    line: RoofLine,
    far: RoofLine,
    frame: Frame,
    boxes: tuple[PlacedBox, ...],
    habits: Habits,
) -> tuple[Caution, ...]:
    """What cannot be built as stated in this wall, then what will trouble its builder."""
    found = [
        *(_opening(wall, placed) for placed in frame.openings if not placed.fit.fits),
        *(_not_framed(wall, key, "stud.no-room") for key in frame.no_room),
        *(_not_framed(wall, key, "stud.too-low") for key in frame.too_low),
        *(c for box in boxes for c in _box(wall, box)),
        *(_low_sill(wall, placed) for placed in frame.openings if _sill_too_low(wall, placed)),
        *narrow_plate(wall, frame),
        *saw_cautions(wall, frame, habits.saw or USUAL_SAW),
        *too_long_plates(wall, frame, habits),
        *long_pieces(wall, frame, habits),
        *_ridge_inside(wall, line, far),
        *thick_headers(wall, frame.openings),
        *raked_leaves(wall, frame.openings),
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
    name, raked = spoken(placed.opening.id), placed.opening.is_raked
    if not placed.fit.ranges:
        nowhere = "opening.fits-nowhere-raked" if raked else "opening.fits-nowhere"
        return message(nowhere, opening=name, letter=letter)
    ranges = tuple(range_message(low, high) for low, high in placed.fit.ranges)
    left = Mm(placed.opening.left.mm)
    message_id = "opening.does-not-fit-raked" if raked else "opening.does-not-fit"
    return message(message_id, opening=name, letter=letter, left=left, ranges=ranges)


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
    """A wall along a ridge, with the ridge between its faces: no one cut fits its stud tops.

    Under a level plate they are square through the wall, whatever is overhead.
    """
    if wall.top_plate.is_level:
        return []
    if len(near.segments) != 1 or len(far.segments) != 1:
        return []
    over, behind = near.segments[0], far.segments[0]
    reached = over.height + over.across * wall.stud.width.mm
    if abs(reached - behind.height) <= 1e-3:
        return []
    text = message("wall.ridge-inside", letter=wall.letter)
    return [Caution(Severity.UNBUILDABLE, wall.letter, text)]
