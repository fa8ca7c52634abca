"""Studs, plates and saw settings against plain geometry in space, for walls at any angle."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

import solids
from core.framing import Member, Role
from core.job import WallResult
from core.model import Room, Wall
from solids import Stand, Surface
from wall_cases import bare_walls, crossing_walls, gables, rooms, whole
from walls import US, in_12, result


def plate_thickness(wall: Wall) -> float:
    """All layers together, mm."""
    return wall.top_plate.count * wall.top_plate.timber.thickness.mm


def worked_out(room: Room, wall: Wall) -> WallResult:
    found = result(room, wall)
    assert found.frame is not None
    return found


def studs(found: WallResult) -> list[Member]:
    assert found.frame is not None
    return [m for m in found.frame.members if m.role is Role.STUD]


@given(st.data())
def test_four_edges_of_every_stud(data: st.DataObject) -> None:
    room = data.draw(rooms())
    wall = data.draw(bare_walls(room))
    where, sole = solids.stand(wall), wall.sole_plate.thickness.mm
    found = worked_out(room, wall)
    over = {d: solids.overhead(room, where, d) for d in (0.0, wall.stud.width.mm)}
    for stud in studs(found):
        corners = [(x, d) for d in over for x in (stud.left, stud.right)]
        wanted = [solids.top(over[d], where, (x, d), plate_thickness(wall)) for x, d in corners]
        assert stud.edges == pytest.approx([z - sole for z in wanted], abs=1e-5), stud.key


@given(st.data())
def test_studs_are_missing_only_where_there_is_no_height(data: st.DataObject) -> None:
    room = data.draw(rooms())
    wall = data.draw(bare_walls(room))
    where, sole = solids.stand(wall), wall.sole_plate.thickness.mm
    found = worked_out(room, wall)
    assert found.frame is not None
    width, thickness = wall.stud.width.mm, wall.stud.thickness.mm
    lefts = {"B/end/left": 0.0, "B/end/right": wall.run - thickness}
    for key in (k for k in found.frame.too_low if k in lefts):
        heights = [
            solids.top(solids.overhead(room, where, d), where, (x, d), plate_thickness(wall))
            for d in (0.0, width)
            for x in (lefts[key], lefts[key] + thickness)
        ]
        assert min(heights) <= sole + 1e-5


@given(st.data())
def test_the_saw_is_set_to_the_plane_overhead(data: st.DataObject) -> None:
    room = data.draw(rooms())
    wall = data.draw(bare_walls(room))
    where = solids.stand(wall)
    over = {d: solids.overhead(room, where, d) for d in (0.0, wall.stud.width.mm)}
    for stud in studs(worked_out(room, wall)):
        corners = [(x, d) for d in over for x in (stud.left + 1e-3, stud.right - 1e-3)]
        planes = {solids.lowest_here(over[c[1]], where, c, plate_thickness(wall)) for c in corners}
        if len(planes) == 1:
            (cut,) = stud.last_cut
            plane = planes.pop()
            # Swing and tilt together lean by the roof's true slope.
            cosine = plane.normal[2]
            wanted = solids.saw(plane, where)
            assert (cut.bevel, cut.mitre) == pytest.approx(wanted, abs=1e-7), stud.key
            assert math.cos(cut.bevel) * math.cos(cut.mitre) == pytest.approx(cosine)
        else:
            assert len(stud.last_cut) == 2


@given(st.data())
def test_corners_of_top_plates(data: st.DataObject) -> None:
    """Every corner lies on the roof moved down by the layers above it: joints meet at breaks."""
    room = data.draw(rooms())
    wall = data.draw(bare_walls(room))
    found = worked_out(room, wall)
    assume(whole(found))
    where, thickness = solids.stand(wall), wall.top_plate.timber.thickness.mm
    assert found.frame is not None
    for plate in (m for m in found.frame.members if m.role is Role.TOP_PLATE):
        layer = int(plate.key.split("/")[-1])
        for d, outline in ((0.0, plate.near), (wall.stud.width.mm, plate.far)):
            over, half = solids.overhead(room, where, d), len(outline) // 2
            downs = [layer * thickness] * half + [(layer - 1) * thickness] * half
            for (x, y), down in zip(outline, downs, strict=True):
                assert y == pytest.approx(solids.top(over, where, (x, d), down), abs=1e-5)


@given(st.data())
def test_joints_of_top_plates_halve_the_angle(data: st.DataObject) -> None:
    """Where two plates meet, both saw settings give the plane halfway between the two slopes."""
    room = data.draw(gables())
    wall = data.draw(crossing_walls(room))
    found = worked_out(room, wall)
    assume(whole(found))
    assert found.frame is not None
    assert found.inputs.near is not None
    # A ceiling too short for its plate is swallowed by its neighbours.
    assume(len(found.frame.near.segments) == len(found.inputs.near.segments))
    where = solids.stand(wall)
    over = solids.overhead(room, where, 0.0)
    plates = [m for m in found.frame.members if m.role is Role.TOP_PLATE and m.key.endswith("/1")]
    for left, right in pairwise(plates):
        planes = [_plane_of(plate, over, where) for plate in (left, right)]
        joint = solids.bisector(planes[0], planes[1])
        for plate, plane, cut in (
            (left, planes[0], left.last_cut[0]),
            (right, planes[1], right.first_cut[0]),
        ):
            assert len(plate.last_cut) == len(plate.first_cut) == 1
            normal = solids.sawn(plate.near[:2], plane, where, (cut.bevel, cut.mitre))
            assert abs(solids.dot(normal, joint)) == pytest.approx(1.0, abs=1e-7)


def _plane_of(plate: Member, over: tuple[Surface, ...], where: Stand) -> Surface:
    middle = ((plate.near[2][0] + plate.near[3][0]) / 2, 0.0)
    return solids.lowest_here(over, where, middle, 0.0)


@given(st.data())
def test_under_a_ridge_beam(data: st.DataObject) -> None:
    """Studs clear of the beam's sides, on both faces, reach the plates over them."""
    room = data.draw(gables(beam=True))
    wall = data.draw(st.one_of(bare_walls(room), crossing_walls(room)))
    where, sole = solids.stand(wall), wall.sole_plate.thickness.mm
    *slopes, beam = solids.surfaces(room)
    assert beam.strip is not None
    low, high = beam.strip
    down = plate_thickness(wall)
    slack = 3 * down
    for stud in studs(worked_out(room, wall)):
        corners = [(x, d) for d in (0.0, wall.stud.width.mm) for x in (stud.left, stud.right)]
        places = [where.plan(*corner)[0] for corner in corners]
        rafters = min(s.height(u, 0.0) for s in slopes for u in places)
        if all(u < low - slack or u > high + slack for u in places):
            over = tuple(slopes)
        elif all(low < u < high for u in places) and beam.height(0, 0) + down < rafters:
            over = (beam,)
        else:
            continue
        wanted = [solids.top(over, where, corner, down) for corner in corners]
        assert stud.edges == pytest.approx([z - sole for z in wanted], abs=1e-5)


def test_the_oracle_by_hand() -> None:
    # 9 in 12 from 12 in. at the eave; over 48 in. 48, the plate 1.5 x 1.25 = 1.875 lower.
    room = US.room(264, (12, in_12(9)), (12, in_12(9)))
    knee = US.wall((48, 0), (48, 288))
    where = solids.stand(knee)
    over = solids.overhead(room, where, 0.0)
    assert len(over) == 1
    down = plate_thickness(knee)
    heights = [US.of(solids.top(over, where, (0.0, US.length(d).mm), down)) for d in (0, 3.5)]
    assert heights == pytest.approx([46.125, 43.5])
    bevel, mitre = solids.saw(over[0], where)
    assert (math.degrees(bevel), math.degrees(mitre)) == pytest.approx((0, -36.8699), abs=1e-4)
