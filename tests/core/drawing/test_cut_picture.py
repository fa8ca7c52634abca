"""The picture of a cut: true slants, the saw's angles, and no text over another."""

from __future__ import annotations

import math
from itertools import combinations

import pytest

from core.drawing import Drawing, Fill, Pen, Stroke, Text
from core.drawing.cut_picture import cut_picture
from core.drawing.extent import extent, text_corners
from core.drawing.flow import flow, moved
from core.drawing.placing import bounds
from core.drawing.saw_picture import ARM, saw_pictures
from core.framing import Setting, Way
from core.lengths import System, Tape
from core.model import USUAL_SAW, Room, Wall
from core.wording import Wording
from walls import US, frame_of, in_12, member

WORDS = Wording("us", Tape.usual(System.INCH))
WIDTH = 80.0
STUD = (38.1, 88.9)
RAKE = US.wall((36, 96), (228, 96))
KNEE = US.wall((36, 240), (36, 96), plate=(1.5, 5.5))
ASKEW = US.wall((36, 20), (90, 74))


def gable(rise: float, flat: float | None = None) -> Room:
    return US.room(264, (30, in_12(rise)), (30, in_12(rise)), flat=flat)


def picture(room: Room, wall: Wall, cause: str, width: float = WIDTH) -> Drawing:
    return cut_picture(member(frame_of(room, wall), cause), USUAL_SAW, width, WORDS)


def words(drawing: Drawing) -> list[str]:
    return [e.text for e in drawing if isinstance(e, Text)]


CASES = [
    (gable(9), RAKE, "layout/1"),
    (gable(9), RAKE, "layout/6"),
    (gable(9), RAKE, "top/1/1"),
    (gable(9, 90), RAKE, "top/1/1"),
    (gable(9, 90), US.wall((36, 96), (160, 150)), "top/1/1"),
    (gable(9), KNEE, "layout/2"),
    (gable(9), ASKEW, "layout/2"),
    (gable(14), RAKE, "layout/1"),
    (gable(20), KNEE, "layout/2"),
    (gable(20), ASKEW, "layout/2"),
]


@pytest.mark.parametrize(("room", "wall", "cause"), CASES)
def test_no_text_lies_over_another_and_all_of_it_fits(room: Room, wall: Wall, cause: str) -> None:
    drawing = picture(room, wall, cause)
    left, _, right, _ = extent(drawing, 1.0)
    assert right - left <= WIDTH
    rects = [bounds(text_corners(e, 1.0)) for e in drawing if isinstance(e, Text)]
    for a, b in combinations(rects, 2):
        assert a[2] <= b[0] or b[2] <= a[0] or a[3] <= b[1] or b[3] <= a[1], (a, b)


def test_what_a_rake_stud_says() -> None:
    # Long point 66 3/16 at the right edge, and 1 1/8 less at the left one.
    assert words(picture(gable(9), RAKE, "layout/1")) == [
        '65 1/16"',
        '66 3/16"',
        "face A",
        '66 3/16"',
        "right face up",
        "36.9°",
        "blade, from the front",
    ]


def test_the_longest_edge_is_bold() -> None:
    drawing = picture(gable(9), RAKE, "layout/1")
    bold = {e.text for e in drawing if isinstance(e, Text) and e.bold}
    assert bold == {'66 3/16"', "36.9°"}


def test_a_compound_cut_shows_both_settings() -> None:
    said = words(picture(gable(9), ASKEW, "layout/2"))
    assert [text for text in said if text.endswith("°")] == ["27.9°", "25.1°"]
    assert "miter, from above" in said


def test_past_the_stops_the_piece_is_held_another_way() -> None:
    assert "miter, piece on edge" in words(picture(gable(14), RAKE, "layout/1"))
    assert "miter, piece along a block" in words(picture(gable(20), KNEE, "layout/2"))


def test_a_square_piece_has_no_picture() -> None:
    assert picture(gable(9), RAKE, "sole") == ()


@pytest.mark.parametrize("degrees", [5, 22.5, 36.87, 45])
def test_blade_and_fence_show_the_angle(degrees: float) -> None:
    angle = math.radians(degrees)
    mitre, tilt = saw_pictures(Setting(Way.FLAT, angle, angle), STUD, USUAL_SAW, Pen.STUD, WORDS)
    for drawing, up in ((mitre, -1.0), (tilt, 1.0)):
        lines = [e.points for e in drawing if isinstance(e, Stroke) and e.pen is Pen.BORDER]
        (x0, y0), (x1, y1) = lines[-1]
        assert math.atan2(x1 - x0, up * (y1 - y0)) == pytest.approx(angle)
        piece = next(e.outline for e in drawing if isinstance(e, Fill))
        # The piece is cut along the blade: two of its corners lie on its line.
        on_it = [p for p in piece if abs(p[0] - abs(p[1]) * math.tan(angle)) < 1e-9]
        assert len(on_it) == 2


def test_the_scale_ends_at_the_stops() -> None:
    (mitre,) = saw_pictures(Setting(Way.FLAT, 0.0, 0.5), STUD, USUAL_SAW, Pen.STUD, WORDS)
    arc = max((e.points for e in mitre if isinstance(e, Stroke)), key=len)
    ends = [math.degrees(math.atan2(x, -y)) for x, y in (arc[0], arc[-1])]
    assert ends == [pytest.approx(-50), pytest.approx(50)]
    assert all(math.hypot(x, y) == pytest.approx(ARM) for x, y in arc)


def test_what_no_setting_cuts_has_no_picture_of_the_saw() -> None:
    assert saw_pictures(Setting(Way.BY_HAND, 1.2, 1.2), STUD, USUAL_SAW, Pen.STUD, WORDS) == ()


def square(side: float) -> Drawing:
    return (Stroke(((0.0, 0.0), (side, 0.0), (side, side), (0.0, side)), Pen.STUD, closed=True),)


def test_drawings_flow_into_rows() -> None:
    # 10 + 2 + 6 = 18 fit in 20, the third does not: it begins 2 below the taller of the first two.
    placed = flow([square(10), square(6), square(8)], 20.0, 2.0)
    corners = [e.points[0] for e in placed if isinstance(e, Stroke)]
    assert corners == [(0.0, -10.0), (12.0, -10.0), (0.0, -20.0)]


def test_what_is_too_wide_has_a_row_of_its_own_and_nothing_is_nothing() -> None:
    placed = flow([square(30), (), square(6)], 20.0, 2.0)
    assert [e.points[0] for e in placed if isinstance(e, Stroke)] == [(0.0, -30.0), (0.0, -38.0)]
    assert flow([], 20.0, 2.0) == ()


def test_a_drawing_is_moved_as_a_whole() -> None:
    (stroke,) = moved(square(2), (1.0, -1.0))
    assert isinstance(stroke, Stroke)
    assert stroke.points == ((1.0, -1.0), (3.0, -1.0), (3.0, 1.0), (1.0, 1.0))
