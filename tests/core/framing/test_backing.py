"""Backing behind fixtures, worked by hand, and what is told where there is none."""

from __future__ import annotations

import msgspec
import pytest

from core.framing import Role
from core.job import WallResult
from core.model import Blocking, Fixture, FixtureKind, Opening, Room, Side
from walls import US, in_12, result

FLAT = US.room(264, left=(97.5, in_12(0)))
"""Plates' underside at 96."""
RAKE = US.room(264, left=(24, in_12(12)))
"""The plates' underside at x is 24 + x - 1.5 * 1.41421 = 21.879 + x."""


def rail(left: float, width: float, height: float, name: str = "rail-1") -> Fixture:
    """A 2x6 behind a rail."""
    at, wide, high = (US.length(x) for x in (left, width, height))
    return Fixture(name, FixtureKind.RAIL, at, wide, high, US.timber((1.5, 5.5)))


def framed(
    *fixtures: Fixture, room: Room = FLAT, openings: tuple[Opening, ...] = (), row: float = 0.0
) -> WallResult:
    """A wall of 120: studs at 0, 15.25, 31.25, 47.25, 63.25, 79.25, 95.25, 111.25 and 118.5."""
    stated = Blocking((US.length(row),)) if row else None
    wall = US.wall((0, 9), (120, 9), openings=openings)
    return result(room, msgspec.structs.replace(wall, fixtures=fixtures, blocking=stated))


def pieces(found: WallResult, role: Role = Role.BACKING) -> dict[str, tuple[float, ...]]:
    """Left, right, bottom and top of each piece by its key, in."""
    assert found.frame is not None
    return {
        m.key: tuple(round(US.of(v), 3) for v in (m.left, m.right, m.bottom, m.top))
        for m in found.frame.members
        if m.role is role
    }


def told(found: WallResult) -> list[tuple[str, dict[str, float]]]:
    """Ids and lengths (in) of the cautions."""
    return [
        (
            c.message.id,
            {
                name: round(US.of(value.mm), 3)
                for name, value in c.message.values
                if hasattr(value, "mm")
            },
        )
        for c in found.cautions
    ]


def test_a_rail_is_backed_in_every_bay_it_reaches_into() -> None:
    """From 20 to 50 it reaches into the bays 16.75-31.25, 32.75-47.25 and 48.75-63.25.

    A 2x6 on edge with its middle at 36 stands from 36 - 2 3/4 to 36 + 2 3/4.
    """
    found = framed(rail(20, 30, 36))
    assert pieces(found) == {
        "B/rail-1/layout/1": (16.75, 31.25, 33.25, 38.75),
        "B/rail-1/layout/2": (32.75, 47.25, 33.25, 38.75),
        "B/rail-1/layout/3": (48.75, 63.25, 33.25, 38.75),
    }
    assert told(found) == []


def test_it_lies_flush_with_the_face_as_it_is_cut_and_listed() -> None:
    found = framed(rail(20, 5, 36))
    assert found.frame is not None
    piece = found.frame.member("B/rail-1/layout/1")
    assert piece is not None
    assert (US.of(piece.thickness), US.of(piece.width)) == pytest.approx((1.5, 5.5))
    assert US.of(piece.long_point) == pytest.approx(14.5)


def test_under_a_rake_the_nearest_height_that_fits_is_told() -> None:
    """From 2 to 30: the bay 1.5-15.25 is 21.879 + 1.5 = 23.379 high at its low side, so a middle
    at 36 (38.75 at the top) does not fit there; 23.379 - 2.75 = 20.629 does in both bays.
    The next bay is 38.629 high at its low side: 38.75 does not fit by an eighth.
    """
    found = framed(rail(2, 28, 36), room=RAKE)
    assert pieces(found) == {}
    assert told(found) == [
        ("fixture.height", {"left": 2, "right": 15.25, "nearest": 20.629}),
        ("fixture.height", {"left": 16.75, "right": 30, "nearest": 35.879}),
    ]


def test_across_a_doorway_there_is_nothing_to_back() -> None:
    """RO 40 to 72; trimmers and kings stand on either side, so the gap is the opening itself."""
    found = framed(rail(20, 60, 36), openings=(US.opening("door-1", 40, 32, 80),))
    # Bays 16.75-31.25 and 32.75-37; right of the king (73.5-75) the bay 75-79.25.
    assert sorted(p[0] for p in pieces(found).values()) == [16.75, 32.75, 75]
    assert told(found) == [("fixture.unbacked", {"left": 40, "right": 72})]


def test_past_the_wall_there_is_nothing_to_back() -> None:
    found = framed(rail(100, 40, 36))
    assert told(found) == [("fixture.unbacked", {"left": 120, "right": 140})]


def test_a_row_of_blocks_steps_aside_for_backing() -> None:
    """The row at 36 would lie in the backing, 33.25 to 38.75: it goes to 33.25 - 0.75 = 32.5.

    In the other bays it stays at 36.
    """
    found = pieces(framed(rail(20, 5, 36), row=36), Role.BLOCKING)
    middles = {key: (p[2] + p[3]) / 2 for key, p in found.items()}
    assert middles["B/blocking/row-1/layout/1"] == 32.5
    assert {m for key, m in middles.items() if not key.endswith("layout/1")} == {36}


def test_of_two_fixtures_in_one_place_the_first_is_backed() -> None:
    """A shelf 3 in. over the rail has no room for its own 2x6 in the same bay."""
    found = framed(rail(20, 5, 36), rail(22, 5, 39, "shelf-1"))
    assert set(pieces(found)) == {"B/rail-1/layout/1"}


def test_a_box_behind_which_backing_stands_is_blocked() -> None:
    box = US.box("box-1", "B/layout/1", Side.RIGHT, 36)
    wall = US.wall((0, 9), (120, 9), boxes=(box,))
    found = result(FLAT, msgspec.structs.replace(wall, fixtures=(rail(20, 5, 36),)))
    assert [(b.blocked_by) for b in found.boxes] == ["B/rail-1/layout/1"]
    assert [c.message.id for c in found.cautions] == ["box.blocked"]


@pytest.mark.parametrize(
    ("height", "count"),
    [
        # 5 1/2 wide with its middle at 4 1/4: its bottom at 1.5 lies on the sole plate.
        pytest.param(4.25, 3, id="on the sole plate"),
        pytest.param(4.1875, 0, id="a sixteenth into it"),
        # Its top at 93.25 + 2.75 = 96 under the plate.
        pytest.param(93.25, 3, id="under the top plate"),
        pytest.param(93.3125, 0, id="a sixteenth into that"),
    ],
)
def test_backing_may_touch_the_plates(height: float, count: int) -> None:
    assert len(pieces(framed(rail(20, 30, height)))) == count
