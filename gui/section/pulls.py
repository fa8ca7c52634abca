"""Pulling a handle of the section: from where it stood and how far it is pulled to a new project.

No Qt. The place is always reckoned from where the handle stood when it was taken hold of.
"""

from collections.abc import Callable, Iterator

import msgspec

from core.drawing.section_figures import pitch_of
from core.framing.moving import Grip
from core.model import Project, Side
from core.roof import Rise, RoomSection, section_of
from core.wording import Message, message
from gui.edits.pitches import FINE, WHOLE, next_whole, stepped
from gui.edits.shaping import (
    set_break,
    set_eave,
    set_flat_ceiling,
    set_pitch,
    set_ridge_across,
    set_ridge_height,
    set_width,
)
from gui.section.handles import Handle, Ways, handles
from gui.section.numbers import told
from gui.sketcher.camera import XY
from gui.sketcher.pulls import step_of

_LARGE = 4
"""So many whole pitches make a large step."""

_CLOSE = 1e-3
"""Lengths nearer than this are alike, mm."""

Snap = tuple[float, Message]
"""A place (mm) that a handle is drawn to, and what it is."""


class Taken(msgspec.Struct, frozen=True):
    """A handle as it was when it was taken hold of, and the way it is pulled."""

    project: Project
    handle: Handle
    across: bool

    @property
    def key(self) -> str:
        """The key of the number that it changes; of the ridge pulled across, that of its run."""
        return "run/left" if self.handle.key == "ridge" and self.across else self.handle.key


class Shaped(msgspec.Struct, frozen=True):
    """The project with the handle in its new place, and a line that says where that is."""

    project: Project
    said: Message


def take(project: Project, key: str, *, across: bool = False) -> Taken:
    """A hold on the handle with this key; one that goes up only is never pulled across."""
    handle = next(h for h in handles(project.room) if h.key == key)
    way = across if handle.ways is Ways.BOTH else handle.ways is Ways.ACROSS
    return Taken(project, handle, way)


def pull(taken: Taken, by: XY, grip: Grip) -> Shaped:
    """The handle pulled by (x, y) mm; Beyond where its new place does not fit."""
    project, (x, y) = taken.project, taken.handle.at
    wanted = x + by[0] if taken.across else y + by[1]
    what, _, rest = taken.key.partition("/")
    if what == "pitch":
        side, _, number = rest.partition("/")
        return _pitched(taken, Side(side), int(number), wanted, free=grip.free)
    snaps = () if grip.free else tuple(_snaps(taken, wanted))
    place, snapped = _drawn(wanted, snaps, grip, project.habits.tape.step_mm)
    if what == "eave":
        return _said(set_eave(project, Side(rest), place), taken.key, snapped)
    if what == "break":
        side, _, number = rest.partition("/")
        run = place if side == "left" else project.room.width.mm - place
        return _said(set_break(project, Side(side), int(number), run), taken.key, snapped)
    edits: dict[str, Callable[[Project, float], Project]] = {
        "ridge": set_ridge_height,
        "run": set_ridge_across,
        "ceiling": set_flat_ceiling,
        "width": set_width,
    }
    return _said(edits[what](project, place), taken.key, snapped)


def nudge(taken: Taken, way: int, *, large: bool) -> Shaped:
    """The handle one step up or to the right (1), or down or to the left (-1)."""
    project, tape = taken.project, taken.project.habits.tape
    what, _, rest = taken.key.partition("/")
    if what != "pitch":
        step = way * step_of(tape, large=large)
        by = (step, 0.0) if taken.across else (0.0, step)
        return pull(taken, by, Grip(tape.step_mm, 0.0, free=True))
    side, _, number = rest.partition("/")
    rise = _rise(project, Side(side), int(number))
    pitch = pitch_of(project.room, rise)
    for _ in range(_LARGE if large else 1):
        pitch = next_whole(pitch, project.system, way, WHOLE[project.system])
    return _said(set_pitch(project, Side(side), int(number), pitch), taken.key, None)


def _pitched(taken: Taken, side: Side, number: int, wanted: float, *, free: bool) -> Shaped:
    """The slope turned about its foot so that it passes under the handle's new height."""
    project = taken.project
    rise = _rise(project, side, number)
    run = abs(taken.handle.at[0] - rise.foot[0])
    system = project.system
    parts = FINE[system] if free else WHOLE[system]
    pitch = stepped(max(0.0, wanted - rise.foot[1]) / run, system, parts)
    snapped = None if free else message("shape.whole")
    return _said(set_pitch(project, side, number, pitch), taken.key, snapped)


def _snaps(taken: Taken, wanted: float) -> Iterator[Snap]:
    """What a handle is drawn to near a wanted place, beside the tape."""
    room = taken.project.room
    cut = section_of(room)
    if taken.key == "eave/left" and room.right is not None:
        yield room.right.eave_height.mm, message("shape.level")
    elif taken.key == "eave/right" and room.left is not None:
        yield room.left.eave_height.mm, message("shape.level")
    elif taken.handle.key == "ridge" and cut.ridge is not None:
        if taken.across:
            yield cut.width / 2, message("shape.middle")
        left, right = (_last(cut, side) for side in Side)
        alike = not taken.across and _alike(left, right)
        yield from _whole(taken, left, wanted, "both" if alike else "left")
        yield from _whole(taken, right, wanted, "both" if alike else "right")


def _alike(left: Rise, right: Rise) -> bool:
    """Whether two stretches that meet at the ridge have the same run and rise."""
    level = abs(left.foot[1] - right.foot[1]) < _CLOSE
    return level and abs(left.head[0] - left.foot[0] - right.foot[0] + right.head[0]) < _CLOSE


def _whole(taken: Taken, last: Rise, wanted: float, where: str) -> Iterator[Snap]:
    """The place of the ridge near a wanted one at which a slope has a whole pitch."""
    way, system = 1.0 if last.side is Side.LEFT else -1.0, taken.project.system
    (foot, low), (ridge, height) = last.foot, taken.handle.at
    run = ((wanted if taken.across else ridge) - foot) * way
    rise = (height if taken.across else wanted) - low
    if run <= 0 or rise <= 0:
        return
    pitch = stepped(rise / run, system, WHOLE[system])
    if pitch.tangent > 0:
        at = foot + way * rise / pitch.tangent if taken.across else low + run * pitch.tangent
        yield at, message(f"shape.whole-{where}", pitch=pitch.text)


def _last(cut: RoomSection, side: Side) -> Rise:
    """The stretch of a slope that reaches its top."""
    return max((r for r in cut.rises if r.side is side), key=lambda r: r.number)


def _rise(project: Project, side: Side, number: int) -> Rise:
    rise = section_of(project.room).rise(side, number)
    if rise is None:
        raise LookupError(f"the {side.value} slope has no stretch {number}")
    return rise


def _drawn(
    wanted: float, snaps: tuple[Snap, ...], grip: Grip, step: float
) -> tuple[float, Message | None]:
    """The place a wanted one is drawn to: the nearest snap in reach, else a step of the tape."""
    near = [(abs(at - wanted), n) for n, (at, _) in enumerate(snaps)]
    if near and min(near)[0] <= grip.reach:
        return snaps[min(near)[1]]
    size = step if grip.free else grip.step
    return round(wanted / size) * size, None


def _said(project: Project, key: str, snapped: Message | None) -> Shaped:
    at = told(project.room, key)
    if snapped is None:
        return Shaped(project, message("shape.said", at=at))
    return Shaped(project, message("shape.snapped", at=at, snap=snapped))
