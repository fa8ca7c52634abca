"""Adding, setting, moving, copying and deleting kept-clear zones."""

from __future__ import annotations

import pytest

from core.lengths import Length
from core.model import Project
from gui.edits import Refusal, add_zone, delete, move_together, set_zone
from gui.edits.repeating import repeat
from gui.wordings import wording_of
from loft import INCH, loft
from walls import US

ZONE = "B/kept-clear-1"


def with_zone() -> Project:
    return add_zone(loft(), "B")


def places(project: Project) -> list[list[float]]:
    """left, bottom, width and height of all zones, inches."""
    zones = project.wall("B").kept_clear
    return [[US.of(x.mm) for x in (z.left, z.bottom, z.width, z.height)] for z in zones]


def test_a_new_zone_stands_in_the_middle() -> None:
    # (120 - 12) / 2.
    assert places(with_zone()) == [pytest.approx([54, 12, 12, 24])]


def test_another_size() -> None:
    project = set_zone(with_zone(), "B", "kept-clear-1", width=US.length(20))
    assert places(project) == [pytest.approx([54, 12, 20, 24])]


@pytest.mark.parametrize(
    ("left", "nearest"),
    [(-1.0, '0"'), (110.0, '108"')],
)
def test_it_stays_within_the_wall(left: float, nearest: str) -> None:
    with pytest.raises(Refusal) as refused:
        set_zone(with_zone(), "B", "kept-clear-1", left=US.length(left))
    said = wording_of(loft()).say(refused.value.message)
    assert said.endswith(f"the nearest place inside is {nearest}.")


@pytest.mark.parametrize("changes", [{"width": Length(0.0)}, {"bottom": Length(-1.0)}])
def test_what_no_file_may_hold_is_refused(changes: dict[str, Length]) -> None:
    with pytest.raises(Refusal):
        set_zone(with_zone(), "B", "kept-clear-1", **changes)


def test_it_moves_is_copied_and_deleted_like_all_else() -> None:
    project = move_together(with_zone(), "B", (ZONE,), (-10 * INCH, 5 * INCH))
    assert places(project) == [pytest.approx([44, 17, 12, 24])]
    project = repeat(project, "B", (ZONE,), 16 * INCH, 2).project
    assert [place[0] for place in places(project)] == pytest.approx([44, 60, 76])
    assert [place[0] for place in places(delete(project, "B", ZONE))] == pytest.approx([60, 76])
    with pytest.raises(Refusal):
        move_together(with_zone(), "B", (ZONE,), (0.0, -13 * INCH))
