"""Deleting what is held."""

import msgspec

from core.model import DoubledStud, Project, Wall
from core.wording import message
from gui.edits.refusal import Refusal
from gui.things import Kind, Thing, thing_of


def delete(project: Project, letter: str, key: str) -> Project:
    """The project without the thing that `key` stands for.

    A stud of the layout becomes a place left out, so its number stays free; end studs and plates
    go with their wall and are refused.
    """
    wall = project.wall(letter)
    thing = thing_of(wall, key)
    if thing is None or thing.kind in (Kind.END, Kind.PLATE, Kind.BLOCK):
        raise Refusal(message("edit.goes-with-wall", letter=letter))
    kept = tuple(s for s in wall.measured_studs if not _belongs(s.key, thing))
    without = msgspec.structs.replace(_without(wall, thing), measured_studs=kept)
    return project.with_wall(without)


def delete_wall(project: Project, letter: str) -> Project:
    """The project without this wall."""
    walls = tuple(w for w in project.walls if w.letter != letter)
    return msgspec.structs.replace(project, walls=walls)


def _belongs(key: str, thing: Thing) -> bool:
    """Whether a measured stud goes with a thing: its number or id is given to others later."""
    _, cause, *rest = key.split("/")
    if thing.kind in (Kind.STUD, Kind.CRIPPLE):
        return (rest[-1] if rest else cause) == thing.id
    return thing.kind is Kind.OPENING and cause == thing.id


def _without(wall: Wall, thing: Thing) -> Wall:
    replace = msgspec.structs.replace
    if thing.kind is Kind.OPENING:
        return replace(wall, openings=tuple(o for o in wall.openings if o.id != thing.id))
    if thing.kind is Kind.BOX:
        return replace(wall, boxes=tuple(b for b in wall.boxes if b.id != thing.id))
    if thing.kind is Kind.FIXTURE:
        return replace(wall, fixtures=tuple(f for f in wall.fixtures if f.id != thing.id))
    if thing.kind is Kind.ZONE:
        return replace(wall, kept_clear=tuple(z for z in wall.kept_clear if z.id != thing.id))
    if thing.kind is Kind.DOUBLE:
        return replace(wall, doubled=tuple(d for d in wall.doubled if not _of(wall, d, thing)))
    wall = replace(wall, doubled=tuple(d for d in wall.doubled if not _beside(wall, d, thing)))
    if thing.place is None:
        return replace(wall, added=tuple(s for s in wall.added if s.id != thing.id))
    moved = tuple(m for m in wall.moved if m.place != thing.place)
    left_out = tuple(sorted({*wall.left_out, thing.place}))
    return replace(wall, moved=moved, left_out=left_out)


def _of(wall: Wall, doubled: DoubledStud, second: Thing) -> bool:
    """Whether this second stud is the one stated so."""
    return doubled.stud == f"{wall.letter}/{second.id}"


def _beside(wall: Wall, doubled: DoubledStud, stud: Thing) -> bool:
    """Whether a second stud goes with its stud."""
    ways = (f"{wall.letter}/{stud.id}", f"{wall.letter}/layout/{stud.id}")
    return doubled.stud == ways[0 if stud.place is None else 1]
