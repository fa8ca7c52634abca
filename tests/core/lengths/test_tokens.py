"""A text cut into tokens."""

import unicodedata
from fractions import Fraction

import pytest

from core.lengths import LengthError, Unit
from core.lengths.tokens import Kind, plain, tokenise

PLAIN = [
    ("5′ 3″", "5' 3\""),
    ("5’ 3”", "5' 3\""),
    ("5‘ 3“", "5' 3\""),
    ("5' 3''", "5' 3\""),
    ("5′ 3′′", "5' 3\""),
    ("−5", "-5"),
    ("5–3", "5-3"),
    ("5‑3", "5-3"),
    ("1⁄2", "1/2"),
    ("38º", "38°"),
    ("9∶12", "9:12"),
    (" 5\u00a0 ft\u202f3\tIN ", "5 ft 3 in"),
]


@pytest.mark.parametrize(("text", "line"), PLAIN)
def test_typographic_signs_become_plain(text: str, line: str) -> None:
    assert plain(text) == line


NUMBERS = [
    ("0", Fraction(0)),
    ("1613", Fraction(1613)),
    ("63.5", Fraction(127, 2)),
    ("1,6", Fraction(8, 5)),
    (".5", Fraction(1, 2)),
    (",125", Fraction(1, 8)),
    ("0,125", Fraction(1, 8)),
    ("1613,125", Fraction(12905, 8)),
    ("1,6135", Fraction(3227, 2000)),
    ("1.613", Fraction(1613, 1000)),
    ("2.5e-10", Fraction(25, 10**11)),
    ("1e3", Fraction(1000)),
    ("½", Fraction(1, 2)),
    ("⅝", Fraction(5, 8)),
    ("⅔", Fraction(2, 3)),
    ("3/8", Fraction(3, 8)),
    ("3 / 8", Fraction(3, 8)),
]


@pytest.mark.parametrize(("text", "value"), NUMBERS)
def test_numbers_and_fractions_are_exact(text: str, value: Fraction) -> None:
    (token,) = tokenise(text)
    assert token.value == value


@pytest.mark.parametrize("sign", "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞")
def test_a_fraction_sign_means_what_its_name_says(sign: str) -> None:
    (token,) = tokenise(sign)
    assert float(token.value) == pytest.approx(unicodedata.numeric(sign))


WORDS = [
    (Unit.MM, ["mm", "MM", "mm.", "millimetre", "millimetres", "millimeter", "millimeters"]),
    (Unit.CM, ["cm", "centimetre", "centimetres", "centimeter", "centimeters"]),
    (Unit.M, ["m", "M", "metre", "metres", "meter", "meters"]),
    (Unit.INCH, ['"', "in", "in.", "IN", "inch", "inches", "″", "''"]),
    (Unit.FEET, ["'", "ft", "ft.", "Ft", "foot", "feet", "′"]),
]


@pytest.mark.parametrize(("unit", "words"), WORDS)
def test_words_and_signs_of_units(unit: Unit, words: list[str]) -> None:
    assert [token.unit for word in words for token in tokenise(word)] == [unit] * len(words)


KINDS = [
    ("", []),
    ("5'-3 1/2\"", [Kind.NUMBER, Kind.UNIT, Kind.DASH, Kind.NUMBER, Kind.FRACTION, Kind.UNIT]),
    ("5ft.3in", [Kind.NUMBER, Kind.UNIT, Kind.NUMBER, Kind.UNIT]),
    ("+3½", [Kind.PLUS, Kind.NUMBER, Kind.FRACTION]),
    ("1/2/3", [Kind.FRACTION, Kind.SLASH, Kind.NUMBER]),
    ("/3", [Kind.SLASH, Kind.NUMBER]),
]


@pytest.mark.parametrize(("text", "kinds"), KINDS)
def test_kinds(text: str, kinds: list[Kind]) -> None:
    assert [token.kind for token in tokenise(text)] == kinds


def test_a_token_knows_the_blank_before_it() -> None:
    assert [token.gap for token in tokenise("5 -3")] == [False, True, False]


REFUSED = [
    ("5 yd", "unknown-word"),
    ("5 mmm", "unknown-word"),
    ("5#", "unknown-mark"),
    ("٣", "unknown-mark"),
    ("3²", "unknown-mark"),
    ("5.", "bad-number"),
    (".", "bad-number"),
    ("1.2.3", "bad-number"),
    ("1,613.5", "bad-number"),
    ("1e1000", "bad-number"),
    ("1,613", "thousands-or-decimals"),
    ("12,345 m", "thousands-or-decimals"),
    ("1.5/2", "fraction-parts"),
    ("1/2.5", "fraction-parts"),
    ("1/", "fraction-parts"),
    ("1/0", "zero-denominator"),
]


@pytest.mark.parametrize(("text", "reason"), REFUSED)
def test_refusals(text: str, reason: str) -> None:
    with pytest.raises(LengthError) as caught:
        tokenise(text)
    assert caught.value.reason == reason
