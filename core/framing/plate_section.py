"""The cross-section of a top plate over its studs, under a roof that slopes through the wall.

Places are (d, v): d away from face A, v from the roof line over face A, square to the wall's run
in its own plane; mm. Under a level or rising line v is simply up.
"""

import math

import msgspec

from core.framing.member import XY, Rip
from core.model import PlateLie, Side, TopPlate, Wall
from core.roof import RoofLine, Segment

Corners = tuple[XY, XY, XY, XY]
"""Underside at the near and at the far edge, top at the far and at the near edge."""


class Edge(msgspec.Struct, frozen=True):
    """How far an edge stands proud of the stud's face, mm, at underside and top; less is short."""

    underside: float
    top: float


class PlateSection(msgspec.Struct, frozen=True):
    """The plates under one plane, cut square to their run; mm and radians.

    `left` and `right` are the stretch of wall under the plane, `tilt` its slope in the section,
    positive rising away from face A. `layers` are the plates' outlines from the roof down, `stud`
    the studs' width. `near` and `far` tell of the edges of the lowest layer. The stock has to be
    `need` wide and is `have`; `rip` tells how it is ripped.
    """

    left: float
    right: float
    lie: PlateLie | None
    tilt: float
    stud: float
    layers: tuple[Corners, ...]
    near: Edge
    far: Edge
    need: float
    have: float
    rip: Rip | None

    @property
    def uphill(self) -> Side:
        """The edge on the high side of the slope, face A's being the left one."""
        return Side.RIGHT if self.tilt > 0 else Side.LEFT

    @property
    def is_wide_enough(self) -> bool:
        """Whether the stock makes a plate that covers the studs' ends."""
        return self.have >= self.need - 1e-6


def tilt_of(segment: Segment) -> float:
    """How far a plate under this plane is rolled about its run, radians.

    Square to the run the roof rises by across / sqrt(1 + along^2): the run itself is longer than
    its shadow on the floor. For a wall along the ridge this is the roof's own angle.
    """
    return math.atan(segment.across / math.hypot(1.0, segment.along))


def ripped(wall: Wall, segment: Segment) -> Rip | None:
    """How the plate under this plane is ripped; None where it is not."""
    tilt = tilt_of(segment)
    if wall.top_plate.lie is not PlateLie.RIPPED or abs(tilt) < 1e-9:
        return None
    return Rip(wall.stud.width.mm / math.cos(tilt), tilt)


def plate_sections(wall: Wall, near: RoofLine) -> tuple[PlateSection, ...]:
    """The section of the top plates under each plane that slopes through the wall, in order.

    Planes that give the same section share one, which stands for the first of them.
    """
    made: dict[tuple[float, float], PlateSection] = {}
    for segment in near.segments:
        tilt = tilt_of(segment)
        if abs(tilt) > 1e-9 and wall.top_plate.count:
            made.setdefault((round(tilt, 9), round(segment.along, 9)), _section(wall, segment))
    return tuple(made.values())


def need_width(plate: TopPlate, stud: float, tilt: float) -> float:
    """The width of stock that a plate under a slope `tilt` needs to cover studs `stud` wide, mm.

    Tilted it covers the mitred stud ends, stud over cosine: 3 1/2 / 0.8 = 4 3/8 in. at 9 in 12.
    Ripped plumb it slants by its own thickness as well: 4 3/8 + 1 1/2 x 0.75 = 5 1/2 in.
    """
    if plate.lie is PlateLie.LEVEL:
        return stud
    slant = plate.timber.thickness.mm * abs(math.tan(tilt))
    return stud / math.cos(tilt) + (slant if plate.lie is PlateLie.RIPPED else 0.0)


def _section(wall: Wall, segment: Segment) -> PlateSection:
    tilt, stud, plate = tilt_of(segment), wall.stud.width.mm, wall.top_plate
    outline = {None: _tilted, PlateLie.RIPPED: _ripped, PlateLie.LEVEL: _level}[plate.lie]
    layers = tuple(outline(plate, stud, tilt, layer) for layer in range(plate.count))
    under_near, under_far, top_far, top_near = layers[-1]
    return PlateSection(
        left=segment.left,
        right=segment.right,
        lie=plate.lie,
        tilt=tilt,
        stud=stud,
        layers=layers,
        near=Edge(-under_near[0] + 0.0, -top_near[0] + 0.0),
        far=Edge(under_far[0] - stud, top_far[0] - stud),
        need=need_width(plate, stud, tilt),
        have=plate.timber.width.mm,
        rip=ripped(wall, segment),
    )


def _tilted(plate: TopPlate, stud: float, tilt: float, layer: int) -> Corners:
    """A plate flat against the roof, the corner under its uphill edge flush with the stud."""
    thickness, width = plate.timber.thickness.mm, plate.timber.width.mm
    flush = stud if tilt > 0 else 0.0
    uphill = (flush, flush * math.tan(tilt) - (layer + 1) * thickness / math.cos(tilt))
    down = -width if tilt > 0 else width
    downhill = (uphill[0] + down * math.cos(tilt), uphill[1] + down * math.sin(tilt))
    over = (-thickness * math.sin(tilt), thickness * math.cos(tilt))
    near, far = (downhill, uphill) if tilt > 0 else (uphill, downhill)
    return near, far, _plus(far, over), _plus(near, over)


def _ripped(plate: TopPlate, stud: float, tilt: float, layer: int) -> Corners:
    """A plate flat against the roof, its edges plumb and flush with both faces of the stud."""
    each = plate.timber.thickness.mm / math.cos(tilt)
    top = -layer * each
    rise = stud * math.tan(tilt)
    return (0.0, top - each), (stud, top - each + rise), (stud, top + rise), (0.0, top)


def _level(plate: TopPlate, stud: float, tilt: float, layer: int) -> Corners:
    """A level plate, its uphill edge flush with the stud, its other one just clear of the roof."""
    width, each = plate.timber.width.mm, plate.timber.thickness.mm
    near, far = (stud - width, stud) if tilt > 0 else (0.0, width)
    reach = max(width, stud)
    touching = stud - reach if tilt > 0 else reach
    top = touching * math.tan(tilt) - layer * each
    return (near, top - each), (far, top - each), (far, top), (near, top)


def _plus(a: XY, b: XY) -> XY:
    return a[0] + b[0], a[1] + b[1]
