"""A page of paper: drawings placed on it at their scales."""

import msgspec

from core.drawing.elements import XY, Drawing


class Placed(msgspec.Struct, frozen=True):
    """A drawing on paper: model point (0, 0) lands at `origin` (mm from the lower left corner).

    `scale` is mm on paper for each mm of the model; 1 for what is drawn on the paper itself.
    """

    drawing: Drawing
    scale: float
    origin: XY

    def on_paper(self, point: XY) -> XY:
        """Where a model point lands on the paper, mm from its lower left corner."""
        return self.origin[0] + self.scale * point[0], self.origin[1] + self.scale * point[1]


class Page(msgspec.Struct, frozen=True):
    """A page `width` by `height` mm with its title and what is placed on it, in painting order."""

    title: str
    width: float
    height: float
    placed: tuple[Placed, ...]
