"""Showing a number as it is found on a tape: rounded once, from the exact value.

Halves go away from zero, so that a length reads the same to the left and to the
right of where it is measured from: 15 31/32 in. shows as ``16"``, and 15 31/32
in. to the left as ``-16"``.
"""

import math
from fractions import Fraction
from typing import Final, Self

import msgspec

from core.lengths.length import Length
from core.lengths.units import System, Unit

_HALF_MM: Final = 1e-9
"""How far below a half, in mm, a value still counts as the half."""

_TAILS: Final = {
    fine: ("", *(str(Fraction(part, fine)) for part in range(1, fine)))
    for fine in (1, 2, 4, 8, 16, 32, 64)
}
"""The fractions on a tape of so many marks to the inch, each in lowest terms."""

_METRIC_TENTHS: Final = (1, 2, 5, 10, 20, 50, 100)
"""The steps of a metric tape, in tenths of a millimetre."""

_INCH_MM: Final = 25.4


class Tape(msgspec.Struct, frozen=True):
    """How numbers are shown: the system, the step to round to, feet or inches only.

    ``feet`` counts in the inch system alone. The step is 1 in. or one of its
    halves down to 1/64 in., or 0.1, 0.2, 0.5, 1, 2, 5 or 10 mm.

    Raises:
        ValueError: when the step is none of the system's.
    """

    system: System
    step: Length
    feet: bool = False

    def __post_init__(self) -> None:
        """Refuse a step that the system's tape does not have."""
        if self.system is System.INCH:
            known = [Length.of_inches(Fraction(1, fine)).mm for fine in _TAILS]
        else:
            known = [tenths / 10 for tenths in _METRIC_TENTHS]
        if self.step.mm not in known:
            usual = Tape.usual(self.system).step
            raise ValueError(
                f"a tape in the {self.system.value} system has no step of {self.step};"
                f" write a step such as {usual}"
            )

    @classmethod
    def usual(cls, system: System) -> Self:
        """The tape most people carry: to 1/16 in., inches only, or to 1 mm."""
        if system is System.INCH:
            return cls(system, Length.of_inches(Fraction(1, 16)))
        return cls(system, Length(1.0, Unit.MM))

    @property
    def step_mm(self) -> float:
        """The step in mm."""
        return self.step.mm

    def round(self, mm: float) -> float:
        """The nearest step, in mm; halves go away from zero.

        A value within 1e-9 mm of a half counts as the half.

        Raises:
            ValueError: when ``mm`` is not finite.
        """
        count = self._count(mm)
        # Whole numbers divided once give the nearest double of the exact step.
        if self.system is System.INCH:
            return count * 127 / (5 * self._marks)
        return count * self._tenths / 10

    def text(self, mm: float) -> str:
        """The number for screen and sheets, rounded to the step.

        Inches ``57 3/16"``; feet ``4'-9 3/16"``, and inches alone under a foot;
        millimetres ``1613`` without a unit.

        Raises:
            ValueError: when ``mm`` is not finite.

        >>> Tape.usual(System.INCH).text(1452.5625)
        '57 3/16"'
        """
        count = self._count(mm)
        sign = "-" if count < 0 else ""
        if self.system is System.METRIC:
            return sign + _decimal_text(abs(count) * self._tenths)
        marks = self._marks
        inches, part = divmod(abs(count), marks)
        if self.feet and inches >= 12:
            feet, inches = divmod(inches, 12)
            return f"{sign}{feet}'-{_inch_text(inches, _TAILS[marks][part], zero=True)}"
        return sign + _inch_text(inches, _TAILS[marks][part], zero=False)

    def text_with_unit(self, mm: float) -> str:
        """The number with its unit: ``1613 mm``; inches carry their mark anyway."""
        text = self.text(mm)
        return f"{text} mm" if self.system is System.METRIC else text

    @property
    def finest(self) -> Self:
        """The same tape read to 1/64 in. or 0.1 mm, as the terms of a sum are shown."""
        inch = self.system is System.INCH
        step = Length.of_inches(Fraction(1, 64)) if inch else Length(0.1, Unit.MM)
        return msgspec.structs.replace(self, step=step)

    def steps(self, mm: float) -> int:
        """The number of steps nearest to ``mm``, below zero for negative ones.

        Raises:
            ValueError: when ``mm`` is not finite.
        """
        return self._count(mm)

    @property
    def _marks(self) -> int:
        """The number of steps in an inch."""
        return round(_INCH_MM / self.step.mm)

    @property
    def _tenths(self) -> int:
        """The number of tenths of a millimetre in a step."""
        return round(self.step.mm * 10)

    def _count(self, mm: float) -> int:
        """The number of steps nearest to ``mm``, below zero for negative ones."""
        if not math.isfinite(mm):
            raise ValueError(f"only a finite number of mm can be shown, not {mm}")
        step = self.step.mm
        count = int(abs(mm) / step + (0.5 + _HALF_MM / step))
        return -count if mm < 0 else count


def _inch_text(inches: int, tail: str, zero: bool) -> str:
    """Whole inches and a fraction, with the mark; ``zero`` keeps a nought before it."""
    if not tail:
        return f'{inches}"'
    return f'{inches} {tail}"' if inches or zero else f'{tail}"'


def _decimal_text(tenths: int) -> str:
    """A number of tenths of a millimetre, in mm, with a decimal only where needed."""
    whole, tenth = divmod(tenths, 10)
    return f"{whole}.{tenth}" if tenth else str(whole)
