"""What of the section can be taken hold of, and where it stands; model mm, no Qt."""

import enum

import msgspec

from core.drawing.section_figures import level_stretch
from core.model import Room, Side
from core.roof import Rise, RoomSection, section_of
from gui.edits.shaping import likely_ceiling
from gui.sketcher.camera import XY

_CEILING = 0.32
"""How far along the flat ceiling its handle stands: clear of the ridge and of its own figure."""


class Ways(enum.Enum):
    """Which ways a handle can be pulled."""

    UP = "up"
    ACROSS = "across"
    BOTH = "both"


class Handle(msgspec.Struct, frozen=True):
    """A handle: the key of the number that it changes, where it stands, and the ways it goes.

    What is `missing` is not there yet: it comes with the first pull.
    """

    key: str
    at: XY
    ways: Ways = Ways.UP
    missing: bool = False


def handles(room: Room) -> tuple[Handle, ...]:
    """The handles of a room from the left eave over the ridge to the right, then the rest."""
    cut = section_of(room)
    found: list[Handle] = []
    if room.left is not None:
        found.append(Handle("eave/left", (0.0, room.left.eave_height.mm)))
    found += [h for rise in cut.rises if rise.side is Side.LEFT for h in _of_rise(rise)]
    if cut.ridge is not None:
        found.append(Handle("ridge", cut.ridge, Ways.BOTH))
    right = [h for rise in cut.rises if rise.side is Side.RIGHT for h in reversed(_of_rise(rise))]
    found += right
    if room.right is not None:
        found.append(Handle("eave/right", (cut.width, room.right.eave_height.mm)))
    return (*found, *_ceiling(room, cut), Handle("width", (cut.width, 0.0), Ways.ACROSS))


def _ceiling(room: Room, cut: RoomSection) -> tuple[Handle, ...]:
    """The handle of the flat ceiling, or of one that might come in; none where it lies too high."""
    stated = room.flat_ceiling
    height = stated.mm if stated is not None else likely_ceiling(room)
    level = level_stretch(cut.rafters, height, cut.width)
    if level is None:
        return ()
    x = level[0] + (level[1] - level[0]) * _CEILING
    return (Handle("ceiling", (x, height), missing=stated is None),)


def _of_rise(rise: Rise) -> tuple[Handle, ...]:
    """The change of pitch that a stretch begins with, and its pitch in the middle of it."""
    where = f"{rise.side.value}/{rise.number}"
    middle = ((rise.foot[0] + rise.head[0]) / 2, (rise.foot[1] + rise.head[1]) / 2)
    pitch = Handle(f"pitch/{where}", middle)
    return (Handle(f"break/{where}", rise.foot, Ways.ACROSS), pitch) if rise.number else (pitch,)
