"""What points and chalk lines are caught at, in inches."""

from __future__ import annotations

import pytest

from core.chalk import (
    Direction,
    Grip,
    Guide,
    Kind,
    Line,
    against,
    catch,
    catch_along,
    catch_end,
    guides,
    moved,
    next_along,
)
from core.framing import footprints
from walls import US, in_12

INCH = 25.4
XY = tuple[float, float]

ROOM = US.room(240.0, (48.0, in_12(12)), (48.0, in_12(12)), length=400.0)
WALL = US.wall((0.0, 100.0), (200.0, 100.0))
"""Wall "B": face A at 100, far face at 103 1/2, from 0 to 200 across."""

LINES = guides(ROOM, footprints((WALL,)))
GRIP = Grip(INCH, 4 * INCH)
FREE = Grip(INCH / 16, 0.0, free=True)


def mm(point: XY) -> XY:
    return point[0] * INCH, point[1] * INCH


def inches(point: XY) -> XY:
    return round(point[0] / INCH, 4) + 0.0, round(point[1] / INCH, 4) + 0.0


def told(on: tuple[Guide, ...]) -> list[str]:
    return [f"{guide.kind.value} {guide.name}".strip() for guide in on]


@pytest.mark.parametrize(
    ("point", "caught", "on"),
    [
        # Nothing near: whole inches.
        ((60.4, 200.3), (60, 200), []),
        # An eave wall, and whole inches along it.
        ((2.0, 200.3), (0, 200), ["left eave"]),
        ((237.0, 300.6), (240, 301), ["right eave"]),
        ((118.0, 250.0), (120, 250), ["ridge"]),
        # A corner: two lines that cross.
        ((3.0, 2.0), (0, 0), ["start", "left eave"]),
        # A wall's face, and where the ridge crosses it.
        ((60.0, 105.0), (60, 103.5), ["far face B"]),
        ((119.0, 98.0), (120, 100), ["ridge", "face a B"]),
        # Past the wall's end what is in line with it counts.
        ((225.0, 101.0), (225, 100), ["in line B"]),
    ],
)
def test_a_point_is_caught(point: XY, caught: XY, on: list[str]) -> None:
    found = catch(mm(point), LINES, GRIP)
    assert inches(found.point) == caught
    assert told(found.on) == on


def test_held_freely_a_point_goes_by_the_tape_alone() -> None:
    found = catch(mm((2.03, 200.3)), LINES, FREE)
    assert inches(found.point) == (2.0, 200.3125)
    assert found.on == ()


@pytest.mark.parametrize(
    ("start", "point", "end", "direction", "on"),
    [
        # Nearly level: square to the eave walls, to the far one.
        ((0, 200), (238, 203), (240, 200), Direction.ACROSS, ["right eave"]),
        ((0, 200), (150.3, 203), (150, 200), Direction.ACROSS, []),
        ((0, 200), (122, 198), (120, 200), Direction.ACROSS, ["ridge"]),
        # Nearly along the ridge, down to the far face of the wall.
        ((60, 300), (62, 102), (60, 103.5), Direction.ALONG, ["far face B"]),
        # At 45 degrees, a round length: 50 in.
        ((20, 200), (55, 236), (55.3553, 235.3553), Direction.DIAGONAL, []),
        # Askew: a whole number of inches long, 100.
        ((20, 200), (100.2, 260.2), None, Direction.ASKEW, []),
    ],
)
def test_the_end_of_a_line_is_caught(
    start: XY, point: XY, end: XY | None, direction: Direction, on: list[str]
) -> None:
    line = catch_end(mm(start), mm(point), LINES, GRIP)
    assert (line.direction, told(line.on)) == (direction, on)
    if end is None:
        assert line.run / INCH == pytest.approx(100.0)
    else:
        assert inches(line.right) == end


def test_a_line_takes_the_direction_of_a_wall_askew_or_square_to_it() -> None:
    askew = US.wall((100.0, 200.0), (180.0, 260.0))
    lines = guides(ROOM, footprints((askew,)))
    # The wall rises 3 in 4: square to it is 4 in -3.
    square = catch_end(mm((100, 200)), mm((70.4, 240.9)), lines, GRIP)
    assert (square.direction, square.beside) == (Direction.SQUARE, "B")
    assert inches(square.right) == (70, 240)
    parallel = catch_end(mm((20, 300)), mm((60.5, 329.0)), lines, GRIP)
    assert (parallel.direction, parallel.beside) == (Direction.PARALLEL, "B")


