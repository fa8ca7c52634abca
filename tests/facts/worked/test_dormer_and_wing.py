"""Walls under a gable dormer, an L-shaped roof, a hip and a gambrel, every number by hand; inches.

The room is 240 wide and 360 long, 12 in 12 from eaves 30 high: R = 30 + u to the ridge at u = 120,
150 high, and 270 - u beyond. Studs 1 1/2 by 3 1/2 at 16; one top plate and a sole plate of 1 1/2.
Our own arithmetic. A plate stands 1.5 times the secant of its true slope: at 12 in 12 1.5 x root 2
= 2.1213, at 6 in 12 1.5 x 1.118034 = 1.6771.
"""

from __future__ import annotations

import math

import msgspec
import pytest

from core.framing import Frame, Member
from core.job import WallResult
from core.model import PitchBreak, Room, Side, Slope
from valleys import DORMER, GABLE, WING
from walls import US, Pair, in_12, member, result


def walled(room: Room, left: Pair, right: Pair) -> WallResult:
    return result(room, US.wall(left, right))


def frame(made: WallResult) -> Frame:
    assert made.frame is not None
    return made.frame


def points(made: WallResult) -> list[Pair]:
    assert made.inputs.near is not None
    corners = made.inputs.near.points()
    return [(round(US.of(x), 4), round(US.of(y), 4)) for x, y in corners]


def edges(stud: Member) -> list[float]:
    return [round(US.of(edge), 3) for edge in stud.edges]


def test_along_the_dormer() -> None:
    # Along u = 200, from v = 100 to 260: the main roof is level at 70 outside the dormer; within it
    # the dormer rises from 90 at its cheek (a step of 20) to 120 and falls again.
    made = walled(msgspec.structs.replace(GABLE, dormers=(DORMER,)), (200, 100), (200, 260))
    assert points(made) == [(0, 70), (20, 70), (20, 90), (80, 120), (140, 90), (140, 70), (160, 70)]
    # The timber lies toward the left eave, so the main roof rises 3 1/2 through it: mitre 45. The
    # dormer's planes do not slope that way: bevel 26.57 alone.
    beside, under = member(frame(made), "end/left"), member(frame(made), "layout/3")
    (slant,) = beside.last_cut
    assert (round(math.degrees(slant.mitre)), round(math.degrees(slant.bevel))) == (45, 0)
    # 70 less 2.1213 less 1 1/2 = 66.379; the far face 3 1/2 higher.
    assert edges(beside) == [66.379, 66.379, 69.879, 69.879]
    # At 47.25: 90 + 27.25 / 2 = 103.625, less 1.6771 and 1.5: 100.448, and 3/4 more at 48.75.
    assert edges(under) == [100.448, 101.198] * 2
    (cut,) = under.last_cut
    assert (round(math.degrees(cut.bevel), 2), cut.mitre) == (26.57, 0)


def test_the_plates_beside_the_dormer_are_whole_on_both_faces() -> None:
    # The same plane comes down to the wall before and behind the dormer: 20 long on both sides,
    # square, and as long on the far face as on face A.
    made = walled(msgspec.structs.replace(GABLE, dormers=(DORMER,)), (200, 100), (200, 260))
    for cause in ("top/1/1", "top/4/1"):
        plate = member(frame(made), cause)
        assert edges(plate) == [20.0] * 4
        assert all(c.is_square for c in (*plate.first_cut, *plate.last_cut))


def test_across_the_wing() -> None:
    # Along u = -40, from eave to eave of the wing, v = 100 to 260, its ridge over the middle.
    made = walled(msgspec.structs.replace(GABLE, wings=(WING,)), (-40, 100), (-40, 260))
    assert points(made) == [(0, 30), (80, 110), (160, 30)]
    # Stud 5 stands astride the ridge, 79.25 to 80.75: edges at 109.25 less 3.6213 = 105.629.
    ridge = member(frame(made), "layout/5")
    assert edges(ridge) == [105.629] * 4
    assert [round(math.degrees(c.bevel)) for c in ridge.last_cut] == [45, -45]


