"""Parts from the tray held over the wall: where they would stand, or why they cannot. No Qt."""

import enum
from collections.abc import Callable

import msgspec

from core.checks import zone_rect
from core.framing import Frame, fit
from core.framing.layout import layout_lefts
from core.framing.moving import Grip, MovedBox, Snap, box_move, opening_move
from core.framing.snapping import Moved, Target, settle
from core.job import WallResult
from core.model import Box, Opening, OpeningKind, Project, Side, Wall
from core.wording import Message, Mm, message
from gui.edits import (
    Refusal,
    add_fixture,
    add_opening,
    add_stud,
    add_zone,
    put_box,
    set_blocking,
    usual,
)
from gui.edits.openings import stem_of_kind
from gui.edits.stating import next_id, stated
from gui.edits.zones import new_zone
from gui.sketcher.camera import XY
from gui.sketcher.hit import Outline, fixture_outline, rectangle
from gui.sketcher.pulls import stop_message
from gui.things import name_of


class Part(enum.Enum):
    """What lies in the tray; the value names its words in the catalogue."""

    STUD = "stud"
    DOOR = "door"
    ACCESS_DOOR = "access-door"
    WINDOW = "window"
    BOX = "box"
    SWITCH = "switch"
    BLOCKING = "blocking"
    BACKING = "fixture"
    KEPT_CLEAR = "kept-clear"


_OPENINGS = {
    Part.DOOR: OpeningKind.DOOR,
    Part.ACCESS_DOOR: OpeningKind.ACCESS_DOOR,
    Part.WINDOW: OpeningKind.WINDOW,
}

_HERE = 1.0
"""As near as this to where it is wanted (mm), a part that can stand there is taken to do so."""

_OWN = 3.0
"""How many reaches of the snapping a usual height draws a part to itself."""


class Ghost(msgspec.Struct, frozen=True):
    """A part over the wall: its true outline (model mm), and the project with it in place.

    Where it cannot stand there is no project, and `said` tells why. `room` are stretches of the
    floor (mm) within which all of an opening has to stay; `key` is what is held once it is placed.
    """

    part: Part
    outline: Outline
    said: Message
    project: Project | None = None
    key: str | None = None
    room: tuple[tuple[float, float], ...] = ()


def ghost_at(project: Project, result: WallResult, part: Part, at: XY, grip: Grip) -> Ghost | None:
    """The part with its middle wanted at a point of the wall, mm; None over a bare sheet."""
    frame = result.frame
    if frame is None:
        return None
    if part in _OPENINGS:
        return _opening(project, result, frame, part, at, grip)
    make = {
        Part.STUD: _stud,
        Part.BOX: _box,
        Part.SWITCH: _box,
        Part.BLOCKING: _blocking,
        Part.BACKING: _backing,
        Part.KEPT_CLEAR: _zone,
    }[part]
    return make(project, result, frame, part, at, grip)


def start_of(project: Project, result: WallResult, part: Part) -> XY:
    """Where a part is held at first when no pointer says it: the wall's middle, at usual height."""
    system, wall = project.system, result.wall
    middle = wall.run / 2
    if part in (Part.BOX, Part.SWITCH):
        return middle, _usual_box(project, wall, part).height.mm
    if part in _OPENINGS:
        opening = usual.opening(system, _OPENINGS[part], "x", wall)
        return middle, (opening.sill.mm + opening.head.mm) / 2
    if part is Part.BACKING:
        return middle, usual.fixture(system, "x", wall).height.mm
    return middle, usual.length(system, "48 in" if system.value == "inch" else "1200 mm").mm


def _stud(
    project: Project, result: WallResult, frame: Frame, part: Part, at: XY, grip: Grip
) -> Ghost:
    wall = result.wall
    thickness, foot = wall.stud.thickness.mm, wall.sole_plate.thickness.mm
    lefts: list[Target] = [(left, "") for _, left in layout_lefts(wall)]
    moved = settle(at[0] - thickness / 2, (), ((Snap.LAYOUT, lefts),), grip)
    left, right = moved.left, moved.left + thickness
    tops = ((right, frame.near.height(right)), (left, frame.near.height(left)))
    outline = ((left, foot), (right, foot), *tops)
    return _tried(
        result,
        part,
        outline,
        moved.left,
        lambda: add_stud(project, wall.letter, moved.left),
        "added",
    )