def test_held_freely_the_end_goes_where_it_is_wanted() -> None:
    line = catch_end(mm((0, 200)), mm((238, 203)), LINES, FREE)
    assert inches(line.right) == (238, 203)


def test_an_end_is_drawn_along_its_line() -> None:
    line = catch_along(mm((0, 100)), (1.0, 0.0), mm((238.0, 130.0)), LINES, GRIP)
    assert (inches(line.right), told(line.on)) == ((240, 100), ["right eave"])
    line = catch_along(mm((0, 100)), (1.0, 0.0), mm((210.4, 90.0)), LINES, GRIP)
    assert (inches(line.right), line.on) == ((210, 100), ())
    free = catch_along(mm((0, 100)), (1.0, 0.0), mm((238.03, 130.0)), LINES, FREE)
    assert inches(free.right) == (238, 100)


@pytest.mark.parametrize(
    ("by", "left", "on"),
    [
        # A wall from (20, 200) to (80, 200), 3 1/2 thick: by whole inches.
        ((5.4, 30.3), (25, 230), []),
        # Its left end to the eave, its face A to the wall's far face at 103 1/2.
        ((-18.0, 2.2), (0, 202), ["left eave"]),
        ((5.0, -98.0), (25, 103.5), ["far face B"]),
        # Its far face at the end of the room: face A 3 1/2 before it.
        ((0.0, 194.0), (20, 396.5), ["end"]),
    ],
)
def test_a_wall_that_is_moved_is_caught_by_its_faces_and_ends(
    by: XY, left: XY, on: list[str]
) -> None:
    line, far = moved(mm((20, 200)), mm((80, 200)), mm(by), 3.5 * INCH, LINES, GRIP)
    assert inches(line.left) == left
    assert inches(line.right) == (left[0] + 60, left[1])
    assert told(line.on) == on
    assert far / INCH == pytest.approx(((left[0] - 20) ** 2 + (left[1] - 200) ** 2) ** 0.5)


def test_moved_freely_it_goes_as_far_as_the_pointer() -> None:
    line, _ = moved(mm((20, 200)), mm((80, 200)), mm((-18.3, 2.2)), 3.5 * INCH, LINES, FREE)
    assert inches(line.left) == (1.7, 202.2)


@pytest.mark.parametrize(
    ("ends", "wanted"),
    [
        # On the end of the room, drawn either way: face A to the room, timber against the edge.
        (((0, 400), (240, 400)), ((0, 396.5), (240, 396.5))),
        (((240, 400), (0, 400)), ((0, 396.5), (240, 396.5))),
        # On the left eave wall: seen from the room its left end is at the start of the room.
        (((0, 50), (0, 90)), ((3.5, 50), (3.5, 90))),
        (((240, 50), (240, 90)), ((236.5, 90), (236.5, 50))),
        # On no edge.
        (((0, 300), (240, 300)), ((0, 300), (240, 300))),
        (((0, 0), (50, 50)), ((0, 0), (50, 50))),
    ],
)
def test_a_line_on_the_rooms_edge_is_brought_in(ends: tuple[XY, XY], wanted: tuple[XY, XY]) -> None:
    line = against(Line(mm(ends[0]), mm(ends[1])), 3.5 * INCH, guides(ROOM, ()))
    assert (inches(line.left), inches(line.right)) == wanted


@pytest.mark.parametrize(
    ("point", "way", "to", "on"),
    [
        ((0, 200), (1, 0), (120, 200), ["ridge"]),
        ((120, 200), (1, 0), (240, 200), ["right eave"]),
        ((60, 200), (0, -1), (60, 103.5), ["far face B"]),
        ((60, 103.5), (0, -1), (60, 100), ["face a B"]),
    ],
)
def test_the_next_line_in_a_direction(point: XY, way: XY, to: XY, on: list[str]) -> None:
    found = next_along(mm(point), way, LINES)
    assert found is not None
    assert (inches(found.point), told(found.on)) == (to, on)


def test_out_of_the_room_there_is_no_next_line() -> None:
    assert next_along(mm((240, 300)), (1.0, 0.0), LINES) is None


def test_a_line_without_length_runs_to_the_right() -> None:
    line = Line((1.0, 1.0), (1.0, 1.0))
    assert (line.run, line.along) == (0.0, (1.0, 0.0))


def test_a_shed_has_no_ridge_and_a_wing_has_edges() -> None:
    shed = US.room(240.0, (48.0, in_12(6)), length=400.0)
    assert Kind.RIDGE not in {guide.kind for guide in guides(shed, ())}
