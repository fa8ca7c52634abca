"""The caution of a wall that stands on rafters and has openings stated in it."""

from collections.abc import Iterator

from core.checks.caution import Caution, Severity
from core.framing import keys, spoken
from core.model import Wall
from core.wording import message


def rafter_cautions(wall: Wall) -> Iterator[Caution]:
    """Each opening of a wall that stands on rafters: none is framed in such a wall."""
    for opening in wall.openings if wall.stands_on is not None else ():
        text = message("opening.on-rafters", letter=wall.letter, opening=spoken(opening.id))
        yield Caution(Severity.UNBUILDABLE, keys.opening(wall.letter, opening.id), text)
