"""Shaping the room's cross-section: eaves, pitches, ridge, flat ceiling and width.

The slopes go on meeting inside the room, and the flat ceiling stays under the ridge. What does not
fit is refused, with the nearest that does.
"""

import math
from collections.abc import Callable
from typing import Any

import msgspec

from core.lengths import Length, Pitch
from core.model import PitchBreak, Project, Room, Side, Slope
from core.roof import Rise, RoomSection, section_of
from core.wording import Message, Mm, message
from gui.edits.pitches import FINE, next_whole, of_rise_and_run, stepped
from gui.edits.refusal import Refusal
from gui.edits.room import set_room
from gui.edits.stating import stated

Changes = dict[str, Any]

_HALVINGS = 40
_CLOSE = 1e-6
_APART = 1.0
"""The ridge stands at least so far inside either eave wall, mm."""


class Beyond(Refusal):
    """A value that does not fit, and the project with the nearest one that does."""

    def __init__(self, why: Message, nearest: Project) -> None:
        super().__init__(why)
        self.nearest = nearest


def set_eave(project: Project, side: Side, height: Length | float) -> Project:
    """The room with another height at one eave; its slope keeps its pitch."""
    slope = _slope(project.room, side)

    def made(mm: Length | float) -> Changes:
        raised = msgspec.structs.replace(slope, eave_height=stated(project, mm))
        return {side.value: raised}

    what = message(f"shape.eave-{side.value}")
    return _lengths(project, made, height, slope.eave_height.mm, what)


def set_eaves(project: Project, height: Length | float) -> Project:
    """The room with the same height at every eave; its slopes keep their pitches."""
    slopes = _slopes(project.room)

    def made(mm: Length | float) -> Changes:
        tall = stated(project, mm)
        return {
            name: msgspec.structs.replace(slope, eave_height=tall) for name, slope in slopes.items()
        }

    now = next(iter(slopes.values())).eave_height.mm
    return _lengths(project, made, height, now, message("shape.eaves"))


def set_pitch(project: Project, side: Side, number: int, pitch: Pitch) -> Project:
    """The room with another pitch of one stretch of a slope; its eave stays."""
    room = project.room
    what, now = message(f"shape.pitch-{side.value}"), _pitch(room, side, number)
    return _pitches(project, lambda p: _pitched(room, side, number, p), pitch, now, what)


def set_pitches(project: Project, pitch: Pitch) -> Project:
    """The room with one pitch from every eave."""
    slopes = _slopes(project.room)

    def made(each: Pitch) -> Changes:
        return {name: _with_pitch(slope, 0, each) for name, slope in slopes.items()}

    now = next(iter(slopes.values())).pitch
    return _pitches(project, made, pitch, now, message("shape.pitches"))


def set_break(project: Project, side: Side, number: int, run: Length | float) -> Project:
    """The room with a change of pitch farther in from its eave wall, or nearer to it."""
    slope = _slope(project.room, side)

    def made(mm: Length | float) -> Changes:
        breaks = list(slope.breaks)
        breaks[number - 1] = msgspec.structs.replace(breaks[number - 1], run=stated(project, mm))
        changes = {side.value: msgspec.structs.replace(slope, breaks=tuple(breaks))}
        rise = section_of(msgspec.structs.replace(project.room, **changes)).rise(side, number)
        if rise is None or abs(rise.head[0] - rise.foot[0]) < _APART:
            raise Refusal(message("shape.break-past"))
        return changes

    what = message("shape.break", side=message(f"side.{side.value}"), number=number)
    return _lengths(project, made, run, slope.breaks[number - 1].run.mm, what)


def set_ridge_height(project: Project, height: Length | float) -> Project:
    """The room with its ridge higher or lower over the same place: both pitches change."""
    across, now = _ridge(project.room)
    return _lengths(
        project,
        lambda mm: _ridged(project, across, _mm(mm)),
        height,
        now,
        message("shape.ridge-height"),
    )


def set_ridge_across(project: Project, across: Length | float, side: Side = Side.LEFT) -> Project:
    """The room with its ridge so far from an eave wall, at the same height: both pitches change."""
    now, height = _ridge(project.room)
    width = project.room.width.mm

    def from_left(mm: float) -> float:
        return mm if side is Side.LEFT else width - mm

    return _lengths(
        project,
        lambda mm: _ridged(project, from_left(_mm(mm)), height),
        across,
        from_left(now),
        message(f"shape.run-{side.value}"),
    )


