"""A wall and all that a person states of it: ends, timber, layout, openings, boxes, overrides.

`x` runs along the wall from its left end as seen from face A, `y` up from the subfloor.
"""

import enum
import math

import msgspec

from core.lengths import Length
from core.model.end_lean import EndLean
from core.model.leaf import Hanging, Leaf
from core.model.measured import MeasuredStud, Station
from core.model.nailed import Blocking, Fixture, MeetingKind, RafterBacking, WallFace
from core.model.point import Point
from core.model.roof_parts import PassesPurlin, Passing, Purlin
from core.model.rules import DoubledStud, WallRules
from core.model.side import Side
from core.model.timber import Timber
from core.model.zone import ClearZone


class StandsOn(enum.Enum):
    """What a wall stands on that does not stand on the floor, with no sole plate.

    RAFTERS: its studs are cut to the tops of the main roof's rafters (a dormer's cheek).
    BESIDE_RAFTERS: they lie against a rafter's side and reach down to its underside.
    """

    RAFTERS = "rafters"
    BESIDE_RAFTERS = "beside rafters"


class PlateLie(enum.Enum):
    """How a top plate lies under a roof that slopes through the wall's thickness.

    Not stated, it lies tilted against the roof with square edges, its uphill edge flush with the
    studs. RIPPED: tilted, both edges ripped plumb and flush with the studs' faces. LEVEL: level,
    its eave-side corner just clear of the roof, so that studs are cut square through the wall.
    """

    RIPPED = "ripped"
    LEVEL = "level"


class TopPlate(msgspec.Struct, frozen=True):
    """The top plate: its cross-section, how many lie one under the other (0 to 2), and how."""

    timber: Timber
    count: int = 1
    lie: PlateLie | None = None

    @property
    def is_level(self) -> bool:
        """Whether it lies level through the wall under any roof; no plate lies no way at all."""
        return self.count > 0 and self.lie is PlateLie.LEVEL


class Layout(msgspec.Struct, frozen=True):
    """Studs on centre: centres stand at whole multiples of `spacing` from where layout starts.

    Layout starts at the wall's `start` end, moved in by `hung_board`: the thickness of board that
    already hangs on the wall met there, so that this wall's own board still ends on a centre. With
    an `origin`, a place along the wall from its left end, centres stand in line with that place
    instead (to meet joists, rafters or the opposite wall), and hung board does not move them.
    """

    spacing: Length
    start: Side = Side.LEFT
    hung_board: Length = Length(0.0)
    origin: Length | None = None


class HeaderKind(enum.Enum):
    """How the header lies: flat on its wide face, on edge, or no header at all."""

    FLAT = "flat"
    ON_EDGE = "on edge"
    NONE = "none"


class Header(msgspec.Struct, frozen=True):
    """The header over an opening; its kind and size are chosen by the person, never sized here.

    Between the plies of a header on edge may stand a `spacer`, so thick that the header is flush
    with both faces of the wall.
    """

    kind: HeaderKind
    timber: Timber
    plies: int = 1
    spacer: Length | None = None


class HeadLie(enum.Enum):
    """How the head of an opening lies; not stated, it is level.

    RAKED: it follows the plates' slope over it, with the header under it and trimmers cut to it.
    """

    RAKED = "raked"


class OpeningKind(enum.Enum):
    """What is put into the opening."""

    DOOR = "door"
    ACCESS_DOOR = "access door"
    WINDOW = "window"
    PASS_THROUGH = "pass-through"
    CASED = "cased opening"


class Opening(msgspec.Struct, frozen=True, cache_hash=True):
    """A rough opening: its left edge, width, and heights of sill and head above the subfloor.

    `id` is unique in its wall (`door-1`) and is part of the key of every member around it. With a
    `leaf` width and height are the sums of leaf and allowances; `hung` tells how a leaf opens.
    The height of a raked head is that at its lower side.
    """

    id: str
    kind: OpeningKind
    left: Length
    width: Length
    head: Length
    header: Header
    sill: Length = Length(0.0)
    leaf: Leaf | None = None
    hung: Hanging | None = None
    head_lie: HeadLie | None = None

    @property
    def is_raked(self) -> bool:
        """Whether its head is to follow the slope over it."""
        return self.head_lie is HeadLie.RAKED


class BoxHeight(enum.Enum):
    """Which part of a box its stated height is taken to."""

    CENTRE = "centre"
    BOTTOM = "bottom"
    TOP = "top"


class Box(msgspec.Struct, frozen=True):
    """An electrical box nailed to the `side` of the stud with key `stud`.

    It opens on `face`; where that is not stated, on face A.
    """

    id: str
    stud: str
    side: Side
    height: Length
    to: BoxHeight
    width: Length
    depth: Length
    tall: Length
    face: WallFace | None = None

    @property
    def on_far_face(self) -> bool:
        """Whether it opens on the far face of the wall."""
        return self.face is WallFace.FAR


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
    places that the person left empty on purpose. `meeting` is what the wall gets where others end
    against it; `slip_gap` is how far its top plate stays below the rafters, measured plumb.
    `left_lean` and `right_lean` are surfaces out of plumb that it ends against.
    `stands_on` is None for a wall on the floor; `passes` holds the purlins that this wall passes in
    its own way.

    What was measured stands in `roof_points` and `floor_points`. With a `level_line` snapped or
    shone at that height above the subfloor, roof heights are read up from it and floor heights
    down to the floor; without one, roof heights are read up from the floor under each point, and
    floor heights are the floor's own, above (below: negative) its level at the wall's left end.
    `fit` is how far studs are cut short of the plates; negative makes them tight. `kept_clear` are
    parts of the elevation that timber and boxes keep out of.
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
    roof_points: tuple[Station, ...] = ()
    floor_points: tuple[Station, ...] = ()
    level_line: Length | None = None
    measured_studs: tuple[MeasuredStud, ...] = ()
    fit: Length | None = None
    blocking: Blocking | None = None
    fixtures: tuple[Fixture, ...] = ()
    meeting: MeetingKind | None = None
    rafter_backing: RafterBacking | None = None
    slip_gap: Length | None = None
    doubled: tuple[DoubledStud, ...] = ()
    rules: WallRules | None = None
    stands_on: StandsOn | None = None
    passes: tuple[PassesPurlin, ...] = ()
    kept_clear: tuple[ClearZone, ...] = ()
    left_lean: EndLean | None = None
    right_lean: EndLean | None = None

    @property
    def chalk(self) -> tuple[tuple[float, float], tuple[float, float]]:
        """The two ends of the chalk line in plan, (u, v) in mm, left end first."""
        left, right = self.left_end, self.right_end
        return (left.across.mm, left.along.mm), (right.across.mm, right.along.mm)

    @property
    def run(self) -> float:
        """The length of the chalk line, mm."""
        return math.dist(*self.chalk)

    @property
    def goes_by(self) -> WallRules:
        """The stated rules of framing, or the usual ones."""
        return self.rules or WallRules()

    def passing(self, purlin: Purlin) -> Passing:
        """How it passes a purlin: in its own way, or as all walls do."""
        own = (p.passing for p in self.passes if p.purlin == purlin.id)
        return next(own, purlin.passing)

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
