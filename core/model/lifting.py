"""What the person states of the work on site: the species of the timber, and the nailing."""

import enum

import msgspec

from core.lengths import Length


class Species(enum.Enum):
    """A species of timber, by which it is heavier or lighter, air dry unless said otherwise."""

    DOUGLAS_FIR = "Douglas fir"
    DOUGLAS_FIR_GREEN = "Douglas fir, green"
    WESTERN_LARCH = "western larch"
    WESTERN_LARCH_GREEN = "western larch, green"
    ENGELMANN_SPRUCE = "Engelmann spruce"
    ENGELMANN_SPRUCE_GREEN = "Engelmann spruce, green"
    SPRUCE_PINE_FIR = "spruce-pine-fir"


class Joint(enum.Enum):
    """A kind of place where one piece of a wall is nailed to another."""

    STUD_TO_SOLE = "stud to sole plate"
    STUD_TO_TOP = "stud to top plate"
    CRIPPLE = "cripple to header or sill"
    TRIMMER_TO_KING = "trimmer to king stud"
    HEADER_TO_KING = "header to king stud"
    HEADER_PLIES = "header plies"
    SILL_TO_TRIMMER = "sill to trimmer"
    SOLE_TO_FLOOR = "sole plate to floor"
    TOP_TO_TOP = "top plate to top plate"


class Nailing(msgspec.Struct, frozen=True):
    """How one kind of joint is nailed here, where that differs from the usual schedule.

    `count` nails go into each joint, or into each place where they are spaced: one at each end and
    `every` so far between. What is None is as in the usual schedule.
    """

    joint: Joint
    nail: str | None = None
    count: int | None = None
    every: Length | None = None
