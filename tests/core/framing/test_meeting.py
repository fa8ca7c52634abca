"""Walls that end against each other, found from the plan; studs and blocks worked by hand."""

from __future__ import annotations

import math

import msgspec
import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import LineString, Polygon

from core.framing import Meeting, Member, Role, footprints, meetings
from core.job import WallResult, work_out
from core.lengths import System
from core.model import MeetingKind, Opening, Point, Project, Room, Side, SiteRecord, Wall, WallFace
from walls import US, in_12, result

TWO, THREE, BLOCKS = MeetingKind.TWO_STUDS, MeetingKind.THREE_STUDS, MeetingKind.BLOCKS
FLAT = US.room(264, left=(97.5, in_12(0)))
"""Plates' underside at 96."""
RAKE = US.room(264, left=(24, in_12(9)))


def ending(left_end: tuple[float, float], right_end: tuple[float, float]) -> Wall:
    """A wall "C" between two plan points."""
    return msgspec.structs.replace(US.wall(left_end, right_end), letter="C")


def met(through: Wall, other: Wall) -> list[tuple[Side, WallFace, float, float]]:
    return [
        (m.end, m.face, round(US.of(m.left), 3), round(US.of(m.right), 3))
        for m in meetings(through, footprints((through, other)))
    ]


THROUGH = US.wall((0, 100), (120, 100))
"""Runs to the right along v = 100; its timber lies on the far side, to v = 103 1/2."""


@pytest.mark.parametrize(
    ("left_end", "right_end", "found"),
    [
        # C comes from v = 20 up to v = 100; its timber lies to the left of its line u = 50.
        pytest.param((50, 20), (50, 100), [(Side.RIGHT, WallFace.A, 46.5, 50)], id="right end"),
        # Drawn the other way its timber lies to the right.
        pytest.param((50, 100), (50, 20), [(Side.LEFT, WallFace.A, 50, 53.5)], id="left end"),
        pytest.param((50, 103.5), (50, 150), [(Side.LEFT, WallFace.FAR, 46.5, 50)], id="far face"),
        # Half an inch of board hangs between: still against it. Two inches: not.
        pytest.param((50, 20), (50, 99.5), [(Side.RIGHT, WallFace.A, 46.5, 50)], id="board"),
        pytest.param((50, 20), (50, 98), [], id="short of it"),
        pytest.param((50, 20), (50, 150), [], id="across it"),
        pytest.param((10, 100), (110, 100), [], id="along it"),
        pytest.param((130, 20), (130, 100), [], id="past its end"),
        # Timber from u = 116.5 to 120: the corner.
        pytest.param((120, 20), (120, 100), [(Side.RIGHT, WallFace.A, 116.5, 120)], id="corner"),
        # At 45 degrees, 3 1/2 in. of timber take up 3.5 * 1.41421 = 4.950 of the face.
        pytest.param((10, 60), (50, 100), [(Side.RIGHT, WallFace.A, 45.050, 50)], id="slanting"),
    ],
)
def test_ends_found_from_the_plan(
    left_end: tuple[float, float],
    right_end: tuple[float, float],
    found: list[tuple[Side, WallFace, float, float]],
) -> None:
    assert met(THROUGH, ending(left_end, right_end)) == found


def framed(
    other: Wall,
    kind: MeetingKind | None,
    room: Room = FLAT,
    openings: tuple[Opening, ...] = (),
) -> WallResult:
    """The wall along v = 100 that the other one ends against."""
    through = msgspec.structs.replace(
        US.wall((0, 100), (120, 100), openings=openings), meeting=kind
    )
    project = Project("test", System.INCH, room, (through, other))
    return work_out(project, SiteRecord()).wall("B")


def at(found: WallResult) -> dict[str, tuple[float, float]]:
    """Left and right edge of what stands at the meeting, by the rest of its key."""
    return {
        m.key.removeprefix("B/meets/"): (round(US.of(m.left), 3), round(US.of(m.right), 3))
        for m in _members(found)
        if m.key.startswith("B/meets/")
    }


def _members(found: WallResult) -> tuple[Member, ...]:
    assert found.frame is not None
    return found.frame.members


def to(u: float) -> Wall:
    """The wall C whose timber takes up B's face A from u - 3.5 to u."""
    return ending((u, 20), (u, 100))


