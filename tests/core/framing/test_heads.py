"""Raked heads: openings whose header follows the slope over them, by hand; inches.

A shed roof at 9 in 12 is 60 high at the eave; the wall runs up the slope from 12 in. in. Over x its
roof line is 69 + 3x/4. Square thickness times 5/4 is plumb thickness: the underside of its plate,
1 1/2 thick, is 1 7/8 lower, 67 1/8 + 3x/4.
"""

from __future__ import annotations

import math

import msgspec
import pytest

from core.framing import Facet, Frame, Member
from core.framing.heads import header_rise, highest_head, plumb_rise
from core.lengths import Length
from core.model import Header, HeaderKind, HeadLie, LineEdge, Opening, Room, Side, Wall
from walls import US, Pair, frame_of, in_12, member, result

SHED = US.room(240, (60, in_12(9)))
GABLE = US.room(240, (60, in_12(9)), (60, in_12(9)))
ANGLE = math.atan(0.75)


def raked(opening: Opening) -> Opening:
    return msgspec.structs.replace(opening, head_lie=HeadLie.RAKED)


def door(left: float = 48, head: float = 80, header: Header | None = None) -> Opening:
    return raked(US.opening("door-1", left, 32, head, header=header))


def up(*openings: Opening, **more: object) -> Wall:
    return US.wall((12, 100), (132, 100), openings=openings, **more)  # type: ignore[arg-type]


def framed(opening: Opening, room: Room = SHED) -> Frame:
    frame = frame_of(room, up(opening))
    assert frame.openings[0].fit.fits
    return frame


def corners(found: Member) -> list[Pair]:
    return [(US.of(x), US.of(y)) for x, y in found.near]


def inches(found: Member) -> tuple[float, float]:
    return US.of(found.long_point), US.of(found.short_point)


def settings(cut: tuple[Facet, ...]) -> list[object]:
    return [(facet.bevel, facet.mitre, facet.face_up) for facet in cut]


def close(*points: Pair) -> list[object]:
    return [pytest.approx(point) for point in points]


@pytest.mark.parametrize(
    ("kind", "timber", "plies", "rise", "plumb"),
    [
        (HeaderKind.NONE, (1.5, 3.5), 1, 0, 0),
        (HeaderKind.FLAT, (1.5, 3.5), 2, 3, 3.75),
        (HeaderKind.ON_EDGE, (1.5, 5.5), 2, 5.5, 6.875),
    ],
)
def test_how_high_a_header_is(
    kind: HeaderKind, timber: Pair, plies: int, rise: float, plumb: float
) -> None:
    header = US.header(kind, timber, plies)
    assert US.of(header_rise(header)) == pytest.approx(rise)
    assert US.of(plumb_rise(header, 0.75)) == pytest.approx(plumb)


def test_the_head_is_stated_at_its_lower_side() -> None:
    """32 in. up the slope it is 24 higher. Down the slope the lower side is the right one."""
    (placed,) = framed(door()).openings
    assert [US.of(y) for y in placed.heads] == pytest.approx([80, 104])
    wall = US.wall((132, 100), (12, 100), openings=(door(left=40),))
    (placed,) = frame_of(SHED, wall).openings
    assert placed.fit.fits
    assert [US.of(y) for y in placed.heads] == pytest.approx([104, 80])


def test_trimmers_of_two_lengths() -> None:
    """The left one stands from 46 1/2 to 48: cut to 80 - 9/8 = 78 7/8 and to 80, on a sole of
    1 1/2. The right one from 80 to 81 1/2: to 104 and 105 1/8. Both are bevelled to the slope."""
    frame = framed(door())
    left, right = (member(frame, f"door-1/trimmer/{side.value}") for side in Side)
    assert inches(left) == pytest.approx((78.5, 77.375))
    assert inches(right) == pytest.approx((103.625, 102.5))
    for trimmer in (left, right):
        (facet,) = trimmer.last_cut
        assert settings((facet,)) == [(pytest.approx(ANGLE), 0.0, "right")]
        assert trimmer.first_cut[0].is_square


def test_a_flat_header_lies_along_the_slope() -> None:
    """Between the kings, 35 apart: 35 x 5/4 along the slope, plumb cuts bevelled 36.87 degrees.

    Tip to tip it is 1 1/2 x 3/4 longer.
    """
    header = member(framed(door()), "door-1/header/1")
    assert corners(header) == close((46.5, 78.875), (81.5, 105.125), (81.5, 107), (46.5, 80.75))
    assert inches(header) == pytest.approx((43.75, 43.75))
    assert US.of(header.overall) == pytest.approx(44.875)
    for cut in (header.first_cut, header.last_cut):
        assert settings(cut) == [(pytest.approx(ANGLE), 0.0, "top")]


