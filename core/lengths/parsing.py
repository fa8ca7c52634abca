"""Reading a length as people write it.

The grammar, after the tokens (see ``tokens``); a blank may stand anywhere but
inside a number and beside the dash before a fraction:

    length  =  [sign] (amount [unit] | feet [dash] amount [inch] | dashed [inch])
    amount  =  number | fraction | whole fraction | whole "-" fraction
    feet    =  whole ("'" | "ft" | "foot" | "feet")
    dashed  =  whole "-" whole "-" fraction | whole "-" whole fraction

``5' 3 1/2"``  ``5'-3 1/2"``  ``5'3``  ``5-3-1/2``  ``63 1/2``  ``63-1/2 in``
``5.5 ft``  ``1.6 m``  ``1613,5``  ``-3 1/2"``

A number without a unit has the unit that the caller says (``bare``); after feet
it is inches. What could be read in two ways is settled so:

- A sign counts for the whole length: ``-5' 3"`` is five feet three below zero.
- A dash between feet, inches and fraction joins and never takes away. A dash
  with a blank before it and none after it is a second sign and is refused, and
  so is a whole number and a fraction with a blank beside their dash.
- ``5-3`` and ``5-3"`` are refused: two whole numbers say too little. ``5-3-1/2``
  is feet, inches and fraction in both systems, and ``5-3 1/2`` as well.
- ``5 3`` is refused; ``5'3`` is feet and inches.
- ``1,613`` is refused, since the comma may mark thousands; ``1,6`` and ``0,125``
  and ``1613,125`` have decimals. A point always marks decimals.
- Twelve inches or more beside feet count on (``5' 13"`` is ``6' 1"``); a fraction
  of one or more counts only when it stands alone (``5/4``).
- Millimetres, centimetres and metres are not written with fractions.
- Only inches go together with feet: ``1 m 60 cm`` is refused.

The arithmetic is exact up to one rounding, to a double of millimetres.
"""

from collections.abc import Sequence
from fractions import Fraction
from typing import Final

import msgspec

from core.lengths.errors import LengthError, refused
from core.lengths.length import Length
from core.lengths.sentences import Reason
from core.lengths.tokens import Kind, Token, tokenise
from core.lengths.units import LIMIT_MM, Unit
from core.lengths.writing import mixed

TEXT_LIMIT: Final = 64
"""The most characters a text may have."""


class Reading(msgspec.Struct, frozen=True):
    """What a text says: an exact number of units; no unit when none is written."""

    value: Fraction
    unit: Unit | None
    fraction: bool
    """Whether it was written with a fraction."""


class _Part(msgspec.Struct, frozen=True):
    """The tokens up to a unit, and the unit; None at the end of the text."""

    tokens: tuple[Token, ...]
    unit: Token | None


def parse(text: str, bare: Unit) -> Length:
    r"""The length, in mm with the unit it is written in, that a text states.

    ``bare`` is the unit of a number written without one.

    Raises:
        LengthError: with a sentence to show, whatever else the text is.

    >>> parse("5' 3 1/2\"", Unit.MM)
    Length(mm=1612.9, unit=<Unit.FEET: 'ft'>)
    """
    reading = read(text)
    unit = reading.unit or bare
    return Length(float(exact_mm(reading, unit, text)), unit)


def exact_mm(reading: Reading, unit: Unit, text: str) -> Fraction:
    """The exact millimetres of a reading of ``text`` in ``unit``.

    Raises:
        LengthError: when it is beyond one mile, or metric and has a fraction.
    """
    if reading.fraction and unit.metric:
        raise refused(Reason.METRIC_FRACTION, text, unit=unit.value)
    mm = reading.value * unit.mm_each
    if abs(mm) > LIMIT_MM:
        raise refused(Reason.TOO_FAR, text)
    return mm


def read(text: str) -> Reading:
    """What a text says, as an exact number of its unit, or of none.

    Raises:
        LengthError: when it cannot be read, or could be read in two ways.
    """
    if len(text) > TEXT_LIMIT:
        raise refused(Reason.TOO_LONG, text, limit=str(TEXT_LIMIT))
    tokens = tokenise(text)
    if not tokens:
        raise refused(Reason.EMPTY, text)
    if tokens[0].kind in (Kind.DASH, Kind.PLUS):
        size = _size(_parts(tokens[1:]), text)
        return size if tokens[0].kind is Kind.PLUS else _negative(size)
    return _size(_parts(tokens), text)


def _negative(reading: Reading) -> Reading:
    """The same reading below zero."""
    return msgspec.structs.replace(reading, value=-reading.value)


