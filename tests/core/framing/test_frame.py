"""The frame as a whole: which studs stand, which have no room, which are under too low a roof."""

from __future__ import annotations

import pytest

from core.framing import Frame, Role, frame_wall
from core.model import Room, Side, Wall
from core.roof import Part, Plane, Roof, roof_line
from walls import US, Pair, frame_of, in_12, member, result

SLOPE = (12.0, in_12(9))
GABLE = US.room(264, SLOPE, SLOPE)
FLAT = US.room(264, left=(96, in_12(0)))
STEEP = US.room(264, left=(12, in_12(18)))


def studs(frame: Frame) -> list[tuple[str, float]]:
    """Standing members from left to right: cause and left edge."""
    return [
        (m.key.removeprefix("B/"), round(US.of(m.left), 4)) for m in frame.members if not m.lies
    ]


@pytest.mark.parametrize(
    ("run", "expected"),
    [
        pytest.param(2, [("end/left", 0)], id="shorter than two studs"),
        pytest.param(3, [("end/left", 0), ("end/right", 1.5)], id="two studs side by side"),
        pytest.param(10, [("end/left", 0), ("end/right", 8.5)], id="shorter than the spacing"),
        pytest.param(16, [("end/left", 0), ("end/right", 14.5)], id="as long as the spacing"),
        pytest.param(
            20, [("end/left", 0), ("layout/1", 15.25), ("end/right", 18.5)], id="one stud of layout"
        ),
        pytest.param(
            17, [("end/left", 0), ("end/right", 15.5)], id="the first would overlap the end"
        ),
    ],
)
def test_short_walls(run: float, expected: list[tuple[str, float]]) -> None:
    frame = frame_of(FLAT, US.wall((0, 9), (run, 9)))
    assert studs(frame) == expected
    assert (frame.no_room, frame.too_low) == ((), ())


def test_a_wall_shorter_than_a_stud_is_none() -> None:
    found = result(FLAT, US.wall((0, 9), (1.4, 9)))
    assert found.frame is None
    assert [c.message.id for c in found.cautions] == ["wall.no-roof"]


@pytest.mark.parametrize(
    ("room", "ends", "too_low", "first"),
    [
        # 0.75 x from the floor at 0: the end stud at 0 has no length, 15.25 x 0.75 = 11.4 has.
        pytest.param(
            US.room(264, left=(0, in_12(9))), ((0, 9), (60, 9)), ["end/left"], "layout/1", id="left"
        ),
        pytest.param(
            US.room(264, left=(0, in_12(9))),
            ((60, 9), (0, 9)),
            ["end/right"],
            "end/left",
            id="right, from the other face",
        ),
        # 0.1667 x: at 15.25 it is at 2.54, less the plate of 1.52 below the sole plate's top.
        pytest.param(
            US.room(264, left=(0, in_12(2))),
            ((0, 9), (60, 9)),
            ["end/left", "layout/1"],
            "layout/2",
            id="end stud and first stud",
        ),
    ],
)
def test_too_low(room: Room, ends: tuple[Pair, Pair], too_low: list[str], first: str) -> None:
    found = result(room, US.wall(*ends))
    assert found.frame is not None
    assert found.frame.too_low == tuple(f"B/{cause}" for cause in too_low)
    assert studs(found.frame)[0][0] == first
    assert [c.message.id for c in found.cautions] == ["stud.too-low"] * len(too_low)


def test_a_roof_too_low_on_the_far_face_alone() -> None:
    # A knee wall under 12 in 12, R = 4 at face A: plate 2.1213, sole plate 1.5, so 0.3787 are left
    # there, and 3.1213 less than nothing at the far face.
    frame = frame_of(US.room(264, left=(0, in_12(12))), US.wall((4, 0), (4, 60)))
    assert studs(frame) == []
    assert len(frame.too_low) == 5


def test_past_45_degrees() -> None:
    # 18 in 12: cosine 0.5547; a plate stands 1.5 / 0.5547 = 2.7042 high. At 16.75:
    # 12 + 25.125 - 2.7042 - 1.5 = 32.9208.
    stud = member(frame_of(STEEP, US.wall((0, 9), (60, 9))), "layout/1")
    assert US.of(stud.long_point) == pytest.approx(32.9208, abs=1e-4)
    assert US.of(stud.long_point - stud.short_point) == pytest.approx(2.25)


