"""The sense of what was measured at a wall: one table for each rule."""

from __future__ import annotations

from typing import Any

import msgspec
import pytest

from core.lengths import Length
from core.model import MeasuredStud, Station, Wall
from core.storage import Document
from core.storage.sense_measured import measured_faults, measured_studs, stations


def mm(value: float) -> Length:
    return Length(float(value))


def places(faults: Any) -> list[str]:
    return [fault.place for fault in faults]


@pytest.fixture
def wall(loft: Document) -> Wall:
    return loft.project.walls[0]


@pytest.mark.parametrize(
    ("points", "faults"),
    [
        ([(0, 900), (1000, 1500)], []),
        ([(1000, 1500), (0, 900)], []),
        ([(-500, -20)], []),
        ([(0, 900), (0, 901)], ["p[1].at"]),
        ([(0, 900), (0.05, 900), (0.2, 900)], ["p[1].at"]),
        ([(60_001, 900)], ["p[0].at"]),
        ([(0, 100_001)], ["p[0].height"]),
        ([(0, -100_001)], ["p[0].height"]),
    ],
)
def test_stations(points: list[tuple[float, float]], faults: list[str]) -> None:
    found = tuple(Station(mm(at), mm(height)) for at, height in points)
    assert places(stations(found, "p")) == faults


@pytest.mark.parametrize(
    ("studs", "faults"),
    [
        ([("layout/3", 1800)], []),
        ([("layout/3", 0)], ["p[0].length"]),
        ([("layout/3", 1800), ("layout/4", 1900), ("layout/3", 1801)], ["p[2].key"]),
    ],
)
def test_measured_studs(wall: Wall, studs: list[tuple[str, float]], faults: list[str]) -> None:
    measured = tuple(MeasuredStud(f"{wall.letter}/{key}", mm(long), False) for key, long in studs)
    found = measured_studs(msgspec.structs.replace(wall, measured_studs=measured), "p")
    assert places(found) == faults


def test_a_stud_of_another_wall(wall: Wall) -> None:
    measured = (MeasuredStud("Z/layout/3", mm(1800), True),)
    (fault,) = measured_studs(msgspec.structs.replace(wall, measured_studs=measured), "p")
    assert str(fault) == (
        f"“Z/layout/3” is no stud of wall {wall.letter};"
        f" write the key of one of its own, as in {wall.letter}/layout/3."
    )


def test_level_line_and_fit(wall: Wall) -> None:
    spoilt = msgspec.structs.replace(wall, level_line=mm(100_001), fit=mm(51))
    assert places(measured_faults(spoilt, "w")) == ["w.level_line", "w.fit"]
    sound = msgspec.structs.replace(wall, level_line=mm(0), fit=mm(-3))
    assert places(measured_faults(sound, "w")) == []
