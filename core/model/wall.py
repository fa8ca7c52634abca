"""A wall and all that a person states of it: ends, timber, layout, openings, boxes, overrides.

`x` runs along the wall from its left end as seen from face A, `y` up from the subfloor.
"""

import enum
import math

import msgspec

from core.lengths import Length
from core.model.room import Point
from core.model.timber import Timber


class Side(enum.Enum):
    """An end of a wall or a side of a stud, as seen from face A."""

    LEFT = "left"
    RIGHT = "right"

    @property
    def other(self) -> "Side":
        """The opposite side."""
        return Side.RIGHT if self is Side.LEFT else Side.LEFT


class PlateLie(enum.Enum):
    """How a top plate lies under a roof that slopes through the wall's thickness.

    Not stated, it lies tilted against the roof with square edges, its uphill edge flush with the
    studs. RIPPED: tilted, both edges ripped plumb and flush with the studs' faces. LEVEL: level,
    its eave-side corner just clear of the roof, so that studs are cut square through the wall.
    """

    RIPPED = "ripped"
    LEVEL = "level"


class TopPlate(msgspec.Struct, frozen=True):
    """The top plate: its cross-section, how many lie one under the other (1 or 2), and how."""

    timber: Timber
    count: int = 1
    lie: PlateLie | None = None


class Layout(msgspec.Struct, frozen=True):
    """Studs on centre: centres stand at whole multiples of `spacing` from where layout starts.

    Layout starts at the wall's `start` end, moved in by `hung_board`: the thickness of board that
    already hangs on the wall met there, so that this wall's own board still ends on a centre.
    """

    spacing: Length
    start: Side = Side.LEFT
    hung_board: Length = Length(0.0)


class HeaderKind(enum.Enum):
    """How the header lies: flat on its wide face, on edge, or no header at all."""

    FLAT = "flat"
    ON_EDGE = "on edge"
    NONE = "none"


class Header(msgspec.Struct, frozen=True):
    """The header over an opening; its kind and size are chosen by the person, never sized here."""

    kind: HeaderKind
    timber: Timber
    plies: int = 1


class OpeningKind(enum.Enum):
    """What is put into the opening."""

    DOOR = "door"
    ACCESS_DOOR = "access door"
    WINDOW = "window"


class Opening(msgspec.Struct, frozen=True):
    """A rough opening: its left edge, width, and heights of sill and head above the subfloor.

    `id` is unique in its wall (`door-1`) and is part of the key of every member around it.
    """

    id: str
    kind: OpeningKind
    left: Length
    width: Length
    head: Length
    header: Header
    sill: Length = Length(0.0)


class BoxHeight(enum.Enum):
    """Which part of a box its stated height is taken to."""

    CENTRE = "centre"
    BOTTOM = "bottom"
    TOP = "top"


class Box(msgspec.Struct, frozen=True):
    """An electrical box nailed to the `side` of the stud with key `stud`."""

    id: str
    stud: str
    side: Side
    height: Length
    to: BoxHeight
    width: Length
    depth: Length
    tall: Length


class MovedStud(msgspec.Struct, frozen=True):
    """The stud of layout `place`, moved so that its left edge stands at `left`."""

    place: int
    left: Length


class AddedStud(msgspec.Struct, frozen=True):
    """A stud beside the layout with its left edge at `left`."""

    id: str
    left: Length


class Wall(msgspec.Struct, frozen=True):
    """A wall on its chalk line, from the left end to the right end as seen from face A.

    The chalk line is snapped along face A; the timber lies on the far side of it. `letter` names
    the wall and begins the label and the key of everything in it. `left_out` holds the layout
    places that the person left empty on purpose.
    """

    letter: str
    name: str
    left_end: Point
    right_end: Point
    stud: Timber
    sole_plate: Timber
    top_plate: TopPlate
    layout: Layout
    openings: tuple[Opening, ...] = ()
    boxes: tuple[Box, ...] = ()
    moved: tuple[MovedStud, ...] = ()
    added: tuple[AddedStud, ...] = ()
    left_out: tuple[int, ...] = ()

    @property
    def chalk(self) -> tuple[tuple[float, float], tuple[float, float]]:
        """The two ends of the chalk line in plan, (u, v) in mm, left end first."""
        left, right = self.left_end, self.right_end
        return (left.across.mm, left.along.mm), (right.across.mm, right.along.mm)

    @property
    def run(self) -> float:
        """The length of the chalk line, mm."""
        return math.dist(*self.chalk)

    def opening(self, opening_id: str) -> Opening:
        """The opening with this id; KeyError if there is none."""
        for opening in self.openings:
            if opening.id == opening_id:
                return opening
        raise KeyError(opening_id)

    def box(self, box_id: str) -> Box:
        """The box with this id; KeyError if there is none."""
        for box in self.boxes:
            if box.id == box_id:
                return box
        raise KeyError(box_id)
