"""A wall's elevation: what is drawn, over what, and for which view."""

import msgspec
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.drawing import Dimension, Drawing, Fill, Pen, Show, Stroke, Text, View
from core.drawing.elevation import elevation, marks_reach, sole_marks
from core.drawing.extent import text_corners
from core.drawing.placing import Rect, bounds
from core.framing import Role
from core.job import work_out
from core.job.work import wall_result
from core.lengths import Length, System, Tape
from core.model import Project, Side, SiteRecord
from core.wording import Wording
from strategies import projects
from walls import UK, US, at_degrees, in_12, result

US_WORDS = Wording("us", Tape.usual(System.INCH))
ROOM = US.room(288, (33, in_12(9)), (33, in_12(9)), flat=94)
DOOR = US.opening("door-1", 64, 34, 82.5)
BOX = US.box("box-1", "B/layout/2", Side.RIGHT, 12, size=(2, 3))
WALL = result(ROOM, US.wall((36, 240), (252, 240), openings=(DOOR,), boxes=(BOX,)))
VIEW = View(1 / 32)
DRAWING = elevation(WALL, VIEW, US_WORDS)


def test_a_wall_without_a_frame_has_no_drawing() -> None:
    assert elevation(msgspec.structs.replace(WALL, frame=None), VIEW, US_WORDS) == ()


def test_everything_that_stands_in_the_wall_is_drawn() -> None:
    assert WALL.frame is not None
    drawn = {e.key for e in DRAWING if isinstance(e, Fill)}
    assert {m.key for m in WALL.frame.members} <= drawn
    assert "B/box-1" in drawn
    assert "B/door-1" in {e.key for e in DRAWING if isinstance(e, Stroke)}


def test_plates_are_drawn_under_what_stands_between_them() -> None:
    assert WALL.frame is not None
    plates = {m.key for m in WALL.frame.members if m.role in (Role.SOLE_PLATE, Role.TOP_PLATE)}
    fills = [e.key for e in DRAWING if isinstance(e, Fill) and e.key]
    last_plate = max(fills.index(key) for key in plates)
    assert all(fills.index(m.key) > last_plate for m in WALL.frame.members if m.key not in plates)


@pytest.mark.parametrize(
    ("show", "pens"),
    [
        (Show.LABELS, {Pen.LABEL}),
        (Show.LENGTHS, {Pen.LENGTH}),
        (Show.TAPES, {Pen.TAPE, Pen.MARK}),
        (Show.DIMENSIONS, {Pen.DIMENSION}),
    ],
)
def test_a_view_may_leave_things_out(show: Show, pens: set[Pen]) -> None:
    without = View(VIEW.scale, shows=VIEW.shows - {show})
    left = {e.pen for e in elevation(WALL, without, US_WORDS)}
    assert {e.pen for e in DRAWING} - left == pens


def test_the_strings_stand_under_the_marks() -> None:
    """The longest figure of the sole tape is "207 1/4" X": its reach, half a mm, then 5.4."""
    reach = marks_reach(WALL, VIEW, US_WORDS)
    door = next(e for e in DRAWING if isinstance(e, Dimension) and e.key == "B/door-1")
    assert door.start[1] == pytest.approx(-32 * (reach + 0.5))
    bare = View(1 / 32, shows=frozenset({Show.DIMENSIONS}))
    assert marks_reach(WALL, bare, US_WORDS) == 0.0


def test_in_a_steady_view_strings_stay_when_a_mark_comes_to_a_sixteenth() -> None:
    """Moved by 1/16 in. the door's kings have longer figures than before."""
    reaches, steady = set(), msgspec.structs.replace(VIEW, steady=True)
    for by in (0.0, 25.4 / 16):
        wall = WALL.wall
        first, *others = wall.openings
        left = Length.of_inches((first.left.mm + by) / 25.4)
        moved = msgspec.structs.replace(first, left=left)
        wall = msgspec.structs.replace(wall, openings=(moved, *others))
        inputs = msgspec.structs.replace(WALL.inputs, wall=wall)
        reaches.add(marks_reach(wall_result(inputs), steady, US_WORDS))
    assert len(reaches) == 1
    assert reaches.pop() > marks_reach(WALL, VIEW, US_WORDS)


def test_the_sole_marks() -> None:
    """Not under the door: 10 studs, kings and trimmers have a mark on the sole plate, cripples not.

    Of layout places 1 to 13 those at 64 to 98 in. (4 to 6) are cripples over the door, and place 13
    at 207 1/4; with both ends that leaves 12 studs, two kings and two trimmers.
    """
    marks = sole_marks(WALL)
    assert len(marks) == 12 + 2 + 2
    assert all(mark.along_top is None for mark in marks)


def texts_of(key: str) -> list[str]:
    return [e.text for e in DRAWING if isinstance(e, Text) and e.key == key]


def test_figures_by_hand() -> None:
    """The stud of place 1 stands from 15 1/4 to 16 3/4. Wall C of the demo: 60 in. over its left
    end, so the right edge of its top is 60 - 1 7/8 - 1 1/2 + 3/4 * 16 3/4 = 69 3/16 long, and its
    mark is at 15 1/4 on the sole plate and 5/4 of that on the slope."""
    assert sorted(texts_of("B/layout/1")) == sorted(["B2", '69 3/16"', '15 1/4" X', '19 1/16" X'])
    assert texts_of("B/door-1") == ["door 1", '34" × 82 1/2"']


