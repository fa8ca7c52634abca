"""Top plates under a roof that slopes through the wall: tilted, ripped plumb, or level.

The knee wall of these cases stands along a room 264 wide under 9 in 12 from eaves 12 high, its room
face at u = 48, where the roof is 48 high. 9 in 12: cosine 0.8, sine 0.6, 1 1/2 in. of plate is
1 1/2 / 0.8 = 1.875 plumb. Inches.
"""

from __future__ import annotations

import math

import msgspec
import pytest
from hypothesis import given
from hypothesis import strategies as st

import solids
from core.framing import Edge, Frame, PlateSection
from core.job import WallResult
from core.model import PlateLie, Side, TopPlate, Wall
from wall_cases import bare_walls, rooms
from walls import UK, US, Pair, in_12, member, result

ROOM = US.room(264, (12, in_12(9)), (12, in_12(9)))
WEST = ((48.0, 0.0), (48.0, 288.0))
"""Face A looks into the room: the roof falls away from it."""

FROM_BEHIND = ((48.0, 288.0), (48.0, 0.0))
"""Face A looks to the eave and stands at u = 48: the roof rises away from it."""


def lying(wall: Wall, lie: PlateLie | None) -> Wall:
    return msgspec.structs.replace(wall, top_plate=msgspec.structs.replace(wall.top_plate, lie=lie))


def knee(
    lie: PlateLie | None,
    plate: Pair = (1.5, 5.5),
    *,
    plates: int = 1,
    ends: tuple[Pair, Pair] = WEST,
) -> WallResult:
    return result(ROOM, lying(US.wall(*ends, plate=plate, plates=plates), lie))


def frame(found: WallResult) -> Frame:
    assert found.frame is not None
    return found.frame


def section(found: WallResult) -> PlateSection:
    (only,) = frame(found).sections
    return only


def inches(edge: Edge) -> Pair:
    return round(US.of(edge.underside), 4) + 0.0, round(US.of(edge.top), 4) + 0.0


@pytest.mark.parametrize(
    ("lie", "plate", "uphill", "eave", "need"),
    [
        # Tilted 2x6: the corner under its uphill edge is flush, the top one 1 1/2 x 0.6 = 0.9 back.
        # Down the slope 5 1/2 x 0.8 = 4.4: 0.9 past the stud's 3 1/2, its top 0.9 more.
        # The stud ends are 3 1/2 / 0.8 = 4 3/8 deep.
        pytest.param(None, (1.5, 5.5), (0, -0.9), (0.9, 1.8), 4.375, id="tilted 2x6"),
        # A 2x4 covers 3 1/2 x 0.8 = 2.8 of the 3 1/2.
        pytest.param(None, (1.5, 3.5), (0, -0.9), (-0.7, 0.2), 4.375, id="tilted 2x4"),
        # Ripped plumb: flush all round; the slant takes 1 1/2 x 0.75 = 1 1/8 more than 4 3/8.
        pytest.param(PlateLie.RIPPED, (1.5, 5.5), (0, 0), (0, 0), 5.5, id="ripped"),
        pytest.param(PlateLie.LEVEL, (1.5, 3.5), (0, 0), (0, 0), 3.5, id="level 2x4"),
        pytest.param(PlateLie.LEVEL, (1.5, 5.5), (0, 0), (2, 2), 3.5, id="level 2x6"),
    ],
)
def test_how_far_the_edges_stand_proud(
    lie: PlateLie | None, plate: Pair, uphill: Pair, eave: Pair, need: float
) -> None:
    west = section(knee(lie, plate))
    assert (west.uphill, inches(west.near), inches(west.far)) == (Side.LEFT, uphill, eave)
    assert US.of(west.need) == pytest.approx(need)
    assert west.is_wide_enough == (plate[1] >= need)
    behind = section(knee(lie, plate, ends=FROM_BEHIND))
    assert (behind.uphill, inches(behind.far), inches(behind.near)) == (Side.RIGHT, uphill, eave)


