"""What a tape said on site: heights along a wall, and studs measured one by one."""

import msgspec

from core.lengths import Length


class Station(msgspec.Struct, frozen=True):
    """A height that was measured `at` a place from the wall's left end."""

    at: Length
    height: Length


class MeasuredStud(msgspec.Struct, frozen=True):
    """The stud with this key is cut to `length` at its long point, whatever is worked out for it.

    A test stud was cut and tried in its place: what it differs by corrects the studs that reach
    the same top plate.
    """

    key: str
    length: Length
    is_test: bool
