"""How a drawing is to be seen: its scale, and what turns paper sizes into model sizes."""

import enum

import msgspec


class Show(enum.Enum):
    """A kind of thing in an elevation that can be left out."""

    LABELS = "labels"
    LENGTHS = "lengths"
    TAPES = "tapes"
    DIMENSIONS = "dimensions"


class View(msgspec.Struct, frozen=True, cache_hash=True):
    """A view at `scale` (mm on paper for each mm of the model) with text `size` mm high.

    In a `steady` one, made for the screen, strings keep their places while things move: it leaves
    a little more room than a still one has to.
    """

    scale: float
    size: float = 3.5
    shows: frozenset[Show] = frozenset(Show)
    steady: bool = False

    def model(self, paper_mm: float) -> float:
        """The model length that `paper_mm` on paper stand for."""
        return paper_mm / self.scale