def test_two_studs_stand_half_behind_the_other_wall() -> None:
    """C takes up 52.5 to 56; studs stand at 47.25 and 63.25, clear of both."""
    assert at(framed(to(56), TWO)) == {
        "C/right/left": (51.75, 53.25),
        "C/right/right": (55.25, 56.75),
    }


def test_three_studs_have_the_middle_one_turned_flat() -> None:
    """C takes up 52.5 to 56, middle 54.25: the flat one from 54.25 - 1.75, one on either side."""
    assert at(framed(to(56), THREE)) == {
        "C/right/flat": (52.5, 56),
        "C/right/left": (51, 52.5),
        "C/right/right": (56, 57.5),
    }


def test_a_stud_of_the_layout_serves_where_it_shows_enough() -> None:
    """C takes up 48.5 to 52; the stud at 47.25-48.75 shows 1 1/4 in. beside it: none on the left.

    On the right one at 52 - 0.75.
    """
    assert at(framed(to(52), TWO)) == {"C/right/right": (51.25, 52.75)}


def test_a_stud_in_the_way_has_the_new_one_nailed_to_its_outer_side() -> None:
    """C takes up 47.5 to 51; the stud at 47.25 shows only 1/4 in.: another at 45.75-47.25."""
    assert at(framed(to(51), TWO)) == {
        "C/right/left": (45.75, 47.25),
        "C/right/right": (50.25, 51.75),
    }


def test_a_stud_behind_the_other_wall_takes_the_place_of_the_flat_one() -> None:
    """C takes up 46.25 to 49.75 and the stud at 47.25-48.75 stands behind its middle."""
    assert at(framed(to(49.75), THREE)) == {
        "C/right/left": (44.75, 46.25),
        "C/right/right": (49.75, 51.25),
    }


def test_at_a_corner_the_end_stud_is_one_of_them() -> None:
    """C takes up 116.5 to 120; the end stud stands at 118.5. Two: the other at 116.5 - 0.75.

    Three, with the wall's own end stud and that of C: one turned flat, 115 to 118.5, which shows
    1 1/2 in. beside C, so that nothing more is needed.
    """
    assert at(framed(to(120), TWO)) == {"C/right/left": (115.75, 117.25)}
    assert at(framed(to(120), THREE)) == {"C/right/flat": (115, 118.5)}


def test_blocks_fill_the_bays_behind_the_other_wall() -> None:
    """C takes up 52.5 to 56, with 1 1/2 in. on either side within the bay 48.75-63.25.

    Blocks 3 1/2 high from 1.5 to 92.5, 91 in. apart at most 24: four steps of 22.75.
    """
    found = framed(to(56), BLOCKS)
    bottoms = [round(US.of(m.bottom), 3) for m in _members(found) if m.role is Role.BACKING]
    assert bottoms == [1.5, 24.25, 47, 69.75, 92.5]
    assert set(at(found).values()) == {(48.75, 63.25)}


@pytest.mark.parametrize("kind", [TWO, THREE, BLOCKS])
def test_nothing_is_told_where_it_is_chosen(kind: MeetingKind) -> None:
    assert framed(to(56), kind).cautions == ()


def test_nothing_is_set_and_it_is_told_where_nothing_is_chosen() -> None:
    found = framed(to(56), None)
    assert at(found) == {}
    assert [c.message.id for c in found.cautions] == ["meeting.not-chosen"]


def test_a_wall_that_ends_in_a_doorway_is_told() -> None:
    found = framed(to(56), TWO, openings=(US.opening("door-1", 40, 32, 80),))
    assert [c.message.id for c in found.cautions] == ["meeting.in-opening"]


def test_a_stud_turned_flat_under_a_slope_is_mitred_where_others_are_bevelled() -> None:
    """Up a slope of 9 in 12 (36.87 degrees): mitre alone, and 3 1/2 in. of rise 0.75 * 3.5.

    Plates' underside 24 + 0.75 x - 1.5 * 1.25 = 22.125 + 0.75 x; flat stud from 52.5: its left
    edge 22.125 + 39.375 - 1.5 = 60, its right one 60 + 2.625.
    """
    found = framed(to(56), THREE, RAKE)
    (flat,) = [m for m in _members(found) if m.key.endswith("/flat")]
    (cut,) = flat.last_cut
    assert (math.degrees(cut.bevel), math.degrees(cut.mitre)) == pytest.approx((0, 36.8699))
    assert [US.of(edge) for edge in flat.edges] == pytest.approx([60, 62.625, 60, 62.625])
    assert (US.of(flat.thickness), US.of(flat.width)) == pytest.approx((1.5, 3.5))


