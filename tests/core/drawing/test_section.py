"""The drawing of the room cut across: what it shows, where, and what is written of it; inches."""

from __future__ import annotations

import math

import msgspec
import pytest

from core.drawing import Dimension, Drawing, Fill, Pen, Stroke, Text, View
from core.drawing.extent import extent, text_corners
from core.drawing.placing import Rect, bounds
from core.drawing.section import section
from core.lengths import Pitch, System, Tape
from core.model import (
    ClearKind,
    Dormer,
    DormerKind,
    KeptClear,
    Passing,
    PitchBreak,
    Purlin,
    Room,
    Side,
    Wall,
)
from core.wording import Wording
from walls import UK, US, at_degrees, in_12

INCH = 25.4
WORDS = Wording("us", Tape.usual(System.INCH))
METRIC = Wording("metric", Tape.usual(System.METRIC))
VIEW = View(1 / 50)

GABLE = US.room(240, (30, in_12(9)), (30, in_12(9)), flat=90)
SALTBOX = US.room(240, (30, in_12(6)), (60, in_12(12)))
SHED = US.room(200, (60, in_12(3)))
LOFT = UK.room(6400, (850, at_degrees(38)), (850, at_degrees(38)), flat=2400)


def drawn(room: Room, words: Wording = WORDS, walls: tuple[Wall, ...] = ()) -> Drawing:
    return section(room, VIEW, words, walls)


def figures(drawing: Drawing) -> dict[str, str]:
    """What is written under each key that a person may state."""
    named = (e for e in drawing if isinstance(e, Dimension | Text) and e.key != "headroom")
    return {e.key: e.text for e in named if e.key}


@pytest.mark.parametrize(
    ("room", "words", "wanted"),
    [
        (
            GABLE,
            WORDS,
            {
                "width": '240"',
                "run/left": '120"',
                "run/right": '120"',
                "eave/left": '30"',
                "eave/right": '30"',
                "ridge": '120"',
                "ceiling": '90"',
                "pitch/left/0": "9",
                "pitch/right/0": "9",
            },
        ),
        (
            SALTBOX,
            WORDS,
            {
                "width": '240"',
                "run/left": '180"',
                "run/right": '60"',
                "eave/left": '30"',
                "eave/right": '60"',
                "ridge": '120"',
                "pitch/left/0": "6",
                "pitch/right/0": "12",
            },
        ),
        (
            SHED,
            WORDS,
            {"width": '200"', "eave/left": '60"', "high/right": '110"', "pitch/left/0": "3"},
        ),
        (
            LOFT,
            METRIC,
            {
                "width": "6400",
                "run/left": "3200",
                "run/right": "3200",
                "eave/left": "850",
                "eave/right": "850",
                # 850 + 3200 tan 38 = 850 + 2500.1
                "ridge": "3350",
                "ceiling": "2400",
                "pitch/left/0": "38°",
                "pitch/right/0": "38°",
            },
        ),
    ],
)
def test_every_figure_that_is_stated(room: Room, words: Wording, wanted: dict[str, str]) -> None:
    assert figures(drawn(room, words)) == wanted


def test_the_runs_to_changes_of_pitch_stand_over_those_to_the_ridge() -> None:
    found = {e.key: e for e in drawn(_gambrel()) if isinstance(e, Dimension)}
    assert (found["break/left/1"].text, found["break/right/1"].text) == ('48"', '48"')
    assert found["break/left/1"].aside > found["run/left"].aside > found["width"].aside


@pytest.mark.parametrize(
    ("pitch", "said"),
    [
        (in_12(8.5), "8 1/2"),
        # 12 tan 38 = 9.3754: to the nearest sixteenth 9 3/8.
        (at_degrees(38), "9 3/8"),
        (Pitch(0.0, "0 in 12"), "0"),
    ],
)
def test_the_rise_in_12_is_written_to_a_sixteenth(pitch: Pitch, said: str) -> None:
    assert figures(drawn(US.room(240, (90, pitch))))["pitch/left/0"] == said


def test_the_triangle_has_the_slope_of_the_roof_and_stands_off_the_rafters() -> None:
    triangle = next(e for e in drawn(SALTBOX) if isinstance(e, Stroke) and e.key == "pitch/right/0")
    foot, head, corner = triangle.points
    assert (head[1] - foot[1]) / (foot[0] - head[0]) == pytest.approx(1.0)
    assert corner == (foot[0], head[1])
    assert math.dist(head, corner) * VIEW.scale == pytest.approx(9.0)
    # The rafters' upper edge is 60 + (240 - u) plus their depth times secant, 3.5 * sqrt 2.
    for x, y in (foot, head):
        assert y / INCH > 300 - x / INCH + 3.5 * math.sqrt(2)


