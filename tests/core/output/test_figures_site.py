"""The figures of putting a wall up: the same as the window says, exact."""

from __future__ import annotations

import msgspec
import pytest

from core.job import work_out
from core.lengths import System, Tape
from core.model import SiteRecord
from core.output.figures import figures
from core.wording import Wording
from raising import job
from walls import US, in_12

WORDS = Wording("us", Tape.usual(System.INCH))
GABLE = US.room(264, (12, in_12(9)), (12, in_12(9)))


def test_a_wall_up_the_slope() -> None:
    # 0.1278 needed at the low end (see core/site), 3/16 on the tape; weights at 35 lb/ft3.
    results = work_out(job(GABLE, US.wall((48, 200), (216, 200))), SiteRecord())
    found = figures(results, WORDS)["walls"][0]["raising"]
    assert (found["way"], found["laid"]) == ("short", "face A")
    assert found["short"] == pytest.approx(0.1875 * 25.4)
    swing = found["swings"][0]
    assert swing["needed"] == pytest.approx(0.12778 * 25.4, abs=2e-3)
    assert swing["clearance"] == pytest.approx(-0.12744 * 25.4, abs=2e-3)
    assert swing["angle"] == pytest.approx(85.83, abs=0.01)
    assert swing["floor"] == pytest.approx([168 * 25.4, 111 * 25.4])
    assert found["order"][0] == ["B/sole"]
    assert found["order"][1] == ["B/top/1/1", "B/top/2/1"]
    nails = {row["joint"]: row for row in found["nails"]}
    # 12 studs, 2 each; as seen, not from memory.
    assert nails["stud to sole plate"]["total"] == 24
    assert nails["stud to sole plate"]["source"] == "seen"


def test_a_wall_with_no_frame_has_none() -> None:
    # A wall shorter than a stud is thick has no frame, and nothing to be put up.
    room = US.room(264, (12, in_12(9)), length=400)
    project = job(room, US.wall((48, 100), (48, 100.5)))
    found = figures(work_out(project, SiteRecord()), WORDS)["walls"][0]
    assert found["members"] == []
    assert found["raising"] is None


def test_the_order_of_raising() -> None:
    # The knee wall lies where the other stands, so it goes up first.
    across = msgspec.structs.replace(US.wall((48, 200), (216, 200)), letter="C")
    results = work_out(job(GABLE, across, US.wall((48, 100), (48, 300))), SiteRecord())
    assert figures(results, WORDS)["raising_order"] == [
        {
            "wall": "B",
            "way": "tilt",
            "laid": "face A",
            "short": 0.0,
            "before": ["C"],
            "blocked": [],
        },
        {
            "wall": "C",
            "way": "short",
            "laid": "face A",
            "short": pytest.approx(0.1875 * 25.4),
            "before": [],
            "blocked": [],
        },
    ]
