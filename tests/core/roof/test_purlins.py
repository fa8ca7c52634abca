"""Purlins in plan and through walls: whole, short, turned, ending in a wall; millimetres."""

from __future__ import annotations

import math

import msgspec
import pytest

from core.lengths import Length
from core.model import PassesPurlin, Passing, Purlin, Room, Wall
from core.roof import (
    as_passed,
    inside_purlin,
    purlin_outline,
    purlins_met,
    purlins_through,
    roof_of,
    roof_to,
)
from walls import UK, Pair, at_degrees

# 45 degrees from 500 at the left eave wall, 8000 long.
PLAIN = UK.room(6000, (500, at_degrees(45)), None, length=8000)


def purlin(
    left: float,
    ends: tuple[float | None, float | None] = (None, None),
    turned: float | None = None,
    passing: Passing = Passing.THROUGH,
) -> Purlin:
    start, end = (None if at is None else UK.length(at) for at in ends)
    return Purlin(
        "purlin-1",
        UK.length(left),
        UK.timber((50, 100)),
        UK.length(2000),
        passing,
        UK.length(5),
        start,
        end,
        None if turned is None else UK.length(turned),
    )


def room(*purlins: Purlin) -> Room:
    return msgspec.structs.replace(PLAIN, purlins=purlins)


def near(wall: Wall, made: Purlin) -> list[Pair]:
    return [found.near for found in purlins_through(room(made), wall)]


ACROSS = UK.wall((1000, 3000), (4000, 3000))
"""Its far face is at v = 3089, for face A looks to the room's start."""


@pytest.mark.parametrize(
    ("made", "corners"),
    [
        (purlin(2000), [(2000, -8000), (2000, 16000), (2050, 16000), (2050, -8000)]),
        (purlin(2000, (100, 900)), [(2000, 100), (2000, 900), (2050, 900), (2050, 100)]),
        # Turned it goes from end to end of the room; its face runs 3-4-5 here, so that 50 to the
        # right of it is (40, -30).
        (
            purlin(0, (0, 4000), turned=3000),
            [(0, 0), (3000, 4000), (3040, 3970), (40, -30)],
        ),
        # Straight across the room: thick toward the room's start.
        (purlin(0, (4000, 4000), turned=6000), [(0, 4000), (6000, 4000), (6000, 3950), (0, 3950)]),
    ],
)
def test_corners_in_plan(made: Purlin, corners: list[Pair]) -> None:
    for found, wanted in zip(purlin_outline(PLAIN, made), corners, strict=True):
        assert found == pytest.approx(wanted)


@pytest.mark.parametrize(
    ("ends", "meets"),
    [
        pytest.param((None, None), True, id="whole"),
        pytest.param((None, 3000), False, id="ends at face A"),
        pytest.param((None, 3001), True, id="ends in the wall"),
        pytest.param((3088, None), True, id="starts in the wall"),
        pytest.param((3089, None), False, id="starts at the far face"),
        pytest.param((2000, 4000), True, id="short, through it"),
    ],
)
def test_a_short_purlin_meets_the_walls_that_it_reaches(
    ends: tuple[float | None, float | None], meets: bool
) -> None:
    made = purlin(2000, ends)
    assert near(ACROSS, made) == ([pytest.approx((1000, 1050))] if meets else [])
    assert purlins_met(room(made), ACROSS) == (("purlin-1",) if meets else ())


def test_a_turned_purlin_crosses_aslant() -> None:
    # From u = 0 to 6000 over 8000: 3-4-5, so at v = 3000 its left face is at u = 2250 and it takes
    # up 50 x 5/4 = 62.5 along the wall, from 1250 on; at the far face 89 x 3/4 = 66.75 farther.
    (found,) = purlins_through(room(purlin(0, (0, 8000), turned=6000)), ACROSS)
    assert found.near == pytest.approx((1250, 1312.5))
    assert found.far == pytest.approx((1316.75, 1379.25))
    assert (found.left, found.right) == pytest.approx((1245, 1384.25))


