"""The caution of a header that is thicker than the wall it stands in."""

from core.checks.caution import Caution, Severity
from core.framing import PlacedOpening, header_depth, spoken, thickest_spacer
from core.model import HeaderKind, Wall
from core.wording import Mm, message


def thick_headers(wall: Wall, placed: tuple[PlacedOpening, ...]) -> list[Caution]:
    """The headers that stand out from the faces of the studs, with the spacer that would not."""
    return [_thick(wall, p) for p in placed if p.fit.fits and _too_thick(wall, p)]


def _too_thick(wall: Wall, placed: PlacedOpening) -> bool:
    return header_depth(placed.opening.header) > wall.stud.width.mm + 1e-6


def _thick(wall: Wall, placed: PlacedOpening) -> Caution:
    header = placed.opening.header
    spacer = thickest_spacer(header, wall.stud.width.mm)
    turnable = header.kind is HeaderKind.ON_EDGE and header.spacer is not None
    message_id = "header.thick" if spacer is None or not turnable else "header.thick-spacer"
    text = message(
        message_id,
        opening=spoken(placed.opening.id),
        letter=wall.letter,
        have=Mm(header_depth(header)),
        need=Mm(wall.stud.width.mm),
        spacer=Mm(spacer or 0.0),
    )
    return Caution(Severity.WARNING, placed.key, text)
