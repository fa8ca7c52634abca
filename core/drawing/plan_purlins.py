"""Purlins and beams from above, as far as they are in the room."""

import msgspec

from core.drawing.elements import Drawing, Stroke
from core.drawing.pen import Pen
from core.lengths import Length
from core.model import Purlin, Room
from core.roof import purlin_outline


def purlins(room: Room) -> Drawing:
    """The outline of each; one that runs on through the room ends at its gables."""
    return tuple(Stroke(_outline(room, p), Pen.PURLIN, closed=True) for p in room.purlins)


def _outline(room: Room, purlin: Purlin) -> tuple[tuple[float, float], ...]:
    start = purlin.start or Length(0.0)
    return purlin_outline(
        room, msgspec.structs.replace(purlin, start=start, end=purlin.end or room.length)
    )
