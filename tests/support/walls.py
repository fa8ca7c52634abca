"""Rooms and walls for tests: short builders for literal cases, in inches or millimetres."""

from __future__ import annotations

import math
from dataclasses import dataclass

from core.framing import Frame, Member
from core.job import WallResult, work_out
from core.lengths import Length, Pitch, System, Tape, Unit
from core.model import (
    AddedStud,
    Box,
    BoxHeight,
    Habits,
    Header,
    HeaderKind,
    Layout,
    LineEdge,
    MovedStud,
    Opening,
    OpeningKind,
    Point,
    Project,
    Rafter,
    RidgeBeam,
    Room,
    Side,
    SiteRecord,
    Slope,
    Station,
    Timber,
    TopPlate,
    Wall,
)

Pair = tuple[float, float]


def in_12(rise: float) -> Pitch:
    """The pitch of a rise in a run of 12."""
    return Pitch(rise / 12, f"{rise:g} in 12")


def at_degrees(angle: float) -> Pitch:
    """The pitch of an angle in degrees."""
    return Pitch(math.tan(math.radians(angle)), f"{angle:g}°")


@dataclass(frozen=True)
class Shop:
    """The unit a table is written in, with the usual stud and spacing; builders take that unit."""

    unit: Unit
    stud: Pair
    spacing: float
    hand: float
    """A length of about a hand, for boxes and the like that only have to be somewhere."""

    def length(self, value: float) -> Length:
        return Length(value * float(self.unit.mm_each), self.unit)

    def of(self, mm: float) -> float:
        """A number of mm, in this unit."""
        return mm / float(self.unit.mm_each)

    def timber(self, size: Pair) -> Timber:
        return Timber(self.length(size[0]), self.length(size[1]))

    def slope(self, eave: float, pitch: Pitch) -> Slope:
        return Slope(self.length(eave), pitch)

    def room(
        self,
        width: float,
        left: tuple[float, Pitch] | None = None,
        right: tuple[float, Pitch] | None = None,
        *,
        flat: float | None = None,
        beam: Pair | None = None,
        length: float = 400.0,
    ) -> Room:
        """A room; slopes as (eave height, pitch), the ridge beam as (width, underside)."""
        return Room(
            width=self.length(width),
            length=self.length(length),
            rafter=Rafter(self.timber((self.stud[0], self.stud[1])), self.length(self.spacing)),
            left=None if left is None else self.slope(*left),
            right=None if right is None else self.slope(*right),
            ridge_beam=None if beam is None else RidgeBeam(*map(self.length, beam)),
            flat_ceiling=None if flat is None else self.length(flat),
        )

    def wall(
        self,
        left_end: Pair,
        right_end: Pair,
        *,
        stud: Pair | None = None,
        plate: Pair | None = None,
        plates: int = 1,
        spacing: float | None = None,
        start: Side = Side.LEFT,
        hung: float = 0.0,
        openings: tuple[Opening, ...] = (),
        boxes: tuple[Box, ...] = (),
        moved: tuple[tuple[int, float], ...] = (),
        added: tuple[tuple[str, float], ...] = (),
        left_out: tuple[int, ...] = (),
    ) -> Wall:
        """The wall "B" between two plan points (across, along); sole plate of the stud's timber."""
        stud = stud or self.stud
        return Wall(
            letter="B",
            name="partition",
            left_end=Point(*map(self.length, left_end)),
            right_end=Point(*map(self.length, right_end)),
            stud=self.timber(stud),
            sole_plate=self.timber(stud),
            top_plate=TopPlate(self.timber(plate or stud), plates),
            layout=Layout(self.length(spacing or self.spacing), start, self.length(hung)),
            openings=openings,
            boxes=boxes,
            moved=tuple(MovedStud(place, self.length(left)) for place, left in moved),
            added=tuple(AddedStud(name, self.length(left)) for name, left in added),
            left_out=left_out,
        )

    def header(
        self, kind: HeaderKind = HeaderKind.FLAT, timber: Pair | None = None, plies: int = 1
    ) -> Header:
        return Header(kind, self.timber(timber or self.stud), plies)

    def opening(
        self,
        name: str,
        left: float,
        width: float,
        head: float,
        *,
        sill: float = 0.0,
        header: Header | None = None,
    ) -> Opening:
        """A door, or a window where there is a sill; a single flat header unless stated."""
        kind = OpeningKind.WINDOW if sill else OpeningKind.DOOR
        at, wide, high, low = (self.length(x) for x in (left, width, head, sill))
        return Opening(name, kind, at, wide, high, header or self.header(), low)

    def box(
        self,
        name: str,
        stud: str,
        side: Side,
        height: float,
        to: BoxHeight = BoxHeight.CENTRE,
        size: Pair | None = None,
    ) -> Box:
        """A box of `size` (width, height); half a hand wide and a hand tall unless stated."""
        width, tall = size or (self.hand / 2, self.hand)
        depth = self.length(self.hand / 2)
        up, wide, high = (self.length(x) for x in (height, width, tall))
        return Box(name, stud, side, up, to, wide, depth, high)


US = Shop(Unit.INCH, (1.5, 3.5), 16.0, 4.0)
UK = Shop(Unit.MM, (38.0, 89.0), 400.0, 100.0)


def stations(shop: Shop, *points: Pair) -> tuple[Station, ...]:
    """Measured points as (place, height) in the shop's unit."""
    return tuple(Station(shop.length(at), shop.length(height)) for at, height in points)


def result(room: Room, wall: Wall, line_edge: LineEdge = LineEdge.NEAR) -> WallResult:
    """What the program makes of one wall in a room."""
    system = System.METRIC if room.width.unit.metric else System.INCH
    habits = Habits(Tape.usual(system), line_edge)
    return work_out(Project("test", system, room, (wall,), habits), SiteRecord()).walls[0]


def frame_of(room: Room, wall: Wall) -> Frame:
    """The frame of one wall in a room; the wall has to stand under the roof."""
    frame = result(room, wall).frame
    assert frame is not None
    return frame


def member(frame: Frame, cause: str) -> Member:
    """The member of wall "B" with this cause: the key without the wall's letter."""
    found = frame.member(f"B/{cause}")
    assert found is not None, f"no {cause} among {[m.key for m in frame.members]}"
    return found
