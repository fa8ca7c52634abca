"""How walls go up: whole, a little short, in panels, or in place; worked by hand in inches."""

from __future__ import annotations

from itertools import pairwise

import msgspec
import pytest

from core.model import Wall
from core.site import Laid, StepKind, Way
from raising import raised
from walls import US, in_12

GABLE = US.room(264, (12, in_12(9)), (12, in_12(9)))


def test_a_wall_up_the_slope_is_built_an_eighth_short() -> None:
    # It needs 0.1278 (see test_swing), on a tape of sixteenths 3/16 = 0.1875.
    up = raised(GABLE, US.wall((48, 200), (216, 200)))
    assert up.way is Way.SHORT
    assert US.of(up.short) == pytest.approx(0.1875)
    assert up.laid is Laid.FACE_A
    assert up.panels == ()


def test_a_knee_wall_is_tilted_up_from_the_room() -> None:
    up = raised(GABLE, US.wall((48, 100), (48, 300)))
    assert (up.way, up.laid, up.short) == (Way.TILT, Laid.FACE_A, 0.0)
    # 200 along; face A is 48 high, and so deep is the floor it lies on.
    assert US.of(up.floor.length) == pytest.approx(200)
    assert US.of(up.floor.depth) == pytest.approx(48)


def test_a_wall_by_a_gable_lies_on_the_side_where_the_room_is() -> None:
    # Face A looks to v = 0. 12 from that end there is no room for a wall up to 111 high: 99 out.
    up = raised(GABLE, US.wall((48, 12), (216, 12)))
    assert up.laid is Laid.FAR_FACE
    assert US.of(up.floors[0].lacking) == pytest.approx(111 - 12)
    assert up.floors[1].lacking == 0.0


def test_a_wall_that_stands_on_the_floor_it_needs_comes_after_it() -> None:
    knee = US.wall((48, 100), (48, 300))
    other = across("C", 48, 216, 200)
    up = raised(GABLE, knee, other)
    assert up.way is Way.TILT
    assert up.floor.in_the_way == ("C",)


def test_walls_that_only_touch_the_swing_are_not_in_the_way() -> None:
    # They stand at both ends of the knee wall: one ends where it begins, one begins where it ends.
    # Seen from face A, the far side of a wall walked from 48 to 216 lies at greater v.
    knee = US.wall((48, 100), (48, 300))
    assert raised(GABLE, knee, across("C", 48, 216, 300)).floor.in_the_way == ()
    assert raised(GABLE, knee, across("C", 48, 216, 96.5)).floor.in_the_way == ()
    assert raised(GABLE, knee, across("C", 48, 216, 97)).floor.in_the_way == ("C",)


def test_a_wall_between_two_close_walls_goes_up_in_no_other_way_than_in_place() -> None:
    # The room is 30 along: a wall 111 high has the floor on neither side.
    room = US.room(264, (12, in_12(9)), (12, in_12(9)), length=30)
    up = raised(room, US.wall((48, 15), (216, 15)))
    assert up.way is Way.IN_PLACE
    assert up.laid is None
    assert [step.kind for step in up.steps] == [
        StepKind.SOLE,
        StepKind.TOP,
        StepKind.ENDS,
        StepKind.STUDS,
    ]


def test_a_wall_askew_astride_the_ridge_goes_up_in_panels() -> None:
    # A ceiling at 60, reached at u = 64 and 200. From (30, 50) to (234, 254), at 45 degrees: at its
    # left end the roof rises to face A's side and falls to the other, at its right end it is the
    # other way round, so that it goes up whole on neither side. Under the ceiling it is built short
    # by 60 - sqrt(60^2 - 3.5^2) = 0.1022: 1/8 = 0.125.
    room = US.room(264, (12, in_12(9)), (12, in_12(9)), flat=60)
    wall = US.wall((30, 50), (234, 254))
    up = raised(room, wall)
    assert up.way is Way.PANELS
    assert all(swing.short > 12.7 for swing in up.swings)
    assert US.of(up.panel_short) == pytest.approx(0.125)
    sides = [panel.laid for panel in up.panels]
    assert set(sides) == set(Laid)
    assert up.panels[0].left == 0.0
    assert up.panels[-1].right == pytest.approx(wall.run)
    joints = [(a.right, b.left) for a, b in pairwise(up.panels)]
    assert all(right == left for right, left in joints)


def test_no_panel_lies_where_another_wall_stands() -> None:
    # C stands against the knee wall, 3.5 thick: no split leaves the floor free where C stands, so
    # there is no set of panels; the knee wall goes up whole, before C.
    knee = US.wall((48, 100), (48, 300))
    up = raised(GABLE, knee, across("C", 48, 216, 200))
    assert up.floor.in_the_way == ("C",)
    assert up.way is Way.TILT
    assert up.panels == ()
    assert raised(GABLE, knee).panels == ()


def across(letter: str, left: float, right: float, along: float) -> Wall:
    return msgspec.structs.replace(US.wall((left, along), (right, along)), letter=letter)
