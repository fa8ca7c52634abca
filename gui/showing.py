"""What to look at after a step of undo or redo: the room, or the wall that differs."""

from core.model import Point, Project, Timber, Wall

Place = tuple[Point, Point, Timber]


def differing(before: Project, after: Project, shown: str | None) -> str | None:
    """The letter of the wall that shows how two projects differ; None for the room.

    What can be seen from where the person stands stays there: in the room a wall that comes, goes
    or moves, at a wall anything of its own, and what no wall shows.
    """
    if before.room != after.room:
        return None
    old, new = ({wall.letter: wall for wall in project.walls} for project in (before, after))
    others = [letter for letter, wall in new.items() if old.get(letter) != wall]
    if shown is None:
        hidden = [x for x in others if x in old and _place(old[x]) == _place(new[x])]
        return hidden[0] if hidden else None
    if shown in others or not others:
        return shown
    return others[0]


def _place(wall: Wall) -> Place:
    """All of a wall that the room shows without its openings."""
    return wall.left_end, wall.right_end, wall.stud
