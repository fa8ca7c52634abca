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
    if thing is None or thing.kind in (Kind.END, Kind.PLATE):
        raise Refusal(message("edit.goes-with-wall", letter=letter))
    return project.with_wall(_without(wall, thing))


def delete_wall(project: Project, letter: str) -> Project:
    """The project without this wall."""
    walls = tuple(w for w in project.walls if w.letter != letter)
    return msgspec.structs.replace(project, walls=walls)


def _without(wall: Wall, thing: Thing) -> Wall:
    replace = msgspec.structs.replace
    if thing.kind is Kind.OPENING:
        return replace(wall, openings=tuple(o for o in wall.openings if o.id != thing.id))
    if thing.kind is Kind.BOX:
        return replace(wall, boxes=tuple(b for b in wall.boxes if b.id != thing.id))
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
