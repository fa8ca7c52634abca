"""The dimensions of what is held: what they are taken from and what they read."""

from __future__ import annotations

import msgspec
import pytest

from core.model import HeadLie, Project
from gui.edits import (
    add_fixture,
    add_stud,
    add_zone,
    move_opening,
    set_fixture,
    set_opening,
)
from gui.edits.stating import stated
from gui.sketcher.measures import Ruler, measures, whole_bounds, whole_key
from loft import BOX, CRIPPLE, DOOR, INCH, STUD, WINDOW, hold_of, loft, with_window
from walls import US


def read(project: Project, key: str) -> dict[Ruler, float]:
    return {m.ruler: round(m.reads / INCH, 4) for m in measures(hold_of(project, key))}


def test_a_stud_is_measured_to_both_ends_and_to_its_neighbours() -> None:
    # From 31 1/4 to 32 3/4 in 120; place 1 ends at 16 3/4, place 3 begins at 47 1/4.
    assert read(loft(), STUD) == {
        Ruler.LEFT_END: 31.25,
        Ruler.LEFT_NEIGHBOUR: 14.5,
        Ruler.RIGHT_NEIGHBOUR: 14.5,
        Ruler.RIGHT_END: 87.25,
    }


def test_a_cripple_has_the_timber_at_its_own_height_beside_it() -> None:
    # From 63 1/4 to 64 3/4: the left king ends at 58 1/2, the next cripple begins at 79 1/4.
    found = read(loft(), CRIPPLE)
    assert found[Ruler.LEFT_NEIGHBOUR] == 4.75
    assert found[Ruler.RIGHT_NEIGHBOUR] == 14.5


@pytest.mark.parametrize("key", [DOOR, "B/door-1/king/left", "B/door-1/header/1"])
def test_a_door_is_measured_at_its_rough_opening_and_head(key: str) -> None:
    # From 60 to 90, its head at 80: the plate's underside is at 106 1/2 over all of it.
    assert read(loft(), key) == {
        Ruler.LEFT_END: 60.0,
        Ruler.RIGHT_END: 30.0,
        Ruler.HEAD: 80.0,
        Ruler.SLOPE: 26.5,
    }
    assert whole_key(hold_of(loft(), key)) == DOOR


def test_a_raked_door_is_measured_at_its_lower_side() -> None:
    # Under 12 in 12, from 26 to 46: its head is 60 high at 26, where the plate's underside is at
    # 60 + 26 - 1 1/2 * sqrt 2 = 83.8787.
    narrow = set_opening(loft(), "B", "door-1", width=US.length(20), head=US.length(60))
    moved = move_opening(narrow, "B", "door-1", 26 * INCH)
    raked = set_opening(moved, "B", "door-1", head_lie=HeadLie.RAKED)
    found = {m.ruler: m for m in measures(hold_of(raked, DOOR))}
    assert found[Ruler.HEAD].reads / INCH == pytest.approx(60)
    assert found[Ruler.HEAD].end[0] / INCH == pytest.approx(26)
    assert found[Ruler.SLOPE].reads / INCH == pytest.approx(23.8787, abs=1e-4)
    assert whole_bounds(hold_of(raked, DOOR)) == pytest.approx((26 * INCH, 0, 46 * INCH, 60 * INCH))


def test_a_window_is_measured_at_its_sill() -> None:
    found = read(with_window(), WINDOW)
    assert found[Ruler.FLOOR] == 40.0
    assert found[Ruler.SLOPE] == 26.5


def test_a_box_is_measured_to_the_opening_beside_it_and_as_its_height_is_stated() -> None:
    # From 32 3/4 to 34 3/4, 4 in. tall about 14: its top is at 16, the slope over its left edge at
    # 60 + 32 3/4 less a plate of 1 1/2 on the slope of 45 degrees (2.1213) is 90.6287.
    assert read(loft(), BOX) == {
        Ruler.LEFT_END: 32.75,
        Ruler.RIGHT_NEIGHBOUR: 25.25,
        Ruler.RIGHT_END: 85.25,
        Ruler.FLOOR: 14.0,
        Ruler.SLOPE: 74.6287,
    }


def test_two_openings_are_neighbours() -> None:
    project = loft()
    wall = project.wall("B")
    both = (*wall.openings, US.opening("access-door-1", 30.0, 20.0, 30.0))
    found = read(project.with_wall(msgspec.structs.replace(wall, openings=both)), DOOR)
    assert found[Ruler.LEFT_NEIGHBOUR] == 10.0


def test_backing_is_measured_to_its_middle() -> None:
    project = add_fixture(loft(), "B")
    height = stated(project, 30 * INCH)
    project = set_fixture(project, "B", "backing-1", height=height, left=stated(project, 10 * INCH))
    found = read(project, "B/backing-1")
    assert found[Ruler.FLOOR] == 30.0
    assert found[Ruler.LEFT_END] == 10.0


def test_a_stud_against_another_has_no_distance_to_it() -> None:
    # Against place 2, which ends at 32 3/4.
    project = add_stud(loft(), "B", 32.75 * INCH)
    found = read(project, "B/stud-1")
    assert Ruler.LEFT_NEIGHBOUR not in found
    assert found[Ruler.RIGHT_NEIGHBOUR] == 13.0


def test_a_kept_clear_zone_is_measured_at_its_foot_and_top() -> None:
    # From 54 to 66 and 12 to 36 up; the plate over it is level at 106 1/2, the door beside it.
    found = read(add_zone(loft(), "B"), "B/kept-clear-1")
    assert found[Ruler.FLOOR] == 12.0
    assert found[Ruler.SLOPE] == 70.5
    assert found[Ruler.RIGHT_END] == 54.0