def _opening(
    project: Project, result: WallResult, frame: Frame, part: Part, at: XY, grip: Grip
) -> Ghost:
    wall, kind = result.wall, _OPENINGS[part]
    new = usual.opening(project.system, kind, next_id(wall, stem_of_kind(kind)), wall)
    new = _at_height(project, frame, new, at[1], grip)
    together = msgspec.structs.replace(wall, openings=(*wall.openings, new))
    wanted = at[0] - new.width.mm / 2
    moved = opening_move(together, frame, new.id, wanted, grip)
    room = _room(together, frame, new)
    far = moved.snap is Snap.LIMIT and abs(moved.left - wanted) > max(grip.reach, _HERE)
    left = wanted if far or not room else moved.left
    outline = rectangle(left, new.sill.mm, left + new.width.mm, new.head.mm)
    if (far or not room) and wall.stands_on is None:
        return Ghost(part, outline, _no_place(result, part, moved, bool(room)), room=room)

    def make() -> Project:
        return add_opening(project, wall.letter, kind, moved.left, new.sill)

    ghost = _tried(result, part, outline, moved.left, make, "openings")
    return msgspec.structs.replace(ghost, room=room)


def _room(wall: Wall, frame: Frame, opening: Opening) -> tuple[tuple[float, float], ...]:
    """The stretches of the floor that an opening has to stay within."""
    others = tuple(p.opening for p in frame.openings if p.fit.fits)
    ranges = fit(wall, opening, (frame.near, frame.far), others).ranges
    return tuple((low, high + opening.width.mm) for low, high in ranges)


def _at_height(project: Project, frame: Frame, opening: Opening, y: float, grip: Grip) -> Opening:
    """A window with its middle at a height, its usual one or in line with another's if near."""
    if opening.sill.mm <= 0:
        return opening
    tall = opening.head.mm - opening.sill.mm
    lines: list[Target] = [(p.opening.head.mm - tall, "") for p in frame.openings]
    reach = msgspec.structs.replace(grip, reach=grip.reach * _OWN)
    targets = ((Snap.OWN, [(opening.sill.mm, "")]), (Snap.LINE, lines))
    sill = max(settle(y - tall / 2, (), targets, reach).left, 0.0)
    if sill == opening.sill.mm:
        return opening
    low, head = stated(project, sill), stated(project, sill + tall)
    return msgspec.structs.replace(opening, sill=low, head=head)


def _box(
    project: Project, result: WallResult, frame: Frame, part: Part, at: XY, grip: Grip
) -> Ghost:
    wall = result.wall
    new = _usual_box(project, wall, part)
    own = abs(at[1] - new.height.mm) <= grip.reach * _OWN and not grip.free
    y = new.height.mm if own else at[1]
    together = msgspec.structs.replace(wall, boxes=(*wall.boxes, new))
    corner = (at[0] - new.width.mm / 2, y - new.tall.mm / 2)
    moved: MovedBox = box_move(together, frame, new.id, corner, grip)
    placed = msgspec.structs.replace(
        new, stud=moved.stud, side=moved.side, height=stated(project, moved.height)
    )
    stud = frame.member(moved.stud)
    left = corner[0]
    if stud is not None:
        left = stud.right if moved.side is Side.RIGHT else stud.left - new.width.mm
    bottom = moved.height - new.tall.mm / 2
    outline = rectangle(left, bottom, left + new.width.mm, bottom + new.tall.mm)
    said = message(
        f"drag.box-{moved.side.value}",
        what=message(f"part.{part.value}"),
        height=Mm(moved.height),
        stud=name_of(result, moved.stud),
    )
    ghost = _tried(
        result, part, outline, left, lambda: put_box(project, wall.letter, placed), "boxes"
    )
    return msgspec.structs.replace(ghost, said=said) if ghost.project else ghost


def _usual_box(project: Project, wall: Wall, part: Part) -> Box:
    make = usual.switch if part is Part.SWITCH else usual.box
    stem = "switch" if part is Part.SWITCH else "box"
    return make(project.system, next_id(wall, stem), "", Side.RIGHT)


