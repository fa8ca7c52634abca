"""Pulling a thing along the wall: from where it was and how far it is pulled to a new project.

No Qt. The place is always reckoned from where the thing stood when it was taken hold of, never
from the frame before, so that the same pull gives the same place by whatever way it came there.
"""

from collections.abc import Iterator

import msgspec

from core.framing import Frame, spoken
from core.framing.moving import (
    Grip,
    MovedBox,
    box_move,
    movable,
    opening_move,
    stud_move,
)
from core.job import WallResult
from core.lengths import System, Tape
from core.model import Project
from core.wording import Message, Mm, message
from gui.edits import Refusal, move_box, move_opening, move_stud
from gui.sketcher.camera import XY
from gui.things import Kind, Thing, thing_of

REACH_PX = 5.0
"""How near, on screen, a thing has to come to a place to be drawn to it."""

_COARSER = {System.INCH: (1, 2, 4, 8, 16), System.METRIC: (1, 2, 5, 10)}
"""Tape steps that are taken together where one alone is smaller than a px."""

_SEARCH = 12.0
"""How far apart the places are at which the next stud for a box is looked for, mm."""

_EXACT = Grip(step=1.0, reach=0.0, free=True)


class Hold(msgspec.Struct, frozen=True):
    """A thing as it was when it was taken hold of: the project, the wall's result and frame.

    `start` is where its left edge and its foot stood, mm.
    """

    project: Project
    result: WallResult
    frame: Frame
    key: str
    thing: Thing
    start: XY

    @property
    def letter(self) -> str:
        """The letter of the wall."""
        return self.result.wall.letter

    @property
    def named(self) -> str:
        """What the thing is called."""
        return name_of(self.result, self.key)


class Pulled(msgspec.Struct, frozen=True):
    """The project with the thing in its new place, and a line that says where that is."""

    project: Project
    said: Message


def name_of(result: WallResult, key: str) -> str:
    """What a thing is called: openings and boxes by their id, a piece of timber by its label."""
    thing = thing_of(result.wall, key)
    if thing is not None and thing.kind in (Kind.OPENING, Kind.BOX, Kind.FIXTURE):
        return spoken(thing.id)
    return result.label_of.get(key, key)


def take(project: Project, result: WallResult, key: str) -> Hold | None:
    """A hold on the thing with this key; None if it stays where it is."""
    thing = thing_of(result.wall, key)
    if thing is None or result.frame is None:
        return None
    start = _start(result, result.frame, key, thing)
    return Hold(project, result, result.frame, key, thing, start) if start else None


def pull(hold: Hold, by: XY, grip: Grip) -> Pulled:
    """The thing pulled by (x, y) mm; Refusal if its new place cannot be stated."""
    frame, wall, wanted = hold.frame, hold.result.wall, hold.start[0] + by[0]
    if hold.thing.kind is Kind.BOX:
        corner = (wanted, hold.start[1] + by[1])
        return _set_down(hold, box_move(wall, frame, hold.thing.id, corner, grip))
    if hold.thing.kind is Kind.OPENING:
        moved = opening_move(wall, frame, hold.thing.id, wanted, grip)
        project = move_opening(hold.project, hold.letter, hold.thing.id, moved.left)
    else:
        moved = stud_move(wall, frame, hold.key, wanted, grip)
        project = move_stud(hold.project, hold.letter, hold.key, moved.left)
    said = message(f"drag.{moved.snap.value}", what=hold.named, left=Mm(moved.left))
    return Pulled(project, said)


def grip_of(tape: Tape, scale: float, *, free: bool = False) -> Grip:
    """How a thing is held at `scale` px a mm: by tape steps no smaller than a px, or freely."""
    px = 1.0 / scale
    many = _COARSER[tape.system]
    step = next((tape.step_mm * n for n in many if tape.step_mm * n >= px), None)
    return Grip(step or tape.step_mm * many[-1], REACH_PX * px, free)


def step_of(tape: Tape, *, large: bool = False) -> float:
    """How far an arrow key moves a thing, mm: one step of the tape, or an inch or 10 mm."""
    if not large:
        return tape.step_mm
    return max(25.4 if tape.system is System.INCH else 10.0, tape.step_mm)


def beside(hold: Hold, direction: int) -> Pulled:
    """The box on the next side of a stud to the right (1) or left (-1) where it can be."""
    for moved in _sides(hold, direction):
        try:
            return _set_down(hold, moved)
        except Refusal:
            continue
    said = message("drag.limit", what=hold.named, left=Mm(hold.start[0]))
    return Pulled(hold.project, said)


def _sides(hold: Hold, direction: int) -> Iterator[MovedBox]:
    """The sides of studs that a box comes to on its way, each once, its own left out."""
    wall, (left, bottom) = hold.result.wall, hold.start
    box = wall.box(hold.thing.id)
    seen = {(box.stud, box.side)}
    for way in range(1, int(wall.run / _SEARCH) + 1):
        wanted = (left + direction * way * _SEARCH, bottom)
        moved = box_move(wall, hold.frame, box.id, wanted, _EXACT)
        if (moved.stud, moved.side) not in seen:
            seen.add((moved.stud, moved.side))
            yield moved


def _start(result: WallResult, frame: Frame, key: str, thing: Thing) -> XY | None:
    """Where the thing stands; None if it does not move."""
    if thing.kind is Kind.BOX:
        placed = next(p for p in result.boxes if p.box.id == thing.id)
        return placed.left, placed.bottom
    if thing.kind is Kind.OPENING:
        opening = result.wall.opening(thing.id)
        return opening.left.mm, opening.sill.mm
    member = frame.member(key)
    return (member.left, member.bottom) if member and movable(member) else None


def _set_down(hold: Hold, moved: MovedBox) -> Pulled:
    project = move_box(
        hold.project, hold.letter, hold.thing.id, moved.stud, moved.side, moved.height
    )
    stud = hold.result.label_of.get(moved.stud, moved.stud)
    side = f"drag.box-{moved.side.value}"
    said = message(side, what=hold.named, height=Mm(moved.height), stud=stud)
    return Pulled(project, said)
