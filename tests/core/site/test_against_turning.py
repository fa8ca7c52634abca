"""The swing against brute force: every point turned in small steps under plain planes."""

from __future__ import annotations

import msgspec
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from core.model import Room, TopPlate, Wall
from core.site import Laid
from raising import raised
from tilting import brute
from wall_cases import bare_walls, gables, rooms, whole
from walls import result


def flush(wall: Wall) -> Wall:
    """The wall with plates as wide as its studs, so that its faces are all that swings."""
    plate = TopPlate(msgspec.structs.replace(wall.top_plate.timber, width=wall.stud.width))
    return msgspec.structs.replace(wall, top_plate=plate)


def looked_at(room: Room, wall: Wall) -> list[float]:
    """x of the roof line's corners, and some between."""
    near, far = (result(room, wall).inputs.near, result(room, wall).inputs.far)
    assert near is not None
    assert far is not None
    corners = {x for line in (near, far) for x, _ in line.points()}
    return sorted(corners | {wall.run * n / 6 for n in range(7)})


def compare(room: Room, wall: Wall) -> None:
    assume(whole(result(room, wall)))
    xs = looked_at(room, wall)
    for swing in raised(room, wall).swings:
        far = swing.laid is Laid.FAR_FACE
        found = brute(room, wall, xs, far)
        # Brute force may miss the worst angle by half a step: at a fold of the roof, by
        # 4000 mm * 0.002 degrees = 0.14 mm.
        assert swing.clearance == pytest.approx(min(found.least, 0.0), abs=0.2)


@settings(max_examples=25)
@given(st.data())
def test_the_least_gap_of_walls_at_any_angle(data: st.DataObject) -> None:
    room = data.draw(rooms())
    compare(room, flush(data.draw(bare_walls(room, shortest=600))))


@settings(max_examples=15)
@given(st.data())
def test_the_least_gap_of_walls_astride_a_ridge(data: st.DataObject) -> None:
    room = data.draw(gables())
    compare(room, flush(data.draw(bare_walls(room, shortest=600))))


@settings(max_examples=15)
@given(st.data())
def test_the_gap_needed_is_just_enough(data: st.DataObject) -> None:
    room = data.draw(rooms())
    wall = flush(data.draw(bare_walls(room, shortest=600)))
    assume(whole(result(room, wall)))
    xs = looked_at(room, wall)
    for swing in raised(room, wall).swings:
        if swing.needed is None or swing.needed < 1.0 or swing.needed > 100.0:
            continue
        far = swing.laid is Laid.FAR_FACE
        assert brute(room, wall, xs, far, lower=swing.needed).least >= -0.02
        assert brute(room, wall, xs, far, lower=swing.needed - 0.8).least < 0.0


@settings(max_examples=25)
@given(st.data())
def test_every_panel_goes_up_by_itself(data: st.DataObject) -> None:
    room = data.draw(gables())
    wall = flush(data.draw(bare_walls(room, shortest=1500)))
    assume(whole(result(room, wall)))
    up = raised(room, wall)
    for panel in up.panels:
        corners = [x for x in looked_at(room, wall) if panel.left <= x <= panel.right]
        xs = [panel.left, *corners, panel.right]
        far = panel.laid is Laid.FAR_FACE
        assert brute(room, wall, xs, far, lower=up.panel_short).least >= -0.02
