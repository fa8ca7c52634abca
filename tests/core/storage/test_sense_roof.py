"""The sense of dormers, wings, purlins, hips and chimneys: one table for each rule."""

from __future__ import annotations

from typing import Any

import msgspec
import pytest

from core.model import (
    ClearKind,
    Dormer,
    DormerKind,
    KeptClear,
    Passing,
    PitchBreak,
    Point,
    Purlin,
    Room,
    Side,
    Slope,
    Wing,
)
from core.storage.sense import end_in_room, room_faults
from core.storage.sense_roof import breaks_in_order, part_ids, roof_parts_faults
from walls import UK, at_degrees

SLOPE = UK.slope(900, at_degrees(40))
DORMER = Dormer(
    "dormer-1",
    DormerKind.SHED,
    Side.RIGHT,
    UK.length(1000),
    UK.length(2000),
    UK.length(600),
    UK.length(89),
    UK.length(2200),
    at_degrees(10),
)
WING = Wing("wing-1", Side.LEFT, UK.length(4000), UK.length(3000), UK.length(2500), SLOPE, SLOPE)
PURLIN = Purlin(
    "purlin-1",
    UK.length(1500),
    UK.timber((75, 175)),
    UK.length(1100),
    Passing.THROUGH,
    UK.length(5),
)
CHIMNEY = KeptClear(
    "chimney-1",
    ClearKind.CHIMNEY,
    UK.length(3000),
    UK.length(0),
    UK.length(500),
    UK.length(500),
    UK.length(50),
)
ROOM = msgspec.structs.replace(
    UK.room(6000, (900, at_degrees(40)), (900, at_degrees(40)), length=8000),
    dormers=(DORMER,),
    wings=(WING,),
    purlins=(PURLIN,),
    kept_clear=(CHIMNEY,),
    start_hip=SLOPE,
)


def places(faults: Any) -> list[str]:
    return [fault.place for fault in faults]


def with_part(name: str, **changes: Any) -> Room:
    """The room with the first of a list of parts changed; values in mm become lengths."""
    part = getattr(ROOM, name)[0]
    values = {k: UK.length(v) if isinstance(v, int) else v for k, v in changes.items()}
    return msgspec.structs.replace(ROOM, **{name: (msgspec.structs.replace(part, **values),)})


def test_all_of_it_makes_sense() -> None:
    assert places(room_faults(ROOM, "room")) == []


@pytest.mark.parametrize(
    ("name", "changes", "place"),
    [
        pytest.param("dormers", {"start": -1}, "start", id="dormer before the room"),
        pytest.param("dormers", {"width": 0}, "width", id="dormer of no width"),
        pytest.param("dormers", {"width": 7002}, "width", id="dormer past the end"),
        pytest.param("dormers", {"face": 6001}, "face", id="front wall past the room"),
        pytest.param("dormers", {"front": 0}, "front", id="front wall of no thickness"),
        pytest.param("dormers", {"height": -1}, "height", id="dormer below the floor"),
        pytest.param("dormers", {"id": "Dormer"}, "id", id="no id"),
        pytest.param("wings", {"reach": 0}, "reach", id="wing of no reach"),
        pytest.param("wings", {"width": 4002}, "width", id="wing past the end"),
        pytest.param("purlins", {"left": 6001}, "left", id="purlin beside the room"),
        pytest.param("purlins", {"underside": 0}, "underside", id="purlin on the floor"),
        pytest.param("purlins", {"gap": -1}, "gap", id="gap below zero"),
        pytest.param("purlins", {"start": 500, "end": 599}, "end", id="purlin of 99 mm"),
        pytest.param("purlins", {"start": 16001}, "start", id="purlin that starts past its end"),
        pytest.param("purlins", {"end": 100_001}, "end", id="end at no place"),
        pytest.param(
            "purlins", {"start": 5, "end": 5, "end_left": 1500}, "end", id="turned to nothing"
        ),
        pytest.param("kept_clear", {"wide": 0}, "wide", id="chimney of no width"),
        pytest.param("kept_clear", {"up_across": 3000}, "up_across", id="up at no height"),
        pytest.param("kept_clear", {"up_to": 299}, "up_to", id="leans over too little"),
        pytest.param(
            "kept_clear", {"up_to": 1000, "up_along": 1001}, "up_along", id="leans past 45 degrees"
        ),
        pytest.param("kept_clear", {"gap": 1001}, "gap", id="gap of over a metre"),
    ],
)
def test_each_part_has_its_rules(name: str, changes: dict[str, Any], place: str) -> None:
    found = places(roof_parts_faults(with_part(name, **changes), "room"))
    assert found == [f"room.{name}[0].{place}"]


def test_a_dormer_needs_the_slope_it_stands_on() -> None:
    shed = msgspec.structs.replace(ROOM, right=None)
    assert places(roof_parts_faults(shed, "room")) == ["room.dormers[0].side"]


def test_ids_differ_in_all_of_the_roof() -> None:
    twice = with_part("purlins", id="dormer-1")
    assert places(part_ids(twice, "room")) == ["room.purlins[0].id"]


@pytest.mark.parametrize(
    ("runs", "bad"),
    [((), []), ((500,), []), ((500, 900), []), ((0,), [0]), ((900, 500), [1]), ((5, 5), [1])],
)
def test_changes_of_pitch_go_inward(runs: tuple[int, ...], bad: list[int]) -> None:
    breaks = tuple(PitchBreak(UK.length(run), at_degrees(30)) for run in runs)
    slope = Slope(SLOPE.eave_height, SLOPE.pitch, breaks)
    assert places(breaks_in_order(slope, "s")) == [f"s.breaks[{n}].run" for n in bad]


@pytest.mark.parametrize(
    ("across", "along", "good"),
    [
        (-2500, 4000, True),
        (-2500, 7000, True),
        (-2502, 5000, False),
        (-100, 3998, False),
        (-100, 7002, False),
    ],
)
def test_a_wall_may_end_in_a_wing(across: int, along: int, good: bool) -> None:
    end = Point(UK.length(across), UK.length(along))
    assert (places(end_in_room(end, ROOM, "end")) == []) is good
