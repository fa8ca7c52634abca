"""Blocking, row by row, worked by hand: stated rows, rows at most so far apart, fire blocks."""

from __future__ import annotations

from itertools import pairwise

import msgspec
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.framing import Frame, Role
from core.framing.bays import Bay
from core.framing.blocking import rows
from core.model import Blocking, Room, Wall
from walls import UK, US, frame_of, in_12, result

FLAT = US.room(264, left=(97.5, in_12(0)))
"""Plates' underside at 96."""
RAKE = US.room(264, left=(24, in_12(12)))
"""Over a wall from u = 0 the plates' underside at x is 24 + x - 1.5 * 1.41421 = 21.879 + x."""


def blocking(
    *heights: float, most: float | None = None, fire: float | None = None, staggered: bool = False
) -> Blocking:
    return Blocking(
        tuple(US.length(h) for h in heights),
        None if most is None else US.length(most),
        None if fire is None else US.length(fire),
        staggered,
    )


def framed(stated: Blocking, room: Room = FLAT, run: float = 49.5, **more: object) -> Frame:
    """A wall of this length up the slope, with studs at 0, 15.25, 31.25 and its right end."""
    wall = US.wall((0, 9), (run, 9))
    return frame_of(room, msgspec.structs.replace(wall, blocking=stated, **more))


def blocks(frame: Frame) -> dict[str, tuple[float, float, float]]:
    """Left end, length and middle of each block by the rest of its key, in."""
    return {
        m.key.removeprefix("B/blocking/"): (
            round(US.of(m.left), 3),
            round(US.of(m.long_point), 3),
            round(US.of(m.bottom + m.top) / 2, 3),
        )
        for m in frame.members
        if m.role is Role.BLOCKING
    }


def test_a_stated_row_has_a_block_in_every_bay() -> None:
    """Studs at 0, 15 1/4, 31 1/4 and 48: bays of 13 3/4, 14 1/2 and 15 1/4 in."""
    assert blocks(framed(blocking(48))) == {
        "row-1/end/left": (1.5, 13.75, 48),
        "row-1/layout/1": (16.75, 14.5, 48),
        "row-1/layout/2": (32.75, 15.25, 48),
    }


def test_staggered_blocks_stand_one_thickness_higher_by_turns() -> None:
    found = blocks(framed(blocking(48, staggered=True)))
    assert [middle for _, _, middle in found.values()] == [48, 49.5, 48]


@pytest.mark.parametrize(
    ("most", "middles"),
    [
        # Clear height 96 - 1.5 = 94.5.
        pytest.param(94.5, [], id="just as high as allowed"),
        # 94 from the floor: the block reaches to 94.75, under 96.
        pytest.param(94, [94], id="a hair too high"),
        # 48 leaves 96 - 48.75 = 47.25 over it.
        pytest.param(48, [48], id="half way"),
        # 32 and 64; 96 - 64.75 = 31.25 over them.
        pytest.param(32, [32, 64], id="thirds"),
        # 24, 48, 72; over 72.75 there are 23.25.
        pytest.param(24, [24, 48, 72], id="quarters"),
    ],
)
def test_rows_at_most_so_far_apart(most: float, middles: list[float]) -> None:
    found = blocks(framed(blocking(most=most)))
    first = [middle for key, (_, _, middle) in found.items() if key.endswith("layout/1")]
    assert sorted(first) == middles
    assert len(found) == 3 * len(middles)


def test_further_rows_lie_evenly_between_stated_ones() -> None:
    """To 60 there are 59.25 - 1.5 = 57.75 clear, more than 40: one row half way, at 30.

    Over 60.75 there are 35.25, less than 40: none.
    """
    found = blocks(framed(blocking(60, most=40)))
    assert {middle for _, _, middle in found.values()} == {30, 60}


