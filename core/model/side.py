"""Left and right, as seen from face A."""

import enum


class Side(enum.Enum):
    """An end of a wall or a side of a stud, as seen from face A."""

    LEFT = "left"
    RIGHT = "right"

    @property
    def other(self) -> "Side":
        """The opposite side."""
        return Side.RIGHT if self is Side.LEFT else Side.LEFT
