"""Adding, setting and taking away parts of the roof; what would leave a wall outside is refused."""

from __future__ import annotations

import msgspec
import pytest

from core.job import work_out
from core.lengths import Length, System
from core.model import OpeningKind, Point, Project, Room, SiteRecord, StandsOn
from core.storage.sense import project_faults
from gui.edits import Refusal, add_opening, add_wall, new_project, set_wall
from gui.edits.roof_parts import Path, add_part, parts, remove_part, set_part
from gui.wordings import wording_of
from loft import loft

LISTS: list[Path] = [
    ("left", "breaks"),
    ("right", "breaks"),
    ("dormers",),
    ("wings",),
    ("purlins",),
    ("kept_clear",),
]


def inches(value: float) -> Length:
    return Length.of_inches(value)


@pytest.mark.parametrize("where", LISTS, ids="-".join)
@pytest.mark.parametrize("system", System)
def test_a_new_part_makes_sense_and_the_walls_stand(where: Path, system: System) -> None:
    project = add_part(add_part(add_wall(new_project(system, "new"), "wall"), where), where)
    assert len(parts(project, where)) == 2
    assert list(project_faults(project)) == []
    assert all(wall.frame is not None for wall in work_out(project, SiteRecord()).walls)
    assert parts(remove_part(project, where, 0), where) == parts(project, where)[1:]


def test_under_one_slope_a_dormer_stands_on_it() -> None:
    project = loft()
    shed = msgspec.structs.replace(project, room=_without_right(project.room))
    (dormer,) = add_part(shed, ("dormers",)).room.dormers
    assert dormer.side.value == "left"


def _without_right(room: Room) -> Room:
    return msgspec.structs.replace(room, right=None)


def test_ids_go_on_counting() -> None:
    project = loft()
    for _ in range(3):
        project = add_part(project, ("purlins",))
    project = add_part(remove_part(project, ("purlins",), 1), ("purlins",))
    assert [p.id for p in project.room.purlins] == ["purlin-1", "purlin-3", "purlin-2"]


def test_a_value_deep_in_a_part_is_set_alone() -> None:
    before = add_part(loft(), ("wings",))
    after = set_part(before, ("wings",), 0, ("last", "eave_height"), inches(44))
    (wing,) = after.room.wings
    assert wing.last.eave_height == inches(44)
    assert wing.first == before.room.wings[0].first


def test_senseless_values_are_refused() -> None:
    project = add_part(loft(), ("purlins",))
    with pytest.raises(Refusal):
        set_part(project, ("purlins",), 0, ("gap",), inches(-1))


def in_the_wing() -> Project:
    """The loft with a wing on its right and the wall from the room's middle out into it."""
    project = add_part(loft(), ("wings",))
    ends = Point(inches(120), inches(180)), Point(inches(300), inches(180))
    return set_wall(project, "B", left_end=ends[0], right_end=ends[1])


def test_a_wall_may_go_out_into_a_wing() -> None:
    assert in_the_wing().wall("B").run == pytest.approx(180 * 25.4)


def test_a_wing_with_a_wall_in_it_stays() -> None:
    project = in_the_wing()
    with pytest.raises(Refusal) as refusal:
        remove_part(project, ("wings",), 0)
    assert "240" in wording_of(project).say(refusal.value.message)


def test_no_opening_is_added_to_a_wall_on_rafters() -> None:
    project = set_wall(loft(), "B", stands_on=StandsOn.RAFTERS)
    with pytest.raises(Refusal) as refusal:
        add_opening(project, "B", OpeningKind.DOOR)
    assert "stands on rafters" in wording_of(project).say(refusal.value.message)