def test_walls_of_the_job_change_a_wall_only_where_they_meet_it() -> None:
    """The inputs of a wall hold the meetings, so that it is worked out again when C moves."""
    one, same, other = framed(to(56), TWO), framed(to(56), TWO), framed(to(60), TWO)
    assert one.inputs == same.inputs != other.inputs
    assert result(FLAT, THROUGH).inputs.around.meetings == ()


@given(
    st.floats(10, 110),
    st.floats(25, 155).map(math.radians),
    st.floats(0, 2 * math.pi),
    st.sampled_from([-1.0, 1.0]),
)
def test_a_turned_and_shifted_plan_gives_the_same_meetings(
    where: float, lean: float, turn: float, side: float
) -> None:
    """C starts on face A (or the far face) of B at `where` and leans away from it at an angle."""
    rise = 0.0 if side < 0 else 3.5
    foot = (where, rise)
    tip = (where + 60 * math.cos(lean), rise + side * 60 * math.sin(lean))
    plain = _meeting(((0, 0), (120, 0)), (foot, tip), 0.0)
    turned = _meeting(((0, 0), (120, 0)), (foot, tip), turn)
    assert len(plain) == len(turned) == 1
    for a, b in zip(plain, turned, strict=True):
        assert (a.end, a.face) == (b.end, b.face)
        assert (a.left, a.right) == pytest.approx((b.left, b.right), abs=1e-6)


@given(
    st.floats(20, 100),
    st.floats(25, 155).map(math.radians),
    st.sampled_from([-1.0, 1.0]),
    st.booleans(),
)
def test_what_a_wall_takes_up_is_its_strip_across_the_face(
    where: float, lean: float, side: float, back: bool
) -> None:
    """The oracle: C's strip as a long polygon, cut with the line of the face by shapely."""
    rise = 0.0 if side < 0 else 3.5
    way = (math.cos(lean), side * math.sin(lean))
    foot, tip = (where, rise), (where + 60 * way[0], rise + 60 * way[1])
    start, end = (tip, foot) if back else (foot, tip)
    (found,) = _meeting(((0, 0), (120, 0)), (start, end), 0.0)
    assert found.end is (Side.RIGHT if back else Side.LEFT)
    # Timber lies to the left of the way from the left end to the right one.
    left = (-(end[1] - start[1]) / 60 * 3.5, (end[0] - start[0]) / 60 * 3.5)
    far = [(where + s * 500 * way[0], rise + s * 500 * way[1]) for s in (-1, 1)]
    strip = Polygon([*far, *((x + left[0], y + left[1]) for x, y in reversed(far))])
    low, _, high, _ = strip.intersection(LineString([(-900, rise), (900, rise)])).bounds
    assert (US.of(found.left), US.of(found.right)) == pytest.approx((low, high), abs=1e-6)


def _meeting(
    b: tuple[tuple[float, float], ...], c: tuple[tuple[float, float], ...], turn: float
) -> tuple[Meeting, ...]:
    cos, sin = math.cos(turn), math.sin(turn)

    def turned(wall: Wall, ends: tuple[tuple[float, float], ...]) -> Wall:
        points = [
            Point(US.length(300 + u * cos - v * sin), US.length(200 + u * sin + v * cos))
            for u, v in ends
        ]
        return msgspec.structs.replace(wall, left_end=points[0], right_end=points[1])

    through = turned(THROUGH, b)
    return meetings(through, footprints((through, turned(ending((0, 0), (1, 1)), c))))


def test_blocks_fill_a_neighbouring_bay_where_the_other_wall_shows_no_stud() -> None:
    """C takes up 59 to 62.5; with 1 1/2 in. on its right, 64, it still ends in the stud at 63.25.

    From 60.5 to 64 it is in the way of both bays: 64 + 1 1/2 = 65.5 reaches into 64.75-78.5.
    """
    assert {x for x, _ in at(framed(to(62.5), BLOCKS)).values()} == {48.75}
    assert {x for x, _ in at(framed(to(64), BLOCKS)).values()} == {48.75, 64.75}


def test_a_stud_that_only_touches_is_not_in_the_way() -> None:
    """C takes up 49.5 to 53: on its left the new stud would be 48.75 to 50.25, against the one of
    the layout, 47.25 to 48.75, and stays."""
    assert at(framed(to(53), TWO))["C/right/left"] == (48.75, 50.25)
