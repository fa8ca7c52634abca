"""A project to begin with."""

from core.lengths import System, Tape
from core.model import Habits, Project
from gui.edits import usual
from gui.edits.walls import add_wall


def new_project(system: System, name: str, wall_name: str) -> Project:
    """A room of usual size with one wall across its middle."""
    habits = Habits(tape=Tape.usual(system))
    empty = Project(name, system, usual.room(system), (), habits)
    return add_wall(empty, wall_name)
