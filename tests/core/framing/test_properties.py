"""What holds for every wall: members within it, apart, without gaps, alike in a mirror."""

from __future__ import annotations

import math
from itertools import combinations, pairwise

import msgspec
import pytest
from hypothesis import assume, example, given
from hypothesis import strategies as st
from shapely.geometry import Polygon

from core.checks import Severity
from core.framing import Facet, Member, Role, underside
from core.job import Memo, WallResult, work_out
from core.lengths import Length, System
from core.model import LineEdge, PlateLie, Project, Room, SiteRecord, Wall
from core.roof import RoofLine
from roof_cases import many_parted
from wall_cases import housed, mirrored_room, mirrored_wall, stated_walls, whole
from walls import UK, Pair, at_degrees, result


def _with_plates(case: tuple[Room, Wall], lie: PlateLie | None) -> tuple[Room, Wall]:
    room, wall = case
    top_plate = msgspec.structs.replace(wall.top_plate, lie=lie)
    return room, msgspec.structs.replace(wall, top_plate=top_plate)


def _aslant() -> tuple[Room, Wall]:
    """A ridge that crosses a stud from one side to the other between its faces."""
    room = UK.room(3675, (1873, at_degrees(30)), (300, at_degrees(52)), length=9000)
    ends = ((1301.0, 1000.0), (1765.569155239859, 1464.569155239859))
    return room, UK.wall(*ends, spacing=300)


@st.composite
def _many_parted(draw: st.DrawFn) -> tuple[Room, Wall]:
    """A wall under dormers, wings, hips and changes of pitch."""
    room = draw(many_parted())
    return room, draw(stated_walls(room))


CASES = st.one_of(housed(), housed(), housed(), _many_parted())
HOUSED = st.builds(_with_plates, CASES, st.none() | st.sampled_from(PlateLie))
EPS = 1e-6


def framed(room: Room, wall: Wall, edge: LineEdge = LineEdge.NEAR) -> WallResult:
    """The wall's result, where the roof is high enough and no plane ends between its faces."""
    found = result(room, wall, edge)
    assume(found.frame is not None and not found.frame.too_low and whole(found))
    return found


def members(found: WallResult) -> tuple[Member, ...]:
    assert found.frame is not None
    return found.frame.members


def faces(found: WallResult) -> tuple[tuple[str, RoofLine], ...]:
    assert found.inputs.near is not None
    assert found.inputs.far is not None
    return ("near", found.inputs.near), ("far", found.inputs.far)


@given(HOUSED)
def test_members_lie_within_the_wall(case: tuple[Room, Wall]) -> None:
    found = framed(*case)
    for member in members(found):
        for face, line in faces(found):
            for x, y in getattr(member, face):
                assert -EPS <= x <= case[1].run + EPS, member.key
                assert -EPS <= y <= _highest(line, x) + EPS, member.key


def _highest(line: RoofLine, x: float) -> float:
    """The height of a roof line, the upper side at a step."""
    return max(s.at(x) for s in line.segments if s.left - EPS <= x <= s.right + EPS)


@given(HOUSED)
def test_members_do_not_overlap(case: tuple[Room, Wall]) -> None:
    found = framed(*case)
    for face, _ in faces(found):
        shapes = [(m.key, Polygon(getattr(m, face))) for m in members(found)]
        for (key, shape), (other_key, other) in combinations(shapes, 2):
            assert shape.intersection(other).area < 1.0, (face, key, other_key)


@given(HOUSED)
def test_members_stand_between_plates_without_a_gap(case: tuple[Room, Wall]) -> None:
    found = framed(*case)
    assert found.frame is not None
    standing = [m for m in members(found) if not m.lies]
    seats = _seats(found)
    for member in standing:
        near, far = member.near, member.far
        # Plumb: both lower corners under the outer upper ones, on both faces.
        for outline in (near, far):
            assert (outline[0][0], outline[1][0]) == (outline[-1][0], outline[2][0])
            feet = outline[:2]
            assert any(_lie_on(s, feet) for s in seats["bottom", member.role]), member.key
        # Astride a step it is cut to pass under the lower side alone.
        stepped = any(_stepped(line, member) for line in (found.frame.near, found.frame.far))
        under_line = all(
            abs(line.height(x) - y) < EPS or (stepped and y < line.height(x))
            for line, outline in ((found.frame.near, near), (found.frame.far, far))
            for x, y in outline[2:]
        )
        under_seat = any(_lie_on(seat, near[2:]) for seat in seats["top", member.role])
        assert under_line or under_seat, member.key


