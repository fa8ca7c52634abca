"""Timber, openings, boxes, roof and floor as strokes and fills."""

import math
from itertools import pairwise

import msgspec
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.drawing import Fill, Pen, Stroke, View
from core.drawing import timber as drawn
from core.drawing.elements import XY
from core.framing import PlacedBox, PlacedOpening, Role
from core.kept import Kept
from core.model import HeadLie, Side, WallFace
from core.roof import RoofLine, Segment
from walls import UK, US, at_degrees, frame_of, in_12, result

ROOM = UK.room(6000, (1000, at_degrees(45)), (1000, at_degrees(45)), flat=2400)
DOOR = UK.opening("door-1", 1000, 800, 2000)
FRAME = frame_of(ROOM, UK.wall((1500, 3000), (4500, 3000), openings=(DOOR,)))


def test_members_are_filled_and_outlined_by_their_role() -> None:
    drawing = drawn.members(FRAME.members, Kept())
    for number, member in enumerate(FRAME.members):
        fill, stroke = drawing[2 * number : 2 * number + 2]
        pen = Pen(member.role.value)
        assert fill == Fill(member.near, pen, member.key)
        assert stroke == Stroke(member.near, pen, member.key, closed=True)


@pytest.mark.parametrize("role", Role)
def test_every_role_has_a_pen_of_its_name(role: Role) -> None:
    assert drawn.PEN_OF_ROLE[role].value == role.value


CORNERS = ((1000, 0), (1800, 0), (1800, 2000), (1000, 2000))


def test_an_opening_that_fits_is_outlined() -> None:
    (placed,) = FRAME.openings
    assert drawn.opening(placed, FRAME.near) == (
        Stroke(CORNERS, Pen.OPENING, "B/door-1", closed=True),
    )


def test_an_opening_that_cannot_be_built_is_heavy_and_filled() -> None:
    assert drawn.opening(_unfit(FRAME.openings[0]), FRAME.near) == (
        Fill(CORNERS, Pen.UNBUILDABLE, "B/door-1"),
        Stroke(CORNERS, Pen.UNBUILDABLE, "B/door-1", closed=True),
    )


def _unfit(placed: PlacedOpening) -> PlacedOpening:
    fit = msgspec.structs.replace(placed.fit, fits=False)
    return msgspec.structs.replace(placed, fit=fit)


def test_the_edges_of_an_opening() -> None:
    assert drawn.edges(FRAME.openings[0], FRAME.near) == (
        (1000, 0, 1800, 0),
        (1800, 0, 1800, 2000),
        (1000, 2000, 1800, 2000),
        (1000, 0, 1000, 2000),
    )


@pytest.mark.parametrize(
    ("side", "tip"),
    [
        # Fixed to the right side of its stud, the box stands right of it: the arrow points left.
        (Side.RIGHT, (419, 500)),
        (Side.LEFT, (381, 500)),
    ],
)
def test_a_box_points_to_its_stud(side: Side, tip: XY) -> None:
    """The stud of place 1 stands from 381 to 419; the box is 50 by 100 mm, centre at 500."""
    wall = UK.wall((1500, 3000), (4500, 3000), boxes=(UK.box("box-1", "B/layout/1", side, 500),))
    (placed,) = result(ROOM, wall).boxes
    fill, outline, arrow = drawn.box(placed)
    left = 419 if side is Side.RIGHT else 331
    corners = ((left, 450), (left + 50, 450), (left + 50, 550), (left, 550))
    assert fill == Fill(corners, Pen.BOX, "B/box-1")
    assert outline == Stroke(corners, Pen.BOX, "B/box-1", closed=True)
    assert isinstance(arrow, Stroke)
    assert arrow.points[1] == tip
    assert {y for _, y in arrow.points} == {475, 500, 525}


def test_a_box_that_opens_on_the_far_face_is_seen_through() -> None:
    stated = UK.box("box-1", "B/layout/1", Side.RIGHT, 500)
    far = msgspec.structs.replace(stated, face=WallFace.FAR)
    (placed,) = result(ROOM, UK.wall((1500, 3000), (4500, 3000), boxes=(far,))).boxes
    drawing = drawn.box(placed)
    assert {element.pen for element in drawing} == {Pen.FAR_BOX}
    assert not [element for element in drawing if isinstance(element, Fill)]


