"""Cautions of walls across stair openings and into existing walls; inches."""

from __future__ import annotations

import msgspec
import pytest

from core.checks import Severity
from core.job import work_out
from core.model import ExistingWall, Point, Project, SiteRecord, StairOpening, Wall
from loft import INCH, loft
from walls import US

STAIR = StairOpening("stair-opening-1", *map(US.length, (100.0, 200.0, 36.0, 120.0)))
"""From 100 to 136 across, from 200 to 320 along."""


def existing(left: tuple[float, float], right: tuple[float, float]) -> ExistingWall:
    """A wall 6 in. thick on the far side of its line."""
    start, end = (Point(US.length(u), US.length(v)) for u, v in (left, right))
    return ExistingWall("existing-wall-1", start, end, US.length(6.0))


def with_room(wall: Wall, **changes: object) -> Project:
    room = msgspec.structs.replace(loft().room, **changes)
    return msgspec.structs.replace(loft(), room=room, walls=(wall,))


def told(project: Project, message_id: str) -> list[float]:
    """By how much (inches) each caution with this id says."""
    cautions = work_out(project, SiteRecord()).wall("B").cautions
    found = [c for c in cautions if c.message.id == message_id]
    assert all(c.severity is Severity.WARNING for c in found)
    values = [dict(c.message.values)["by"].mm for c in found]  # type: ignore[union-attr]
    return [round(mm / INCH, 4) for mm in values]


@pytest.mark.parametrize(
    ("ends", "by"),
    [
        # Along the opening's edge it is clear, 1 1/2 in. over it is not.
        (((100.0, 196.5), (136.0, 196.5)), []),
        (((20.0, 198.0), (220.0, 198.0)), [1.5]),
        # Across its middle: the least way out is its own thickness and what is beyond it.
        (((20.0, 250.0), (220.0, 250.0)), [53.5]),
        # Ending 10 in over it: back by those 10.
        (((20.0, 250.0), (110.0, 250.0)), [10.0]),
        (((20.0, 250.0), (100.0, 250.0)), []),
    ],
)
def test_a_wall_across_a_stair_opening(
    ends: tuple[tuple[float, float], tuple[float, float]], by: list[float]
) -> None:
    assert told(with_room(US.wall(*ends), stair_openings=(STAIR,)), "floor.stair") == by


@pytest.mark.parametrize(
    ("right", "by"),
    [
        # The existing wall's face stands at 150 across, its far face at 144.
        (144.0, []),
        (146.0, [2.0]),
        (200.0, [6.0]),
    ],
)
def test_a_wall_into_an_existing_one(right: float, by: list[float]) -> None:
    old = existing((150.0, 100.0), (150.0, 300.0))
    wall = US.wall((20.0, 200.0), (right, 200.0))
    # All the way through, 3 1/2 in. of its own thickness would not free it: the rest is longer.
    wanted = by if right < 200 else [round(min(56.0, 103.5), 4)]
    assert told(with_room(wall, existing_walls=(old,)), "floor.existing") == wanted


def test_an_existing_wall_that_ends_against_a_new_one_is_met() -> None:
    # From (60, 100) on: its end stands at the far face of the wall at 96 1/2 .. 100.
    old = existing((66.0, 100.0), (66.0, 200.0))
    project = with_room(US.wall((12.0, 96.5), (132.0, 96.5)), existing_walls=(old,))
    (met,) = work_out(project, SiteRecord()).wall("B").inputs.around.meetings
    assert met.other == "existing-wall-1"
    assert (round(met.left / INCH, 3), round(met.right / INCH, 3)) == (48, 54)
    frame = work_out(project, SiteRecord()).wall("B").frame
    assert frame is not None
    assert not [m for m in frame.members if m.key.startswith("existing")]