def set_flat_ceiling(project: Project, height: Length | float) -> Project:
    """The room with its flat ceiling at another height."""
    ceiling = project.room.flat_ceiling
    if ceiling is None:
        raise LookupError("the room has no flat ceiling")
    what = message("shape.ceiling")
    return _lengths(
        project, lambda mm: {"flat_ceiling": stated(project, mm)}, height, ceiling.mm, what
    )


def set_width(project: Project, width: Length | float) -> Project:
    """The room with another width; slopes keep eaves and pitches, walls at the eave go along."""
    room, what = project.room, message("shape.width")
    return _lengths(project, lambda mm: {"width": stated(project, mm)}, width, room.width.mm, what)


def set_high_side(project: Project, side: Side, height: Length | float) -> Project:
    """A shed room with another height at its high side: its pitch changes."""
    slope = _slope(project.room, side.other)
    cut = section_of(project.room)
    rise = _last(cut, side.other)

    def made(mm: Length | float) -> Changes:
        pitch = of_rise_and_run(project, _mm(mm) - rise.foot[1], abs(rise.head[0] - rise.foot[0]))
        return {side.other.value: _with_pitch(slope, rise.number, pitch)}

    return _lengths(project, made, height, rise.head[1], message(f"shape.high-{side.value}"))


def _lengths(
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
    nearest, past = _nearest(tried, now, _mm(wanted), project.habits.tape.step_mm)
    reason, found = tried(past), tried(nearest)
    told = message(
        "shape.refused",
        what=what,
        wanted=Mm(_mm(wanted)),
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


def _pitches(
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
        if at is None or not _APART <= at[0] <= room.width.mm - _APART:
            return message("shape.no-meeting")
    ceiling = room.flat_ceiling
    if ceiling is not None and not 0 < ceiling.mm <= cut.highest:
        return message("shape.ceiling-above")
    return None


def _pitched(room: Room, side: Side, number: int, pitch: Pitch) -> Changes:
    return {side.value: _with_pitch(_slope(room, side), number, pitch)}


def _with_pitch(slope: Slope, number: int, pitch: Pitch) -> Slope:
    if number == 0:
        return msgspec.structs.replace(slope, pitch=pitch)
    breaks: list[PitchBreak] = list(slope.breaks)
    breaks[number - 1] = msgspec.structs.replace(breaks[number - 1], pitch=pitch)
    return msgspec.structs.replace(slope, breaks=tuple(breaks))


def _pitch(room: Room, side: Side, number: int) -> Pitch:
    slope = _slope(room, side)
    return slope.breaks[number - 1].pitch if number else slope.pitch


def _ridged(project: Project, across: float, height: float) -> Changes:
    """Both slopes with the pitch of their last stretch such that they meet at a place."""
    cut = section_of(project.room)
    changes: Changes = {}
    for side in Side:
        last = _last(cut, side)
        run = (across - last.foot[0]) * (1 if side is Side.LEFT else -1)
        pitch = of_rise_and_run(project, height - last.foot[1], run)
        changes |= _pitched(project.room, side, last.number, pitch)
    return changes


def _last(cut: RoomSection, side: Side) -> Rise:
    """The stretch of a slope that reaches its top."""
    return max((r for r in cut.rises if r.side is side), key=lambda r: r.number)


def _ridge(room: Room) -> tuple[float, float]:
    at = section_of(room).ridge
    if at is None:
        raise LookupError("the slopes of this room have no ridge")
    return at


def _slope(room: Room, side: Side) -> Slope:
    slope: Slope | None = getattr(room, side.value)
    if slope is None:
        raise LookupError(f"the room has no slope on the {side.value}")
    return slope


def _slopes(room: Room) -> dict[str, Slope]:
    """The slopes there are, by the name of their side."""
    found = {side.value: getattr(room, side.value) for side in Side}
    return {name: slope for name, slope in found.items() if slope is not None}


def _mm(length: Length | float) -> float:
    return length.mm if isinstance(length, Length) else length
