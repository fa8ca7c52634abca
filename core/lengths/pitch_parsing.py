"""Reading a pitch as people state it.

    pitch    =  rise ("in" | "/" | ":") run | angle ("°" | "deg" | "degrees")
             |  height "at" distance ("," | ";") height "at" distance

``9 in 12``  ``9/12``  ``9:12``  ``8 1/2 in 12``  ``150 mm / 250 mm``  ``38°``
``33 in at 0 in, 69 in at 48 in``

Rise and run are two numbers, or two lengths with units, which may differ. A
height is measured at a distance from the eave wall; a number without a unit is a
length in the unit that the caller says (``bare``). What could be read in two ways
is settled so:

- The mark between rise and run is the one that leaves something readable on both
  sides. Where several do, it is the one that does not stand close between two
  digits (``1/2 / 12``); if that does not settle it, the text is refused
  (``1/2/12``).
- A unit on one side only is refused: ``9 in 12 in`` could be either.
- Between two heights stands a semicolon, or a comma that is not a decimal comma
  (one with a digit close on both sides is).
"""

import math
import re
from fractions import Fraction
from typing import Final

from core.lengths.errors import LengthError, PitchError, refused_pitch
from core.lengths.length import write
from core.lengths.parsing import TEXT_LIMIT, Reading, exact_mm, parse, read
from core.lengths.pitch import STEEPEST, STEEPEST_DEGREES, Pitch
from core.lengths.sentences import Reason
from core.lengths.tokens import plain
from core.lengths.units import Unit
from core.lengths.writing import Count, number

PITCH_LIMIT: Final = 160
"""The most characters a text may have."""

_DIVIDER: Final = re.compile(r"[/:]|(?<![a-z])in(?![a-z])")
_AT: Final = re.compile(r"(?<![a-z])at(?![a-z])")
_DEGREES: Final = re.compile(r"(.*?) ?(?:°|deg\.?|degrees?)")
_COMMA: Final = re.compile(r";|(?<![0-9]),|,(?![0-9])")
_CLOSE: Final = re.compile(r"(?<=[0-9])[/:](?=[0-9])")


def parse_pitch(text: str, bare: Unit) -> Pitch:
    """The pitch that a text states, with the text made regular.

    ``bare`` is the unit of heights and distances written without one; in the
    pitch's own text they carry it.

    Raises:
        PitchError: with a sentence to show, whatever else the text is.

    >>> parse_pitch("9 IN 12", Unit.MM)
    Pitch(tangent=0.75, text='9 in 12')
    """
    if len(text) > PITCH_LIMIT:
        raise refused_pitch(Reason.PITCH_TOO_LONG, text, limit=str(PITCH_LIMIT))
    line = plain(text)
    if not line:
        raise refused_pitch(Reason.PITCH_EMPTY, text)
    try:
        return _stated(line, bare, text)
    except PitchError:
        raise
    except LengthError as error:
        raise PitchError(text, error.reason, error.sentence) from error


def _stated(line: str, bare: Unit, text: str) -> Pitch:
    """The pitch of a line, by whichever of the three ways it is written in."""
    if _AT.search(line):
        return _of_heights(line, bare, text)
    if degrees := _DEGREES.fullmatch(line):
        return _of_degrees(degrees[1], text)
    return _of_rise_and_run(line, bare, text)


def _of_degrees(amount: str, text: str) -> Pitch:
    """The pitch of an angle from level, a bare number of degrees."""
    reading = read(amount) if amount else None
    if reading is None or reading.unit:
        raise refused_pitch(Reason.PITCH_UNREADABLE, text)
    _check_rising(reading.value, Fraction(1), text)
    if reading.value >= STEEPEST_DEGREES:
        raise refused_pitch(Reason.PITCH_TOO_STEEP, text)
    # The tangent of a rounded pi / 4 falls just short of one.
    tangent = 1.0 if reading.value == 45 else math.tan(math.radians(reading.value))
    return _pitch(tangent, f"{_number_text(reading, text)}°", text)


