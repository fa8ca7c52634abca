"""Writing: the canonical texts, and that all of them read back."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.lengths import Length, System, Unit, parse, write
from core.lengths.units import LIMIT_MM
from core.lengths.writing import Count, mixed, number

# Inches: 25.4 mm each, counted here as fractions of an inch.
INCHES = [
    (Fraction(0), "0 in"),
    (Fraction(16), "16 in"),
    (Fraction(127, 2), "63 1/2 in"),
    (Fraction(3, 16), "3/16 in"),
    (Fraction(-7, 2), "-3 1/2 in"),
    (Fraction(-1, 64), "-1/64 in"),
    (Fraction(143, 8), "17 7/8 in"),
    # Decimals where they end and the tape has no mark: 19 1/5, 1/10, 1/40, 1 1/128.
    (Fraction(96, 5), "19.2 in"),
    (Fraction(1, 10), "0.1 in"),
    (Fraction(1, 40), "0.025 in"),
    (Fraction(129, 128), "1.0078125 in"),
    # A fraction where decimals do not end: 6.666..., 0.333..., 0.0158...
    (Fraction(20, 3), "6 2/3 in"),
    (Fraction(1, 3), "1/3 in"),
    (Fraction(1, 63), "1/63 in"),
    # 128 mm: doubles lie closer below a power of two than above, so the nearest of 16
    # figures, 5.039370078740157, reads back as the double below; the next one up reads back as 128.
    (Fraction(640, 127), "5.039370078740158 in"),
    # No fraction past sixty-fourths: 1/80 = 0.0125.
    (Fraction(1, 80), "0.0125 in"),
]


@pytest.mark.parametrize(("inches", "text"), INCHES)
def test_inches(inches: Fraction, text: str) -> None:
    assert write(Length.of_inches(inches)) == text


FEET = [
    (Fraction(0), "0'"),
    (Fraction(60), "5'"),
    (Fraction(127, 2), "5' 3 1/2\""),
    (Fraction(241, 4), "5' 1/4\""),
    (Fraction(3), "0' 3\""),
    (Fraction(1, 2), "0' 1/2\""),
    (Fraction(-63), "-5' 3\""),
    (Fraction(-1, 2), "-0' 1/2\""),
    # 76.8 = 6 x 12 + 4.8
    (Fraction(384, 5), "6' 4.8\""),
    # 80.6 recurring = 6 x 12 + 8 2/3
    (Fraction(242, 3), "6' 8 2/3\""),
    # One millionth of an inch short of five feet is not five feet.
    (60 - Fraction(1, 10**6), "4' 11.999999\""),
]


@pytest.mark.parametrize(("inches", "text"), FEET)
def test_feet(inches: Fraction, text: str) -> None:
    assert write(Length.of_inches(inches, Unit.FEET)) == text


METRIC = [
    (2438.0, Unit.MM, "2438 mm"),
    (1613.5, Unit.MM, "1613.5 mm"),
    (1600.0, Unit.M, "1.6 m"),
    (1600.0, Unit.CM, "160 cm"),
    (-0.5, Unit.MM, "-0.5 mm"),
    (0.0, Unit.M, "0 m"),
    (508 / 3, Unit.MM, "169.33333333333334 mm"),
    (0.1 + 0.2, Unit.MM, "0.30000000000000004 mm"),
    (0.05, Unit.M, "0.00005 m"),
    (1e-9, Unit.MM, "0.000000001 mm"),
    (2.5e-10, Unit.MM, "2.5e-10 mm"),
    (5e-324, Unit.MM, "5e-324 mm"),
    (1e6, Unit.MM, "1000000 mm"),
]


@pytest.mark.parametrize(("mm", "unit", "text"), METRIC)
def test_metric(mm: float, unit: Unit, text: str) -> None:
    assert write(Length(mm, unit)) == text


NUMBERS = [
    (Fraction(17, 2), True, "8.5"),
    (Fraction(17, 2), False, "8 1/2"),
    (Fraction(8), True, "8"),
    (Fraction(8), False, "8"),
    (Fraction(1600), True, "1600"),
]


@pytest.mark.parametrize(("value", "decimals", "text"), NUMBERS)
def test_a_number_keeps_its_way_of_writing(value: Fraction, decimals: bool, text: str) -> None:
    assert number(Count(value, decimals)) == text


def test_the_sign_of_a_mixed_number_stands_in_front() -> None:
    assert mixed(Fraction(-7, 2)) == "-3 1/2"


within_a_mile = st.floats(-LIMIT_MM, LIMIT_MM)
tape_fractions = st.builds(
    lambda whole, part, fine: Fraction(whole) + Fraction(part, fine),
    st.integers(-60_000, 60_000),
    st.integers(0, 64),
    st.sampled_from([2, 3, 4, 5, 7, 8, 10, 16, 32, 64, 128]),
)


@given(mm=within_a_mile, unit=st.sampled_from(Unit), bare=st.sampled_from(Unit))
def test_every_length_reads_back_with_its_unit(mm: float, unit: Unit, bare: Unit) -> None:
    length = Length(mm, unit)
    assert parse(write(length), bare) == length


@given(tape_fractions, st.sampled_from([Unit.INCH, Unit.FEET]), st.sampled_from(System))
def test_every_fraction_reads_back_with_its_unit(
    inches: Fraction, unit: Unit, system: System
) -> None:
    length = Length.of_inches(inches, unit)
    assert parse(write(length), system.bare_unit) == length


@given(mm=within_a_mile, unit=st.sampled_from(Unit))
def test_what_is_written_is_written_again_the_same(mm: float, unit: Unit) -> None:
    text = write(Length(mm, unit))
    assert write(parse(text, Unit.MM)) == text


@given(mm=within_a_mile)
def test_millimetres_are_as_short_as_python_writes_them(mm: float) -> None:
    digits = write(Length(mm)).removesuffix(" mm").partition("e")[0]
    figures = digits.replace(".", "").strip("-0")
    assert len(figures) == len(repr(mm).partition("e")[0].replace(".", "").strip("-0"))
