"""The sense of the person's habits: one table for each rule."""

from __future__ import annotations

import msgspec
import pytest

from core.lengths import Length
from core.model import Habits, PlateRules
from core.storage import Document
from core.storage.sense import project_faults
from core.storage.sense_habits import plate_rules


def mm(value: float | None) -> Length | None:
    return None if value is None else Length(value)


@pytest.mark.parametrize(
    ("longest", "lap", "bad"),
    [
        (None, None, []),
        (600.0, 0.0, []),
        (60_000.0, 60_000.0, []),
        (599.0, None, ["rules.longest"]),
        (60_001.0, None, ["rules.longest"]),
        (None, -1.0, ["rules.lap"]),
        (0.0, 60_001.0, ["rules.longest", "rules.lap"]),
    ],
)
def test_plate_rules(longest: float | None, lap: float | None, bad: list[str]) -> None:
    faults = plate_rules(PlateRules(mm(longest), mm(lap)), "rules")
    assert [fault.place for fault in faults] == bad


def test_a_project_asks_for_them(loft: Document) -> None:
    habits = Habits(plates=PlateRules(mm(1.0)))
    project = msgspec.structs.replace(loft.project, habits=habits)
    places = [fault.place for fault in project_faults(project)]
    assert places == ["project.habits.plates.longest"]
