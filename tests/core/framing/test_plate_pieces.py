"""Plates made up of pieces that meet over studs, and plates butted plumb; inches.

Studs stand 16 in. on centre, so joints over their middles lie at 16, 32, ... from the left end.
"""

from __future__ import annotations

import math
from itertools import combinations, pairwise

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely.geometry import Polygon
from shapely.ops import unary_union

from core.framing import Facet, Frame, Member, Role, frame_wall, in_pieces, keys
from core.framing.member import SQUARE
from core.job import WallResult, work_out
from core.lengths import Length
from core.model import Habits, PlateJoint, PlateRules, Project, Room, SiteRecord, Wall
from wall_cases import housed, whole
from walls import UK, US, Pair, in_12, result

FLAT = US.room(264, left=(96, in_12(0)))
GABLE = US.room(264, (12, in_12(9)), (12, in_12(9)))
TIES = US.room(264, (12, in_12(9)), (12, in_12(9)), flat=84)


def made(room: Room, wall: Wall, rules: PlateRules) -> Frame:
    inputs = result(room, wall).inputs
    assert inputs.near is not None
    assert inputs.far is not None
    whole_plates = frame_wall(wall, inputs.near, inputs.far, inputs.around, rules)
    return in_pieces(whole_plates, (), rules)[0]


def stock(longest: float | None, lap: float | None = None) -> PlateRules:
    stick, apart = (None if x is None else US.length(x) for x in (longest, lap))
    return PlateRules(stick, apart)


def plates(frame: Frame) -> dict[str, Member]:
    lying = (Role.SOLE_PLATE, Role.TOP_PLATE)
    return {m.key.removeprefix("B/"): m for m in frame.members if m.role in lying}


def lengths(frame: Frame) -> dict[str, float]:
    return {cause: round(US.of(m.overall), 4) for cause, m in plates(frame).items()}


def corners(outline: tuple[Pair, ...]) -> list[Pair]:
    return [(round(US.of(x), 4), round(US.of(y), 4)) for x, y in outline]


def degrees(cut: tuple[Facet, ...]) -> float:
    (facet,) = cut
    assert facet.mitre == 0
    return round(math.degrees(facet.bevel), 2) + 0.0


def test_a_sole_plate_is_joined_over_the_last_stud_in_reach() -> None:
    # 120 reach to the stud at 112, 120 more to 224; but that would leave 16 on one stud beside the
    # joint's, so the last joint goes back to 208: 112, 96 and 32.
    frame = made(FLAT, US.wall((0, 9), (240, 9)), stock(120))
    assert lengths(frame) == {
        "top/1/1": 112,
        "top/1/1/layout/7": 96,
        "top/1/1/layout/13": 32,
        "sole": 112,
        "sole/layout/7": 96,
        "sole/layout/13": 32,
    }
    second = plates(frame)["sole/layout/7"]
    assert corners(second.near) == [(112, 0), (208, 0), (208, 1.5), (112, 1.5)]
    assert (second.first_cut, second.last_cut) == (SQUARE, SQUARE)
    assert frame.too_long == ()


def test_joints_of_two_layers_lie_apart() -> None:
    # The lower layer as before: joints at 112 and 208. 24 from 112 is 88, so the upper one is
    # joined at 80; from there 200 are in reach, 24 from 208 is 184, so at 176.
    frame = made(FLAT, US.wall((0, 9), (240, 9), plates=2), stock(120, 24))
    found = lengths(frame)
    assert [found[f"top/1/2{at}"] for at in ("", "/layout/7", "/layout/13")] == [112, 96, 32]
    assert [found[f"top/1/1{at}"] for at in ("", "/layout/5", "/layout/11")] == [80, 96, 64]


def test_without_a_stated_lap_joints_only_keep_off_the_same_stud() -> None:
    frame = made(FLAT, US.wall((0, 9), (240, 9), plates=2), stock(120))
    assert "top/1/1/layout/6" in lengths(frame)


def test_a_plate_that_no_stud_joins_stays_whole_and_is_told() -> None:
    # Stock of 24 is joined at 16 and 32 below; nothing is 24 from both.
    wall = US.wall((0, 9), (48, 9), plates=2)
    frame = made(FLAT, wall, stock(24, 24))
    assert frame.too_long == ("B/top/1/1",)
    assert lengths(frame)["top/1/1"] == 48
    assert [k for k in lengths(frame) if k.startswith("top/1/2")] == [
        "top/1/2",
        "top/1/2/layout/1",
        "top/1/2/layout/2",
    ]


def test_a_sloping_plate_is_joined_square_to_itself() -> None:
    # 72 up 9 in 12 is 90 along. The stud at 48 is 60 along its underside: just in reach of 60.
    # Square to the plate the top edge ends there too; it began 1.875 x 0.6 = 1.125 further along.
    frame = made(GABLE, US.wall((48, 9), (120, 9)), stock(60))
    first, second = (plates(frame)[k] for k in ("top/1/1", "top/1/1/layout/3"))
    assert [round(US.of(e), 4) for e in first.edges[:2]] == [60, 58.875]
    assert [round(US.of(e), 4) for e in second.edges[:2]] == [30, 31.125]
    assert US.of(first.overall) == pytest.approx(60)
    assert US.of(second.overall) == pytest.approx(31.125)
    # 1 1/2 square to the slope: 0.9 back and 1.2 up.
    under, over = (48, 46.125 + 36), (48 - 0.9, 46.125 + 36 + 1.2)
    assert corners(first.near)[1:3] == [under, over]
    assert corners(second.near)[::3] == [under, over]
    assert (degrees(first.first_cut), degrees(first.last_cut)) == (36.87, 0)
    assert (degrees(second.first_cut), degrees(second.last_cut)) == (0, 36.87)


