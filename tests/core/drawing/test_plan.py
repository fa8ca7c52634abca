"""The plan of a room: its edge, what is overhead, its walls and its dimensions."""

from __future__ import annotations

import msgspec
import pytest
from shapely import LineString, Polygon

from core.drawing import Dimension, Drawing, Fill, Pen, Stroke, Text, View
from core.drawing.extent import text_corners
from core.drawing.plan import plan
from core.drawing.plan_roof import outline
from core.lengths import System
from core.model import (
    ClearKind,
    ExistingWall,
    Hanging,
    KeptClear,
    Point,
    Project,
    Room,
    Side,
    StairOpening,
    Swing,
    Wall,
    Wing,
)
from core.output.layers import LAYERS
from core.storage import read_document
from core.wording import Wording
from gui.outputs import demo_bytes
from loft import INCH, loft
from walls import US

TOLD = (Pen.SEAM, Pen.HEADROOM, Pen.CEILING)
"""What has words beside it."""

SCALE = 0.02
"""About what the window shows: a foot is 6 mm."""


def drawn(project: Project, scale: float = SCALE) -> Drawing:
    catalogue = "us" if project.system is System.INCH else "metric"
    words = Wording(catalogue, project.habits.tape)
    return plan(project, View(scale), words)


def strokes(drawing: Drawing, pen: Pen, key: str = "") -> list[list[tuple[float, float]]]:
    """The lines drawn with a pen for a key, in inches to a hundredth."""
    return [
        [(round(u / INCH, 2) + 0.0, round(v / INCH, 2) + 0.0) for u, v in e.points]
        for e in drawing
        if isinstance(e, Stroke) and e.pen is pen and e.key == key
    ]


def texts(drawing: Drawing) -> list[Text]:
    return [e for e in drawing if isinstance(e, Text)]


def test_the_room_stands_at_its_framing_faces() -> None:
    assert strokes(drawn(loft()), Pen.FLOOR) == [[(0, 0), (240, 0), (240, 400), (0, 400)]]


def test_what_is_overhead_is_drawn_in_the_floor() -> None:
    # Eaves 48 high under 12 in 12: the ridge at 120; 60 high 12 in, 84 high 36 in, flat ceiling
    # at 108 from 60 in.
    drawing = drawn(loft())
    assert strokes(drawing, Pen.SEAM) == [[(120, 400), (120, 0)]]
    heights = {line[0][0] for line in strokes(drawing, Pen.HEADROOM)}
    assert heights == {12, 228, 36, 204}
    assert {line[0][0] for line in strokes(drawing, Pen.CEILING)} == {60, 180}
    said = {text.text for text in texts(drawing)}
    assert {"ridge", '60" high', '84" high', 'flat ceiling at 108"', "face A"} <= said
    # The first rafter flush with the gable wall, then at multiples of 16.
    rafters = [line[0][1] for line in strokes(drawing, Pen.ABOVE_ROOF)]
    assert rafters[:3] == [0.75, 16, 32]


def test_a_wall_stands_on_the_far_side_of_its_chalk_line() -> None:
    wall = next(e for e in drawn(loft()) if isinstance(e, Fill) and e.key == "B")
    corners = [(round(u / INCH, 6), round(v / INCH, 6)) for u, v in wall.outline]
    # Drawn from left to right its far side lies farther along the room: 3 1/2 in. of stud.
    assert corners == [(12, 100), (132, 100), (132, 103.5), (12, 103.5)]


def test_the_letter_and_the_name_of_face_a_stand_before_it() -> None:
    (letter, face) = (t for t in texts(drawn(loft())) if t.key == "B")
    assert (letter.text, face.text) == ("B", "face A")
    assert letter.at[1] < 100 * INCH
    assert face.at[1] < 100 * INCH


