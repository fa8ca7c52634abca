"""A place in the floor plan."""

import msgspec

from core.lengths import Length


class Point(msgspec.Struct, frozen=True):
    """A point of the floor plan: `across` from the left eave wall, `along` the ridge."""

    across: Length
    along: Length
