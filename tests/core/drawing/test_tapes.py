"""The tapes along plates, with the marks on them as the person will see them on theirs."""

import math
from itertools import combinations, pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import Polygon

from core.drawing import Align, Fill, Pen, Stroke, Text, View
from core.drawing.course import BAND, LEAD, OFF
from core.drawing.elements import XY, Element
from core.drawing.extent import text_corners
from core.drawing.tapes import CLOSE, PITCH, STEP, TIGHT, longest_within, sole_tape, top_tapes
from core.framing import Mark, Role, frame_wall, marks
from core.job import WallResult, work_out
from core.lengths import Length, System, Tape
from core.model import Letters, LineEdge, Project, Side, SiteRecord
from core.roof import RoofLine, Segment
from core.wording import Wording
from strategies import projects
from walls import UK, US, at_degrees, in_12, result

US_WORDS = Wording("us", Tape.usual(System.INCH))
METRIC = Wording("metric", Tape.usual(System.METRIC))
VIEW = View(1 / 25)
"""At 1:25 a paper mm is 25 mm."""

FLAT = UK.room(6000, (2400, at_degrees(45)), flat=2400)
WALL = UK.wall((500, 3000), (2500, 3000), spacing=600)


def sole(wall: WallResult, view: View = VIEW, words: Wording = METRIC) -> tuple[Element, ...]:
    on_sole = [m for m in wall.marks if m.along_top is None]
    return sole_tape(wall.wall.run, on_sole, view, words)


def tops(wall: WallResult, view: View = VIEW, words: Wording = METRIC) -> tuple[Element, ...]:
    assert wall.frame is not None
    assert wall.inputs.near is not None
    return top_tapes(wall.frame, wall.inputs.near, wall.marks, view, words)


def figures(drawing: tuple[Element, ...]) -> list[Text]:
    return [e for e in drawing if isinstance(e, Text)]


def flags(drawing: tuple[Element, ...]) -> list[tuple[XY, ...]]:
    return [e.points for e in drawing if isinstance(e, Stroke) and e.pen is Pen.MARK]


def test_the_sole_tape_lies_under_the_floor() -> None:
    """From 1.9 to 4.9 mm on paper below it: 47.5 to 122.5 mm, over the whole wall."""
    band = next(e for e in sole(result(FLAT, WALL)) if isinstance(e, Fill))
    assert band.pen is Pen.TAPE
    assert band.outline == ((0, -47.5), (2000, -47.5), (2000, -122.5), (0, -122.5))


def test_the_marks_of_the_sole_plate() -> None:
    """Near edges of studs at 0, 600 - 19, 1200 - 19, 1800 - 19 and 2000 - 38."""
    texts = figures(sole(result(FLAT, WALL)))
    assert [t.text for t in texts] == ["0 X", "581 X", "1181 X", "1781 X", "1962 X"]
    assert [t.at[0] for t in texts] == pytest.approx([0, 581, 1181, 1781, 1962])
    # Their letters begin under the tape: 1.9 + 3 + 2.6 + 0.8 = 8.3 mm on paper.
    assert [t.at[1] for t in texts] == pytest.approx([-8.3 * 25] * 5)
    assert {(t.angle, t.align) for t in texts} == {(math.pi / 2, Align.END)}


def test_a_flag_crosses_the_tape_and_leads_to_its_figure() -> None:
    """Its tail lies on the side of the X, here to the right; 1.1 mm on paper are 27.5."""
    tail, start, end, tip = flags(sole(result(FLAT, WALL)))[1]
    assert (tail, start) == ((581 + 27.5, -17.5), (581, -17.5))
    assert end == pytest.approx((581, -25 * (OFF + BAND)))
    assert tip == pytest.approx((581, -25 * (OFF + BAND + LEAD)))


def test_the_tail_lies_on_the_side_of_the_x() -> None:
    from_right = result(FLAT, UK.wall((500, 3000), (2500, 3000), spacing=600, start=Side.RIGHT))
    tail, start, *_ = flags(sole(from_right))[1]
    assert tail[0] - start[0] == pytest.approx(-27.5)


