"""A job turned half or a quarter in plan, or told in the other system, has the same walls."""

from __future__ import annotations

import msgspec
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

import turned
from core.framing import Frame, Mark, Member
from core.job import WallResult, work_out
from core.lengths import System
from core.model import Project, SiteRecord
from roof_strategies import slopes
from strategies import projects
from wall_cases import whole


@given(projects(most_walls=2))
def test_half_a_turn_and_the_other_system_change_no_wall(project: Project) -> None:
    before = turned.with_stated_rules(turned.without_rafters(project))
    _assert_alike(before, turned.half_turned(before))
    _assert_alike(before, turned.in_the_other_system(before))


@st.composite
def hipped(draw: st.DrawFn) -> Project:
    """A job under four slopes, with a ceiling perhaps, and nothing that runs with its ridge."""
    project = draw(projects(System.METRIC, most_walls=2))
    sides = {
        name: draw(slopes(System.METRIC)) for name in ("left", "right", "start_hip", "end_hip")
    }
    room = msgspec.structs.replace(
        project.room, ridge_beam=None, dormers=(), wings=(), purlins=(), kept_clear=(), **sides
    )
    walls = tuple(msgspec.structs.replace(w, passes=()) for w in project.walls)
    return msgspec.structs.replace(project, room=room, walls=walls)


@given(hipped())
def test_a_quarter_turn_of_a_hip_roof_changes_no_wall(project: Project) -> None:
    before = turned.without_rafters(project)
    _assert_alike(before, turned.quarter_turned(before))


def _assert_alike(here: Project, there: Project) -> None:
    pairs = zip(*(work_out(p, SiteRecord()).walls for p in (here, there)), strict=True)
    for one, other in pairs:
        if one.frame is None or other.frame is None:
            assert one.frame is other.frame
            continue
        # A chalk line exactly under a break, or a plane ending within the wall, may go either way.
        assume(whole(one) and whole(other))
        _assert_same_members(one.frame, other.frame)
        _assert_same_marks(one, other)
        assert [c.message.id for c in one.cautions] == [c.message.id for c in other.cautions]


def _assert_same_members(one: Frame, other: Frame) -> None:
    assert [m.key for m in one.members] == [m.key for m in other.members]
    for here, there in zip(one.members, other.members, strict=True):
        assert _numbers(here) == pytest.approx(_numbers(there), abs=1e-4), here.key


def _numbers(member: Member) -> list[float]:
    cuts = [n for f in (*member.first_cut, *member.last_cut) for n in (f.bevel, f.mitre)]
    corners = [n for outline in (member.near, member.far) for corner in outline for n in corner]
    lengths = [*member.edges, member.long_point, member.short_point, member.overall]
    return [*corners, *lengths, *cuts]


def _assert_same_marks(one: WallResult, other: WallResult) -> None:
    assert [_words(m) for m in one.marks] == [_words(m) for m in other.marks]
    places = [[n for m in r.marks for n in (m.along, m.along_sole, m.x)] for r in (one, other)]
    assert places[0] == pytest.approx(places[1], abs=1e-4)


def _words(mark: Mark) -> tuple[object, ...]:
    return mark.member, mark.plate, mark.letter, mark.origin, mark.edge
