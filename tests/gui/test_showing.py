"""What a step of undo shows."""

from __future__ import annotations

import msgspec
import pytest

from core.model import Project
from gui.edits import add_wall, move_opening, set_habits, set_wall
from gui.showing import differing
from loft import INCH, loft
from walls import US

BOTH = add_wall(loft(), "Other", "B")
"""The loft with wall "B" and a second wall "A"."""

DOOR = move_opening(BOTH, "B", "door-1", 68 * INCH)
PLACE = set_wall(
    BOTH, "B", left_end=msgspec.structs.replace(BOTH.wall("B").left_end, across=US.length(20))
)
ROOM = msgspec.structs.replace(BOTH, room=msgspec.structs.replace(BOTH.room, flat_ceiling=None))
HABIT = set_habits(BOTH, letters=msgspec.structs.replace(BOTH.habits.letters, stud="S"))


@pytest.mark.parametrize(
    ("after", "shown", "wanted"),
    [
        (ROOM, "A", None),
        (ROOM, None, None),
        # A door is seen at its wall only.
        (DOOR, "A", "B"),
        (DOOR, "B", "B"),
        (DOOR, None, "B"),
        # Where a wall stands is seen in the room as well.
        (PLACE, "A", "B"),
        (PLACE, None, None),
        # So is that a wall has come or gone.
        (loft(), None, None),
        (loft(), "B", "B"),
        # No wall shows a habit more than another.
        (HABIT, "A", "A"),
        (HABIT, None, None),
    ],
)
def test_what_differs_is_shown(after: Project, shown: str | None, wanted: str | None) -> None:
    assert differing(BOTH, after, shown) == wanted
