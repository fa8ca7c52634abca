"""Properties of walls under generated roofs of many parts, with purlins through them."""

from __future__ import annotations

from itertools import combinations

from hypothesis import given

from core.drawing import View
from core.drawing.elevation import elevation
from core.framing import Frame, Member, Role, keys
from core.job import WallResult, work_out
from core.model import Project, SiteRecord
from core.output import write_figures
from core.wording import Wording
from strategies import projects

STANDING = (Role.STUD, Role.KING, Role.TRIMMER, Role.CRIPPLE)


def framed(project: Project) -> list[tuple[WallResult, Frame]]:
    walls = work_out(project, SiteRecord()).walls
    return [(wall, wall.frame) for wall in walls if wall.frame is not None]


@given(projects(most_walls=2))
def test_every_wall_can_be_shown_and_told(project: Project) -> None:
    results = work_out(project, SiteRecord())
    wording = Wording("us", project.habits.tape)
    assert write_figures(results, wording).endswith("}\n")
    for wall in results.walls:
        assert bool(elevation(wall, View(1 / 24), wording)) is (wall.frame is not None)
        for caution in wall.cautions:
            assert wording.say(caution.message)


@given(projects(most_walls=2))
def test_members_marks_and_purlins_agree(project: Project) -> None:
    for wall, frame in framed(project):
        found = [m.key for m in frame.members]
        assert sorted(set(found)) == sorted(found)
        _no_two_share_ground(frame)
        _studs_stay_under_the_plates(wall, frame)
        _no_plate_runs_into_a_purlin(wall, frame)
        _marks_are_on_their_piece(wall, frame)


def _no_two_share_ground(frame: Frame) -> None:
    upright = [m for m in frame.members if m.role in STANDING]
    for a, b in combinations(upright, 2):
        beside = a.right <= b.left + 1e-6 or b.right <= a.left + 1e-6
        assert beside or a.top <= b.bottom + 1e-6 or b.top <= a.bottom + 1e-6


def _studs_stay_under_the_plates(wall: WallResult, frame: Frame) -> None:
    # Studs that the tape was held to are as long as it said; a tight fit is stated below zero.
    fit = wall.wall.fit
    tight = max(0.0, -fit.mm) if fit is not None else 0.0
    taped = {key for tried in frame.measured for key in (tried.key, *tried.corrected)}
    for member in (m for m in frame.members if m.role is Role.STUD and m.key not in taped):
        assert all(y <= _just_over(frame, x) + tight + 1e-5 for x, y in _tops(member))


def _no_plate_runs_into_a_purlin(wall: WallResult, frame: Frame) -> None:
    for plate in (m for m in frame.members if m.role is Role.TOP_PLATE):
        for crossing in wall.inputs.crossings:
            left, right = crossing.near
            inside = plate.left < right - 1e-6 and plate.right > left + 1e-6
            low, high = _heights(plate, max(left, plate.left), min(right, plate.right))
            assert not inside or low >= crossing.top - 1e-5 or high <= crossing.bottom + 1e-5


def _marks_are_on_their_piece(wall: WallResult, frame: Frame) -> None:
    clashing = {clash.key for clash in wall.clashes}
    for mark in (m for m in wall.marks if "/top/" in m.plate and m.member not in clashing):
        # Pieces that butt lie end to end when they are marked.
        stretch = keys.stretch(mark.plate)
        butting = [m for m in frame.members if m.lies and keys.stretch(m.key) == stretch]
        assert mark.plate in [m.key for m in butting]
        assert -1e-5 <= mark.along <= sum(m.long_point for m in butting) + 1e-5


def _tops(member: Member) -> list[tuple[float, float]]:
    """The corners of a stud's top on face A: the highest at each place."""
    best: dict[float, float] = {}
    for x, y in member.near:
        best[x] = max(y, best.get(x, y))
    return [(x, y) for x, y in best.items() if x in (member.left, member.right)]


def _just_over(frame: Frame, x: float) -> float:
    """The highest that the undersides are at x, on either side of a step."""
    near = [s.at(x) for s in frame.near.segments if s.left - 1e-6 <= x <= s.right + 1e-6]
    return max(near, default=frame.near.height(x))


def _heights(plate: Member, left: float, right: float) -> tuple[float, float]:
    """The lowest of a plate's underside and the highest of its top between two places."""
    (x0, y0), (x1, y1), (_, y2), *_ = plate.near
    slope = (y1 - y0) / (x1 - x0) if x1 > x0 else 0.0
    under = [y0 + slope * (x - x0) for x in (left, right)]
    return min(under), max(under) + y2 - y1
