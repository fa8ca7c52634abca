"""Stating what else is nailed in: blocking, fixtures, where walls meet, blocks between rafters."""

import math
from typing import Any

import msgspec

from core.framing import Nailed, spoken
from core.lengths import Length
from core.model import Blocking, Fixture, MeetingKind, Project, RafterBacking, Wall
from core.wording import Mm, message
from gui.edits import usual
from gui.edits.refusal import Refusal
from gui.edits.sense import check_wall
from gui.edits.stating import next_id, stated, worked

_NONE = Blocking()


def set_blocking(project: Project, letter: str, **changes: Any) -> Project:
    """The wall's blocking with some of its fields changed; a row that fits no bay is refused."""
    wall = project.wall(letter)
    blocking = msgspec.structs.replace(wall.blocking or _NONE, **changes)
    after = _with(project, wall, blocking=None if blocking == _NONE else blocking)
    found = _nailed(after, letter)
    if found is not None and "heights" in changes and found.empty_rows:
        at = Mm(blocking.heights[found.empty_rows[0]].mm)
        if found.highest_row is None:
            raise Refusal(message("blocking.nowhere", letter=letter, at=at))
        highest = Mm(found.highest_row)
        raise Refusal(message("blocking.no-bay", letter=letter, at=at, highest=highest))
    return after


def set_meeting(project: Project, letter: str, kind: MeetingKind | None) -> Project:
    """The wall with what it gets where others end against it."""
    return _with(project, project.wall(letter), meeting=kind)


def set_slip_gap(project: Project, letter: str, gap: Length | None) -> Project:
    """The wall with its top plate so far below the rafters; None nails it up tight."""
    return _with(project, project.wall(letter), slip_gap=gap)


def set_rafter_backing(project: Project, letter: str, backing: RafterBacking | None) -> Project:
    """The wall with blocks between the rafters over its plate; refused where it has no use."""
    wall = project.wall(letter)
    found = _nailed(project, letter)
    if backing is not None and found is not None and found.over_plate.between is None:
        crossed = bool(found.over_plate.crossings)
        reason = "edit.plate-crosses" if crossed else "edit.plate-under"
        raise Refusal(message(reason, letter=letter))
    return _with(project, wall, rafter_backing=backing)


def add_fixture(project: Project, letter: str, placed: Fixture | None = None) -> Project:
    """One more thing to be backed: this one, or one in the middle of the wall.

    That is at a usual height, or lower where it has no backing there.
    """
    wall = project.wall(letter)
    if placed is not None:
        return _backed(_with(project, wall, fixtures=(*wall.fixtures, placed)), letter, placed)
    fixture = usual.fixture(project.system, next_id(wall, "backing"), wall)
    after = _with(project, wall, fixtures=(*wall.fixtures, fixture))
    low = _heights(after, letter, fixture)
    if low and not _is_backed(after, letter, fixture):
        # Rounded down, since rounded up it might not fit.
        step = project.habits.tape.step_mm
        height = stated(project, math.floor(min(low) / step + 1e-6) * step)
        return set_fixture(after, letter, fixture.id, height=height)
    return _backed(after, letter, fixture)


def set_fixture(project: Project, letter: str, fixture_id: str, **changes: Any) -> Project:
    """A fixture with some of its fields changed; refused where none of it would be backed."""
    wall = project.wall(letter)
    before = next(f for f in wall.fixtures if f.id == fixture_id)
    after = msgspec.structs.replace(before, **changes)
    fixtures = tuple(after if f.id == fixture_id else f for f in wall.fixtures)
    return _backed(_with(project, wall, fixtures=fixtures), letter, after)


def _backed(project: Project, letter: str, fixture: Fixture) -> Project:
    """The project itself; refused where the fixture has no backing at all."""
    if _is_backed(project, letter, fixture):
        return project
    heights, name = _heights(project, letter, fixture), spoken(fixture.id)
    if not heights:
        raise Refusal(message("edit.not-backed", letter=letter, fixture=name))
    raise Refusal(
        message("edit.backing-height", letter=letter, fixture=name, nearest=Mm(heights[0]))
    )


def _is_backed(project: Project, letter: str, fixture: Fixture) -> bool:
    """Whether any piece backs the fixture; a wall without a frame has nothing to be asked."""
    found, named = _nailed(project, letter), f"{letter}/{fixture.id}/"
    return found is None or any(m.key.startswith(named) for m in found.members)


def _heights(project: Project, letter: str, fixture: Fixture) -> list[float]:
    """The heights at which stretches that have no backing would have one, mm."""
    found = _nailed(project, letter)
    gaps = found.unbacked if found else ()
    return [g.height for g in gaps if g.fixture == fixture.id and g.height is not None]


def _nailed(project: Project, letter: str) -> Nailed | None:
    frame = worked(project, letter).frame
    return frame.nailed if frame else None


def _with(project: Project, wall: Wall, **changes: Any) -> Project:
    changed = msgspec.structs.replace(wall, **changes)
    return check_wall(project.with_wall(changed), wall.letter)