def test_under_a_rake_each_bay_has_the_rows_it_is_high_enough_for() -> None:
    """Plates' underside 21.879 + x. Stated row at 36, at most 30 apart.

    Bay 1.5-15.25: 23.379 to 37.129 high: 36 does not fit; 37.129 - 1.5 > 30, so a row, wanted at
    30 but the block would reach 30.75 over 23.379: it lies close under the plate, at 22.629.
    Bay 16.75-31.25: 38.629 to 53.129: 36 fits (36.75); up to it 33.75 clear, more than 30: one half
    way, at 18. Over 36.75 there are 16.4.
    Bay 32.75-48: 54.629 to 69.879: the same, but over 36.75 there are 33.129: another, wanted at
    66, close under the plate at 54.629 - 0.75 = 53.879.
    """
    found = blocks(framed(blocking(36, most=30), RAKE))
    assert {key: middle for key, (_, _, middle) in found.items()} == pytest.approx(
        {
            "most-1/end/left": 22.629,
            "row-1/layout/1": 36,
            "most-1/layout/1": 18,
            "row-1/layout/2": 36,
            "most-1/layout/2": 18,
            "most-2/layout/2": 53.879,
        },
        abs=1e-3,
    )


@pytest.mark.parametrize(("eave", "count"), [(122.9, 0), (123.1, 3)])
def test_fire_blocks_in_bays_higher_than_ten_feet(eave: float, count: int) -> None:
    """Clear height = eave - 1.5 plate - 1.5 sole: 119.9 needs none, 120.1 does, at 120.

    At 120 the block reaches to 120.75, under the plate at 121.6. IRC R302.11 asks that concealed
    spaces be cut off at floor and ceiling and every 10 ft horizontally, as seen quoted in FACTS;
    that a bay higher than 10 ft gets a block is common practice, no source.
    """
    found = blocks(framed(blocking(fire=120), US.room(264, left=(eave, in_12(0)))))
    assert [key for key in found if key.startswith("fire-1/")] == list(found)
    assert len(found) == count
    assert {middle for _, _, middle in found.values()} <= {120}


def test_a_row_counts_as_a_fire_block() -> None:
    """A row at 100 leaves 98.5 below and 150 - 1.5 - 100.75 above: both under 10 ft."""
    room = US.room(264, left=(150, in_12(0)))
    assert set(blocks(framed(blocking(100, fire=120), room))) == {
        "row-1/end/left",
        "row-1/layout/1",
        "row-1/layout/2",
    }


def test_no_block_stands_in_a_doorway_and_some_over_and_under_openings() -> None:
    """Door RO 40 to 72, head 80, kings 37 and 73.5, header 38.5-73.5 with its top at 81.5.

    The row at 48 runs up to the left king (37) and on from the right one (75). The row at 88 also
    fills the bays over the header: cripples of places 3 (47.25) and 4 (63.25) part 38.5 to 73.5.
    """
    wall = US.wall((0, 9), (120, 9), openings=(US.opening("door-1", 40, 32, 80),))
    wall = msgspec.structs.replace(wall, blocking=blocking(48, 88))
    found = blocks(frame_of(FLAT, wall))
    low = sorted(left for key, (left, _, _) in found.items() if key.startswith("row-1"))
    high = sorted(left for key, (left, _, _) in found.items() if key.startswith("row-2"))
    assert low == [1.5, 16.75, 32.75, 75, 80.75, 96.75, 112.75]
    assert high == [1.5, 16.75, 32.75, 38.5, 48.75, 64.75, 75, 80.75, 96.75, 112.75]


def test_a_row_under_a_sill_and_none_through_the_window() -> None:
    """Window RO 40 to 72, sill 36: its timber lies from 34.5. The row at 24 runs on below it."""
    window = US.opening("window-1", 40, 32, 80, sill=36)
    wall = US.wall((0, 9), (120, 9), openings=(window,))
    low = blocks(frame_of(FLAT, msgspec.structs.replace(wall, blocking=blocking(24))))
    through = blocks(frame_of(FLAT, msgspec.structs.replace(wall, blocking=blocking(48))))
    # Below the sill: trimmer 38.5-40, cripples 47.25 and 63.25, trimmer 72.
    assert {40, 48.75, 64.75} <= {left for left, _, _ in low.values()}
    assert not {40, 48.75, 64.75} & {left for left, _, _ in through.values()}


