"""What else is nailed into a wall: blocking, backing for fixtures, and where walls meet.

Heights are above the subfloor.
"""

import enum

import msgspec

from core.lengths import Length
from core.model.timber import Timber


class Blocking(msgspec.Struct, frozen=True):
    """Rows of blocks between the studs, cut from stud timber and laid flat through the wall.

    `heights` are those of stated rows, to the middle of the block. Further rows are set so that no
    bay is higher than `at_most` without a block, and none higher than `fire` without a fire block;
    any block that fills the bay counts as one. With `staggered`, every other block stands one
    thickness higher, so that each can be end-nailed through its stud.
    """

    heights: tuple[Length, ...] = ()
    at_most: Length | None = None
    fire: Length | None = None
    staggered: bool = False


class FixtureKind(enum.Enum):
    """What is to be screwed to the wall."""

    RAIL = "rail"
    SHELF = "shelf"
    CABINET = "cabinet"
    GRAB_BAR = "grab bar"


class WallFace(enum.Enum):
    """A face of a wall."""

    A = "A"
    FAR = "far"


class Fixture(msgspec.Struct, frozen=True):
    """A thing that needs backing: where it hangs, and the timber that backs it.

    The backing stands on edge in every bay between `left` and `left` plus `width`, flush with
    `face`; `height` is that of its middle.
    """

    id: str
    kind: FixtureKind
    left: Length
    width: Length
    height: Length
    timber: Timber
    face: WallFace = WallFace.A


class MeetingKind(enum.Enum):
    """What a wall gets where another wall ends against it.

    TWO_STUDS: a stud at either side of the other wall, each half behind it. THREE_STUDS: a stud
    turned flat behind the other wall, with one beside it on either side. BLOCKS: flat blocks
    between the studs that stand there anyway. At a corner the end stud is one of them.
    """

    TWO_STUDS = "two studs"
    THREE_STUDS = "three studs"
    BLOCKS = "blocks"


class RafterBacking(msgspec.Struct, frozen=True):
    """Blocks between the rafters over a top plate that runs between two of them.

    They lie flat on the plate, `at_most` apart along it, one at either end of each plate.
    """

    timber: Timber
    at_most: Length
