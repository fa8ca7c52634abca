"""How the person makes plates up: from what stock, and with what joints."""

import enum

import msgspec

from core.lengths import Length


class PlateJoint(enum.Enum):
    """How top plates meet where slopes meet; not stated, both are cut at half the angle.

    PLUMB: both are cut plumb under the break of the roof line, and butt.
    """

    PLUMB = "plumb"


class PlateRules(msgspec.Struct, frozen=True):
    """What holds for the plates of every wall; what is not stated does not limit.

    `longest` is the longest stock for plates: longer ones are made of pieces that meet over a
    stud. `lap` is how far apart the joints of two top plates lie, one under the other.
    """

    longest: Length | None = None
    lap: Length | None = None
    joint: PlateJoint | None = None
