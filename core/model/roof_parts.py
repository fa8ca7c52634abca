"""The parts of a roof beside two plain slopes: changes of pitch, dormers, wings; what hangs in it.

In plan `across` is from the left eave wall and `along` runs with the ridge, as in the room.
"""

import enum

import msgspec

from core.lengths import Length, Pitch
from core.model.side import Side
from core.model.timber import Timber


class PitchBreak(msgspec.Struct, frozen=True):
    """A change of pitch: from `run` in from the eave wall, taken level, it goes on at `pitch`."""

    run: Length
    pitch: Pitch


class Slope(msgspec.Struct, frozen=True):
    """One side of the roof, rising from its eave wall at `pitch` from `eave_height`.

    With `breaks` it changes pitch on the way in: steep then shallow is a gambrel, shallow then
    steep a kicked eave.
    """

    eave_height: Length
    pitch: Pitch
    breaks: tuple[PitchBreak, ...] = ()


class DormerKind(enum.Enum):
    """A shed dormer has one slope falling outward, a gable dormer two and a ridge out of it."""

    SHED = "shed"
    GABLE = "gable"


class Dormer(msgspec.Struct, frozen=True):
    """A dormer on the `side` slope.

    It goes from `start` along the room for `width`, outer face to outer face of its cheeks. Its
    front wall stands with its inner face `face` in from the eave wall and is `front` thick; beyond
    it, what is inside is under the main roof again. `height` is the underside
    of its rafters over that face (shed) or over the outer faces of its cheeks (gable).
    """

    id: str
    kind: DormerKind
    side: Side
    start: Length
    width: Length
    face: Length
    front: Length
    height: Length
    pitch: Pitch


class Wing(msgspec.Struct, frozen=True):
    """A wing of an L-shaped room, out through the `side` eave wall for `reach`.

    It goes from `start` along the room for `width`, between the framing faces of its own eave
    walls; `first` rises from the one at `start`, `last` from the other one, to a ridge square to
    the room's. Where its roof meets the room's there is a valley.
    """

    id: str
    side: Side
    start: Length
    width: Length
    reach: Length
    first: Slope
    last: Slope


class Passing(enum.Enum):
    """How a wall passes a purlin: UNDER it, or with the purlin THROUGH it, its plates cut there.

    Of the studs that a purlin through the wall meets, THROUGH tells, so that they are moved;
    STOPPED ends them under it, and NOTCHED notches them round it.
    """

    UNDER = "under"
    THROUGH = "through"
    STOPPED = "stopped"
    NOTCHED = "notched"


class Purlin(msgspec.Struct, frozen=True):
    """A purlin or beam along the roof, set plumb, with its left face at `left` across.

    A wall that it passes through keeps its timber `gap` away on every side. It goes from `start` to
    `end` along the room, or through all of the room where they are not stated. With `end_left` it
    is turned: its left face, for one who looks from the start, comes out there across at its end.
    """

    id: str
    left: Length
    timber: Timber
    underside: Length
    passing: Passing
    gap: Length
    start: Length | None = None
    end: Length | None = None
    end_left: Length | None = None


class PassesPurlin(msgspec.Struct, frozen=True):
    """How one wall passes the purlin with the id `purlin`, whatever is stated for all walls."""

    purlin: str
    passing: Passing


class ClearKind(enum.Enum):
    """What it is that framing keeps clear of."""

    CHIMNEY = "chimney"
    DUCT = "duct"


class KeptClear(msgspec.Struct, frozen=True):
    """A chimney or duct that goes up through the room, and the `gap` that framing keeps from it.

    Its corner nearest to the left eave wall and the start of the room is at `across`, `along` on
    the floor; it is `wide` across and `deep` along. One that leans has that corner at `up_across`,
    `up_along` at the height `up_to`, and goes on so; what is not stated there is as on the floor.
    """

    id: str
    kind: ClearKind
    across: Length
    along: Length
    wide: Length
    deep: Length
    gap: Length
    up_to: Length | None = None
    up_across: Length | None = None
    up_along: Length | None = None

    def corner_at(self, height: float) -> tuple[float, float]:
        """The plan place of that corner at a height, (across, along) in mm."""
        foot = self.across.mm, self.along.mm
        if self.up_to is None:
            return foot
        share = height / self.up_to.mm
        head = self.up_across or self.across, self.up_along or self.along
        return (
            foot[0] + share * (head[0].mm - foot[0]),
            foot[1] + share * (head[1].mm - foot[1]),
        )
