"""Numbers as they are found on a tape."""

import math
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.lengths import Length, System, Tape, Unit, parse
from core.lengths.units import LIMIT_MM

IN = 25.4
INCHES = Tape.usual(System.INCH)
FEET = Tape(System.INCH, Length.of_inches(Fraction(1, 16)), feet=True)
MM = Tape.usual(System.METRIC)
HALF_MM = Tape(System.METRIC, Length(0.5))


def inch_tape(denominator: int) -> Tape:
    """A tape with so many marks to the inch."""
    return Tape(System.INCH, Length.of_inches(Fraction(1, denominator)))


def test_the_usual_tapes() -> None:
    assert (INCHES.step_mm, INCHES.feet) == (1.5875, False)
    assert (MM.step_mm, MM.feet) == (1.0, False)
    assert str(INCHES.step) == "1/16 in"
    assert str(MM.step) == "1 mm"


# Inches, as they read at 1/16: inches only, feet and inches.
INCH_TEXTS = [
    (0.0, '0"', '0"'),
    (16.0, '16"', "1'-4\""),
    (57.1875, '57 3/16"', "4'-9 3/16\""),
    (9.1875, '9 3/16"', '9 3/16"'),
    (0.1875, '3/16"', '3/16"'),
    (12.0, '12"', "1'-0\""),
    (120.0, '120"', "10'-0\""),
    (120.1875, '120 3/16"', "10'-0 3/16\""),
    (0.5, '1/2"', '1/2"'),
    (-0.1875, '-3/16"', '-3/16"'),
    (-57.1875, '-57 3/16"', "-4'-9 3/16\""),
    # 15 31/32 is the half between 15 15/16 and 16: up, never 15-16/16.
    (15.96875, '16"', "1'-4\""),
    (15.96874, '15 15/16"', "1'-3 15/16\""),
    (-15.96875, '-16"', "-1'-4\""),
    # 11 31/32 becomes a foot.
    (11.96875, '12"', "1'-0\""),
    # 3/32 is the half between 1/16 and 1/8.
    (0.09375, '1/8"', '1/8"'),
    (-0.09375, '-1/8"', '-1/8"'),
    # Less than half a step is nothing, without a sign.
    (0.03, '0"', '0"'),
    (-0.03, '0"', '0"'),
    # Longest and shortest of the trade's lists: 17.889 is 17 7/8, 9 1/3 is 9 5/16.
    (17.889, '17 7/8"', "1'-5 7/8\""),
    (28 / 3, '9 5/16"', '9 5/16"'),
]


@pytest.mark.parametrize(("inches", "text", "feet_text"), INCH_TEXTS)
def test_inches_to_a_sixteenth(inches: float, text: str, feet_text: str) -> None:
    assert INCHES.text(inches * IN) == text
    assert INCHES.text_with_unit(inches * IN) == text
    assert FEET.text(inches * IN) == feet_text


MM_TEXTS = [
    (0.0, "0", "0"),
    (1613.0, "1613", "1613"),
    (1613.4, "1613", "1613.5"),
    (1613.5, "1614", "1613.5"),
    (1613.25, "1613", "1613.5"),
    (1613.24, "1613", "1613"),
    (0.5, "1", "0.5"),
    (-0.5, "-1", "-0.5"),
    (-0.2, "0", "0"),
    (-1613.4, "-1613", "-1613.5"),
    (1e6, "1000000", "1000000"),
]


@pytest.mark.parametrize(("mm", "text", "half_text"), MM_TEXTS)
def test_millimetres(mm: float, text: str, half_text: str) -> None:
    assert MM.text(mm) == text
    assert MM.text_with_unit(mm) == f"{text} mm"
    assert HALF_MM.text(mm) == half_text


# 5.3 in. = 134.62 mm on other steps.
OTHER_STEPS = [
    (inch_tape(1), '5"'),
    (inch_tape(2), '5 1/2"'),
    (inch_tape(4), '5 1/4"'),
    (inch_tape(8), '5 1/4"'),
    # 5.3 x 32 = 169.6: 170/32 = 5 5/16.
    (inch_tape(32), '5 5/16"'),
    # 5.3 x 64 = 339.2: 339/64 = 5 19/64.
    (inch_tape(64), '5 19/64"'),
    (Tape(System.METRIC, Length(0.1)), "134.6"),
    (Tape(System.METRIC, Length(2.0)), "134"),
    (Tape(System.METRIC, Length(5.0)), "135"),
    (Tape(System.METRIC, Length(10.0, Unit.CM)), "130"),
]


@pytest.mark.parametrize(("tape", "text"), OTHER_STEPS)
def test_other_steps(tape: Tape, text: str) -> None:
    assert tape.text(134.62) == text