def test_headroom_is_told_where_the_room_is_that_high() -> None:
    # 30 + 3/4 u = 60 at u = 40: 160 wide at 60.
    line, text = (e for e in drawn(GABLE) if getattr(e, "key", "") == "headroom")
    assert isinstance(line, Stroke)
    assert isinstance(text, Text)
    assert [round(x / INCH, 6) for x, _ in line.points] == [40, 200]
    assert text.text == '160" wide at 60"'


def test_a_room_lower_than_that_has_no_headroom_line() -> None:
    low = US.room(100, (20, in_12(6)), (20, in_12(6)))
    assert [e for e in drawn(low) if getattr(e, "key", "") == "headroom"] == []


def test_a_ceiling_above_the_ridge_is_not_drawn() -> None:
    high = msgspec.structs.replace(GABLE, flat_ceiling=US.length(130))
    assert "ceiling" not in figures(drawn(high))


def test_rafters_are_as_deep_as_stated_square_to_the_slope() -> None:
    (body,) = (e for e in drawn(SHED) if isinstance(e, Fill) and e.pen is Pen.ROOF_TIMBER)
    (x0, y0), _, _, (x1, y1) = body.outline
    # Rafters of the test's room are 3 1/2 deep; upright that is 3.5 * sqrt(1 + (3/12)^2).
    assert x0 == x1
    assert (y1 - y0) / INCH == pytest.approx(3.5 * math.sqrt(1 + 0.25**2))


def test_a_ridge_beam_hangs_under_the_ridge() -> None:
    beam = US.room(240, (30, in_12(9)), (30, in_12(9)), beam=(3.5, 108))
    fills = [e for e in drawn(beam) if isinstance(e, Fill) and e.pen is Pen.ROOF_TIMBER]
    left, low, right, high = (side / INCH for side in bounds(fills[1].outline))
    assert (left, low, right, high) == pytest.approx((118.25, 108, 121.75, 120))


def test_purlins_and_chimneys_are_seen() -> None:
    purlin = Purlin(
        "purlin-1", US.length(50), US.timber((3, 7)), US.length(55), Passing.THROUGH, US.length(0)
    )
    chimney = KeptClear(
        "chimney-1",
        ClearKind.CHIMNEY,
        *(US.length(x) for x in (100, 50, 24, 24, 2)),
    )
    room = msgspec.structs.replace(GABLE, purlins=(purlin,), kept_clear=(chimney,))
    fills = {e.pen: bounds(e.outline) for e in drawn(room) if isinstance(e, Fill)}
    assert fills[Pen.PURLIN] == pytest.approx([s * INCH for s in (50, 55, 53, 62)])
    assert fills[Pen.BEYOND] == pytest.approx([s * INCH for s in (100, 0, 124, 90)])


def test_a_wall_along_the_room_is_seen_from_its_end_with_its_letter() -> None:
    # Face A at u = 36, timber toward the eave: from 32 1/2, where the roof is 54 3/8 high.
    knee = US.wall((36, 10), (36, 200))
    drawing = drawn(GABLE, walls=(knee,))
    (seen,) = (e for e in drawing if isinstance(e, Fill) and e.pen is Pen.BEYOND)
    assert bounds(seen.outline) == pytest.approx([s * INCH for s in (32.5, 0, 36, 57)])
    assert seen.outline[1][1] / INCH == pytest.approx(30 + 0.75 * 32.5)
    assert next(e.text for e in drawing if isinstance(e, Text) and e.pen is Pen.NOTE) == "B"


def test_a_wall_across_the_room_is_seen_face_on_without_one() -> None:
    drawing = drawn(GABLE, walls=(US.wall((36, 100), (200, 100)),))
    (seen,) = (e for e in drawing if isinstance(e, Fill) and e.pen is Pen.BEYOND)
    assert bounds(seen.outline) == pytest.approx([s * INCH for s in (36, 0, 200, 90)])
    assert "B" not in [e.text for e in drawing if isinstance(e, Text)]