def _stepped(line: RoofLine, member: Member) -> bool:
    """Whether the line steps over a member."""
    steps = (a.right for a, b in pairwise(line.segments) if abs(a.at(a.right) - b.at(b.left)) > EPS)
    return any(member.left - EPS <= step <= member.right + EPS for step in steps)


Seat = tuple[Pair, Pair]
"""Two points of a line that ends of members lie on."""


def _lie_on(seat: Seat, corners: tuple[Pair, ...]) -> bool:
    (x0, y0), (x1, y1) = seat
    slope = (y1 - y0) / (x1 - x0)
    return all(abs(y0 + slope * (x - x0) - y) < EPS for x, y in corners)


def _seats(found: WallResult) -> dict[tuple[str, Role], list[Seat]]:
    """What members of each role may stand on, and end under: level but for raked heads."""
    wall = found.wall
    height = wall.sole_plate.thickness.mm
    sole = ((0.0, height), (wall.run, height))
    by_role = {role: [m for m in members(found) if m.role is role] for role in Role}
    headers = [(m.near[3], m.near[2]) for m in by_role[Role.HEADER]]
    heads = [(p.outline[3], p.outline[2]) for p in found.frame.openings] if found.frame else []
    sills = [(m.near[0], m.near[1]) for m in by_role[Role.SILL]]
    return {
        ("bottom", Role.STUD): [sole],
        ("bottom", Role.KING): [sole],
        ("bottom", Role.TRIMMER): [sole],
        ("bottom", Role.CRIPPLE): [sole, *headers],
        ("bottom", Role.BLOCK): [sole, *headers],
        ("top", Role.STUD): [],
        ("top", Role.KING): [],
        ("top", Role.TRIMMER): heads,
        ("top", Role.CRIPPLE): sills,
        ("top", Role.BLOCK): sills,
    }


@given(HOUSED)
def test_lengths_agree_with_outlines(case: tuple[Room, Wall]) -> None:
    for member in members(framed(*case)):
        assert member.short_point <= min(member.edges) + EPS
        assert max(member.edges) <= member.long_point + EPS
        assert member.long_point <= member.overall + EPS
        if not member.lies:
            faces = (member.near, member.far)
            lengths = [
                face[up][1] - face[foot][1] for face in faces for foot, up in ((0, -1), (1, 2))
            ]
            assert member.edges == pytest.approx(tuple(lengths))


@given(HOUSED, st.sampled_from(LineEdge))
def test_steps_along_the_slope_times_the_cosine_are_steps_on_the_floor(
    case: tuple[Room, Wall], edge: LineEdge
) -> None:
    found = framed(*case, edge)
    assert found.frame is not None
    for plate in (m for m in members(found) if m.role is Role.TOP_PLATE):
        # A plate that bends with the roof climbs at more than one rate.
        if len(underside(plate)) > 2:
            continue
        (x0, y0), (x1, y1) = underside(plate)
        cosine = (x1 - x0) / math.hypot(x1 - x0, y1 - y0)
        on_plate = [m for m in found.marks if m.plate == plate.key]
        for a, b in combinations(on_plate, 2):
            if a.edge is b.edge:
                along = (b.along - a.along) * cosine
                assert along == pytest.approx(abs(b.x - a.x), abs=1e-6)
                assert b.along_sole - a.along_sole == pytest.approx(along, abs=1e-6)


@given(HOUSED, st.sampled_from(LineEdge))
def test_every_upright_is_marked_where_it_meets_a_plate(
    case: tuple[Room, Wall], edge: LineEdge
) -> None:
    found = framed(*case, edge)
    sole = case[1].sole_plate.thickness.mm
    for member in (m for m in members(found) if not m.lies):
        plates = [mark.plate.split("/")[1] for mark in found.marks if mark.member == member.key]
        assert plates.count("sole") == (abs(member.bottom - sole) < EPS)
        under_sill = member.role in (Role.CRIPPLE, Role.BLOCK) and "/below/" in member.key
        assert plates.count("top") == (member.role is not Role.TRIMMER and not under_sill)
        for mark in (m for m in found.marks if m.member == member.key):
            assert mark.x in (member.left, member.right)


