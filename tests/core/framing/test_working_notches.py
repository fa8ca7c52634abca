"""The working of a notch round a purlin, by hand; millimetres. See test_notching for the roof."""

from __future__ import annotations

import msgspec
import pytest

from core.framing import printed
from core.job import Number, work_out, workings
from core.lengths import System, Tape
from core.model import Habits, Passing, Project, Purlin, SiteRecord
from core.wording import Wording
from walls import UK, at_degrees

TAPE = Tape.usual(System.METRIC)
ROOM = UK.room(6000, (500, at_degrees(45)), None, length=8000)


def told(left: float, under: float = 1000.0) -> list[list[str]]:
    """The workings of stud 3's notch, which stands from 1181 to 1219, round a 50 x 100 purlin."""
    made = Purlin(
        "purlin-1",
        UK.length(1000 + left),
        UK.timber((50, 100)),
        UK.length(under),
        Passing.NOTCHED,
        UK.length(5),
    )
    room = msgspec.structs.replace(ROOM, purlins=(made,))
    wall = UK.wall((1000, 3000), (3000, 3000))
    project = Project("test", System.METRIC, room, (wall,), Habits(TAPE))
    found = workings(work_out(project, SiteRecord()), "B", "B/layout/3", Number.NOTCH, "purlin-1")
    shown = (printed(working, Wording("metric", TAPE)) for working in found)
    return [[*(f"{x.name} {x.text}" for x in one.lines), f"= {one.result}"] for one in shown]


def test_in_its_right_side() -> None:
    # The purlin begins at 1200, 5 clear of it at 1195; it is 1000 to 1100 above the subfloor.
    assert told(1200) == [
        [
            "right edge of B4 1219",
            "side of purlin 1 with its gap, from the left end − 1195",
            "= 24",
        ],
        ["purlin 1, its underside 1000", "gap kept − 5", "sole plate − 38", "= 957"],
        ["purlin 1, its top 1100", "gap kept + 5", "sole plate − 38", "= 1067"],
    ]


def test_in_its_left_side() -> None:
    # It ends at 1150 + 50, 5 clear of it at 1205.
    assert told(1150)[0] == [
        "side of purlin 1 with its gap, from the left end 1205",
        "left edge of B4 − 1181",
        "= 24",
    ]


@pytest.mark.parametrize("left", [1300.0, 400.0])
def test_a_stud_that_is_not_notched_has_none(left: float) -> None:
    assert told(left) == []
