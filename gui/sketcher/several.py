"""Several things held at once: pulled, pushed and named as one. No Qt."""

import math
from collections.abc import Callable

import msgspec

from core.framing.layout import layout_lefts
from core.framing.moving import Grip, Snap
from core.framing.snapping import settle
from core.job import WallResult
from core.model import Project
from core.wording import Message, Mm, message
from gui.edits import Refusal, move_together
from gui.sketcher.camera import XY
from gui.sketcher.choosing import once
from gui.sketcher.pulls import Hold, Pulled, pull, take
from gui.things import Kind

_ALONG = frozenset({Kind.STUD, Kind.CRIPPLE, Kind.OPENING, Kind.FIXTURE, Kind.ZONE})
_UP = frozenset({Kind.BOX, Kind.FIXTURE, Kind.ZONE})


class Several(msgspec.Struct, frozen=True):
    """Holds on several things of one wall; the first is what snaps."""

    project: Project
    result: WallResult
    holds: tuple[Hold, ...]

    @property
    def key(self) -> str:
        """The key of the chief thing."""
        return self.holds[0].key

    @property
    def said(self) -> Message:
        """What they are called together."""
        return message("held.several", count=len(self.holds))


def take_all(project: Project, result: WallResult, keys: tuple[str, ...]) -> Hold | Several | None:
    """A hold on all of the things with these keys that can be moved; None if none can."""
    holds = [hold for hold in (take(project, result, key) for key in once(result, keys)) if hold]
    if len(holds) < 2:
        return holds[0] if holds else None
    return Several(project, result, tuple(holds))


def named(held: Hold | Several) -> Message | str:
    """What that which is held is called."""
    return held.named if isinstance(held, Hold) else held.said


def pull_held(held: Hold | Several, by: XY, grip: Grip) -> Pulled:
    """What is held pulled by (x, y) mm; Refusal if it has no place that can be stated."""
    if isinstance(held, Hold):
        return pull(held, by, grip)
    way, why = _way(held, by, grip)
    return _as_far_as_it_goes(held, way, why)


def push(held: Several, by: XY) -> Pulled:
    """Several things pushed by exactly (x, y) mm, or as far as they go on the tape."""
    return _as_far_as_it_goes(held, _possible(held, by), None)


def _way(held: Several, by: XY, grip: Grip) -> tuple[XY, Message | None]:
    """How far the pull goes when the chief thing has snapped, and to what it did."""
    chief, (x, y) = held.holds[0], _possible(held, by)
    if grip.free:
        return (x, y), message("drag.free")
    y = round(y / grip.step) * grip.step
    wall = chief.result.wall
    lefts = [(left, "") for _, left in layout_lefts(wall)]
    if chief.thing.kind is Kind.OPENING:
        lefts = [(left + 2 * wall.stud.thickness.mm, "") for left, _ in lefts]
    targets = ((Snap.LAYOUT, lefts if chief.thing.kind in _ALONG else []),)
    moved = settle(chief.start[0] + x, (), targets, grip)
    why = message("drag.layout") if moved.snap is Snap.LAYOUT else None
    return (moved.left - chief.start[0] if x else 0.0, y), why


def _possible(held: Several, by: XY) -> XY:
    """What of a way any of the things can go."""
    kinds = {hold.thing.kind for hold in held.holds}
    return by[0] if kinds & _ALONG else 0.0, by[1] if kinds & _UP else 0.0


def _as_far_as_it_goes(held: Several, way: XY, why: Message | None) -> Pulled:
    """All of them moved that way, or to the last place on it that fits, in steps of the tape."""
    letter = held.result.wall.letter
    keys = tuple(hold.key for hold in held.holds)

    def moved(by: XY) -> Project:
        return move_together(held.project, letter, keys, by)

    try:
        return Pulled(moved(way), _said(held, way, why), why)
    except Refusal as refusal:
        way = _last(moved, way, held.project.habits.tape.step_mm)
        limit = message("drag.limit", why=refusal.message)
        return Pulled(moved(way), _said(held, way, limit), limit)


def _last(moved: Callable[[XY], Project], way: XY, step: float) -> XY:
    """The farthest of the way, in whole steps, that fits."""
    good, bad = 0, math.ceil(max(map(abs, way)) / step)
    while bad - good > 1:
        middle = (good + bad) // 2
        try:
            moved(_steps(way, middle * step))
            good = middle
        except Refusal:
            bad = middle
    return _steps(way, good * step)


def _steps(way: XY, most: float) -> XY:
    """The way, cut off at `most` mm on either axis."""
    x, y = (math.copysign(min(abs(mm), most), mm) for mm in way)
    return x, y


def _said(held: Several, way: XY, why: Message | None) -> Message:
    """How far they have gone, and what they came to rest at."""
    where = message("drag.nowhere")
    if way[0]:
        where = message("drag.right" if way[0] > 0 else "drag.left", by=Mm(abs(way[0])))
    elif way[1]:
        where = message("drag.up" if way[1] > 0 else "drag.down", by=Mm(abs(way[1])))
    place = message("drag.several", what=held.said, way=where)
    return message("drag.at", place=place, why=why) if why else place
