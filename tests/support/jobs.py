"""Two whole jobs for tests, one in inches and one in millimetres, with a wall of every kind."""

from __future__ import annotations

from functools import cache
from typing import NamedTuple

import msgspec

from core.job import Results, work_out
from core.lengths import System, Tape
from core.model import Habits, Project, Room, Side, SiteRecord, Wall
from core.wording import Wording
from walls import UK, US, Shop, at_degrees, in_12


class Job(NamedTuple):
    """A job worked out, and the words and numbers it is told in."""

    results: Results
    wording: Wording

    @property
    def metric(self) -> bool:
        """Whether the job is in the metric system."""
        return self.results.project.system is System.METRIC


@cache
def job(name: str) -> Job:
    """The job called "inch" or "metric"."""
    if name == "inch":
        return _worked_out(US, _INCH_ROOM, _inch_walls(), System.INCH, "us")
    return _worked_out(UK, _METRIC_ROOM, _metric_walls(), System.METRIC, "metric")


def named(letter: str, name: str, wall: Wall) -> Wall:
    """The wall under another letter and name; its boxes' studs are keyed by the letter."""
    boxes = tuple(
        msgspec.structs.replace(box, stud=box.stud.replace("B/", f"{letter}/"))
        for box in wall.boxes
    )
    return msgspec.structs.replace(wall, letter=letter, name=name, boxes=boxes)


def _worked_out(
    shop: Shop, room: Room, walls: tuple[Wall, ...], system: System, catalogue: str
) -> Job:
    tape = Tape.usual(system)
    project = Project(f"loft in {shop.unit.value}", system, room, walls, Habits(tape))
    return Job(work_out(project, SiteRecord()), Wording(catalogue, tape))


# 22 ft across, 9 in 12 from 30 in. on both sides, a flat ceiling at 7 ft 6 in.
_INCH_ROOM = US.room(264, (30, in_12(9)), (30, in_12(9)), flat=90)


def _inch_walls() -> tuple[Wall, ...]:
    door = US.opening("door-1", 84, 34, 80)
    too_low = US.opening("door-2", 10, 34, 80)
    box = US.box("box-1", "B/layout/3", Side.RIGHT, 12)
    return (
        # Across the room: up the slope, along the ceiling, down the other slope.
        named("A", "rake partition", US.wall((36, 96), (228, 96), openings=(door,), boxes=(box,))),
        # Along the ridge: mitred studs under a wider plate.
        named("B", "knee wall", US.wall((36, 240), (36, 96), plate=(1.5, 5.5), spacing=24)),
        # Askew: compound cuts, two plates, and a door too near the eave.
        named("C", "stair wall", US.wall((30, 20), (126, 92), plates=2, openings=(too_low,))),
        # Two ends in one place: no frame.
        named("D", "not yet placed", US.wall((50, 50), (50, 50), openings=(door,), boxes=(box,))),
    )


# 6.4 m across, 38 degrees on the left and a shed dormer's 12 degrees on the right.
_METRIC_ROOM = UK.room(6400, (700, at_degrees(38)), (2000, at_degrees(12)), length=9200)


def _metric_walls() -> tuple[Wall, ...]:
    door = UK.opening("door-1", 1630, 838, 2035)
    window = UK.opening("window-1", 1200, 900, 1900, sill=1000)
    box = UK.box("box-1", "B/layout/2", Side.LEFT, 450)
    return (
        named("A", "partition", UK.wall((900, 3000), (6100, 3000), openings=(door,), boxes=(box,))),
        named("B", "knee wall", UK.wall((900, 7400), (900, 3000), plate=(38, 140))),
        named("C", "dormer wall", UK.wall((6200, 500), (6200, 4500), openings=(window,))),
        named("D", "corner", UK.wall((1500, 900), (3100, 2100), spacing=600, start=Side.RIGHT)),
    )