def test_the_end_of_a_turned_purlin_within_the_wall_takes_up_what_it_reaches() -> None:
    # It ends at v = 3040, u = 2280, square to its run: the right corner is at (2320, 3010). Face A
    # is reached by both long faces; the far face by none, which counts as all within: from u = 2250
    # on the left face at v = 3000 to the right corner's 2320.
    (found,) = purlins_through(room(purlin(0, (0, 3040), turned=2280)), ACROSS)
    assert found.near == pytest.approx((1250, 1312.5))
    assert found.far == pytest.approx((1250, 1320))


def test_a_beam_across_the_room_is_met_by_a_wall_along_it() -> None:
    beam = purlin(0, (4000, 4000), turned=6000)
    along = UK.wall((2000, 1000), (2000, 5000))
    assert near(along, beam) == [pytest.approx((2950, 3000))]
    across = UK.wall((1000, 3900), (4000, 3900))
    assert near(across, beam) == []
    assert inside_purlin(room(beam), across) == "purlin-1"


def test_a_wall_passes_in_its_own_way() -> None:
    whole = room(purlin(2000, passing=Passing.UNDER))
    assert purlins_through(as_passed(whole, ACROSS), ACROSS) == ()
    own = msgspec.structs.replace(ACROSS, passes=(PassesPurlin("purlin-1", Passing.THROUGH),))
    assert len(purlins_through(as_passed(whole, own), own)) == 1
    # Over u = 2025 the rafters are at 2525; the purlin's underside is at 2000.
    heights = [roof_to(whole, roof_of(whole), wall).height((2025, 3000)) for wall in (ACROSS, own)]
    assert heights == pytest.approx([2000, 2525])


@pytest.mark.parametrize(
    ("ends", "at", "height"),
    [
        pytest.param((None, 5000), (2025, 4999), 2000, id="under it"),
        pytest.param((None, 5000), (2025, 5001), 2525, id="past its end"),
        pytest.param((1000, None), (2025, 999), 2525, id="before its start"),
    ],
)
def test_a_short_purlin_is_overhead_only_where_it_is(
    ends: tuple[float | None, float | None], at: Pair, height: float
) -> None:
    made = room(purlin(2000, ends, passing=Passing.UNDER))
    assert roof_of(made).height(at) == pytest.approx(height)


def test_an_end_within_a_wall_counts_as_through_it_for_that_wall_alone() -> None:
    made = room(purlin(2000, (None, 3040), passing=Passing.UNDER))
    heights = [roof_to(made, roof_of(made), ACROSS).height((2025, v)) for v in (3001, 3088)]
    assert heights == pytest.approx([2000, 2000])
    other = UK.wall((1000, 3060), (4000, 3060))
    assert roof_to(made, roof_of(made), other).height((2025, 3088)) == pytest.approx(2525)


def test_a_wall_without_length_meets_nothing() -> None:
    point = UK.wall((1000, 3000), (1000, 3000))
    made = room(purlin(2000, (None, Length(3040).mm), passing=Passing.UNDER))
    assert purlins_met(made, point) == ()
    assert as_passed(made, point) is made


def test_a_wall_aslant_meets_a_whole_purlin_as_before() -> None:
    (found,) = purlins_through(room(purlin(2000)), UK.wall((1000, 1000), (3000, 3000)))
    assert found.near == pytest.approx((1000 * math.sqrt(2), 1050 * math.sqrt(2)))
    assert found.far[0] == pytest.approx(1000 * math.sqrt(2) + 89)


@pytest.mark.parametrize(
    ("ends", "turned", "corners"),
    [
        # The room is 8000 long: not turned it lies as far beyond it on either side.
        ((None, None), None, ((1000, -8000), (1000, 16000))),
        ((500, 7000), None, ((1000, 500), (1000, 7000))),
        # Turned, from the start to the end of the room.
        ((None, None), 2000, ((1000, 0), (2000, 8000))),
        ((500, None), 2000, ((1000, 500), (2000, 8000))),
    ],
)
def test_the_ends_of_its_left_face(
    ends: tuple[float | None, float | None], turned: float | None, corners: tuple[Pair, Pair]
) -> None:
    assert purlin_outline(PLAIN, purlin(1000, ends, turned))[:2] == corners