def test_two_flat_plies_lie_on_each_other() -> None:
    lower, upper = (
        member(framed(door(header=US.header(plies=2))), f"door-1/header/{n}") for n in (1, 2)
    )
    assert corners(upper)[0] == pytest.approx(corners(lower)[3])
    assert corners(upper)[3] == pytest.approx((46.5, 78.875 + 2 * 1.875))


def test_a_header_on_edge_is_mitred() -> None:
    """A pair of 2x6: 5 1/2 x 5/4 plumb. Lying on its wide face, the saw swings to the slope."""
    header = US.header(HeaderKind.ON_EDGE, (1.5, 5.5), 2)
    beam = member(framed(door(header=header)), "door-1/header/1")
    assert beam.count == 2
    assert corners(beam)[3] == pytest.approx((46.5, 78.875 + 6.875))
    assert settings(beam.last_cut) == [(0.0, pytest.approx(ANGLE), "any")]


def test_cripples_are_all_alike() -> None:
    """From the header, 80 + 1 7/8 high over 48, to the plates, 103 1/8: 21 1/4, wherever.

    Layout centres at 48, 64 and 80 stand over the header; both ends are bevelled alike.
    """
    frame = framed(door())
    above = [member(frame, f"door-1/above/{n}") for n in (3, 4, 5)]
    assert [inches(m) for m in above] == [pytest.approx((21.25, 21.25))] * 3
    for cripple in above:
        assert settings(cripple.first_cut) == [(pytest.approx(ANGLE), 0.0, "left")]
        assert settings(cripple.last_cut) == [(pytest.approx(ANGLE), 0.0, "right")]


def test_no_cripples_under_a_header_at_the_plates() -> None:
    """Under the plates, 103 1/8 over 48, less the header's 1 7/8: a head at 101 1/4."""
    frame = framed(door(head=101.25))
    assert not [m for m in frame.members if "/above/" in m.key]
    header = member(frame, "door-1/header/1")
    assert corners(header)[2] == pytest.approx((81.5, 67.125 + 0.75 * 81.5))


@pytest.mark.parametrize(
    ("room", "opening", "highest"),
    [
        # 103 1/8 under the plates over 48, less the header's 1 7/8.
        (SHED, door(), 101.25),
        # Level, it has to pass over its left trimmer, at 46 1/2: 102, less 1 1/2.
        (SHED, US.opening("door-1", 48, 32, 80), 100.5),
        # Raked across a ridge it is none; the lower of its trimmers' outer edges counts as well.
        (GABLE, door(left=90), 67.125 + 0.75 * (88.5) - 1.5),
    ],
)
def test_the_highest_head(room: Room, opening: Opening, highest: float) -> None:
    frame = frame_of(room, up(opening))
    found = highest_head(opening, US.length(1.5).mm, (frame.near, frame.far))
    assert US.of(found) == pytest.approx(highest)


def test_no_header() -> None:
    """The trimmers alone, cut to the head: under the plates it is at 103 1/8."""
    frame = framed(door(head=103.125, header=US.header(HeaderKind.NONE)))
    trimmer, king = (member(frame, f"door-1/{role}/left") for role in ("trimmer", "king"))
    assert corners(trimmer)[3] == pytest.approx(corners(king)[2])


def test_a_raked_window_has_a_level_sill() -> None:
    window = raked(US.opening("window-1", 48, 32, 80, sill=36))
    frame = framed(window)
    sill = member(frame, "window-1/sill/1")
    assert corners(sill) == close((48, 34.5), (80, 34.5), (80, 36), (48, 36))
    assert US.of(member(frame, "window-1/below/4").top) == pytest.approx(34.5)
    outline = [(US.of(x), US.of(y)) for x, y in frame.openings[0].outline]
    assert outline == close((48, 36), (80, 36), (80, 104), (48, 80))


