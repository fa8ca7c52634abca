"""Reading pitches as people state them."""

import math
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.lengths import (
    Length,
    LengthError,
    Pitch,
    PitchError,
    System,
    Unit,
    parse_pitch,
    write_pitch,
)
from core.lengths.sentences import Reason

# What it says, the tangent by hand, and the regular text; in both systems.
STATED = [
    ("9 in 12", 0.75, "9 in 12"),
    ("9 IN 12", 0.75, "9 in 12"),
    ("9in12", 0.75, "9 in 12"),
    ("9/12", 0.75, "9/12"),
    ("9 / 12", 0.75, "9/12"),
    ("9:12", 0.75, "9:12"),
    ("8 1/2 in 12", 8.5 / 12, "8 1/2 in 12"),
    ("8½ in 12", 8.5 / 12, "8 1/2 in 12"),
    ("8-1/2 in 12", 8.5 / 12, "8 1/2 in 12"),
    ("8.5 in 12", 8.5 / 12, "8.5 in 12"),
    ("8,5:12", 8.5 / 12, "8.5 : 12"),
    ("8½/12", 8.5 / 12, "8 1/2 / 12"),
    ("8 1/2/12", 8.5 / 12, "8 1/2 / 12"),
    ("1/2 / 12", 1 / 24, "1/2 / 12"),
    ("1/2:12", 1 / 24, "1/2 : 12"),
    ("5/4 in 1", 1.25, "1 1/4 in 1"),
    ("0 in 12", 0.0, "0 in 12"),
    ("150 / 250", 0.6, "150/250"),
    ("150 in 250", 0.6, "150 in 250"),
    ("150 mm / 250 mm", 0.6, "150 mm / 250 mm"),
    ("150mm in 250mm", 0.6, "150 mm / 250 mm"),
    # Mixed units: 150 mm in 0.25 m, 5' 3" = 63 in. in 12 ft = 144 in.
    ("15 cm / 0,25 m", 0.6, "15 cm / 0.25 m"),
    ("5' 3\" in 12'", 0.4375, "5' 3\" / 12'"),
    ('9" in 12"', 0.75, "9 in / 12 in"),
    ("9 in in 12 in", 0.75, "9 in / 12 in"),
    ("9 in. / 12 in.", 0.75, "9 in / 12 in"),
    ("8 1/2 in / 12 in", 8.5 / 12, "8 1/2 in / 12 in"),
    ("45°", 1.0, "45°"),
    ("38°", math.tan(math.radians(38)), "38°"),
    ("38 deg", math.tan(math.radians(38)), "38°"),
    ("38 Degrees", math.tan(math.radians(38)), "38°"),
    ("38,50º", math.tan(math.radians(38.5)), "38.5°"),
    ("22 1/2°", math.tan(math.radians(22.5)), "22 1/2°"),
    ("0°", 0.0, "0°"),
    ("79.9°", math.tan(math.radians(79.9)), "79.9°"),
    # Two heights: (69 - 33) / (48 - 0), in any order.
    ("33 in at 0 in, 69 in at 48 in", 0.75, "33 in at 0 in, 69 in at 48 in"),
    ('33"at 0";69"at 48"', 0.75, "33 in at 0 in, 69 in at 48 in"),
    ("69 in at 48 in, 33 in at 0 in", 0.75, "69 in at 48 in, 33 in at 0 in"),
    ("2' 9\" at 0', 69 in at 4'", 0.75, "2' 9\" at 0', 69 in at 4'"),
    # (1600 - 840) / 2000
    ("840 mm at 0 m, 1,6 m at 2 m", 0.38, "840 mm at 0 m, 1.6 m at 2 m"),
    ("33 in at 0 in, 33 in at 48 in", 0.0, "33 in at 0 in, 33 in at 48 in"),
]


@pytest.mark.parametrize("system", System)
@pytest.mark.parametrize(("text", "tangent", "regular"), STATED)
def test_pitches_in_both_systems(text: str, tangent: float, regular: str, system: System) -> None:
    pitch = parse_pitch(text, system.bare_unit)
    assert pitch.tangent == pytest.approx(tangent, rel=1e-15)
    assert write_pitch(pitch) == regular


