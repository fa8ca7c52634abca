"""Splitting a wall that cannot go up whole into panels that can."""

import msgspec

from core.framing import Frame, Role
from core.site.floor import floor_for
from core.site.surroundings import Surroundings
from core.site.swing import Laid, Place
from core.site.tilt import Points, passes


class Panel(msgspec.Struct, frozen=True):
    """A stretch of wall, from `left` to `right` (mm), that is tilted up from one side."""

    left: float
    right: float
    laid: Laid


def panels(
    around: Surroundings, cuts: tuple[float, ...], points: Points, short: float
) -> tuple[Panel, ...]:
    """The fewest panels that go up one by one, each built `short` mm less high; () if none do.

    `cuts` are the ends of the wall and the x at which it may be split; each has points of its own
    among the `points`, since the corner of a panel may come nearer to the roof than its middle.
    """
    may = {
        laid: {p for p, higher in points if passes(around, p, higher, laid, short)} for laid in Laid
    }
    found: list[Panel] = []
    at = 0
    while at < len(cuts) - 1:
        panel, at = _longest(around, points, may, cuts, at)
        if panel is None:
            return ()
        found.append(panel)
    return tuple(found)


def cuts_of(around: Surroundings, frame: Frame) -> tuple[float, ...]:
    """The ends of a wall, and between them the right edges of studs from plate to plate.

    A wall is split beside such a stud, and the next panel begins with a stud of its own.
    """
    thick = around.wall.stud.thickness.mm
    rights = {m.right for m in frame.members if m.role is Role.STUD}
    inside = sorted(x for x in rights if 2 * thick < x < around.wall.run - 2 * thick)
    return (0.0, *inside, around.wall.run)


def _longest(
    around: Surroundings,
    points: Points,
    may: dict[Laid, set[Place]],
    cuts: tuple[float, ...],
    at: int,
) -> tuple[Panel | None, int]:
    """The longest panel that begins at a cut, and the cut it ends at.

    Whatever goes up goes up in part too, so the last cut that does is found by halving.
    """
    best: tuple[Panel | None, int] = (None, at)
    for laid in Laid:
        low, high = at, len(cuts) - 1
        while low < high:
            end = (low + high + 1) // 2
            fits = _fits(around, points, may[laid], (cuts[at], cuts[end]), laid)
            low, high = (end, high) if fits else (low, end - 1)
        if low > best[1]:
            best = (Panel(cuts[at], cuts[low], laid), low)
    return best


def _fits(
    around: Surroundings, points: Points, may: set[Place], reach: tuple[float, float], laid: Laid
) -> bool:
    inside = tuple(p for p, _ in points if reach[0] - 1e-6 <= p.x <= reach[1] + 1e-6)
    if len(inside) < 2 or any(p not in may for p in inside):
        return False
    return floor_for(around, inside, laid).free
