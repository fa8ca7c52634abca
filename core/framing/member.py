"""The value every piece of timber in a wall becomes: outlines, cuts, lengths, and its key."""

import enum
import math
from functools import cached_property

import msgspec

from core.model import Side

XY = tuple[float, float]
"""A point of the elevation, mm: x from the wall's left end, y up from the subfloor."""


SQUARE_WITHIN = math.radians(0.5)
"""A cut this near to square is sawn square: it leaves 1/64 in. over the thickness of a stud."""


class Role(enum.Enum):
    """What a member is in the wall."""

    # Members are asked for theirs at every turn, and the usual hash is reckoned in Python.
    __hash__ = object.__hash__

    SOLE_PLATE = "sole plate"
    TOP_PLATE = "top plate"
    STUD = "stud"
    KING = "king stud"
    TRIMMER = "trimmer"
    HEADER = "header"
    SILL = "sill"
    CRIPPLE = "cripple"
    BLOCKING = "blocking"
    BACKING = "backing"
    BLOCK = "block"


LYING = frozenset(
    {Role.SOLE_PLATE, Role.TOP_PLATE, Role.HEADER, Role.SILL, Role.BLOCKING, Role.BACKING}
)
"""Roles whose members lie along the wall instead of standing in it."""


class Facet(msgspec.Struct, frozen=True, cache_hash=True):
    """One flat of an end cut, as the saw is set from a square cut; radians.

    `mitre` swings the saw across the wide face, positive where the cut rises away from face A;
    `bevel` tilts the blade with that mitre set, positive where the cut rises to the right.
    `face_up` says which face of the member lies up on the saw.
    """

    bevel: float
    mitre: float
    face_up: str

    @property
    def is_square(self) -> bool:
        """Whether this is sawn as a plain square cut."""
        return abs(self.bevel) < SQUARE_WITHIN and abs(self.mitre) < SQUARE_WITHIN


class Rip(msgspec.Struct, frozen=True):
    """A plate with both edges ripped plumb: each broad face is `width` mm wide, square to its run.

    `bevel` is the tilt of the blade from square, radians, positive where the plate rises away from
    face A; both edges lean the same way.
    """

    width: float
    bevel: float


class Notch(msgspec.Struct, frozen=True):
    """What is cut out of one side of a standing member, for a purlin to pass; mm.

    It goes `depth` in through the member's whole width, from `bottom` to `top` above the member's
    foot at that side on face A; up to the member's top where `top` is None.
    """

    purlin: str
    side: Side
    depth: float
    bottom: float
    top: float | None


class Member(msgspec.Struct, frozen=True, dict=True, cache_hash=True):
    """A piece of timber in its place; lengths in mm.

    `near` and `far` are its outlines on face A and on the far face. `edges` are the lengths of its
    four long edges: of a standing member near left, near right, far left, far right; of a lying
    one near underside, near top, far underside, far top. `long_point` and `short_point` are the
    greatest and the least length along the member that the cut leaves, `overall` is tip to tip.
    `count` pieces alike stand side by side through the wall (the plies of a header on edge), with
    spacers `spacer` thick between them if it is more than 0.
    `first_cut` is the bottom cut (the left cut of a lying member), `last_cut` the top (right) cut.
    `rip` tells of a plate whose edges are ripped; thickness and width are those of the stock.
    Lengths and cuts are those before its `notches` are cut. It `stops` under a purlin or beam where
    it does not reach the plates. An end stud against a surface out of plumb may `lean` so far to
    the right, radians: its lengths and cuts are those along it.

    The sides are asked for some thousand times a frame of a drag, so each is worked out once.
    """

    key: str
    role: Role
    thickness: float
    width: float
    near: tuple[XY, ...]
    far: tuple[XY, ...]
    edges: tuple[float, float, float, float]
    long_point: float
    short_point: float
    overall: float
    first_cut: tuple[Facet, ...]
    last_cut: tuple[Facet, ...]
    count: int = 1
    spacer: float = 0.0
    rip: Rip | None = None
    notches: tuple[Notch, ...] = ()
    stops: bool = False
    lean: float = 0.0

    @cached_property
    def left(self) -> float:
        """The x of its left edge or tip on face A, mm."""
        return min(x for x, _ in self.near)

    @cached_property
    def right(self) -> float:
        """The x of its right edge or tip on face A, mm."""
        return max(x for x, _ in self.near)

    @cached_property
    def bottom(self) -> float:
        """The y of its lowest point on face A, mm."""
        return min(y for _, y in self.near)

    @cached_property
    def top(self) -> float:
        """The y of its highest point on face A, mm."""
        return max(y for _, y in self.near)

    def span(self, side: Side) -> XY:
        """The heights on face A between which this side of a standing member stands, mm."""
        x = self.left if side is Side.LEFT else self.right
        heights = [y for place, y in self.near if place == x]
        return min(heights), max(heights)

    @property
    def lies(self) -> bool:
        """Whether it lies along the wall (plates, header, sill, blocks)."""
        return self.role in LYING


SQUARE = (Facet(0.0, 0.0, "any"),)
"""The end of a member that is simply cut square."""
