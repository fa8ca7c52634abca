"""Moving and adding studs: the tables are in inches along the wall of `loft`."""

from __future__ import annotations

import msgspec
import pytest

from core.job import work_out
from core.lengths import Length, Unit
from core.model import AddedStud, Layout, MovedStud, Project, SiteRecord
from gui.edits import Refusal, add_stud, move_stud
from gui.wordings import wording_of
from loft import CRIPPLE, INCH, STUD, loft


def refused(project: Project, refusal: pytest.ExceptionInfo[Refusal]) -> str:
    return wording_of(project).say(refusal.value.message)


def left_of(project: Project, key: str) -> float:
    frame = work_out(project, SiteRecord()).wall("B").frame
    member = frame.member(key) if frame else None
    assert member is not None
    return member.left / INCH


def test_a_stud_of_the_layout_becomes_a_moved_one() -> None:
    project = move_stud(loft(), "B", STUD, 35 * INCH)
    assert project.wall("B").moved == (MovedStud(2, Length.of_inches(35)),)
    assert left_of(project, STUD) == pytest.approx(35)


def test_a_typed_length_keeps_the_unit_it_was_typed_in() -> None:
    project = move_stud(loft(), "B", STUD, Length(890.0, Unit.MM))
    assert project.wall("B").moved == (MovedStud(2, Length(890.0, Unit.MM)),)


def test_back_on_its_place_it_is_no_longer_a_moved_one() -> None:
    moved = move_stud(loft(), "B", STUD, 35 * INCH)
    assert move_stud(moved, "B", STUD, 31.25 * INCH) == loft()


def test_moving_again_replaces_the_first_move() -> None:
    project = move_stud(move_stud(loft(), "B", STUD, 35 * INCH), "B", STUD, 36 * INCH)
    assert [m.left.mm / INCH for m in project.wall("B").moved] == [pytest.approx(36)]


def test_a_cripple_moves_its_place_in_the_layout() -> None:
    project = move_stud(loft(), "B", CRIPPLE, 65 * INCH)
    assert [m.place for m in project.wall("B").moved] == [4]
    assert left_of(project, CRIPPLE) == pytest.approx(65)


@pytest.mark.parametrize(
    ("key", "left", "nearest"),
    [
        # Place 3 stands from 47 1/4 to 48 3/4: nearer to its left side, 47 1/4 - 1 1/2.
        (STUD, 47.0, '45 3/4"'),
        # The door's left king begins at 57 and its right one ends at 93.
        (STUD, 60.0, '55 1/2"'),
        (STUD, 90.0, '93"'),
        # The end studs: 1 1/2 at the left, 118 1/2 at the right, so 117 for a left edge.
        (STUD, 0.0, '1 1/2"'),
        (STUD, 200.0, '117"'),
        # Above the header, from 58 1/2 to 91 1/2, beside the other cripple at 79 1/4.
        (CRIPPLE, 50.0, '58 1/2"'),
        (CRIPPLE, 79.0, '77 3/4"'),
    ],
)
def test_a_place_that_is_taken_is_refused_with_the_nearest_free_one(
    key: str, left: float, nearest: str
) -> None:
    with pytest.raises(Refusal) as refusal:
        move_stud(loft(), "B", key, left * INCH)
    assert refused(loft(), refusal).endswith(f"the nearest place is {nearest}.")


@pytest.mark.parametrize("nearest", [35.0, 45.75, 55.5, 93.0, 1.5, 117.0])
def test_the_nearest_place_that_is_named_is_taken(nearest: float) -> None:
    assert left_of(move_stud(loft(), "B", STUD, nearest * INCH), STUD) == pytest.approx(nearest)


@pytest.mark.parametrize("key", ["B/end/left", "B/sole", "B/top/1/1", "B/door-1/king/left", "x"])
def test_what_goes_with_the_wall_stays(key: str) -> None:
    with pytest.raises(Refusal) as refusal:
        move_stud(loft(), "B", key, 30 * INCH)
    assert "stays where" in refused(loft(), refusal)


def test_a_stud_beside_the_layout_is_added_and_moved_by_its_id() -> None:
    project = add_stud(loft(), "B", 20 * INCH)
    assert project.wall("B").added == (AddedStud("stud-1", Length.of_inches(20)),)
    project = move_stud(project, "B", "B/stud-1", 22 * INCH)
    assert project.wall("B").added == (AddedStud("stud-1", Length.of_inches(22)),)
    assert left_of(project, "B/stud-1") == pytest.approx(22)


def test_without_a_place_it_stands_in_the_middle_of_the_widest_bay() -> None:
    # Bays between faces: 1 1/2 to 15 1/4, 16 3/4 to 31 1/4 and to 47 1/4 (14 1/2 each), 48 3/4 to
    # 57 and 93 to 95 1/4: the first of the widest is 16 3/4 to 31 1/4. Lefts 16 3/4 to 29 3/4.
    project = add_stud(loft(), "B")
    assert left_of(project, "B/stud-1") == pytest.approx(23.25)


def test_the_next_stud_gets_the_next_id() -> None:
    project = add_stud(add_stud(loft(), "B"), "B")
    assert [stud.id for stud in project.wall("B").added] == ["stud-1", "stud-2"]


def test_an_added_stud_is_refused_where_another_stands() -> None:
    with pytest.raises(Refusal) as refusal:
        add_stud(loft(), "B", 31.0 * INCH)
    assert refused(loft(), refusal).endswith('the nearest place is 29 3/4".')


def test_where_studs_stand_side_by_side_none_can_be_added() -> None:
    tight = Layout(Length.of_inches(3))
    wall = msgspec.structs.replace(loft().wall("B"), layout=tight, openings=(), boxes=())
    project = loft().with_wall(wall)
    # Between faces there are 1 1/2, just enough for one more; then there is none.
    for _ in range(60):
        try:
            project = add_stud(project, "B")
        except Refusal as refusal:
            said = wording_of(project).say(refusal.message)
            assert said.startswith("Wall B has no bay that another stud fits in")
            return
    pytest.fail("there is no end to the studs")


def test_a_stud_with_no_room_can_be_moved_to_where_there_is_some() -> None:
    clash = AddedStud("stud-1", Length.of_inches(31))
    wall = msgspec.structs.replace(loft().wall("B"), added=(clash,))
    clashing = loft().with_wall(wall)
    frame = work_out(clashing, SiteRecord()).wall("B").frame
    assert frame is not None
    assert frame.no_room == ("B/stud-1",)
    with pytest.raises(Refusal):
        move_stud(clashing, "B", "B/stud-1", 32 * INCH)
    assert left_of(move_stud(clashing, "B", "B/stud-1", 36 * INCH), "B/stud-1") == 36
