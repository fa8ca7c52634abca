"""What a wall stands on: the floor, its sole plate along it, and the line that studs stand on."""

import math

import msgspec

from core.framing.bending import bent
from core.framing.cuts import plate_facet
from core.framing.member import XY, Member, Role
from core.framing.sticks import lying
from core.model import Wall
from core.roof import RoofLine, Segment, floor_line, lowered

Foot = float | tuple[RoofLine, RoofLine]
"""The height that studs stand on, mm, or the lines that they stand on on both faces."""


def foot(wall: Wall) -> Foot:
    """What studs stand on: the top of the sole plate.

    The plate follows a measured floor. Across the wall the floor counts as level.
    """
    if not wall.floor_points:
        return wall.sole_plate.thickness.mm
    line = _top(wall, floor_line(wall))
    return line, line


def foot_height(wall: Wall, left: float, right: float) -> float:
    """The highest that the sole plate's top reaches between two places, mm."""
    on = foot(wall)
    if isinstance(on, float):
        return on
    return max(y for s in on[0].between(left, right) for y in (s.at(s.left), s.at(s.right)))


def sole_stretch(wall: Wall, key: str, left: float, right: float) -> Member:
    """The sole plate, or the piece of it, from `left` to `right`, mm.

    It bends with a floor out of level; its ends are cut plumb.
    """
    timber = wall.sole_plate
    if not wall.floor_points:
        return lying(key, Role.SOLE_PLATE, timber, left, right, 0.0, timber.thickness.mm)
    floor = RoofLine(floor_line(wall).between(left, right))
    above = lowered(floor, -timber.thickness.mm)
    pieces = [_piece(wall, a, b) for a, b in zip(above, floor.segments, strict=True) if a]
    return bent(key, pieces)


def _top(wall: Wall, floor: RoofLine) -> RoofLine:
    above = lowered(floor, -wall.sole_plate.thickness.mm)
    return RoofLine(tuple(s for s in above if s is not None))


def _piece(wall: Wall, above: Segment, below: Segment) -> Member:
    """The sole plate over one straight stretch of the floor."""
    near = tuple((x, s.at(x)) for s, x in _corners(above, below))
    length = _length(near[0], near[1])
    piece = lying("", Role.SOLE_PLATE, wall.sole_plate, 0.0, length, 0.0, 0.0)
    up, away = (near[3][0] - near[0][0], near[3][1] - near[0][1], 0.0), (0.0, 0.0, 1.0)
    end = (near[2][0] - near[1][0], near[2][1] - near[1][1], 0.0)
    first, last = (plate_facet(below, way, away) for way in (up, end))
    top = _length(near[3], near[2])
    return msgspec.structs.replace(
        piece,
        near=near,
        far=near,
        edges=(length, top, length, top),
        long_point=max(length, top),
        short_point=min(length, top),
        overall=max(length, top),
        first_cut=(first,),
        last_cut=(last,),
    )


def _corners(above: Segment, below: Segment) -> tuple[tuple[Segment, float], ...]:
    return (below, below.left), (below, below.right), (above, above.right), (above, above.left)


def _length(a: XY, b: XY) -> float:
    return math.dist(a, b)
