"""Second studs beside others, and those with no room."""

from __future__ import annotations

import msgspec
import pytest

import sound
from core.framing import Role
from core.model import DoubledStud, EndLean, EndStud, Side
from walls import US, in_12, member, result

LEFT, RIGHT = Side.LEFT, Side.RIGHT
FLAT = US.room(264, left=(96, in_12(0)))
SHED = US.room(264, left=(48, in_12(9)))
DOOR = US.opening("door-1", 56, 20, 80)


@pytest.mark.parametrize(
    ("stud", "side", "left"),
    [
        ("layout/1", RIGHT, 16.75),  # 15.25 to 16.75
        ("layout/2", RIGHT, None),  # 32.75 to 34.25, where y stands from 33.5
        ("layout/2", LEFT, 29.75),
        ("end/left", RIGHT, 1.5),
        ("end/left", LEFT, None),  # out of the wall
        ("end/right", LEFT, 117),
        ("x", RIGHT, 21.5),
        ("y", LEFT, None),  # 32 to 33.5, where mark 2 stands until 32.75
        ("layout/3", RIGHT, 48.75),
    ],
)
def test_beside(stud: str, side: Side, left: float | None) -> None:
    wall = US.wall((0, 9), (120, 9), openings=(DOOR,), added=(("x", 20.0), ("y", 33.5)))
    wall = msgspec.structs.replace(wall, doubled=(DoubledStud(f"B/{stud}", side),))
    found = result(FLAT, wall)
    assert found.frame is not None
    second = found.frame.member(f"B/{stud}/double")
    if left is None:
        assert second is None
        assert found.frame.no_room == (f"B/{stud}/double",)
        assert [c.message.id for c in found.cautions] == ["stud.no-room-beside"]
    else:
        assert second is not None
        assert second.role is Role.STUD
        assert US.of(second.left) == pytest.approx(left)
        assert found.frame.no_room == ()


def test_it_is_cut_to_its_own_place_and_marked() -> None:
    # 48 + 0.75 x less 1.875 and 1.5: at 32.75 it is 69.1875, at 34.25 70.3125.
    wall = US.wall((0, 9), (120, 9))
    wall = msgspec.structs.replace(wall, doubled=(DoubledStud("B/layout/2", RIGHT),))
    found = result(SHED, wall)
    assert found.frame is not None
    second = found.frame.member("B/layout/2/double")
    assert second is not None
    assert [US.of(e) for e in second.edges[:2]] == pytest.approx([69.1875, 70.3125])
    marks = [m for m in found.marks if m.member == second.key]
    assert [m.plate for m in marks] == ["B/sole", "B/top/1/1"]


def test_a_stud_that_does_not_stand_has_no_second() -> None:
    wall = US.wall((0, 9), (120, 9), left_out=(2,))
    wall = msgspec.structs.replace(wall, doubled=(DoubledStud("B/layout/2", RIGHT),))
    found = result(FLAT, wall)
    assert found.frame is not None
    assert found.frame.member("B/layout/2/double") is None
    assert found.frame.no_room == ()


def test_beside_a_leaning_end_stud_it_is_clear_on_both_faces() -> None:
    # Face A is toward the eave: the roof is 3 1/2 higher on the far face, where the leaning stud
    # goes on further in. At 12 in 12 R = 60 over face A, 63.5 behind.
    room = US.room(264, left=(24, in_12(12)))
    wall = msgspec.structs.replace(
        US.wall((36, 100), (36, 20), plate=(1.5, 5.5)),
        left_lean=EndLean(US.length(-3), EndStud.LEANING),
        doubled=(DoubledStud("B/end/left", Side.RIGHT),),
    )
    found = result(room, wall)
    assert found.frame is not None
    leaning, second = (member(found.frame, f"end/left{at}") for at in ("", "/double"))
    assert max(x for x, _ in leaning.far) > leaning.right
    assert second.left == pytest.approx(max(x for x, _ in leaning.far))
    sound.no_two_overlap(found, found.frame)