@given(HOUSED)
@example(_aslant())
def test_a_mirrored_wall_has_mirrored_members(case: tuple[Room, Wall]) -> None:
    room, wall = case
    found = framed(room, wall)
    mirror = result(mirrored_room(room), mirrored_wall(wall, room))
    # A chalk line exactly under a break may take either plane, one of which ends there.
    assume(whole(mirror))
    assert mirror.frame is not None
    assert found.frame is not None
    assert len(mirror.frame.members) == len(found.frame.members)
    for member in found.frame.members:
        near, far = (_mirrored(outline, wall.run) for outline in (member.near, member.far))
        alike = (m for m in mirror.frame.members if m.role is member.role)
        image = min(alike, key=lambda m: _gap(near, m.near))
        assert max(_gap(near, image.near), _gap(far, image.far)) < 1e-4, member.key
        assert image.overall == pytest.approx(member.overall)
        cut = image.first_cut if member.lies else image.last_cut
        wanted = [_mirrored_cut(f, member.lies) for f in reversed(member.last_cut)]
        assert [(f.bevel, f.mitre) for f in cut] == [pytest.approx(w, abs=1e-6) for w in wanted]
    turned = {key.replace("end/left", "end/right") for key in found.frame.no_room}
    assert {key.replace("end/left", "end/right") for key in mirror.frame.no_room} == turned
    fits = [[p.fit.fits for p in frame.openings] for frame in (found.frame, mirror.frame)]
    assert fits[0] == fits[1]


def _mirrored(outline: tuple[Pair, ...], run: float) -> tuple[Pair, ...]:
    return tuple((run - x, y) for x, y in outline)


def _gap(outline: tuple[Pair, ...], other: tuple[Pair, ...]) -> float:
    """The furthest that a corner of one outline is from every corner of the other, mm."""
    return max(min(math.dist(a, b) for b in other) for a in outline)


def _mirrored_cut(facet: Facet, lies: bool) -> Pair:
    """The facet's bevel and mitre in the mirror; a lying member's saw swings the other way too."""
    return -facet.bevel, -facet.mitre if lies else facet.mitre


@given(HOUSED)
def test_a_kept_result_equals_a_fresh_one(case: tuple[Room, Wall]) -> None:
    room, wall = case
    memo = Memo()
    plain = msgspec.structs.replace(wall, openings=(), moved=(), added=(), left_out=())
    for stated in (plain, wall, plain, wall, wall):
        project = Project("test", System.METRIC, room, (stated,))
        assert work_out(project, SiteRecord(), memo) == work_out(project, SiteRecord())


@given(HOUSED)
def test_an_opening_frames_wherever_it_is_said_to_fit(case: tuple[Room, Wall]) -> None:
    room, wall = case
    assume(wall.openings)
    frame = framed(room, wall).frame
    assert frame is not None
    placed = frame.openings[-1]
    for low, high in placed.fit.ranges:
        for left in (low, (low + high) / 2, high):
            moved = result(room, _with_last_opening_at(wall, left))
            _assert_framed(moved, placed.key)
        for left in (low - 1.0, high + 1.0):
            if not any(a <= left <= b for a, b in placed.fit.ranges):
                refused = result(room, _with_last_opening_at(wall, left))
                assert placed.key in [c.key for c in refused.cautions]
                assert not _pieces(refused, placed.key)


def _with_last_opening_at(wall: Wall, left: float) -> Wall:
    last = msgspec.structs.replace(wall.openings[-1], left=Length(left))
    return msgspec.structs.replace(wall, openings=(*wall.openings[:-1], last))


def _pieces(found: WallResult, key: str) -> list[Member]:
    return [m for m in members(found) if m.key.startswith(f"{key}/")]


def _assert_framed(found: WallResult, key: str) -> None:
    """Both sides stand, it can be built, and nothing reaches into the top plates."""
    assert key not in [c.key for c in found.cautions if c.severity is Severity.UNBUILDABLE]
    pieces = _pieces(found, key)
    roles = [m.role for m in pieces]
    assert roles.count(Role.TRIMMER) == 2
    thickness = found.wall.stud.thickness.mm
    opening = found.wall.opening(key.partition("/")[2])
    low, high = opening.left.mm, opening.left.mm + opening.width.mm
    # A king, one shared or an end stud stands against each trimmer.
    backs = [m for m in members(found) if m.role is Role.KING or m.key.split("/")[1] == "end"]
    for wanted in (low - 2 * thickness, high + thickness):
        assert any(abs(m.left - wanted) < 1e-3 for m in backs)
    plates = [m for m in members(found) if m.role is Role.TOP_PLATE]
    for piece in pieces:
        for plate in plates:
            for face in ("near", "far"):
                shapes = [Polygon(getattr(m, face)) for m in (piece, plate)]
                assert shapes[0].intersection(shapes[1]).area < 1.0