def _blocking(
    project: Project, result: WallResult, frame: Frame, part: Part, at: XY, grip: Grip
) -> Ghost:
    """A row of blocks from end to end at a height."""
    del frame
    wall = result.wall
    height = stated(project, at[1] if grip.free else round(at[1] / grip.step) * grip.step)
    half, end = wall.stud.thickness.mm / 2, wall.stud.thickness.mm
    outline = rectangle(end, height.mm - half, wall.run - end, height.mm + half)
    rows = wall.blocking.heights if wall.blocking else ()

    def make() -> Project:
        heights = tuple(sorted((*rows, height), key=lambda row: row.mm))
        return set_blocking(project, wall.letter, heights=heights)

    ghost = _tried(result, part, outline, height.mm, make, "")
    said = message("ghost.high", what=message("part.blocking"), height=Mm(height.mm))
    return msgspec.structs.replace(ghost, said=said) if ghost.project else ghost


def _backing(
    project: Project, result: WallResult, frame: Frame, part: Part, at: XY, grip: Grip
) -> Ghost:
    del frame
    wall = result.wall
    new = usual.fixture(project.system, next_id(wall, "backing"), wall)
    left, height = at[0] - new.width.mm / 2, at[1]
    if not grip.free:
        left, height = (round(mm / grip.step) * grip.step for mm in (left, height))
    left = min(max(left, 0.0), max(wall.run - new.width.mm, 0.0))
    placed = msgspec.structs.replace(
        new, left=stated(project, left), height=stated(project, height)
    )

    def make() -> Project:
        return add_fixture(project, wall.letter, placed)

    ghost = _tried(result, part, fixture_outline(placed), left, make, "fixtures")
    said = message("drag.fixture", what=message("part.fixture"), left=Mm(left), height=Mm(height))
    return msgspec.structs.replace(ghost, said=said) if ghost.project else ghost


def _zone(
    project: Project, result: WallResult, frame: Frame, part: Part, at: XY, grip: Grip
) -> Ghost:
    """A kept-clear zone; what stands in it is told of once it is placed."""
    del frame
    wall = result.wall
    new = new_zone(project, wall.letter)
    left, bottom = at[0] - new.width.mm / 2, at[1] - new.height.mm / 2
    if not grip.free:
        left, bottom = (round(mm / grip.step) * grip.step for mm in (left, bottom))
    left = min(max(left, 0.0), max(wall.run - new.width.mm, 0.0))
    bottom = max(bottom, 0.0)
    placed = msgspec.structs.replace(
        new, left=stated(project, left), bottom=stated(project, bottom)
    )

    def make() -> Project:
        return add_zone(project, wall.letter, placed)

    ghost = _tried(result, part, rectangle(*zone_rect(placed)), left, make, "kept_clear")
    what = message("part.kept-clear")
    said = message("drag.zone", what=what, left=Mm(left), bottom=Mm(bottom))
    return msgspec.structs.replace(ghost, said=said) if ghost.project else ghost


def _tried(
    result: WallResult,
    part: Part,
    outline: Outline,
    left: float,
    make: Callable[[], Project],
    things: str,
) -> Ghost:
    """The ghost with the project that its edit makes, or with why that is refused.

    `things` is the field of the wall that it adds to; what was added is the last there.
    """
    try:
        project = make()
    except Refusal as refusal:
        return Ghost(part, outline, refusal.message)
    letter = result.wall.letter
    key = f"{letter}/{getattr(project.wall(letter), things)[-1].id}" if things else None
    said = message("drag.place", what=message(f"part.{part.value}"), left=Mm(left))
    return Ghost(part, outline, said, project, key)


def _no_place(result: WallResult, part: Part, moved: Moved, somewhere: bool) -> Message:
    """Why an opening cannot stand there, and the nearest place where it can."""
    what = message(f"part.{part.value}")
    if not somewhere:
        return message("ghost.nowhere", what=what, letter=result.wall.letter)
    why = stop_message(result, moved)
    return message("ghost.no-place", what=what, why=why, nearest=Mm(moved.left))
