"""What a wall ends against, where that is out of plumb."""

import enum

import msgspec

from core.lengths import Length


class EndStud(enum.Enum):
    """How an end stud stands against a surface out of plumb.

    PLUMB: plumb, clear of the surface from floor to roof, with a tapered gap between them.
    LEANING: against the surface all the way up, leaning as it does.
    """

    PLUMB = "plumb"
    LEANING = "leaning"


class EndLean(msgspec.Struct, frozen=True):
    """An existing surface at an end of a wall, which touches the chalk line's end at the floor.

    At the roof it is `offset` farther out than at the floor, so that the wall is longer there; less
    than nothing leans in over the wall.
    """

    offset: Length
    stud: EndStud = EndStud.PLUMB