def test_zero_slope() -> None:
    frame = frame_of(FLAT, US.wall((0, 9), (60, 9)))
    for stud in (m for m in frame.members if not m.lies):
        assert [US.of(e) for e in stud.edges] == pytest.approx([93] * 4)  # 96 - 1.5 - 1.5
        assert [f.is_square for f in stud.last_cut] == [True]


@pytest.mark.parametrize(
    ("wall", "no_room", "left_of"),
    [
        pytest.param(
            US.wall((0, 9), (60, 9), moved=((2, 30.0),)), (), {"layout/2": 30}, id="moved"
        ),
        pytest.param(US.wall((0, 9), (60, 9), added=(("x", 20.0),)), (), {"x": 20}, id="added"),
        pytest.param(
            US.wall((0, 9), (60, 9), added=(("x", 32.75),)), (), {"x": 32.75}, id="side by side"
        ),
        pytest.param(
            US.wall((0, 9), (60, 9), added=(("x", 32.0),)),
            ("x",),
            {"layout/2": 31.25},
            id="added onto a stud of the layout",
        ),
        pytest.param(
            US.wall((0, 9), (60, 9), added=(("x", 1.0),)), ("x",), {}, id="added onto the end stud"
        ),
        pytest.param(
            US.wall((0, 9), (60, 9), added=(("x", 1.5),)), (), {"x": 1.5}, id="beside the end stud"
        ),
        pytest.param(
            US.wall((0, 9), (60, 9), added=(("x", 59.0),)), ("x",), {}, id="past the other end stud"
        ),
        pytest.param(
            US.wall((0, 9), (60, 9), moved=((2, -9.0),)), ("layout/2",), {}, id="out of the wall"
        ),
        pytest.param(
            US.wall((0, 9), (60, 9), moved=((1, 30.5),)),
            ("layout/2",),
            {"layout/1": 30.5},
            id="moved onto the next place",
        ),
        pytest.param(
            US.wall((0, 9), (60, 9), added=(("x", 20.0), ("y", 21.0))),
            ("y",),
            {"x": 20},
            id="two added onto each other",
        ),
    ],
)
def test_changes(wall: Wall, no_room: tuple[str, ...], left_of: dict[str, float]) -> None:
    found = result(FLAT, wall)
    assert found.frame is not None
    assert found.frame.no_room == tuple(f"B/{cause}" for cause in no_room)
    assert {cause: left for cause, left in studs(found.frame) if cause in left_of} == left_of
    assert not {cause for cause, _ in studs(found.frame)} & set(no_room)
    assert [c.message.id for c in found.cautions] == ["stud.no-room"] * len(no_room)


def test_a_gap_left_on_purpose() -> None:
    frame = frame_of(FLAT, US.wall((0, 9), (60, 9), left_out=(2,)))
    assert [cause for cause, _ in studs(frame)] == ["end/left", "layout/1", "layout/3", "end/right"]


@pytest.mark.parametrize(
    ("left", "width", "head"),
    [
        pytest.param(2, 20, 80, id="at the wall's end, no room for a king"),
        pytest.param(20, 20, 95, id="taller than the roof anywhere"),
        pytest.param(20, 100, 80, id="wider than the wall"),
    ],
)
def test_an_opening_that_does_not_fit_is_not_framed(left: float, width: float, head: float) -> None:
    plain = frame_of(FLAT, US.wall((0, 9), (60, 9)))
    door = US.opening("door-1", left, width, head)
    found = result(FLAT, US.wall((0, 9), (60, 9), openings=(door,)))
    assert found.frame is not None
    assert found.frame.members == plain.members
    assert [p.fit.fits for p in found.frame.openings] == [False]
    assert [c.key for c in found.cautions] == ["B/door-1"]


def test_of_two_openings_too_near_the_second_is_not_framed() -> None:
    doors = (US.opening("door-1", 20, 20, 80), US.opening("door-2", 45, 20, 80))
    found = result(FLAT, US.wall((0, 9), (120, 9), openings=doors))
    assert found.frame is not None
    assert [(p.key, p.fit.fits) for p in found.frame.openings] == [
        ("B/door-1", True),
        ("B/door-2", False),
    ]
    assert {m.key.split("/")[1] for m in found.frame.members if m.role is Role.KING} == {"door-1"}