def test_a_level_top_tape_lies_over_the_roof_line() -> None:
    wall = result(FLAT, WALL)
    drawing = tops(wall)
    band = next(e for e in drawing if isinstance(e, Fill))
    assert [n for point in band.outline for n in point] == pytest.approx(
        [0, 2447.5, 2000, 2447.5, 2000, 2522.5, 0, 2522.5]
    )
    texts = figures(drawing)
    assert [t.text for t in texts] == ["X 0", "X 581", "X 1181", "X 1781", "X 1962"]
    assert {(t.angle, t.align) for t in texts} == {(math.pi / 2, Align.START)}


RAKE = US.room(288, (60, in_12(9)), (60, in_12(9)))


def test_a_sloping_tape_lies_square_over_the_slope() -> None:
    """9 in 12 rises 3 for 4, so square off the slope is (-3/5, 4/5). At 1/2 in. to the foot
    8.3 mm on paper are 199.2: a figure begins (-119.52, 159.36) off the roof line."""
    wall = result(RAKE, US.wall((0, 100), (72, 100), plate=(1.5, 3.5)))
    texts = figures(tops(wall, View(1 / 24), US_WORDS))
    # Near edges at 0, 15 1/4, 31 1/4, 47 1/4, 63 1/4 and 70 1/2 along the floor: times 5/4.
    assert [t.text for t in texts] == [
        '0" X', '19 1/16" X', '39 1/16" X', '59 1/16" X', '79 1/16" X', '88 1/8" X'
    ]  # fmt: skip
    x, y = texts[1].at
    assert (x + 119.52) / 25.4 == pytest.approx(15.25)
    assert (y - 159.36) / 25.4 == pytest.approx(60 + 0.75 * 15.25)
    # Written outward they would stand on their heads, so they are written toward the tape.
    assert texts[1].angle == pytest.approx(math.atan(0.75) - math.pi / 2)
    assert texts[1].align is Align.END


def test_a_tape_hooked_on_the_right_runs_to_the_left() -> None:
    """Down the other slope the low end is on the right; the figures read outward."""
    wall = result(RAKE, US.wall((216, 100), (288, 100), plate=(1.5, 3.5)))
    texts = figures(tops(wall, View(1 / 24), US_WORDS))
    assert (texts[-1].text, texts[-1].align) == ('X 0"', Align.START)
    assert texts[-1].angle == pytest.approx(math.pi / 2 - math.atan(0.75))


def test_every_lowest_plate_has_its_tape() -> None:
    """Up, level, down: three plates, in two layers each; only the lower ones are marked."""
    room = US.room(288, (60, in_12(9)), (60, in_12(9)), flat=94)
    wall = result(room, US.wall((36, 100), (252, 100), plate=(1.5, 3.5), plates=2))
    bands = [e for e in tops(wall, View(1 / 48), US_WORDS) if isinstance(e, Fill)]
    assert len(bands) == 3


@pytest.mark.parametrize(
    ("length", "scale", "step", "long_every"),
    [
        # Inches apart 1.8 mm on paper or more: 25.4 / 12 = 2.1, 25.4 / 16 = 1.6 not.
        (24.0, 12, 1.0, 12.0),
        (24.0, 16, 2.0, 12.0),
        (24.0, 48, 4.0, 12.0),
        (48.0, 96, 12.0, 12.0),
    ],
)
def test_ticks_in_inches(length: float, scale: float, step: float, long_every: float) -> None:
    _assert_ticks(length * 25.4, 1 / scale, US_WORDS, step * 25.4, long_every * 25.4)


@pytest.mark.parametrize(
    ("length", "scale", "step", "long_every"),
    [
        (1000.0, 5, 10.0, 100.0),
        (1000.0, 20, 50.0, 100.0),
        (1000.0, 50, 100.0, 500.0),
        (2000.0, 100, 500.0, 500.0),
    ],
)
def test_ticks_in_millimetres(length: float, scale: float, step: float, long_every: float) -> None:
    _assert_ticks(length, 1 / scale, METRIC, step, long_every)


def _assert_ticks(
    length: float, scale: float, words: Wording, step: float, long_every: float
) -> None:
    """Ticks every `step`, those at `long_every` over 0.65 of the band, the others over 0.3."""
    drawing = sole_tape(length, [], View(scale), words)
    strokes = [e for e in drawing if isinstance(e, Stroke) and not e.closed]
    at = [stroke.points[0][0] for stroke in strokes]
    assert at == pytest.approx([n * step for n in range(1, round(length / step) + 1)])
    for x, stroke in zip(at, strokes, strict=True):
        share = abs(stroke.points[1][1] - stroke.points[0][1]) * scale / BAND
        is_long = abs(math.remainder(x, long_every)) < 1e-6
        assert share == pytest.approx(0.65 if is_long else 0.3)


