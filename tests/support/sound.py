"""What holds for every wall as it is framed, whatever is stated: apart, inside, bearing, marked."""

from __future__ import annotations

import math
from itertools import combinations

import shapely
from shapely.geometry import Polygon

import shell
import solids
from core.framing import Frame, Member, Role, bare_marks, layout_lefts
from core.job import WallResult
from core.lengths import Length
from core.model import EndLean, Room
from solids import Vector
from wall_cases import whole

TOUCHING = 1.0
"""Members may share less than this on a face, mm²: what rounding leaves of two that touch."""

FULL_DEPTH = (
    Role.SOLE_PLATE,
    Role.TOP_PLATE,
    Role.STUD,
    Role.KING,
    Role.TRIMMER,
    Role.CRIPPLE,
    Role.BLOCK,
    Role.HEADER,
    Role.SILL,
)
"""Roles of members that go through the whole thickness of a wall."""


def no_two_overlap(found: WallResult, frame: Frame) -> None:
    """No two members that go through the wall share ground on either face.

    What is stated to be cut tight or as long as the tape said may run into its plate; so may a
    plate into others where a plane ends between the faces of the wall, or the roof is too low.
    """
    exact = found.wall.fit is None and not found.wall.measured_studs and is_plain(found, frame)
    for face in ("near", "far"):
        shapes = [(m.key, Polygon(getattr(m, face))) for m in frame.members if m.role in FULL_DEPTH]
        for (key, one), (other_key, other) in combinations(shapes, 2):
            if one.bounds[0] < other.bounds[2] and other.bounds[0] < one.bounds[2]:
                plated = "/top/" in key or "/top/" in other_key
                shared = shapely.intersection(one, other).area
                # A foot on a floor that bends a little under it is cut straight.
                most = 20 * TOUCHING if found.wall.floor_points else TOUCHING
                assert shared < most or (plated and not exact), (face, key, other_key, shared)


def is_plain(found: WallResult, frame: Frame) -> bool:
    """Whether both faces are under the same planes all along, none of them too low for studs.

    A plane over less of the wall than its plates are thick has no plate to speak of.
    """
    line, plate = found.inputs.near, found.wall.top_plate
    if line is None or not whole(found) or frame.too_low:
        return False
    return all(s.right - s.left > plate.count * plate.timber.thickness.mm for s in line.segments)


_PLUMB = EndLean(Length(0.0))


def nothing_is_outside(found: WallResult, frame: Frame, room: Room) -> None:
    """No member that goes through the wall reaches past its ends, or over the roof.

    The roof is held against its heights as walked up from the eaves; where it was measured, or
    purlins hang under it, against the line that the program has of it. An end of the wall that
    leans is stated at face A, and leans more where the far face is higher.
    """
    wall, where = found.wall, solids.stand(found.wall)
    tight = max(0.0, -wall.fit.mm) if wall.fit is not None else 0.0
    lean = max(abs(at.offset.mm) for at in (wall.left_lean, wall.right_lean, _PLUMB) if at)
    taped = {key for tried in frame.measured for key in (tried.key, *tried.corrected)}
    plain = not wall.roof_points and not room.purlins
    for member in (m for m in frame.members if m.role in FULL_DEPTH):
        if member.key in taped or (member.lies and not is_plain(found, frame)):
            continue
        for d, outline in ((0.0, member.near), (wall.stud.width.mm, member.far)):
            for x, y in outline:
                assert -1.25 * lean - 0.01 <= x <= wall.run + 1.25 * lean + 0.01, member.key
                if plain:
                    high = max(shell.height(room, *where.plan(x + a, d + b)) for a, b in _NEAR)
                    assert y <= high + tight + 0.01, (member.key, x, y, high)


_NEAR = tuple((a, b) for a in (-0.01, 0.0, 0.01) for b in (-0.01, 0.0, 0.01))
"""About a place: on either side of a step there."""


