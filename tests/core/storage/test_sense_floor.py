"""The sense of stair openings and existing walls."""

from __future__ import annotations

import msgspec
import pytest

from core.lengths import Length
from core.model import ExistingWall, Point, Room, StairOpening
from core.storage.sense import room_faults
from loft import loft
from walls import US

STAIR = StairOpening("stair-opening-1", *map(US.length, (100.0, 200.0, 36.0, 120.0)))
OLD = ExistingWall(
    "existing-wall-1",
    Point(US.length(0.0), US.length(50.0)),
    Point(US.length(90.0), US.length(50.0)),
    US.length(4.0),
)


def faults(**changes: object) -> list[str]:
    room: Room = msgspec.structs.replace(loft().room, **changes)
    return [fault.place for fault in room_faults(room, "room")]


def test_what_makes_sense_has_no_fault() -> None:
    assert faults(stair_openings=(STAIR,), existing_walls=(OLD,)) == []


@pytest.mark.parametrize("name", ["wide", "deep"])
def test_a_stair_opening_is_wide_and_deep(name: str) -> None:
    stair = msgspec.structs.replace(STAIR, **{name: Length(0.0)})
    assert faults(stair_openings=(stair,)) == [f"room.stair_openings[0].{name}"]


def test_an_existing_wall_is_thick_and_long() -> None:
    thin = msgspec.structs.replace(OLD, thickness=Length(0.0))
    assert faults(existing_walls=(thin,)) == ["room.existing_walls[0].thickness"]
    short = msgspec.structs.replace(OLD, right_end=OLD.left_end)
    assert faults(existing_walls=(short,)) == ["room.existing_walls[0].right_end"]


def test_ids_differ_in_all_of_the_room() -> None:
    twice = msgspec.structs.replace(OLD, id=STAIR.id)
    found = faults(stair_openings=(STAIR,), existing_walls=(twice,))
    assert found == ["room.existing_walls[0].id"]
