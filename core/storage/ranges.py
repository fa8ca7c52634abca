"""Lengths and counts within a range, each check a function that gives the faults."""

from collections.abc import Iterator
from functools import cache

from core.lengths import Length, write
from core.storage.faults import Fault
from core.storage.sentences import Why, fault


def above_zero(length: Length, most_mm: float, place: str) -> Iterator[Fault]:
    """The fault of a length that is not above zero, or is more than `most_mm`."""
    if length.mm <= 0:
        yield fault(place, Why.NOT_POSITIVE, found=write(length))
    yield from at_most(length, most_mm, place)


def within(length: Length, least_mm: float, most_mm: float, place: str) -> Iterator[Fault]:
    """The fault of a length that is less than `least_mm` or more than `most_mm`."""
    if length.mm < least_mm:
        values = {"found": write(length), "limit": mm_text(least_mm)}
        yield fault(place, Why.TOO_SMALL, **values)
    yield from at_most(length, most_mm, place)


def at_most(length: Length, most_mm: float, place: str) -> Iterator[Fault]:
    """The fault of a length that is more than `most_mm`."""
    if length.mm > most_mm:
        yield fault(place, Why.TOO_LARGE, found=write(length), limit=mm_text(most_mm))


def count_within(count: int, least: int, most: int, place: str) -> Iterator[Fault]:
    """The fault of a count that is not from `least` to `most`."""
    if not least <= count <= most:
        yield fault(place, Why.OUT_OF_RANGE, found=count, least=least, most=most)


def few_enough(items: tuple[object, ...], most: int, place: str) -> Iterator[Fault]:
    """The fault of a list of more than `most` items."""
    if len(items) > most:
        yield fault(place, Why.TOO_MANY_ITEMS, found=len(items), limit=most)


@cache
def mm_text(mm: float) -> str:
    """A limit in mm as it stands in a sentence; nothing is the same in any unit.

    >>> mm_text(60_000.0), mm_text(0.0)
    ('60000 mm', '0')
    """
    return write(Length.of_mm(mm)) if mm else "0"