def test_ticks_count_from_the_hook() -> None:
    wall = result(FLAT, UK.wall((500, 3000), (2450, 3000), spacing=600, start=Side.RIGHT))
    strokes = [
        e for e in sole(wall) if isinstance(e, Stroke) and e.pen is Pen.TAPE and not e.closed
    ]
    # The wall is 1950 long and its tape hooked on the right: a long tick stands at 1950 - 100.
    assert strokes[0].points[0][0] == pytest.approx(1950 - 50)
    assert strokes[1].points[0][0] == pytest.approx(1950 - 100)


def marked(places: list[float], run: float, scale: float) -> list[float]:
    """Where the figures of a sole plate marked at these places stand, mm."""
    made = [
        Mark(f"B/layout/{n}", "B/sole", "X", Side.LEFT, Side.LEFT, x, None, x)
        for n, x in enumerate(places)
    ]
    return [t.at[0] for t in figures(sole_tape(run, made, View(scale), METRIC))]


def test_figures_that_would_touch_part_from_each_other() -> None:
    """King and trimmer 38 mm apart at 1:50 are 0.76 mm: their figures stand a font size apart.

    Each is set aside by whole tenths of a mm, here 5: -68.5 becomes -70, 68.5 becomes 70.
    """
    assert marked([1000, 1038], 2000, 1 / 50) == pytest.approx([1000 - 70, 1038 + 70])


def test_a_crowded_tape_has_its_figures_closer() -> None:
    """Nine figures a font size apart ask for 8 * 3.5 = 28 mm. On a tape of 26 mm they take those
    26; on one of 20 mm they are not closer than 0.86 of their size, so they reach past its ends.

    A gap may differ by a tenth of a mm, for each figure is set aside by whole tenths."""
    places = [n * 100.0 for n in range(9)]
    assert _gaps(marked(places, 26 * 50, 1 / 50)) == pytest.approx([26 / 8 * 50] * 8, abs=50 * STEP)
    assert _gaps(marked(places, 20 * 50, 1 / 50)) == pytest.approx(
        [TIGHT * 3.5 * 50] * 8, abs=50 * STEP
    )
    assert _gaps(marked(places, 90 * 50, 1 / 50)) == pytest.approx(
        [PITCH * 3.5 * 50] * 8, abs=50 * STEP
    )


def _gaps(places: list[float]) -> list[float]:
    return [b - a for a, b in pairwise(places)]


def test_figures_keep_off_those_of_the_next_plate() -> None:
    """Under a level plate between two slopes they stay half a pitch from its joints: 1.75 mm.

    Studs 120 mm apart are 3 mm at 1:40, closer than 3.5, so the figures fill the room they have.
    """
    room = UK.room(6000, (1000, at_degrees(30)), (1000, at_degrees(30)), flat=2400)
    wall = result(room, UK.wall((1500, 3000), (4500, 3000), spacing=120))
    assert wall.frame is not None
    plate = next(m for m in wall.frame.members if m.key == "B/top/2/1")
    marked_there = {m.member for m in wall.marks if m.plate == plate.key}
    level = [t for t in figures(tops(wall, View(1 / 40))) if t.key in marked_there]
    at = [t.at[0] for t in level if t.angle == math.pi / 2]
    assert at[0] == pytest.approx(plate.near[0][0] + 70, abs=20 * STEP)
    assert at[-1] == pytest.approx(plate.near[1][0] - 70, abs=20 * STEP)
    step = 40 * STEP
    assert CLOSE * 140 - step <= min(_gaps(at)) <= max(_gaps(at)) <= PITCH * 140 + step


