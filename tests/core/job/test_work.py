"""The pipeline: what each wall may read, and the memo that spares work."""

import msgspec
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.checks import Severity
from core.job import Memo, Results, work, work_out
from core.job.overhead import overhead
from core.job.results import WallInputs, WallResult
from core.job.work import inputs_of, wall_result
from core.lengths import Length, System, Unit
from core.model import Habits, LineEdge, PrintedLabel, Project, Room, Side, SiteRecord, Wall
from core.roof import Roof, roof_of
from strategies import projects, site_records
from walls import US, in_12

ROOM = US.room(288, (33, in_12(9)), (33, in_12(9)), flat=94)


def wall(letter: str, along: float, **changes: object) -> Wall:
    """A wall across the loft, `along` inches from its gable."""
    made = US.wall((36, along), (252, along))
    return msgspec.structs.replace(made, letter=letter, name=f"wall {letter}", **changes)


PROJECT = Project("loft", System.INCH, ROOM, (wall("A", 60), wall("B", 120), wall("C", 180)))
NOTHING = SiteRecord()


class Counting(Memo):
    """A memo that tells which walls were worked out, and which were at hand."""

    def __init__(self) -> None:
        super().__init__()
        self.worked: list[str] = []

    def wall(self, inputs: WallInputs) -> WallResult:
        """The result for these inputs; a kept one is the very same object as before."""
        kept = list(self._kept.values())
        found = super().wall(inputs)
        if not any(found is one for one in kept):
            self.worked.append(inputs.wall.letter)
        return found


def worked(memo: Counting, project: Project, site: SiteRecord = NOTHING) -> list[str]:
    """The letters of the walls that this job made the memo work out."""
    memo.worked = []
    work_out(project, site, memo)
    return memo.worked


def changed(letter: str, **changes: object) -> Project:
    return PROJECT.with_wall(msgspec.structs.replace(PROJECT.wall(letter), **changes))


DOOR = US.opening("door-1", 60, 34, 82.5)
OTHER_ROOM = msgspec.structs.replace(ROOM, flat_ceiling=Length.of_inches(92))
LONGER = msgspec.structs.replace(ROOM, length=Length.of_inches(500))
UPHILL = msgspec.structs.replace(PROJECT, habits=Habits(line_edge=LineEdge.UPHILL))


@pytest.mark.parametrize(
    ("project", "expected"),
    [
        (PROJECT, []),
        (msgspec.structs.replace(PROJECT, name="another"), []),
        (changed("B", openings=(DOOR,)), ["B"]),
        (changed("C", name="renamed"), ["C"]),
        # The roof is over all of them; the last rafter stands flush with the room's far end.
        (msgspec.structs.replace(PROJECT, room=OTHER_ROOM), ["A", "B", "C"]),
        (msgspec.structs.replace(PROJECT, room=LONGER), ["A", "B", "C"]),
        (UPHILL, ["A", "B", "C"]),
        # A wall more, a wall less, and other places in the list.
        (msgspec.structs.replace(PROJECT, walls=(*PROJECT.walls, wall("D", 200))), ["D"]),
        (msgspec.structs.replace(PROJECT, walls=PROJECT.walls[1:]), []),
        (msgspec.structs.replace(PROJECT, walls=PROJECT.walls[::-1]), []),
    ],
    ids=["same", "job's name", "door", "name", "roof", "length", "habits", "more", "less", "order"],
)
def test_only_what_changed_is_worked_out_again(project: Project, expected: list[str]) -> None:
    memo = Counting()
    assert worked(memo, PROJECT) == ["A", "B", "C"]
    assert worked(memo, project) == expected
    assert work_out(project, NOTHING, memo) == work_out(project, NOTHING)


def test_the_memo_keeps_the_last_job_only() -> None:
    memo = Counting()
    worked(memo, PROJECT)
    assert worked(memo, changed("B", openings=(DOOR,))) == ["B"]
    assert worked(memo, PROJECT) == ["B"]


def test_a_printed_label_touches_its_own_wall_only() -> None:
    memo = Counting()
    worked(memo, PROJECT)
    site = SiteRecord((PrintedLabel("B/layout/1", "B2"),))
    assert worked(memo, PROJECT, site) == ["B"]


def test_a_result_at_hand_is_the_very_same() -> None:
    memo = Memo()
    first = work_out(PROJECT, NOTHING, memo)
    second = work_out(changed("B", openings=(DOOR,)), NOTHING, memo)
    assert [one is two for one, two in zip(first.walls, second.walls, strict=True)] == [
        True,
        False,
        True,
    ]


@settings(max_examples=40)
@given(st.data(), projects(most_walls=2))
def test_worked_out_step_by_step_equals_fresh(data: st.DataObject, start: Project) -> None:
    """Through a few edits with one memo, each result equals one worked out from nothing."""
    memo = Memo()
    project = start
    for _ in range(3):
        site = data.draw(site_records(project))
        assert work_out(project, site, memo) == work_out(project, site)
        if project.walls:
            edited = data.draw(st.sampled_from(project.walls))
            side = data.draw(st.sampled_from(Side))
            layout = msgspec.structs.replace(edited.layout, start=side)
            project = project.with_wall(msgspec.structs.replace(edited, layout=layout))


