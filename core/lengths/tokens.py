"""A text of a length or a pitch cut into numbers, fractions, dashes and units.

A number has the digits 0 to 9 with at most one decimal mark, a point or a comma
(``63.5``, ``1613,5``, ``.5``), and may have a power of ten (``2.5e-10``). A
comma before exactly three digits is refused where it might mark thousands
(``1,613``, but not ``0,125`` and not ``1613,125``); a point never does.
A fraction is two whole numbers about a slash, or one sign (``½``).
Units are the words and signs in ``WORDS`` and ``SIGNS``, in upper or lower case,
with or without a point. Typographic quotes, primes, dashes and blanks mean what
the plain ones do, and two single primes mean inches.
"""

import enum
import re
from fractions import Fraction
from itertools import takewhile
from typing import Final

import msgspec

from core.lengths.errors import refused
from core.lengths.sentences import Reason
from core.lengths.units import Unit


class Kind(enum.Enum):
    """What a token is."""

    NUMBER = enum.auto()
    FRACTION = enum.auto()
    DASH = enum.auto()
    PLUS = enum.auto()
    SLASH = enum.auto()
    UNIT = enum.auto()


class Token(msgspec.Struct, frozen=True):
    """A piece of the text: its kind, its letters, and what they stand for."""

    kind: Kind
    text: str
    gap: bool
    """Whether a blank stands before it."""
    value: Fraction = Fraction(0)
    """Of a number or a fraction."""
    unit: Unit | None = None
    """Of a unit."""

    @property
    def whole(self) -> bool:
        """Whether it is a number of digits alone."""
        return self.kind is Kind.NUMBER and self.text.isdecimal()


WORDS: Final = {
    Unit.MM: "mm millimetre millimetres millimeter millimeters",
    Unit.CM: "cm centimetre centimetres centimeter centimeters",
    Unit.M: "m metre metres meter meters",
    Unit.INCH: "in inch inches",
    Unit.FEET: "ft foot feet",
}
SIGNS: Final = {"'": Unit.FEET, '"': Unit.INCH}

_UNIT_OF_WORD: Final = {word: unit for unit, words in WORDS.items() for word in words.split()}
_KIND_OF_SIGN: Final = {"-": Kind.DASH, "+": Kind.PLUS, "/": Kind.SLASH}

_PLAIN: Final = str.maketrans(
    dict.fromkeys("′’‘ʹ´`", "'")
    | dict.fromkeys("″”“„ʺ", '"')
    | dict.fromkeys("−–—‐‑‒", "-")
    | dict.fromkeys("⁄∕", "/")
    | dict.fromkeys("º˚", "°")
    | {"∶": ":"}
)
_VULGAR: Final = {
    sign: Fraction(over, under)
    for under, signs in {
        2: {1: "½"},
        3: {1: "⅓", 2: "⅔"},
        4: {1: "¼", 3: "¾"},
        5: {1: "⅕", 2: "⅖", 3: "⅗", 4: "⅘"},
        6: {1: "⅙", 5: "⅚"},
        7: {1: "⅐"},
        8: {1: "⅛", 3: "⅜", 5: "⅝", 7: "⅞"},
        9: {1: "⅑"},
        10: {1: "⅒"},
    }.items()
    for over, sign in signs.items()
}
_NUMBER_RUN: Final = re.compile(r"[0-9.,]+(?:e[+-]?[0-9]+)?")
_NUMBER: Final = re.compile(r"([0-9]*)(?:([.,])([0-9]+))?(e[+-]?[0-9]{1,3})?")


def plain(text: str) -> str:
    r"""The text with plain signs, lower case, and single blanks only inside.

    >>> plain(" 5′  3½″ ")
    '5\' 3½"'
    """
    return " ".join(text.translate(_PLAIN).lower().replace("''", '"').split())


def tokenise(text: str) -> tuple[Token, ...]:
    """The tokens of a text, fractions joined.

    Raises:
        LengthError: at a character, word or number that cannot be read.
    """
    line = plain(text)
    tokens: list[Token] = []
    at = 0
    while at < len(line):
        gap = line[at] == " "
        at += gap
        tokens.append(_token(line, at, gap, text))
        at += len(tokens[-1].text)
    return _with_fractions(tokens, text)


def _token(line: str, at: int, gap: bool, text: str) -> Token:
    """The token of ``line`` that starts at index ``at``."""
    sign = line[at]
    if sign in _VULGAR:
        return Token(Kind.FRACTION, sign, gap, value=_VULGAR[sign])
    if sign in SIGNS:
        return Token(Kind.UNIT, sign, gap, unit=SIGNS[sign])
    if sign in _KIND_OF_SIGN:
        return Token(_KIND_OF_SIGN[sign], sign, gap)
    if run := _NUMBER_RUN.match(line, at):
        return Token(Kind.NUMBER, run[0], gap, value=_number(run[0], text))
    if sign.isalpha():
        return _word(line, at, gap, text)
    raise refused(Reason.UNKNOWN_MARK, text, part=sign)


def _word(line: str, at: int, gap: bool, text: str) -> Token:
    """The unit whose word starts at ``at``, with the point that may follow it."""
    word = "".join(takewhile(str.isalpha, line[at:]))
    if word not in _UNIT_OF_WORD:
        raise refused(Reason.UNKNOWN_WORD, text, part=word)
    # A point before a digit belongs to the word as well: 5ft.3in is 5' 3".
    point = line[at + len(word) :][:1] == "."
    return Token(Kind.UNIT, word + "." * point, gap, unit=_UNIT_OF_WORD[word])


def _number(run: str, text: str) -> Fraction:
    """The exact value of a run of digits and marks."""
    parts = _NUMBER.fullmatch(run)
    if parts is None:
        raise refused(Reason.BAD_NUMBER, text, part=run)
    whole, mark, decimals, power = parts.groups()
    may_be_thousands = mark == "," and len(decimals) == 3 and not power
    if may_be_thousands and 1 <= len(whole) <= 3 and whole[0] != "0":
        ways = {"thousands": whole + decimals, "decimals": f"{whole}.{decimals}"}
        raise refused(Reason.THOUSANDS_OR_DECIMALS, text, part=run, **ways)
    return Fraction(run.replace(",", "."))


def _with_fractions(tokens: list[Token], text: str) -> tuple[Token, ...]:
    """The tokens with each number, slash, number made one fraction."""
    joined: list[Token] = []
    rest = iter(tokens)
    for token in rest:
        over = joined and joined[-1].kind is Kind.NUMBER
        if token.kind is Kind.SLASH and over:
            joined.append(_fraction(joined.pop(), next(rest, token), text))
        else:
            joined.append(token)
    return tuple(joined)


def _fraction(over: Token, under: Token, text: str) -> Token:
    """The fraction of two number tokens."""
    if not (over.whole and under.whole):
        raise refused(Reason.FRACTION_PARTS, text)
    if not under.value:
        raise refused(Reason.ZERO_DENOMINATOR, text)
    words = f"{over.text}/{under.text}"
    return Token(Kind.FRACTION, words, over.gap, value=over.value / under.value)
