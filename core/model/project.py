"""The project: everything that undo takes back."""

import string
from itertools import product

import msgspec

from core.lengths import System
from core.model.habits import Habits
from core.model.lifting import Nailing, Species
from core.model.room import Room
from core.model.wall import Wall


class Project(msgspec.Struct, frozen=True):
    """A room, the walls that divide it, and the person's habits.

    `species` is what most of the timber is; None where it is not known. `nailing` holds what
    differs from the usual schedule of nails.
    """

    name: str
    system: System
    room: Room
    walls: tuple[Wall, ...] = ()
    habits: Habits = Habits()
    species: Species | None = None
    nailing: tuple[Nailing, ...] = ()

    def wall(self, letter: str) -> Wall:
        """The wall with this letter; KeyError if there is none."""
        for wall in self.walls:
            if wall.letter == letter:
                return wall
        raise KeyError(letter)

    def with_wall(self, wall: Wall) -> "Project":
        """The project with the wall of the same letter replaced."""
        walls = tuple(wall if w.letter == wall.letter else w for w in self.walls)
        return msgspec.structs.replace(self, walls=walls)


def next_letter(project: Project) -> str:
    """The first letter no wall has: A to Z, then AA, AB and so on.

    I and O are left out, since on paper they pass for 1 and 0.
    """
    letters = [c for c in string.ascii_uppercase if c not in "IO"]
    taken = {wall.letter for wall in project.walls}
    names = (*letters, *("".join(pair) for pair in product(letters, letters)))
    return next(name for name in names if name not in taken)