@pytest.mark.parametrize(
    ("head", "room", "ranges"),
    [
        # 81 7/8 under 67 1/8 + 3x/4 from 19 2/3 on; 120 less end stud, king, trimmer, door: 83 1/2.
        (80, SHED, [(59 / 3, 83.5)]),
        # Right up to the plates at its limit, 129 3/4 over 83 1/2, less 1 7/8.
        (127.875, SHED, [(83.5, 83.5)]),
        (128, SHED, []),
        # The ridge stands over 108: the door has to have its right trimmer's edge before it.
        # Its plates' undersides meet there too, in both slopes at the same height.
        (80, GABLE, [(59 / 3, 74.5)]),
    ],
)
def test_where_it_fits(head: float, room: Room, ranges: list[Pair]) -> None:
    (placed,) = frame_of(room, up(door(head=head))).openings
    found = [(US.of(low), US.of(high)) for low, high in placed.fit.ranges]
    assert found == [pytest.approx(pair) for pair in ranges]


def test_it_may_stand_on_either_slope_of_a_gable() -> None:
    """From eave to eave, ridge over 120: on the left slope up to 120 - 1 1/2 - 32, on the right
    one from 121 1/2, mirrored: 240 - 32 less the left range. At the eaves, 81 7/8 is reached at
    (81 7/8 - 58 1/8) x 4/3 = 31 2/3."""
    wall = US.wall((0, 100), (240, 100), openings=(door(left=60),))
    (placed,) = frame_of(GABLE, wall).openings
    found = [(US.of(low), US.of(high)) for low, high in placed.fit.ranges]
    assert found == [pytest.approx((95 / 3, 86.5)), pytest.approx((121.5, 208 - 95 / 3))]


@pytest.mark.parametrize("off", [-9e-7, 0.0, 9e-7])
def test_at_the_very_end_of_a_slope_it_is_raked(off: float) -> None:
    """At 74 1/2 its right trimmer ends at the ridge; a millionth of a mm is no matter."""
    opening = msgspec.structs.replace(door(), left=Length(74.5 * 25.4 + off))
    (placed,) = frame_of(GABLE, up(opening)).openings
    assert placed.fit.fits
    assert placed.rake == pytest.approx(0.75)


def test_under_a_level_roof_it_is_level() -> None:
    room = US.room(240, (100, in_12(0)))
    plain = frame_of(room, up(US.opening("door-1", 48, 32, 80)))
    assert frame_of(room, up(door())).members == plain.members


def test_across_the_slope_the_header_stays_level_through_the_wall() -> None:
    """A wall at 45 degrees in plan: 9 in 12 is 0.53 along it and through it. Its trimmers are
    bevelled alone; the tops of kings and cripples are cut to both slopes."""
    wall = US.wall((12, 20), (132, 140), openings=(door(left=60, head=60),))
    frame = frame_of(SHED, wall)
    slope = 0.75 * math.sqrt(0.5)
    assert frame.openings[0].rake == pytest.approx(slope)
    (top,) = member(frame, "door-1/trimmer/right").last_cut
    assert (top.bevel, top.mitre) == pytest.approx((math.atan(slope), 0.0))
    cripple = member(frame, "door-1/above/5")
    assert cripple.first_cut[0].mitre == 0.0
    assert abs(cripple.last_cut[0].mitre) == pytest.approx(math.atan(slope))
    header = member(frame, "door-1/header/1")
    assert header.near == header.far


@pytest.mark.parametrize(
    ("edge", "along"),
    [
        # Near edges from the header's low end at 46 1/2: 3/4, 16 3/4 and 32 3/4, times 5/4.
        (LineEdge.NEAR, [0.9375, 20.9375, 40.9375]),
        # The uphill edges are 1 1/2 farther up.
        (LineEdge.UPHILL, [2.8125, 22.8125, 42.8125]),
    ],
)
def test_marks_run_along_the_header_from_its_low_end(edge: LineEdge, along: list[float]) -> None:
    """Layout starts at the right end, yet the header's tape hooks on its low, left end.

    Centres from the right: 120 - 16n; those at 72 and 56 stand over the header, and 40 is out.
    """
    found = result(SHED, up(door()), edge)
    marks = [m for m in found.marks if m.plate == "B/door-1/header/1"]
    assert [US.of(m.along) for m in marks] == pytest.approx(along)
    assert {m.origin for m in marks} == {Side.LEFT}
    other = result(SHED, up(door(), start=Side.RIGHT), edge)
    lows = [m for m in other.marks if m.plate == "B/door-1/header/1"]
    assert {m.origin for m in lows} == {Side.LEFT}
    assert [US.of(m.along_sole) for m in lows] == pytest.approx(
        [x + (1.5 if edge is LineEdge.UPHILL else 0) for x in (8.75, 24.75)]
    )
