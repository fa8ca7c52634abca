"""Openings under the ridge and touching the slope: raked cripples over the header.

The garage gable: 12 + 9 in 12 from either eave, 264 wide, ridge 111 at 132; the partition from 48
to 216, so R = 48 + 0.75 x to x = 84. The plate stands 1.5 x 1.25 = 1.875 high.
"""

from __future__ import annotations

import math

import pytest

from core.framing import Frame, Role
from walls import US, frame_of, in_12, member

SLOPE = (12.0, in_12(9))
GABLE = US.room(264, SLOPE, SLOPE)
# The header runs from 65.5 to 102.5. Over 65.5 the plate's underside is at 48 + 49.125 - 1.875,
# that is 95.25, over 102.5 the same: with the head at 93.75 the header touches it at both ends.
TOUCHING = US.opening("door-1", 67, 34, 93.75)


def frame_with(*added: tuple[str, float]) -> Frame:
    return frame_of(GABLE, US.wall((48, 9), (216, 9), openings=(TOUCHING,), added=added))


def test_it_fits_there_and_nowhere_else() -> None:
    (placed,) = frame_with().openings
    assert placed.fit.fits
    assert [US.of(x) for x in placed.fit.ranges[0]] == pytest.approx([67, 67])


@pytest.mark.parametrize(
    ("cause", "lengths", "bevel"),
    [
        # Mark 5, 79.25 to 80.75: 48 + 59.4375 - 1.875 - 95.25 = 10.3125, and 1.125 more.
        ("5", (10.3125, 11.4375), 36.87),
        # Mark 6, 95.25 to 96.75: 111 - 0.75 x 11.25 - 1.875 - 95.25 = 5.4375, and 1.125 less.
        ("6", (5.4375, 4.3125), -36.87),
    ],
)
def test_cripples_are_raked(cause: str, lengths: tuple[float, float], bevel: float) -> None:
    cripple = member(frame_with(), f"door-1/above/{cause}")
    assert cripple.role is Role.CRIPPLE
    assert [US.of(e) for e in cripple.edges[:2]] == pytest.approx(lengths)
    assert [math.degrees(f.bevel) for f in cripple.last_cut] == pytest.approx([bevel], abs=0.01)


def test_a_cripple_astride_the_ridge_has_two_facets() -> None:
    # 83.25 to 84.75 about the ridge at 84: shoulders 48 + 62.4375 - 1.875 - 95.25 = 13.3125, the
    # point 0.5625 higher.
    cripple = member(frame_with(("x", 83.25)), "door-1/above/x")
    assert [US.of(e) for e in cripple.edges[:2]] == pytest.approx([13.3125, 13.3125])
    assert US.of(cripple.long_point) == pytest.approx(13.875)
    bevels = [math.degrees(f.bevel) for f in cripple.last_cut]
    assert bevels == pytest.approx([36.87, -36.87], abs=0.01)


@pytest.mark.parametrize(
    ("left", "role", "short"),
    [
        # Beside the header's end: 0.75 for each inch from 65.5.
        (66, Role.BLOCK, 0.375),
        (67.5, Role.CRIPPLE, 1.5),
        (65.75, None, None),  # 0.1875, 4.8 mm: less than can be fixed
    ],
)
def test_near_where_they_touch(left: float, role: Role | None, short: float | None) -> None:
    frame = frame_with(("x", left))
    found = frame.member("B/door-1/above/x")
    assert (found.role if found else None) is role
    if found is None:
        assert frame.no_room == ("B/x",)
    else:
        assert US.of(found.short_point) == pytest.approx(short)
