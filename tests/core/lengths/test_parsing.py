"""Reading lengths as people write them, in both systems."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.lengths import Length, LengthError, System, Unit, parse
from core.lengths.parsing import TEXT_LIMIT
from core.lengths.sentences import Reason

# With a unit, whatever a bare number means. 63 1/2 in = 63.5 x 25.4 = 1612.9 mm.
WITH_UNIT = [
    ("5' 3 1/2\"", 1612.9, Unit.FEET),
    ("5'-3 1/2\"", 1612.9, Unit.FEET),
    ("5'-3-1/2\"", 1612.9, Unit.FEET),
    ("5-3-1/2", 1612.9, Unit.FEET),
    ('5-3-1/2"', 1612.9, Unit.FEET),
    ("5-3 1/2", 1612.9, Unit.FEET),
    ("5-3½", 1612.9, Unit.FEET),
    ("5 ft 3 1/2 in", 1612.9, Unit.FEET),
    ("5ft.3 1/2in.", 1612.9, Unit.FEET),
    ("5 FEET  3 1/2\u00a0Inches", 1612.9, Unit.FEET),
    ("5′ 3½″", 1612.9, Unit.FEET),
    ("5’ 3½”", 1612.9, Unit.FEET),
    ("5' 3.5''", 1612.9, Unit.FEET),
    ("5'3 1/2", 1612.9, Unit.FEET),
    ("5' - 3 1/2\"", 1612.9, Unit.FEET),
    ("5'- 3 1/2\"", 1612.9, Unit.FEET),
    ("5'", 1524.0, Unit.FEET),
    ("5ft", 1524.0, Unit.FEET),
    ("1 foot", 304.8, Unit.FEET),
    ("5.5 ft", 1676.4, Unit.FEET),
    ("5 1/2'", 1676.4, Unit.FEET),
    ("5' 1/4\"", 1530.35, Unit.FEET),
    ("0' 3\"", 76.2, Unit.FEET),
    # 5' 13" = 73 in = 1854.2 mm
    ("5' 13\"", 1854.2, Unit.FEET),
    ('3 1/2"', 88.9, Unit.INCH),
    ('3-1/2"', 88.9, Unit.INCH),
    ("63.5in", 1612.9, Unit.INCH),
    ("63.5 in.", 1612.9, Unit.INCH),
    ("5/4 in", 31.75, Unit.INCH),
    ("6 2/3 in", 508 / 3, Unit.INCH),
    ("1 inch", 25.4, Unit.INCH),
    ("1.6 m", 1600.0, Unit.M),
    ("1,6 m", 1600.0, Unit.M),
    ("1.6 METRES", 1600.0, Unit.M),
    ("1613 mm", 1613.0, Unit.MM),
    ("1613 millimeters", 1613.0, Unit.MM),
    ("160 cm", 1600.0, Unit.CM),
    ("160 centimetres", 1600.0, Unit.CM),
    ("2.5e-10 mm", 2.5e-10, Unit.MM),
    # One sign, for the whole length.
    ('-3 1/2"', -88.9, Unit.INCH),
    ("−3½″", -88.9, Unit.INCH),
    ('- 3 1/2"', -88.9, Unit.INCH),
    ("-5' 3\"", -1600.2, Unit.FEET),
    ("-5-3-1/2", -1612.9, Unit.FEET),
    ("+160 cm", 1600.0, Unit.CM),
    ("-0 mm", 0.0, Unit.MM),
    # The most there is.
    ("1 609 344 mm".replace(" ", "", 2), 1_609_344.0, Unit.MM),
    ("-5280'", -1_609_344.0, Unit.FEET),
]


@pytest.mark.parametrize("bare", Unit)
@pytest.mark.parametrize(("text", "mm", "unit"), WITH_UNIT)
def test_a_length_with_its_unit(text: str, mm: float, unit: Unit, bare: Unit) -> None:
    assert parse(text, bare) == Length(mm, unit)


BARE = [
    ("1613", Unit.MM, 1613.0),
    ("1613", Unit.INCH, 40970.2),
    ("1613,5", Unit.MM, 1613.5),
    ("1613.5", Unit.MM, 1613.5),
    ("1.6", Unit.M, 1600.0),
    ("160", Unit.CM, 1600.0),
    ("63 1/2", Unit.INCH, 1612.9),
    ("63-1/2", Unit.INCH, 1612.9),
    ("63½", Unit.INCH, 1612.9),
    ("1/2", Unit.INCH, 12.7),
    ("½", Unit.INCH, 12.7),
    (".5", Unit.INCH, 12.7),
    ("5 1/2", Unit.FEET, 1676.4),
    ("-16", Unit.INCH, -406.4),
    ("0,125", Unit.M, 125.0),
]


@pytest.mark.parametrize(("text", "bare", "mm"), BARE)
def test_a_bare_number_has_the_unit_it_is_given(text: str, bare: Unit, mm: float) -> None:
    assert parse(text, bare) == Length(mm, bare)


REFUSED = [
    ("", Reason.EMPTY),
    (" \u00a0\n", Reason.EMPTY),
    ("1" * 65, Reason.TOO_LONG),
    ("5280' 1/64\"", Reason.TOO_FAR),
    ("-1609.4 m", Reason.TOO_FAR),
    ("9" * 60, Reason.TOO_FAR),
    ("5 # mm", Reason.UNKNOWN_MARK),
    ("5' 3° ", Reason.UNKNOWN_MARK),
    ("5 yd", Reason.UNKNOWN_WORD),
    ("in", Reason.NO_NUMBER),
    ("5' \"", Reason.NO_NUMBER),
    ("5.", Reason.BAD_NUMBER),
    ("1,613", Reason.THOUSANDS_OR_DECIMALS),
    ("1.5/2", Reason.FRACTION_PARTS),
    ("3 1/0", Reason.ZERO_DENOMINATOR),
    ("3 5/4 in", Reason.IMPROPER_FRACTION),
    ("3 4/4 in", Reason.IMPROPER_FRACTION),
    ("5' 5/4\"", Reason.IMPROPER_FRACTION),
    ("5' 3 5/4\"", Reason.IMPROPER_FRACTION),
    ("1 1/2 m", Reason.METRIC_FRACTION),
    ("½ cm", Reason.METRIC_FRACTION),
    ("3.5 1/2 in", Reason.PART_BESIDE_FRACTION),
    ("5.5' 3\"", Reason.PART_FEET),
    ("5 1/2' 3\"", Reason.PART_FEET),
    ("1/2' 3\"", Reason.PART_FEET),
    ("5.5-3-1/2", Reason.PART_FEET),
    ("--5", Reason.TWO_SIGNS),
    ("+-5", Reason.TWO_SIGNS),
    ("-+5", Reason.TWO_SIGNS),
    ("5' -3\"", Reason.TWO_SIGNS),
    ("5'--3\"", Reason.TWO_SIGNS),
    ("5 3", Reason.TWO_NUMBERS),
    ("5 3 1/2", Reason.TWO_NUMBERS),
    ("5-3", Reason.NUMBERS_WITH_DASH),
    ('5-3"', Reason.NUMBERS_WITH_DASH),
    ("63 - 1/2 in", Reason.LOOSE_DASH),
    ("63 -1/2 in", Reason.LOOSE_DASH),
    ("63- 1/2 in", Reason.LOOSE_DASH),
    ("1 m 60 cm", Reason.UNITS_TOGETHER),
    ("5' 3 mm", Reason.UNITS_TOGETHER),
    ("3\" 5'", Reason.UNITS_TOGETHER),
    ("5' 3\" 2", Reason.UNITS_TOGETHER),
    ("5' 3'", Reason.UNITS_TOGETHER),
    ("-", Reason.UNREADABLE),
    ("5'-", Reason.UNREADABLE),
    ("5-", Reason.UNREADABLE),
    ("1/2/4", Reason.UNREADABLE),
    ("1/2 3", Reason.UNREADABLE),
    ("5+3", Reason.UNREADABLE),
    ("5-3-1/2 ft", Reason.UNREADABLE),
    ("5-3-1/2 mm", Reason.UNREADABLE),
    ("5-3-2", Reason.UNREADABLE),
]


@pytest.mark.parametrize("system", System)
@pytest.mark.parametrize(("text", "reason"), REFUSED)
def test_refusals_in_both_systems(text: str, reason: Reason, system: System) -> None:
    with pytest.raises(LengthError) as caught:
        parse(text, system.bare_unit)
    assert (caught.value.reason, caught.value.text) == (reason, text)


def test_every_reason_to_refuse_a_length_is_among_them() -> None:
    of_lengths = {reason for reason in Reason if not reason.startswith("pitch")}
    assert {reason for _, reason in REFUSED} == of_lengths


@pytest.mark.parametrize("text", ["63 1/2", "63-1/2", "1/2", "½"])
@pytest.mark.parametrize("bare", [Unit.MM, Unit.CM, Unit.M])
def test_a_bare_fraction_is_refused_where_it_would_be_metric(text: str, bare: Unit) -> None:
    with pytest.raises(LengthError) as caught:
        parse(text, bare)
    assert caught.value.reason is Reason.METRIC_FRACTION


SENTENCES = [
    ("", "Nothing is written here; write a length such as 5' 3 1/2\" or 1613 mm."),
    (
        "5-3",
        "“5-3” can be read in more than one way; write 5' 3\" if feet and inches are meant.",
    ),
    (
        "1,613",
        "“1,613” can be read two ways; write 1613 if the comma marks thousands,"
        " or 1.613 if it marks decimals.",
    ),
    (
        "63-1/2",
        "“63-1/2” has a fraction, and mm is not written with fractions;"
        " write decimals, as in 63.5 mm, or name inches, as in 63 1/2 in.",
    ),
    (
        "3 5/4 in",
        "“3 5/4 in” has “5/4” beside a whole number, where a fraction is less than one;"
        " write it as in 4 1/4.",
    ),
    (
        "2 km",
        "“2 km” has “km”, which is not a unit known here;"
        " write in, ft, mm, cm or m, as in 63 1/2 in.",
    ),
    (
        "2000 m",
        "“2000 m” is more than one mile (1609.344 m), the most a length may be;"
        " check the number and its unit, as in 16 in or 1613 mm.",
    ),
    (
        "1 m 60 cm",
        "“1 m 60 cm” puts units together that do not go together;"
        " only inches may follow feet, so write it as in 5' 3 1/2\", 1.6 m or 63 1/2 in.",
    ),
]


@pytest.mark.parametrize(("text", "sentence"), SENTENCES)
def test_sentences(text: str, sentence: str) -> None:
    with pytest.raises(LengthError) as caught:
        parse(text, Unit.MM)
    assert str(caught.value) == sentence


def test_arithmetic_is_exact_up_to_one_rounding() -> None:
    # 3/7 in = 3 x 127 / (7 x 5) mm, rounded once.
    assert parse("3/7 in", Unit.MM).mm == 381 / 35
    assert parse("0.1 in", Unit.MM).mm == 2.54


FORMS = [
    "{feet}' {inches} {over}/{under}\"",
    "{feet}'-{inches} {over}/{under}\"",
    "{feet}-{inches}-{over}/{under}",
    "{feet} ft {inches}-{over}/{under} in",
    "{feet}′{inches} {over}⁄{under}″",
]


@given(
    feet=st.integers(0, 5000),
    inches=st.integers(0, 11),
    over=st.integers(0, 63),
    form=st.sampled_from(FORMS),
    bare=st.sampled_from(Unit),
)
def test_feet_inches_and_sixty_fourths(
    feet: int, inches: int, over: int, form: str, bare: Unit
) -> None:
    text = form.format(feet=feet, inches=inches, over=over, under=64)
    exact = 12 * feet + inches + Fraction(over, 64)
    assert parse(text, bare) == Length.of_inches(exact, Unit.FEET)


def length_or_error(text: str, bare: Unit) -> Length | LengthError:
    """What reading gives, and nothing but a length or its refusal."""
    try:
        return parse(text, bare)
    except LengthError as error:
        return error


hard_text = st.text("0123456789 -+/'\".,:e½⅜′″−incmft°", max_size=TEXT_LIMIT + 1)


@given(text=st.text() | hard_text, bare=st.sampled_from(Unit))
def test_any_text_is_read_or_refused_with_one_line(text: str, bare: Unit) -> None:
    answer = length_or_error(text, bare)
    if isinstance(answer, Length):
        assert parse(str(answer), Unit.CM) == answer
    else:
        assert str(answer).isprintable()
        assert len(str(answer)) < 250


@given(text=hard_text, bare=st.sampled_from(Unit))
def test_a_minus_sign_mirrors_a_length(text: str, bare: Unit) -> None:
    answer = length_or_error(text, bare)
    signed = text.strip().startswith(("-", "+", "−"))
    if isinstance(answer, Length) and not signed and len(text) < TEXT_LIMIT:
        assert parse("-" + text, bare) == Length(-answer.mm, answer.unit)
