"""The units a length is written in, and the two systems of measure."""

import enum
from fractions import Fraction
from typing import Final


class Unit(enum.Enum):
    """How a length is written; the value is the unit's sign in a text."""

    MM = "mm"
    CM = "cm"
    M = "m"
    INCH = "in"
    FEET = "ft"
    """Feet and inches together, as in ``5' 3 1/2"``."""

    @property
    def mm_each(self) -> Fraction:
        """Millimetres in one unit, exact.

        Source: the international inch is 25.4 mm exactly (international yard
        and pound agreement of 1959; from memory).
        """
        return _MM_EACH[self]

    @property
    def metric(self) -> bool:
        """Whether the unit is millimetres, centimetres or metres."""
        return self in (Unit.MM, Unit.CM, Unit.M)


class System(enum.Enum):
    """The system of measure a person works in."""

    INCH = "inch"
    METRIC = "metric"

    @property
    def bare_unit(self) -> Unit:
        """The unit that a number written without one stands for."""
        return Unit.INCH if self is System.INCH else Unit.MM


_MM_EACH: Final = {
    Unit.MM: Fraction(1),
    Unit.CM: Fraction(10),
    Unit.M: Fraction(1000),
    Unit.INCH: Fraction(127, 5),
    Unit.FEET: Fraction(1524, 5),
}

LIMIT_MM: Final = 1_609_344
"""The most a length may be, in mm: one mile, 5280 feet."""
