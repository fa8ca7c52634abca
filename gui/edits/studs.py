"""Moving and adding studs and cripples."""

import msgspec

from core.framing import Frame, Role
from core.framing.fit import framed_width
from core.framing.layout import CLEAR, layout_lefts
from core.framing.moving import Grip, Snap, movable, stud_move
from core.job import WallResult
from core.lengths import Length
from core.model import AddedStud, MovedStud, Project, Wall
from core.wording import Mm, message
from gui.edits.refusal import Refusal
from gui.edits.sense import check_wall
from gui.edits.stating import next_id, stated, worked
from gui.things import Kind, Thing, thing_of

_EXACT = Grip(step=1.0, reach=0.0, free=True)


def move_stud(project: Project, letter: str, key: str, left: Length | float) -> Project:
    """The stud or cripple with its left edge at `left` (mm); refused where it is in the way.

    A stud of the layout that comes back to its own place is no longer a moved one.
    """
    wall = project.wall(letter)
    thing = thing_of(wall, key)
    if thing is None or thing.kind not in (Kind.STUD, Kind.CRIPPLE):
        raise Refusal(message("edit.stays", letter=letter))
    to = stated(project, left)
    _check_room(worked(project, letter), key, to)
    return check_wall(project.with_wall(put_stud(wall, thing, to)), letter)


def add_stud(project: Project, letter: str, left: Length | float | None = None) -> Project:
    """One more stud beside the layout, at `left` (mm) or in the middle of the widest bay."""
    wall = project.wall(letter)
    frame = worked(project, letter).frame
    places = free_places(wall, frame) if frame else ()
    if not places:
        raise Refusal(message("edit.no-bay", letter=letter))
    if left is None:
        # Equal bays differ in their last bits; the first of them is meant.
        low, high = max(places, key=lambda p: round(p[1] - p[0], 3))
        left = project.habits.tape.round((low + high) / 2)
    to = stated(project, left)
    _check_free(places, letter, to)
    added = (*wall.added, AddedStud(next_id(wall, "stud"), to))
    return check_wall(project.with_wall(msgspec.structs.replace(wall, added=added)), letter)


def put_back(project: Project, letter: str) -> Project:
    """The wall with all places of its layout filled that were left empty."""
    return project.with_wall(msgspec.structs.replace(project.wall(letter), left_out=()))


def free_places(wall: Wall, frame: Frame) -> tuple[tuple[float, float], ...]:
    """The ranges of left edges, mm, in which a stud stands clear of all studs and openings."""
    thickness = wall.stud.thickness.mm
    taken = [(m.left, m.right) for m in frame.members if m.role is Role.STUD]
    taken += [framed_width(wall, p.opening) for p in frame.openings if p.fit.fits]
    ranges, low = [], 0.0
    for left, right in (*sorted(taken), (wall.run, wall.run)):
        if left - thickness >= low - CLEAR:
            ranges.append((low, left - thickness))
        low = max(low, right)
    return tuple(ranges)


def _check_room(result: WallResult, key: str, to: Length) -> None:
    """Refuse a place where another member stands, naming the nearest that is free."""
    frame, wall = result.frame, result.wall
    if frame is None:
        return
    member = frame.member(key)
    if member is None:
        _check_free(free_places(wall, frame), wall.letter, to)
        return
    if not movable(member):
        raise Refusal(message("edit.stays", letter=wall.letter))
    moved = stud_move(wall, frame, key, to.mm, _EXACT)
    if moved.snap is Snap.LIMIT:
        _refuse_place(wall.letter, to, moved.left)


def _check_free(places: tuple[tuple[float, float], ...], letter: str, to: Length) -> None:
    if any(low - CLEAR <= to.mm <= high + CLEAR for low, high in places):
        return
    limits = [min(max(to.mm, low), high) for low, high in places]
    if not limits:
        raise Refusal(message("edit.no-bay", letter=letter))
    _refuse_place(letter, to, min(limits, key=lambda place: abs(place - to.mm)))


def _refuse_place(letter: str, to: Length, nearest: float) -> None:
    raise Refusal(message("edit.stud-taken", letter=letter, left=Mm(to.mm), nearest=Mm(nearest)))


def put_stud(wall: Wall, thing: Thing, to: Length) -> Wall:
    """The wall with the stud stated at its new place."""
    place = thing.place
    if place is None:
        added = tuple(AddedStud(s.id, to) if s.id == thing.id else s for s in wall.added)
        return msgspec.structs.replace(wall, added=added)
    moved = tuple(m for m in wall.moved if m.place != place)
    own = dict(layout_lefts(wall)).get(place)
    if own is None or abs(own - to.mm) > CLEAR:
        moved = tuple(sorted((*moved, MovedStud(place, to)), key=lambda m: m.place))
    return msgspec.structs.replace(wall, moved=moved)
