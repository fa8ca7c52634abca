"""What the roof is to a wall: all that depends on the room and on where the wall stands."""

import msgspec

from core.model import Passing, Room, StandsOn, Wall
from core.roof import (
    PurlinThrough,
    Roof,
    RoofLine,
    as_passed,
    inside_purlin,
    purlins_through,
    rafters_of,
    roof_line,
    roof_of,
    roof_to,
    underside,
)

_INTO = 0.01
"""A step from a face into the timber, mm."""


class Overhead(msgspec.Struct, frozen=True):
    """The roof lines over both faces, the lines the wall stands on, and purlins in its way.

    `near` and `far` are None where the wall reaches out from under the roof; `foot` is None for a
    wall on the floor; `inside` is the id of a purlin that the wall runs along within. `over` are
    the purlins that it passes under, and `bare` what the roof lines would be without those; None
    where there are none, or one runs along the wall.
    """

    near: RoofLine | None
    far: RoofLine | None
    foot: tuple[RoofLine, RoofLine] | None
    crossings: tuple[PurlinThrough, ...]
    inside: str | None
    bare: tuple[RoofLine, RoofLine] | None = None
    over: tuple[PurlinThrough, ...] = ()


def overhead(room: Room, roof: Roof, wall: Wall) -> Overhead:
    """What `roof`, the roof of `room`, is to a wall."""
    roof = roof_to(room, roof, wall)
    near, far = (_line(roof, wall, away) for away in (0.0, wall.stud.width.mm))
    if near is None:
        return Overhead(None, far, None, (), None)
    passed = as_passed(room, wall)
    through, inside = purlins_through(passed, wall), inside_purlin(passed, wall)
    bare, over = _without_purlins(passed, wall)
    return Overhead(near, far, _foot(room, wall), through, inside, bare, over)


def _without_purlins(
    room: Room, wall: Wall
) -> tuple[tuple[RoofLine, RoofLine] | None, tuple[PurlinThrough, ...]]:
    """The roof lines without the purlins that a wall passes under, and these where they cross it.

    Only a wall whose roof was measured asks for them.
    """
    under = tuple(p for p in room.purlins if p.passing is Passing.UNDER)
    if not under or not wall.roof_points:
        return None, ()
    hung = tuple(msgspec.structs.replace(p, passing=Passing.THROUGH) for p in under)
    through = msgspec.structs.replace(room, purlins=hung)
    over = purlins_through(through, wall)
    if not over or inside_purlin(through, wall) is not None:
        return None, ()
    plain = roof_of(msgspec.structs.replace(room, purlins=()))
    near, far = (_line(plain, wall, away) for away in (0.0, wall.stud.width.mm))
    return ((near, far), over) if near and far else (None, ())


def _foot(room: Room, wall: Wall) -> tuple[RoofLine, RoofLine] | None:
    """The lines on both faces that a wall on the rafters stands on; None on the floor."""
    if wall.stands_on is None:
        return None
    rafters = rafters_of(room)
    depth = room.rafter.timber.width.mm if wall.stands_on is StandsOn.RAFTERS else 0.0
    near, far = (_line(rafters, wall, away) for away in (0.0, wall.stud.width.mm))
    # A plate of less than no thickness goes up instead of down, square to the slope.
    return (underside(near, -depth), underside(far, -depth)) if near and far else None


def _line(roof: Roof, wall: Wall, away: float) -> RoofLine | None:
    """The roof line on the plane `away` mm behind face A, or None where there is none."""
    (u0, v0), (u1, v1) = wall.chalk
    if wall.run < wall.stud.thickness.mm:
        return None
    aside = (-(v1 - v0) / wall.run * away, (u1 - u0) / wall.run * away)
    start, end = (u0 + aside[0], v0 + aside[1]), (u1 + aside[0], v1 + aside[1])
    # Where a face runs exactly under a ridge, what counts is the plane over the timber.
    toward = _INTO if away == 0.0 else -_INTO
    try:
        return roof_line(roof, start, end, toward)
    except ValueError:
        return None
