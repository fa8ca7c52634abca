"""What a person states and the wall cannot hold is told, and left out of the frame."""

from __future__ import annotations

import pytest

from walls import US, in_12, result

FLAT = US.room(264, left=(96, in_12(0)))
DOOR = US.opening("door-1", 40, 34, 82.5)
"""Kings at 37 and 75.5 to 77, trimmers at 38.5 and 74; cripples at 47.25 and 63.25."""


@pytest.mark.parametrize(
    ("left", "no_room"),
    [
        pytest.param(37.5, ["B/added-1"], id="on the king"),
        pytest.param(76.0, ["B/added-1"], id="on the other king"),
        pytest.param(55.0, [], id="over the door: a cripple"),
        pytest.param(28.0, [], id="clear of the king and of the layout at 31.25"),
    ],
)
def test_a_stated_stud_does_not_vanish_in_silence(left: float, no_room: list[str]) -> None:
    wall = US.wall((0, 9), (120, 9), openings=(DOOR,), added=(("added-1", left),))
    found = result(FLAT, wall)
    assert found.frame is not None
    assert list(found.frame.no_room) == no_room
    assert [c.message.id for c in found.cautions] == ["stud.no-room"] * len(no_room)


@pytest.mark.parametrize(
    ("sill", "low"),
    [
        (0.0, False),  # no sill asked for
        (1.0, True),  # its timber would lie from -1/2 to 1, in the sole plate
        (2.9, True),
        (3.0, False),  # 1 1/2 of sole plate and 1 1/2 of sill
        (30.0, False),
    ],
)
def test_a_sill_lies_clear_on_the_sole_plate(sill: float, low: bool) -> None:
    window = US.opening("window-1", 40, 34, 80, sill=sill)
    found = result(FLAT, US.wall((0, 9), (120, 9), openings=(window,)))
    assert found.frame is not None
    sills = [m for m in found.frame.members if m.role.value == "sill"]
    assert (len(sills) == 0) == (low or sill == 0.0)
    assert [c.message.id for c in found.cautions] == ["opening.low-sill"] * low


@pytest.mark.parametrize(
    ("across", "edges", "inside"),
    [
        # 9 in 12 both ways over 264: ridge at 132. Face A at 132, timber at 132 to 128.5 (toward
        # the left eave): the left slope is overhead, near edge 12 + 99 - 1.875 - 1.5 = 107.625,
        # far edge 3.5 * 0.75 = 2.625 lower.
        (132.0, (107.625, 105.0), False),
        (133.75, None, True),  # the ridge runs 1.75 in from face A
        (135.5, (105.0, 107.625), False),  # far face exactly under the ridge
    ],
)
def test_a_wall_along_the_ridge(
    across: float, edges: tuple[float, float] | None, inside: bool
) -> None:
    room = US.room(264, (12, in_12(9)), (12, in_12(9)))
    found = result(room, US.wall((across, 9), (across, 129), plate=(1.5, 5.5)))
    assert [c.message.id for c in found.cautions] == ["wall.ridge-inside"] * inside
    assert found.frame is not None
    stud = found.frame.member("B/layout/3")
    assert stud is not None
    if edges is not None:
        assert US.of(stud.edges[0]) == pytest.approx(edges[0])
        assert US.of(stud.edges[2]) == pytest.approx(edges[1])
