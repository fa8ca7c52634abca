"""Floor and walls in the way, by hand and against shapely."""

from __future__ import annotations

import msgspec
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely.geometry import Polygon

from core.framing import Frame
from core.model import ClearKind, ExistingWall, KeptClear, Point, StairOpening
from core.site import Laid, Surroundings
from core.site.floor import floor_for, footprint
from core.site.outline import top_places
from raising import around
from wall_cases import bare_walls, rooms
from walls import US, frame_of, in_12, result

GABLE = US.room(264, (12, in_12(9)), (12, in_12(9)))


def covered(place: Surroundings, frame: Frame, laid: Laid) -> Polygon:
    """The floor a wall covers while it lies, with its place, as one polygon in plan."""
    tops: dict[float, float] = {}
    for p in top_places(frame, place.depth, sampled=True):
        tops[p.x] = max(p.y, tops.get(p.x, 0.0))
    xs = sorted(tops)
    if laid is Laid.FACE_A:
        foot, edge = place.depth, [(x, -tops[x]) for x in xs]
    else:
        foot, edge = 0.0, [(x, place.depth + tops[x]) for x in xs]
    ring = [(xs[0], foot), *edge, (xs[-1], foot)]
    return Polygon([place.plan(x, aside) for x, aside in ring])


@settings(max_examples=40)
@given(st.data())
def test_walls_in_the_way_are_those_that_share_floor(data: st.DataObject) -> None:
    room = data.draw(rooms())
    wall = data.draw(bare_walls(room, shortest=600))
    other = msgspec.structs.replace(data.draw(bare_walls(room, shortest=300)), letter="C")
    made, standing = result(room, wall), result(room, other)
    assume(made.frame is not None and standing.frame is not None)
    assert made.frame is not None
    place = around(room, wall, other)
    places = top_places(made.frame, place.depth, sampled=True)
    assume(places)
    for laid in Laid:
        shared = covered(place, made.frame, laid).buffer(0).intersection(Polygon(footprint(other)))
        assume(abs(shared.area - 100.0) > 20.0)
        floor = floor_for(place, places, laid)
        assert floor.in_the_way == (("C",) if shared.area > 100.0 else ())


@pytest.mark.parametrize(
    ("along", "lacking"),
    # 12 from the gable that face A looks to, a wall up to 111 high lies 99 out; at 150 it is in.
    [(12, 99), (111, 0), (150, 0)],
)
def test_the_room_has_floor_enough_or_not(along: float, lacking: float) -> None:
    wall = US.wall((48, along), (216, along))
    places = top_places(frame_of(GABLE, wall), wall.stud.width.mm, sampled=True)
    floor = floor_for(around(GABLE, wall), places, Laid.FACE_A)
    assert US.of(floor.lacking) == pytest.approx(lacking)
    assert US.of(floor.length) == pytest.approx(168)
    assert US.of(floor.depth) == pytest.approx(111)


@pytest.mark.parametrize(
    ("along", "near", "far"),
    [
        # Face A of a knee wall at u = 48 looks into the room: it lies from 48 + 48 = 96 down to
        # its far face at 44 1/2, from v = 100 to 300. A chimney at u = 60 to 84 stands there.
        (200, ("chimney-1",), ()),
        # Up to v = 300 and no farther; one from 90 to 114 reaches in, one from 70 to 94 does not.
        (300, (), ()),
        (90, ("chimney-1",), ()),
        (70, (), ()),
    ],
)
def test_a_chimney_stands_where_it_would_lie(
    along: float, near: tuple[str, ...], far: tuple[str, ...]
) -> None:
    chimney = KeptClear("chimney-1", ClearKind.CHIMNEY, *map(US.length, (60, along, 24, 24, 2)))
    room = msgspec.structs.replace(GABLE, kept_clear=(chimney,))
    wall = US.wall((48, 100), (48, 300))
    place, places = around(room, wall), top_places(frame_of(room, wall), 3.5 * 25.4, sampled=True)
    floors = [floor_for(place, places, laid) for laid in Laid]
    assert [floor.taken for floor in floors] == [near, far]
    # The far side has no floor up to the eave, 44 1/2 from it.
    assert [floor.enough for floor in floors] == [not near, False]


def test_a_stair_opening_and_a_wall_there_already_take_the_floor() -> None:
    """The knee wall of above lies from u = 96 down to 44 1/2, from v = 100 to 300."""
    stair = StairOpening("stair-1", *map(US.length, (60, 150, 36, 100)))
    beyond = StairOpening("stair-2", *map(US.length, (97, 150, 36, 100)))
    left, right = (Point(*map(US.length, end)) for end in ((40, 280), (200, 280)))
    wall = ExistingWall("existing-1", left, right, US.length(4.5))
    room = msgspec.structs.replace(GABLE, stair_openings=(stair, beyond), existing_walls=(wall,))
    knee = US.wall((48, 100), (48, 300))
    place, places = around(room, knee), top_places(frame_of(room, knee), 3.5 * 25.4, sampled=True)
    floor = floor_for(place, places, Laid.FACE_A)
    assert floor.taken == ("stair-1", "existing-1")
    assert not floor.enough