def test_a_hair_below_80_degrees_is_refused_where_it_rounds_to_80() -> None:
    steepest = str(Decimal(math.tan(math.radians(80))))
    with pytest.raises(PitchError, match="80 degrees or steeper"):
        parse_pitch(f"{steepest[:-1]} in 1", Unit.MM)


def test_half_a_right_angle_rises_exactly_as_far_as_it_runs() -> None:
    assert parse_pitch("45°", Unit.MM).tangent == parse_pitch("12 in 12", Unit.MM).tangent == 1.0


def test_bare_heights_have_the_unit_they_are_given() -> None:
    inches = parse_pitch("33 at 0, 69 at 48", Unit.INCH)
    assert inches.text == "33 in at 0 in, 69 in at 48 in"
    metric = parse_pitch("840 at 0, 1600 at 1000", Unit.MM)
    assert metric.text == "840 mm at 0 mm, 1600 mm at 1000 mm"
    assert (inches.tangent, metric.tangent) == (0.75, 0.76)


REFUSED = [
    ("", Reason.PITCH_EMPTY),
    (" ", Reason.PITCH_EMPTY),
    ("1" * 161, Reason.PITCH_TOO_LONG),
    ("38", Reason.PITCH_UNREADABLE),
    ("flat", Reason.PITCH_UNREADABLE),
    ("/12", Reason.PITCH_UNREADABLE),
    ("9 in", Reason.PITCH_UNREADABLE),
    ("°", Reason.PITCH_UNREADABLE),
    ("38 in°", Reason.PITCH_UNREADABLE),
    ("1:2:3", Reason.PITCH_UNREADABLE),
    ("1e99 in 1e99", Reason.PITCH_UNREADABLE),
    ("1/2/12", Reason.PITCH_TWO_WAYS),
    ("9 in 12 in", Reason.PITCH_ONE_UNIT),
    ('9" / 12', Reason.PITCH_ONE_UNIT),
    ("33 in at 0 in", Reason.PITCH_HEIGHTS),
    ("33 in at 0 in, 69 in", Reason.PITCH_HEIGHTS),
    ("33 at 0, at 48", Reason.PITCH_HEIGHTS),
    ("1 at 0, 2 at 4, 3 at 8", Reason.PITCH_HEIGHTS),
    ("840 mm at 0,1 m at 2 m", Reason.PITCH_HEIGHTS),
    ("9 in 0", Reason.PITCH_NO_RUN),
    ("9 mm / 0 mm", Reason.PITCH_NO_RUN),
    ("9 mm / 1e-400 mm", Reason.PITCH_NO_RUN),
    ("33 in at 4 ft, 69 in at 48 in", Reason.PITCH_NO_RUN),
    ("-9 in 12", Reason.PITCH_NEGATIVE),
    ("-9 in -12", Reason.PITCH_NEGATIVE),
    ("9 in -12", Reason.PITCH_NEGATIVE),
    ("-38°", Reason.PITCH_NEGATIVE),
    ("69 in at 0 in, 33 in at 48 in", Reason.PITCH_FALLS),
    ("80°", Reason.PITCH_TOO_STEEP),
    ("79.99999999999999999°", Reason.PITCH_TOO_STEEP),
    ("1e999°", Reason.PITCH_TOO_STEEP),
    # 5.68 = tan 80.01 degrees
    ("5.68 in 1", Reason.PITCH_TOO_STEEP),
    ("1e60 in 1e-300", Reason.PITCH_TOO_STEEP),
    ("1 mm at 0 mm, 1 m at 1 mm", Reason.PITCH_TOO_STEEP),
    # The fault of a length or a number inside.
    ("9 yd in 12", Reason.UNKNOWN_WORD),
    ("9 in 1/0", Reason.ZERO_DENOMINATOR),
    ("1/2 mm / 9 mm", Reason.METRIC_FRACTION),
    ("33 in at 0 in, 69 in at 2 mi", Reason.UNKNOWN_WORD),
    ("2000 m / 2001 m", Reason.TOO_FAR),
    ("1,613°", Reason.THOUSANDS_OR_DECIMALS),
]


