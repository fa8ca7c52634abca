"""Writing: the shortest text in a unit that reads back as the same millimetres.

One form for each unit:

    mm, cm, m   ``2438 mm``  ``160 cm``  ``1.6 m``
    in          ``16 in``  ``63 1/2 in``  ``3/16 in``  ``19.2 in``
    ft          ``5'``  ``5' 3 1/2"``  ``0' 3"``  ``-5' 3"``

Inches are a fraction when one of halves to sixty-fourths reads back exactly, or
one such as 2/3 whose decimals never end; otherwise the shortest decimals.
Numbers under a thousand-millionth are written with a power of ten (``2.5e-10``).
"""

import decimal
from fractions import Fraction
from typing import Final

import msgspec

from core.lengths.units import Unit

_FINEST: Final = 64
"""The largest denominator found on a tape."""

_SMALLEST_PLAIN: Final = decimal.Decimal("1e-9")


class Count(msgspec.Struct, frozen=True):
    """A number of units, exact, and whether it is written with decimals."""

    value: Fraction
    decimals: bool


def spell(mm: float, unit: Unit) -> str:
    r"""The canonical text of a length of ``mm`` millimetres in ``unit``.

    >>> spell(1612.9, Unit.INCH), spell(1612.9, Unit.FEET), spell(1600.0, Unit.M)
    ('63 1/2 in', '5\' 3 1/2"', '1.6 m')
    """
    sign = "-" if mm < 0 else ""
    size = abs(mm)
    if unit.metric:
        count = Count(_shortest(size, unit.mm_each), decimals=True)
        return f"{sign}{number(count)} {unit.value}"
    inches = _inches(size)
    return sign + (_feet(inches) if unit is Unit.FEET else f"{number(inches)} in")


def number(count: Count) -> str:
    """The text of an exact number: ``63.5`` with decimals, ``63 1/2`` without.

    With decimals the value must be one that decimals can write exactly.
    """
    return _decimals(count.value) if count.decimals else mixed(count.value)


def mixed(value: Fraction) -> str:
    """The text of an exact number as a whole and a reduced fraction.

    >>> mixed(Fraction(7, 2)), mixed(Fraction(-3, 16)), mixed(Fraction(4))
    ('3 1/2', '-3/16', '4')
    """
    whole, part = divmod(abs(value), 1)
    words = [str(whole)] if whole or not part else []
    words += [str(part)] if part else []
    return ("-" if value < 0 else "") + " ".join(words)


def _feet(inches: Count) -> str:
    """The text of a count of inches as feet and inches, ``5'`` for whole feet."""
    feet, rest = divmod(inches.value, 12)
    if not rest:
        return f"{feet}'"
    return f"{feet}' {number(Count(rest, inches.decimals))}\""


def _inches(size: float) -> Count:
    """The count of inches whose text is the canonical one for ``size`` mm."""
    each = Unit.INCH.mm_each
    exact = Fraction(size) / each
    on_tape = Fraction(round(exact * _FINEST), _FINEST)
    if float(on_tape * each) == size:
        return Count(on_tape, decimals=False)
    near = exact.limit_denominator(_FINEST)
    # Fifths and tenths are written as decimals; thirds and sevenths never end.
    never_ends = 10**6 % near.denominator != 0
    if never_ends and float(near * each) == size:
        return Count(near, decimals=False)
    return Count(_shortest(size, each), decimals=True)


def _shortest(size: float, each: Fraction) -> Fraction:
    """The decimal of fewest digits that, times ``each``, rounds to ``size`` mm.

    Seventeen digits always do: their error is under half a step of a double.
    """
    exact = Fraction(size) / each
    # Above a power of two doubles lie wider, so the next decimal up may do as well.
    for digits in range(1, 17):
        for rounding in (decimal.ROUND_HALF_EVEN, decimal.ROUND_UP):
            near = Fraction(_quotient(exact, digits, rounding))
            if float(near * each) == size:
                return near
    return Fraction(_quotient(exact, 17, decimal.ROUND_HALF_EVEN))


def _quotient(value: Fraction, digits: int, rounding: str) -> decimal.Decimal:
    """A fraction as a decimal of at most ``digits`` figures, without needless zeros."""
    # A context of our own: the thread's may have been changed by somebody.
    context = decimal.Context(prec=digits, rounding=rounding)
    parts = decimal.Decimal(value.numerator), decimal.Decimal(value.denominator)
    return context.normalize(context.divide(*parts))


def _decimals(value: Fraction) -> str:
    """The text of a number that ends in decimals, without needless zeros."""
    # A text that was read has at most 64 figures and an exponent of three.
    exact = _quotient(value, 1200, decimal.ROUND_HALF_EVEN)
    if exact and abs(exact) < _SMALLEST_PLAIN:
        return f"{exact:e}"
    return f"{exact:f}"
