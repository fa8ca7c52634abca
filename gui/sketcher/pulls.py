"""Pulling a thing along the wall: from where it was and how far it is pulled to a new project.

No Qt. The place is always reckoned from where the thing stood when it was taken hold of, never
from the frame before, so that the same pull gives the same place by whatever way it came there.
"""

from collections.abc import Iterator

import msgspec

from core.framing import Frame
from core.framing.moving import (
    Grip,
    Moved,
    MovedBox,
    Snap,
    box_move,
    movable,
    opening_move,
    sill_move,
    stud_move,
)
from core.job import WallResult
from core.lengths import System, Tape
from core.model import Opening, Project
from core.wording import Message, Mm, message
from gui.edits import Refusal, move_box, move_opening, move_stud, set_fixture, set_opening, set_zone
from gui.edits.stating import stated
from gui.sketcher.camera import XY
from gui.things import Kind, Thing, name_of, thing_of

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
    """The project with the thing in its new place, and a line that says where that is.

    `why` tells alone what it came to rest at: a mark, an edge, a line, the end of its way.
    """

    project: Project
    said: Message
    why: Message | None = None


def take(project: Project, result: WallResult, key: str) -> Hold | None:
    """A hold on the thing with this key; None if it stays where it is."""
    thing = thing_of(result.wall, key)
    if thing is None or result.frame is None:
        return None
    start = _start(result, result.frame, key, thing)
    return Hold(project, result, result.frame, key, thing, start) if start else None


def pull(hold: Hold, by: XY, grip: Grip) -> Pulled:
    """The thing pulled by (x, y) mm; Refusal if its new place cannot be stated."""
    match hold.thing.kind:
        case Kind.BOX:
            return _pull_box(hold, by, grip)
        case Kind.OPENING:
            return _pull_opening(hold, by, grip)
        case Kind.FIXTURE:
            return _pull_fixture(hold, by, grip)
        case Kind.ZONE:
            return _pull_zone(hold, by, grip)
    moved = stud_move(hold.result.wall, hold.frame, hold.key, hold.start[0] + by[0], grip)
    project = move_stud(hold.project, hold.letter, hold.key, moved.left)
    return _pulled(hold, project, moved, grip)


def _pull_box(hold: Hold, by: XY, grip: Grip) -> Pulled:
    corner = (hold.start[0] + by[0], hold.start[1] + by[1])
    return _set_down(hold, box_move(hold.result.wall, hold.frame, hold.thing.id, corner, grip))


def _pull_opening(hold: Hold, by: XY, grip: Grip) -> Pulled:
    """An opening along the wall; a window up or down too, once it is pulled well out of its row."""
    wall, name = hold.result.wall, hold.thing.id
    if hold.start[1] > 0 and abs(by[1]) > max(_OUT_OF_ROW * grip.reach, abs(by[0])):
        risen = sill_move(wall, hold.frame, name, hold.start[1] + by[1], grip)
        sill, tall = risen.left, _tall(wall.opening(name))
        changes = {"sill": stated(hold.project, sill), "head": stated(hold.project, sill + tall)}
        project = set_opening(hold.project, hold.letter, name, **changes)
        return _pulled(hold, project, risen, grip, "drag.sill")
    moved = opening_move(wall, hold.frame, name, hold.start[0] + by[0], grip)
    project = move_opening(hold.project, hold.letter, name, moved.left)
    return _pulled(hold, project, moved, grip)


def _pull_fixture(hold: Hold, by: XY, grip: Grip) -> Pulled:
    """A fixture along the wall and up or down, by tape steps, within the wall."""
    fixture = next(f for f in hold.result.wall.fixtures if f.id == hold.thing.id)
    left, height = fixture.left.mm + by[0], fixture.height.mm + by[1]
    if not grip.free:
        left, height = (round(mm / grip.step) * grip.step for mm in (left, height))
    left = min(max(left, 0.0), max(hold.result.wall.run - fixture.width.mm, 0.0))
    to = {"left": stated(hold.project, left), "height": stated(hold.project, height)}
    project = set_fixture(hold.project, hold.letter, fixture.id, **to)
    said = message("drag.fixture", what=hold.named, left=Mm(left), height=Mm(height))
    return Pulled(project, said)


def _pull_zone(hold: Hold, by: XY, grip: Grip) -> Pulled:
    """A kept-clear zone any way, by tape steps, within the wall and off the floor's underside."""
    zone = next(z for z in hold.result.wall.kept_clear if z.id == hold.thing.id)
    left, bottom = hold.start[0] + by[0], hold.start[1] + by[1]
    if not grip.free:
        left, bottom = (round(mm / grip.step) * grip.step for mm in (left, bottom))
    left = min(max(left, 0.0), max(hold.result.wall.run - zone.width.mm, 0.0))
    bottom = max(bottom, 0.0)
    to = {"left": stated(hold.project, left), "bottom": stated(hold.project, bottom)}
    project = set_zone(hold.project, hold.letter, zone.id, **to)
    said = message("drag.zone", what=hold.named, left=Mm(left), bottom=Mm(bottom))
    return Pulled(project, said)


_OUT_OF_ROW = 3.0
"""How many reaches of the snapping a window is pulled up or down before it leaves its height."""


def _tall(opening: Opening) -> float:
    return opening.head.mm - opening.sill.mm


def _pulled(
    hold: Hold, project: Project, moved: Moved, grip: Grip, line: str = "drag.place"
) -> Pulled:
    """A project with where the thing is in it, and what it came to rest at."""
    why = _why(hold, moved, grip)
    at = message(line, what=hold.named, left=Mm(moved.left))
    rested = moved.snap not in (Snap.STEP, Snap.FREE)
    return Pulled(project, message("drag.at", place=at, why=why), why if rested else None)


def _why(hold: Hold, moved: Moved, grip: Grip) -> Message:
    if moved.snap is Snap.LIMIT:
        return message("drag.limit", why=stop_message(hold.result, moved))
    if moved.snap is Snap.STEP:
        return message("drag.step", step=Mm(grip.step))
    if moved.other:
        return message(f"drag.{moved.snap.value}", other=name_of(hold.result, moved.other))
    return message("drag.face-bare" if moved.snap is Snap.FACE else f"drag.{moved.snap.value}")


def stop_message(result: WallResult, moved: Moved) -> Message:
    """Why a thing goes no farther."""
    if moved.other:
        return message("stop.thing", other=name_of(result, moved.other))
    return message(f"stop.{moved.stop.value}" if moved.stop else "stop.end")


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
    return Pulled(hold.project, message("drag.box-last", what=hold.named))


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
    if thing.kind is Kind.FIXTURE:
        fixture = next(f for f in result.wall.fixtures if f.id == thing.id)
        return fixture.left.mm, fixture.height.mm
    if thing.kind is Kind.ZONE:
        zone = next(z for z in result.wall.kept_clear if z.id == thing.id)
        return zone.left.mm, zone.bottom.mm
    member = frame.member(key)
    return (member.left, member.bottom) if member and movable(member) else None


def _set_down(hold: Hold, moved: MovedBox) -> Pulled:
    project = move_box(
        hold.project, hold.letter, hold.thing.id, moved.stud, moved.side, moved.height
    )
    stud = hold.result.label_of.get(moved.stud, moved.stud)
    side = f"drag.box-{moved.side.value}"
    said = message(side, what=hold.named, height=Mm(moved.height), stud=stud)
    if moved.snap is not Snap.LINE:
        return Pulled(project, said)
    line = message("drag.line", other=name_of(hold.result, moved.other))
    return Pulled(project, message("drag.at", place=said, why=line), line)
