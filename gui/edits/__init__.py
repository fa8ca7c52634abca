"""Edits: pure functions from a project to the next one, or a refusal that says what would fit."""

from gui.edits.boxes import add_box, move_box, put_box, set_box
from gui.edits.chalk import (
    copy_wall,
    draw_wall,
    lengthen_wall,
    mirror_wall,
    place_wall,
    turn_face,
    turn_wall,
)
from gui.edits.deleting import delete, delete_wall
from gui.edits.measured import (
    Line,
    add_station,
    forget_gone,
    forget_stud,
    gone_studs,
    measure_stud,
    remove_station,
    set_station,
)
from gui.edits.nailed import (
    add_fixture,
    set_blocking,
    set_fixture,
    set_meeting,
    set_rafter_backing,
    set_slip_gap,
)
from gui.edits.new import new_project
from gui.edits.openings import add_opening, move_opening, set_opening
from gui.edits.refusal import Refusal
from gui.edits.room import set_habits, set_name, set_room, set_system
from gui.edits.rules import line_up, set_doubled, set_origin, set_rules
from gui.edits.site import set_nailing, set_species
from gui.edits.studs import add_stud, move_stud, put_back
from gui.edits.together import move_together
from gui.edits.walls import add_wall, set_wall
from gui.edits.zones import add_zone, set_zone

__all__ = [
    "Line",
    "Refusal",
    "add_box",
    "add_fixture",
    "add_opening",
    "add_station",
    "add_stud",
    "add_wall",
    "add_zone",
    "copy_wall",
    "delete",
    "delete_wall",
    "draw_wall",
    "forget_gone",
    "forget_stud",
    "gone_studs",
    "lengthen_wall",
    "line_up",
    "measure_stud",
    "mirror_wall",
    "move_box",
    "move_opening",
    "move_stud",
    "move_together",
    "new_project",
    "place_wall",
    "put_back",
    "put_box",
    "remove_station",
    "set_blocking",
    "set_box",
    "set_doubled",
    "set_fixture",
    "set_habits",
    "set_meeting",
    "set_nailing",
    "set_name",
    "set_opening",
    "set_origin",
    "set_rafter_backing",
    "set_room",
    "set_rules",
    "set_slip_gap",
    "set_species",
    "set_station",
    "set_system",
    "set_wall",
    "set_zone",
    "turn_face",
    "turn_wall",
]