def test_the_rip_of_a_plate() -> None:
    plate = member(frame(knee(PlateLie.RIPPED)), "top/1/1")
    assert plate.rip is not None
    # Both broad faces 3 1/2 / 0.8 = 4 3/8 wide; the blade tilts by the pitch, atan 0.75 = 36.87.
    assert US.of(plate.rip.width) == pytest.approx(4.375)
    assert math.degrees(plate.rip.bevel) == pytest.approx(-36.8699, abs=1e-4)
    assert US.of(plate.width) == pytest.approx(5.5)  # the stock stays a 2x6
    behind = member(frame(knee(PlateLie.RIPPED, ends=FROM_BEHIND)), "top/1/1")
    assert behind.rip is not None
    assert behind.rip.bevel == pytest.approx(-plate.rip.bevel)


@pytest.mark.parametrize("lie", [None, PlateLie.LEVEL])
def test_square_edges_are_not_ripped(lie: PlateLie | None) -> None:
    assert member(frame(knee(lie)), "top/1/1").rip is None


@pytest.mark.parametrize(
    ("lie", "plate", "plates", "edges", "mitre"),
    [
        # 48 - 1.875 - 1 1/2 of sole plate, and 3 1/2 x 0.75 = 2 5/8 less at the far face.
        (None, (1.5, 5.5), 1, [44.625, 44.625, 42, 42], -36.87),
        (PlateLie.RIPPED, (1.5, 5.5), 1, [44.625, 44.625, 42, 42], -36.87),
        # Level, the far corner is under 48 - 2 5/8 = 45 3/8; 1 1/2 of plate, 1 1/2 of sole plate.
        (PlateLie.LEVEL, (1.5, 3.5), 1, [42.375] * 4, 0.0),
        # A 2x6 reaches 5 1/2 down the slope: 48 - 4 1/8 = 43 7/8.
        (PlateLie.LEVEL, (1.5, 5.5), 1, [40.875] * 4, 0.0),
        # Two of them are 3 in. together.
        (PlateLie.LEVEL, (1.5, 3.5), 2, [40.875] * 4, 0.0),
    ],
)
def test_studs_reach_their_plates(
    lie: PlateLie | None, plate: Pair, plates: int, edges: list[float], mitre: float
) -> None:
    stud = member(frame(knee(lie, plate, plates=plates)), "layout/3")
    assert [US.of(edge) for edge in stud.edges] == pytest.approx(edges)
    (cut,) = stud.last_cut
    assert math.degrees(cut.mitre) == pytest.approx(mitre, abs=0.005)
    assert cut.bevel == 0.0


def test_a_level_plate_is_level_on_both_faces() -> None:
    plate = member(frame(knee(PlateLie.LEVEL, (1.5, 3.5))), "top/1/1")
    assert plate.near == plate.far
    assert [US.of(y) for _, y in plate.near] == pytest.approx([43.875, 43.875, 45.375, 45.375])
    assert (plate.first_cut[0].is_square, plate.last_cut[0].is_square) == (True, True)


def test_the_outlines_of_a_section() -> None:
    # d from face A, v from the roof over face A. The first plate hangs from v = 0; under it the
    # second one is 1.875 lower, each with its uphill corner at d = 0.
    double = section(knee(None, plates=2))
    outlines = [[(US.of(d), US.of(v)) for d, v in layer] for layer in double.layers]
    first = [(0, -1.875), (4.4, -5.175), (5.3, -3.975), (0.9, -0.675)]
    for outline, down in zip(outlines, (0.0, 1.875), strict=True):
        for corner, (d, v) in zip(outline, first, strict=True):
            assert corner == pytest.approx((d, v - down))


@pytest.mark.parametrize("lie", [None, *PlateLie])
def test_a_rake_wall_has_nothing_to_choose(lie: PlateLie | None) -> None:
    rake = lying(US.wall((48, 9), (120, 9)), lie)
    stated, plain = result(ROOM, rake), result(ROOM, lying(rake, None))
    assert frame(stated).sections == ()
    assert stated.frame == plain.frame


