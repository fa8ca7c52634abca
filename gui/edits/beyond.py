"""What does not fit a room's cross-section, and the nearest that does.

The slopes go on meeting inside the room, and the flat ceiling stays under the ridge.
"""

import math
from collections.abc import Callable
from typing import Any

import msgspec

from core.lengths import Length, Pitch
from core.model import Project, Room
from core.roof import section_of
from core.wording import Message, Mm, message
from gui.edits.pitches import FINE, next_whole, stepped
from gui.edits.refusal import Refusal
from gui.edits.room import set_room

Changes = dict[str, Any]
"""Fields of the room and their new values."""

APART = 1.0
"""The ridge stands at least so far inside either eave wall, mm."""

_HALVINGS = 40
_CLOSE = 1e-6


class Beyond(Refusal):
    """A value that does not fit, and the project with the nearest one that does."""

    def __init__(self, why: Message, nearest: Project) -> None:
        super().__init__(why)
        self.nearest = nearest


def with_length(
    project: Project,
    made: Callable[[Length | float], Changes],
    wanted: Length | float,
    now: float,
    what: Message,
) -> Project:
    """The room with a length changed; beyond the last that fits, refused with that one (mm)."""

    def tried(mm: Length | float) -> Project | Message:
        return _tried(project, made, mm)

    outcome = tried(wanted)
    if isinstance(outcome, Project):
        return outcome
    nearest, past = _nearest(tried, now, in_mm(wanted), project.habits.tape.step_mm)
    reason, found = tried(past), tried(nearest)
    told = message(
        "shape.refused",
        what=what,
        wanted=Mm(in_mm(wanted)),
        reason=reason if isinstance(reason, Message) else outcome,
        nearest=Mm(nearest),
    )
    raise Beyond(told, found if isinstance(found, Project) else project)


def _tried(
    project: Project, made: Callable[[Length | float], Changes], mm: Length | float
) -> Project | Message:
    """The room with a length so, or why it cannot be."""
    try:
        changes = made(mm)
        reason = _why_not(project.room, changes)
        return set_room(project, **changes) if reason is None else reason
    except Refusal as refusal:
        return refusal.message
    except ValueError:
        return message("shape.no-meeting")


def _nearest(
    tried: Callable[[float], Project | Message], start: float, bad: float, step: float
) -> tuple[float, float]:
    """The last value on the way from a start to a bad one that fits, and one that just does not.

    The first is on the tape where it can be.
    """
    good, way = start, 1 if bad > start else -1
    for _ in range(_HALVINGS):
        middle = (good + bad) / 2
        good, bad = (middle, bad) if isinstance(tried(middle), Project) else (good, middle)
    count = math.floor(good * way / step + _CLOSE) * way
    for steps in (count, count - way):
        if isinstance(tried(steps * step), Project):
            return steps * step, bad
    return good, bad


def with_pitch(
    project: Project, made: Callable[[Pitch], Changes], wanted: Pitch, now: Pitch, what: Message
) -> Project:
    """The room with a pitch changed; beyond the last that fits, refused with that one."""
    reason = _why_not(project.room, made(wanted))
    if reason is None:
        return set_room(project, **made(wanted))
    nearest = _nearest_pitch(project, made, wanted, now)
    told = message(
        "shape.refused", what=what, wanted=wanted.text, reason=reason, nearest=nearest.text
    )
    raise Beyond(told, set_room(project, **made(nearest)))


def _nearest_pitch(
    project: Project, made: Callable[[Pitch], Changes], wanted: Pitch, now: Pitch
) -> Pitch:
    """The last pitch on the way from the one there is to a wanted one that fits."""
    system = project.system

    def fits(pitch: Pitch) -> bool:
        return _why_not(project.room, made(pitch)) is None

    good, bad = now.tangent, wanted.tangent
    for _ in range(_HALVINGS):
        middle = (good + bad) / 2
        good, bad = (middle, bad) if fits(Pitch(middle, "")) else (good, middle)
    found, back = stepped(good, system, FINE[system]), -1 if wanted.tangent > now.tangent else 1
    if not fits(found):
        found = next_whole(found, system, back, FINE[system])
    return found if fits(found) else now


def _why_not(before: Room, changes: Changes) -> Message | None:
    """Why a room cannot be so; None where it can, or where it already was no better."""
    reason = _trouble(msgspec.structs.replace(before, **changes))
    return None if reason is None or _trouble(before) == reason else reason


def _trouble(room: Room) -> Message | None:
    low = [s.eave_height.mm for s in (room.left, room.right) if s is not None]
    if room.width.mm <= 0 or min(low) < 0:
        return message("shape.below-nothing")
    cut = section_of(room)
    if len(low) == 2:
        at = cut.ridge
        if at is None or not APART <= at[0] <= room.width.mm - APART:
            return message("shape.no-meeting")
    ceiling = room.flat_ceiling
    if ceiling is not None and not 0 < ceiling.mm <= cut.highest:
        return message("shape.ceiling-above")
    return None


def in_mm(length: Length | float) -> float:
    """A stated length in mm; a number is mm already."""
    return length.mm if isinstance(length, Length) else length
