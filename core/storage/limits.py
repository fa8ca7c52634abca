"""Every limit on a project file, and on the numbers in it, in one place."""

from typing import Final

FILE_BYTES: Final = 8 * 1024 * 1024
"""The most bytes a file may have: 8 MiB."""

NESTING: Final = 32
"""The deepest that lists and objects may stand inside one another."""

LIST_ITEMS: Final = 10_000
"""The most items in a list, and keys in an object."""

TEXT_CHARACTERS: Final = 10_000
"""The most characters in a text."""

NUMBER_DIGITS: Final = 15
"""The most characters of a whole number; a double holds any so short exactly."""

FAULTS: Final = 1000
"""Reading stops after so many faults; nobody mends more at one go."""

WALLS: Final = 200
"""The most walls in a project."""

OF_A_WALL: Final = 200
"""The most openings of a wall, and as many boxes, moved studs and added studs."""

PLACE: Final = 10_000
"""The highest place of a layout; 60 m at 50 mm on centre have 1200."""

ROOM_MM: Final = 100_000.0
"""The most that a room may measure in any direction: 100 m."""

WALL_MM: Final = 60_000.0
"""The longest wall, and the farthest that anything stands from its left end: 60 m."""

SHORTEST_EXISTING_MM: Final = 50.0
"""The shortest wall that stands there already."""

SHORTEST_WALL_MM: Final = 300.0
"""The least distance between the ends of a wall."""

BLOCKS_MM: Final = 100.0
"""The closest that rows of blocks, or blocks along a plate, may be asked for."""

RAFTERS: Final = 1000
"""The most rafters whose places are stated."""

OUTSIDE_MM: Final = 1.0
"""How far outside the room a wall may end, for numbers that were rounded."""

SPACING_MM: Final = 50.0
"""The closest spacing of studs or rafters."""

STUD_MM: Final = (10.0, 150.0)
"""The least and the most thickness of a stud or a plate."""

PART_MM: Final = 1000.0
"""The most that a stick of timber, a box or hung board measures across: 1 m."""

PLATE_STOCK_MM: Final = 600.0
"""The shortest stock that plates are made of."""

TOP_PLATES: Final = 2
"""The most top plates, one under the other."""

PLIES: Final = 4
"""The most plies of a header."""

NAIL_CHARACTERS: Final = 60
"""The most characters in the name of a nail."""

NAILS: Final = 100
"""The most nails in one place."""

PENCIL_LETTERS: Final = 3
"""The most letters in the letter of a wall or beside a pencil line."""

PURLIN_MM: Final = 100.0
"""The shortest purlin or beam."""

LEAN_MM: Final = 200.0
"""The most that a surface at the end of a wall is out of plumb."""

LEANS_OVER_MM: Final = 300.0
"""The least height over which the lean of a chimney or duct is stated."""

FIT_MM: Final = 50.0
"""The most that studs are cut short of the plates, or too long for a tight fit."""

APART_MM: Final = 0.1
"""Two measured points nearer than this stand at the same place."""
