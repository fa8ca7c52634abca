"""Texts of the file as the lengths, pitches and choices that they state."""

import enum

from core.lengths import Length, LengthError, Pitch, Unit, parse, parse_pitch, write
from core.storage.faults import Faults
from core.storage.sentences import Why, fault, stated_fault
from core.storage.shapes import Choice


def length(text: str, place: str, faults: Faults) -> Length | None:
    """The length that a text states; one without a unit is a fault, since it could be any.

    Raises:
        TooManyFaults: when the limit of faults is reached.
    """
    try:
        stated = parse(text, Unit.INCH)
    except LengthError as error:
        faults.add(stated_fault(place, error.sentence))
        return None
    in_mm = _parsed_in_mm(text)
    if in_mm is None or in_mm.unit is not stated.unit:
        ways = [write(way) for way in (stated, in_mm) if way is not None]
        faults.add(fault(place, Why.NO_UNIT, text=text, ways=" or ".join(ways)))
    return stated


def _parsed_in_mm(text: str) -> Length | None:
    """The length with millimetres where no unit is named; None for a fraction of them."""
    try:
        return parse(text, Unit.MM)
    except LengthError:
        return None


def pitch(text: str, place: str, faults: Faults) -> Pitch | None:
    """The pitch that a text states; heights without a unit are a fault.

    Raises:
        TooManyFaults: when the limit of faults is reached.
    """
    try:
        stated = parse_pitch(text, Unit.INCH)
        bare = stated != parse_pitch(text, Unit.MM)
    except LengthError as error:
        faults.add(stated_fault(place, error.sentence))
        return None
    if bare:
        faults.add(fault(place, Why.PITCH_NO_UNIT, text=text))
    return stated


def choice(shape: Choice, text: str, place: str, faults: Faults) -> enum.Enum | None:
    """The member of an enum with this value.

    Raises:
        TooManyFaults: when the limit of faults is reached.
    """
    if text in shape.values:
        return shape.kind(text)
    allowed = " or ".join(f"“{value}”" for value in shape.values)
    faults.add(fault(place, Why.BAD_CHOICE, text=text, allowed=allowed))
    return None