def test_the_same_wall_from_its_other_face() -> None:
    """Lengths stay, in the other order; the long points and their faces change sides."""
    here = frame_of(GABLE, US.wall((48, 9), (140, 9)))
    there = frame_of(GABLE, US.wall((140, 9), (48, 9), start=Side.RIGHT))
    pairs = zip(
        [m for m in here.members if not m.lies],
        [m for m in reversed(there.members) if not m.lies],
        strict=True,
    )
    opposite = {"left": "right", "right": "left"}
    for seen, turned in pairs:
        near_left, near_right, far_left, far_right = seen.edges
        assert turned.edges == pytest.approx((near_right, near_left, far_right, far_left))
        assert US.of(turned.left + seen.right) == pytest.approx(92)
        assert turned.last_cut[0].bevel == pytest.approx(-seen.last_cut[0].bevel)
        assert turned.last_cut[0].face_up == opposite[seen.last_cut[0].face_up]


def test_out_from_under_a_dormer() -> None:
    # A gable of 9 in 12 with its ridge 111 high, and over v = 0 to 60 a shed dormer at 144 - u / 4.
    # At u = 192 the dormer is at 96 and the main roof at 210 - 144 = 66; the step is 60 along the
    # wall. Level along the wall, both slope across it, up toward the ridge on the far side.
    inch = US.length(1).mm
    outline = tuple((u * inch, v * inch) for u, v in ((132, 0), (264, 0), (264, 60), (132, 60)))
    main = Part((Plane(0.75, 0.0, 12 * inch), Plane(-0.75, 0.0, 210 * inch)))
    roof = Roof((main, Part((Plane(-0.25, 0.0, 144 * inch),), outline)))
    near, far = (roof_line(roof, (u * inch, 0.0), (u * inch, 120 * inch)) for u in (192.0, 188.5))
    frame = frame_wall(US.wall((192, 0), (192, 120)), near, far)
    # Plates 1.5462 and 1.875 high: 96 - 1.5462 - 1.5 and 66 - 1.875 - 1.5. Stud 4, 63.25 to 64.75,
    # is past the step; the one added at 59.5 stands astride it and passes under the main roof.
    assert US.of(member(frame, "layout/3").edges[0]) == pytest.approx(92.9538, abs=1e-4)
    assert US.of(member(frame, "layout/4").edges[0]) == pytest.approx(62.625)
    # 3.5 further in: a quarter of it higher under the dormer, three quarters under the main roof.
    assert US.of(member(frame, "layout/3").edges[2]) == pytest.approx(93.8288, abs=1e-4)
    assert US.of(member(frame, "layout/4").edges[2]) == pytest.approx(65.25)
    astride = US.wall((192, 0), (192, 120), added=(("x", 59.5),))
    assert US.of(member(frame_wall(astride, near, far), "x").edges[0]) == pytest.approx(62.625)


def test_members_go_from_left_to_right_then_plates() -> None:
    door = US.opening("door-1", 56, 34, 82.5)
    members = frame_of(GABLE, US.wall((48, 9), (216, 9), openings=(door,))).members
    upright = [m.left for m in members if m.role not in (Role.TOP_PLATE, Role.SOLE_PLATE)]
    assert upright == sorted(upright)
    assert [m.key for m in members[-3:]] == ["B/top/1/1", "B/top/2/1", "B/sole"]


def test_member_by_key() -> None:
    frame = frame_of(FLAT, US.wall((0, 9), (60, 9)))
    found = frame.member("B/layout/2")
    assert found is not None
    assert found.key == "B/layout/2"
    assert frame.member("B/layout/9") is None


@pytest.mark.parametrize("start", [Side.LEFT, Side.RIGHT])
def test_end_studs_stand_at_both_ends_wherever_the_layout_starts(start: Side) -> None:
    found = studs(frame_of(FLAT, US.wall((0, 9), (61, 9), start=start)))
    assert (found[0], found[-1]) == (("end/left", 0), ("end/right", 59.5))


def test_labels_stay_with_their_keys_when_a_stud_is_added() -> None:
    plain = result(FLAT, US.wall((0, 9), (60, 9)))
    assert plain.label_of["B/layout/2"] == "B3"
    added = result(FLAT, US.wall((0, 9), (60, 9), added=(("x", 20.0),)))
    # Nothing is printed yet, so numbers follow the wall from left to right.
    assert (added.label_of["B/x"], added.label_of["B/layout/2"]) == ("B3", "B4")
