"""Whatever handle of whatever roof is pulled, the room that stands can be saved and drawn."""

from __future__ import annotations

import msgspec
from hypothesis import given
from hypothesis import strategies as st

from core.drawing import View
from core.drawing.section import section
from core.framing.moving import Grip
from core.lengths import System, Tape
from core.model import Habits, Project
from core.roof import section_of
from core.storage.sense import project_faults
from gui.edits import Refusal
from gui.edits.beyond import Beyond
from gui.section.handles import handles
from gui.section.numbers import told
from gui.section.pulls import Shaped, nudge, pull, take
from gui.wordings import wording_of
from roof_strategies import with_roof_parts
from strategies import rooms

SYSTEMS = st.sampled_from(System)


@st.composite
def projects(draw: st.DrawFn) -> Project:
    """A room with whatever roof, and no walls in it."""
    system = draw(SYSTEMS)
    room = draw(with_roof_parts(draw(rooms(system)), system))
    return Project("any", system, room, (), Habits(Tape.usual(system)))


def after(project: Project, data: st.DataObject) -> Project | None:
    """The project after one pull or push of one of its handles; None where it is refused flatly."""
    handle = data.draw(st.sampled_from(handles(project.room)))
    taken = take(project, handle.key, across=data.draw(st.booleans()))
    far = st.floats(-3000, 3000).map(lambda mm: mm + 0.0)
    grip = Grip(data.draw(st.sampled_from([1.0, 10.0, 25.4])), 40.0, data.draw(st.booleans()))
    try:
        if data.draw(st.booleans()):
            shaped = pull(taken, (data.draw(far), data.draw(far)), grip)
        else:
            way = data.draw(st.sampled_from([-1, 1]))
            shaped = nudge(taken, way, large=data.draw(st.booleans()))
    except Beyond as beyond:
        shaped = Shaped(beyond.nearest, beyond.message)
    except Refusal:
        return None
    assert wording_of(project).say(shaped.said)
    return shaped.project


@given(projects(), st.data())
def test_what_stands_makes_sense_and_can_be_drawn(project: Project, data: st.DataObject) -> None:
    shaped = after(project, data)
    if shaped is None:
        return
    assert list(project_faults(shaped)) == []
    words = wording_of(shaped)
    assert section(shaped.room, View(1 / 50), words)
    for handle in handles(shaped.room):
        assert words.say(told(shaped.room, handle.key))


@given(projects(), st.data())
def test_a_ridge_inside_the_room_stays_inside(project: Project, data: st.DataObject) -> None:
    before = section_of(project.room).ridge
    shaped = after(project, data)
    if before is None or not 1.0 <= before[0] <= project.room.width.mm - 1.0 or shaped is None:
        return
    assert section_of(shaped.room).ridge is not None


@given(projects(), st.data())
def test_a_pull_by_nothing_changes_next_to_nothing(project: Project, data: st.DataObject) -> None:
    """Freely, the handle comes to rest within a step of the tape, or of a fine pitch."""
    handle = data.draw(st.sampled_from(handles(project.room)))
    taken = take(project, handle.key, across=data.draw(st.booleans()))
    try:
        shaped = pull(taken, (0.0, 0.0), Grip(1.0, 0.0, free=True))
    except Refusal:
        return
    before, now = ({h.key: h.at for h in handles(p.room)} for p in (project, shaped.project))
    moved = max(abs(a - b) for a, b in zip(before[handle.key], now[handle.key], strict=True))
    # A sixteenth in 12, or a tenth of a degree at up to 55, over half of 12 m.
    assert moved <= 6000 * max(1 / 192, 0.1 * 0.0175 / 0.33) + project.habits.tape.step_mm
    assert msgspec.structs.replace(shaped.project, room=project.room) == project
