"""What the person answers about what is there already; it decides which cautions stand."""

import enum


class RoofBuilt(enum.Enum):
    """What the roof is made of: rafters cut and set one by one, or trusses made in a factory."""

    RAFTERS = "rafters"
    TRUSSES = "trusses"


class FloorSeen(enum.Enum):
    """Who has looked at what the floor is to carry.

    PAPERS: what it was built for stands in the builder's papers. LICENSED: an engineer or somebody
    else who is licensed for it has looked at the floor itself.
    """

    NOBODY = "nobody yet"
    PAPERS = "builder's papers"
    LICENSED = "licensed engineer"
