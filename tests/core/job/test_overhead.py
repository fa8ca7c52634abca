"""What the roof is to a wall, and that it is kept while only the wall's own things change."""

from __future__ import annotations

import msgspec
import pytest

import core.job.work as work
from core.job import Memo, work_out
from core.job.overhead import overhead
from core.lengths import System
from core.model import Project, SiteRecord, StandsOn
from core.roof import roof_of
from walls import UK, at_degrees

# 45 degrees from 500 at the left eave wall: R = 500 + u. Rafters 38 x 89 stand 89 root 2 plumb.
ROOM = UK.room(6000, (500, at_degrees(45)), None, length=8000)
WALL = UK.wall((1000, 3000), (3000, 3000))


def test_a_wall_on_the_floor_has_no_foot_lines() -> None:
    over = overhead(ROOM, roof_of(ROOM), WALL)
    assert over.near is not None
    assert [over.near.height(x) for x in (0, 2000)] == pytest.approx([1500, 3500])
    assert (over.foot, over.crossings, over.inside) == (None, (), None)


@pytest.mark.parametrize(
    ("stands_on", "low"),
    [
        pytest.param(StandsOn.BESIDE_RAFTERS, 1500.0, id="their undersides"),
        pytest.param(StandsOn.RAFTERS, 1500 + 89 * 2**0.5, id="their tops"),
    ],
)
def test_foot_lines_on_rafters(stands_on: StandsOn, low: float) -> None:
    wall = msgspec.structs.replace(WALL, stands_on=stands_on)
    over = overhead(ROOM, roof_of(ROOM), wall)
    assert over.foot is not None
    for foot in over.foot:
        assert foot.height(0.0) == pytest.approx(low)
        assert foot.height(2000.0) == pytest.approx(low + 2000)


def test_it_is_found_anew_only_when_the_wall_or_the_room_moves(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    asked: list[str] = []

    def counted(*given: object) -> object:
        asked.append("once")
        return overhead(*given)  # type: ignore[arg-type]

    monkeypatch.setattr(work, "overhead", counted)
    project, memo = Project("test", System.METRIC, ROOM, (WALL,)), Memo()
    shown = msgspec.structs.replace(WALL, name="other", left_out=(2,))
    moved = UK.wall((1000, 3000), (3100, 3000))
    wider = msgspec.structs.replace(project, room=UK.room(6100, (500, at_degrees(45)), None))
    times = []
    for step in (project, project, project.with_wall(shown), project.with_wall(moved), wider):
        asked.clear()
        kept = work_out(step, SiteRecord(), memo)
        times.append(len(asked))
        assert kept == work_out(step, SiteRecord())
    assert times == [1, 0, 0, 1, 1]
