"""Moving several things of a wall at once, each by the same way; refused if one has no place."""

import msgspec

from core.framing import PlacedBox
from core.framing.layout import CLEAR
from core.framing.stopping import Stop, opening_stop
from core.job import WallResult
from core.lengths import Length
from core.model import Box, ClearZone, Fixture, Opening, Project, Wall
from core.wording import message
from gui.edits.refusal import Refusal
from gui.edits.sense import check_wall
from gui.edits.stating import stated, worked
from gui.edits.studs import put_stud
from gui.things import Kind, Thing, name_of, thing_of

Way = tuple[float, float]
"""How far right and up, mm."""


def move_together(project: Project, letter: str, keys: tuple[str, ...], by: Way) -> Project:
    """The things with these keys moved by (x, y) mm.

    Studs and openings go along the wall, boxes up and down on their studs, backing both ways.
    Refused, with what has no place, if any of them no longer fits that did before.
    """
    before = worked(project, letter)
    wall = project.wall(letter)
    for key in keys:
        thing = thing_of(wall, key)
        if thing is not None:
            wall = _moved(project, before, wall, key, thing, by)
    changed = project.with_wall(wall)
    after = worked(changed, letter)
    for key in keys:
        if stands(before, key) and not stands(after, key):
            raise _refusal(before, after, key)
    return check_wall(changed, letter)


def _moved(
    project: Project, result: WallResult, wall: Wall, key: str, thing: Thing, by: Way
) -> Wall:
    """The wall with one thing stated anew."""

    def on(length: Length, mm: float) -> Length:
        return stated(project, length.mm + mm) if mm else length

    replace = msgspec.structs.replace
    match thing.kind:
        case Kind.OPENING:
            moved: tuple[Opening, ...] = tuple(
                replace(o, left=on(o.left, by[0])) if o.id == thing.id else o for o in wall.openings
            )
            return replace(wall, openings=moved)
        case Kind.BOX:
            boxes: tuple[Box, ...] = tuple(
                replace(b, height=on(b.height, by[1])) if b.id == thing.id else b
                for b in wall.boxes
            )
            return replace(wall, boxes=boxes)
        case Kind.FIXTURE:
            fixtures: tuple[Fixture, ...] = tuple(
                replace(f, left=on(f.left, by[0]), height=on(f.height, by[1]))
                if f.id == thing.id
                else f
                for f in wall.fixtures
            )
            return replace(wall, fixtures=fixtures)
    if thing.kind is Kind.ZONE:
        zones: tuple[ClearZone, ...] = tuple(
            replace(z, left=on(z.left, by[0]), bottom=on(z.bottom, by[1]))
            if z.id == thing.id
            else z
            for z in wall.kept_clear
        )
        return replace(wall, kept_clear=zones)
    member = result.frame.member(key) if result.frame else None
    if member is None or not by[0]:
        return wall
    return put_stud(wall, thing, stated(project, member.left + by[0]))


def stands(result: WallResult, key: str) -> bool:
    """Whether a thing has a sound place in the wall."""
    frame, thing = result.frame, thing_of(result.wall, key)
    if frame is None or thing is None:
        return False
    if thing.kind is Kind.OPENING:
        return any(p.opening.id == thing.id and p.fit.fits for p in frame.openings)
    if thing.kind is Kind.BOX:
        return any(p.box.id == thing.id and _sound(p) for p in result.boxes)
    if thing.kind is Kind.ZONE:
        zone = next(z for z in result.wall.kept_clear if z.id == thing.id)
        last = result.wall.run - zone.width.mm
        return -CLEAR <= zone.left.mm <= last + CLEAR and zone.bottom.mm >= -CLEAR
    if thing.kind is Kind.FIXTURE:
        return any(m.key.startswith(f"{result.wall.letter}/{thing.id}/") for m in frame.members)
    return frame.member(key) is not None


def _sound(box: PlacedBox) -> bool:
    return box.stud is not None and box.blocked_by is None


def _refusal(before: WallResult, after: WallResult, key: str) -> Refusal:
    """What has no place where it was to go, and why."""
    why = message(f"stop.{reason(after, key)}")
    return Refusal(message("edit.no-place-there", what=name_of(before, key), why=why))


def reason(after: WallResult, key: str) -> str:
    """The last part of the message that tells why a thing has no place."""
    frame, thing = after.frame, thing_of(after.wall, key)
    if frame is None or thing is None:
        return "timber"
    if thing.kind is Kind.OPENING:
        opening = after.wall.opening(thing.id)
        over = (frame.near, frame.far)
        stop, _ = opening_stop(after.wall, opening, over, (), opening.left.mm)
        return stop.value if stop in (Stop.SLOPE, Stop.END) else "timber"
    if thing.kind is Kind.BOX:
        placed = next(p for p in after.boxes if p.box.id == thing.id)
        return "stud-ends" if placed.stud is None else "timber"
    if thing.kind is Kind.ZONE:
        return "end"
    return "nothing-behind" if thing.kind is Kind.FIXTURE else "timber"