def test_a_dormer_is_seen_where_it_stands_over_the_slope() -> None:
    """A shed dormer on the right slope of 9 in 12 from 30: its face 24 in, 84 high, 3 in 12.

    Its roof is 84 + (216 - u)/4 on the way in, the slope 30 + 3/4 (240 - u): they meet where
    138 - u/4 = 210 - 3/4 u, at u = 144, 102 high. The front is 3 1/2 thick, so that it is seen from
    219 1/2, where the slope is 45 3/8 and the dormer's roof 83 1/8.
    """
    start, width, face, front, height = (US.length(x) for x in (100, 96, 24, 3.5, 84))
    kind, side = DormerKind.SHED, Side.RIGHT
    dormer = Dormer("dormer-1", kind, side, start, width, face, front, height, in_12(3))
    drawing = drawn(msgspec.structs.replace(GABLE, dormers=(dormer,)))
    (seen,) = (e for e in drawing if isinstance(e, Stroke) and e.pen is Pen.BEYOND)
    points = [(round(x / INCH, 3), round(y / INCH, 3)) for x, y in seen.points]
    assert points == [(144, 102), (144, 102), (219.5, 83.125), (219.5, 45.375)]


def _gambrel() -> Room:
    room = US.room(288, (40, in_12(20)), (40, in_12(20)), flat=100)
    assert room.left is not None
    change = PitchBreak(US.length(48), in_12(6))
    slope = msgspec.structs.replace(room.left, breaks=(change,))
    return msgspec.structs.replace(room, left=slope, right=slope)


@pytest.mark.parametrize("scale", [1 / 50, 1 / 75, 1 / 96])
@pytest.mark.parametrize(
    ("room", "words"),
    [(GABLE, WORDS), (SALTBOX, WORDS), (SHED, WORDS), (_gambrel(), WORDS), (LOFT, METRIC)],
    ids=["gable", "saltbox", "shed", "gambrel", "metric"],
)
def test_no_two_figures_overlap(room: Room, words: Wording, scale: float) -> None:
    view = View(scale)
    texts = [t for e in section(room, view, words) for t in _texts(e, scale)]
    for i, (a, one) in enumerate(texts):
        for b, other in texts[i + 1 :]:
            assert not _overlap(one, other), (a, b)


def _texts(element: object, scale: float) -> list[tuple[str, Rect]]:
    from core.drawing.dimension import dimension_parts

    if isinstance(element, Dimension):
        return [t for part in dimension_parts(element, scale) for t in _texts(part, scale)]
    if isinstance(element, Text):
        return [(element.text, bounds(text_corners(element, scale)))]
    return []


def _overlap(a: Rect, b: Rect) -> bool:
    return a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3]


def test_all_of_it_has_an_extent_around_the_room() -> None:
    left, bottom, right, top = extent(drawn(GABLE), VIEW.scale)
    assert left < -200
    assert right > 240 * INCH + 200
    assert bottom < 0
    assert top > 120 * INCH


@pytest.mark.parametrize(
    ("ends", "turned", "drawn_at"),
    [
        # The room is 400 long and cut at 200.
        pytest.param((None, None), None, (50, 53), id="whole"),
        pytest.param((None, 199), None, None, id="ends before the cut"),
        pytest.param((201, None), None, None, id="starts beyond it"),
        # From 50 to 150 over 400: half way at 100, as wide as 3 x the root of 1 + (1/4) squared.
        pytest.param((None, None), 150, (100, 103.0923), id="turned"),
        pytest.param((100, 100), 150, None, id="runs across"),
    ],
)
def test_a_purlin_is_seen_where_the_cut_meets_it(
    ends: tuple[float | None, float | None],
    turned: float | None,
    drawn_at: tuple[float, float] | None,
) -> None:
    start, end, last = (None if at is None else US.length(at) for at in (*ends, turned))
    timber = US.timber((3, 7))
    left, under, gap = (US.length(x) for x in (50, 55, 0))
    made = Purlin("purlin-1", left, timber, under, Passing.THROUGH, gap, start, end, last)
    room = msgspec.structs.replace(GABLE, purlins=(made,))
    found = [e.outline for e in drawn(room) if isinstance(e, Fill) and e.pen is Pen.PURLIN]
    at = [(bounds(outline)[0] / INCH, bounds(outline)[2] / INCH) for outline in found]
    assert at == ([pytest.approx(drawn_at)] if drawn_at else [])