@pytest.mark.parametrize(
    ("ends", "angle"),
    [
        (((12.0, 100.0), (212.0, 100.0)), 0.0),
        (((212.0, 100.0), (12.0, 100.0)), 0.0),
        (((12.0, 100.0), (12.0, 300.0)), 90.0),
        (((12.0, 300.0), (12.0, 100.0)), 90.0),
    ],
)
def test_face_a_is_read_from_below_or_from_the_right(
    ends: tuple[tuple[float, float], tuple[float, float]], angle: float
) -> None:
    project = msgspec.structs.replace(loft(), walls=(US.wall(*ends),))
    face = next(t for t in texts(drawn(project)) if t.text == "face A")
    assert face.angle * 57.29578 == pytest.approx(angle)


def test_a_door_is_a_gap_with_its_swing_and_a_window_has_glass() -> None:
    wall = loft().wall("B")
    hung = Hanging(Side.LEFT, Swing.TOWARD)
    door = msgspec.structs.replace(wall.openings[0], hung=hung)
    window = US.opening("window-1", 4.0, 20.0, 50.0, sill=20.0)
    project = loft().with_wall(msgspec.structs.replace(wall, openings=(door, window)))
    drawing = drawn(project)
    (arc,) = strokes(drawing, Pen.SWING, "B/door-1")
    # Hinged at x = 60 (u = 72), 30 wide, toward face A: from the free jamb round to 30 before it.
    assert (arc[0], arc[-1]) == ((102, 100), (72, 70))
    assert strokes(drawing, Pen.STUD, "B/door-1")[:2] == [
        [(72, 100), (72, 103.5)],
        [(102, 100), (102, 103.5)],
    ]
    assert len(strokes(drawing, Pen.STUD, "B/window-1")) == 6


def test_chalk_lines_square_to_the_room_are_dimensioned_outside() -> None:
    project = msgspec.structs.replace(
        loft(), walls=(*loft().walls, _other((36.0, 300.0), (36.0, 150.0)))
    )
    told = [(e.start, e.end, e.text) for e in drawn(project) if isinstance(e, Dimension)]
    assert [text for _, _, text in told] == ['36"', '204"', '240"', '100"', '300"', '400"']
    assert all(v == 400 * INCH for (_, v), _, _ in told[:3])
    assert all(u == 0 for (u, _), _, _ in told[3:])


def _other(left: tuple[float, float], right: tuple[float, float]) -> Wall:
    return msgspec.structs.replace(US.wall(left, right), letter="C")


def test_a_stretch_too_short_for_its_figure_has_none() -> None:
    project = msgspec.structs.replace(loft(), walls=(US.wall((0.0, 397.0), (200.0, 397.0)),))
    told = [e.text for e in drawn(project) if isinstance(e, Dimension)]
    assert told == ['240"', '397"', "", '400"']


def test_wings_are_part_of_the_edge() -> None:
    room = loft().room
    assert room.left is not None
    right = _wing("wing-1", Side.RIGHT, (100.0, 80.0, 60.0), room)
    left = _wing("wing-2", Side.LEFT, (0.0, 50.0, 30.0), room)
    edge = outline(msgspec.structs.replace(room, wings=(right, left)))
    inches = [(round(u / INCH), round(v / INCH)) for u, v in edge]
    wanted = [(0, 0), (240, 0), (240, 100), (300, 100), (300, 180), (240, 180), (240, 400)]
    assert inches == [*wanted, (0, 400), (0, 50), (-30, 50), (-30, 0)]


def _wing(name: str, side: Side, sizes: tuple[float, float, float], room: Room) -> Wing:
    assert room.left is not None
    start, width, reach = map(US.length, sizes)
    return Wing(name, side, start, width, reach, room.left, room.left)


def test_a_chimney_is_crossed_out_with_its_gap_around_it() -> None:
    sizes = map(US.length, (50.0, 200.0, 30.0, 20.0, 2.0))
    kept = KeptClear("chimney-1", ClearKind.CHIMNEY, *sizes)
    room = msgspec.structs.replace(loft().room, kept_clear=(kept,))
    drawing = drawn(msgspec.structs.replace(loft(), room=room))
    (own,) = strokes(drawing, Pen.EXISTING, "chimney-1")
    assert own == [(50, 200), (80, 200), (80, 220), (50, 220)]
    (gap,) = strokes(drawing, Pen.CEILING, "chimney-1")
    assert gap[0] == (48, 198)


