"""Studs, plates, cheeks and marks under roofs of many parts, against what is felt over the wall."""

from __future__ import annotations

import math
from itertools import pairwise

import msgspec
import pytest
from hypothesis import assume, given

import faces
import shell
import solids
from core.framing import Member, Role
from core.job import WallResult
from core.model import Room, Side, StandsOn, Wall
from faces import Over
from roof_cases import lying, under_roofs
from solids import Stand
from walls import result

Case = tuple[Room, Wall]


class Felt:
    """A wall as the program frames it, and what is felt over both its faces."""

    def __init__(self, case: Case) -> None:
        room, self.wall = case
        self.found: WallResult = result(room, self.wall)
        self.where: Stand = solids.stand(self.wall)
        self.depth = self.wall.stud.width.mm
        self.roofs = {
            d: faces.over(lambda u, v: shell.height(room, u, v), self.where, d, self.depth)
            for d in (0.0, self.depth)
        }

    def undersides(self, layers: int) -> dict[float, Over]:
        """What is under so many layers of plate, on both faces; the case is left out where a
        plate is too short to be made."""
        thick = layers * self.wall.top_plate.timber.thickness.mm
        made = {d: faces.under_plates(roof, self.where, d, thick) for d, roof in self.roofs.items()}
        assume(all(made.values()))
        return {d: line for d, line in made.items() if line is not None}

    def members(self, role: Role) -> list[Member]:
        frame = self.found.frame
        return [] if frame is None else [m for m in frame.members if m.role is role]


@given(under_roofs())
def test_studs_plates_and_marks(case: Case) -> None:
    felt = Felt(case)
    lines = felt.undersides(felt.wall.top_plate.count)
    for stud in felt.members(Role.STUD):
        if not any(line.stepped(stud.left, stud.right) for line in lines.values()):
            _four_edges(felt, lines, stud)
            _saw(felt, lines, stud)
    for plate in felt.members(Role.TOP_PLATE):
        _plate_lies_against_its_plane(felt, plate)
    _joints_halve_the_angle(felt)
    _marks_run_along_the_underside(felt, lines[0.0])


def _four_edges(felt: Felt, lines: dict[float, Over], stud: Member) -> None:
    sole, wanted = felt.wall.sole_plate.thickness.mm, []
    for d in (0.0, felt.depth):
        for x, inward in ((stud.left, 1e-3), (stud.right, -1e-3)):
            wanted.append(faces.height(lines[d].at(x + inward), felt.where, x, d) - sole)
    assert stud.edges == pytest.approx(wanted, abs=1e-3), stud.key


def _saw(felt: Felt, lines: dict[float, Over], stud: Member) -> None:
    planes = [p for line in lines.values() for p in line.under(stud.left, stud.right)]
    turn = min(solids.dot(a.normal, b.normal) for a in planes for b in planes)
    if turn < math.cos(math.radians(1.0)):
        assert len(stud.last_cut) > 1
    elif turn > 1.0 - 1e-12:
        (cut,) = stud.last_cut
        wanted = solids.saw(planes[0], felt.where)
        assert (cut.bevel, cut.mitre) == pytest.approx(wanted, abs=1e-6)
    # Planes that turn by less are cut as one.


def _plate_lies_against_its_plane(felt: Felt, plate: Member) -> None:
    """All its corners on face A are in one plane of the roof, moved down by the layers over them;
    so are those on the far face, where it lies under the same plane from end to end."""
    thick, layer = felt.wall.top_plate.timber.thickness.mm, int(plate.key.split("/")[-1])
    near, far = plate.near, plate.far
    if len(near) != 4:
        return
    middle = (near[2][0] + near[3][0]) / 2
    plane = felt.roofs[0.0].at(middle)
    for d, outline in ((0.0, near), (felt.depth, far)):
        for (x, y), down in zip(outline, (layer, layer, layer - 1, layer - 1), strict=True):
            moved = plane._replace(offset=plane.offset - down * thick)
            assert y == pytest.approx(faces.height(moved, felt.where, x, d), abs=1e-3), plate.key


def _joints_halve_the_angle(felt: Felt) -> None:
    """Where two plates meet without a step both saw settings give the plane halfway between."""
    plates = [m for m in felt.members(Role.TOP_PLATE) if m.key.endswith("/1")]
    roof = felt.roofs[0.0]
    for left, right in pairwise(plates):
        joined = math.dist(left.near[1], right.near[0]) < 1e-6
        whole = all(len(m.near) == 4 for m in (left, right))
        if not joined or not whole or math.dist(left.far[1], right.far[0]) > 1e-6:
            continue
        planes = [roof.at((m.near[2][0] + m.near[3][0]) / 2) for m in (left, right)]
        joint = solids.bisector(planes[0], planes[1])
        for plate, plane, cut in (
            (left, planes[0], left.last_cut[0]),
            (right, planes[1], right.first_cut[0]),
        ):
            normal = solids.sawn(plate.near[:2], plane, felt.where, (cut.bevel, cut.mitre))
            assert abs(solids.dot(normal, joint)) == pytest.approx(1.0, abs=1e-6), plate.key


def _marks_run_along_the_underside(felt: Felt, line: Over) -> None:
    """A mark on a plate is as far from where its underside begins as the tape goes along it."""
    starts = felt.wall.layout.start
    for mark in felt.found.marks:
        if mark.plate == "B/sole":
            assert mark.origin is starts
            x = mark.x if starts is Side.LEFT else felt.where.run - mark.x
            assert mark.along == pytest.approx(x, abs=1e-6)
            continue
        assert felt.found.frame is not None
        plate = felt.found.frame.member(mark.plate)
        assert plate is not None
        if len(plate.near) != 4:
            continue
        hook = plate.near[0 if mark.origin is Side.LEFT else 1][0]
        plane = line.at((plate.near[0][0] + plate.near[1][0]) / 2)
        ends = [
            (*felt.where.plan(x, 0.0), faces.height(plane, felt.where, x, 0.0))
            for x in (hook, mark.x)
        ]
        assert mark.along == pytest.approx(math.dist(*ends), abs=1e-3), mark
        assert mark.along_sole == pytest.approx(abs(mark.x - hook), abs=1e-6)


@given(under_roofs())
def test_cheek_studs_reach_from_rafter_to_roof(case: Case) -> None:
    room, wall = case
    bare = msgspec.structs.replace(lying(wall, None, 0), stands_on=StandsOn.BESIDE_RAFTERS)
    felt = Felt((room, bare))
    feet = {
        d: faces.over(lambda u, v: shell.rafters(room, u, v), felt.where, d, felt.depth)
        for d in (0.0, felt.depth)
    }
    for stud in felt.members(Role.STUD):
        ends = [line[d] for line in (feet, felt.roofs) for d in feet]
        if any(line.stepped(stud.left, stud.right) for line in ends):
            continue
        wanted = []
        for d in (0.0, felt.depth):
            for x, inward in ((stud.left, 1e-3), (stud.right, -1e-3)):
                foot, top = (
                    faces.height(line[d].at(x + inward), felt.where, x, d)
                    for line in (feet, felt.roofs)
                )
                wanted.append(top - foot)
        assert stud.edges == pytest.approx(wanted, abs=1e-3), stud.key
