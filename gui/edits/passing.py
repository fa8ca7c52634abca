"""How a wall passes a purlin, in its own way or as all walls do."""

from core.model import PassesPurlin, Passing, Project
from gui.edits.walls import set_wall


def set_passing(project: Project, letter: str, purlin: str, passing: Passing | None) -> Project:
    """The wall passing a purlin in this way; None is as all walls do."""
    kept = tuple(p for p in project.wall(letter).passes if p.purlin != purlin)
    own = () if passing is None else (PassesPurlin(purlin, passing),)
    return set_wall(project, letter, passes=(*kept, *own))
