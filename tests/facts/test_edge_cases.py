"""Walls at the edge of what is usual, each number worked by hand; inches.

The garage loft's gable: 12 + 0.75 u to the ridge at u = 132, 111 high. Up its left slope from
u = 48 R = 48 + 0.75 x; a plate 1 1/2 thick stands 1.875 high. Our own arithmetic.
"""

from __future__ import annotations

import msgspec
import pytest

import reading
from core.job import WallResult
from core.lengths import System, Tape
from core.model import LineEdge, Side, Wall
from walls import US, in_12, result, stations

TAPE = Tape.usual(System.INCH)
SLOPE = (12.0, in_12(9))
GABLE = US.room(264, SLOPE, SLOPE)
FLAT = US.room(264, left=(96, in_12(0)))


def sole(found: WallResult) -> list[str]:
    return [TAPE.text(m.along) for m in found.marks if m.plate == "B/sole"]


@pytest.mark.parametrize(
    ("spacing", "marks"),
    [
        # 19.2 n - 0.75: 18.45, 37.65, 56.85, 76.05, 95.25; the fifth centre is the sheet's edge.
        (19.2, '0" 18 7/16" 37 5/8" 56 7/8" 76 1/16" 95 1/4" 98 1/2"'),
        # 24 n - 0.75.
        (24, '0" 23 1/4" 47 1/4" 71 1/4" 95 1/4" 98 1/2"'),
    ],
)
def test_other_spacings(spacing: float, marks: str) -> None:
    found = result(FLAT, US.wall((0, 9), (100, 9), spacing=spacing))
    assert " ".join(sole(found)) == marks
    fifth = [m for m in found.marks if m.plate == "B/sole"][-2]
    assert US.of(fifth.along) == pytest.approx(95.25)


@pytest.mark.parametrize(
    ("run", "marks"),
    [
        # The first mark, 15.25, would stand in the end stud of a wall shorter than 18.25.
        (14, '0" 12 1/2"'),
        (16, '0" 14 1/2"'),
        (18.25, '0" 15 1/4" 16 3/4"'),
        # Two studs side by side; in one of 3 they touch.
        (3, '0" 1 1/2"'),
    ],
)
def test_walls_about_one_spacing_long(run: float, marks: str) -> None:
    assert " ".join(sole(result(FLAT, US.wall((0, 9), (run, 9))))) == marks


def test_a_double_top_plate_on_the_slope() -> None:
    # 1.875 each: 48 + 0.75 x - 3.75 - 1.5 = 42.75 + 0.75 x. At 31.25 66.1875, 1.125 more at 32.75.
    found = result(GABLE, US.wall((48, 9), (120, 9), plates=2))
    assert reading.edges(US, found, "layout/2") == reading.written(*[66.1875, 67.3125] * 2)
    # Both as long, 72 / 0.8 = 90; the mark is on the lower one.
    for layer in (1, 2):
        assert reading.edges(US, found, f"top/1/{layer}") == reading.written(*[90] * 4)
    assert reading.on_top(found, "layout/2").plate == "B/top/1/2"


def test_a_gap_of_a_quarter_under_the_plate() -> None:
    # Every stud a quarter shorter than 44.625 + 0.75 x; plates and marks stay.
    wall = US.wall((48, 9), (120, 9))
    tight, short = (
        result(GABLE, msgspec.structs.replace(wall, fit=fit)) for fit in (None, US.length(0.25))
    )
    assert reading.edges(US, tight, "layout/2") == reading.written(*[68.0625, 69.1875] * 2)
    assert reading.edges(US, short, "layout/2") == reading.written(*[67.8125, 68.9375] * 2)
    assert tight.marks == short.marks
    assert reading.edges(US, short, "top/1/1") == reading.written(*[90] * 4)


def test_points_typed_out_of_order_are_the_same_line() -> None:
    # A sag of 1 in the middle of the slope: 48, 74 instead of 75, 102.
    points = [(0, 48), (36, 74), (72, 102)]
    wall = US.wall((48, 9), (120, 9))
    in_order, mixed = (
        result(GABLE, msgspec.structs.replace(wall, roof_points=stations(US, *given)))
        for given in (points, [points[2], points[0], points[1]])
    )
    assert in_order.frame is not None
    assert mixed.frame is not None
    assert in_order.frame.members == mixed.frame.members
    # Up to x = 36 the line rises 26 in 36: at 15.25 48 + 11.0139; secant root (1 + 0.7222^2) =
    # 1.233551, the plate 1.850326 high: 55.6636.
    assert reading.edges(US, mixed, "layout/1")[:1] == reading.written(55.6636)


def test_an_opening_taller_than_the_roof_anywhere() -> None:
    # Head 120 under a ridge at 111.
    door = US.opening("door-1", 20, 34, 120)
    found = result(GABLE, US.wall((48, 9), (216, 9), openings=(door,)))
    assert [c.message.id for c in found.cautions] == ["opening.fits-nowhere"]


def seen(edge: LineEdge, wall: Wall) -> WallResult:
    return result(GABLE, wall, edge)


def test_seen_from_the_other_side() -> None:
    # The same studs: face A on the other side, left end there, layout from the same end. Lengths
    # stay, long points change sides, bevels their sign; running marks come from the right end.
    here = seen(LineEdge.UPHILL, US.wall((48, 9), (120, 9)))
    there = seen(LineEdge.UPHILL, US.wall((120, 12.5), (48, 12.5), start=Side.RIGHT))
    for cause in ("layout/1", "layout/2", "layout/3", "layout/4"):
        left, right, *_ = reading.edges(US, here, cause)
        assert reading.edges(US, there, cause) == reading.written(right, left, right, left)
        (cut,), (other,) = (reading.stick(f, cause).last_cut for f in (here, there))
        assert (cut.face_up, other.face_up) == ("right", "left")
        assert cut.bevel == pytest.approx(-other.bevel)
        for mark in (reading.on_sole, reading.on_top):
            one, two = mark(here, cause), mark(there, cause)
            assert (one.origin, two.origin) == (Side.LEFT, Side.RIGHT)
            assert (one.edge, two.edge) == (Side.RIGHT, Side.LEFT)
            assert one.along == pytest.approx(two.along)
