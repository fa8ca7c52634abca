"""Walls drawn, lengthened, turned, copied, mirrored in plan; inches."""

from __future__ import annotations

import math
from typing import Any

import msgspec
import pytest

from core.job import work_out
from core.lengths import Length
from core.model import (
    AddedStud,
    ClearZone,
    DoubledStud,
    EndLean,
    Fixture,
    FixtureKind,
    Hanging,
    MeasuredStud,
    MovedStud,
    Point,
    Project,
    Side,
    SiteRecord,
    Station,
    Swing,
    WallFace,
)
from gui.edits import (
    Refusal,
    copy_wall,
    draw_wall,
    lengthen_wall,
    mirror_wall,
    place_wall,
    turn_face,
    turn_wall,
)
from loft import INCH, loft
from walls import US, stations

NONE: frozenset[str] = frozenset()


def mm(*point: float) -> tuple[float, float]:
    return point[0] * INCH, point[1] * INCH


def chalk(project: Project, letter: str) -> list[tuple[float, float]]:
    ends = project.wall(letter).chalk
    return [(round(u / INCH, 6) + 0.0, round(v / INCH, 6) + 0.0) for u, v in ends]


def inches(*things: Any) -> list[float]:
    """Where things begin, from the left end of the wall."""
    places = (t.at if isinstance(t, Station) else t.left for t in things)
    return [round(place.mm / INCH, 6) for place in places]


def full() -> Project:
    """The loft whose wall "B", from (12, 100) to (132, 100), has something of every kind."""
    wall = loft().wall("B")
    door = msgspec.structs.replace(wall.openings[0], hung=Hanging(Side.LEFT, Swing.AWAY))
    left, wide, high = map(US.length, (10.0, 20.0, 36.0))
    rail = Fixture("rail-1", FixtureKind.RAIL, left, wide, high, US.timber((1.5, 5.5)))
    return loft().with_wall(
        msgspec.structs.replace(
            wall,
            openings=(door,),
            moved=(MovedStud(1, US.length(12.0)),),
            added=(AddedStud("stud-1", US.length(50.0)),),
            fixtures=(rail,),
            roof_points=stations(US, (0.0, 60.0), (40.0, 100.0)),
            doubled=(DoubledStud("B/end/left", Side.RIGHT),),
            measured_studs=(MeasuredStud("B/door-1/king/left", US.length(99.0), False),),
            left_lean=EndLean(US.length(1.0)),
            kept_clear=(ClearZone("zone-1", *map(US.length, (20.0, 0.0, 15.0, 10.0))),),
        )
    )


def test_a_wall_is_drawn_between_two_points() -> None:
    project = draw_wall(loft(), (mm(0, 200), mm(240, 200)), "Partition", "B")
    assert chalk(project, "A") == [(0, 200), (240, 200)]
    assert project.wall("A").stud == loft().wall("B").stud
    # On the tape's steps it is stated in inches, not in mm.
    assert str(project.wall("A").left_end.along) == "200 in"


def test_a_wall_next_to_nothing_or_outside_is_refused() -> None:
    with pytest.raises(Refusal):
        draw_wall(loft(), (mm(0, 200), mm(5, 200)), "Partition")
    with pytest.raises(Refusal):
        draw_wall(loft(), (mm(0, 200), mm(260, 200)), "Partition")


def test_a_moved_wall_keeps_what_stands_in_it() -> None:
    start = full()
    project = place_wall(start, "B", mm(12, 150), mm(132, 150))
    before, after = start.wall("B"), project.wall("B")
    assert chalk(project, "B") == [(12, 150), (132, 150)]
    assert (after.openings, after.boxes, after.moved) == (
        before.openings,
        before.boxes,
        before.moved,
    )
    # What has not changed stays as it was written.
    assert after.left_end.across is before.left_end.across


def test_its_right_end_drawn_leaves_all_as_it_is() -> None:
    project = lengthen_wall(full(), "B", Side.RIGHT, mm(160, 100))
    assert chalk(project, "B") == [(12, 100), (160, 100)]
    assert project.wall("B").openings == full().wall("B").openings


def test_its_left_end_drawn_leaves_all_where_it_is_in_the_room() -> None:
    # 12 in. longer to the left: all counts from there.
    wall = lengthen_wall(full(), "B", Side.LEFT, mm(0, 100)).wall("B")
    assert inches(*wall.openings, *wall.moved, *wall.added, *wall.fixtures) == [72, 24, 62, 22]
    assert inches(*wall.roof_points) == [12, 52]