def test_a_valley_seen_by_a_wall_aslant() -> None:
    # From (-50, 130) at 45 degrees in plan: u = -50 + s, v = 130 + s for s = x / root 2. The wing
    # is at 30 + 30 + s, the main roof at 30 - 50 + s: always 80 lower. At v = 180, s = 50, the wing
    # turns: 110 - (s - 50) = 160 - s, and meets -20 + s at s = 90, 70 high.
    made = walled(msgspec.structs.replace(GABLE, wings=(WING,)), (-50, 130), (70, 250))
    root = math.sqrt(2)
    expected = [(0, 60), (50 * root, 110), (90 * root, 70), (120 * root, 100)]
    assert points(made) == [(round(x, 4), y) for x, y in expected]
    # Rising at 45 degrees aslant: along 1/root 2 and across 1/root 2, so mitre = atan 0.7071 =
    # 35.26 and bevel = atan(0.7071 x cos 35.26 = 0.5774) = 30.
    (cut,) = member(frame(made), "layout/1").last_cut
    assert round(math.degrees(cut.mitre), 2) == 35.26
    assert round(math.degrees(cut.bevel), 2) == 30.0


def test_under_a_hip() -> None:
    # 12 in 12 from 30 at the start of the room. Across at v = 60 the roof is a table 90 high
    # between u = 60 and u = 180.
    hipped = msgspec.structs.replace(GABLE, start_hip=US.slope(30, in_12(12)))
    made = walled(hipped, (20, 60), (220, 60))
    assert points(made) == [(0, 50), (40, 90), (160, 90), (200, 50)]
    # In the middle the hip rises through the wall, away from the start: far face 3 1/2 higher.
    stud = member(frame(made), "layout/6")
    assert edges(stud) == [86.379, 86.379, 89.879, 89.879]
    (cut,) = stud.last_cut
    assert (round(math.degrees(cut.mitre)), round(math.degrees(cut.bevel))) == (45, 0)


@pytest.mark.parametrize(
    ("pitches", "corners"),
    [
        # 24 in 12 for 40: 30 + 80 = 110; then 6 in 12: 150 at the middle.
        pytest.param(
            (24, 6), [(0, 30), (40, 110), (120, 150), (200, 110), (240, 30)], id="gambrel"
        ),
        # 6 in 12 for 40: 50; then 12 in 12: 130 at the middle.
        pytest.param((6, 12), [(0, 30), (40, 50), (120, 130), (200, 50), (240, 30)], id="kicked"),
    ],
)
def test_changes_of_pitch(pitches: tuple[float, float], corners: list[Pair]) -> None:
    slope = Slope(US.length(30), in_12(pitches[0]), (PitchBreak(US.length(40), in_12(pitches[1])),))
    made = walled(msgspec.structs.replace(GABLE, left=slope, right=slope), (0, 50), (240, 50))
    assert points(made) == corners
    # Four plates, mitred at half the change of angle: 63.435 - 26.565 = 36.87 at the gambrel's
    # break, 45 - 26.565 = 18.435 at the kick.
    angles = [math.degrees(math.atan(p / 12)) for p in pitches]
    low = member(frame(made), "top/1/1")
    assert math.degrees(abs(low.last_cut[0].bevel)) == pytest.approx(abs(angles[0] - angles[1]) / 2)


def test_plates_of_a_gambrel_meet_farther_in_than_its_break() -> None:
    # Undersides: 110 + 2 (x - 40) - 1.5 root 5 = 110 + (x - 40) / 2 - 1.5 x 1.118034: 1.5 (x - 40)
    # = 3.3541 - 1.6771, so x - 40 = 1.118.
    slope = Slope(US.length(30), in_12(24), (PitchBreak(US.length(40), in_12(6)),))
    made = walled(msgspec.structs.replace(GABLE, left=slope, right=slope), (0, 50), (240, 50))
    assert US.of(frame(made).near.segments[0].right) == pytest.approx(41.118, abs=5e-4)


def test_mirrored_wings_and_dormers_give_the_same_wall() -> None:
    other = msgspec.structs.replace(DORMER, side=Side.LEFT)
    room = msgspec.structs.replace(GABLE, dormers=(DORMER,))
    mirrored = msgspec.structs.replace(GABLE, dormers=(other,))
    there = frame(walled(room, (100, 150), (216, 150)))
    # Turned about the middle of the dormer as well as mirrored: v = 150 becomes 210.
    here = frame(walled(mirrored, (140, 210), (24, 210)))
    assert [edges(m) for m in there.members] == [edges(m) for m in here.members]
