"""The length as a value."""

import math
from fractions import Fraction

import msgspec
import pytest

from core.lengths import Length, Unit, write


def test_a_length_is_millimetres_unless_told() -> None:
    assert Length(1613.0) == Length.of_mm(1613.0) == Length(1613.0, Unit.MM)


def test_equal_lengths_have_the_same_unit() -> None:
    inches, feet = Length.of_inches(12), Length.of_inches(12, Unit.FEET)
    assert inches.mm == feet.mm == 304.8
    assert inches != feet
    assert len({inches, feet, Length.of_inches(12)}) == 2


# One rounding: 6 2/3 in. = 20/3 x 127/5 = 508/3 mm.
OF_INCHES = [
    (63.5, 1612.9),
    (16, 406.4),
    (Fraction(20, 3), 508 / 3),
    (Fraction(1, 64), 127 / 320),
    (0.1, 2.54),
    (-3.5, -88.9),
]


@pytest.mark.parametrize(("inches", "mm"), OF_INCHES)
def test_inches_are_rounded_once(inches: float | Fraction, mm: float) -> None:
    assert Length.of_inches(inches).mm == mm


@pytest.mark.parametrize("mm", [math.nan, math.inf, -math.inf])
def test_what_is_not_finite_is_refused(mm: float) -> None:
    with pytest.raises(ValueError, match="finite"):
        Length(mm)
    with pytest.raises(ValueError, match="finite"):
        Length.of_inches(mm)


def test_a_mile_is_a_length_and_more_is_not() -> None:
    assert str(Length.of_inches(63360, Unit.FEET)) == "5280'"
    assert str(Length(-1_609_344, Unit.M)) == "-1609.344 m"
    for mm in (math.nextafter(1_609_344, math.inf), -2e6):
        with pytest.raises(ValueError, match="within one mile"):
            Length(mm)


ZEROS = [
    Length(-0.0),
    Length.of_inches(-0.0, Unit.MM),
    msgspec.structs.replace(Length(5.0), mm=-0.0),
    msgspec.convert({"mm": -0.0, "unit": "mm"}, Length),
]


@pytest.mark.parametrize("length", ZEROS)
def test_minus_zero_is_zero(length: Length) -> None:
    assert math.copysign(1, length.mm) == 1
    assert str(length) == "0 mm"


def test_a_whole_number_becomes_a_float() -> None:
    assert repr(Length(1613)) == "Length(mm=1613.0, unit=<Unit.MM: 'mm'>)"


def test_text_of_a_length_is_what_is_written() -> None:
    length = Length.of_inches(63.5)
    assert str(length) == write(length) == "63 1/2 in"


def test_a_length_cannot_be_changed() -> None:
    with pytest.raises(AttributeError):
        Length(1.0).mm = 2.0  # type: ignore[misc]
