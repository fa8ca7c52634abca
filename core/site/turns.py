"""Which wall goes up first: an order in which each finds the floor it lies on still free."""

from collections.abc import Iterator, Sequence

import msgspec

from core.site.raising import GoingUp, Way, ways_up
from core.site.swing import Laid

Going = tuple[str, GoingUp]
"""A wall's letter, and how it goes up by itself."""


class Turn(msgspec.Struct, frozen=True):
    """A wall in the order of raising; walls by their letters, in the order of the project.

    One that is tilted up whole is laid down on the side `laid` and built `short` mm less high;
    `before` are the walls still to come whose place is where it lies. One that is not, though it
    would be by itself, has the walls that stand there in `blocked`.
    """

    letter: str
    way: Way
    laid: Laid | None = None
    short: float = 0.0
    before: tuple[str, ...] = ()
    blocked: tuple[str, ...] = ()


def turns(going: Sequence[Going], step: float) -> tuple[Turn, ...]:
    """The walls in an order of raising; lengths are rounded up to the tape's `step`, mm.

    Found from behind: the last wall goes up while all others stand, and without it the rest has
    only more room. So wherever any order lets every wall be tilted that can be, this is one. Walls
    that are not tilted come last; of several that may be last the one that needs least floor is.
    Where each of those left stands in another's way, one of them is not tilted: one that goes up
    in panels, else the one that needs least floor.
    """
    left = list(going)
    found: list[Turn] = []
    while left:
        last = min(left, key=lambda wall: _rank(wall, left, step))
        left.remove(last)
        standing, later = ({letter for letter, _ in left}, tuple(t.letter for t in found))
        found.append(_turn(last, standing, later, step, [letter for letter, _ in going]))
    return tuple(reversed(found))


def _rank(wall: Going, left: list[Going], step: float) -> tuple[int, float, int]:
    """How late a wall may go up among those left: the lowest is the last of them."""
    letter, up = wall
    standing = {other for other, _ in left if other != letter}
    if not any(True for _ in ways_up(up.swings, up.floors, step)):
        kind = 0 if up.way is Way.IN_PLACE else 1
    elif _side(up, standing, step) is not None:
        kind = 2
    else:
        kind = 3 if up.panels else 4
    return kind, round(_floor(up), 6), -left.index(wall)


def _floor(up: GoingUp) -> float:
    """The floor that a wall needs to be laid out, mm²."""
    return up.floor.length * up.floor.depth


def _side(up: GoingUp, standing: set[str], step: float) -> tuple[Laid, float, int] | None:
    """The side on which it may be laid among the walls that stand, and how much short it is."""
    return next(_free(up, standing, step), None)


def _free(up: GoingUp, standing: set[str], step: float) -> Iterator[tuple[Laid, float, int]]:
    for short, n in ways_up(up.swings, up.floors, step):
        if not standing.intersection(up.floors[n].in_the_way):
            yield up.swings[n].laid, short, n


def _turn(
    wall: Going, standing: set[str], later: tuple[str, ...], step: float, order: list[str]
) -> Turn:
    letter, up = wall
    side = _side(up, standing, step)
    if side is not None:
        laid, short, n = side
        before = (w for w in up.floors[n].in_the_way if w in later)
        way = Way.SHORT if short else Way.TILT
        return Turn(letter, way, laid, short, tuple(sorted(before, key=order.index)))
    way = Way.PANELS if up.panels else Way.IN_PLACE
    floors = [up.floors[n] for _, n in ways_up(up.swings, up.floors, step)]
    in_the_way = standing.intersection(w for floor in floors for w in floor.in_the_way)
    return Turn(letter, way, blocked=tuple(sorted(in_the_way, key=order.index)))