@pytest.mark.parametrize(
    "box",
    [
        PlacedBox(
            "B/box-1", UK.box("box-1", "B/layout/1", Side.LEFT, 500), 0, 50, 0, 100, None, None
        ),
        PlacedBox(
            "B/box-1", UK.box("box-1", "B/layout/1", Side.LEFT, 500), 0, 50, 0, 100, "B/x", "B/y"
        ),
    ],
    ids=["no stud", "blocked"],
)
def test_a_box_that_cannot_be_built_is_heavy(box: PlacedBox) -> None:
    assert {element.pen for element in drawn.box(box)} == {Pen.UNBUILDABLE}


def test_the_roof_is_hatched_on_its_upper_side() -> None:
    """1200 mm at 1:50 are 24 mm on paper: a short stroke every 2.4 mm, so ten.

    They lean 45 degrees from the line and are 1.6 mm long: 80 mm, 56.57 over and along.
    """
    line = RoofLine((Segment(0.0, 1200.0, 2400.0, 0.0, 0.0),))
    outline, *hatch = drawn.roof(line, View(1 / 50))
    assert outline == Stroke(((0, 2400), (1200, 2400)), Pen.ROOF)
    assert len(hatch) == 10
    first = hatch[0]
    assert isinstance(first, Stroke)
    assert first.pen is Pen.ABOVE_ROOF
    assert first.points[0] == pytest.approx((60, 2400))
    assert first.points[1] == pytest.approx((60 + 56.5685, 2400 + 56.5685))


@given(st.floats(-1.5, 1.5), st.floats(500, 8000), st.sampled_from([1 / 10, 1 / 50, 1 / 100]))
def test_the_hatch_stands_over_any_slope(along: float, run: float, scale: float) -> None:
    line = RoofLine((Segment(0.0, run, 3000.0, along, 0.0),))
    _, *hatch = drawn.roof(line, View(scale))
    for stroke in hatch:
        assert isinstance(stroke, Stroke)
        (x0, y0), (x1, y1) = stroke.points
        assert y0 == pytest.approx(3000 + along * x0)
        over = (y1 - y0 - along * (x1 - x0)) / math.hypot(1, along)
        assert over * scale == pytest.approx(1.6 * math.sqrt(0.5))


def test_the_floor_runs_past_the_wall() -> None:
    """4 mm at 1:20 are 80 mm."""
    assert drawn.floor(3000.0, View(1 / 20)) == (Stroke(((-80, 0), (3080, 0)), Pen.FLOOR),)


def test_a_step_in_the_roof_is_drawn_plumb() -> None:
    """Under a ridge beam 4 in. wide whose underside is lower than the rafters."""
    room = US.room(240, (60, in_12(12)), (60, in_12(12)), beam=(4, 170))
    near = result(room, US.wall((60, 100), (180, 100))).inputs.near
    assert near is not None
    outline = drawn.roof(near, View(1 / 48))[0]
    assert isinstance(outline, Stroke)
    plumb = [
        a[0] / 25.4
        for a, b in zip(outline.points, outline.points[1:], strict=False)
        if a[0] == b[0]
    ]
    # The ridge stands over 120, the beam from 118 to 122: 58 and 62 along the wall.
    assert plumb == pytest.approx([58, 62])


def test_a_raked_header_covers_no_more_than_itself() -> None:
    """Its rectangles reach from end to end, each at most 60 mm along the slope."""
    lie = msgspec.structs.replace(DOOR, head_lie=HeadLie.RAKED)
    room = UK.room(6000, (1500, at_degrees(45)))
    frame = frame_of(room, UK.wall((1000, 3000), (5000, 3000), openings=(lie,)))
    header = next(m for m in frame.members if m.role is Role.HEADER)
    rects = drawn.covered(header)
    assert (rects[0][0], rects[-1][2]) == pytest.approx((header.left, header.right))
    assert (rects[0][1], rects[-1][3]) == pytest.approx((header.bottom, header.top))
    for (_, _, right, _), (left, *_) in pairwise(rects):
        assert right == pytest.approx(left)
    # Plumb it is 38 x 1.414 high, and 60 x 0.707 over the rise of a rectangle.
    assert all(top - bottom < (38 + 60 / 2) * math.sqrt(2) for _, bottom, _, top in rects)
    king = next(m for m in frame.members if m.role is Role.KING)
    assert drawn.covered(king) == ((king.left, king.bottom, king.right, king.top),)
