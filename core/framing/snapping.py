"""How a moved thing comes to rest: at what is near enough, else at a tape step, within its room."""

import enum

import msgspec

from core.framing.layout import CLEAR
from core.framing.stopping import Stop


class Snap(enum.Enum):
    """What a moved thing came to rest at."""

    LAYOUT = "layout"
    FACE = "face"
    MIDDLE = "middle"
    LINE = "line"
    OWN = "own"
    STEP = "step"
    FREE = "free"
    LIMIT = "limit"


class Grip(msgspec.Struct, frozen=True):
    """How a thing is held: tape step and reach of the snapping, mm; `free` snaps to nothing."""

    step: float
    reach: float
    free: bool = False


class Moved(msgspec.Struct, frozen=True):
    """The left edge (for a window moved up or down: the sill) that a moved thing gets, mm.

    `snap` is what it came to rest at, `other` the key of the thing that it did so at, if there is
    one; `stop` tells why it goes no farther.
    """

    left: float
    snap: Snap
    other: str = ""
    stop: Stop | None = None


Target = tuple[float, str]
"""A place that a thing is drawn to, mm, and the key of what is there; "" for none."""

Targets = tuple[tuple[Snap, list[Target]], ...]

Room = tuple[tuple[float, float], ...]
"""The ranges of places, mm, that a thing may have."""


def settle(wanted: float, room: Room, targets: Targets, grip: Grip) -> Moved:
    """The wanted place pulled to the nearest target in reach, then into the room there is."""
    left, snap, other = wanted, Snap.FREE, ""
    if not grip.free:
        left, snap = _stepped(wanted, grip.step), Snap.STEP
        for kind, places in targets:
            near = [p for p in places if abs(p[0] - wanted) <= grip.reach and _free(p[0], room)]
            if near:
                (left, other), snap = min(near, key=lambda p: abs(p[0] - wanted)), kind
                break
    if _free(left, room):
        return Moved(left, snap, other)
    limits = [min(max(left, low), high) for low, high in room]
    return Moved(min(limits, key=lambda p: abs(p - left)), Snap.LIMIT)


def _free(left: float, room: Room) -> bool:
    """Whether a place is within the room; where no room is told, every place is."""
    return not room or any(low - CLEAR <= left <= high + CLEAR for low, high in room)


def _stepped(mm: float, step: float) -> float:
    return round(mm / step) * step
