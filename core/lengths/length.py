"""A length: millimetres and the unit it was written in."""

import math
from fractions import Fraction
from typing import Self

import msgspec

from core.lengths.units import LIMIT_MM, Unit
from core.lengths.writing import spell


class Length(msgspec.Struct, frozen=True):
    """A stated length in mm, with the unit a person wrote it in.

    Two lengths are equal when both the millimetres and the unit are. Every
    length can be written and read back: see ``write``.

    Raises:
        ValueError: when ``mm`` is not finite or beyond one mile either way.
    """

    mm: float
    unit: Unit = Unit.MM

    def __post_init__(self) -> None:
        """Refuse what cannot be written; make minus zero plain zero."""
        if not math.isfinite(self.mm):
            raise ValueError(f"a length must be a finite number of mm, not {self.mm}")
        if abs(self.mm) > LIMIT_MM:
            raise ValueError(f"a length must be within one mile, not {self.mm} mm")
        # Adding zero turns -0.0 into 0.0, and a whole number into a float.
        msgspec.structs.force_setattr(self, "mm", self.mm + 0.0)

    @classmethod
    def of_mm(cls, mm: float) -> Self:
        """A length of ``mm`` millimetres, written in mm."""
        return cls(mm, Unit.MM)

    @classmethod
    def of_inches(cls, inches: float | Fraction, unit: Unit = Unit.INCH) -> Self:
        """A length of so many inches, written in ``unit``; rounded once, to mm.

        >>> Length.of_inches(63.5).mm
        1612.9
        """
        if not math.isfinite(inches):
            raise ValueError(f"a length must be a finite number, not {inches} in")
        return cls(float(Fraction(inches) * Unit.INCH.mm_each), unit)

    def __str__(self) -> str:
        """The canonical text, as ``write`` gives it."""
        return write(self)


def write(length: Length) -> str:
    """The shortest text in the length's own unit that reads back as the same length.

    The unit is always written, so it reads back whatever a bare number means.

    >>> write(Length.of_inches(63.5)), write(Length(1600.0, Unit.CM))
    ('63 1/2 in', '160 cm')
    """
    return spell(length.mm, length.unit)
