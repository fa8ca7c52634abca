"""The cautions about how top plates lie over their studs."""

from core.checks.caution import Caution, Severity
from core.framing import Frame
from core.model import PlateLie, Wall
from core.wording import Mm, message

_NARROW = {
    None: "plate.narrow",
    PlateLie.RIPPED: "plate.narrow-rip",
    PlateLie.LEVEL: "plate.narrow-level",
}


def narrow_plate(wall: Wall, frame: Frame) -> list[Caution]:
    """Stock too narrow for the plates that it is to make, with the least width that would do."""
    narrow = [s for s in frame.sections if not s.is_wide_enough]
    if not narrow:
        return []
    worst = max(narrow, key=lambda s: s.need)
    text = message(_NARROW[worst.lie], letter=wall.letter, need=Mm(worst.need), have=Mm(worst.have))
    return [Caution(Severity.WARNING, wall.letter, text)]
