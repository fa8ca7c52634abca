"""A part of a wall's elevation that timber and boxes keep out of."""

import msgspec

from core.lengths import Length


class ClearZone(msgspec.Struct, frozen=True):
    """A rectangle of the elevation kept clear (for a pipe, a duct, a niche, a cabinet's back).

    `left` is from the wall's left end, `bottom` above the subfloor.
    """

    id: str
    left: Length
    bottom: Length
    width: Length
    height: Length
