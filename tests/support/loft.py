"""A small room with one wall in it for tests of the window, in inches.

The room is 240 in. wide under 12 in 12 slopes from eaves 48 in. high, with a flat ceiling at 108,
so the roof over the wall "B" rises from 60 to 108 in 48 in. and is level from there: the wall runs
up the slope from u = 12 to u = 132, 120 in. long. Studs 16 in. on centre: layout places 1 to 7
have their left edges at 15 1/4, 31 1/4, 47 1/4, 63 1/4, 79 1/4, 95 1/4 and 111 1/4. The door's
opening is from 60 to 90; its trimmers stand at 58 1/2 and 90, its kings at 57 and 91 1/2, so
places 4 and 5 are cripples above its header. Undersides of the plates are 1 1/2 below the flat.
"""

from __future__ import annotations

import msgspec

from core.job import work_out
from core.lengths import System
from core.model import Project, Side, SiteRecord
from core.storage import Document
from gui.desk import Desk
from gui.sketcher.pulls import Hold, take
from walls import US, in_12

INCH = 25.4

STUD = "B/layout/2"
DOOR = "B/door-1"
BOX = "B/box-1"
WINDOW = "B/window-1"
CRIPPLE = "B/door-1/above/4"


def loft() -> Project:
    """The project with the wall described above; the box is on the right of the stud at 31 1/4."""
    room = US.room(240.0, (48.0, in_12(12)), (48.0, in_12(12)), flat=108.0)
    wall = US.wall(
        (12.0, 100.0),
        (132.0, 100.0),
        openings=(US.opening("door-1", 60.0, 30.0, 80.0),),
        boxes=(US.box("box-1", STUD, Side.RIGHT, 14.0),),
    )
    return Project("loft", System.INCH, room, (wall,))


def with_window() -> Project:
    """The same with a window in the door's place, its sill at 40 and its head at 80."""
    project = loft()
    window = US.opening("window-1", 60.0, 30.0, 80.0, sill=40.0)
    return project.with_wall(msgspec.structs.replace(project.wall("B"), openings=(window,)))


def hold_of(project: Project, key: str) -> Hold:
    """A hold on the thing with this key in the wall."""
    hold = take(project, work_out(project, SiteRecord()).walls[0], key)
    assert hold is not None
    return hold


def desk_of(project: Project | None = None) -> Desk:
    """A desk with the project, or with the one above, on it."""
    return Desk(Document(project or loft(), SiteRecord()))


def stud_left(project: Project) -> float:
    """Where the stud of layout place 2 stands, inches."""
    wall = project.wall("B")
    return next((m.left.mm / INCH for m in wall.moved if m.place == 2), 31.25)


def door_left(project: Project) -> float:
    return project.wall("B").opening("door-1").left.mm / INCH


def cripple_left(project: Project) -> float:
    return next((m.left.mm / INCH for m in project.wall("B").moved if m.place == 4), 63.25)


def box_height(project: Project) -> float:
    return project.wall("B").box("box-1").height.mm / INCH