def test_figures_over_a_valley_do_not_meet() -> None:
    """A roof that gets steeper inward: square off its two plates the figures lean together, so
    those of the second are lifted over those of the first and led to from farther away."""
    first = Segment(0.0, 1000.0, 1500.0, 0.1, 0.0)
    second = Segment(1000.0, 2000.0, 100.0, 1.5, 0.0)
    line = RoofLine((first, second))
    wall = UK.wall((0, 3000), (2000, 3000), spacing=150)
    frame = frame_wall(wall, line, line)
    made = marks(wall, frame, LineEdge.NEAR, Letters())
    drawing = top_tapes(frame, line, made, View(1 / 40), METRIC)
    shapes = [Polygon(text_corners(text, 1 / 40)) for text in figures(drawing)]
    assert len(shapes) > 12
    assert all(a.intersection(b).area < 1.0 for a, b in combinations(shapes, 2))
    bands = [Polygon(e.outline) for e in drawing if isinstance(e, Fill)]
    assert all(not band.overlaps(shape) for band in bands for shape in shapes)
    assert any(len(flag) == 5 for flag in flags(drawing))
    assert any(len(flag) == 4 for flag in flags(drawing))


@settings(max_examples=40)
@given(projects(most_walls=1), st.sampled_from([1 / 16, 1 / 48, 1 / 100]))
def test_every_mark_on_a_plate_has_its_figure(project: Project, scale: float) -> None:
    """Its running distance on the tape and its letter; the letter stands next to the tape."""
    words = Wording("us", project.habits.tape)
    for wall in work_out(project, SiteRecord()).walls:
        if wall.frame is None:
            continue
        plates = {m.key for m in wall.frame.members if m.role in (Role.SOLE_PLATE, Role.TOP_PLATE)}
        marks = [m for m in wall.marks if m.plate in plates]
        expected = sorted((m.member, m.letter, words.length(m.along)) for m in marks)
        texts = figures((*sole(wall, View(scale), words), *tops(wall, View(scale), words)))
        assert sorted(_read(text) for text in texts) == expected


def _read(text: Text) -> tuple[str, str, str]:
    """A figure's member, letter and length; what is written toward the tape ends in the letter."""
    if text.align is Align.START:
        letter, length = text.text.split(" ", 1)
    else:
        length, letter = text.text.rsplit(" ", 1)
    return text.key, letter, length


def test_the_marks_of_feet_and_inches_are_read_the_same_way() -> None:
    feet = Wording("us", Tape(System.INCH, Length.of_inches(1 / 16), feet=True))
    wall = result(RAKE, US.wall((0, 100), (72, 100)))
    assert [t.text for t in figures(sole(wall, VIEW, feet))][:3] == [
        '0" X',
        "1'-3 1/4\" X",
        "2'-7 1/4\" X",
    ]


@pytest.mark.parametrize(
    ("scale", "shown"),
    [
        # 6 stud marks and 5 rafters need 10 steps of 3.5 mm: a wall of 2000 is 80 mm at 1:25.
        (1 / 25, True),
        # At 1:75 it is 26.7 mm long.
        (1 / 75, False),
    ],
)
def test_rafters_have_their_figures_where_there_is_room(scale: float, shown: bool) -> None:
    """Rafters at 400 along a level plate: their lines are drawn in any case."""
    room = UK.room(6000, (2400, at_degrees(0)), length=9000)
    wall = result(room, UK.wall((500, 3000), (500, 5000)))
    assert wall.frame is not None
    assert wall.inputs.near is not None
    view = View(scale)
    drawing = top_tapes(
        wall.frame, wall.inputs.near, wall.marks, view, METRIC, rafters=wall.over_marks
    )
    crossed = {m.member for m in wall.over_marks}
    assert len(crossed) >= 5
    lined = [e.key for e in drawing if isinstance(e, Stroke) and e.pen is Pen.RAFTER]
    assert sorted(lined) == sorted(crossed)
    told = {t.key: t.text for t in figures(drawing) if t.key in crossed}
    assert told == ({m.member: f"R {m.along:.0f}" for m in wall.over_marks} if shown else {})
    studs = {t.key for t in figures(drawing)} - crossed
    assert studs == {m.member for m in wall.marks if m.along_top is not None}


@pytest.mark.parametrize(
    ("run", "tape", "expected"),
    [
        (720.0, Tape.usual(System.INCH), 719 + 15 / 16),
        (120.5, Tape.usual(System.INCH), 119 + 15 / 16),
        (0.5, Tape.usual(System.INCH), 0.0),
        (2000 / 25.4, Tape.usual(System.METRIC), 1999 / 25.4),
    ],
)
def test_the_longest_figure_within_a_wall(run: float, tape: Tape, expected: float) -> None:
    assert longest_within(run * 25.4, tape) == pytest.approx(expected * 25.4)