NO_STEPS = [
    (System.INCH, Length.of_inches(Fraction(1, 10))),
    (System.INCH, Length(1.0)),
    (System.INCH, Length.of_inches(2)),
    (System.METRIC, Length.of_inches(Fraction(1, 16))),
    (System.METRIC, Length(3.0)),
    (System.METRIC, Length(0.0)),
    (System.METRIC, Length(-1.0)),
]


@pytest.mark.parametrize(("system", "step"), NO_STEPS)
def test_a_step_the_tape_does_not_have_is_refused(system: System, step: Length) -> None:
    with pytest.raises(ValueError, match=f"has no step of {step}; write a step such as 1"):
        Tape(system, step)


def test_rounding_to_the_step_in_millimetres() -> None:
    # 15 31/32 in. rounds to 16 in. = 406.4 mm; 57.2 in. to 57 3/16 = 1452.5625 mm.
    assert INCHES.round(15.96875 * IN) == 406.4
    assert INCHES.round(57.2 * IN) == 1452.5625
    assert INCHES.round(-57.2 * IN) == -1452.5625
    assert MM.round(1612.5) == 1613.0
    assert HALF_MM.round(1612.76) == 1613.0
    assert math.copysign(1, MM.round(-0.2)) == 1


# Where a value stands to the half at 40.5 mm, in mm, and whether it goes up.
NEAR_A_HALF = [(0.0, 41.0), (-0.9e-9, 41.0), (1e-9, 41.0), (-2e-9, 40.0), (-1e-6, 40.0)]


@pytest.mark.parametrize(("off", "rounded"), NEAR_A_HALF)
def test_a_value_next_to_a_half_counts_as_the_half(off: float, rounded: float) -> None:
    assert MM.round(40.5 + off) == rounded
    assert MM.round(-40.5 - off) == -rounded


@pytest.mark.parametrize("mm", [math.nan, math.inf, -math.inf])
def test_what_is_not_finite_cannot_be_shown(mm: float) -> None:
    for show in (MM.text, MM.text_with_unit, MM.round):
        with pytest.raises(ValueError, match="finite"):
            show(mm)


def test_running_marks_do_not_drift() -> None:
    # Steps of 6 2/3 in.: the third mark stands at 20 in. exactly, the 300th at 2000.
    step = Fraction(20, 3) * Fraction(127, 5)
    shown = [INCHES.text(float(n * step)) for n in (1, 2, 3, 4, 300)]
    assert shown == ['6 11/16"', '13 5/16"', '20"', '26 11/16"', '2000"']


def test_every_running_mark_is_the_nearest_to_its_exact_place() -> None:
    for n in range(1, 1000):
        # n x 6 2/3 in. = n x 320 / 3 sixteenths; halves cannot occur.
        sixteenths = (n * 640 + 3) // 6
        assert INCHES.round(n * 20 / 3 * IN) == sixteenths * 127 / 80


tapes = st.sampled_from(
    [INCHES, FEET, MM, HALF_MM]
    + [inch_tape(n) for n in (1, 2, 4, 8, 32, 64)]
    + [Tape(System.METRIC, Length(mm)) for mm in (0.1, 0.2, 2.0, 5.0, 10.0)]
)
places = st.floats(-LIMIT_MM + 30, LIMIT_MM - 30)


@given(tapes, places)
def test_rounding_goes_to_the_nearest_step_and_stays(tape: Tape, mm: float) -> None:
    rounded = tape.round(mm)
    assert abs(rounded - mm) <= tape.step_mm / 2 + 2e-9
    assert tape.round(rounded) == rounded
    assert tape.text(rounded) == tape.text(mm)


@given(tapes, places)
def test_what_a_tape_shows_reads_back_as_what_it_rounds_to(tape: Tape, mm: float) -> None:
    assert parse(tape.text(mm), tape.system.bare_unit).mm == tape.round(mm)
    assert parse(tape.text_with_unit(mm), Unit.CM).mm == tape.round(mm)


@given(tapes, places)
def test_left_and_right_read_alike(tape: Tape, mm: float) -> None:
    assert tape.round(-mm) == -tape.round(mm)


@given(st.sampled_from([1, 2, 4, 8, 16, 32, 64]), st.integers(0, 60_000 * 64))
def test_exact_halves_go_up_wherever_they_stand(denominator: int, count: int) -> None:
    count %= 60_000 * denominator
    half = Length.of_inches(Fraction(2 * count + 1, 2 * denominator))
    up = Length.of_inches(Fraction(count + 1, denominator))
    assert inch_tape(denominator).round(half.mm) == up.mm
