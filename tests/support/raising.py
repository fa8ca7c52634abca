"""One wall going up in a room, for tests."""

from __future__ import annotations

from core.job import raising_of, surroundings_of, work_out
from core.lengths import System, Tape
from core.model import Habits, Project, Room, SiteRecord, Wall
from core.site import GoingUp, Laid, Surroundings, Swing


def raised(room: Room, wall: Wall, *others: Wall) -> GoingUp:
    """How the wall goes up among the others."""
    found = raising_of(work_out(job(room, wall, *others), SiteRecord()), wall.letter)
    assert found is not None
    return found


def around(room: Room, wall: Wall, *others: Wall) -> Surroundings:
    found = surroundings_of(work_out(job(room, wall, *others), SiteRecord()), wall.letter)
    assert found is not None
    return found


def swing(room: Room, wall: Wall, laid: Laid) -> Swing:
    return next(s for s in raised(room, wall).swings if s.laid is laid)


def job(room: Room, *walls: Wall) -> Project:
    system = System.METRIC if room.width.unit.metric else System.INCH
    return Project("test", system, room, walls, Habits(Tape.usual(system)))
