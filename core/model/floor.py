"""What the floor has before any wall is framed: the stair's opening, and walls that stand there."""

import msgspec

from core.lengths import Length
from core.model.point import Point


class StairOpening(msgspec.Struct, frozen=True):
    """The opening in the floor for a stair, which no wall may stand across.

    Its corner nearest to the left eave wall and the start of the room is at `across`, `along`; it
    is `wide` across and `deep` along.
    """

    id: str
    across: Length
    along: Length
    wide: Length
    deep: Length


class ExistingWall(msgspec.Struct, frozen=True):
    """A wall that stands there already, as measured: never framed, but walls meet it.

    The line from its left end to its right one runs along one face; it is `thickness` thick on the
    far side of that, as walls to be framed are.
    """

    id: str
    left_end: Point
    right_end: Point
    thickness: Length
