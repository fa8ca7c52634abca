"""The cautions that a wall's frame gives rise to."""

from core.checks.caution import Caution, Severity
from core.framing import Frame, PlacedBox, PlacedOpening
from core.model import Wall
from core.roof import RoofLine
from core.wording import Message, Mm, message


def wall_cautions(
    wall: Wall, line: RoofLine, frame: Frame, boxes: tuple[PlacedBox, ...]
) -> tuple[Caution, ...]:
    """What cannot be built as stated in this wall, then what will trouble its builder."""
    found = [
        *(_opening(wall, placed) for placed in frame.openings if not placed.fit.fits),
        *(_no_room(wall, key) for key in frame.no_room),
        *(_too_low(wall, key) for key in frame.too_low),
        *(c for box in boxes for c in _box(wall, box)),
        *_narrow_plate(wall, line),
    ]
    return tuple(sorted(found, key=lambda c: list(Severity).index(c.severity)))


def fit_message(placed: PlacedOpening, letter: str) -> Message:
    """Why an opening does not fit where it is, with every range of places where it does."""
    name = placed.opening.id
    if not placed.fit.ranges:
        return message("opening.fits-nowhere", opening=name, letter=letter)
    ranges = tuple(
        message("opening.range", low=Mm(low), high=Mm(high)) for low, high in placed.fit.ranges
    )
    left = Mm(placed.opening.left.mm)
    return message("opening.does-not-fit", opening=name, letter=letter, left=left, ranges=ranges)


def _opening(wall: Wall, placed: PlacedOpening) -> Caution:
    return Caution(Severity.UNBUILDABLE, placed.key, fit_message(placed, wall.letter))


def _no_room(wall: Wall, key: str) -> Caution:
    return Caution(Severity.UNBUILDABLE, key, message("stud.no-room", stud=key, letter=wall.letter))


def _too_low(wall: Wall, key: str) -> Caution:
    return Caution(Severity.UNBUILDABLE, key, message("stud.too-low", stud=key, letter=wall.letter))


def _box(wall: Wall, placed: PlacedBox) -> list[Caution]:
    found = []
    if placed.stud is None:
        text = message("box.no-stud", box=placed.box.id, letter=wall.letter)
        found.append(Caution(Severity.UNBUILDABLE, placed.key, text))
    elif placed.blocked_by is not None:
        text = message("box.blocked", box=placed.box.id, letter=wall.letter)
        found.append(Caution(Severity.UNBUILDABLE, placed.key, text))
    return found


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