def inputs_at(site: SiteRecord, wall: Wall) -> WallInputs:
    """What a wall of the project's room may read, with no other wall beside it."""
    return inputs_of(PROJECT, site, overhead(ROOM, roof_of(ROOM), wall), (), wall)


def test_inputs_hold_the_printed_labels_of_their_wall_alone() -> None:
    """A wall "A" does not take the labels of "AB", nor the other way round."""
    printed = (
        PrintedLabel("A/layout/1", "A7"),
        PrintedLabel("AB/layout/1", "AB2"),
        PrintedLabel("B/layout/1", "B9"),
        PrintedLabel("A/sole", "A1"),
    )
    for letter, expected in (
        ("A", (("A/layout/1", "A7"), ("A/sole", "A1"))),
        ("AB", (("AB/layout/1", "AB2"),)),
        ("C", ()),
    ):
        inputs = inputs_at(SiteRecord(printed), wall(letter, 60))
        assert inputs.printed == expected


def test_a_printed_label_stays_with_its_piece() -> None:
    site = SiteRecord((PrintedLabel("B/layout/3", "B7"), PrintedLabel("B/gone/1", "B1")))
    labels = work_out(PROJECT, site).wall("B").label_of
    assert labels["B/layout/3"] == "B7"
    assert "B1" not in labels.values()


def test_inputs_hold_the_roof_over_both_faces() -> None:
    """A knee wall 36 in. in, its timber on the eave's side: 33 + 27 = 60 in. over face A, and 3 1/2
    in. behind it 2 5/8 less."""
    knee = US.wall((36, 0), (36, 120))
    inputs = inputs_at(NOTHING, knee)
    assert inputs.near is not None
    assert inputs.far is not None
    assert inputs.near.height(0) / 25.4 == pytest.approx(60)
    assert inputs.far.height(0) / 25.4 == pytest.approx(57.375)


@pytest.mark.parametrize(
    "stated",
    [
        US.wall((60, 100), (60, 100)),
        # Shorter than a stud is thick: no room even for one.
        US.wall((60, 100), (61, 100)),
    ],
    ids=["no length", "thinner than a stud"],
)
def test_a_wall_without_length_cannot_be_built(stated: Wall) -> None:
    result = _result_in(ROOM, stated)
    (caution,) = result.cautions
    assert (caution.severity, caution.key) == (Severity.UNBUILDABLE, "B")
    assert (result.frame, result.marks, result.boxes, result.labels) == (None, (), (), ())


def test_a_wall_out_from_under_the_roof_cannot_be_built(monkeypatch: pytest.MonkeyPatch) -> None:
    """The roof of a room has no end as yet; with a part that covers 100 in. of it the wall that
    reaches out from under it has no frame, and the one beside it has."""
    bounded = _bounded(roof_of(ROOM), 100 * 25.4)
    monkeypatch.setattr(work, "roof_of", lambda _: bounded)
    results = work_out(PROJECT, NOTHING)
    assert [w.frame is not None for w in results.walls] == [True, False, False]
    assert [c.severity for c in results.wall("B").cautions] == [Severity.UNBUILDABLE]
    assert not results.buildable


def _bounded(roof: Roof, along: float) -> Roof:
    """The roof with parts that end `along` mm from the gable."""
    corners = ((-1e6, -1e6), (1e6, -1e6), (1e6, along), (-1e6, along))
    parts = tuple(msgspec.structs.replace(part, outline=corners) for part in roof.parts)
    return msgspec.structs.replace(roof, parts=parts)


def _result_in(room: Room, stated: Wall) -> WallResult:
    return work_out(Project("loft", System.INCH, room, (stated,)), NOTHING).walls[0]


def test_a_result_depends_on_its_inputs_alone() -> None:
    for result in work_out(PROJECT, NOTHING).walls:
        assert wall_result(result.inputs) == result


def test_walls_stand_in_the_projects_order() -> None:
    turned = msgspec.structs.replace(PROJECT, walls=PROJECT.walls[::-1])
    assert [w.wall.letter for w in work_out(turned, NOTHING).walls] == ["C", "B", "A"]


def test_a_project_without_walls() -> None:
    results = work_out(msgspec.structs.replace(PROJECT, walls=()), NOTHING)
    assert results.walls == ()
    assert {c.severity for c in results.cautions} == {Severity.STANDING}


def test_a_length_written_in_another_unit_is_another_statement() -> None:
    """The unit is part of what was stated, so the wall counts as changed."""
    stud = PROJECT.wall("A").stud
    width = msgspec.structs.replace(stud, width=Length(stud.width.mm, Unit.FEET))
    memo = Counting()
    worked(memo, PROJECT)
    assert worked(memo, changed("A", stud=width)) == ["A"]


def test_results() -> None:
    results: Results = work_out(changed("B", openings=(US.opening("door-1", 4, 34, 92),)), NOTHING)
    assert results.wall("C").wall.name == "wall C"
    with pytest.raises(KeyError, match="D"):
        results.wall("D")
    own = [c for w in results.walls for c in w.cautions]
    assert [c.key for c in own] == ["B/door-1"]
    assert results.all_cautions == (*own, *results.cautions)
    assert not results.buildable
    assert work_out(PROJECT, NOTHING).buildable