def test_marks_run_on_over_the_pieces() -> None:
    wall = US.wall((48, 9), (120, 9))
    frame = made(GABLE, wall, stock(60))
    found = with_rules(GABLE, wall, stock(60))
    # The stud of place 4 has its left edge at 63 1/4: 79.0625 along from the low end.
    (mark,) = (m for m in found.marks if m.member == "B/layout/4" and m.along_top is not None)
    assert mark.plate == "B/top/1/1/layout/3"
    assert US.of(mark.along) == pytest.approx(79.0625)
    (sole,) = (m for m in found.marks if m.member == "B/layout/4" and m.along_top is None)
    assert (sole.plate, round(US.of(sole.along), 6)) == ("B/sole/layout/3", 63.25)
    assert frame == found.frame


def with_rules(room: Room, wall: Wall, rules: PlateRules) -> WallResult:
    plain = result(room, wall).inputs.habits
    habits = Habits(plain.tape, plain.line_edge, plates=rules)
    project = Project("test", plain.tape.system, room, (wall,), habits)
    return work_out(project, SiteRecord()).walls[0]


def test_plates_butted_plumb_at_ties() -> None:
    # The roof line breaks at x = 48, 84 high. Both plates end there; the sloping one is
    # 1.875 high, the level one 1 1/2: their undersides are 3/8 apart.
    frame = made(TIES, US.wall((48, 9), (216, 9)), PlateRules(joint=PlateJoint.PLUMB))
    slope, level = (plates(frame)[k] for k in ("top/1/1", "top/2/1"))
    assert corners(slope.near)[1:3] == [(48, 82.125), (48, 84)]
    assert corners(level.near)[::3] == [(48, 82.5), (48, 84)]
    assert (degrees(slope.last_cut), degrees(level.first_cut)) == (36.87, 0)
    # Under the ridge of equal slopes half the angle is plumb anyway.
    ridge = US.wall((48, 9), (216, 9))
    assert made(GABLE, ridge, PlateRules(joint=PlateJoint.PLUMB)) == made(
        GABLE, ridge, PlateRules()
    )


RULES = st.builds(
    PlateRules,
    st.integers(700, 2500).map(lambda mm: Length(float(mm))),
    st.none() | st.integers(0, 600).map(lambda mm: Length(float(mm))),
    st.none() | st.just(PlateJoint.PLUMB),
)


@given(housed(), RULES)
def test_pieces_fill_their_plate(case: tuple[Room, Wall], rules: PlateRules) -> None:
    room, wall = case
    found = result(room, wall)
    assume(found.frame is not None and whole(found))
    plain = made(room, wall, PlateRules(joint=rules.joint))
    frame = made(room, wall, rules)
    assert rules.longest is not None
    uprights = [m for m in frame.members if not m.lies]
    assert uprights == [m for m in plain.members if not m.lies]
    pieces: dict[str, list[Member]] = {plate.key: [] for plate in plates(plain).values()}
    for piece in plates(frame).values():
        (of,) = (key for key in pieces if f"{piece.key}/".startswith(f"{key}/"))
        pieces[of].append(piece)
    for plate in plates(plain).values():
        parts = pieces[plate.key]
        for face in ("near", "far"):
            shapes = [Polygon(getattr(m, face)) for m in parts]
            for one, other in combinations(shapes, 2):
                assert one.intersection(other).area < 1e-3
            assert unary_union(shapes).symmetric_difference(
                Polygon(getattr(plate, face))
            ).area == pytest.approx(0.0, abs=1e-3 * plate.overall)
        if plate.key in frame.too_long:
            assert len(parts) == 1
            continue
        assert max(m.overall for m in parts) <= rules.longest.mm + 1e-5
        middles = [(m.left + m.right) / 2 for m in uprights if m.role in (Role.STUD, Role.KING)]
        for _, right in pairwise(parts):
            assert min(abs(right.near[0][0] - x) for x in middles) < 1e-5
    _assert_lapped(pieces, rules)


def _assert_lapped(pieces: dict[str, list[Member]], rules: PlateRules) -> None:
    """Joints of two layers of one run are as far apart along it as is stated."""
    lap = max(rules.lap.mm if rules.lap else 0.0, 1.0)
    for key, lower in pieces.items():
        upper = pieces.get(f"{keys.plate_run(key)}/1", []) if key.endswith("/2") else []
        for a in upper[1:]:
            for b in lower[1:]:
                # The layers' joints stand square to the run, so only the way along it counts.
                (x0, y0), (x1, y1) = a.near[:2]
                gap = (x0 - b.near[0][0]) * (x1 - x0) + (y0 - b.near[0][1]) * (y1 - y0)
                assert abs(gap) / math.dist((x0, y0), (x1, y1)) >= lap - 1e-5


def test_millimetres() -> None:
    # 400 on centre: 2000 reach to the stud at 2000 itself.
    room = UK.room(6000, left=(2400, in_12(0)))
    frame = made(room, UK.wall((0, 100), (3600, 100)), PlateRules(Length(2000.0)))
    assert [round(m.overall, 6) for c, m in plates(frame).items() if c.startswith("sole")] == [
        2000,
        1600,
    ]
