"""The line over a plate that lies level through the wall; mm."""

from __future__ import annotations

import pytest

from core.roof import RoofLine, Segment, level_line


def one(height: float, along: float, across: float) -> RoofLine:
    return RoofLine((Segment(0.0, 1000.0, height, along, across),))


@pytest.mark.parametrize(
    ("across", "beyond", "height"),
    [
        # 100 through the wall: the far face is lower where the roof falls away from face A.
        (-0.5, 0.0, 950.0),
        (0.5, 0.0, 1000.0),
        (0.0, 40.0, 1000.0),
        # 40 further out on the downhill side the roof is 20 lower still.
        (-0.5, 40.0, 930.0),
        (0.5, 40.0, 980.0),
    ],
)
def test_the_lower_face_counts(across: float, beyond: float, height: float) -> None:
    near, far = one(1000.0, 0.25, across), one(1000.0 + 100 * across, 0.25, across)
    assert level_line(near, far, beyond) == one(height, 0.25, 0.0)


def test_faces_that_cross_make_a_break() -> None:
    # Rising 1 in 1 over one face, falling over the other: 100 + x and 900 - x meet at 400.
    line = level_line(one(100.0, 1.0, 0.3), one(900.0, -1.0, -0.3), 0.0)
    assert line.points() == ((0.0, 100.0), (400.0, 500.0), (1000.0, -100.0))
    assert {s.across for s in line.segments} == {0.0}


def test_a_step_stays() -> None:
    stepped = RoofLine((Segment(0, 500, 800, 0, -0.5), Segment(500, 1000, 600, 0, 0)))
    line = level_line(stepped, stepped, 0.0)
    assert line.points() == ((0, 800), (500, 800), (500, 600), (1000, 600))
