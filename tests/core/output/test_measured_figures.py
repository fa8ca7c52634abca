"""What was measured leaves in the figures, exact and in mm."""

from __future__ import annotations

import msgspec
import pytest

from core.job import work_out
from core.lengths import Length, System, Tape
from core.model import MeasuredStud, Project, SiteRecord
from core.output.figures import figures
from core.wording import Wording
from walls import US, in_12, stations

IN = 25.4


def test_readings_floor_and_studs() -> None:
    # 48 at the left end and 111 at 84 are as stated; at 42 the roof is 5/8 low. The floor falls
    # an inch over 168, and roof heights were read up from it: half an inch more at 84.
    slope = (12.0, in_12(9))
    wall = msgspec.structs.replace(
        US.wall((48, 144), (216, 144)),
        roof_points=stations(US, (0, 48), (42, 79.125), (84, 111.5)),
        floor_points=stations(US, (0, 0), (168, -1)),
        measured_studs=(MeasuredStud("B/layout/8", Length.of_inches(75), False),),
    )
    project = Project("loft", System.INCH, US.room(264, slope, slope), (wall,))
    wording = Wording("us", Tape.usual(System.INCH))
    (found,) = figures(work_out(project, SiteRecord()), wording)["walls"]
    roof = [r for r in found["measured"] if r["line"] == "roof"]
    assert [r["at"] for r in roof] == pytest.approx([0, 42 * IN, 84 * IN])
    assert [r["stated"] for r in roof] == pytest.approx([48 * IN, 79.5 * IN, 111 * IN])
    assert [r["measured"] for r in roof] == pytest.approx([48 * IN, 78.875 * IN, 111 * IN])
    assert [r["expected"] for r in found["measured"]] == [None] * 5
    assert found["floor_line"] == [[0, 0], pytest.approx([168 * IN, -IN])]
    (stud,) = found["measured_studs"]
    assert (stud["key"], stud["corrected"]) == ("B/layout/8", [])
    assert stud["length"] == pytest.approx(75 * IN)