def _of_heights(line: str, bare: Unit, text: str) -> Pitch:
    """The pitch between two heights, each measured at a distance."""
    sides = [[side.strip() for side in _AT.split(part)] for part in _COMMA.split(line)]
    if [len(pair) for pair in sides] != [2, 2] or not all(map(all, sides)):
        raise refused_pitch(Reason.PITCH_HEIGHTS, text)
    (low, near), (high, far) = [[_mm_and_text(side, bare) for side in pair] for pair in sides]
    run, rise = far[0] - near[0], high[0] - low[0]
    if not run:
        raise refused_pitch(Reason.PITCH_NO_RUN, text)
    if rise / run < 0:
        raise refused_pitch(Reason.PITCH_FALLS, text)
    return _pitch(rise / run, f"{low[1]} at {near[1]}, {high[1]} at {far[1]}", text)


def _of_rise_and_run(line: str, bare: Unit, text: str) -> Pitch:
    """The pitch of a rise and a run with a mark between them."""
    left, mark, right = _divided(line, text)
    rise, run = read(left), read(right)
    if (rise.unit is None) != (run.unit is None):
        raise refused_pitch(Reason.PITCH_ONE_UNIT, text)
    _check_rising(rise.value, run.value, text)
    if rise.unit is None:
        words = _joined(_number_text(rise, text), mark, _number_text(run, text))
        return _pitch(rise.value / run.value, words, text)
    up, along = _mm_and_text(left, bare), _mm_and_text(right, bare)
    # A run of next to nothing may have been rounded to nothing.
    _check_rising(up[0], along[0], text)
    return _pitch(up[0] / along[0], f"{up[1]} / {along[1]}", text)


def _divided(line: str, text: str) -> tuple[str, str, str]:
    """The rise, the mark and the run of a line, as texts that are not empty."""
    mark = _mark(line, text)
    left, right = line[: mark.start()].strip(), line[mark.end() :].strip()
    if not (left and right):
        raise refused_pitch(Reason.PITCH_UNREADABLE, text)
    return left, mark[0], right


def _mark(line: str, text: str) -> re.Match[str]:
    """The mark between rise and run."""
    marks = list(_DIVIDER.finditer(line))
    found = [mark for mark in marks if _readable(line[: mark.start()], line[mark.end() :])]
    if len(found) == 1 or len(marks) == 1:
        return (found or marks)[0]
    loose = [mark for mark in found or marks if not _CLOSE.match(line, mark.start())]
    if len(loose) == 1:
        # If none was readable, the fault is on one of its sides and will be named.
        return loose[0]
    raise refused_pitch(Reason.PITCH_TWO_WAYS if found else Reason.PITCH_UNREADABLE, text)


def _readable(*texts: str) -> bool:
    """Whether each of the texts can be read as a number or a length."""
    try:
        return all(read(text) is not None for text in texts)
    except LengthError:
        return False


def _joined(rise: str, mark: str, run: str) -> str:
    """Rise and run as one text; a mark stands close between whole numbers only."""
    close = mark != "in" and (rise + run).isdecimal()
    return f"{rise}{mark}{run}" if close else f"{rise} {mark} {run}"


def _number_text(reading: Reading, text: str) -> str:
    """The regular text of a bare number, refused where it would be too long to read."""
    words = number(Count(reading.value, decimals=not reading.fraction))
    if len(words) > TEXT_LIMIT:
        raise refused_pitch(Reason.PITCH_UNREADABLE, text)
    return words


def _mm_and_text(text: str, bare: Unit) -> tuple[Fraction, str]:
    """The exact millimetres of a length and its canonical text, which says the same."""
    words = write(parse(text, bare))
    reading = read(words)
    return exact_mm(reading, reading.unit or bare, words), words


def _check_rising(rise: Fraction, run: Fraction, text: str) -> None:
    """Refuse a rise or a run below zero, and a run of nothing."""
    if rise < 0 or run < 0:
        raise refused_pitch(Reason.PITCH_NEGATIVE, text)
    if not run:
        raise refused_pitch(Reason.PITCH_NO_RUN, text)


def _pitch(slope: Fraction | float, words: str, text: str) -> Pitch:
    """The pitch of a slope, refused where it is too steep for a roof."""
    # Compared before it is rounded too, since it may be too large for a double.
    if slope >= STEEPEST or float(slope) >= STEEPEST:
        raise refused_pitch(Reason.PITCH_TOO_STEEP, text)
    return Pitch(float(slope), words)