def test_a_row_over_everything_is_told_with_the_highest_that_fits() -> None:
    """The plates' underside is at 96: the highest middle is 95 1/4."""
    wall = msgspec.structs.replace(US.wall((0, 9), (49.5, 9)), blocking=blocking(48, 97))
    found = result(FLAT, wall)
    assert found.frame is not None
    assert found.frame.nailed.empty_rows == (1,)
    assert US.of(found.frame.nailed.highest_row or 0) == pytest.approx(95.25)
    (caution,) = [c for c in found.cautions if c.message.id == "blocking.no-bay"]
    assert US.of(dict(caution.message.values)["highest"].mm) == pytest.approx(95.25)  # type: ignore[union-attr]


def test_metric_rows() -> None:
    """Studs 38 at 400: bays 38-381, 419-781, then to the end stud at 1200."""
    wall: Wall = UK.wall((0, 500), (1238, 500))
    stated = Blocking(heights=(UK.length(1200),))
    frame = frame_of(
        UK.room(4000, left=(2438, in_12(0))), msgspec.structs.replace(wall, blocking=stated)
    )
    found = [(m.left, m.right, m.bottom, m.top) for m in frame.members if m.role is Role.BLOCKING]
    assert found == [
        pytest.approx((38, 381, 1181, 1219)),
        pytest.approx((419, 781, 1181, 1219)),
        pytest.approx((819, 1200, 1181, 1219)),
    ]


HEIGHTS = st.floats(50, 4000)


@given(
    st.lists(HEIGHTS, max_size=4),
    st.floats(150, 3000),
    st.floats(100, 4500),
    st.floats(0, 400),
    st.lists(st.tuples(HEIGHTS, st.floats(40, 300)), max_size=2),
)
def test_no_clear_height_is_more_than_stated(
    heights: list[float],
    most: float,
    low: float,
    rise: float,
    backing: list[tuple[float, float]],
) -> None:
    """The bay is filled so that at most `most` is clear, unless backing or the wedge under a
    sloping plate keeps a block out; blocks never lie in one another, in backing or outside."""
    taken = tuple(sorted((a, a + b) for a, b in backing))
    bay = Bay("end/left", 0.0, 400.0, 38.0, 38.0 + low, 38.0 + low + rise, 0.0)
    stated = Blocking(tuple(UK.length(h) for h in heights), UK.length(most))
    found = rows(stated, bay, 38.0, taken)
    spans = [(r.middle - 19, r.middle + 19) for r in found]
    for (_, top), (bottom, _) in pairwise(spans):
        assert bottom >= top - 1e-3
    for bottom, top in spans:
        assert bottom >= bay.foot - 1e-3
        assert top <= bay.low + 1e-3
        assert all(top <= a + 1e-3 or bottom >= b - 1e-3 for a, b in taken)
    if not taken and rise <= most - 38:
        edges = [bay.foot, *(y for span in spans for y in span), bay.high]
        assert all(b - a <= most + 1e-3 for a, b in zip(edges[::2], edges[1::2], strict=True))


@pytest.mark.parametrize(
    ("row", "raised"),
    [
        # Blocks 1 1/2 thick: raised ones reach from row + 0.75 to row + 2.25, the plate is at 96.
        pytest.param(93.75, 95.25, id="just room under the plate"),
        pytest.param(93.875, 93.875, id="an eighth short of it"),
    ],
)
def test_a_staggered_block_is_raised_where_it_has_just_room(row: float, raised: float) -> None:
    found = blocks(framed(blocking(row, staggered=True)))
    assert [middle for _, _, middle in found.values()] == [row, raised, row]