def _parts(tokens: Sequence[Token]) -> list[_Part]:
    """The tokens cut after each unit."""
    parts: list[_Part] = []
    held: list[Token] = []
    for token in tokens:
        if token.kind is Kind.UNIT:
            parts.append(_Part(tuple(held), token))
            held = []
        else:
            held.append(token)
    return [*parts, _Part(tuple(held), None)] if held or not parts else parts


def _size(parts: list[_Part], text: str) -> Reading:
    """The reading of a text whose sign has been taken off."""
    units = [part.unit.unit if part.unit else None for part in parts]
    match units:
        case [None | Unit.INCH as unit] if dashed := _dashed(parts[0].tokens, text):
            return msgspec.structs.replace(dashed, unit=Unit.FEET)
        case [unit]:
            return msgspec.structs.replace(_amount(parts[0], text), unit=unit)
        case [Unit.FEET, None | Unit.INCH]:
            return _feet_and_inches(parts[0], parts[1], text)
    raise refused(Reason.UNITS_TOGETHER, text)


def _feet_and_inches(first: _Part, second: _Part, text: str) -> Reading:
    """The reading, in feet, of whole feet and an amount of inches."""
    feet = _amount(first, text)
    if not first.tokens[-1].whole:
        raise refused(Reason.PART_FEET, text)
    joined, tokens = second.tokens[:1], second.tokens
    if joined and joined[0].kind is Kind.DASH:
        tokens = tokens[1:]
        if joined[0].gap and tokens and not tokens[0].gap:
            raise refused(Reason.TWO_SIGNS, text)
    inches = _amount(_Part(tokens, second.unit), text)
    if len(tokens) == 1 and tokens[0].kind is Kind.FRACTION:
        _check_proper(tokens[0], f"{feet.value}' {mixed(inches.value)}\"", text)
    return Reading(feet.value + inches.value / 12, Unit.FEET, inches.fraction)


def _dashed(tokens: tuple[Token, ...], text: str) -> Reading | None:
    """The reading of feet-inches-fraction with dashes, or None if it is not that."""
    match [token.kind for token in tokens]:
        case [Kind.NUMBER, Kind.DASH, Kind.NUMBER, Kind.DASH, Kind.FRACTION]:
            pass
        case [Kind.NUMBER, Kind.DASH, Kind.NUMBER, Kind.FRACTION]:
            pass
        case _:
            return None
    feet, dash, *inches = tokens
    first, second = _Part((feet,), None), _Part((dash, *inches), None)
    return _feet_and_inches(first, second, text)


def _amount(part: _Part, text: str) -> Reading:
    """The reading, without a unit yet, of a number and a fraction or one of them."""
    match [token.kind for token in part.tokens]:
        case [Kind.NUMBER | Kind.FRACTION as kind]:
            return Reading(part.tokens[0].value, None, kind is Kind.FRACTION)
        case [Kind.NUMBER, Kind.FRACTION]:
            return _mixed(part.tokens[0], part.tokens[1], text)
        case [Kind.NUMBER, Kind.DASH, Kind.FRACTION]:
            return _mixed_with_dash(part.tokens, text)
    raise _no_amount(part, text)


def _mixed(whole: Token, fraction: Token, text: str) -> Reading:
    """The reading of a whole number with a fraction."""
    if not whole.whole:
        raise refused(Reason.PART_BESIDE_FRACTION, text)
    value = whole.value + fraction.value
    _check_proper(fraction, mixed(value), text)
    return Reading(value, None, fraction=True)


def _mixed_with_dash(tokens: tuple[Token, ...], text: str) -> Reading:
    """The reading of a whole number and a fraction joined by a dash."""
    whole, dash, fraction = tokens
    if dash.gap or fraction.gap:
        better = f"{whole.text} {fraction.text}"
        raise refused(Reason.LOOSE_DASH, text, better=better)
    return _mixed(whole, fraction, text)


def _check_proper(fraction: Token, better: str, text: str) -> None:
    """Refuse a fraction of one or more that stands beside a whole number."""
    if fraction.value >= 1:
        raise refused(Reason.IMPROPER_FRACTION, text, part=fraction.text, better=better)


def _no_amount(part: _Part, text: str) -> LengthError:
    """The error for tokens that are not one amount."""
    match [token.kind for token in part.tokens]:
        case [] if part.unit:
            return refused(Reason.NO_NUMBER, text, part=part.unit.text)
        case [Kind.NUMBER, Kind.DASH, Kind.NUMBER]:
            better = f"{part.tokens[0].text}' {part.tokens[2].text}\""
            return refused(Reason.NUMBERS_WITH_DASH, text, better=better)
        case [Kind.DASH | Kind.PLUS, *_]:
            return refused(Reason.TWO_SIGNS, text)
        case [Kind.NUMBER, Kind.NUMBER, *_]:
            return refused(Reason.TWO_NUMBERS, text)
    return refused(Reason.UNREADABLE, text)
