"""Shaping the room's cross-section: eaves, pitches, ridge, flat ceiling and width.

The slopes go on meeting inside the room, and the flat ceiling stays under the ridge. What does not
fit is refused, with the nearest that does.
"""

import msgspec

from core.lengths import Length, Pitch
from core.model import PitchBreak, Project, Room, Side, Slope
from core.roof import Rise, RoomSection, section_of
from core.wording import message
from gui.edits.beyond import APART, Changes, in_mm, with_length, with_pitch
from gui.edits.pitches import of_rise_and_run
from gui.edits.refusal import Refusal
from gui.edits.room import set_room
from gui.edits.stating import stated


def set_eave(project: Project, side: Side, height: Length | float) -> Project:
    """The room with another height at one eave; its slope keeps its pitch."""
    slope = _slope(project.room, side)

    def made(mm: Length | float) -> Changes:
        raised = msgspec.structs.replace(slope, eave_height=stated(project, mm))
        return {side.value: raised}

    what = message(f"shape.eave-{side.value}")
    return with_length(project, made, height, slope.eave_height.mm, what)


def set_eaves(project: Project, height: Length | float) -> Project:
    """The room with the same height at every eave; its slopes keep their pitches."""
    slopes = _slopes(project.room)

    def made(mm: Length | float) -> Changes:
        tall = stated(project, mm)
        return {
            name: msgspec.structs.replace(slope, eave_height=tall) for name, slope in slopes.items()
        }

    now = next(iter(slopes.values())).eave_height.mm
    return with_length(project, made, height, now, message("shape.eaves"))


def set_pitch(project: Project, side: Side, number: int, pitch: Pitch) -> Project:
    """The room with another pitch of one stretch of a slope; its eave stays."""
    room = project.room
    what, now = message(f"shape.pitch-{side.value}"), _pitch(room, side, number)
    return with_pitch(project, lambda p: _pitched(room, side, number, p), pitch, now, what)


def set_pitches(project: Project, pitch: Pitch) -> Project:
    """The room with one pitch from every eave."""
    slopes = _slopes(project.room)

    def made(each: Pitch) -> Changes:
        return {name: _turned(slope, 0, each) for name, slope in slopes.items()}

    now = next(iter(slopes.values())).pitch
    return with_pitch(project, made, pitch, now, message("shape.pitches"))


def set_break(project: Project, side: Side, number: int, run: Length | float) -> Project:
    """The room with a change of pitch farther in from its eave wall, or nearer to it."""
    slope = _slope(project.room, side)

    def made(mm: Length | float) -> Changes:
        breaks = list(slope.breaks)
        breaks[number - 1] = msgspec.structs.replace(breaks[number - 1], run=stated(project, mm))
        changes = {side.value: msgspec.structs.replace(slope, breaks=tuple(breaks))}
        rise = section_of(msgspec.structs.replace(project.room, **changes)).rise(side, number)
        if rise is None or abs(rise.head[0] - rise.foot[0]) < APART:
            raise Refusal(message("shape.break-past"))
        return changes

    what = message("shape.break", side=message(f"side.{side.value}"), number=number)
    return with_length(project, made, run, slope.breaks[number - 1].run.mm, what)


def set_ridge_height(project: Project, height: Length | float) -> Project:
    """The room with its ridge higher or lower over the same place: both pitches change."""
    across, now = _ridge(project.room)
    return with_length(
        project,
        lambda mm: _ridged(project, across, in_mm(mm)),
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

    return with_length(
        project,
        lambda mm: _ridged(project, from_left(in_mm(mm)), height),
        across,
        from_left(now),
        message(f"shape.run-{side.value}"),
    )


def set_flat_ceiling(project: Project, height: Length | float) -> Project:
    """The room with a flat ceiling at this height, whether it had one or not."""
    ceiling = project.room.flat_ceiling
    now = ceiling.mm if ceiling is not None else likely_ceiling(project.room)
    what = message("shape.ceiling")
    return with_length(project, lambda mm: {"flat_ceiling": stated(project, mm)}, height, now, what)


def likely_ceiling(room: Room) -> float:
    """Where a flat ceiling may come into a room that has none, mm: at three quarters of its height.

    Common practice, no source.
    """
    return section_of(room).highest * 0.75


def remove_part(project: Project, key: str) -> Project | None:
    """The room without its flat ceiling or a change of pitch; None for what cannot go."""
    what, _, rest = key.partition("/")
    if what == "ceiling" and project.room.flat_ceiling is not None:
        return set_room(project, flat_ceiling=None)
    if what == "break":
        side, _, number = rest.partition("/")
        slope, at = _slope(project.room, Side(side)), int(number) - 1
        left = (*slope.breaks[:at], *slope.breaks[at + 1 :])
        return set_room(project, **{side: msgspec.structs.replace(slope, breaks=left)})
    return None


def set_width(project: Project, width: Length | float) -> Project:
    """The room with another width; slopes keep eaves and pitches, walls at the eave go along."""
    room, what = project.room, message("shape.width")
    return with_length(
        project, lambda mm: {"width": stated(project, mm)}, width, room.width.mm, what
    )


def set_high_side(project: Project, side: Side, height: Length | float) -> Project:
    """A shed room with another height at its high side: its pitch changes."""
    slope = _slope(project.room, side.other)
    cut = section_of(project.room)
    rise = _last(cut, side.other)

    def made(mm: Length | float) -> Changes:
        pitch = of_rise_and_run(project, in_mm(mm) - rise.foot[1], abs(rise.head[0] - rise.foot[0]))
        return {side.other.value: _turned(slope, rise.number, pitch)}

    return with_length(project, made, height, rise.head[1], message(f"shape.high-{side.value}"))


def _pitched(room: Room, side: Side, number: int, pitch: Pitch) -> Changes:
    return {side.value: _turned(_slope(room, side), number, pitch)}


def _turned(slope: Slope, number: int, pitch: Pitch) -> Slope:
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