def test_a_wall_without_length_is_not_drawn() -> None:
    project = msgspec.structs.replace(loft(), walls=(US.wall((9.0, 9.0), (9.0, 9.0)),))
    assert [e for e in drawn(project) if e.key == "B"] == []


@pytest.mark.parametrize("scale", [0.01, 0.02, 0.05])
@pytest.mark.parametrize("metric", [False, True])
def test_nothing_written_lies_on_anything_else_written(metric: bool, scale: float) -> None:
    project = read_document(demo_bytes(metric=metric), "demo.eave").project
    shapes = [(t.text, Polygon(text_corners(t, scale))) for t in texts(drawn(project, scale))]
    for n, (text, shape) in enumerate(shapes):
        for other, others in shapes[n + 1 :]:
            assert shape.intersection(others).area < 1.0, (text, other)


def test_words_keep_off_the_lines_that_others_stand_beside() -> None:
    # At 0.02 there is room for all of them: 84 high stands beyond its line, as the edge of the
    # flat ceiling lies but 24 in. (12 mm on paper) nearer the ridge.
    drawing = drawn(loft())
    lines = [LineString(e.points) for e in drawing if isinstance(e, Stroke) and e.pen in TOLD]
    for text in texts(drawing):
        if text.pen is Pen.NOTE and not text.key:
            shape = Polygon(text_corners(text, SCALE))
            assert not any(line.intersects(shape) for line in lines), text.text


@pytest.mark.parametrize("metric", [False, True])
def test_words_stay_within_the_room(metric: bool) -> None:
    project = read_document(demo_bytes(metric=metric), "demo.eave").project
    length = project.room.length.mm
    for text in texts(drawn(project, 0.01)):
        if text.pen is Pen.NOTE and not text.key:
            assert all(0.0 <= v <= length for _, v in text_corners(text, 0.01)), text.text


def test_what_a_line_is_is_told_once_even_where_lines_are_too_close() -> None:
    # At 0.003 the line 84 high lies 2.7 mm on paper from the eave wall, that 60 high 1.8 mm before
    # it and the ceiling's edge 1.8 mm behind it: words 2.1 mm high find room on neither side.
    drawing = drawn(msgspec.structs.replace(loft(), walls=()), 0.003)
    assert [t.text for t in texts(drawing)].count('84" high') == 1


def test_every_pen_of_the_plan_has_its_layer() -> None:
    assert {e.pen for e in drawn(loft())} <= set(LAYERS)


def test_a_stair_opening_and_an_existing_wall_are_drawn() -> None:
    sizes = map(US.length, (150.0, 200.0, 36.0, 120.0))
    stair = StairOpening("stair-opening-1", *sizes)
    ends = (Point(US.length(20.0), US.length(300.0)), Point(US.length(100.0), US.length(300.0)))
    old = ExistingWall("existing-wall-1", *ends, US.length(6.0))
    room = msgspec.structs.replace(loft().room, stair_openings=(stair,), existing_walls=(old,))
    drawing = drawn(msgspec.structs.replace(loft(), room=room))
    edge, diagonal = strokes(drawing, Pen.STAIR, "stair-opening-1")
    assert edge == [(150, 200), (186, 200), (186, 320), (150, 320)]
    assert diagonal == [(150, 200), (186, 320)]
    # Too narrow for its name across, it has it along.
    name = next(t for t in texts(drawing) if t.key == "stair-opening-1")
    assert (name.text, round(name.angle * 57.29578)) == ("stair opening 1", 90)
    (wall,) = strokes(drawing, Pen.EXISTING, "existing-wall-1")
    assert wall == [(20, 300), (100, 300), (100, 306), (20, 306)]
    hatch = strokes(drawing, Pen.RULE, "existing-wall-1")
    assert len(hatch) > 15
    # At 45 degrees within the wall.
    for (u0, v0), (u1, v1) in hatch:
        assert u0 - u1 == pytest.approx(v1 - v0, abs=0.02)
        assert all(20 <= u <= 100 and 300 <= v <= 306 for u, v in ((u0, v0), (u1, v1)))
