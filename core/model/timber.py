"""The cross-section of a stick of timber, as dressed."""

import msgspec

from core.lengths import Length


class Timber(msgspec.Struct, frozen=True, cache_hash=True):
    """A dressed cross-section: `thickness` across the narrow side, `width` across the wide one.

    A 2x4 is 1 1/2 in. by 3 1/2 in. (PS 20 dressed sizes, dry); CLS studs are 38 mm by 89 mm.
    """

    thickness: Length
    width: Length
