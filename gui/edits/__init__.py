"""Edits: pure functions from a project to the next one, or a refusal that says what would fit."""

from gui.edits.boxes import add_box, move_box, set_box
from gui.edits.deleting import delete, delete_wall
from gui.edits.new import new_project
from gui.edits.openings import add_opening, move_opening, set_opening
from gui.edits.refusal import Refusal
from gui.edits.room import set_habits, set_name, set_room
from gui.edits.rules import line_up, set_doubled, set_origin, set_rules
from gui.edits.studs import add_stud, move_stud, put_back
from gui.edits.walls import add_wall, set_wall

__all__ = [
    "Refusal",
    "add_box",
    "add_opening",
    "add_stud",
    "add_wall",
    "delete",
    "delete_wall",
    "line_up",
    "move_box",
    "move_opening",
    "move_stud",
    "new_project",
    "put_back",
    "set_box",
    "set_doubled",
    "set_habits",
    "set_name",
    "set_opening",
    "set_origin",
    "set_room",
    "set_rules",
    "set_wall",
]
