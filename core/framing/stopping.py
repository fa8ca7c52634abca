"""Why a thing that is being moved goes no farther."""

import enum

from core.framing.fit import under_plates
from core.framing.heads import highest_head
from core.framing.layout import CLEAR
from core.framing.sharing import beside_another, beside_ends
from core.model import Opening, Wall
from core.roof import RoofLine


class Stop(enum.Enum):
    """What a moved thing meets."""

    SLOPE = "slope"
    END = "end"
    THING = "thing"
    FLOOR = "floor"


def opening_stop(
    wall: Wall,
    opening: Opening,
    over: tuple[RoofLine, RoofLine],
    others: tuple[Opening, ...],
    left: float,
) -> tuple[Stop | None, str]:
    """What keeps an opening from standing at `left`, mm, and the id of the opening that does.

    None where nothing keeps it from there. The ends are told before all else, then the slope.
    """
    if not _within(beside_ends(wall, opening), left):
        return Stop.END, ""
    if not _within(under_plates(wall, opening, over), left):
        return Stop.SLOPE, ""
    for other in others:
        if not _within(beside_another(wall, opening, other), left):
            return Stop.THING, other.id
    return None, ""


def highest_sill(wall: Wall, opening: Opening, over: tuple[RoofLine, RoofLine]) -> float:
    """The highest sill, mm, with which an opening of its height passes under the plates."""
    tall = opening.head.mm - opening.sill.mm
    return highest_head(opening, wall.stud.thickness.mm, over) - tall


def _within(ranges: tuple[tuple[float, float], ...], left: float) -> bool:
    return any(low - CLEAR <= left <= high + CLEAR for low, high in ranges)
