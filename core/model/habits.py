"""The person's habits: how numbers are shown and how plates are marked."""

import enum

import msgspec

from core.lengths import System, Tape
from core.model.plates import PlateRules
from core.model.saw import Saw
from core.model.trade_words import TradeWords


class LineEdge(enum.Enum):
    """Which edge of a stud the pencil line stands for.

    UPHILL: the line is the uphill edge (the long point) and the X lies downhill. NEAR: the line
    is the edge nearer to the end that the tape hooks on, and the X lies ahead. Where there is no
    uphill edge, the near edge is lined.
    """

    UPHILL = "uphill"
    NEAR = "near"


class Letters(msgspec.Struct, frozen=True):
    """The letters pencilled beside a line; they differ by region, so every sheet has a legend.

    `rafter` stands where a plate crosses one: an R unless it is stated.
    """

    stud: str = "X"
    king: str = "K"
    trimmer: str = "T"
    cripple: str = "C"
    rafter: str | None = None

    @property
    def of_rafters(self) -> str:
        """The letter where a plate crosses a rafter."""
        return self.rafter or "R"


class Habits(msgspec.Struct, frozen=True):
    """How this person measures, marks, saws and makes up plates.

    `saw` is the usual one unless it is stated; `words` go with the units unless they are.
    """

    tape: Tape = Tape.usual(System.INCH)
    line_edge: LineEdge = LineEdge.NEAR
    letters: Letters = Letters()
    saw: Saw | None = None
    plates: PlateRules | None = None
    words: TradeWords | None = None
