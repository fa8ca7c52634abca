"""Sole plates and top plates: lengths along their edges, tips, and the cuts at their ends."""

from __future__ import annotations

import math

import pytest

from core.framing import Facet, Member, Role
from core.model import Room, Wall
from walls import US, Pair, frame_of, in_12

SLOPE = (12.0, in_12(9))
GABLE = US.room(264, SLOPE, SLOPE)
TIES = US.room(264, SLOPE, SLOPE, flat=84)
BEAM = US.room(264, SLOPE, SLOPE, beam=(3.5, 100))
FLAT = US.room(264, left=(96, in_12(0)))


def top_plates(room: Room, wall: Wall) -> dict[str, Member]:
    """Top plates by segment and layer."""
    plates = [m for m in frame_of(room, wall).members if m.role is Role.TOP_PLATE]
    return {m.key.removeprefix("B/top/"): m for m in plates}


def inches(values: tuple[float, ...]) -> list[float]:
    return [round(US.of(value), 4) for value in values]


def corners(outline: tuple[Pair, ...]) -> list[Pair]:
    return [(round(US.of(x), 4), round(US.of(y), 4)) for x, y in outline]


def degrees(cut: tuple[Facet, ...]) -> tuple[float, float]:
    (facet,) = cut
    return round(math.degrees(facet.bevel), 2) + 0.0, round(math.degrees(facet.mitre), 2) + 0.0


def test_sole_plate_is_whole() -> None:
    door = US.opening("door-1", 40, 32, 80)
    frame = frame_of(FLAT, US.wall((0, 9), (120, 9), openings=(door,)))
    (sole,) = [m for m in frame.members if m.role is Role.SOLE_PLATE]
    assert corners(sole.near) == [(0, 0), (120, 0), (120, 1.5), (0, 1.5)]
    assert inches(sole.edges) == [120] * 4


@pytest.mark.parametrize(
    ("room", "ends", "edges", "overall", "first", "last"),
    [
        pytest.param(FLAT, ((0, 9), (120, 9)), [120] * 4, 120, (0, 0), (0, 0), id="level"),
        # 72 / 0.8 = 90 along, the tips 1.5 x 0.75 = 1.125 further apart.
        pytest.param(
            GABLE, ((48, 9), (120, 9)), [90] * 4, 91.125, (36.87, 0), (36.87, 0), id="rake"
        ),
        pytest.param(
            GABLE, ((120, 9), (48, 9)), [90] * 4, 91.125, (-36.87, 0), (-36.87, 0), id="falling"
        ),
        pytest.param(GABLE, ((48, 0), (48, 288)), [288] * 4, 288, (0, 0), (0, 0), id="knee wall"),
        # 3-4-5 across 9 in 12: 0.45 along, 100 x 1.09659 = 109.6586.
        pytest.param(
            US.room(264, left=SLOPE),
            ((12, 0), (72, 80)),
            [109.6586] * 4,
            # The tips: at the low end the far underside corner is 0.6 x 3.5 lower than the near
            # one, and 0.45 x that over 1.09659 back; at the high end the top is 1.875 higher.
            109.6586 + 0.45 * (2.1 + 1.875) / 1.0965856,
            (21.10, -12.19),
            (21.10, -12.19),
            id="diagonal",
        ),
    ],
)
def test_one_plate(
    room: Room,
    ends: tuple[Pair, Pair],
    edges: list[float],
    overall: float,
    first: Pair,
    last: Pair,
) -> None:
    plate = top_plates(room, US.wall(*ends))["1/1"]
    assert inches(plate.edges) == pytest.approx(edges, abs=1e-3)
    assert US.of(plate.overall) == pytest.approx(overall, abs=1e-3)
    assert (degrees(plate.first_cut), degrees(plate.last_cut)) == (first, last)


def test_outline_of_a_rake_plate() -> None:
    # 48 at the low end, the underside 1.875 lower; 102 at 72.
    plate = top_plates(GABLE, US.wall((48, 9), (120, 9)))["1/1"]
    expected = [(0, 46.125), (72, 100.125), (72, 102), (0, 48)]
    assert corners(plate.near) == expected
    assert corners(plate.far) == expected


def test_knee_wall_plate_falls_away_from_face_a() -> None:
    # 3.5 further out the roof is 2.625 lower.
    plate = top_plates(GABLE, US.wall((48, 0), (48, 288), plate=(1.5, 5.5)))["1/1"]
    assert corners(plate.near) == [(0, 46.125), (288, 46.125), (288, 48), (0, 48)]
    assert corners(plate.far) == [(0, 43.5), (288, 43.5), (288, 45.375), (0, 45.375)]
    assert (US.of(plate.thickness), US.of(plate.width)) == pytest.approx((1.5, 5.5))


