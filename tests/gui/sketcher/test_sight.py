"""A fitted look shows all there is and follows; a chosen one stays."""

from __future__ import annotations

import msgspec
import pytest

from core.drawing.elevation import elevation
from core.lengths import Length
from core.model import Point
from gui.desk import Desk
from gui.edits import add_wall
from gui.sketcher.extent import extent, union
from gui.sketcher.fitting import fitted, wall_rect
from gui.sketcher.sight import Sight
from loft import INCH, desk_of, loft
from walls import US

SIZE = (900.0, 640.0)
DENSITY = 96 / 25.4

pytestmark = pytest.mark.usefixtures("qapp")


@pytest.fixture
def desk(qapp: object) -> Desk:
    assert qapp is not None
    return desk_of()


def longer(desk: Desk) -> None:
    """Move the wall's right end 40 in. on."""
    wall = desk.project.wall("B")
    end = Point(Length.of_inches(172), wall.right_end.along)
    desk.commit("longer", desk.project.with_wall(msgspec.structs.replace(wall, right_end=end)))


@pytest.mark.parametrize("size", [(900.0, 640.0), (500.0, 400.0), (1800.0, 500.0), (420.0, 900.0)])
def test_fitted_everything_lies_within_the_paper(desk: Desk, size: tuple[float, float]) -> None:
    sight = Sight(desk)
    sight.fit(size, DENSITY)
    rects = (extent(e, sight.camera, DENSITY) for e in sight.drawing(DENSITY))
    left, top, right, bottom = union(rects)
    assert left >= 0
    assert top >= 0
    assert right <= size[0]
    assert bottom <= size[1]
    # And it is no smaller than it has to be: two sides come near the edge.
    assert min(left, size[0] - right) < 45 or min(top, size[1] - bottom) < 45


def test_what_is_kept_of_earlier_drawings_fits_as_a_fresh_one_does(desk: Desk) -> None:
    sight = Sight(desk)
    for size in (SIZE, (500.0, 400.0), SIZE):
        sight.fit(size, DENSITY)
        sight.drawing(DENSITY)
        assert desk.result is not None
        assert sight.camera == fitted(desk.result, desk.wording, size, DENSITY)
        longer(desk)


def test_the_rectangle_of_a_wall_goes_from_the_floor_to_its_highest_point(desk: Desk) -> None:
    assert desk.result is not None
    rect = wall_rect(desk.result)
    assert [v / INCH for v in rect] == pytest.approx([0, 0, 120, 108])


def test_a_wall_under_no_roof_has_a_rectangle_too() -> None:
    # Shorter than a stud is thick: there is no frame.
    desk = desk_of(loft().with_wall(US.wall((12.0, 100.0), (13.0, 100.0))))
    assert desk.result is not None
    assert desk.result.frame is None
    sight = Sight(desk)
    sight.fit(SIZE, DENSITY)
    assert sight.drawing(DENSITY) == ()
    assert sight.camera.scale > 0


def test_a_fitted_look_follows_the_wall_and_the_window(desk: Desk) -> None:
    sight = Sight(desk)
    sight.fit(SIZE, DENSITY)
    before = sight.camera
    sight.follow(SIZE, DENSITY)
    assert sight.camera == before
    longer(desk)
    sight.follow(SIZE, DENSITY)
    grown = sight.camera
    assert grown.scale < before.scale
    sight.follow((600.0, 400.0), DENSITY, resized=True)
    assert sight.camera.scale < grown.scale


def test_a_chosen_look_stays_until_another_wall_is_shown(desk: Desk) -> None:
    sight = Sight(desk)
    sight.fit(SIZE, DENSITY)
    chosen = sight.camera.zoomed(2.0, (100.0, 100.0))
    sight.look(chosen)
    longer(desk)
    sight.follow(SIZE, DENSITY)
    sight.follow((600.0, 400.0), DENSITY, resized=True)
    assert sight.camera == chosen
    desk.commit("add", add_wall(desk.project, "second"))
    desk.show_wall(desk.project.walls[-1].letter)
    sight.follow(SIZE, DENSITY)
    assert sight.camera != chosen


def test_the_drawing_is_laid_out_once_for_each_look(desk: Desk) -> None:
    sight = Sight(desk)
    sight.fit(SIZE, DENSITY)
    first = sight.drawing(DENSITY)
    assert sight.drawing(DENSITY) is first
    sight.look(sight.camera.panned(10.0, 10.0))
    assert sight.drawing(DENSITY) is first
    sight.look(sight.camera.zoomed(2.0, (0.0, 0.0)))
    assert sight.drawing(DENSITY) is not first
    longer(desk)
    assert desk.result is not None
    view = sight.camera.view(DENSITY)
    assert sight.drawing(DENSITY) == elevation(desk.result, view, desk.wording)


def test_without_a_wall_there_is_nothing_to_see() -> None:
    project = msgspec.structs.replace(loft(), walls=())
    sight = Sight(desk_of(project))
    sight.fit(SIZE, DENSITY)
    sight.follow(SIZE, DENSITY)
    assert sight.drawing(DENSITY) == ()
