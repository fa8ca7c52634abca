"""The cautions about how top plates lie over their studs."""

from core.checks.caution import Caution, Severity
from core.framing import Frame, Role
from core.model import Habits, PlateLie, Wall
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


def too_long_plates(wall: Wall, frame: Frame, habits: Habits) -> list[Caution]:
    """Plates longer than the stock stated for them that no stud joins at the lap stated."""
    rules = habits.plates
    if rules is None or rules.longest is None:
        return []
    stock, lap = Mm(rules.longest.mm), Mm(rules.lap.mm if rules.lap is not None else 0.0)
    texts = [
        (
            m.key,
            message("plate.too-long", letter=wall.letter, run=Mm(m.overall), stock=stock, lap=lap),
        )
        for m in frame.members
        if m.key in frame.too_long and m.role is not Role.SILL
    ]
    return [Caution(Severity.UNBUILDABLE, key, text) for key, text in texts]