@pytest.mark.parametrize("system", System)
@pytest.mark.parametrize(("text", "reason"), REFUSED)
def test_refusals_in_both_systems(text: str, reason: Reason, system: System) -> None:
    with pytest.raises(PitchError) as caught:
        parse_pitch(text, system.bare_unit)
    assert (caught.value.reason, caught.value.text) == (reason, text)


def test_every_reason_to_refuse_a_pitch_is_among_them() -> None:
    of_pitches = {reason for reason in Reason if reason.startswith("pitch")}
    assert {reason for _, reason in REFUSED} >= of_pitches


SENTENCES = [
    (
        "9 in 12 in",
        "“9 in 12 in” names a unit for only one of rise and run;"
        " write both with a unit or neither, as in 9 in 12 or 150 mm / 250 mm.",
    ),
    (
        "69 in at 0 in, 33 in at 48 in",
        "“69 in at 0 in, 33 in at 48 in” falls away from the eave wall;"
        " measure from the low side, as in 33 in at 0 in, 69 in at 48 in.",
    ),
    (
        "9 yd in 12",
        "“9 yd” has “yd”, which is not a unit known here;"
        " write in, ft, mm, cm or m, as in 63 1/2 in.",
    ),
]


@pytest.mark.parametrize(("text", "sentence"), SENTENCES)
def test_sentences(text: str, sentence: str) -> None:
    with pytest.raises(PitchError) as caught:
        parse_pitch(text, Unit.INCH)
    assert str(caught.value) == sentence


def pitch_or_error(text: str, bare: Unit) -> Pitch | LengthError:
    """What reading gives, and nothing but a pitch or its refusal."""
    try:
        return parse_pitch(text, bare)
    except LengthError as error:
        return error


def check_it_reads_back_or_is_refused(text: str, bare: Unit) -> None:
    """Read a text; a pitch must read back in every unit, an error stand on one line."""
    answer = pitch_or_error(text, bare)
    if isinstance(answer, Pitch):
        assert {parse_pitch(write_pitch(answer), other) for other in Unit} == {answer}
    else:
        assert isinstance(answer, PitchError)
        assert str(answer).isprintable()


hard_text = st.text("0123456789 -/'\".,:;e½⅜°inat", max_size=40)


@given(text=st.text() | hard_text, bare=st.sampled_from(Unit))
def test_any_text_is_read_and_reads_back_or_is_refused(text: str, bare: Unit) -> None:
    check_it_reads_back_or_is_refused(text, bare)


numbers = st.one_of(
    st.integers(0, 400).map(str),
    st.decimals(0, 400, places=3).map(str),
    st.builds("{} {}/{}".format, st.integers(0, 30), st.integers(0, 7), st.integers(8, 70)),
    st.builds("{}/{}".format, st.integers(0, 7), st.integers(1, 70)),
    st.sampled_from(["½", "8½", "3⅔", "1e2", ".5"]),
)
lengths = st.builds(Length, st.floats(1, 30_000), st.sampled_from(Unit)).map(str)
marks = st.sampled_from([" in ", "/", " / ", ":"])
ratios = st.builds("{}{}{}".format, numbers, marks, numbers)
units = st.builds("{}{}{}".format, lengths, marks, lengths)
angles = st.builds("{}{}".format, numbers, st.sampled_from(["°", " deg", "degrees"]))
heights = st.builds("{} at {}, {} at {}".format, lengths, lengths, lengths, lengths)


@given(text=ratios | units | angles | heights, bare=st.sampled_from(Unit))
def test_what_is_read_reads_back(text: str, bare: Unit) -> None:
    check_it_reads_back_or_is_refused(text, bare)


@given(low=lengths, high=lengths, near=lengths, far=lengths)
def test_two_heights_are_told_in_any_order(low: str, high: str, near: str, far: str) -> None:
    one = pitch_or_error(f"{low} at {near}, {high} at {far}", Unit.MM)
    other = pitch_or_error(f"{high} at {far}; {low} at {near}", Unit.MM)
    if isinstance(one, Pitch) and isinstance(other, Pitch):
        assert one.tangent == other.tangent
    else:
        assert isinstance(one, PitchError)
        assert isinstance(other, PitchError)
        assert one.reason == other.reason
