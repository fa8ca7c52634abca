"""Copies of things along the wall, each the same distance on from the one before."""

from collections.abc import Iterable

import msgspec

from core.framing import PlacedBox
from core.framing.moving import Grip, box_move
from core.job import WallResult
from core.lengths import System
from core.model import AddedStud, Box, ClearZone, Fixture, Opening, Project, Wall
from core.wording import Mm, message
from gui.edits.openings import stem_of
from gui.edits.refusal import Refusal
from gui.edits.sense import check_wall
from gui.edits.stating import next_id, stated, worked
from gui.edits.together import reason, stands
from gui.things import Kind, Thing, name_of, thing_of

_EXACT = Grip(step=1.0, reach=0.0, free=True)

_TRIES = 120
"""How many distances are tried to find one that fits."""

MOST = 50
"""The most copies that are made at once."""


class Copies(msgspec.Struct, frozen=True):
    """A project with copies in it, and the keys of the last of them, in the order of what was."""

    project: Project
    keys: tuple[str, ...]


def repeat(
    project: Project, letter: str, keys: tuple[str, ...], apart: float, count: int = 1
) -> Copies:
    """The things with these keys again `apart` mm to the right (negative: left), `count` times.

    Refused, with how many copies or what distance would do, if a copy has no place.
    """
    if not 1 <= count <= MOST:
        nearest = min(max(count, 1), MOST)
        raise Refusal(message("repeat.count", count=count, most=MOST, nearest=nearest))
    made = Copies(project, keys)
    for n in range(count):
        try:
            made = _once(made.project, letter, keys, apart * (n + 1))
        except Refusal as refusal:
            raise _too_many(project, letter, keys, apart, n, refusal) from refusal
    return made


def free_distance(project: Project, letter: str, keys: tuple[str, ...]) -> float:
    """The least usual distance, mm, at which one copy has a place; to the left if there is none.

    Where there is none at all, the usual distance.
    """
    least = _usual(worked(project, letter), keys)
    each = 25.4 if project.system is System.INCH else 10.0
    ahead = [least + n * each for n in range(_TRIES)]
    right = _first(project, letter, keys, ahead)
    return right or _first(project, letter, keys, (-way for way in ahead)) or least


def _first(
    project: Project, letter: str, keys: tuple[str, ...], ways: Iterable[float]
) -> float | None:
    run = project.wall(letter).run
    for way in ways:
        if abs(way) > run:
            break
        try:
            _once(project, letter, keys, way)
        except Refusal:
            continue
        return way
    return None


def _usual(result: WallResult, keys: tuple[str, ...]) -> float:
    """How far on a copy is put at first: mid-bay for a stud, beside for an opening, a bay else."""
    wall, thing = result.wall, thing_of(result.wall, keys[0])
    spacing = wall.layout.spacing.mm
    if thing is None:
        return spacing
    if thing.kind is Kind.OPENING:
        return wall.opening(thing.id).width.mm + 4 * wall.stud.thickness.mm
    if thing.kind is Kind.FIXTURE:
        return next(f.width.mm for f in wall.fixtures if f.id == thing.id)
    return spacing / 2 if thing.kind is Kind.STUD else spacing


def _once(project: Project, letter: str, keys: tuple[str, ...], by: float) -> Copies:
    """One copy of each, `by` mm from where it stands."""
    before = worked(project, letter)
    wall = project.wall(letter)
    new: dict[str, str] = {}
    for key in sorted(keys, key=lambda k: _is_box(project.wall(letter), k)):
        wall, name = _copied(project, before, wall, key, by, new)
        new[key] = f"{letter}/{name}"
    changed = project.with_wall(wall)
    after = worked(changed, letter)
    for key in keys:
        if not stands(after, new[key]):
            why = message(f"stop.{reason(after, new[key])}")
            raise Refusal(message("edit.no-place-there", what=name_of(before, key), why=why))
    return Copies(check_wall(changed, letter), tuple(new[key] for key in keys))


def _is_box(wall: Wall, key: str) -> bool:
    """Boxes come last: they may hang on a stud that is copied as well."""
    thing = thing_of(wall, key)
    return thing is not None and thing.kind is Kind.BOX


def _copied(
    project: Project, result: WallResult, wall: Wall, key: str, by: float, new: dict[str, str]
) -> tuple[Wall, str]:
    """The wall with a copy of one thing, and the copy's id."""
    thing = thing_of(wall, key)
    replace = msgspec.structs.replace
    match thing:
        case Thing(kind=Kind.OPENING):
            opening = wall.opening(thing.id)
            left = stated(project, opening.left.mm + by)
            door: Opening = replace(opening, id=next_id(wall, stem_of(opening)), left=left)
            return replace(wall, openings=(*wall.openings, door)), door.id
        case Thing(kind=Kind.FIXTURE):
            fixture = next(f for f in wall.fixtures if f.id == thing.id)
            left = stated(project, fixture.left.mm + by)
            rail: Fixture = replace(fixture, id=next_id(wall, "backing"), left=left)
            return replace(wall, fixtures=(*wall.fixtures, rail)), rail.id
        case Thing(kind=Kind.ZONE):
            zone = next(z for z in wall.kept_clear if z.id == thing.id)
            left = stated(project, zone.left.mm + by)
            clear: ClearZone = replace(zone, id=next_id(wall, "kept-clear"), left=left)
            return replace(wall, kept_clear=(*wall.kept_clear, clear)), clear.id
        case Thing(kind=Kind.BOX):
            placed = next(p for p in result.boxes if p.box.id == thing.id)
            return _box(result, wall, placed, by, new)
        case Thing(kind=Kind.STUD):
            member = result.frame.member(key) if result.frame else None
            if member is not None:
                stud = AddedStud(next_id(wall, "stud"), stated(project, member.left + by))
                return replace(wall, added=(*wall.added, stud)), stud.id
    raise Refusal(message("repeat.stays", what=name_of(result, key)))


def _box(
    result: WallResult, wall: Wall, placed: PlacedBox, by: float, new: dict[str, str]
) -> tuple[Wall, str]:
    """A box on the copy of its stud, or on the side of a stud nearest to where it would be."""
    name = next_id(wall, "box")
    box: Box = msgspec.structs.replace(placed.box, id=name)
    if box.stud in new:
        box = msgspec.structs.replace(box, stud=new[box.stud])
    elif result.frame is not None:
        alone = msgspec.structs.replace(wall, boxes=(box,))
        wanted = (placed.left + by, placed.bottom)
        moved = box_move(alone, result.frame, name, wanted, _EXACT)
        box = msgspec.structs.replace(box, stud=moved.stud, side=moved.side)
    return msgspec.structs.replace(wall, boxes=(*wall.boxes, box)), name


def _too_many(
    project: Project,
    letter: str,
    keys: tuple[str, ...],
    apart: float,
    fits: int,
    refusal: Refusal,
) -> Refusal:
    """How many copies have a place, or at what distance one has."""
    if fits:
        return Refusal(message("repeat.fits", fits=fits, apart=Mm(abs(apart)), why=refusal.message))
    each = 25.4 if project.system is System.INCH else 10.0
    around = (apart + n * each * side for n in range(1, _TRIES // 2) for side in (1, -1))
    nearest = _first(project, letter, keys, (d for d in around if d * apart > 0))
    if nearest is None:
        return refusal
    return Refusal(message("repeat.nearest", why=refusal.message, nearest=Mm(abs(nearest))))
