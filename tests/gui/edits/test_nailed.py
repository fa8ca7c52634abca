"""Stating blocking, backing, meetings and rafters: what becomes of it, and what is refused."""

from __future__ import annotations

import re

import msgspec
import pytest

from core.framing import Role
from core.job import work_out
from core.lengths import Length, Unit
from core.model import Blocking, MeetingKind, Project, SiteRecord
from core.wording import Wording
from gui.edits import (
    Refusal,
    add_fixture,
    add_wall,
    delete,
    set_blocking,
    set_fixture,
    set_meeting,
    set_rafter_backing,
    set_slip_gap,
    usual,
)
from loft import loft
from walls import US, in_12


def keys(project: Project, role: Role) -> list[str]:
    frame = work_out(project, SiteRecord()).wall("B").frame
    assert frame is not None
    return [m.key for m in frame.members if m.role is role]


def refused(project: Project, refusal: pytest.ExceptionInfo[Refusal]) -> str:
    return Wording("us", project.habits.tape).say(refusal.value.message)


def test_rows_are_stated_and_taken_away() -> None:
    """Left of the door, under the sole of the slope, there is room for a row at 24."""
    project = set_blocking(loft(), "B", heights=(US.length(24),), staggered=False)
    assert project.wall("B").blocking == Blocking((US.length(24),))
    assert "B/blocking/row-1/end/left" in keys(project, Role.BLOCKING)
    assert set_blocking(project, "B", heights=()).wall("B").blocking is None


def test_a_row_over_the_plates_is_refused_with_the_highest_that_fits() -> None:
    """Under the flat ceiling at 108 the plates' underside is 106 1/2: a middle at 105 3/4."""
    with pytest.raises(Refusal) as refusal:
        set_blocking(loft(), "B", heights=(US.length(24), US.length(107)))
    assert refused(loft(), refusal) == (
        'In wall B, no block of the row at 107" has room under the plates: lower the row'
        ' to 105 3/4" or less.'
    )


def test_a_row_on_the_floor_is_senseless() -> None:
    with pytest.raises(Refusal) as refusal:
        set_blocking(loft(), "B", heights=(US.length(0),))
    assert "not above zero" in refused(loft(), refusal)


def test_backing_is_added_in_the_middle_third() -> None:
    """120 / 3 = 40 to 80 at 36: the door stands from 57 to 93, so bays 32.75 and 48.75 carry it."""
    project = add_fixture(loft(), "B")
    (fixture,) = project.wall("B").fixtures
    assert fixture.id == "backing-1"
    assert [US.of(x.mm) for x in (fixture.left, fixture.width, fixture.height)] == pytest.approx(
        [40, 40, 36]
    )
    assert keys(project, Role.BACKING) == ["B/backing-1/layout/2", "B/backing-1/layout/3"]


def test_backing_goes_lower_under_a_low_roof() -> None:
    """A wall whose plates are at 24 has no room for 2x6 at 36: at 24 - 1.5 - 2.75 at most."""
    low = US.room(240, left=(24, in_12(0)))
    project = msgspec.structs.replace(loft(), room=low)
    project = project.with_wall(msgspec.structs.replace(project.wall("B"), openings=(), boxes=()))
    (fixture,) = add_fixture(project, "B").wall("B").fixtures
    assert US.of(fixture.height.mm) == pytest.approx(19.75)


def test_backing_where_nothing_carries_it_is_refused() -> None:
    project = add_fixture(loft(), "B")
    # In the doorway alone there is nothing to nail it to.
    with pytest.raises(Refusal) as refusal:
        set_fixture(project, "B", "backing-1", left=US.length(62), width=US.length(20))
    assert "no backing at all" in refused(project, refusal)


def test_too_high_is_refused_with_a_height_that_fits() -> None:
    project = add_fixture(loft(), "B")
    with pytest.raises(Refusal) as refusal:
        set_fixture(project, "B", "backing-1", height=US.length(105))
    said = refused(project, refusal)
    found = re.search(r'put it at a height of ([0-9]+)( [0-9/]+)?"', said)
    assert found is not None
    lower = set_fixture(project, "B", "backing-1", height=US.length(float(found[1])))
    assert keys(lower, Role.BACKING)


def test_backing_is_deleted_by_any_piece_of_it() -> None:
    project = add_fixture(loft(), "B")
    assert delete(project, "B", "B/backing-1/layout/2").wall("B").fixtures == ()


def test_blocks_go_with_the_wall() -> None:
    project = set_blocking(loft(), "B", heights=(US.length(24),))
    with pytest.raises(Refusal):
        delete(project, "B", "B/blocking/row-1/end/left")


def test_a_new_wall_has_three_studs_where_others_meet_it() -> None:
    project = add_wall(loft(), "new", "B")
    assert project.walls[-1].meeting is MeetingKind.THREE_STUDS
    chosen = set_meeting(loft(), "B", MeetingKind.BLOCKS)
    assert add_wall(chosen, "new", "B").walls[-1].meeting is MeetingKind.BLOCKS
    assert set_meeting(chosen, "B", None) == loft()


def test_blocks_between_rafters_are_refused_under_a_rafter() -> None:
    """The loft's rafters stand at 16 in.: one at 96 and one at 112; the wall stands at 100."""
    backing = usual.rafter_backing(loft().system, loft().wall("B"))
    between = set_rafter_backing(loft(), "B", backing)
    assert keys(between, Role.BACKING)
    under = msgspec.structs.replace(
        loft(),
        room=msgspec.structs.replace(
            loft().room,
            rafter=msgspec.structs.replace(loft().room.rafter, places=(US.length(101),)),
        ),
    )
    with pytest.raises(Refusal) as refusal:
        set_rafter_backing(under, "B", backing)
    assert refused(under, refusal) == (
        "A rafter lies along the top plate of wall B, which is nailed to it: no blocks are needed."
    )


def test_a_slip_gap_is_stated_and_taken_away() -> None:
    project = set_slip_gap(loft(), "B", Length.of_inches(0.5, Unit.INCH))
    assert project.wall("B").slip_gap == Length.of_inches(0.5)
    assert set_slip_gap(project, "B", None) == loft()
    with pytest.raises(Refusal):
        set_slip_gap(loft(), "B", US.length(0))
