"""A drawing made from what is kept of earlier ones equals a fresh one, and memory has its bound."""

from __future__ import annotations

import msgspec
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.drawing import Show, View
from core.drawing.elevation import elevation
from core.job import Memo, work_out
from core.kept import Kept
from core.lengths import Length, System, Tape
from core.model import Opening, Project, Side, SiteRecord, Wall
from core.wording import Wording
from strategies import projects
from walls import US, in_12

WORDS = Wording("us", Tape.usual(System.INCH))
NOTHING = SiteRecord()
VIEWS = st.sampled_from(
    [View(1 / 24), View(1 / 50), View(1 / 110), View(1 / 24, shows=frozenset({Show.LABELS}))]
)


def shifted(opening: Opening, by: int) -> Opening:
    return msgspec.structs.replace(opening, left=Length(opening.left.mm + by, opening.left.unit))


@st.composite
def edits(draw: st.DrawFn, wall: Wall) -> Wall:
    """The wall with an opening shifted or gone, a place left out, or its layout turned."""
    kinds = ["turned", "left out", *(["shifted", "shifted", "gone"] if wall.openings else [])]
    match draw(st.sampled_from(kinds)):
        case "turned":
            layout = msgspec.structs.replace(wall.layout, start=draw(st.sampled_from(Side)))
            return msgspec.structs.replace(wall, layout=layout)
        case "left out":
            place = draw(st.integers(1, 6))
            return msgspec.structs.replace(wall, left_out=(place,))
        case "gone":
            return msgspec.structs.replace(wall, openings=wall.openings[1:])
    first, *others = wall.openings
    return msgspec.structs.replace(
        wall, openings=(shifted(first, draw(st.integers(-300, 300))), *others)
    )


@settings(max_examples=40, deadline=None)
@given(st.data(), projects(most_walls=2))
def test_through_edits_and_looks_it_equals_a_fresh_one(
    data: st.DataObject, project: Project
) -> None:
    memo, kept = Memo(), Kept()
    for _ in range(4):
        view = data.draw(VIEWS)
        for result in work_out(project, NOTHING, memo).walls:
            assert elevation(result, view, WORDS, kept) == elevation(result, view, WORDS)
        if project.walls:
            wall = data.draw(st.sampled_from(project.walls))
            project = project.with_wall(data.draw(edits(wall)))


def crowded() -> Project:
    """A wall 240 in. long on 12 in. centres with three openings, under a slope and a ceiling."""
    openings = tuple(US.opening(f"door-{n}", 20 + 70 * n, 30, 80) for n in range(3))
    room = US.room(300.0, (60.0, in_12(6)), (60.0, in_12(6)), flat=110.0)
    wall = US.wall((30, 100), (270, 100), spacing=12.0, openings=openings, plates=2)
    return Project("crowded", System.INCH, room, (wall,))


def dragged(project: Project, by: int) -> Project:
    """The project with its second door so many mm from where it was."""
    wall = project.wall("B")
    first, second, third = wall.openings
    openings = (first, shifted(second, by), third)
    return project.with_wall(msgspec.structs.replace(wall, openings=openings))


@pytest.mark.parametrize("scale", [1 / 24, 1 / 60, 1 / 110])
def test_each_frame_of_a_drag_equals_a_fresh_one(scale: float) -> None:
    """Labels crowd at small scales, and are numbered anew where a stud comes or goes."""
    memo, kept = Memo(), Kept()
    for by in (0, 3, 40, 41, 200, 330, 100, 0, -120):
        (result,) = work_out(dragged(crowded(), by), NOTHING, memo).walls
        view = View(scale)
        assert elevation(result, view, WORDS, kept) == elevation(result, view, WORDS)


def test_what_stands_still_is_drawn_with_the_very_same_elements() -> None:
    kept = Kept()
    before, after = (
        elevation(work_out(dragged(crowded(), by), NOTHING).walls[0], View(1 / 40), WORDS, kept)
        for by in (0, 5)
    )
    known = {id(element) for element in before}
    same = sum(id(element) in known for element in after)
    assert same > len(after) / 2


def test_a_long_drag_keeps_no_more_than_a_few_frames() -> None:
    """Of 200 frames, each of which has about a third of its pieces new, 16 and the last stay."""
    kept, sizes = Kept(), []
    for by in range(200):
        (result,) = work_out(dragged(crowded(), by), NOTHING).walls
        elevation(result, View(1 / 40), WORDS, kept)
        sizes.append(kept.size)
    assert max(sizes[100:]) <= 1.2 * max(sizes[:100])