def every_place_is_taken_or_told(found: WallResult, frame: Frame) -> None:
    """Every mark of the layout carries a member or has a reason for being bare, and not both."""
    bare = {mark.place for mark in bare_marks(found.wall, frame)}
    for place, _ in layout_lefts(found.wall):
        carried = any(_is_at(m.key, place) for m in frame.members)
        assert carried != (place in bare), place


def _is_at(key: str, place: int) -> bool:
    """Whether a member with this key stands at a place of the layout, or is what is left of it."""
    return key.endswith(tuple(f"/{part}/{place}" for part in ("layout", "above", "below")))


def ends_bear_fully(found: WallResult, frame: Frame) -> None:
    """The end of a stud that meets one plate lies against it with all of its section over cosine.

    All four corners of its top are in the plate's underside, those of its foot in the sole plate's
    top; where stock is narrower than the mitred ends need, and only there, the warning stands.
    """
    thickness, width = found.wall.stud.thickness.mm, found.wall.stud.width.mm
    exact = found.wall.fit is None and not found.wall.measured_studs and is_plain(found, frame)
    lowest = str(found.wall.top_plate.count)
    tops = (m for m in frame.members if m.role is Role.TOP_PLATE and len(m.near) == 4)
    plates = [m for m in tops if m.key.split("/")[3] == lowest]
    for stud in (m for m in frame.members if _goes_up_whole(m)):
        plate = next((p for p in plates if _covers(p, stud)), None)
        if exact and plate and len(stud.last_cut) == 1 and len(stud.near) == 4:
            corners = [(*xy, d) for xy, d in _top(stud, width)]
            _assert_in(corners, plate, stud.key)
            across, along = _less(corners[0], corners[1]), _less(corners[2], corners[1])
            normal = solids.cross(across, along)
            cosine = abs(normal[1]) / math.hypot(*normal)
            share = math.hypot(*normal) * cosine / (thickness * width)
            assert math.isclose(share, 1.0, rel_tol=1e-6), stud.key
    soles = [m for m in frame.members if m.role is Role.SOLE_PLATE and len(m.near) == 4]
    for stud in (m for m in frame.members if m.role in (Role.STUD, Role.KING, Role.TRIMMER)):
        for sole in (s for s in soles if "/over/" not in stud.key):  # a purlin has its foot cut off
            if sole.left <= stud.left + 1e-6 and stud.right <= sole.right + 1e-6:
                for x, y in (*stud.near[:2], *stud.far[:2]):
                    assert abs(_height(sole.near[3], sole.near[2], x) - y) < 0.01, stud.key
    narrow = [c for c in found.cautions if c.message.id.startswith("plate.narrow")]
    assert bool(narrow) == any(s.have < s.need - 1e-6 for s in frame.sections)


def _goes_up_whole(member: Member) -> bool:
    """Whether it is a plumb stud that reaches the plates with its whole section."""
    upright = member.role in (Role.STUD, Role.KING) and not member.lean
    return upright and not member.stops and not member.notches


def _covers(plate: Member, stud: Member) -> bool:
    """Whether a plate's underside goes over all of a stud's width, on both faces."""
    return all(
        outline[0][0] <= stud.left + 1e-6 and stud.right <= outline[1][0] + 1e-6
        for outline in (plate.near, plate.far)
    )


def _top(stud: Member, width: float) -> tuple[tuple[tuple[float, float], float], ...]:
    """The corners of a stud's top, going round: left and right on face A, right and left behind."""
    return (
        (stud.near[3], 0.0),
        (stud.near[2], 0.0),
        (stud.far[2], width),
        (stud.far[3], width),
    )


def _assert_in(corners: list[Vector], plate: Member, key: str) -> None:
    for x, y, d in corners:
        left, right = (plate.near if d == 0.0 else plate.far)[:2]
        assert abs(_height(left, right, x) - y) < 0.01, (key, plate.key)


def _height(a: tuple[float, float], b: tuple[float, float], x: float) -> float:
    """The height at x of the straight line through two points."""
    return a[1] + (b[1] - a[1]) * (x - a[0]) / (b[0] - a[0])


def _less(a: Vector, b: Vector) -> Vector:
    return a[0] - b[0], a[1] - b[1], a[2] - b[2]