def test_a_wall_is_turned_about_a_point() -> None:
    project = turn_wall(loft(), "B", mm(12, 100), math.radians(90))
    assert chalk(project, "B") == [(12, 100), (12, 220)]


def test_a_copy_has_all_under_another_letter() -> None:
    project = copy_wall(full(), "B", mm(0, 50), NONE)
    copy = project.wall("A")
    assert chalk(project, "A") == [(12, 150), (132, 150)]
    assert copy.boxes[0].stud == "A/layout/2"
    assert copy.doubled[0].stud == "A/end/left"
    assert copy.measured_studs[0].key == "A/door-1/king/left"
    assert project.wall("B") == full().wall("B")
    assert "C" in {w.letter for w in copy_wall(full(), "B", mm(0, 50), frozenset("A")).walls}


def test_a_mirrored_wall_is_seen_from_the_same_side_with_all_of_it_the_other_way_round() -> None:
    # About the ridge at 120: from 108 to 228. What began at x ends at 120 - x.
    project = mirror_wall(full(), "B", NONE)
    wall = project.wall("A")
    assert chalk(project, "A") == [(108, 100), (228, 100)]
    door = wall.openings[0]
    assert door.hung == Hanging(Side.RIGHT, Swing.AWAY)
    assert inches(door, *wall.moved, *wall.added, *wall.fixtures) == [30, 106.5, 68.5, 90]
    assert inches(*wall.roof_points) == [80, 120]
    assert [s.height for s in wall.roof_points] == [US.length(100.0), US.length(60.0)]
    assert wall.layout.start is Side.RIGHT
    assert (wall.boxes[0].stud, wall.boxes[0].side) == ("A/layout/2", Side.LEFT)
    assert wall.doubled[0] == DoubledStud("A/end/right", Side.LEFT)
    assert wall.measured_studs[0].key == "A/door-1/king/right"
    assert inches(*wall.kept_clear) == [85]
    assert (wall.left_lean, wall.right_lean) == (None, EndLean(US.length(1.0)))


def test_mirrored_twice_it_is_the_same_wall() -> None:
    once = mirror_wall(full(), "B", NONE)
    twice = mirror_wall(msgspec.structs.replace(once, walls=(once.wall("A"),)), "A", NONE)
    assert chalk(twice, "B") == chalk(full(), "B")
    assert inches(*twice.wall("B").openings) == inches(*full().wall("B").openings)


def test_a_mirrored_wall_has_the_same_studs() -> None:
    project = mirror_wall(loft(), "B", NONE)
    results = work_out(project, SiteRecord())
    lengths = [
        sorted(round(m.long_point, 6) for m in frame.members)
        for letter in "BA"
        if (frame := results.wall(letter).frame) is not None
    ]
    assert lengths[0] == lengths[1]


def test_a_wall_that_is_its_own_mirror_image_is_refused() -> None:
    project = draw_wall(loft(), (mm(0, 200), mm(240, 200)), "Partition")
    with pytest.raises(Refusal, match=r"mirrored-alike"):
        mirror_wall(project, "A", NONE)


def test_face_a_is_turned_to_the_other_side_with_the_timber_where_it_was() -> None:
    project = turn_face(full(), "B")
    wall = project.wall("B")
    # The far face stood at 103 1/2: face A is there now, and its left end where the right one was.
    assert chalk(project, "B") == [(132, 103.5), (12, 103.5)]
    door = wall.openings[0]
    assert (inches(door), door.hung) == ([30], Hanging(Side.RIGHT, Swing.TOWARD))
    assert wall.fixtures[0].face is WallFace.FAR
    back = turn_face(project, "B")
    assert chalk(back, "B") == chalk(full(), "B")
    assert back.wall("B").fixtures[0].face is WallFace.A
    assert inches(*back.wall("B").openings) == [60]


def test_a_shed_is_mirrored_about_its_middle() -> None:
    room = msgspec.structs.replace(loft().room, right=None)
    project = mirror_wall(msgspec.structs.replace(loft(), room=room), "B", NONE)
    assert chalk(project, "A") == [(108, 100), (228, 100)]


def test_a_point_is_stated_shortly() -> None:
    project = draw_wall(loft(), ((0.0, 2540.000000001), (2540.0, 2540.000000001)), "Partition")
    assert project.wall("A").left_end == Point(Length.of_inches(0), US.length(100.0))