def _rects(drawing: Drawing, scale: float, pens: set[Pen]) -> list[Rect]:
    """The rectangles around the texts of these pens, model mm."""
    texts = [e for e in drawing if isinstance(e, Text) and e.pen in pens]
    return [bounds(text_corners(text, scale)) for text in texts]


@pytest.mark.parametrize("scale", [1 / 16, 1 / 24, 1 / 48])
def test_no_text_stands_on_a_box(scale: float) -> None:
    """Two boxes low on either side of each of two studs, where their labels would stand."""
    sides = [(f"B/layout/{n}", side) for n in (2, 3) for side in Side]
    boxes = tuple(US.box(f"box-{n}", *at, 5) for n, at in enumerate(sides))
    wall = result(ROOM, US.wall((36, 240), (252, 240), boxes=boxes))
    drawing = elevation(wall, View(scale), US_WORDS)
    for left, bottom, right, top in _rects(drawing, scale, {Pen.LABEL, Pen.LENGTH}):
        for box in wall.boxes:
            beside = right <= box.left or left >= box.right
            assert beside or top <= box.bottom or bottom >= box.top


def test_no_label_stands_on_a_rafter_over_the_plate() -> None:
    """At 1 1/2 in. to the foot the plate's label stands in the plate: beside the rafter that
    crosses its middle. Rafters at 16 in. along a level wall of 80 in. from 0: one at 40."""
    room = US.room(288, (88, in_12(9)), flat=88)
    rafters = tuple(map(US.length, (8, 24, 40, 56, 72)))
    room = msgspec.structs.replace(
        room, rafter=msgspec.structs.replace(room.rafter, places=rafters)
    )
    wall = result(room, US.wall((100, 0), (100, 80)))
    drawing = elevation(wall, View(1 / 8), US_WORDS)
    crosses = [e for e in drawing if isinstance(e, Stroke) and e.pen is Pen.RAFTER]
    label = next(e for e in drawing if isinstance(e, Text) and e.key == "B/top/1/1")
    left, _, right, _ = bounds(text_corners(label, 1 / 8))
    assert crosses
    assert all(
        right <= min(xs) or left >= max(xs) for xs in ([x for x, _ in e.points] for e in crosses)
    )


@pytest.mark.parametrize("scale", [1 / 16, 1 / 24, 1 / 48])
def test_no_label_stands_on_the_heavy_outline_of_what_cannot_be_built(scale: float) -> None:
    """A door 100 in. high under a ceiling of 94; studs run on through it."""
    door = US.opening("door-1", 70, 34, 100)
    wall = result(ROOM, US.wall((36, 240), (252, 240), openings=(door,)))
    drawing = elevation(wall, View(scale), US_WORDS)
    for left, _, right, _ in _rects(drawing, scale, {Pen.LENGTH}):
        for edge in (70 * 25.4, 104 * 25.4):
            assert not left < edge < right


@settings(max_examples=30)
@given(projects(most_walls=2), st.sampled_from([1 / 10, 1 / 32, 1 / 50, 1 / 96, 1 / 200]))
def test_texts_are_of_what_the_wall_holds(project: Project, scale: float) -> None:
    """Every label on the elevation is its member's, every length its long point's."""
    words = Wording("us", project.habits.tape)
    for wall in work_out(project, SiteRecord()).walls:
        if wall.frame is None:
            continue
        members = {m.key: m for m in wall.frame.members}
        for text in elevation(wall, View(scale), words):
            if isinstance(text, Text) and text.pen is Pen.LENGTH:
                assert text.text == words.length(members[text.key].long_point)
            if isinstance(text, Text) and text.pen is Pen.LABEL:
                assert wall.label_of[text.key] in text.text.split()


def test_the_same_wall_gives_the_same_drawing() -> None:
    again = result(ROOM, US.wall((36, 240), (252, 240), openings=(DOOR,), boxes=(BOX,)))
    assert elevation(again, VIEW, US_WORDS) == DRAWING


def test_a_drawing_is_for_its_scale_alone() -> None:
    """Timber does not depend on the scale; texts do."""
    other = elevation(WALL, View(1 / 48), US_WORDS)
    timber = {Pen(role.value) for role in Role}
    assert [e for e in other if e.pen in timber] == [e for e in DRAWING if e.pen in timber]
    assert other != DRAWING


def test_metric_walls_are_drawn_alike() -> None:
    room = UK.room(6400, (850, at_degrees(38)), (850, at_degrees(38)), flat=2400)
    wall = result(room, UK.wall((700, 5400), (5700, 5400)))
    metric = Wording("metric", Tape.usual(System.METRIC))
    said = [e.text for e in elevation(wall, View(1 / 50), metric) if isinstance(e, Dimension)]
    # 850 + 700 * tan 38 = 1396.9 over either end.
    assert said == ["5000", "1397", "1397"]
