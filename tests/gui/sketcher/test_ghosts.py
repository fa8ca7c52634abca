"""Parts over the wall: their true outlines, what they snap to, and why they cannot stand."""

from __future__ import annotations

import pytest

from core.framing.moving import Grip
from core.job import work_out
from core.model import Side, SiteRecord
from gui.sketcher.ghosts import Ghost, Part, ghost_at, start_of
from gui.sketcher.hit import bounds
from gui.wordings import wording_of
from loft import INCH, loft
from walls import US

GRIP = Grip(INCH / 16, 0.5 * INCH)
RESULT = work_out(loft(), SiteRecord()).walls[0]


def over(part: Part, x: float, y: float, grip: Grip = GRIP) -> Ghost:
    found = ghost_at(loft(), RESULT, part, (x * INCH, y * INCH), grip)
    assert found is not None
    return found


def said(ghost: Ghost) -> str:
    return wording_of(loft()).say(ghost.said)


def edges(ghost: Ghost) -> list[float]:
    return [round(mm / INCH, 3) for mm in bounds(ghost.outline)]


def test_a_stud_is_as_long_as_the_roof_lets_it_be() -> None:
    ghost = over(Part.STUD, 24.75, 10)
    # From 24 to 25 1/2, on the sole plate, up to 60 + 25 1/2 less 2.1213 at its right edge.
    assert edges(ghost) == [24.0, 1.5, 25.5, 83.379]
    assert said(ghost) == 'stud: left edge at 24"'
    assert ghost.project is not None
    assert ghost.project.wall("B").added[0].left.mm == pytest.approx(24 * INCH)
    assert ghost.key == "B/stud-1"


def test_a_stud_in_the_place_of_another_says_where_it_could_stand() -> None:
    ghost = over(Part.STUD, 32, 10)
    assert ghost.project is None
    assert said(ghost) == (
        'A stud with its left edge at 31 1/4" has no room in wall B: the nearest place is 29 3/4".'
    )


def test_a_door_shows_where_on_the_floor_it_can_go() -> None:
    ghost = over(Part.ACCESS_DOOR, 30, 99)
    # 24 in. wide with a king and a trimmer on either side, between the end stud and door 1.
    assert [(round(a / INCH, 3), round(b / INCH, 3)) for a, b in ghost.room] == [(4.5, 54.0)]
    assert edges(ghost)[0:3:2] == [18.25, 42.25]  # its left king on the layout at 15 1/4
    assert ghost.project is not None
    assert ghost.key == "B/access-door-1"


def test_a_door_that_has_no_place_there_stays_under_the_pointer() -> None:
    ghost = over(Part.ACCESS_DOOR, 70, 20)
    assert ghost.project is None
    assert edges(ghost) == [58.0, 0.0, 82.0, 30.0]
    assert said(ghost) == (
        'access door has no place there, because door 1 stands there: the nearest left edge is 30".'
    )


def test_a_door_that_fits_nowhere_says_so() -> None:
    # 34 in. between the end stud and door 1 would need 60 - 3 - 3 - 4 1/2 - ... under the slope.
    ghost = over(Part.DOOR, 30, 20)
    assert ghost.project is None
    assert ghost.room == ()
    assert said(ghost).startswith("door of usual size fits nowhere in wall B")


def test_a_window_keeps_its_usual_height_when_near_it_and_follows_the_pointer_else() -> None:
    # The door's usual 30 by 36 in. with its sill at 36: its middle is at 54.
    project = loft().with_wall(US.wall((12.0, 100.0), (132.0, 100.0)))
    result = work_out(project, SiteRecord()).walls[0]
    for y, sill in ((54.0, 36.0), (55.2, 36.0), (60.0, 42.0)):
        ghost = ghost_at(project, result, Part.WINDOW, (70 * INCH, y * INCH), GRIP)
        assert ghost is not None
        assert ghost.project is not None
        (window,) = ghost.project.wall("B").openings
        assert window.sill.mm == pytest.approx(sill * INCH)
        assert window.head.mm - window.sill.mm == pytest.approx(36 * INCH)


@pytest.mark.parametrize(
    ("part", "y", "height", "key"),
    [
        (Part.BOX, 12.5, 12.0, "B/box-2"),
        (Part.BOX, 40.0, 40.0, "B/box-2"),
        (Part.SWITCH, 47.0, 48.0, "B/switch-1"),
    ],
)
def test_a_box_goes_to_a_stud_at_its_usual_height(
    part: Part, y: float, height: float, key: str
) -> None:
    ghost = over(part, 42, y)
    assert ghost.project is not None
    box = ghost.project.wall("B").boxes[-1]
    assert (box.stud, box.side) == ("B/layout/3", Side.LEFT)
    assert box.height.mm == pytest.approx(height * INCH)
    assert ghost.key == key
    assert edges(ghost)[0:3:2] == [45.25, 47.25]


def test_a_box_on_a_box_says_why_not() -> None:
    ghost = over(Part.BOX, 33, 13)
    assert ghost.project is None
    assert said(ghost).startswith("Another piece of timber stands in the way of box 2")


def test_a_row_of_blocking_goes_from_end_to_end() -> None:
    ghost = over(Part.BLOCKING, 50, 40)
    assert edges(ghost) == [1.5, 39.25, 118.5, 40.75]
    assert ghost.project is not None
    blocking = ghost.project.wall("B").blocking
    assert blocking is not None
    assert [row.mm for row in blocking.heights] == pytest.approx([40 * INCH])
    assert said(ghost) == 'blocking: 40" high'


def test_blocking_too_high_is_refused() -> None:
    assert over(Part.BLOCKING, 50, 130).project is None


def test_backing_stays_within_the_wall() -> None:
    ghost = over(Part.BACKING, 110, 36)
    assert edges(ghost)[2] == pytest.approx(120.0)
    assert ghost.project is not None
    assert ghost.key == "B/backing-1"
    assert over(Part.BACKING, 20, 200).project is None


@pytest.mark.parametrize("part", list(Part))
def test_every_part_has_somewhere_to_begin(part: Part) -> None:
    x, y = start_of(loft(), RESULT, part)
    assert x == pytest.approx(60 * INCH)
    assert over(part, x / INCH, y / INCH).outline


def test_over_a_wall_that_cannot_be_framed_there_is_nothing() -> None:
    project = loft().with_wall(US.wall((12.0, 100.0), (13.0, 100.0)))
    result = work_out(project, SiteRecord()).walls[0]
    assert ghost_at(project, result, Part.STUD, (0.0, 0.0), GRIP) is None
