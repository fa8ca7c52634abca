"""What hangs in an opening: a leaf or unit with its allowances, and how it is hinged."""

import enum

import msgspec

from core.lengths import Length
from core.model.side import Side


class Leaf(msgspec.Struct, frozen=True):
    """A door leaf or a window unit, `width` by `height`, and what its frame and shims add to each.

    The rough opening is the sum: the leaf's width and `wider`, its height and `higher`.
    """

    width: Length
    height: Length
    wider: Length
    higher: Length

    @property
    def rough_width(self) -> float:
        """The width of the rough opening, mm."""
        return self.width.mm + self.wider.mm

    @property
    def rough_height(self) -> float:
        """The height of the rough opening, mm."""
        return self.height.mm + self.higher.mm


class Swing(enum.Enum):
    """To which side of the wall a leaf opens."""

    TOWARD = "toward face A"
    AWAY = "away from face A"


class Hanging(msgspec.Struct, frozen=True):
    """How a leaf hangs: the side its hinges are on, as seen from face A, and where it opens to."""

    hinges: Side
    swing: Swing