def test_gable_plates_meet_plumb_at_the_ridge() -> None:
    plates = top_plates(GABLE, US.wall((48, 9), (216, 9)))
    assert list(plates) == ["1/1", "2/1"]
    assert degrees(plates["1/1"].last_cut) == (36.87, 0)
    assert degrees(plates["2/1"].first_cut) == (-36.87, 0)
    assert corners(plates["2/1"].near)[0] == (84, 109.125)


def test_plates_meet_under_ties_at_half_the_change() -> None:
    # 9 in 12 up to 84 at x = 48; the undersides meet at 48.5 (1.875 - 1.5 = 0.375, over 0.75).
    plates = top_plates(TIES, US.wall((48, 9), (216, 9)))
    assert list(plates) == ["1/1", "2/1", "3/1"]
    assert corners(plates["1/1"].near) == [(0, 46.125), (48.5, 82.5), (48, 84), (0, 48)]
    assert corners(plates["2/1"].near) == [(48.5, 82.5), (119.5, 82.5), (120, 84), (48, 84)]
    # 48.5 x 1.25 = 60.625 under, 48 x 1.25 = 60 over.
    assert inches(plates["1/1"].edges) == [60.625, 60, 60.625, 60]
    assert inches(plates["2/1"].edges) == [71, 72, 71, 72]
    cuts = [(degrees(p.first_cut)[0], degrees(p.last_cut)[0]) for p in plates.values()]
    assert cuts == [(36.87, 18.43), (-18.43, 18.43), (-18.43, -36.87)]


def test_plates_end_plumb_at_a_beam() -> None:
    # The beam from 82.25 to 85.75, its underside at 100; the rafters there at 109.6875.
    plates = top_plates(BEAM, US.wall((48, 9), (216, 9)))
    assert corners(plates["2/1"].near) == [(82.25, 98.5), (85.75, 98.5), (85.75, 100), (82.25, 100)]
    assert corners(plates["1/1"].near)[1:3] == [(82.25, 107.8125), (82.25, 109.6875)]
    assert degrees(plates["1/1"].last_cut) == (36.87, 0)
    assert degrees(plates["2/1"].first_cut) == (0, 0)


def test_double_top_plate() -> None:
    # Each layer is 1.875 high; studs reach the underside of the lower one.
    frame = frame_of(GABLE, US.wall((48, 9), (120, 9), plates=2))
    plates = {m.key: corners(m.near) for m in frame.members if m.role is Role.TOP_PLATE}
    assert plates == {
        "B/top/1/1": [(0, 46.125), (72, 100.125), (72, 102), (0, 48)],
        "B/top/1/2": [(0, 44.25), (72, 98.25), (72, 100.125), (0, 46.125)],
    }
    end = frame.member("B/end/left")
    assert end is not None
    assert inches(end.edges[:2]) == [42.75, 43.875]  # 44.25 - 1.5, and 1.125 more


@pytest.mark.parametrize(
    ("room", "ends", "first_plate", "second_plate"),
    [
        # 3-4-5 across the ridge of 9 in 12: the ridge crosses the wall aslant. In the plane of the
        # roof the plate runs at 43.15 degrees to it, so the saw swings 46.85 and tilts 36.87.
        pytest.param(
            GABLE, ((108, 0), (156, 64)), (36.87, 46.85), (-36.87, 46.85), id="under the ridge"
        ),
        # Up to ties: tilt half of 36.87; on the level plate the crossing lies at 36.87 in plan from
        # square, a swing of 53.13.
        pytest.param(TIES, ((80, 0), (128, 64)), (18.43, 46.85), (-18.43, 53.13), id="at ties"),
    ],
)
def test_joint_of_a_diagonal_wall(
    room: Room, ends: tuple[Pair, Pair], first_plate: Pair, second_plate: Pair
) -> None:
    plates = top_plates(room, US.wall(*ends))
    assert degrees(plates["1/1"].last_cut) == first_plate
    assert degrees(plates["2/1"].first_cut) == second_plate


def test_the_joint_of_a_diagonal_wall_stands_aslant() -> None:
    # The ridge is 24 across, so 40 along on face A. The far face stands 3.5 x 0.8 = 2.8 back
    # across the room, and reaches it 2.8 / 0.6 = 4.6667 later.
    plates = top_plates(GABLE, US.wall((108, 0), (156, 64)))
    assert corners(plates["1/1"].near)[1:3] == [(40, 109.125), (40, 111)]
    assert corners(plates["1/1"].far)[1:3] == [(44.6667, 109.125), (44.6667, 111)]
    assert corners(plates["2/1"].far)[0] == (44.6667, 109.125)
    # Face A's edges 40 x 1.09659, the far ones 44.6667 x 1.09659.
    assert inches(plates["1/1"].edges) == pytest.approx([43.8634] * 2 + [48.9808] * 2, abs=1e-3)
    assert US.of(plates["1/1"].long_point) == pytest.approx(48.9808, abs=1e-3)
    assert US.of(plates["1/1"].short_point) == pytest.approx(43.8634, abs=1e-3)
