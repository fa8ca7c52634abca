"""The sense of blocking, backing and slip gap: what is refused, where and why."""

from __future__ import annotations

from typing import Any

import msgspec
import pytest

from core.lengths import Length
from core.model import Blocking, ClearZone, Fixture, FixtureKind, Rafter, RafterBacking
from core.storage.sense import rafter_size
from core.storage.sense_wall import wall_faults
from walls import US

RAIL = Fixture(
    "rail-1",
    FixtureKind.RAIL,
    US.length(20),
    US.length(30),
    US.length(36),
    US.timber((1.5, 5.5)),
)
WALL = US.wall((0, 9), (120, 9))


def faults(**changes: Any) -> list[str]:
    wall = msgspec.structs.replace(WALL, **changes)
    return [f"{fault.place}: {fault.reason}" for fault in wall_faults(wall, "w")]


def rail(**changes: Any) -> tuple[Fixture, ...]:
    return (msgspec.structs.replace(RAIL, **changes),)


def clear(**changes: Any) -> tuple[ClearZone, ...]:
    zone = ClearZone("clear-1", *(US.length(x) for x in (20, 12, 12, 24)))
    return (msgspec.structs.replace(zone, **changes),)


@pytest.mark.parametrize(
    ("changes", "found"),
    [
        ({"blocking": Blocking((US.length(48),), US.length(48), US.length(120))}, []),
        (
            {"blocking": Blocking((US.length(48), US.length(0)))},
            ["w.blocking.heights[1]: 0 in is not above zero"],
        ),
        (
            {"blocking": Blocking(at_most=US.length(2))},
            ["w.blocking.at_most: 2 in is less than 100 mm"],
        ),
        ({"blocking": Blocking(fire=Length(9.0))}, ["w.blocking.fire: 9 mm is less than 100 mm"]),
        ({"fixtures": rail()}, []),
        ({"fixtures": rail(width=US.length(0))}, ["w.fixtures[0].width: 0 in is not above zero"]),
        ({"fixtures": rail(height=US.length(0))}, ["w.fixtures[0].height: 0 in is not above zero"]),
        (
            {"fixtures": rail(timber=US.timber((0, 5.5)))},
            ["w.fixtures[0].timber.thickness: 0 in is not above zero"],
        ),
        (
            {"fixtures": rail(id="meets")},
            ["w.fixtures[0].id: “meets” is kept for the wall's own parts"],
        ),
        ({"fixtures": (RAIL, RAIL)}, ["w.fixtures[1].id: “rail-1” is in this wall already"]),
        ({"kept_clear": clear()}, []),
        (
            {"kept_clear": clear(width=US.length(0))},
            ["w.kept_clear[0].width: 0 in is not above zero"],
        ),
        (
            {"kept_clear": clear(bottom=US.length(-1))},
            ["w.kept_clear[0].bottom: -1 in is less than 0"],
        ),
        (
            {"kept_clear": clear(id="rail-1"), "fixtures": rail()},
            ["w.kept_clear[0].id: “rail-1” is in this wall already"],
        ),
        ({"slip_gap": US.length(0.5)}, []),
        ({"slip_gap": US.length(0)}, ["w.slip_gap: 0 in is not above zero"]),
        (
            {"rafter_backing": RafterBacking(US.timber((1.5, 3.5)), US.length(1))},
            ["w.rafter_backing.at_most: 1 in is less than 100 mm"],
        ),
    ],
)
def test_sense(changes: dict[str, Any], found: list[str]) -> None:
    assert faults(**changes) == found


def test_measured_rafters_stand_about_the_room() -> None:
    rafter = Rafter(US.timber((1.5, 9.25)), US.length(24), (US.length(24), Length(-2000.0)))
    assert [f.place for f in rafter_size(rafter, "r")] == ["r.places[1]"]
