"""What the working of a wall's numbers goes by: the wall, what is over and under it, its frame."""

import msgspec

from core.framing.frame import Frame
from core.framing.member import Member
from core.model import Wall
from core.roof import PurlinThrough, RoofLine
from core.wording import Message

Lines = tuple[RoofLine, RoofLine]
"""A line on face A, and the same on the far face."""


class Given(msgspec.Struct, frozen=True):
    """What is stated of a wall and what follows from it, gathered for its workings.

    `roof` are the roof lines over both faces as they count, `above` the name of what each of their
    segments is; `stated` is the line over face A before it was moved through measured points.
    `foot` are the rafters' tops that the wall stands on, None on the floor, and `depth` is how deep
    those rafters are, mm (0 for studs that reach down beside them). `purlins` are those through it.
    """

    wall: Wall
    frame: Frame
    roof: Lines
    above: tuple[tuple[Message, ...], tuple[Message, ...]]
    labels: tuple[tuple[str, str], ...]
    stated: RoofLine | None = None
    foot: Lines | None = None
    depth: float = 0.0
    purlins: tuple[PurlinThrough, ...] = ()

    def label(self, member: Member) -> str:
        """The label of a member, or nothing."""
        return dict(self.labels).get(member.key, "")