def test_a_diagonal_wall_rolls_by_less_than_the_roof_slopes_across_it() -> None:
    # 3-4-5 across 9 in 12: 0.45 along, -0.6 through. The plate runs up the slope, so that square
    # to its run the roof falls by 0.6 / sqrt(1 + 0.45^2) = 0.54716: 28.69 degrees.
    found = section(result(ROOM, US.wall((12, 0), (72, 80))))
    assert math.degrees(found.tilt) == pytest.approx(-28.685, abs=1e-3)
    # 3 1/2 x sqrt(1 + 0.54716^2) = 3 1/2 x 1.13991.
    assert US.of(found.need) == pytest.approx(3.98970, abs=1e-4)


def test_a_wall_astride_the_ridge_has_a_section_under_each_slope() -> None:
    # 3-4-5 across the ridge at u = 132.
    found = frame(result(ROOM, US.wall((108, 0), (156, 64)))).sections
    assert [round(math.degrees(s.tilt), 2) for s in found] == [-28.69, 28.69]
    assert [(round(US.of(s.left), 6), round(US.of(s.right), 6)) for s in found] == [
        (0, 40),
        (40, 80),
    ]


@given(st.data())
def test_a_ripped_plate_spans_from_face_to_face(data: st.DataObject) -> None:
    """By plain geometry: the faces cut the roof's plane in two lines, as far apart as each broad
    face is wide; a plumb edge leans out of square to it as the plane's normal leans through."""
    room = data.draw(rooms())
    wall = lying(data.draw(bare_walls(room)), PlateLie.RIPPED)
    where, found = solids.stand(wall), result(room, wall)
    sections = frame(found).sections
    over = solids.overhead(room, where, 0.0)
    away = (*where.away, 0.0)
    for one in sections:
        assert one.rip is not None
        middle = ((one.left + one.right) / 2, 0.0)
        plane = solids.lowest_here(over, where, middle, 0.0)
        assert math.sin(one.rip.bevel) == pytest.approx(-solids.dot(plane.normal, away), abs=1e-9)
        line = solids.crossing(plane, solids.Surface(away, 0.0))
        feet = [where.plan(middle[0], d) for d in (0.0, wall.stud.width.mm)]
        near, far = ((u, v, plane.height(u, v)) for u, v in feet)
        across = (far[0] - near[0], far[1] - near[1], far[2] - near[2])
        apart = solids.cross(across, line)
        assert one.rip.width == pytest.approx(math.sqrt(solids.dot(apart, apart)), rel=1e-9)


@given(st.data())
def test_a_level_plate_just_clears_the_roof(data: st.DataObject) -> None:
    """As wide as the studs: its top touches the roof over one face and is clear of it between."""
    room = data.draw(rooms())
    wall = data.draw(bare_walls(room))
    plate = TopPlate(wall.stud, wall.top_plate.count, PlateLie.LEVEL)
    wall = msgspec.structs.replace(wall, top_plate=plate)
    where, surfaces = solids.stand(wall), solids.surfaces(room)
    width, sole = wall.stud.width.mm, wall.sole_plate.thickness.mm

    def roof(x: float, d: float) -> float:
        return min(s.height(*where.plan(x, d)) for s in surfaces)

    found = frame(result(room, wall))
    for key in (m.key for m in found.members if m.key.startswith("B/top/")):
        made = member(found, key.removeprefix("B/"))
        assert made.near == made.far
        if key.endswith("/1"):
            for x, y in made.near[2:]:
                assert y == pytest.approx(min(roof(x, 0.0), roof(x, width)), abs=1e-5)
                assert all(y <= roof(x, width * n / 8) + 1e-5 for n in range(9))
    for stud in (m for m in found.members if m.key.startswith(("B/end", "B/layout"))):
        assert stud.edges[:2] == pytest.approx(stud.edges[2:])
        assert all(facet.mitre == 0.0 for facet in stud.last_cut)
        assert stud.bottom == sole


def test_a_level_plate_in_millimetres() -> None:
    # 45 degrees: 89 mm through the wall are 89 down; 1200 - 89 - 38 - 38 = 1035.
    room = UK.room(6000, (0, in_12(12)), (0, in_12(12)), length=9000)
    wall = lying(UK.wall((1200, 0), (1200, 9000)), PlateLie.LEVEL)
    assert member(frame(result(room, wall)), "layout/1").long_point == pytest.approx(1035)
