"""What a layout stud does near end studs and kings, rule by rule."""

from __future__ import annotations

import msgspec
import pytest

from core.framing import Frame
from core.model import Near, Wall, WallRules
from walls import US, Pair, frame_of, in_12

FLAT = US.room(264, left=(96, in_12(0)))
DROP, MERGE, KEEP = Near.DROP, Near.MERGE, Near.KEEP


def ruled(
    wall: Wall, closer: float | None = None, kings: Near = Near.DROP, ends: Near = Near.DROP
) -> Wall:
    near = None if closer is None else US.length(closer)
    return msgspec.structs.replace(wall, rules=WallRules(kings, ends, near))


def lefts(frame: Frame) -> dict[str, float]:
    """The studs of the layout: place and left edge."""
    found = (m for m in frame.members if m.key.startswith("B/layout/"))
    return {m.key.removeprefix("B/layout/"): round(US.of(m.left), 6) for m in found}


@pytest.mark.parametrize(
    ("run", "rule", "closer", "last"),
    [
        # Marks at 15.25 ... 95.25; the end stud stands on the last 1.5 of the run.
        pytest.param(98, DROP, None, {}, id="95.25 to 96.75 overlaps 96.5 to 98"),
        pytest.param(98, KEEP, None, {"6": 95}, id="kept: tight, 95 to 96.5"),
        pytest.param(98, MERGE, None, {}, id="merged as dropped"),
        pytest.param(98.25, DROP, None, {"6": 95.25}, id="just clear"),
        pytest.param(98.25, KEEP, None, {"6": 95.25}, id="just clear, kept as it is"),
        pytest.param(98.25, MERGE, 3, {}, id="no room between: merged"),
        pytest.param(101.25, MERGE, 3, {"6": 95.25}, id="3 in. between: as wide as stated"),
        pytest.param(101.2, MERGE, 3, {}, id="less than 3"),
        pytest.param(101.2, MERGE, None, {"6": 95.25}, id="no room stated"),
        pytest.param(96.75, KEEP, None, {}, id="in the very place of the end stud"),
    ],
)
def test_near_the_end(run: float, rule: Near, closer: float | None, last: dict[str, float]) -> None:
    frame = frame_of(FLAT, ruled(US.wall((0, 9), (run, 9)), closer, ends=rule))
    assert {k: v for k, v in lefts(frame).items() if k == "6"} == last
    assert frame.no_room == ()


@pytest.mark.parametrize(
    ("door", "rule", "closer", "expected"),
    [
        # An opening from `left` for 20: kings from left - 3 to left + 23.
        # Mark 3 is 47.25 to 48.75.
        pytest.param((51, 20), DROP, None, {}, id="king 48 to 49.5 over the mark 47.25"),
        pytest.param((51, 20), KEEP, None, {"3": 46.5}, id="kept to the left of the king"),
        pytest.param((51.75, 20), DROP, None, {"3": 47.25}, id="touching"),
        pytest.param((51.75, 20), MERGE, 2, {}, id="touching, merged"),
        pytest.param((53.75, 20), MERGE, 2, {"3": 47.25}, id="2 in. between"),
        pytest.param((25, 20), DROP, None, {}, id="king 46.5 to 48 over it"),
        pytest.param((25, 20), KEEP, None, {"3": 48}, id="kept to the right of the king"),
        pytest.param((50.25, 20), KEEP, None, {}, id="in the very place of the king"),
    ],
)
def test_near_a_king(
    door: Pair, rule: Near, closer: float | None, expected: dict[str, float]
) -> None:
    opening = US.opening("door-1", *door, 94.5 - 1.5 - 1.5)
    wall = ruled(US.wall((0, 9), (120, 9), openings=(opening,)), closer, kings=rule)
    frame = frame_of(FLAT, wall)
    assert {k: v for k, v in lefts(frame).items() if k == "3"} == expected
    assert frame.no_room == ()


def test_a_stated_stud_goes_by_no_rule() -> None:
    wall = US.wall((0, 9), (120, 9), moved=((2, 20.0),))
    frame = frame_of(FLAT, ruled(wall, 30, ends=MERGE))
    assert lefts(frame)["2"] == 20


def test_kept_tight_only_where_there_is_room() -> None:
    doors = (US.opening("door-1", 20, 17, 80), US.opening("door-2", 44.5, 17, 80))
    wall = US.wall((0, 9), (120, 9), openings=doors, spacing=13.5)
    frame = frame_of(FLAT, ruled(wall, kings=KEEP))
    # Kings of door 1: 17 to 18.5 and 38.5 to 40; of door 2: 41.5 to 43. Mark 3 at 39.75 lies over
    # the first; pushed right it stands from 40 to 41.5, just between them.
    assert lefts(frame)["3"] == 40
    nearer = (doors[0], US.opening("door-2", 44.25, 17, 80))
    frame = frame_of(FLAT, ruled(msgspec.structs.replace(wall, openings=nearer), kings=KEEP))
    assert "3" not in lefts(frame)
