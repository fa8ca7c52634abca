"""A stated opening in its wall: its key, where it fits, and the shape of its rough opening."""

import msgspec

from core.framing.fit import Fit
from core.framing.member import XY
from core.model import Opening


class PlacedOpening(msgspec.Struct, frozen=True):
    """An opening with its key and where it fits; one that does not fit is not framed.

    `rake` is the slope of its head, rise over run, positive rising to the right.
    """

    key: str
    opening: Opening
    fit: Fit
    rake: float = 0.0

    @property
    def left(self) -> float:
        """The left edge of the rough opening, mm."""
        return self.opening.left.mm

    @property
    def right(self) -> float:
        """The right edge of the rough opening, mm."""
        return self.opening.left.mm + self.opening.width.mm

    @property
    def heads(self) -> tuple[float, float]:
        """The heights of the head at the left and the right edge, mm; stated at the lower one."""
        rise = self.rake * self.opening.width.mm
        head = self.opening.head.mm
        return head + max(-rise, 0.0), head + max(rise, 0.0)

    def highest(self, left: float, right: float) -> float:
        """The greatest height of its head between two places in it, mm."""
        foot = self.heads[0] - self.rake * self.left
        return max(foot + self.rake * x for x in (left, right))

    @property
    def outline(self) -> tuple[XY, XY, XY, XY]:
        """The corners of the rough opening, from the lower left one counter-clockwise, mm."""
        low, (at_left, at_right) = self.opening.sill.mm, self.heads
        return (self.left, low), (self.right, low), (self.right, at_right), (self.left, at_left)
